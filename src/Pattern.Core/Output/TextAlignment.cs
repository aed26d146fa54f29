namespace Pattern.Core.Output;

/// <summary>Which point of a line of text its anchor is.</summary>
public enum TextAlignment
{
    /// <summary>Where it begins.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Where it ends.</summary>
    End,
}
