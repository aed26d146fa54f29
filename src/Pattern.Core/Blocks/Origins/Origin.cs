using System.Collections.Generic;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>One link of the chain from something finished back to what it was made of. Immutable.</summary>
/// <remarks>What two things were made of stands under both, and is one object. A walk down from any link ends: nothing is made of itself.</remarks>
public sealed class Origin
{
    internal Origin(OriginKind kind, string name, double? valueMm, WorkedLength? working, Step? step, Origin[] from)
    {
        Kind = kind;
        Name = name;
        ValueMm = valueMm;
        Working = working;
        Step = step;
        From = from;
    }

    /// <summary>What it is.</summary>
    public OriginKind Kind { get; }

    /// <summary>What the trade calls it; empty for a figure on the way that has no name.</summary>
    public string Name { get; }

    /// <summary>How long; null for a landmark and a change.</summary>
    public Length? Value => ValueMm is { } mm ? Length.FromMillimeters(mm) : null;

    /// <summary>The arithmetic; null where it is no figure.</summary>
    public WorkedLength? Working { get; }

    /// <summary>The step that drew, marked or changed it; null for a figure.</summary>
    public Step? Step { get; }

    /// <summary>What it was made of, in order; none for an end.</summary>
    public IReadOnlyList<Origin> From { get; }

    /// <summary>Whether the chain ends here: a measurement, a setting, a table entry or a constant.</summary>
    public bool IsEnd => Kind <= OriginKind.Constant;

    internal double? ValueMm { get; }

    /// <summary>Name and figure in sixteenths of an inch.</summary>
    public override string ToString() => Describe(TapeStep.Sixteenth);

    internal string Describe(TapeStep tape)
    {
        string figure = ValueMm is { } mm ? WorkedLength.GivenMm(null, mm).Describe(tape) : string.Empty;
        return Name.Length == 0 ? figure : figure.Length == 0 ? Name : Name + " " + figure;
    }
}
