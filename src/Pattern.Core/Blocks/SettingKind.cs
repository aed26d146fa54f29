namespace Pattern.Core.Blocks;

/// <summary>What a setting of a drafting method is said in.</summary>
public enum SettingKind
{
    /// <summary>A length.</summary>
    Length,

    /// <summary>An angle.</summary>
    Angle,

    /// <summary>A number of things.</summary>
    Count,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>A text, such as a table.</summary>
    Text,
}
