namespace Pattern.Core.Drafting;

/// <summary>The way in which one measures up or down the sheet.</summary>
public enum Upright
{
    /// <summary>Up: y grows.</summary>
    Up,

    /// <summary>Down: y shrinks.</summary>
    Down,
}
