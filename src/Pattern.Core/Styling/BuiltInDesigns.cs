using System.Collections.Generic;
using Pattern.Core.Blocks;

namespace Pattern.Core.Styling;

/// <summary>The designs that the library brings. <see cref="SkirtStyling"/> says their settings by name.</summary>
public static class BuiltInDesigns
{
    /// <summary>A skirt that widens from the hip: waist darts closed into flare.</summary>
    public static BlockDesign ALine { get; } = new ALineDesign();

    /// <summary>A skirt that swings: all darts closed into flare, more by slashing and spreading.</summary>
    public static BlockDesign Flared { get; } = new FlaredDesign();

    /// <summary>A quarter circle to a double one.</summary>
    public static BlockDesign Circle { get; } = new CircleDesign();

    /// <summary>Equal gores, the waist shaped in their seams.</summary>
    public static BlockDesign Gores { get; } = new GoresDesign();

    /// <summary>All of them, in the order of the guide.</summary>
    public static IReadOnlyList<BlockDesign> All { get; } = [ALine, Flared, Gores, Circle];
}
