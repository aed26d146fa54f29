using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The hip curve: a parabola that leaves a vertical line without a corner.</summary>
/// <remarks>One family for all heights: going on along a curve leads to the end of another curve of the same family that covers
/// the first one, so lifting the waist along the side seam never redraws the seam below.</remarks>
internal static class HipCurves
{
    private const double SeriesLimit = 1e-2;

    /// <summary>The curve from a point on a vertical line to a point above or below it, on either side of the line.</summary>
    internal static CubicBezier Vertical(in Point2D foot, in Point2D end)
        => CubicBezier.FromQuadratic(foot, new Point2D(foot.XMm, (foot.YMm + end.YMm) / 2), end);

    /// <summary>The curve with the same foot, going on beyond the old end by a distance along itself (negative: ending before it).</summary>
    internal static CubicBezier GoOnMm(in CubicBezier curve, double distanceMm)
    {
        Point2D foot = curve.Start;
        double height = curve.Y3 - curve.Y0;
        double side = curve.X3 - curve.X0;

        // At the share v of the height the curve stands at (side v^2, height v), so ds/dv = hypot(2 side v, height).
        double v = 1;
        double target = ParabolaLength(side, height, 1) + distanceMm;
        for (int i = 0; i < 30; i++)
        {
            double step = (ParabolaLength(side, height, v) - target) / Math.Sqrt((4 * side * side * v * v) + (height * height));
            v -= step;
            if (Math.Abs(step) < 1e-15)
            {
                break;
            }
        }

        return Vertical(foot, new Point2D(foot.XMm + (side * v * v), foot.YMm + (height * v)));
    }

    /// <summary>Length of the parabola (side v^2, height v) from its vertex: h v / 2 (sqrt(1 + z^2) + asinh(z) / z) with z = 2 side v / height.</summary>
    private static double ParabolaLength(double side, double height, double v)
    {
        double h = Math.Abs(height);
        double z = 2 * Math.Abs(side) * v / h;
        double z2 = z * z;

        // Below the limit the logarithm cancels; the series is exact to a double there.
        double asinhOverZ = z < SeriesLimit
            ? 1 - (z2 / 6 * (1 - (z2 * 9 / 20 * (1 - (z2 * 25 / 42)))))
            : Math.Log(z + Math.Sqrt(1 + z2)) / z;
        return h * v / 2 * (Math.Sqrt(1 + z2) + asinhOverZ);
    }
}
