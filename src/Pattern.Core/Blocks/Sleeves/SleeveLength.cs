namespace Pattern.Core.Blocks;

/// <summary>Where a sleeve ends. All end on the same seams, so a short one is the long one cut off. Common practice, no source.</summary>
public enum SleeveLength
{
    /// <summary>At the wrist.</summary>
    Long,

    /// <summary>Half-way between elbow and wrist.</summary>
    ThreeQuarter,

    /// <summary>Half-way between the underarm and the elbow.</summary>
    Short,
}
