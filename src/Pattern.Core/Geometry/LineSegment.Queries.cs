using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be asked of a line segment.</content>
public readonly partial struct LineSegment
{
    /// <summary>The point of the segment that is nearest to a given point.</summary>
    /// <param name="point">Any point.</param>
    [Pure]
    public CurveLocation ClosestTo(Point2D point)
    {
        double u = ClosestToRaw(point);
        Point2D nearest = PointAtRaw(u);
        return new CurveLocation(u, nearest, nearest.DistanceMm(point));
    }

    internal double ClosestToRaw(in Point2D point)
    {
        double dx = End.XMm - Start.XMm;
        double dy = End.YMm - Start.YMm;
        double largest = Math.Max(Math.Abs(dx), Math.Abs(dy));
        if (largest == 0)
        {
            return 0;
        }

        // Scaled by the larger component, so that no square leaves the range of a double.
        dx /= largest;
        dy /= largest;
        double along = (((point.XMm - Start.XMm) * dx) + ((point.YMm - Start.YMm) * dy)) / ((dx * dx) + (dy * dy));
        return Raw.Clamp(along / largest, 0, 1);
    }
}
