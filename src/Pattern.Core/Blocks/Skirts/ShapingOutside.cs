namespace Pattern.Core.Blocks;

/// <summary>What happens to a difference smaller than that of the first row of a shaping table, or larger than that of the last.</summary>
/// <remarks>A table covers the differences from its first row to its last, both included, whatever the lookup rule.</remarks>
public enum ShapingOutside
{
    /// <summary>The draft is refused. <c>refuse</c> in a file.</summary>
    Refuse,

    /// <summary>The first or the last row serves, and the reading says so. <c>clamp</c> in a file.</summary>
    Clamp,
}
