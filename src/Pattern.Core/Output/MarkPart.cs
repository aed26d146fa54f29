namespace Pattern.Core.Output;

/// <summary>Which part of a panel a line is.</summary>
public enum MarkPart
{
    /// <summary>A stretch of seam line.</summary>
    Seam,

    /// <summary>The part of the cut line of a piece that lies along an edge.</summary>
    Cut,

    /// <summary>The part of the cut line at a corner, after that along an edge.</summary>
    CutCorner,

    /// <summary>A leg of a dart, from the seam line to the apex.</summary>
    DartLeg,

    /// <summary>The edge across the intake of a dart.</summary>
    DartCap,
}
