namespace Pattern.Core.Drafting;

/// <summary>A side of the sheet: the way to go, or which of two places is meant.</summary>
public enum SheetSide
{
    /// <summary>To the left; of two places the one more to the left.</summary>
    Left,

    /// <summary>To the right; of two places the one more to the right.</summary>
    Right,

    /// <summary>Upward; of two places the upper one.</summary>
    Above,

    /// <summary>Downward; of two places the lower one.</summary>
    Below,
}
