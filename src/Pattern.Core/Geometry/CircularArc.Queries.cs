using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be asked of an arc.</content>
public readonly partial struct CircularArc
{
    /// <summary>The point of the arc that is nearest to a given point; from the centre, where all are equally near, the start.</summary>
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
        double dx = point.XMm - CentreXMm;
        double dy = point.YMm - CentreYMm;
        if (RadiusMm == 0 || SweepRad == 0 || (dx == 0 && dy == 0))
        {
            return 0;
        }

        if (TryShareAt(Math.Atan2(dy, dx), out double u))
        {
            return u;
        }

        return Start.DistanceMm(point) <= End.DistanceMm(point) ? 0 : 1;
    }

    /// <summary>The share of the way round at which the arc stands in a heading from its centre, if it comes there.</summary>
    internal bool TryShareAt(double headingRad, out double share)
    {
        share = 0;
        if (SweepRad == 0)
        {
            return false;
        }

        const double Turn = 2 * Math.PI;
        double fromStart = SweepRad > 0 ? headingRad - StartRad : StartRad - headingRad;
        fromStart -= Turn * Math.Floor(fromStart / Turn);
        double sweep = Math.Abs(SweepRad);
        share = fromStart / sweep;
        return share <= 1;
    }

    /// <summary>As <see cref="TryShareAt"/>, and so little before the start or beyond the end that it is the same place.</summary>
    internal bool TryShareNear(double headingRad, double toleranceMm, out double share)
    {
        if (TryShareAt(headingRad, out share))
        {
            return true;
        }

        if (SweepRad == 0)
        {
            return false;
        }

        double slack = toleranceMm / RadiusMm / Math.Abs(SweepRad);
        double turn = 2 * Math.PI / Math.Abs(SweepRad);
        if (share <= 1 + slack)
        {
            share = 1;
            return true;
        }

        if (share >= turn - slack)
        {
            share = 0;
            return true;
        }

        return false;
    }
}
