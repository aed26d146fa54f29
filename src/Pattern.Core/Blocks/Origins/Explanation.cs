using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>How a length, landmark, dart or edge of a finished block came about: the chain back to measurements, settings, table entries and constants. Immutable.</summary>
/// <remarks>Of any method that drafts on the sheet: the chain is what its verbs recorded. A place, a heading or a path that a method works out off the sheet and hands over as numbers is an end, a
/// constant. What truing or a design changed stands beside what was drawn by hand.</remarks>
/// <example><code>
/// Explanation why = block.ExplainEdge(PanelName.Back, EdgeName.Waist);
/// Console.WriteLine(why.Describe(TapeStep.Eighth));
/// foreach (Origin end in why.Ends)
/// {
///     Console.WriteLine(end.Kind + ": " + end.Name);
/// }
/// </code></example>
public sealed class Explanation
{
    internal Explanation(Block block, Origin root)
    {
        Block = block;
        Root = root;
        All = InOrder(root);
        Steps = [.. All.Select(origin => origin.Step).OfType<Step>().Distinct().OrderBy(step => step.Number)];
        Ends = [.. All.Where(origin => origin.IsEnd).GroupBy(end => (end.Kind, end.Name, end.ValueMm)).Select(same => same.First())];
    }

    /// <summary>The block.</summary>
    public Block Block { get; }

    /// <summary>What was asked for, and below it what it was made of.</summary>
    public Origin Root { get; }

    /// <summary>The steps that matter, in drafting order.</summary>
    public IReadOnlyList<Step> Steps { get; }

    /// <summary>What the chain ends in, each once.</summary>
    public IReadOnlyList<Origin> Ends { get; }

    /// <summary>Every link, each once, from what was asked for down.</summary>
    internal IReadOnlyList<Origin> All { get; }

    /// <summary>The chain in words: what it ends in, the steps that matter, and the tree.</summary>
    /// <param name="tape">The finest mark of the tape that figures are read off; one that it cannot show exactly carries a <c>~</c>.</param>
    [Pure]
    public string Describe(TapeStep tape) => OriginText.Of(this, tape);

    /// <summary>The chain in words, in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);

    // Not by recursion: a chain may be as long as its author likes.
    private static Origin[] InOrder(Origin root)
    {
        var seen = new HashSet<Origin> { root };
        var found = new List<Origin>();
        var open = new Stack<Origin>();
        open.Push(root);
        while (open.Count > 0)
        {
            Origin origin = open.Pop();
            found.Add(origin);
            for (int i = origin.From.Count - 1; i >= 0; i--)
            {
                if (seen.Add(origin.From[i]))
                {
                    open.Push(origin.From[i]);
                }
            }
        }

        return [.. found];
    }
}
