using System;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A place on an edge that stays meant when the edge changes: one of its ends, a notch, or a distance.</summary>
public readonly struct SeamMark : IEquatable<SeamMark>
{
    internal const int MostNotches = 99;

    private readonly double _value;

    private SeamMark(SeamMarkKind kind, double value)
    {
        Kind = kind;
        _value = value;
    }

    /// <summary>Where the edge begins. The default value.</summary>
    public static SeamMark Start => default;

    /// <summary>Where the edge ends.</summary>
    public static SeamMark End => new(SeamMarkKind.End, 0);

    internal SeamMarkKind Kind { get; }

    /// <summary>The number of the notch or the distance in millimetres; null at an end.</summary>
    internal double? Value => Kind is SeamMarkKind.Notch or SeamMarkKind.Distance ? _value : null;

    internal bool IsStart => Kind == SeamMarkKind.Start;

    internal bool IsEnd => Kind == SeamMarkKind.End;

    /// <summary>A notch of the edge, counted along it.</summary>
    /// <param name="number">From 1, in the order of the edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is less than 1 or more than 99.</exception>
    public static SeamMark Notch(int number) => new(SeamMarkKind.Notch, Guard.InRange(number, 1, MostNotches, nameof(number)));

    /// <summary>A place on the edge.</summary>
    /// <param name="distanceFromStart">Along the sewn edge from its start, darts closed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or not finite.</exception>
    public static SeamMark At(Length distanceFromStart) => new(SeamMarkKind.Distance, Guard.Millimetres(distanceFromStart, 0, 1e6, nameof(distanceFromStart)));

    /// <inheritdoc/>
    public bool Equals(SeamMark other) => Kind == other.Kind && _value == other._value;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SeamMark other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_value.GetHashCode() * 397) ^ (int)Kind);

    /// <summary>Such as <c>start</c>, <c>notch 1</c> or <c>120 mm</c>.</summary>
    public override string ToString() => Kind switch
    {
        SeamMarkKind.Start => "start",
        SeamMarkKind.End => "end",
        SeamMarkKind.Notch => "notch " + _value.ToString(CultureInfo.InvariantCulture),
        _ => _value.ToString("0.###", CultureInfo.InvariantCulture) + " mm",
    };

    /// <summary>Where on an edge the mark is, along the sewn edge from its start; NaN where the edge has no such place.</summary>
    internal double ResolveMm(double lengthMm, double[] notchesMm) => Kind switch
    {
        SeamMarkKind.Start => 0,
        SeamMarkKind.End => lengthMm,
        SeamMarkKind.Notch => _value <= notchesMm.Length ? notchesMm[(int)_value - 1] : double.NaN,
        _ => _value <= lengthMm ? _value : double.NaN,
    };

    /// <summary>Whether both are the same mark, said in the same way.</summary>
    public static bool operator ==(SeamMark left, SeamMark right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(SeamMark left, SeamMark right) => !left.Equals(right);
}

/// <summary>How a mark is said.</summary>
internal enum SeamMarkKind
{
    Start,
    End,
    Notch,
    Distance,
}
