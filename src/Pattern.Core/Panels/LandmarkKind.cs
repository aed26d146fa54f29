namespace Pattern.Core.Panels;

/// <summary>What a landmark is on the draft; its name is only what it is called.</summary>
public enum LandmarkKind
{
    /// <summary>Any point that has no part below.</summary>
    Point,

    /// <summary>The middle of the intake of a dart, on the line that the dart stands on.</summary>
    DartMiddle,

    /// <summary>The point in which a dart ends.</summary>
    DartApex,
}
