using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Measurement;

/// <summary>A length that remembers its working: hip girth 39 3/4, halved, plus half of 1 in ease, is 20 3/8.</summary>
/// <remarks>Immutable. The arithmetic is exact to the last bits of a double, never to the tape: only what is printed is rounded, and where a printed
/// figure was rounded it carries the mark <c>~</c>. No text is formed until somebody asks.</remarks>
/// <example><code>
/// WorkedLength hip = WorkedLength.Measured("hip girth", Tape.Inches("39 3/4"));
/// WorkedLength ease = WorkedLength.Given("hip ease", Tape.Inches("1"));
/// WorkedLength box = (hip.Half() + ease.Half()).Named("box width");
/// box.Describe(TapeStep.Eighth);   // 1/2 of hip girth 39 3/4 + 1/2 of hip ease 1 = 20 3/8 in
/// </code></example>
public sealed class WorkedLength
{
    private readonly WorkedLength? _first;

    // The second operand; where there is one only, the factor; where there is none, what it was taken from. One place for all three, for a draft holds many lengths.
    private readonly object? _second;

    // Halves and quarters are nearly all that a draft asks for.
    private static readonly object Two = 2.0;
    private static readonly object Four = 4.0;

    private WorkedLength(WorkedOperation operation, double valueMm, string? name, WorkedLength? first, object? second)
    {
        Operation = operation;
        ValueMm = Guard.Finite(valueMm, "value");
        Name = name;
        _first = first;
        _second = second;
    }

    /// <summary>How long.</summary>
    public Length Value => Length.FromMillimeters(ValueMm);

    /// <summary>What the trade calls it, or null where it is a step on the way.</summary>
    public string? Name { get; }

    /// <summary>How it came about.</summary>
    public WorkedOperation Operation { get; }

    /// <summary>What it was multiplied with or divided by; 1 for the other operations.</summary>
    public double Factor => _second is double factor ? factor : 1;

    /// <summary>What it was worked from, in order: none, one or two.</summary>
    public IReadOnlyList<WorkedLength> Operands => _first is null ? [] : Second is { } second ? [_first, second] : [_first];

    internal double ValueMm { get; }

    /// <summary>What it is the negative of, where that has a name: one says that the front is wider, and not that the back is wider by less than nothing.</summary>
    internal WorkedLength? Opposite => Operation == WorkedOperation.Product && Factor == -1 && _first is { Name: not null } ? _first : null;

    internal WorkedLength? First => _first;

    internal WorkedLength? Second => _second as WorkedLength;

    /// <summary>Where a length that was worked from no other comes from: one of <see cref="LengthSource"/>; the lengths that it was chosen by; for one taken from a draft also what the
    /// tape lay along, in the words of the sheet. Null where nobody said.</summary>
    internal object? Source => _first is null ? _second : null;

    /// <summary>A length measured on the body.</summary>
    /// <param name="name">The term: <c>hip girth</c>.</param>
    /// <param name="value">What the tape said.</param>
    /// <exception cref="ArgumentException">The name is empty or blank.</exception>
    [Pure]
    public static WorkedLength Measured(string name, Length value) => MeasuredMm(Guard.Name(name, nameof(name)), Guard.Millimetres(value, nameof(value)));

    /// <summary>A length that somebody chose: an ease, a default, a reading of a table.</summary>
    /// <param name="name">What it is: <c>hip ease</c>.</param>
    /// <param name="value">How long.</param>
    /// <exception cref="ArgumentException">The name is empty or blank.</exception>
    [Pure]
    public static WorkedLength Given(string name, Length value) => GivenMm(Guard.Name(name, nameof(name)), Guard.Millimetres(value, nameof(value)));

    /// <summary>A length without a name, printed as its figure alone: the 1 1/4 in "at most 1 1/4".</summary>
    /// <param name="value">How long.</param>
    [Pure]
    public static WorkedLength Given(Length value) => GivenMm(null, Guard.Millimetres(value, nameof(value)));

    /// <summary>A length taken from the draft, as a drafter would lay the tape along a line.</summary>
    /// <param name="name">What was measured: <c>front side seam</c>.</param>
    /// <param name="value">How long.</param>
    /// <exception cref="ArgumentException">The name is empty or blank.</exception>
    [Pure]
    public static WorkedLength Drawn(string name, Length value) => DrawnMm(Guard.Name(name, nameof(name)), Guard.Millimetres(value, nameof(value)));

