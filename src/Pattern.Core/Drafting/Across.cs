namespace Pattern.Core.Drafting;

/// <summary>The way in which one squares across the sheet.</summary>
public enum Across
{
    /// <summary>To the right: x grows.</summary>
    Right,

    /// <summary>To the left: x shrinks.</summary>
    Left,
}
