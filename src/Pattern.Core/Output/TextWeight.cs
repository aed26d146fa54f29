namespace Pattern.Core.Output;

/// <summary>How heavy letters are.</summary>
public enum TextWeight
{
    /// <summary>As for reading.</summary>
    Regular,

    /// <summary>Heavier, for titles and names.</summary>
    Bold,
}
