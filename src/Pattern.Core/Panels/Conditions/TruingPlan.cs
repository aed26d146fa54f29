using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>Truing by what must hold: what may move on the panels of a block, how far, and which conditions they have to meet. Immutable, and apart from the panels.</summary>
/// <remarks>
/// <para>Truing finds the least change of the hand draft that meets all conditions to 0.000000001 mm. What is true already is left alone, not changed by
/// a bit. Where nothing meets all, the outcome names exactly those conditions that contradict each other, by how much, and what stands at its limit.</para>
/// <para>A method states its plan once. The first panels that it trues lay it out; panels of the same make, of other bodies, use that again. A plan may be used from several threads at once.</para>
/// </remarks>
/// <example><code>
/// EdgeOf back = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
/// EdgeOf front = EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam);
/// TruingPlan plan = TruingPlan.Empty
///     .MayMove(Movable.Corner(back.AtEnd, within: Length.FromCentimeters(2)))
///     .MustHold(Condition.Sewn(Seam.Between(back, front)));
/// TruingOutcome outcome = plan.True(block.Back, block.Front);
/// </code></example>
public sealed class TruingPlan
{
    internal const string Step = "truing by what must hold";

    private readonly Movable[] _movables;
    private readonly Condition[] _conditions;
    private readonly TruingLayouts _layouts;

    private TruingPlan(Movable[] movables, Condition[] conditions, TruingLayouts layouts)
    {
        _movables = movables;
        _conditions = conditions;
        _layouts = layouts;
    }

    /// <summary>A plan in which nothing may move and nothing must hold.</summary>
    public static TruingPlan Empty { get; } = new([], [], new TruingLayouts());

    /// <summary>What may move, in the order in which it was said.</summary>
    public IReadOnlyList<Movable> Movables => _movables;

    /// <summary>What must hold, in the order in which it was said.</summary>
    public IReadOnlyList<Condition> Conditions => _conditions;

    /// <summary>Says what may move, besides what was said before.</summary>
    /// <param name="movables">What may move, along what and how far. What is said twice is meant once: say it once.</param>
    /// <exception cref="ArgumentException">An edge is to be drawn in one sweep, and something else would bend it too or lengthen its legs.</exception>
    [Pure]
    public TruingPlan MayMove(params Movable[] movables)
    {
        Movable[] all = [.. _movables, .. Guard.NotNull(movables, nameof(movables)).Select(m => Guard.NotNull(m, nameof(movables)))];
        foreach (Movable sweep in all.Where(m => m.Kind == MovableKind.OneSweep))
        {
            Movable? other = Array.Find(all, m => !ReferenceEquals(m, sweep) && m.Edge == sweep.Edge && (m.Kind is MovableKind.Handles or MovableKind.Legs or MovableKind.OneSweep));
            if (other is not null)
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.SweepTakesWhole, sweep.Edge, other.Name), nameof(movables));
            }
        }

        return new(all, _conditions, new TruingLayouts());
    }

    /// <summary>Says what must hold, besides what was said before.</summary>
    /// <param name="conditions">The conditions.</param>
    [Pure]
    public TruingPlan MustHold(params Condition[] conditions)
        => new(_movables, [.. _conditions, .. Guard.NotNull(conditions, nameof(conditions)).Select(c => Guard.NotNull(c, nameof(conditions)))], new TruingLayouts());

    /// <summary>The same plan for another body: a condition asks for another length.</summary>
    /// <param name="condition">The name of the condition.</param>
    /// <param name="length">What it asks for now.</param>
    /// <exception cref="ArgumentException">No condition of that name asks for a length.</exception>
    [Pure]
    public TruingPlan Asking(string condition, WorkedLength length)
    {
        Guard.NotNull(condition, nameof(condition));
        Guard.NotNull(length, nameof(length));
        var conditions = (Condition[])_conditions.Clone();
        bool any = false;
        for (int i = 0; i < conditions.Length; i++)
        {
            if (conditions[i].Length is not null && string.Equals(conditions[i].Name, condition, StringComparison.Ordinal))
            {
                conditions[i] = conditions[i].Asking(length);
                any = true;
            }
        }

        return any
            ? new TruingPlan(_movables, conditions, _layouts)
            : throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.ConditionUnknown, condition, string.Join(", ", _conditions.Where(c => c.Length is not null).Select(c => c.Name))), nameof(condition));
    }

    /// <summary>Trues panels.</summary>
    /// <param name="panels">The panels that the plan speaks of; others may be among them.</param>
    /// <exception cref="ConstructionException">Nothing within the limits meets all conditions; a panel, edge, dart or notch is missing; or what would hold is no panel, because its
    /// outline would cross itself.</exception>
    [Pure]
    public TruingOutcome True(params Panel[] panels)
    {
        if (TryTrue(panels, out TruingOutcome outcome))
        {
            return outcome;
        }

        if (outcome.Refusal is { } refusal)
        {
            throw refusal;
        }

        ConditionResult first = outcome.Conflict[0];
        string limits = string.Join(", ", outcome.AtLimit.Select(m => m.What.Name));
        throw new ConstructionException(
            DiagnosticCode.ConditionsContradict, string.Join("; ", outcome.Conflict.Select(c => c.ToString())), limits.Length == 0 ? "nothing" : limits)
        {
            Step = Step,
            Landmark = first.Name,
            Measured = first.Off,
            Allowed = first.Off is null ? null : Length.Zero,
        };
    }

    /// <summary>Trues panels, and says as data what contradicts where not everything can hold.</summary>
    /// <param name="panels">The panels that the plan speaks of; others may be among them.</param>
    /// <param name="outcome">The trued panels; or those that were given, with the conflict.</param>
    /// <returns>Whether everything holds.</returns>
    /// <exception cref="ConstructionException">A panel, edge, dart or notch that the plan speaks of is missing.</exception>
    public bool TryTrue(IReadOnlyList<Panel> panels, out TruingOutcome outcome)
    {
        Panel[] given = [.. Guard.NotNull(panels, nameof(panels)).Select(p => Guard.NotNull(p, nameof(panels)))];
        Panel[] bending = ArcsAsCurves.For(_movables, given);
        if (!ReferenceEquals(bending, given) && HoldsAlready(given) is { } held)
        {
            outcome = held;
            return true;
        }

        TruingRoom room = _layouts.Rent(_movables, _conditions, bending);
        outcome = room.True(given, bending, _movables, _conditions);
        _layouts.Return(room);
        return outcome.IsMet;
    }

    // Curves in place of arcs are off by a thousandth of a millimetre, so arcs are measured as they are first: what is true already stays.
    private TruingOutcome? HoldsAlready(Panel[] panels)
    {
        if (Array.Exists(_movables, m => m.Kind == MovableKind.OneSweep))
        {
            return null;
        }

        var room = new TruingRoom(new TruingLayout([], _conditions, panels));
        room.TryBind([], _conditions, panels);
        return room.Holds()
            ? new TruingOutcome(panels, [.. _movables.Select(TruingMove.None)], [.. room.True(panels, panels, [], _conditions).Conditions], [], isLeast: true, steps: 0)
            : null;
    }

    /// <summary>How much may move, and how much must hold.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{_movables.Length} movables, {_conditions.Length} conditions");
}