    /// <summary>Half of it.</summary>
    [Pure]
    public WorkedLength Half() => DividedBy(2);

    /// <summary>A quarter of it.</summary>
    [Pure]
    public WorkedLength Quarter() => DividedBy(4);

    /// <summary>It, divided into equal parts.</summary>
    /// <param name="parts">One or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">No parts.</exception>
    [Pure]
    public WorkedLength DividedBy(int parts)
        => new(WorkedOperation.Quotient, ValueMm / Guard.InRange(parts, 1, int.MaxValue, nameof(parts)), null, this, Kept(parts));

    /// <summary>It, so many times.</summary>
    /// <param name="factor">Any finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not finite, or the product too large for a number.</exception>
    [Pure]
    public WorkedLength Times(double factor) => new(WorkedOperation.Product, ValueMm * Guard.Finite(factor, nameof(factor)), null, this, Kept(factor));

    /// <summary>It, but no longer than a limit.</summary>
    /// <param name="limit">The longest that it may be.</param>
    [Pure]
    public WorkedLength AtMost(WorkedLength limit)
        => new(WorkedOperation.AtMost, Math.Min(ValueMm, Guard.NotNull(limit, nameof(limit)).ValueMm), null, this, limit);

    /// <summary>It, but no shorter than a limit.</summary>
    /// <param name="limit">The shortest that it may be.</param>
    [Pure]
    public WorkedLength AtLeast(WorkedLength limit)
        => new(WorkedOperation.AtLeast, Math.Max(ValueMm, Guard.NotNull(limit, nameof(limit)).ValueMm), null, this, limit);

    /// <summary>The same working under a name; where it is worked with further, name and value are printed and the working is not repeated.</summary>
    /// <param name="name">What the trade calls it: <c>box width</c>.</param>
    /// <exception cref="ArgumentException">The name is empty or blank.</exception>
    [Pure]
    public WorkedLength Named(string name) => new(Operation, ValueMm, Guard.Name(name, nameof(name)), _first, _second);

    /// <summary>The working in words and figures: <c>1/2 of hip girth 39 3/4 + 1/2 of hip ease 1 = 20 3/8 in</c>.</summary>
    /// <remarks>All figures are in the unit of the step, which is named once, at the end. What is printed adds up: where it would not at this step, or where a finer mark
    /// shows it without rounding, the figures are those of the finer mark, down to 1/32 in or half a millimetre; where none does, the result stands alone.
    /// What was taken from the draft is read to 1/32 in or half a millimetre, where it lies on no coarser mark. A figure that was rounded is the nearest one and carries a <c>~</c>: <c>~20 3/8</c>. The own name is not printed, only those of what it was worked from.</remarks>
    /// <param name="step">The tape and its finest mark.</param>
    /// <param name="style">Plain or typographic.</param>
    [Pure]
    public string Describe(TapeStep step, TapeStyle style = TapeStyle.Plain) => WorkedText.Describe(this, step, style);

    /// <summary>The name, where there is one, and the working in sixteenths of an inch.</summary>
    public override string ToString() => WorkedText.WithName(this, TapeStep.Sixteenth, TapeStyle.Plain);

    internal static WorkedLength MeasuredMm(string name, double valueMm) => new(WorkedOperation.Measured, valueMm, name, null, null);

    internal static WorkedLength GivenMm(string? name, double valueMm, object? source = null) => new(WorkedOperation.Given, valueMm, name, null, source);

    internal static WorkedLength DrawnMm(string? name, double valueMm, object? source = null) => new(WorkedOperation.Drawn, valueMm, name, null, source);

    /// <summary>One after the other.</summary>
    public static WorkedLength operator +(WorkedLength left, WorkedLength right)
        => new(WorkedOperation.Sum, Guard.NotNull(left, nameof(left)).ValueMm + Guard.NotNull(right, nameof(right)).ValueMm, null, left, right);

    /// <summary>What the first has more than the second; negative where it has less.</summary>
    public static WorkedLength operator -(WorkedLength left, WorkedLength right)
        => new(WorkedOperation.Difference, Guard.NotNull(left, nameof(left)).ValueMm - Guard.NotNull(right, nameof(right)).ValueMm, null, left, right);

    private static object Kept(double factor) => factor == 2 ? Two : factor == 4 ? Four : factor;
}
