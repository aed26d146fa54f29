namespace Pattern.Core.Blocks;

/// <summary>Which row of a shaping table serves a difference that stands between two.</summary>
public enum ShapingLookup
{
    /// <summary>The row whose difference is closest; from the middle between two, the one with the larger difference. <c>nearest</c> in a file.</summary>
    Nearest,

    /// <summary>The first row whose difference is as large or larger. <c>at-or-above</c> in a file.</summary>
    AtOrAbove,

    /// <summary>Neither row: each figure in proportion between the two. <c>interpolated</c> in a file.</summary>
    Interpolated,
}
