using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Blocks as drawings.</summary>
public static class BlockDrawing
{
    /// <summary>Draws the block at full size, with everything that a cutter needs to draft it again by hand and to check it.</summary>
    /// <remarks>Seam lines, darts with caps and fold lines, construction lines, levels, the landmarks that the steps speak of, grainlines, notches, test squares and
    /// a title block. Panels that lie over each other are drawn apart. A block whose checks failed is drawn all the same, and says loudly that it must not be cut.</remarks>
    /// <param name="block">The block.</param>
    [Pure]
    public static Drawing Draw(this Block block) => block.Draw(new DrawingOptions());

    /// <summary>Draws the block at full size.</summary>
    /// <param name="block">The block.</param>
    /// <param name="options">The tape, the date of the title block, and the alternatives to show.</param>
    /// <exception cref="ConstructionException">The options name an alternative that the block does not have.</exception>
    [Pure]
    public static Drawing Draw(this Block block, DrawingOptions options)
    {
        Guard.NotNull(block, nameof(block));
        return new BlockSheet(block, block.Report, Guard.NotNull(options, nameof(options))).Draw();
    }
}
