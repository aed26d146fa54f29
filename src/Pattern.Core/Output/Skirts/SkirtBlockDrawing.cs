using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Skirt blocks as drawings.</summary>
public static class SkirtBlockDrawing
{
    /// <summary>Draws the block at full size, with everything that a cutter needs to draft it again by hand and to check it.</summary>
    /// <remarks>Seam lines, darts with caps and fold lines, construction lines, levels, the landmarks that the steps speak of, grainlines, hip notches, the waistline
    /// that the block could have instead, test squares and a title block. A block whose checks failed is drawn all the same, and says loudly that it must not be cut.</remarks>
    /// <param name="block">The block.</param>
    [Pure]
    public static Drawing Draw(this SkirtBlock block) => block.Draw(new DrawingOptions());

    /// <summary>Draws the block at full size.</summary>
    /// <param name="block">The block.</param>
    /// <param name="options">The tape and the date of the title block.</param>
    [Pure]
    public static Drawing Draw(this SkirtBlock block, DrawingOptions options)
    {
        Guard.NotNull(block, nameof(block));
        return new SkirtSheet(block, block.Report, Guard.NotNull(options, nameof(options))).Draw();
    }
}
