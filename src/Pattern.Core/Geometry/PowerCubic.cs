using System;

namespace Pattern.Core.Geometry;

/// <summary>A cubic in powers of t: fewer operations where the same curve is evaluated again and again.</summary>
internal readonly struct PowerCubic
{
    private readonly double _ax;
    private readonly double _ay;
    private readonly double _bx;
    private readonly double _by;
    private readonly double _cx;
    private readonly double _cy;
    private readonly double _dx;
    private readonly double _dy;

    internal PowerCubic(in CubicBezier c)
    {
        double hx0 = c.X1 - c.X0;
        double hy0 = c.Y1 - c.Y0;
        double hx1 = c.X2 - c.X1;
        double hy1 = c.Y2 - c.Y1;
        double hx2 = c.X3 - c.X2;
        double hy2 = c.Y3 - c.Y2;
        _ax = (hx2 - hx1) - (hx1 - hx0);
        _ay = (hy2 - hy1) - (hy1 - hy0);
        _bx = 3 * (hx1 - hx0);
        _by = 3 * (hy1 - hy0);
        _cx = 3 * hx0;
        _cy = 3 * hy0;
        _dx = c.X0;
        _dy = c.Y0;
    }

    internal void At(double t, out double x, out double y, out double dx, out double dy)
    {
        x = (((((_ax * t) + _bx) * t) + _cx) * t) + _dx;
        y = (((((_ay * t) + _by) * t) + _cy) * t) + _dy;
        dx = (((3 * _ax * t) + (2 * _bx)) * t) + _cx;
        dy = (((3 * _ay * t) + (2 * _by)) * t) + _cy;
    }

    internal void SecondAt(double t, out double x, out double y)
    {
        x = (6 * _ax * t) + (2 * _bx);
        y = (6 * _ay * t) + (2 * _by);
    }

    /// <summary>Where the curve crosses itself: two parameters, the smaller first. A cusp does not count.</summary>
    internal bool TrySelfCrossing(out double t, out double u)
    {
        // B(t) = B(u) divided by t - u is linear in the sum s = t + u and the product p = tu.
        t = 0;
        u = 0;
        double ab = (_ax * _by) - (_ay * _bx);
        double ac = (_ax * _cy) - (_ay * _cx);
        double aa = (_ax * _ax) + (_ay * _ay);
        double sum = -ac / ab;
        if (!(sum > 0 && sum < 2))
        {
            return false;
        }

        double product = (sum * sum) + (((sum * ((_bx * _ax) + (_by * _ay))) + (_cx * _ax) + (_cy * _ay)) / aa);
        double discriminant = (sum * sum) - (4 * product);
        if (!(discriminant > 0))
        {
            return false;
        }

        u = 0.5 * (sum + Math.Sqrt(discriminant));
        t = product / u;
        for (int i = 0; i < 4; i++)
        {
            At(t, out double px, out double py, out double vx, out double vy);
            At(u, out double qx, out double qy, out double wx, out double wy);
            double slope = (vx * wy) - (vy * wx);
            double dt = -(((px - qx) * wy) - ((py - qy) * wx)) / slope;
            double du = -(((px - qx) * vy) - ((py - qy) * vx)) / slope;
            if (!(Math.Abs(dt) < 0.25 * (u - t) && Math.Abs(du) < 0.25 * (u - t)))
            {
                break;
            }

            t += dt;
            u += du;
        }

        // Ends that meet, as on a closed curve, may come out a rounding beyond.
        const double Slack = 1e-12;
        if (!(t >= -Slack && u <= 1 + Slack && t < u))
        {
            return false;
        }

        t = Raw.Clamp(t, 0, 1);
        u = Raw.Clamp(u, 0, 1);

        // Of a curve that is straight but for rounding the sum and the product are rounding too.
        At(t, out double x0, out double y0, out _, out _);
        At(u, out double x1, out double y1, out _, out _);
        double sizeMm = Math.Abs(_ax) + Math.Abs(_ay) + Math.Abs(_bx) + Math.Abs(_by)
            + Math.Abs(_cx) + Math.Abs(_cy);
        return Raw.Hypot(x1 - x0, y1 - y0) <= 1e-12 * sizeMm;
    }
}
