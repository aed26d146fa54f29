namespace Pattern.Core.Output;

/// <summary>How sheets of paper lie when a drawing is tiled.</summary>
public enum SheetOrientation
{
    /// <summary>Whichever of the two needs fewer sheets; upright where both need as many.</summary>
    FewestSheets,

    /// <summary>Upright: the shorter side across.</summary>
    Portrait,

    /// <summary>Lying: the longer side across.</summary>
    Landscape,
}
