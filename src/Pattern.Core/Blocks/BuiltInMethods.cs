using System.Collections.Generic;

namespace Pattern.Core.Blocks;

/// <summary>The drafting methods that the library brings.</summary>
public static class BuiltInMethods
{
    /// <summary>The plain fitted skirt. <see cref="SkirtBlock.For"/> says its settings by name.</summary>
    public static DraftingMethod Skirt { get; } = new SkirtMethod();

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<DraftingMethod> All { get; } = [Skirt];
}
