namespace Pattern.Core.Blocks;

/// <summary>What a setting of a drafting method or a design is said in.</summary>
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

    /// <summary>A part of something, in percent.</summary>
    Share,
}
