using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The cut edge across a dart's intake.</summary>
/// <remarks>Fold the dart as it will be pressed and cut along the trued seam line through all layers; unfolded, that edge is the seam line on
/// the pressed side mirrored over the near leg, and that again over the fold line.</remarks>
internal static class DartCaps
{
    /// <summary>The cap of a dart pressed towards the centre, in the frame in which the edge before the dart lies as <paramref name="closed"/> does.</summary>
    /// <param name="closed">The edge with its darts closed.</param>
    /// <param name="split">Where the dart stands on it.</param>
    /// <param name="apex">The dart's apex in that frame.</param>
    /// <param name="closingRad">The signed turn that closes the dart: counter-clockwise where the side lies to the right.</param>
    internal static CurvePath TowardCentre(in CubicBezier closed, double split, in Point2D apex, double closingRad)
    {
        Point2D onEdge = closed.PointAtRaw(split);
        Direction leg = apex.DirectionTo(onEdge);

        // Folded, the fold line lies over the cloth on the centre's side of the leg, half the wedge away from it.
        Direction folded = leg.TurnedRad(closingRad / 2);
        double fold = LastCrossingBefore(closed, split, Line.From(apex, folded), onEdge);
        Transform2D overLeg = Transform2D.Mirror(Line.From(apex, leg));
        Transform2D overFold = Transform2D.Mirror(Line.From(apex, leg.TurnedRad(-closingRad / 2)));
        CubicBezier first = closed.SubCurveRaw(fold, split).Transformed(overLeg).Reversed();
        CubicBezier second = first.Reversed().Transformed(overFold);
        return CurvePath.Trusted([PathSegment.FromCubic(first), PathSegment.FromCubic(second)], isClosed: false);
    }

    private static double LastCrossingBefore(in CubicBezier closed, double split, Line foldLine, in Point2D onEdge)
    {
        closed.IntersectLine(foldLine, out ParameterHits hits);
        double best = double.NaN;
        for (int i = 0; i < hits.Count; i++)
        {
            double t = hits[i];
            bool onTheSeamSide = (closed.PointAtRaw(t) - foldLine.Point).DotMm2(onEdge - foldLine.Point) > 0;
            if (t < split && onTheSeamSide && !(t < best))
            {
                best = t;
            }
        }

        return best >= 0
            ? best
            : throw new ConstructionException(DiagnosticCode.DartWiderThanStretch, foldLine.Point) { Step = "folding a dart" };
    }
}
