using System;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A place on an edge that stays meant when the edge changes: one of its ends, a notch, or a distance.</summary>
public readonly struct SeamMark : IEquatable<SeamMark>
{
    private readonly Kind _kind;
    private readonly double _value;

    private SeamMark(Kind kind, double value)
    {
        _kind = kind;
        _value = value;
    }

    private enum Kind
    {
        Start,
        End,
        Notch,
        Distance,
    }

    /// <summary>Where the edge begins. The default value.</summary>
    public static SeamMark Start => default;

    /// <summary>Where the edge ends.</summary>
    public static SeamMark End => new(Kind.End, 0);

    internal bool IsStart => _kind == Kind.Start;

    internal bool IsEnd => _kind == Kind.End;

    /// <summary>A notch of the edge, counted along it.</summary>
    /// <param name="number">From 1, in the order of the edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is less than 1 or more than 99.</exception>
    public static SeamMark Notch(int number) => new(Kind.Notch, Guard.InRange(number, 1, 99, nameof(number)));

    /// <summary>A place on the edge.</summary>
    /// <param name="distanceFromStart">Along the sewn edge from its start, darts closed.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or not finite.</exception>
    public static SeamMark At(Length distanceFromStart) => new(Kind.Distance, Guard.Millimetres(distanceFromStart, 0, 1e6, nameof(distanceFromStart)));

    /// <inheritdoc/>
    public bool Equals(SeamMark other) => _kind == other._kind && _value == other._value;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is SeamMark other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_value.GetHashCode() * 397) ^ (int)_kind);

    /// <summary>Such as <c>start</c>, <c>notch 1</c> or <c>120 mm</c>.</summary>
    public override string ToString() => _kind switch
    {
        Kind.Start => "start",
        Kind.End => "end",
        Kind.Notch => "notch " + _value.ToString(CultureInfo.InvariantCulture),
        _ => _value.ToString("0.###", CultureInfo.InvariantCulture) + " mm",
    };

    /// <summary>Where on an edge the mark is, along the sewn edge from its start; NaN where the edge has no such place.</summary>
    internal double ResolveMm(double lengthMm, double[] notchesMm) => _kind switch
    {
        Kind.Start => 0,
        Kind.End => lengthMm,
        Kind.Notch => _value <= notchesMm.Length ? notchesMm[(int)_value - 1] : double.NaN,
        _ => _value <= lengthMm ? _value : double.NaN,
    };

    /// <summary>Whether both are the same mark, said in the same way.</summary>
    public static bool operator ==(SeamMark left, SeamMark right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(SeamMark left, SeamMark right) => !left.Equals(right);
}
