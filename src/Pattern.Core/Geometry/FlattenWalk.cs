using System;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>Walks along a cubic from vertex to vertex of a polyline that keeps within a tolerance of it.</summary>
/// <remarks>Every chord is made as long as it may be and is checked before it is given out. The part of the curve over a chord
/// has control points beside it at distances d1 and d2, and as the distance to a chord is a convex function, the part keeps within
/// the greatest value of 3 u (1-u) ((1-u) d1 + u d2). That is a bound, not an estimate. Each chord also says how much longer or
/// shorter the next one should be, so that hardly any is tried twice. All vertices lie on the curve.</remarks>
internal struct FlattenWalk
{
    // The next chord aims at this share of the tolerance, so that the check seldom fails.
    private const double Aim = 0.955;

    // A chord that uses less than this (squared) of the tolerance is worth trying again longer.
    private const double Wasteful = 0.2;

    // A root of the speed this close to the curve is a bend in which a vertex is wanted anyway.
    private const double Hairpin = 1e-3;

    // Powers of t about the start: small numbers even far from the origin.
    private readonly double _ax;
    private readonly double _ay;
    private readonly double _bx;
    private readonly double _by;
    private readonly double _cx;
    private readonly double _cy;
    private readonly Point2D _start;
    private readonly Point2D _end;
    private readonly double _tolerance2;
    private readonly double _leastStep;

    // Where a chord must end: at a cusp or a turning point, at a second one, and at the end.
    private double _limit;
    private readonly double _nextLimit;

    // Where the walk is, relative to the start, and the speed there.
    private double _x;
    private double _y;
    private double _dx;
    private double _dy;
    private double _step;

    internal FlattenWalk(in CubicBezier curve, double toleranceMm)
    {
        _start = curve.Start;
        _end = curve.End;
        _cx = 3 * (curve.X1 - curve.X0);
        _cy = 3 * (curve.Y1 - curve.Y0);
        _bx = 3 * ((curve.X2 - curve.X1) - (curve.X1 - curve.X0));
        _by = 3 * ((curve.Y2 - curve.Y1) - (curve.Y1 - curve.Y0));
        _ax = (curve.X3 - curve.X0) - (3 * (curve.X2 - curve.X1));
        _ay = (curve.Y3 - curve.Y0) - (3 * (curve.Y2 - curve.Y1));
        _dx = _cx;
        _dy = _cy;

        double sure = 1 / MostChords(curve, toleranceMm);
        _leastStep = 0.5 * sure;
        _step = Math.Min(1, 1.2 * sure);
        _tolerance2 = toleranceMm * toleranceMm;
        Hodograph roots = Hodograph.Of(curve);
        double first = Limit(roots.Along1, roots.Beside1);
        double second = Limit(roots.Along2, roots.Beside2);
        _limit = Math.Min(first, second);
        _nextLimit = Math.Max(first, second);
    }

    /// <summary>The parameter of the vertex that was last given out; 0 before the first step.</summary>
    internal double T { get; private set; }

    /// <summary>So many chords of even steps are always enough.</summary>
    internal static double MostChords(in CubicBezier c, double toleranceMm)
    {
        // The largest second derivative over 8 bounds the deviation over a unit step, whatever the curve does.
        double start = Raw.Hypot((c.X2 - c.X1) - (c.X1 - c.X0), (c.Y2 - c.Y1) - (c.Y1 - c.Y0));
        double end = Raw.Hypot((c.X3 - c.X2) - (c.X2 - c.X1), (c.Y3 - c.Y2) - (c.Y2 - c.Y1));
        return Math.Max(1, Math.Sqrt(0.75 * Math.Max(start, end) / toleranceMm));
    }

    /// <summary>Writes the next vertices, the start excluded; fewer than there is room for at the end of the curve, in the end none.</summary>
    internal unsafe int Fill(Point2D* vertices, int room)
    {
        // Everything that changes is kept out of memory while it runs.
        double at = T;
        double x = _x;
        double y = _y;
        double dx = _dx;
        double dy = _dy;
        double step = _step;
        int count = 0;
        double limit = _limit;
        bool mayGrow = true;
        while (at < 1 && count < room)
        {
            double t = at + step;
            if (t > limit - (1e-3 * step))
            {
                t = limit;
                step = limit - at;
            }

            double t2 = t * t;
            double nextX = (t * _cx) + (t2 * (_bx + (t * _ax)));
            double nextY = (t * _cy) + (t2 * (_by + (t * _ay)));
            double nextDx = _cx + (2 * t * _bx) + (3 * t2 * _ax);
            double nextDy = _cy + (2 * t * _by) + (3 * t2 * _ay);
            double ratio2 = Deviation2(nextX - x, nextY - y, dx, dy, nextDx, nextDy, step, out double trend);
            if (ratio2 > 1 && step > _leastStep)
            {
                step = Math.Max(_leastStep, step * Math.Min(0.97, Aim * Grow(ratio2)));
                mayGrow = false;
                continue;
            }

            if (ratio2 < Wasteful && mayGrow && t < limit)
            {
                step *= Aim * Grow(ratio2);
                mayGrow = false;
                continue;
            }

            step = Math.Max(_leastStep, step * Aim * Grow(ratio2) * trend);
            at = t;
            x = nextX;
            y = nextY;
            dx = nextDx;
            dy = nextDy;
            vertices[count++] = t == 1 ? _end : new Point2D(_start.XMm + x, _start.YMm + y);
            mayGrow = true;
            if (t == limit)
            {
                limit = _nextLimit > limit ? _nextLimit : 1;
            }
        }

        _limit = limit;

        T = at;
        _x = x;
        _y = y;
        _dx = dx;
        _dy = dy;
        _step = step;
        return count;
    }

