namespace Pattern.Core.Geometry;

/// <summary>A segment of an offset before it is trimmed.</summary>
internal struct OffsetPiece
{
    internal PathSegment Segment;

    /// <summary>Which element it is parallel to; -1 for a join at a corner.</summary>
    internal int Element;

    /// <summary>From where on the source.</summary>
    internal double From;

    /// <summary>To where on the source.</summary>
    internal double To;

    /// <summary>Begins where the piece before it ends.</summary>
    internal bool MeetsBefore;
}
