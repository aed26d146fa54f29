namespace Pattern.Core.Output;

/// <summary>Which ends of a line carry an arrow head.</summary>
public enum ArrowEnds
{
    /// <summary>Neither.</summary>
    None,

    /// <summary>Its start.</summary>
    Start,

    /// <summary>Its end.</summary>
    End,

    /// <summary>Both.</summary>
    Both,
}
