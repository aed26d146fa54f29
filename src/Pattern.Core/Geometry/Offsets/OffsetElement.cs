namespace Pattern.Core.Geometry;

/// <summary>A part of the source of an offset that is parallel to one smooth curve: it turns less than a right angle, and the
/// parallel runs forwards all along, or backwards.</summary>
internal struct OffsetElement
{
    /// <summary>A line, an arc, or the cubic that this is a part of.</summary>
    internal PathSegment Source;

    /// <summary>On a cubic, from where; else 0.</summary>
    internal double From;

    /// <summary>On a cubic, to where; else 1.</summary>
    internal double To;

    internal Point2D Start;
    internal Point2D End;
    internal Direction StartHeading;
    internal Direction EndHeading;

    /// <summary>The centre of curvature lies nearer than the width: the parallel runs backwards and never counts, because other points of the source are nearer.</summary>
    internal bool IsBackwards;
}
