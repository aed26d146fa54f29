namespace Pattern.Core.Geometry;

/// <summary>How the parts of an offset meet at a corner of the path that points away from it. At the other corners they meet where they cross.</summary>
public enum OffsetJoin
{
    /// <summary>By an arc round the corner: every point of the offset is exactly the width away.</summary>
    Round,

    /// <summary>By going straight on until they meet: the corner of a cut line. A corner so sharp that its point would be more than four
    /// widths away is cut off square, one width beyond the corner.</summary>
    Mitre,

    /// <summary>Not at all: each stretch between corners, of either kind, is a path of its own, and the caller joins them.</summary>
    Open,
}
