using Pattern.Core.Blocks;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>A block with no name outside its lines.</summary>
internal sealed class NarrowBlock(Block block, CheckReport report, DrawingOptions options) : INarrowDrawing
{
    /// <inheritdoc/>
    public Drawing Draw() => new BlockSheet(block, report, options, isNarrow: true).Draw();
}
