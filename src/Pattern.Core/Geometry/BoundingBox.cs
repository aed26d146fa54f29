using System;
using System.Diagnostics.Contracts;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>An upright box: the smallest one around something, borders included.</summary>
/// <remarks>Never empty: around one point it has no width and no height. The default value is the origin alone.</remarks>
public readonly struct BoundingBox : IEquatable<BoundingBox>
{
    internal readonly double LeftMm;
    internal readonly double BottomMm;
    internal readonly double RightMm;
    internal readonly double TopMm;

    internal BoundingBox(double leftMm, double bottomMm, double rightMm, double topMm)
    {
        LeftMm = leftMm;
        BottomMm = bottomMm;
        RightMm = rightMm;
        TopMm = topMm;
    }

    /// <summary>The least X.</summary>
    public Length Left => Length.FromMillimeters(LeftMm);

    /// <summary>The least Y.</summary>
    public Length Bottom => Length.FromMillimeters(BottomMm);

    /// <summary>The greatest X.</summary>
    public Length Right => Length.FromMillimeters(RightMm);

    /// <summary>The greatest Y.</summary>
    public Length Top => Length.FromMillimeters(TopMm);

    /// <summary>From left to right.</summary>
    public Length Width => Length.FromMillimeters(RightMm - LeftMm);

    /// <summary>From bottom to top.</summary>
    public Length Height => Length.FromMillimeters(TopMm - BottomMm);

    /// <summary>The lower left corner.</summary>
    public Point2D LowerLeft => new(LeftMm, BottomMm);

    /// <summary>The upper right corner.</summary>
    public Point2D UpperRight => new(RightMm, TopMm);

    /// <summary>The middle.</summary>
    public Point2D Centre => LowerLeft.MidpointTo(UpperRight);

    /// <summary>The smallest box around two points.</summary>
    /// <param name="first">One point.</param>
    /// <param name="second">Another point.</param>
    public static BoundingBox Around(Point2D first, Point2D second) => new(
        Math.Min(first.XMm, second.XMm),
        Math.Min(first.YMm, second.YMm),
        Math.Max(first.XMm, second.XMm),
        Math.Max(first.YMm, second.YMm));

    /// <summary>The smallest box around this one and another one.</summary>
    /// <param name="other">The other box.</param>
    [Pure]
    public BoundingBox Union(BoundingBox other) => new(
        Math.Min(LeftMm, other.LeftMm),
        Math.Min(BottomMm, other.BottomMm),
        Math.Max(RightMm, other.RightMm),
        Math.Max(TopMm, other.TopMm));

    /// <summary>Whether a point lies in the box or on its border.</summary>
    /// <param name="point">The point.</param>
    [Pure]
    public bool Contains(Point2D point)
        => point.XMm >= LeftMm && point.XMm <= RightMm && point.YMm >= BottomMm && point.YMm <= TopMm;

    /// <summary>Whether two boxes have a point in common; borders count.</summary>
    /// <param name="other">The other box.</param>
    [Pure]
    public bool Overlaps(BoundingBox other)
        => LeftMm <= other.RightMm && other.LeftMm <= RightMm && BottomMm <= other.TopMm && other.BottomMm <= TopMm;

    /// <inheritdoc/>
    public bool Equals(BoundingBox other)
        => LeftMm == other.LeftMm && BottomMm == other.BottomMm && RightMm == other.RightMm && TopMm == other.TopMm;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is BoundingBox other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => RawHash.Of(LeftMm, BottomMm, RightMm, TopMm);

    /// <summary>The lower left and the upper right corner.</summary>
    public override string ToString() => $"{LowerLeft} to {UpperRight}";

    /// <summary>How far a point is outside; 0 inside and on the border.</summary>
    internal double DistanceMm(in Point2D point)
    {
        double dx = Math.Max(0, Math.Max(LeftMm - point.XMm, point.XMm - RightMm));
        double dy = Math.Max(0, Math.Max(BottomMm - point.YMm, point.YMm - TopMm));
        return dx == 0 ? dy : dy == 0 ? dx : Raw.Hypot(dx, dy);
    }

    internal bool IsNear(in BoundingBox other, double toleranceMm)
        => LeftMm <= other.RightMm + toleranceMm && other.LeftMm <= RightMm + toleranceMm
            && BottomMm <= other.TopMm + toleranceMm && other.BottomMm <= TopMm + toleranceMm;

    internal BoundingBox Including(double xMm, double yMm) => new(
        Math.Min(LeftMm, xMm), Math.Min(BottomMm, yMm), Math.Max(RightMm, xMm), Math.Max(TopMm, yMm));

    /// <summary>Compares borders exactly.</summary>
    /// <param name="left">One box.</param>
    /// <param name="right">Another box.</param>
    public static bool operator ==(BoundingBox left, BoundingBox right) => left.Equals(right);

    /// <summary>Compares borders exactly.</summary>
    /// <param name="left">One box.</param>
    /// <param name="right">Another box.</param>
    public static bool operator !=(BoundingBox left, BoundingBox right) => !left.Equals(right);
}
