using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>What a cut, a leg or an apex on a panel must not do.</summary>
internal static class CutRules
{
    // A cut may begin or end on a line; what is nearer than this to an end of the cut does not count as crossing it.
    private const double EndMm = 1e-4;

    /// <summary>Refuses a cut that meets the outline, or a dart other than those named, between its ends.</summary>
    internal static void RefuseCrossing(Panel panel, in Point2D from, in Point2D to, string step, DartShape? own = null)
    {
        var cut = new LineSegment(from, to);
        if (cut.LengthMm <= EndMm)
        {
            return;
        }

        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            foreach (CurvePath stretch in edge.Stretches)
            {
                if (stretch.SegmentsRaw.Any(segment => Crosses(cut, segment)))
                {
                    throw new ConstructionException(DiagnosticCode.CutLeavesPanel, from, to, panel.Name, edge.Name) { Step = step, Landmark = edge.Name.Text };
                }
            }

            foreach (Dart dart in edge.Darts)
            {
                if (own != dart.Shape && (CrossesLeg(cut, dart.CentreLeg, dart.Apex) || CrossesLeg(cut, dart.SideLeg, dart.Apex)))
                {
                    throw new ConstructionException(DiagnosticCode.CutCrossesDart, from, to, panel.Name, dart.Name) { Step = step, Landmark = dart.Name.ToString() };
                }
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
        double a = Side(dart.Apex, dart.CentreLeg, point);
        double b = Side(dart.CentreLeg, dart.SideLeg, point);
        double c = Side(dart.SideLeg, dart.Apex, point);
        return (a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0);
    }

    private static double Side(in Point2D from, in Point2D to, in Point2D point) => (to - from).CrossMm2(point - from);

    private static bool CrossesLeg(in LineSegment cut, in Point2D from, in Point2D to) => Crosses(cut, PathSegment.FromLine(new LineSegment(from, to)));

    private static bool Crosses(in LineSegment cut, in PathSegment segment)
    {
        CurveIntersections hits = PathSegment.FromLine(cut).IntersectionsWith(segment);
        for (int i = 0; i < hits.Count; i++)
        {
            Point2D at = hits[i].Point;
            if (at.DistanceMm(cut.Start) > EndMm && at.DistanceMm(cut.End) > EndMm)
            {
                return true;
            }
        }

        return hits.OverlapCount > 0;
    }
}
