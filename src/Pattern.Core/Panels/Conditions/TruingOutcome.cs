using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>What truing by conditions came to: the panels, what moved, what holds; or which conditions contradict each other. Immutable.</summary>
public sealed class TruingOutcome
{
    private readonly Panel[] _panels;
    private readonly TruingMove[] _moves;
    private readonly ConditionResult[] _conditions;
    private readonly ConditionResult[] _conflict;

    internal TruingOutcome(Panel[] panels, TruingMove[] moves, ConditionResult[] conditions, ConditionResult[] conflict, bool isLeast, int steps)
    {
        _panels = panels;
        _moves = moves;
        _conditions = conditions;
        _conflict = conflict;
        IsLeast = isLeast;
        Steps = steps;
    }

    /// <summary>The panels that were given, in their order. Those on which nothing moved are the very same; all are where not everything can hold.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    /// <summary>Whether everything holds, on panels that can be drawn.</summary>
    public bool IsMet => _conflict.Length == 0 && Refusal is null;

    /// <summary>Why what would hold is no panel: its outline would cross itself, a notch would lie beyond its edge, or a line drawn in one sweep misses a dart. Null where nothing
    /// forbids it.</summary>
    public ConstructionException? Refusal { get; internal init; }

    /// <summary>Whether the change is the least one near by that meets everything; where false and all is met, it is met, not least.</summary>
    public bool IsLeast { get; }

    /// <summary>Whether anything moved.</summary>
    public bool HasChanged => IsMet && _moves.Any(m => m.DistanceMm != 0);

    /// <summary>What may move, and how far it did; where not everything can hold, how far it would for the best compromise.</summary>
    public IReadOnlyList<TruingMove> Moves => _moves;

    /// <summary>What stands at its limit.</summary>
    public IEnumerable<TruingMove> AtLimit => _moves.Where(m => m.IsAtLimit);

    /// <summary>All conditions, in the order in which they were stated.</summary>
    public IReadOnlyList<ConditionResult> Conditions => _conditions;

    /// <summary>Exactly those conditions that contradict each other within the limits: without any one of them the others can hold. Empty where everything holds, and where there is a
    /// <see cref="Refusal"/>.</summary>
    /// <remarks>By how much each is off is the compromise between them, the least in squares.</remarks>
    public IReadOnlyList<ConditionResult> Conflict => _conflict;

    /// <summary>What a hand does, in order: the conditions that did not hold, then what moved.</summary>
    public IEnumerable<TruingNote> Notes => TruingWords.Of(this);

    /// <summary>How many steps the search took; it takes no more than a fixed number.</summary>
    public int Steps { get; }

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">It was not among the panels.</exception>
    [Pure]
    public Panel Find(PanelName name) => _panels.FirstOrDefault(p => p.Name == name)
        ?? throw new ConstructionException(DiagnosticCode.PanelMissing, name, string.Join(", ", _panels.Select(p => p.Name.Text))) { Landmark = name.Text };

    /// <summary>Whether all conditions are met, and in how many steps.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{(IsMet ? "met" : "not met")} in {Steps} steps: {_conditions.Length} conditions, {_moves.Length} moves");
}
