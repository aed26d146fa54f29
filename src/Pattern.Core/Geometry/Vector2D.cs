using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A way to go: so far to the right, so far up.</summary>
/// <remarks>The default value goes nowhere. Equality compares components exactly.</remarks>
public readonly struct Vector2D : IEquatable<Vector2D>
{
    internal readonly double XMm;
    internal readonly double YMm;

    internal Vector2D(double xMm, double yMm)
    {
        XMm = xMm;
        YMm = yMm;
    }

    /// <summary>How far to the right; negative is to the left.</summary>
    public Length X => Length.FromMillimeters(XMm);

    /// <summary>How far up; negative is down.</summary>
    public Length Y => Length.FromMillimeters(YMm);

    /// <summary>How far in all, along the straight way.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>Where the vector points.</summary>
    /// <exception cref="InvalidOperationException">The vector goes nowhere.</exception>
    public Direction Direction => XMm == 0 && YMm == 0
        ? throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.DirectionUndefined, "The vector"))
        : Direction.OfRaw(XMm, YMm, string.Empty);

    internal double LengthMm => Raw.Hypot(XMm, YMm);

    /// <summary>Makes a vector.</summary>
    /// <param name="x">How far to the right.</param>
    /// <param name="y">How far up.</param>
    /// <exception cref="ArgumentOutOfRangeException">A component is not finite.</exception>
    public static Vector2D Of(Length x, Length y) => new(Guard.Millimetres(x, nameof(x)), Guard.Millimetres(y, nameof(y)));

    /// <summary>Makes a vector from plain numbers in millimetres.</summary>
    /// <param name="x">Millimetres to the right.</param>
    /// <param name="y">Millimetres up.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN or infinite.</exception>
    public static Vector2D FromMillimeters(double x, double y) => new(Guard.Finite(x, nameof(x)), Guard.Finite(y, nameof(y)));

    /// <summary>The dot product: length times length times the cosine of the angle between.</summary>
    /// <param name="other">The other vector.</param>
    [Pure]
    public Area Dot(Vector2D other) => Area.FromSquareMillimeters(DotMm2(other));

    /// <summary>The cross product: the signed area of the parallelogram, positive where <paramref name="other"/> lies to the left.</summary>
    /// <param name="other">The other vector.</param>
    [Pure]
    internal Area Cross(Vector2D other) => Area.FromSquareMillimeters(CrossMm2(other));

    /// <summary>This vector turned.</summary>
    /// <param name="angle">How far; counter-clockwise is positive. Quarter turns are exact.</param>
    [Pure]
    internal Vector2D Rotated(Angle angle)
    {
        Direction turn = Direction.FromAngle(angle);
        return new Vector2D((XMm * turn.X) - (YMm * turn.Y), (XMm * turn.Y) + (YMm * turn.X));
    }

    /// <summary>The angle from this vector to another one, more than -180 and at most 180 degrees; positive to the left.</summary>
    /// <param name="other">The other vector.</param>
    [Pure]
    public Angle AngleTo(Vector2D other) => Angle.FromRadians(AngleRadTo(other));

    /// <inheritdoc/>
    public bool Equals(Vector2D other) => XMm == other.XMm && YMm == other.YMm;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Vector2D other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(XMm, YMm);

    /// <summary>The components in millimetres, such as <c>[120.5, -3.25] mm</c>.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "[{0:0.######}, {1:0.######}] mm", XMm, YMm);

    internal double AngleRadTo(in Vector2D other) => Math.Atan2(CrossMm2(other), DotMm2(other));

    internal double DotMm2(in Vector2D other) => (XMm * other.XMm) + (YMm * other.YMm);

    internal double CrossMm2(in Vector2D other) => (XMm * other.YMm) - (YMm * other.XMm);

    /// <summary>Compares components exactly.</summary>
    /// <param name="left">One vector.</param>
    /// <param name="right">Another vector.</param>
    public static bool operator ==(Vector2D left, Vector2D right) => left.Equals(right);

    /// <summary>Compares components exactly.</summary>
    /// <param name="left">One vector.</param>
    /// <param name="right">Another vector.</param>
    public static bool operator !=(Vector2D left, Vector2D right) => !left.Equals(right);

    /// <summary>One way after the other.</summary>
    /// <param name="left">The first way.</param>
    /// <param name="right">The second way.</param>
    public static Vector2D operator +(Vector2D left, Vector2D right) => new(left.XMm + right.XMm, left.YMm + right.YMm);

    /// <summary>One way after the other taken backwards.</summary>
    /// <param name="left">The first way.</param>
    /// <param name="right">The way to take backwards.</param>
    public static Vector2D operator -(Vector2D left, Vector2D right) => new(left.XMm - right.XMm, left.YMm - right.YMm);

    /// <summary>The way back.</summary>
    /// <param name="vector">The way.</param>
    public static Vector2D operator -(Vector2D vector) => new(-vector.XMm, -vector.YMm);

    /// <summary>The same way, so many times as far.</summary>
    /// <param name="vector">The way.</param>
    /// <param name="factor">How many times.</param>
    public static Vector2D operator *(Vector2D vector, double factor) => new(vector.XMm * factor, vector.YMm * factor);

    /// <summary>The same way, so many times as far.</summary>
    /// <param name="factor">How many times.</param>
    /// <param name="vector">The way.</param>
    public static Vector2D operator *(double factor, Vector2D vector) => vector * factor;
}
