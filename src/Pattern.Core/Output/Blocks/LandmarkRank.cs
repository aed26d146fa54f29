namespace Pattern.Core.Output;

/// <summary>Which name stays where it reads best when names crowd on the drawing of a block, the first before the others.</summary>
internal enum LandmarkRank
{
    /// <summary>A corner of a panel: where two of its edges meet.</summary>
    Corner,

    /// <summary>A point of a dart.</summary>
    Dart,

    /// <summary>A point on a seam line, or the only one at its place.</summary>
    OnSeam,

    /// <summary>A point off every panel, or at the place of another: it guided the hand, and nobody cuts to it. Its name may be left out, and then a note says so.</summary>
    Guide,
}
