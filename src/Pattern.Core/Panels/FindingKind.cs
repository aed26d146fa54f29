namespace Pattern.Core.Panels;

/// <summary>What a finding measures.</summary>
public enum FindingKind
{
    /// <summary>A length, along a seam line or straight, as the check says.</summary>
    Length,

    /// <summary>An angle.</summary>
    Angle,

    /// <summary>A number of things, such as crossings.</summary>
    Count,
}
