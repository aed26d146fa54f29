using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Pieces;

namespace Pattern.Core.Sizing;

/// <summary>One draft, with its designs, in every size of a table. Immutable.</summary>
/// <example><code>
/// SizeRun run = SizeRun.Of(SizeTable.En13402Women.Between("3", "6"), body => SkirtBlock.For(body).Draft());
/// SizeNest nest = run.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Hem));
/// GradeRules rules = nest.Rules;
/// </code></example>
public sealed class SizeRun
{
    private readonly SizedBlock[] _sizes;

    private SizeRun(SizedBlock[] sizes) => _sizes = sizes;

    /// <summary>The sizes, in the order of the table.</summary>
    public IReadOnlyList<SizedBlock> Sizes => _sizes;

    /// <summary>Drafts every size by a method, every setting as usual.</summary>
    /// <param name="table">The sizes.</param>
    /// <param name="method">The method.</param>
    /// <exception cref="ConstructionException">A size cannot be drafted.</exception>
    [Pure]
    public static SizeRun Of(SizeTable table, DraftingMethod method)
    {
        Guard.NotNull(method, nameof(method));
        return Of(table, body => method.For(body).Draft());
    }

    /// <summary>Drafts every size.</summary>
    /// <param name="table">The sizes.</param>
    /// <param name="draft">Drafts a block for a body, and makes its designs.</param>
    /// <exception cref="ConstructionException">A size cannot be drafted; which, and why. A run has all its sizes or none.</exception>
    [Pure]
    public static SizeRun Of(SizeTable table, Func<BodyMeasurements, Block> draft)
    {
        Guard.NotNull(draft, nameof(draft));
        return new SizeRun([.. Guard.NotNull(table, nameof(table)).Sizes.Select(size => new SizedBlock(size.Name, Draft(table, size, draft)))]);
    }

    /// <summary>Returns the block of a size.</summary>
    /// <exception cref="ConstructionException">The run has no such size.</exception>
    [Pure]
    public Block Find(string size)
    {
        Guard.NotNull(size, nameof(size));
        return (Array.Find(_sizes, one => one.Name == size) ?? throw Unknown(size, _sizes.Select(one => one.Name))).Block;
    }

    /// <summary>Lays each panel in all sizes on one place.</summary>
    /// <param name="place">The point, or the line, on which they lie.</param>
    /// <exception cref="ConstructionException">The sizes are not made alike, or a panel lacks the place.</exception>
    [Pure]
    public SizeNest StackedOn(StackPlace place) => new(this, Guard.NotNull(place, nameof(place)));

    /// <summary>The pieces of every size, the name of the size on their labels: what a pattern file in sizes is made of.</summary>
    /// <param name="pattern">Which pieces are cut from a block, such as <c>block => SkirtPattern.From(block)</c>.</param>
    /// <returns>Size by size. Written with <c>ToDxf</c>, each piece in each size is a block of its own.</returns>
    /// <exception cref="ConstructionException">The pieces of a size cannot be made.</exception>
    [Pure]
    public IReadOnlyList<PatternPiece> ToPieces(Func<Block, PieceSet> pattern)
    {
        Guard.NotNull(pattern, nameof(pattern));
        return [.. _sizes.SelectMany(size => pattern(size.Block).Pieces.Select(piece => piece.WithLabel((piece.LabelText ?? PieceLabel.For(size.Block.Heading)).WithSize(size.Name))))];
    }

    internal static ConstructionException Unknown(string size, IEnumerable<string> known)
        => new(DiagnosticCode.SizeUnknown, "of the run", size, string.Join(", ", known));

    private static Block Draft(SizeTable table, BodySize size, Func<BodyMeasurements, Block> draft)
    {
        try
        {
            return draft(size.Body) ?? throw new ConstructionException(DiagnosticCode.SizeRefused, size.Name, table.Name, "The draft returned no block.") { Step = "drafting size " + size.Name };
        }
        catch (ConstructionException refusal) when (refusal.Code != DiagnosticCode.SizeRefused)
        {
            throw new ConstructionException(DiagnosticCode.SizeRefused, size.Name, table.Name, MessageRegistry.Whole(refusal.Message)) { Step = "drafting size " + size.Name };
        }
    }

    /// <summary>How many sizes there are.</summary>
    public override string ToString() => FormattableString.Invariant($"size run of {_sizes.Length} sizes");
}
