using System;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>Measures the arc length of one cubic, and finds the parameter at a length.</summary>
/// <remarks>The speed of a cubic is |z'(t)| with z' a quadratic polynomial of complex numbers, so |z'| = |a| |t - r1| |t - r2|
/// with both roots known in closed form. They are where the speed stops being smooth, so they say in advance how far one Gauss
/// rule is exact enough: as long as the ellipse around the stretch that the rule needs keeps clear of both roots. The stretches
/// follow one another, each as long as it may be, and nothing is estimated by trial. An exact cusp is a real root: a stretch
/// ends there, and the speed is smooth on both sides.</remarks>
internal readonly struct ArcLength
{
    // Towards a root a stretch covers at least half of what is left, and a root nearer than rounding is ignored: 60 are not
    // reached. If they were, the rest would be measured in one.
    private const int MostStretches = 60;

    // How much larger than half a unit of rounding an error may not be asked to get.
    private const double LeastAllowed = 8 * Raw.Epsilon;

    // An n-point rule errs by about amplitude x rho^-2n, where rho + 1/rho = 2A and A is the half sum of the distances from
    // the root to both ends, over half the stretch. Entry [rule, bits] is the A that gains so many bits.
    private const int MostBits = 64;
    private static readonly double[] Ellipses = MakeEllipses();

    // z'(t) / scale = c0 + c1 t + c2 t^2
    private readonly double _x0;
    private readonly double _x1;
    private readonly double _x2;
    private readonly double _y0;
    private readonly double _y1;
    private readonly double _y2;

    // Roots: place along the curve, and how far beside it.
    private readonly double _along1;
    private readonly double _beside1;
    private readonly double _along2;
    private readonly double _beside2;

    // The rule for whole stretches, and how far its ellipse reaches.
    private readonly int _rule;
    private readonly double _ellipse;

    private readonly double _scaleMm;

    // Allowed error over scale.
    private readonly double _allowed;

    internal ArcLength(in CubicBezier curve, double toleranceMm)
    {
        double dx0 = 3 * (curve.X1 - curve.X0);
        double dy0 = 3 * (curve.Y1 - curve.Y0);
        double dx1 = 3 * (curve.X2 - curve.X1);
        double dy1 = 3 * (curve.Y2 - curve.Y1);
        double dx2 = 3 * (curve.X3 - curve.X2);
        double dy2 = 3 * (curve.Y3 - curve.Y2);
        _scaleMm = 3 * curve.HodographMm;
        if (!(_scaleMm > 1e-280 && _scaleMm <= double.MaxValue))
        {
            Raw.RequireFinite(_scaleMm, nameof(curve));
            this = default;
            return;
        }

        double unit = 1 / _scaleMm;
        _x0 = dx0 * unit;
        _y0 = dy0 * unit;
        _x1 = 2 * (dx1 - dx0) * unit;
        _y1 = 2 * (dy1 - dy0) * unit;
        _x2 = ((dx0 - dx1) + (dx2 - dx1)) * unit;
        _y2 = ((dy0 - dy1) + (dy2 - dy1)) * unit;
        _allowed = Math.Max(toleranceMm / Math.Max(_scaleMm, GeometryTolerance.FullSizeMm), LeastAllowed);

        var roots = new Hodograph(_x0, _y0, _x1, _y1, _x2, _y2, out double lead, out double slope);
        _along1 = roots.Along1;
        _beside1 = roots.Beside1;
        _along2 = roots.Along2;
        _beside2 = roots.Beside2;

        // So close to the curve that the speed can be taken as |t - r| on both sides of it: g b^2 (ln(2/b)/2 + 1/4) of error.
        double ignored = _allowed / 20 / Math.Max(slope, 1e-30);
        _beside1 = _beside1 * _beside1 < ignored ? 0 : _beside1;
        _beside2 = _beside2 * _beside2 < ignored ? 0 : _beside2;

        // What the rule has to reduce is the part of the speed that is not smooth.
        double amplitude = 0.25 * Math.Max(slope, 0.5 * lead);
        long bits = (BitConverter.DoubleToInt64Bits(amplitude / _allowed) >> 52) - 1022;
        int column = bits < 0 ? 0 : bits >= MostBits ? MostBits - 1 : (int)bits;
        _rule = column > 24 ? 4 : column > 12 ? 2 : 1;
        _ellipse = Ellipses[(_rule * MostBits) + column];
    }

    /// <summary>Length between two parameters, <paramref name="from"/> no larger than <paramref name="to"/>.</summary>
    internal double BetweenMm(double from, double to)
    {
        double sum = 0;
        for (int i = 1; from < to && _scaleMm > 0; i++)
        {
            SearchWork.Step();
            double end = i < MostStretches ? StretchEnd(from, to) : to;
            sum += Gauss(_rule, from, end);
            from = end;
        }

        return _scaleMm * sum;
    }

    /// <summary>The parameter at a length from the start; 0 below zero and 1 beyond the end.</summary>
    internal double ParameterAtMm(double lengthMm)
    {
        if (!(lengthMm > 0) || _scaleMm == 0)
        {
            return 0;
        }

        double missing = lengthMm / _scaleMm;
        double from = 0;
        for (int i = 1; from < 1; i++)
        {
            double end = i < MostStretches ? StretchEnd(from, 1) : 1;
            double length = Gauss(_rule, from, end);
            if (missing <= length)
            {
                return Solve(from, end, length, missing);
            }

            missing -= length;
            from = end;
        }

        return 1;
    }

    private static double[] MakeEllipses()
    {
        var ellipses = new double[GaussLegendre.RuleCount * MostBits];
        for (int rule = 0; rule < GaussLegendre.RuleCount; rule++)
        {
            for (int bits = 0; bits < MostBits; bits++)
            {
                // Never below 1.001, where the stretches would get longer than rounding lets the formula say.
                double half = Math.Cosh(bits * Math.Log(2) / (2 * GaussLegendre.Points(rule)));
                ellipses[(rule * MostBits) + bits] = Math.Max(1.001, half);
            }
        }

        return ellipses;
    }

    /// <summary>How far one rule is exact enough, at most to the end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double StretchEnd(double from, double to)
    {
        double reach = Math.Min(Reach(_along1 - from, _beside1), Reach(_along2 - from, _beside2));
        return reach >= to - from ? to : from + reach;
    }

    /// <summary>How far a stretch may go past a root that lies so far ahead and so far beside.</summary>
    /// <remarks>The ellipse: distance of the root to the beginning + distance to the end = A x length. Squared, the length
    /// appears once: 2 (A d - a) / (A^2 - 1).</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Reach(double ahead, double beside)
    {
        if (beside == 0)
        {
            return ahead > 0 ? ahead : double.MaxValue;
        }

        double distance = Math.Sqrt((ahead * ahead) + (beside * beside));
        return 2 * ((_ellipse * distance) - ahead) / ((_ellipse * _ellipse) - 1);
    }

    private double Gauss(int rule, double from, double to)
    {
        double half = 0.5 * (to - from);
        double middle = 0.5 * (to + from);
        double half2 = half * half;
        return half * GaussLegendre.Speed(
            rule,
            _x0 + (middle * (_x1 + (middle * _x2))),
            half * (_x1 + (2 * middle * _x2)),
            half2 * _x2,
            _y0 + (middle * (_y1 + (middle * _y2))),
            half * (_y1 + (2 * middle * _y2)),
            half2 * _y2);
    }

    private double Speed(double t)
    {
        double x = _x0 + (t * (_x1 + (t * _x2)));
        double y = _y0 + (t * (_y1 + (t * _y2)));
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>The parameter at a length within a stretch.</summary>
    private double Solve(double from, double to, double length, double wanted)
    {
        // First guess: the cubic through both ends with the speeds there, inverted by Newton steps.
        double width = to - from;
        double inverse = 1 / length;
        double share = wanted * inverse;
        double startSlope = Speed(from) * width * inverse;
        double endSlope = Speed(to) * width * inverse;
        double cubic = startSlope + endSlope - 2;
        double square = 3 - (2 * startSlope) - endSlope;
        double x = share;
        for (int i = 0; i < 2; i++)
        {
            double value = (x * (startSlope + (x * (square + (x * cubic))))) - share;
            double slope = startSlope + (x * ((2 * square) + (3 * x * cubic)));
            x = slope > 0.05 ? Raw.Clamp(x - (value / slope), 0, 1) : x;
        }

        double low = from;
        double high = to;
        double t = from + (x * width);
        double missing = wanted - (t > from ? Gauss(_rule, from, t) : 0);
        double enough = 0.25 * _allowed;
        for (int i = 0; i < 80; i++)
        {
            SearchWork.Step();
            low = missing > 0 ? t : low;
            high = missing > 0 ? high : t;

            // Halley's step: Newton's, bent by how the speed changes.
            double dx = _x0 + (t * (_x1 + (t * _x2)));
            double dy = _y0 + (t * (_y1 + (t * _y2)));
            double ddx = _x1 + (2 * t * _x2);
            double ddy = _y1 + (2 * t * _y2);
            double speed2 = (dx * dx) + (dy * dy);
            double newton = missing / Math.Sqrt(speed2);
            double bend = 0.5 * newton * ((dx * ddx) + (dy * ddy)) / speed2;
            double next = t + (bend > -0.5 && bend < 0.5 ? newton / (1 + bend) : newton);
            double step2 = 4 * (next - t) * (next - t);
            bool isShort = step2 <= Distance2(_along1 - t, _beside1) && step2 <= Distance2(_along2 - t, _beside2);
            if (Math.Abs(missing) <= enough)
            {
                // Near a standstill the last step is a guess; elsewhere it takes away what is left.
                return isShort && next >= low && next <= high ? next : t;
            }

            if (!(next > low && next < high))
            {
                next = 0.5 * (low + high);
                isShort = false;
            }

            if (next == t || high - low <= Raw.Epsilon * to)
            {
                return next;
            }

            // Only the increment is integrated; much shorter than the way to the roots, the smallest rule does.
            missing -= Gauss(isShort ? 0 : _rule, t, next);
            t = next;
        }

        return t;
    }

    private static double Distance2(double ahead, double beside) => (ahead * ahead) + (beside * beside);
}
