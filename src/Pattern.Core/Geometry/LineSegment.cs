using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A straight line between two points.</summary>
/// <remarks>Start and end may be the same point; it has no direction then.</remarks>
public readonly partial struct LineSegment : IEquatable<LineSegment>
{
    internal LineSegment(Point2D start, Point2D end)
    {
        Start = start;
        End = end;
    }

    /// <summary>Where it begins.</summary>
    public Point2D Start { get; }

    /// <summary>Where it ends.</summary>
    public Point2D End { get; }

    /// <summary>The distance between the ends.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>The heading from start to end.</summary>
    /// <exception cref="InvalidOperationException">Both ends are the same point.</exception>
    public Direction Direction => Direction.TryOfRaw(End.XMm - Start.XMm, End.YMm - Start.YMm, out Direction direction)
        ? direction
        : throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.DirectionUndefined, "The line segment"));

    /// <summary>The point half-way.</summary>
    public Point2D Midpoint => Start.MidpointTo(End);

    /// <summary>The smallest upright box around it.</summary>
    public BoundingBox Bounds => BoundingBox.Around(Start, End);

    internal double LengthMm => Start.DistanceMm(End);

    /// <summary>The line from one point to another.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">Where it ends; may be the same point.</param>
    public static LineSegment Between(Point2D start, Point2D end) => new(start, end);

    /// <summary>The point at a distance from the start.</summary>
    /// <param name="distance">From zero to the length of the segment, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end.</exception>
    [Pure]
    internal Point2D PointAtLength(Length distance)
    {
        double lengthMm = LengthMm;
        double distanceMm = Guard.Millimetres(distance, 0, lengthMm, nameof(distance));
        return lengthMm == 0 ? Start : PointAtRaw(distanceMm / lengthMm);
    }

    /// <summary>The same line from end to start.</summary>
    [Pure]
    public LineSegment Reversed() => new(End, Start);

    /// <summary>This segment after a transform.</summary>
    /// <param name="transform">The move.</param>
    [Pure]
    public LineSegment Transformed(Transform2D transform) => new(transform.Apply(Start), transform.Apply(End));

    /// <summary>The same line as a cubic of even speed.</summary>
    [Pure]
    public CubicBezier ToCubic()
    {
        double dx = (End.XMm - Start.XMm) / 3;
        double dy = (End.YMm - Start.YMm) / 3;
        return new CubicBezier(Start.XMm, Start.YMm, Start.XMm + dx, Start.YMm + dy, End.XMm - dx, End.YMm - dy, End.XMm, End.YMm);
    }

    /// <inheritdoc/>
    public bool Equals(LineSegment other) => Start == other.Start && End == other.End;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LineSegment other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(Start.XMm, Start.YMm, End.XMm, End.YMm);

    /// <summary>Both ends.</summary>
    public override string ToString() => $"{Start} to {End}";

    // Weighs both ends, so that u = 1 gives exactly the end.
    internal Point2D PointAtRaw(double u) => new((Start.XMm * (1 - u)) + (End.XMm * u), (Start.YMm * (1 - u)) + (End.YMm * u));

    /// <summary>Compares both ends exactly.</summary>
    /// <param name="left">One segment.</param>
    /// <param name="right">Another segment.</param>
    public static bool operator ==(LineSegment left, LineSegment right) => left.Equals(right);

    /// <summary>Compares both ends exactly.</summary>
    /// <param name="left">One segment.</param>
    /// <param name="right">Another segment.</param>
    public static bool operator !=(LineSegment left, LineSegment right) => !left.Equals(right);
}
