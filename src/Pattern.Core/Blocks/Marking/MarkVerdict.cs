namespace Pattern.Core.Blocks;

/// <summary>What a drawn figure is worth.</summary>
public enum MarkVerdict
{
    /// <summary>What the block has, to the nearest mark of the tape.</summary>
    Right,

    /// <summary>No farther off than a draft with every distance laid to the nearest mark, and read off the same tape once more.</summary>
    WithinRounding,

    /// <summary>Farther off than rounding explains.</summary>
    Wrong,

    /// <summary>The row could not be read, or names nothing on the block.</summary>
    NotMarked,
}
