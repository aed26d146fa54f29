using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A place on the sheet: X to the right, Y upwards.</summary>
/// <remarks>The default value is the origin. Equality compares coordinates exactly; use <see cref="IsCloseTo"/> for computed points.</remarks>
public readonly struct Point2D : IEquatable<Point2D>
{
    // So far out a double still tells a tenth of a micrometre apart, and no product of coordinates overflows.
    private const double FarthestMm = 1e12;

    internal readonly double XMm;
    internal readonly double YMm;

    internal Point2D(double xMm, double yMm)
    {
        XMm = xMm;
        YMm = yMm;
    }

    /// <summary>The origin.</summary>
    /// <value>X = 0, Y = 0.</value>
    public static Point2D Origin => default;

    /// <summary>Distance to the right of the origin.</summary>
    public Length X => Length.FromMillimeters(XMm);

    /// <summary>Distance above the origin.</summary>
    public Length Y => Length.FromMillimeters(YMm);

    /// <summary>Makes a point.</summary>
    /// <param name="x">To the right of the origin.</param>
    /// <param name="y">Above the origin.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite, or more than a million kilometres.</exception>
    public static Point2D At(Length x, Length y) => new(CoordinateMm(x.Millimeters, nameof(x)), CoordinateMm(y.Millimeters, nameof(y)));

    /// <summary>Makes a point from plain numbers in millimetres.</summary>
    /// <param name="x">Millimetres to the right of the origin.</param>
    /// <param name="y">Millimetres above the origin.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN, infinite, or more than a million kilometres.</exception>
    public static Point2D FromMillimeters(double x, double y) => new(CoordinateMm(x, nameof(x)), CoordinateMm(y, nameof(y)));

    /// <summary>The straight distance to another point.</summary>
    /// <param name="other">The other point.</param>
    [Pure]
    public Length DistanceTo(Point2D other) => Length.FromMillimeters(DistanceMm(other));

    /// <summary>The direction in which another point lies.</summary>
    /// <param name="other">The other point.</param>
    /// <exception cref="ArgumentException">Both points are the same.</exception>
    [Pure]
    public Direction DirectionTo(Point2D other) => Direction.OfRaw(other.XMm - XMm, other.YMm - YMm, nameof(other));

    /// <summary>The point at a distance from this one in a direction.</summary>
    /// <param name="direction">Where to go.</param>
    /// <param name="distance">How far; negative goes the other way.</param>
    [Pure]
    public Point2D Toward(Direction direction, Length distance)
    {
        double distanceMm = Guard.Millimetres(distance, nameof(distance));
        return new Point2D(XMm + (direction.X * distanceMm), YMm + (direction.Y * distanceMm));
    }

    /// <summary>The point half-way to another one.</summary>
    /// <param name="other">The other point.</param>
    [Pure]
    public Point2D MidpointTo(Point2D other) => new((XMm * 0.5) + (other.XMm * 0.5), (YMm * 0.5) + (other.YMm * 0.5));

    /// <summary>This point moved by a transform.</summary>
    /// <param name="transform">The move.</param>
    [Pure]
    public Point2D Transformed(Transform2D transform) => transform.Apply(this);

    /// <summary>Whether another point is no farther away than a tolerance.</summary>
    /// <param name="other">The other point.</param>
    /// <param name="tolerance">The largest distance that counts as the same place.</param>
    [Pure]
    internal bool IsCloseTo(Point2D other, Length tolerance) => DistanceMm(other) <= Guard.Millimetres(tolerance, nameof(tolerance));

    /// <inheritdoc/>
    public bool Equals(Point2D other) => XMm == other.XMm && YMm == other.YMm;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Point2D other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(XMm, YMm);

    /// <summary>The coordinates in millimetres, such as <c>(120.5, -3.25) mm</c>.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "({0:0.######}, {1:0.######}) mm", XMm, YMm);

    private static double CoordinateMm(double millimetres, string parameter)
        => Math.Abs(Guard.Finite(millimetres, parameter)) <= FarthestMm
            ? millimetres
            : throw new ArgumentOutOfRangeException(
                parameter,
                MessageRegistry.Format(
                    DiagnosticCode.QuantityOutOfRange,
                    parameter,
                    Length.FromMillimeters(millimetres),
                    Length.FromMillimeters(-FarthestMm),
                    Length.FromMillimeters(FarthestMm)));

    internal double DistanceMm(in Point2D other) => Raw.Hypot(other.XMm - XMm, other.YMm - YMm);

    /// <summary>Compares coordinates exactly.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">Another point.</param>
    public static bool operator ==(Point2D left, Point2D right) => left.Equals(right);

    /// <summary>Compares coordinates exactly.</summary>
    /// <param name="left">One point.</param>
    /// <param name="right">Another point.</param>
    public static bool operator !=(Point2D left, Point2D right) => !left.Equals(right);

    /// <summary>The way from <paramref name="from"/> to <paramref name="to"/>.</summary>
    /// <param name="to">Where the vector points.</param>
    /// <param name="from">Where the vector begins.</param>
    public static Vector2D operator -(Point2D to, Point2D from) => new(to.XMm - from.XMm, to.YMm - from.YMm);

    /// <summary>The point that a vector leads to.</summary>
    /// <param name="point">Where the vector begins.</param>
    /// <param name="vector">The way.</param>
    public static Point2D operator +(Point2D point, Vector2D vector) => new(point.XMm + vector.XMm, point.YMm + vector.YMm);

    /// <summary>The point that a vector comes from.</summary>
    /// <param name="point">Where the vector ends.</param>
    /// <param name="vector">The way.</param>
    public static Point2D operator -(Point2D point, Vector2D vector) => new(point.XMm - vector.XMm, point.YMm - vector.YMm);
}
