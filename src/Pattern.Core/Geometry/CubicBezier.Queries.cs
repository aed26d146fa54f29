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

    /// <summary>Whether all four points lie on one line to within a tolerance, in any order along it.</summary>
    internal bool IsStraight(double toleranceMm, out Direction along)
    {
        // The line through the start and the point farthest from it decides.
        double d1 = Raw.Hypot(X1 - X0, Y1 - Y0);
        double d2 = Raw.Hypot(X2 - X0, Y2 - Y0);
        double d3 = Raw.Hypot(X3 - X0, Y3 - Y0);
        double x = d3 >= d1 && d3 >= d2 ? X3 - X0 : d2 >= d1 ? X2 - X0 : X1 - X0;
        double y = d3 >= d1 && d3 >= d2 ? Y3 - Y0 : d2 >= d1 ? Y2 - Y0 : Y1 - Y0;
        return Direction.TryOfRaw(x, y, out along)
            && Math.Abs((along.X * (Y1 - Y0)) - (along.Y * (X1 - X0))) <= toleranceMm
            && Math.Abs((along.X * (Y2 - Y0)) - (along.Y * (X2 - X0))) <= toleranceMm
            && Math.Abs((along.X * (Y3 - Y0)) - (along.Y * (X3 - X0))) <= toleranceMm;
    }

    /// <summary>Of a straight curve: where it turns back first, and the stretch before and after that lie on top of each other.</summary>
    internal bool TurnsBack(out double tip, out double from, out double to)
    {
        tip = 0;
        from = 0;
        to = 0;
        if (!IsStraight(double.PositiveInfinity, out Direction along))
        {
            return false;
        }

        double h0 = ((X1 - X0) * along.X) + ((Y1 - Y0) * along.Y);
        double h1 = ((X2 - X1) * along.X) + ((Y2 - Y1) * along.Y);
        double h2 = ((X3 - X2) * along.X) + ((Y3 - Y2) * along.Y);
        Polynomial.QuadraticRoots(h0, h1, h2, out double t0, out double t1);
        double low = Math.Min(double.IsNaN(t0) ? 2 : t0, double.IsNaN(t1) ? 2 : t1);
        double high = Math.Max(double.IsNaN(t0) ? -1 : t0, double.IsNaN(t1) ? -1 : t1);
        bool hasLow = low > 0 && low < 1;
        bool hasHigh = high > 0 && high < 1 && high > low;
        if ((!hasLow && !hasHigh) || t0 == t1)
        {
            return false;
        }

        tip = hasLow ? low : high;
        double stop = hasLow && hasHigh ? high : 1;
        CubicBezier before = SubCurveRaw(0, tip);
        CubicBezier after = SubCurveRaw(tip, stop);

        // The shorter of the two lies on the longer.
        from = tip * before.ClosestToRaw(after.End, out _);
        to = tip + ((stop - tip) * after.ClosestToRaw(before.Start, out _));

        // A curve that only stands still for a moment may seem to turn back by a rounding.
        return PointAtRaw(tip).DistanceMm(PointAtRaw(to)) > 1e-9 * MagnitudeMm;
    }

    internal CubicBezier MovedRaw(double dx, double dy) => new(X0 + dx, Y0 + dy, X1 + dx, Y1 + dy, X2 + dx, Y2 + dy, X3 + dx, Y3 + dy);

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

        Raw.RequireFinite(magnitude, nameof(point));
        var scaled = new CubicBezier(
            X0 / magnitude, Y0 / magnitude, X1 / magnitude, Y1 / magnitude, X2 / magnitude, Y2 / magnitude, X3 / magnitude, Y3 / magnitude);
        double distance2 = double.PositiveInfinity;
        NearestOnCubic.TryFind(scaled, point.XMm / magnitude, point.YMm / magnitude, ref distance2, out double t);
        distanceMm = PointAtRaw(t).DistanceMm(point);
        return t;
    }
}
