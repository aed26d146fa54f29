using Pattern.Core.Blocks;

namespace Pattern.Core.Sizing;

/// <summary>The block of one size of a run. Immutable.</summary>
public sealed class SizedBlock
{
    internal SizedBlock(string name, Block block)
    {
        Name = name;
        Block = block;
    }

    /// <summary>What the size is called.</summary>
    public string Name { get; }

    /// <summary>Its block, drafted for the body of the size.</summary>
    public Block Block { get; }

    /// <summary>Size, block and verdict.</summary>
    public override string ToString() => Block.ToString();
}
