using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Refusals of a cut line.</summary>
internal static class PieceErrors
{
    private const string Step = "adding seam allowance";

    internal static ConstructionException Vanishes(PanelName panel, EdgeName edge, double allowanceMm, double allowedMm)
        => new(DiagnosticCode.EdgeVanishes, edge, panel, Length.FromMillimeters(allowanceMm), Length.FromMillimeters(allowedMm))
        {
            Step = Step,
            Landmark = edge.Text,
            Measured = Length.FromMillimeters(allowanceMm),
            Allowed = Length.FromMillimeters(allowedMm),
        };

    internal static ConstructionException Crosses(Panel panel, in Point2D at, EdgeName edge, double allowanceMm, double allowedMm)
        => new(DiagnosticCode.CutLineCrosses, panel.Name, at, edge, Length.FromMillimeters(allowanceMm), Length.FromMillimeters(allowedMm))
        {
            Step = Step,
            Landmark = edge.Text,
            Measured = Length.FromMillimeters(allowanceMm),
            Allowed = Length.FromMillimeters(allowedMm),
        };

    internal static ConstructionException TooNear(PanelName panel, in Point2D at, EdgeName edge, double nearestMm, double neededMm, double allowedMm)
        => new(
            DiagnosticCode.CutLineTooNear,
            panel,
            Length.FromMillimeters(nearestMm),
            edge,
            at,
            Length.FromMillimeters(neededMm),
            Length.FromMillimeters(allowedMm))
        {
            Step = Step,
            Landmark = edge.Text,
            Measured = Length.FromMillimeters(neededMm),
            Allowed = Length.FromMillimeters(allowedMm),
        };

    internal static ConstructionException SeamCrosses(Panel panel, CurvePath seamLine)
    {
        Point2D at = FirstCrossing(seamLine);
        EdgeName edge = NearestEdge(panel, at);
        return new ConstructionException(DiagnosticCode.SeamLineCrosses, panel.Name, at, edge) { Step = Step, Landmark = edge.Text };
    }

    internal static Point2D FirstCrossing(CurvePath outline)
    {
        IReadOnlyList<PathIntersection> own = outline.FirstSelfIntersections(1);
        return own.Count > 0 ? own[0].Point : outline.Start;
    }

    internal static EdgeName NearestEdge(Panel panel, Point2D at)
        => panel.Edges.OrderBy(e => e.Stretches.Min(s => s.ClosestTo(at).DistanceMm)).First().Name;
}
