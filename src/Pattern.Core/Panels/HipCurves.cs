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
}
