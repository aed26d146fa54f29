using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Another way in which a block could be drafted. Nothing is drafted before <see cref="Draft"/>.</summary>
public sealed class BlockAlternative
{
    private readonly BlockBuilder _builder;
    private readonly AlternativePlan _plan;

    internal BlockAlternative(BlockBuilder builder, AlternativePlan plan)
    {
        _builder = builder;
        _plan = plan;
    }

    /// <summary>What it is called, such as <c>level waistline</c>.</summary>
    public string Name => _plan.Name;

    /// <summary>The edges that a drawing shows of it; all where none is named.</summary>
    public IReadOnlyList<EdgeName> Edges => _plan.Edges;

    /// <summary>Drafts the block in this way.</summary>
    /// <exception cref="ConstructionException">This body cannot be drafted in this way.</exception>
    [Pure]
    public Block Draft() => _plan.Change(_builder).Draft();

    /// <summary>Returns <see cref="Name"/>.</summary>
    public override string ToString() => Name;
}
