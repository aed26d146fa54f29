using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>What a cut, a leg or an apex on a panel must not do.</summary>
internal static class CutRules
{
    // A cut may begin or end on a line; what is nearer than this to an end of the cut does not count as crossing it.
    private const double EndMm = 1e-4;

    /// <summary>Refuses a cut that does not lie inside the panel everywhere between its ends, or that meets a dart other than the one it goes on from.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="from">Where the cut begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="step">What is being done.</param>
    /// <param name="own">The dart whose apex the cut begins at. Its wedge is no cloth: a cut through its mouth leaves the panel.</param>
    internal static void RefuseCut(Panel panel, in Point2D from, in Point2D to, string step, DartShape? own = null)
        => Refuse(panel, from, to, step, own, cloth: null);

    /// <summary>As <see cref="RefuseCut"/> for a leg that is new; the wedge of a dart that is replaced becomes cloth again.</summary>
    internal static void RefuseLeg(Panel panel, in Point2D apex, in Point2D leg, string step, DartShape? replaces = null)
        => Refuse(panel, apex, leg, step, replaces, cloth: replaces);

    private static void Refuse(Panel panel, in Point2D from, in Point2D to, string step, DartShape? own, DartShape? cloth)
    {
        var cut = new LineSegment(from, to);
        if (cut.LengthMm <= EndMm)
        {
            return;
        }

        foreach (Dart dart in panel.Darts)
        {
            if (own != dart.Shape && (CrossesLeg(cut, dart.StartLeg, dart.Apex) || CrossesLeg(cut, dart.EndLeg, dart.Apex)))
            {
                throw new ConstructionException(DiagnosticCode.CutCrossesDart, from, to, panel.Name, dart.Name) { Step = step, Landmark = dart.Name.ToString() };
            }
        }

        foreach (InsideDart dart in panel.InsideDarts)
        {
            Point2D[] corners = dart.Corners();
            for (int i = 0; i < corners.Length; i++)
            {
                if (CrossesLeg(cut, corners[i], corners[(i + 1) % corners.Length]))
                {
                    throw new ConstructionException(DiagnosticCode.CutCrossesDart, from, to, panel.Name, "a dart inside the panel") { Step = step };
                }
            }
        }

        if (FirstLeaving(panel, cut, cloth) is { } leaves)
        {
            EdgeName edge = panel.NearestEdge(leaves == from ? from.MidpointTo(to) : leaves, default).Name;
            throw new ConstructionException(DiagnosticCode.CutLeavesPanel, from, to, panel.Name, leaves, edge) { Step = step, Landmark = edge.Text };
        }
    }

    // Where a cut first meets an edge between its ends. One that meets none lies inside or outside as a whole, and so does its part before the first meeting:
    // then one point of it tells. Where that is outside, the cut leaves the panel where it begins.
    private static Point2D? FirstLeaving(Panel panel, in LineSegment cut, DartShape? cloth)
    {
        Point2D? first = null;
        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            foreach (CurvePath stretch in edge.StretchesRaw)
            {
                foreach (PathSegment segment in stretch.SegmentsRaw)
                {
                    if (Meets(cut, segment) is { } at && !(first?.DistanceMm(cut.Start) <= at.DistanceMm(cut.Start)))
                    {
                        first = at;
                    }
                }
            }
        }

        Point2D probe = cut.Start.MidpointTo(first ?? cut.End);
        Containment where = panel.SeamOutline().ContainmentOf(probe);
        bool isCloth = where == Containment.Inside || (cloth is { } replaced && (where == Containment.Boundary || IsWithin(replaced, probe)));
        return isCloth ? first : cut.Start;
    }

    internal static void RefuseOutside(Panel panel, EdgeName edge, in Point2D apex, string step)
    {
        if (panel.SeamOutline().ContainmentOf(apex) == Containment.Outside)
        {
            throw new ConstructionException(DiagnosticCode.ApexOutsidePanel, apex, edge, panel.Name) { Step = step, Landmark = edge.Text };
        }
    }

    /// <summary>As <see cref="RefuseOutside"/>; a dart that is replaced does not count as outside the panel.</summary>
    internal static void RefuseOutsideUnless(Panel panel, EdgeName edge, in Point2D apex, string step, DartShape? replaced)
    {
        if (replaced is { } old && IsWithin(old, apex))
        {
            return;
        }

        RefuseOutside(panel, edge, apex, step);
    }

    private static bool IsWithin(in DartShape dart, in Point2D point)
    {
        double a = Side(dart.Apex, dart.StartLeg, point);
        double b = Side(dart.StartLeg, dart.EndLeg, point);
        double c = Side(dart.EndLeg, dart.Apex, point);
        return (a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0);
    }

    private static double Side(in Point2D from, in Point2D to, in Point2D point) => (to - from).CrossMm2(point - from);

    private static bool CrossesLeg(in LineSegment cut, in Point2D from, in Point2D to) => Meets(cut, PathSegment.FromLine(new LineSegment(from, to))) is not null;

    // The first point that both share, the ends of the cut aside.
    private static Point2D? Meets(in LineSegment cut, in PathSegment segment)
    {
        CurveIntersections hits = PathSegment.FromLine(cut).IntersectionsWith(segment);
        Point2D? first = null;
        for (int i = 0; i < hits.Count; i++)
        {
            Point2D at = hits[i].Point;
            if (at.DistanceMm(cut.Start) > EndMm && at.DistanceMm(cut.End) > EndMm && !(first?.DistanceMm(cut.Start) <= at.DistanceMm(cut.Start)))
            {
                first = at;
            }
        }

        return first ?? (hits.OverlapCount > 0 ? cut.Start.MidpointTo(cut.End) : null);
    }
}
