using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>The unknowns of a construction while it is drawn, by number in the order in which they were stated, from 1.</summary>
public readonly struct ConstructionUnknowns
{
    private readonly double[]? _values;

    internal ConstructionUnknowns(double[] values) => _values = values;

    /// <summary>How many there are.</summary>
    public int Count => _values?.Length ?? 0;

    /// <summary>An unknown that was stated as a length.</summary>
    /// <param name="number">From 1 to <see cref="Count"/>.</param>
    public Length Length(int number) => UnitsNet.Length.FromMillimeters(Mm(number));

    /// <summary>An unknown that was stated as an angle.</summary>
    /// <param name="number">From 1 to <see cref="Count"/>.</param>
    public Angle Angle(int number) => UnitsNet.Angle.FromRadians(Rad(number));

    internal double Mm(int number) => _values![Guard.InRange(number, 1, Count, nameof(number)) - 1];

    internal double Rad(int number) => Mm(number) / LeastChange.MmPerRad;

    /// <summary>How many there are.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Count} unknowns");
}
