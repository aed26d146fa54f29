using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A heading without a length.</summary>
/// <remarks>The default value points right. Equality compares components exactly.</remarks>
public readonly struct Direction : IEquatable<Direction>
{
    private readonly double _x;
    private readonly double _y;

    private Direction(double x, double y)
    {
        _x = x;
        _y = y;
    }

    /// <summary>Up the sheet.</summary>
    public static Direction Up => new(0, 1);

    /// <summary>Down the sheet.</summary>
    public static Direction Down => new(0, -1);

    /// <summary>To the left of the sheet.</summary>
    public static Direction Left => new(-1, 0);

    /// <summary>To the right of the sheet.</summary>
    public static Direction Right => new(1, 0);

    /// <summary>The angle from <see cref="Right"/>, counter-clockwise, more than -180 and at most 180 degrees.</summary>
    public Angle Angle => Angle.FromRadians(AngleRad);

    /// <summary>The opposite heading.</summary>
    public Direction Reversed => new(-X, -_y);

    /// <summary>This heading turned by exactly a quarter, counter-clockwise.</summary>
    public Direction TurnedLeft => new(-_y, X);

    /// <summary>This heading turned by exactly a quarter, clockwise.</summary>
    public Direction TurnedRight => new(_y, -X);

    // default(Direction) is (0, 0) in memory: read it as "right", so that it is valid.
    internal double X => _x == 0 && _y == 0 ? 1 : _x;

    internal double Y => _y;

    internal double AngleRad => Math.Atan2(_y, X);

    /// <summary>The heading at an angle from <see cref="Right"/>.</summary>
    /// <param name="angle">Counter-clockwise. Multiples of 90 degrees are exact.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    public static Direction FromAngle(Angle angle)
    {
        double quarters = Guard.Finite(angle.Degrees, nameof(angle)) / 90;
        if (quarters == Math.Floor(quarters))
        {
            double turn = quarters - (4 * Math.Floor(quarters / 4));
            return turn switch { 0 => Right, 1 => Up, 2 => Left, _ => Down };
        }

        return FromRadians(angle.Radians);
    }

    /// <summary>This heading turned by an angle.</summary>
    /// <param name="angle">Counter-clockwise is positive. Multiples of 90 degrees are exact.</param>
    [Pure]
    public Direction Turned(Angle angle)
    {
        Direction turn = FromAngle(angle);
        return OfRaw((X * turn.X) - (Y * turn.Y), (X * turn.Y) + (Y * turn.X), nameof(angle));
    }

    /// <summary>The angle from this heading to another one, more than -180 and at most 180 degrees; positive to the left.</summary>
    /// <param name="other">The other heading.</param>
    [Pure]
    public Angle AngleTo(Direction other) => Angle.FromRadians(TurnRadTo(other));

    /// <summary>This heading after a transform.</summary>
    /// <param name="transform">The move.</param>
    [Pure]
    public Direction Transformed(Transform2D transform)
    {
        Vector2D moved = transform.Apply(new Vector2D(X, Y));
        return OfRaw(moved.XMm, moved.YMm, nameof(transform));
    }

    /// <inheritdoc/>
    public bool Equals(Direction other) => X == other.X && Y == other.Y;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Direction other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(X, Y);

    /// <summary>The angle from <see cref="Right"/> in degrees.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0:0.######} degrees", Angle.Degrees);

    internal static Direction FromRadians(double angleRad) => new(Math.Cos(angleRad), Math.Sin(angleRad));

    /// <summary>Trusts that the components have unit length.</summary>
    internal static Direction Unit(double x, double y) => new(x, y);

    /// <summary>The heading of a vector; refuses one of no length.</summary>
    internal static Direction OfRaw(double x, double y, string parameter)
        => TryOfRaw(x, y, out Direction direction)
            ? direction
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.DirectionUndefined, "The way there"), parameter);

    internal static bool TryOfRaw(double x, double y, out Direction direction)
    {
        double length = Raw.Hypot(x, y);
        if (!(length > 0) || double.IsInfinity(length))
        {
            direction = default;
            return false;
        }

        direction = new Direction(x / length, y / length);
        return true;
    }

    internal double TurnRadTo(in Direction other) => Math.Atan2((X * other.Y) - (Y * other.X), (X * other.X) + (Y * other.Y));

    internal Direction TurnedRad(double angleRad)
    {
        Direction turn = FromRadians(angleRad);
        return new Direction((X * turn.X) - (Y * turn.Y), (X * turn.Y) + (Y * turn.X));
    }

    internal double Dot(in Vector2D vector) => (X * vector.XMm) + (Y * vector.YMm);

    internal Vector2D TimesMm(double lengthMm) => new(X * lengthMm, Y * lengthMm);

    /// <summary>Compares headings exactly.</summary>
    /// <param name="left">One heading.</param>
    /// <param name="right">Another heading.</param>
    public static bool operator ==(Direction left, Direction right) => left.Equals(right);

    /// <summary>Compares headings exactly.</summary>
    /// <param name="left">One heading.</param>
    /// <param name="right">Another heading.</param>
    public static bool operator !=(Direction left, Direction right) => !left.Equals(right);

    /// <summary>The vector of a length in a direction.</summary>
    /// <param name="direction">The heading.</param>
    /// <param name="length">How far; negative goes the other way.</param>
    public static Vector2D operator *(Direction direction, Length length) => direction.TimesMm(Guard.Millimetres(length, nameof(length)));
}
