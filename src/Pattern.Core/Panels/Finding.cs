using System;
using System.Globalization;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>One thing that was measured: what, where, before a change where there was one, now, and what it should be.</summary>
public sealed class Finding
{
    /// <summary>What cutters accept when walking a seam by hand (common practice, no source): 1/16 in.</summary>
    internal const double HandToleranceMm = 25.4 / 16;

    // What few findings have: advice, or the measure before a change. One field for both, for a report holds many.
    private readonly object? _more;

    internal Finding(
        string check, string place, FindingKind kind, FindingRelation relation, double measured, double target, double tolerance, double before = double.NaN)
    {
        Check = check;
        Place = place;
        Kind = kind;
        Relation = relation;
        RawMeasured = measured;
        RawTarget = target;
        RawTolerance = tolerance;
        _more = double.IsNaN(before) ? null : before;
    }

    internal Finding(Advice advice, string check, string place, FindingKind kind, FindingRelation relation, double measured, double target)
        : this(check, place, kind, relation, measured, target, 0)
        => _more = advice;

    /// <summary>What was measured, in lower case words, such as <c>closed waist</c>.</summary>
    public string Check { get; }

    /// <summary>What was measured as one word for tables, such as <c>closed_waist</c>: its words joined with <c>_</c>, then <c>_deg</c> for an angle and <c>_count</c> for a number.</summary>
    public string Code => Check.Replace(' ', '_') + Kind switch { FindingKind.Angle => "_deg", FindingKind.Count => "_count", _ => string.Empty };

    /// <summary>The panel, or <c>block</c> where a check spans all of them.</summary>
    public string Place { get; }

    /// <summary>Whether a length, an angle or a number was measured.</summary>
    public FindingKind Kind { get; }

    /// <summary>Whether the measure has to equal its target or may lie on one side of it.</summary>
    public FindingRelation Relation { get; }

    /// <summary>What it was before a change, such as truing or reading off a tape; null where nothing was changed.</summary>
    public IQuantity? Before => double.IsNaN(RawBefore) ? null : AsQuantity(RawBefore);

    /// <summary>What was measured: a <see cref="Length"/>, an <see cref="Angle"/> or, for a number, a <see cref="Scalar"/>.</summary>
    public IQuantity Measured => AsQuantity(RawMeasured);

    /// <summary>What it should be, in the same kind of quantity.</summary>
    public IQuantity Target => AsQuantity(RawTarget);

    /// <summary>Measured minus target.</summary>
    public IQuantity Difference => AsQuantity(RawMeasured - RawTarget);

    /// <summary>How far off it may be: computed work holds 0.01 mm and 0.01 degrees; where a check allows more, its page says why.</summary>
    public IQuantity Tolerance => AsQuantity(RawTolerance);

    /// <summary>Why a cutter would look twice and what would help; null for a check, which holds or fails.</summary>
    public Advice? Advice => _more as Advice;

    /// <summary>Whether the check holds, fails, or is no check but advice.</summary>
    public FindingVerdict Verdict => Advice is not null ? FindingVerdict.Advice : Holds(RawTolerance) ? FindingVerdict.Passed : FindingVerdict.Failed;

    /// <summary>Whether this is a check that holds within <see cref="Tolerance"/>. False for a measure that is not a number.</summary>
    public bool Passed => Verdict == FindingVerdict.Passed;

    /// <summary>Whether this is a check that does not hold.</summary>
    public bool Failed => Verdict == FindingVerdict.Failed;

    /// <summary>Whether a length would pass a cutter walking it by hand, who accepts 1/16 in; the same as <see cref="Passed"/> for anything else.</summary>
    public bool PassedByHand => Kind == FindingKind.Length && Advice is null ? Holds(HandToleranceMm) : Passed;

    /// <summary>Millimetres, radians or a number.</summary>
    internal double RawMeasured { get; }

    /// <inheritdoc cref="RawMeasured"/>
    internal double RawTarget { get; }

    /// <inheritdoc cref="RawMeasured"/>
    internal double RawTolerance { get; }

    /// <summary>Not a number where nothing was changed.</summary>
    internal double RawBefore => _more is double before ? before : double.NaN;

    /// <summary>One line: verdict, check, place, measured, target, tolerance, or the advice; millimetres and degrees.</summary>
    public override string ToString()
    {
        (string unit, double scale, string format) = Kind switch
        {
            FindingKind.Length => (" mm", 1.0, "0.000"),
            FindingKind.Angle => (" deg", 180 / Math.PI, "0.000"),
            _ => (string.Empty, 1.0, "0"),
        };
        string relation = Relation switch { FindingRelation.AtLeast => "at least ", FindingRelation.AtMost => "at most ", _ => string.Empty };
        string Number(double raw) => (raw * scale).ToString(format, CultureInfo.InvariantCulture) + unit;
        string before = double.IsNaN(RawBefore) ? string.Empty : $"before {Number(RawBefore)}, now ";
        return Advice is { } advice
            ? $"advice {Check}, {Place}: {Number(RawMeasured)}, usual {relation}{Number(RawTarget)}. {advice}"
            : $"{(Passed ? "ok    " : "FAILED")} {Check}, {Place}: {before}{Number(RawMeasured)}, target {relation}{Number(RawTarget)}, tolerance {Number(RawTolerance)}";
    }

    private bool Holds(double tolerance)
    {
        double difference = RawMeasured - RawTarget;
        return Relation switch
        {
            FindingRelation.AtLeast => difference >= -tolerance,
            FindingRelation.AtMost => difference <= tolerance,
            _ => Math.Abs(difference) <= tolerance,
        };
    }

    private IQuantity AsQuantity(double raw) => Kind switch
    {
        FindingKind.Length => Length.FromMillimeters(raw),
        FindingKind.Angle => Angle.FromRadians(raw),
        _ => Scalar.FromAmount(raw),
    };
}