    /// <summary>A root of the speed on the curve, or so near it that the curve all but turns back there; else the end.</summary>
    private static double Limit(double along, double beside) => Math.Abs(beside) < Hairpin && along > 0 && along < 1 ? along : 1;

    /// <summary>By how much a step may grow that uses this share, squared, of the tolerance: its fourth root, inverted.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Grow(double ratio2)
    {
        double d = ratio2 - 1;
        return d > -0.5 && d < 0.6
            ? 1 - (0.25 * d) + (d * d * (0.15625 - (0.1171875 * d)))
            : GrowFar(ratio2);
    }

    private static double GrowFar(double ratio2) => ratio2 < 1e-4 ? 10 : 1 / Math.Sqrt(Math.Sqrt(ratio2));

    /// <summary>Distance of a control point to the chord from the origin to e, squared, over |e| squared.</summary>
    private static double BesideChord(double ex, double ey, double qx, double qy)
    {
        double length2 = (ex * ex) + (ey * ey);
        double along = (ex * qx) + (ey * qy);
        double u = length2 > 0 ? Raw.Clamp(along / length2, 0, 1) : 0;
        return Raw.Hypot(qx - (u * ex), qy - (u * ey));
    }

    /// <summary>Square of deviation over tolerance, an upper bound; and by how much the next step should differ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly double Deviation2(double ex, double ey, double dx0, double dy0, double dx1, double dy1, double step, out double trend)
    {
        double length2 = (ex * ex) + (ey * ey);
        double along0 = (ex * dx0) + (ey * dy0);
        double along1 = (ex * dx1) + (ey * dy1);
        double cross0 = (ex * dy0) - (ey * dx0);
        double cross1 = (ey * dx1) - (ex * dy1);
        double room = 3 * length2;
        if (along0 >= 0 && step * along0 <= room && along1 >= 0 && step * along1 <= room && cross0 * cross1 > 0)
        {
            // d = step / 3 x cross / |e|. With m the mean of d1 and d2 and k m half their difference, the greatest value is
            // at most 3/4 m (1 + k^2 / 4). Sum and difference instead of halves gather all constants in 1/64.
            double sum = cross0 + cross1;
            double difference = cross1 - cross0;
            double sum2 = sum * sum;
            double allowed = length2 * _tolerance2;
            double bound = step * (sum2 + (0.25 * difference * difference));
            double inverse = 1 / (sum2 * allowed);
            double k = difference * sum * allowed * inverse;

            // Between the thirds of this chord the bend changes by 2k, so by 6k to the middle of the next; steps go with its root.
            trend = Raw.Clamp(1 - (k * (3 - (4.5 * k))), 0.5, 1.8);
            return 1.0 / 64 * bound * bound * inverse;
        }

        double third = step / 3;
        return DeviationOdd2(ex, ey, third * dx0, third * dy0, third * dx1, third * dy1, out trend);
    }

    /// <summary>The same where the curve changes sides, overshoots the chord or stands still.</summary>
    private readonly double DeviationOdd2(double ex, double ey, double hx0, double hy0, double hx1, double hy1, out double trend)
    {
        double d1 = BesideChord(ex, ey, hx0, hy0);
        double d2 = BesideChord(ex, ey, ex - hx1, ey - hy1);
        double larger = Math.Max(d1, d2);
        double smaller = Math.Min(d1, d2);
        bool changesSide = ((ex * hy0) - (ey * hx0)) * ((ey * hx1) - (ex * hy1)) <= 0
            && (ex * hx0) + (ey * hy0) >= 0 && (ex * hx1) + (ey * hy1) >= 0;
        double mean = 0.5 * (d1 + d2);
        double half = 0.5 * (larger - smaller);
        double bound = changesSide ? 4.0 / 9 * larger : mean > 0 ? 0.75 * (mean + (0.25 * half * half / mean)) : 0;
        trend = 1;
        return bound * bound / _tolerance2;
    }
}
