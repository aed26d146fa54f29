using System;
using System.Diagnostics.Contracts;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A straight line without ends, with a heading.</summary>
/// <remarks>The default value is the X axis.</remarks>
public readonly partial struct Line : IEquatable<Line>
{
    private Line(Point2D point, Direction direction)
    {
        Point = point;
        Direction = direction;
    }

    /// <summary>A point that the line goes through.</summary>
    public Point2D Point { get; }

    /// <summary>The heading of the line.</summary>
    public Direction Direction { get; }

    /// <summary>The line through a point with a heading.</summary>
    /// <param name="point">A point of the line.</param>
    /// <param name="direction">Its heading.</param>
    public static Line From(Point2D point, Direction direction) => new(point, direction);

    /// <summary>The line through two points, heading from the first to the second.</summary>
    /// <param name="first">One point.</param>
    /// <param name="second">Another point.</param>
    /// <exception cref="ArgumentException">Both points are the same.</exception>
    public static Line Through(Point2D first, Point2D second)
        => new(first, Direction.OfRaw(second.XMm - first.XMm, second.YMm - first.YMm, nameof(second)));

    /// <summary>The level line through a point, heading right.</summary>
    /// <param name="point">A point of the line.</param>
    public static Line Horizontal(Point2D point) => new(point, Direction.Right);

    /// <summary>The upright line through a point, heading up.</summary>
    /// <param name="point">A point of the line.</param>
    public static Line Vertical(Point2D point) => new(point, Direction.Up);

    /// <summary>The point of the line at a distance from <see cref="Point"/> along its heading.</summary>
    /// <param name="distance">Negative goes backwards.</param>
    [Pure]
    internal Point2D PointAt(Length distance) => Point.Toward(Direction, distance);

    /// <summary>The foot of the perpendicular from a point: the nearest point of the line.</summary>
    /// <param name="point">Any point.</param>
    [Pure]
    public Point2D FootOf(Point2D point)
    {
        double alongMm = AlongMm(point);
        return new Point2D(Point.XMm + (Direction.X * alongMm), Point.YMm + (Direction.Y * alongMm));
    }

    /// <summary>The line square to this one through a point, heading to the left of this one.</summary>
    /// <param name="point">Any point.</param>
    [Pure]
    public Line PerpendicularThrough(Point2D point) => new(point, Direction.TurnedLeft);

    /// <summary>The distance of a point from the line: positive to the left of its heading, negative to the right.</summary>
    /// <param name="point">Any point.</param>
    [Pure]
    internal Length SignedDistanceTo(Point2D point) => Length.FromMillimeters(OffsetMm(point));

    /// <summary>This line after a transform.</summary>
    /// <param name="transform">The move.</param>
    [Pure]
    public Line Transformed(Transform2D transform) => new(transform.Apply(Point), Direction.Transformed(transform));

    /// <inheritdoc/>
    public bool Equals(Line other) => Point == other.Point && Direction == other.Direction;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Line other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(Point.XMm, Point.YMm, Direction.X, Direction.Y);

    /// <summary>The point and the heading.</summary>
    public override string ToString() => $"{Point} at {Direction}";

    internal double AlongMm(in Point2D point)
        => ((point.XMm - Point.XMm) * Direction.X) + ((point.YMm - Point.YMm) * Direction.Y);

    internal double OffsetMm(in Point2D point)
        => (Direction.X * (point.YMm - Point.YMm)) - (Direction.Y * (point.XMm - Point.XMm));

    /// <summary>Compares point and heading exactly.</summary>
    /// <param name="left">One line.</param>
    /// <param name="right">Another line.</param>
    public static bool operator ==(Line left, Line right) => left.Equals(right);

    /// <summary>Compares point and heading exactly.</summary>
    /// <param name="left">One line.</param>
    /// <param name="right">Another line.</param>
    public static bool operator !=(Line left, Line right) => !left.Equals(right);
}
