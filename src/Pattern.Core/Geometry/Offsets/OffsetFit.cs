using System;

namespace Pattern.Core.Geometry;

/// <summary>Fits one cubic to the parallel of a part of a cubic: ends and headings are those of the parallel, and the lengths of
/// both handles are found by least squares of the distances, measured square to the parallel.</summary>
internal readonly unsafe struct OffsetFit
{
    private const int Samples = 5;
    private const int Rounds = 3;

    private readonly PowerCubic _source;
    private readonly double _widthMm;

    internal OffsetFit(in PowerCubic source, double widthMm)
    {
        _source = source;
        _widthMm = widthMm;
    }

    /// <summary>How far the parallel moves when the source moves by one: positive forwards.</summary>
    internal double Stretch(double t)
    {
        _source.At(t, out _, out _, out double vx, out double vy);
        _source.SecondAt(t, out double ax, out double ay);
        double speed = Raw.Hypot(vx, vy);
        return 1 - (_widthMm * ((vx * ay) - (vy * ax)) / speed / speed / speed);
    }

    /// <summary>The true parallel point and its unit heading.</summary>
    internal bool TryAt(double t, out double x, out double y, out double hx, out double hy)
    {
        _source.At(t, out x, out y, out double vx, out double vy);
        double speed = Raw.Hypot(vx, vy);
        hx = vx / speed;
        hy = vy / speed;
        x -= _widthMm * hy;
        y += _widthMm * hx;
        return speed > 0;
    }

    /// <summary>Fits one cubic.</summary>
    /// <param name="from">On the source.</param>
    /// <param name="to">On the source.</param>
    /// <param name="start">Where the parallel begins.</param>
    /// <param name="startHeading">With which heading.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endHeading">With which heading.</param>
    /// <param name="enoughMm">An error with which to stop.</param>
    /// <param name="fitted">Receives the cubic.</param>
    /// <returns>The largest distance found between it and the parallel, at eleven places.</returns>
    internal double Fit(
        double from, double to, in Point2D start, in Direction startHeading, in Point2D end, in Direction endHeading, double enoughMm, out CubicBezier fitted)
    {
        double chord = start.DistanceMm(end);
        double* ox = stackalloc double[Samples];
        double* oy = stackalloc double[Samples];
        double* hx = stackalloc double[Samples];
        double* hy = stackalloc double[Samples];
        double* at = stackalloc double[Samples];
        double step = (to - from) / (Samples + 1);
        for (int i = 0; i < Samples; i++)
        {
            at[i] = (i + 1.0) / (Samples + 1);
            if (!TryAt(from + ((i + 1) * step), out ox[i], out oy[i], out hx[i], out hy[i]))
            {
                fitted = default;
                return double.PositiveInfinity;
            }
        }

        double a = Handle(from, to - from, chord);
        double b = Handle(to, to - from, chord);
        double worst = double.PositiveInfinity;
        fitted = CubicBezier.FromHandles(start, startHeading, a, end, endHeading, b);
        for (int round = 0; round <= Rounds; round++)
        {
            var candidate = CubicBezier.FromHandles(start, startHeading, a, end, endHeading, b);
            var curve = new PowerCubic(candidate);
            double error = 0;
            double aa = 0;
            double ab = 0;
            double bb = 0;
            double ae = 0;
            double be = 0;
            for (int i = 0; i < Samples; i++)
            {
                double s = at[i];
                double e = Across(curve, ox[i], oy[i], hx[i], hy[i], ref s);
                at[i] = s;
                error = Math.Max(error, Math.Abs(e));

                // How the error changes with the handles: their control points weigh 3 s (1 - s)^2 and 3 s^2 (1 - s).
                double r = 1 - s;
                double ja = 3 * s * r * r * ((startHeading.Y * hx[i]) - (startHeading.X * hy[i]));
                double jb = -3 * s * s * r * ((endHeading.Y * hx[i]) - (endHeading.X * hy[i]));
                aa += ja * ja;
                ab += ja * jb;
                bb += jb * jb;
                ae += ja * e;
                be += jb * e;
            }

            if (error < worst)
            {
                worst = error;
                fitted = candidate;
            }

            if (!(error > enoughMm) || round == Rounds)
            {
                break;
            }

            double determinant = (aa * bb) - (ab * ab);
            if (!(determinant > 1e-14 * aa * bb))
            {
                break;
            }

            a = Raw.Clamp(a + (((be * ab) - (ae * bb)) / determinant), 0, 2 * chord);
            b = Raw.Clamp(b + (((ae * ab) - (be * aa)) / determinant), 0, 2 * chord);
        }

        return worst > enoughMm ? worst : Math.Max(worst, ErrorBetween(fitted, from, step));
    }

    // Between the places that the fit looked at.
    private double ErrorBetween(in CubicBezier fitted, double from, double step)
    {
        var curve = new PowerCubic(fitted);
        double worst = 0;
        for (int i = 0; i <= Samples; i++)
        {
            if (!TryAt(from + ((i + 0.5) * step), out double x, out double y, out double hx, out double hy))
            {
                return double.PositiveInfinity;
            }

            double s = (i + 0.5) / (Samples + 1);
            worst = Math.Max(worst, Math.Abs(Across(curve, x, y, hx, hy, ref s)));
        }

        return worst;
    }

    // The distance from a point to the curve, measured square to a heading.
    private static double Across(in PowerCubic curve, double x, double y, double hx, double hy, ref double s)
    {
        double px = 0;
        double py = 0;
        for (int k = 0; k < 3; k++)
        {
            curve.At(s, out px, out py, out double vx, out double vy);
            px -= x;
            py -= y;
            double ahead = (px * hx) + (py * hy);
            double speed = (vx * hx) + (vy * hy);
            double step = speed > 0 ? Raw.Clamp(ahead / speed, -0.25, 0.25) : 0;
            s = Raw.Clamp(s - step, 0, 1);

            // A step this short moves the point along the curve; what it moves across is of second order.
            if (Math.Abs(step) < 1e-4)
            {
                px -= step * vx;
                py -= step * vy;
                break;
            }
        }

        return (py * hx) - (px * hy);
    }

    private double Handle(double t, double span, double chord)
    {
        _source.At(t, out _, out _, out double vx, out double vy);
        double handle = Raw.Hypot(vx, vy) * Stretch(t) * span / 3;
        return handle > 0.05 * chord && handle < chord ? handle : chord / 3;
    }
}
