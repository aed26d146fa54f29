using System;

namespace Pattern.Core.Geometry;

/// <summary>A place on a path: in which segment, how far along its parameter, and where that is.</summary>
/// <remarks>Belongs to the path that it came from; <see cref="CurvePath.LengthTo"/> turns it into a distance along it.</remarks>
public readonly struct PathPosition : IEquatable<PathPosition>
{
    internal PathPosition(int segmentIndex, double t, Point2D point)
    {
        SegmentIndex = segmentIndex;
        T = t;
        Point = point;
    }

    /// <summary>Which segment, counted from 0.</summary>
    public int SegmentIndex { get; }

    /// <summary>The parameter within the segment, from 0 to 1; lines and arcs run evenly.</summary>
    public double T { get; }

    /// <summary>The point.</summary>
    public Point2D Point { get; }

    /// <inheritdoc/>
    public bool Equals(PathPosition other) => SegmentIndex == other.SegmentIndex && T == other.T && Point == other.Point;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PathPosition other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((RawHash.Of(T, Point.XMm) * 397) ^ SegmentIndex);

    /// <summary>The point.</summary>
    public override string ToString() => Point.ToString();

    /// <summary>Compares segment, parameter and point exactly.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">Another place.</param>
    public static bool operator ==(PathPosition left, PathPosition right) => left.Equals(right);

    /// <summary>Compares segment, parameter and point exactly.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">Another place.</param>
    public static bool operator !=(PathPosition left, PathPosition right) => !left.Equals(right);
}
