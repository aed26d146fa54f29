using System.Collections.Generic;
using Pattern.Core.Blocks;

namespace Pattern.Core.Styling;

/// <summary>The designs that the library brings. <see cref="SkirtStyling"/> says their settings by name.</summary>
public static class BuiltInDesigns
{
    /// <summary>A skirt that widens from the hip: waist darts closed into flare.</summary>
    public static BlockDesign ALine { get; } = new ALineDesign();

    /// <summary>All of them, in the order of the guide.</summary>
    public static IReadOnlyList<BlockDesign> All { get; } = [ALine];
}
