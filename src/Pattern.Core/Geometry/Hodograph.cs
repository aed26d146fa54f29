using System;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>Both complex roots of the speed of a cubic: where it would stand still.</summary>
/// <remarks>A root t = along + i beside with beside = 0 is a cusp. The sign of beside tells the side. A root at infinity is given as 1e30.</remarks>
internal readonly struct Hodograph
{
    internal readonly double Along1;
    internal readonly double Beside1;
    internal readonly double Along2;
    internal readonly double Beside2;

    /// <summary>For z'(t) = c0 + c1 t + c2 t^2; both |c2| and |c2| |r1 - r2| come for free.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Hodograph(double x0, double y0, double x1, double y1, double x2, double y2, out double lead, out double slope)
    {
        // r = (-b +- sqrt(b^2 - a c)) / a with half the middle coefficient b, all complex.
        double bx = 0.5 * x1;
        double by = 0.5 * y1;
        double discriminantX = (bx * bx) - (by * by) - ((x2 * x0) - (y2 * y0));
        double discriminantY = (2 * bx * by) - ((x2 * y0) + (y2 * x0));
        double modulus = Math.Sqrt((discriminantX * discriminantX) + (discriminantY * discriminantY));
        double larger = Math.Sqrt(0.5 * (modulus + Math.Abs(discriminantX)));
        double smaller = larger == 0 ? 0 : 0.5 * discriminantY / larger;
        double rootX = discriminantX >= 0 ? larger : Math.Abs(smaller);
        double rootY = discriminantX >= 0 ? smaller : discriminantY < 0 ? -larger : larger;
        if ((bx * rootX) + (by * rootY) < 0)
        {
            rootX = -rootX;
            rootY = -rootY;
        }

        // The sum without cancellation first; the other root follows from the product c / a.
        double qx = -(bx + rootX);
        double qy = -(by + rootY);
        Divide(qx, qy, x2, y2, out Along1, out Beside1);
        Divide(x0, y0, qx, qy, out Along2, out Beside2);
        lead = Math.Sqrt((x2 * x2) + (y2 * y2));
        slope = 2 * Math.Sqrt(modulus);
    }

    /// <summary>The roots of a curve's speed, whatever its size.</summary>
    internal static Hodograph Of(in CubicBezier curve)
    {
        double scale = curve.HodographMm;
        double unit = scale > 1e-280 ? 1 / scale : 0;
        double dx0 = (curve.X1 - curve.X0) * unit;
        double dy0 = (curve.Y1 - curve.Y0) * unit;
        double dx1 = (curve.X2 - curve.X1) * unit;
        double dy1 = (curve.Y2 - curve.Y1) * unit;
        double dx2 = (curve.X3 - curve.X2) * unit;
        double dy2 = (curve.Y3 - curve.Y2) * unit;
        return new Hodograph(
            dx0, dy0, 2 * (dx1 - dx0), 2 * (dy1 - dy0), (dx0 - dx1) + (dx2 - dx1), (dy0 - dy1) + (dy2 - dy1), out _, out _);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Divide(double ax, double ay, double bx, double by, out double along, out double beside)
    {
        double squared = (bx * bx) + (by * by);
        if (squared < 1e-60)
        {
            // A root at infinity: the curve is of lower degree.
            along = 1e30;
            beside = 0;
            return;
        }

        double inverse = 1 / squared;
        along = ((ax * bx) + (ay * by)) * inverse;
        beside = ((ay * bx) - (ax * by)) * inverse;
    }
}
