namespace Pattern.Core.Output;

/// <summary>Which part of a panel a line is.</summary>
public enum MarkPart
{
    /// <summary>A stretch of seam line.</summary>
    Seam,

    /// <summary>A leg of a dart, from the seam line to the apex.</summary>
    DartLeg,

    /// <summary>The edge across the intake of a dart.</summary>
    DartCap,
}
