using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be asked of a curve.</content>
public readonly partial struct CubicBezier
{
    /// <summary>The box of the four points, which the curve cannot leave.</summary>
    internal BoundingBox ControlBounds => new(
        Math.Min(Math.Min(X0, X1), Math.Min(X2, X3)),
        Math.Min(Math.Min(Y0, Y1), Math.Min(Y2, Y3)),
        Math.Max(Math.Max(X0, X1), Math.Max(X2, X3)),
        Math.Max(Math.Max(Y0, Y1), Math.Max(Y2, Y3)));

    /// <summary>The point of the curve that is nearest to a given point: of all of them, not the first that is nearer than its neighbours.</summary>
    /// <remarks>Right to within rounding, a few units in the last place of the coordinates. Where two points of the curve are
    /// equally near, either is given.</remarks>
    /// <param name="point">Any point.</param>
    [Pure]
    public CurveLocation ClosestTo(Point2D point)
    {
        double t = ClosestToRaw(point, out double distanceMm);
        return new CurveLocation(t, PointAtRaw(t), distanceMm);
    }

    internal double ClosestToRaw(in Point2D point, out double distanceMm)
    {
        double magnitude = Math.Max(MagnitudeMm, Math.Max(Math.Abs(point.XMm), Math.Abs(point.YMm)));
        if (!NearestOnCubic.IsSafe(magnitude))
        {
            return ClosestScaled(point, magnitude, out distanceMm);
        }

        double distance2 = double.PositiveInfinity;
        NearestOnCubic.TryFind(this, point.XMm, point.YMm, ref distance2, out double t);
        distanceMm = PointAtRaw(t).DistanceMm(point);
        return t;
    }

    /// <summary>Finds the nearest point if its distance is less than a bound, which it then becomes.</summary>
    internal bool TryCloserRaw(in Point2D point, ref double distanceMm, out double t)
    {
        double magnitude = Math.Max(MagnitudeMm, Math.Max(Math.Abs(point.XMm), Math.Abs(point.YMm)));
        double candidateMm;
        if (NearestOnCubic.IsSafe(magnitude))
        {
            // Squared, the bound may lose what sets it apart from the distance: give way by rounding, and compare again below.
            double bound2 = double.IsInfinity(distanceMm) ? distanceMm : distanceMm * distanceMm * (1 + (4 * Raw.Epsilon));
            if (!NearestOnCubic.TryFind(this, point.XMm, point.YMm, ref bound2, out t))
            {
                return false;
            }

            candidateMm = PointAtRaw(t).DistanceMm(point);
        }
        else
        {
            t = ClosestScaled(point, magnitude, out candidateMm);
        }

        if (!(candidateMm < distanceMm))
        {
            return false;
        }

        distanceMm = candidateMm;
        return true;
    }

    // Coordinates so large or small that their squares leave the range of a double.
    private double ClosestScaled(in Point2D point, double magnitude, out double distanceMm)
    {
        if (magnitude == 0)
        {
            distanceMm = 0;
            return 0;
        }

        var scaled = new CubicBezier(
            X0 / magnitude, Y0 / magnitude, X1 / magnitude, Y1 / magnitude, X2 / magnitude, Y2 / magnitude, X3 / magnitude, Y3 / magnitude);
        double distance2 = double.PositiveInfinity;
        NearestOnCubic.TryFind(scaled, point.XMm / magnitude, point.YMm / magnitude, ref distance2, out double t);
        distanceMm = PointAtRaw(t).DistanceMm(point);
        return t;
    }
}
