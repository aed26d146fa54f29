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
    private readonly double _nextLimit;
    private double _limit;
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

        double mostChords = MostChords(curve, toleranceMm);
        Raw.RequireFinite(mostChords, nameof(curve));
        double sure = 1 / mostChords;
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
    // Not tiered: the loop is long and would run unoptimised for its first thousands of curves.
    [MethodImpl(Raw.NotTiered)]
    internal unsafe int Fill(Point2D* vertices, int room)
    {
        // Everything that changes is kept out of memory while it runs.
        double at = T;
        double step = _step;
        double limit = _limit;
        double bx2 = 2 * _bx;
        double by2 = 2 * _by;
        double ax3 = 3 * _ax;
        double ay3 = 3 * _ay;
        double ddx = Raw.MultiplyAdd(at, ax3, _bx);
        double ddy = Raw.MultiplyAdd(at, ay3, _by);
        double dx = Raw.MultiplyAdd(at, Raw.MultiplyAdd(at, ax3, bx2), _cx);
        double dy = Raw.MultiplyAdd(at, Raw.MultiplyAdd(at, ay3, by2), _cy);
        int count = 0;
        bool mayGrow = true;
        while (at < 1 && count < room)
        {
            double t = at + step;
            if (t > limit - (1e-3 * step))
            {
                t = limit;
                step = limit - at;
            }

            // The chord from where the walk is, in powers of the step: as few operations as possible after the step is known.
            double ex = step * Raw.MultiplyAdd(step, Raw.MultiplyAdd(step, _ax, ddx), dx);
            double ey = step * Raw.MultiplyAdd(step, Raw.MultiplyAdd(step, _ay, ddy), dy);
            double nextDx = Raw.MultiplyAdd(step, Raw.MultiplyAdd(step, ax3, 2 * ddx), dx);
            double nextDy = Raw.MultiplyAdd(step, Raw.MultiplyAdd(step, ay3, 2 * ddy), dy);
            Deviation(ex, ey, dx, dy, nextDx, nextDy, step, out double factor, out double shape, out double allowed, out double slower, out double faster);
            double used = factor * shape;
            if (used > allowed && step > _leastStep)
            {
                double shorter = step * Math.Min(0.97, Aim * Grow(used, allowed));
                step = shorter > _leastStep ? shorter : _leastStep;
                mayGrow = false;
                continue;
            }

            if (used < Wasteful * allowed && mayGrow && t < limit)
            {
                step *= Aim * Grow(used, allowed);
                mayGrow = false;
                continue;
            }

            // The root of Grow and the trend in one quotient: this division is what the next chord waits for.
            double longer = step * Aim * Raw.MultiplyAdd(3 * factor * slower, shape, 5 * allowed * slower)
                / Raw.MultiplyAdd(5 * factor * faster, shape, 3 * allowed * faster);
            step = longer > _leastStep ? longer : _leastStep;

            // From t itself, so that no rounding adds up from chord to chord.
            at = t;
            ddx = Raw.MultiplyAdd(t, ax3, _bx);
            ddy = Raw.MultiplyAdd(t, ay3, _by);
            dx = Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, ax3, bx2), _cx);
            dy = Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, ay3, by2), _cy);
            vertices[count++] = t == 1 ? _end : new Point2D(
                Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, _ax, _bx), _cx), _start.XMm),
                Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, Raw.MultiplyAdd(t, _ay, _by), _cy), _start.YMm));
            mayGrow = true;
            if (t == limit)
            {
                limit = _nextLimit > limit ? _nextLimit : 1;
            }
        }

        _limit = limit;
        T = at;
        _step = step;
        return count;
    }

    /// <summary>A root of the speed on the curve, or so near it that the curve all but turns back there; else the end.</summary>
    private static double Limit(double along, double beside) => Math.Abs(beside) < Hairpin && along > 0 && along < 1 ? along : 1;

    /// <summary>By how much a step may grow: the fourth root of allowed over used, by its Pade approximant where that is near 1.</summary>
    private static double Grow(double used, double allowed) => used > 0.2 * allowed && used < 5 * allowed
        ? ((5 * allowed) + (3 * used)) / ((3 * allowed) + (5 * used))
        : used <= 1e-4 * allowed ? 10 : Math.Sqrt(Math.Sqrt(allowed / used));

    /// <summary>Distance of a control point to the chord from the origin to e, squared, over |e| squared.</summary>
    private static double BesideChord(double ex, double ey, double qx, double qy)
    {
        double length2 = (ex * ex) + (ey * ey);
        double along = (ex * qx) + (ey * qy);
        double u = length2 > 0 ? Raw.Clamp(along / length2, 0, 1) : 0;
        return Raw.Hypot(qx - (u * ex), qy - (u * ey));
    }

    /// <summary>An upper bound of the squared deviation as a product of factor and shape, with what is allowed in the same
    /// measure; and how the next step should differ from this one, as a quotient.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void Deviation(
        double ex,
        double ey,
        double dx0,
        double dy0,
        double dx1,
        double dy1,
        double step,
        out double factor,
        out double shape,
        out double allowed,
        out double slower,
        out double faster)
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
            // at most 3/4 m (1 + k^2 / 4). Sum and difference instead of halves gather all constants in 1/64 of the step squared.
            double sum = cross0 + cross1;
            double difference = cross1 - cross0;
            double sum2 = sum * sum;
            double bound = Raw.MultiplyAdd(0.25 * difference, difference, sum2);
            shape = bound * bound;
            factor = 1.0 / 64 * step * step;
            allowed = sum2 * (length2 * _tolerance2);

            // Between the thirds of this chord the bend changes by 2k, so by 6k to the middle of the next; a step goes with its
            // root: exp(-3k), as (1 - 3k/2) / (1 + 3k/2). A sudden change is not run after.
            double change = Math.Abs(difference) < 0.4 * Math.Abs(sum) ? 1.5 * difference : difference * sum > 0 ? 0.35 * sum : -0.3 * sum;
            slower = sum - change;
            faster = sum + change;
            return;
        }

        double third = step / 3;
        factor = 1;
        shape = DeviationOdd2(ex, ey, third * dx0, third * dy0, third * dx1, third * dy1);
        allowed = _tolerance2;
        slower = 1;
        faster = 1;
    }

    /// <summary>The same where the curve changes sides, overshoots the chord or stands still.</summary>
    private static double DeviationOdd2(double ex, double ey, double hx0, double hy0, double hx1, double hy1)
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
        return bound * bound;
    }
}
