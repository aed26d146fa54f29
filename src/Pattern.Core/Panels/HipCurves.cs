using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The hip curve: a parabola that leaves a vertical line without a corner.</summary>
/// <remarks>One family for all heights: going on along a curve leads to the end of another curve of the same family that covers
/// the first one, so lifting the waist along the side seam never redraws the seam below.</remarks>
internal static class HipCurves
{
    /// <summary>The curve from a point on a vertical line to a point above or below it, on either side of the line.</summary>
    internal static CubicBezier Vertical(in Point2D foot, in Point2D end)
        => CubicBezier.FromQuadratic(foot, new Point2D(foot.XMm, (foot.YMm + end.YMm) / 2), end);

    /// <summary>The curve with the same foot, going on beyond the old end by a distance along itself (negative: ending before it).</summary>
    internal static CubicBezier GoOnMm(in CubicBezier curve, double distanceMm)
    {
        Point2D foot = curve.Start;
        double height = curve.Y3 - curve.Y0;
        double side = curve.X3 - curve.X0;

        // At the share v of the height the curve stands at (side v^2, height v). It is longer than it is high, so this much of it is enough.
        double reach = 1 + (Math.Max(0, distanceMm) / Math.Abs(height));
        CubicBezier longer = At(reach);
        return At(reach * longer.ParameterAtLengthMm(curve.LengthMm() + distanceMm));

        CubicBezier At(double v) => Vertical(foot, new Point2D(foot.XMm + (side * v * v), foot.YMm + (height * v)));
    }
}
