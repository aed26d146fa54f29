using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Refusals that several steps share.</summary>
internal static class PieceErrors
{
    private const string Step = "adding seam allowance";

    internal static ConstructionException Vanishes(PanelName panel, EdgeName edge, double allowanceMm)
        => new(DiagnosticCode.EdgeVanishes, edge, panel, Length.FromMillimeters(allowanceMm))
        {
            Step = Step,
            Landmark = edge.Text,
            Measured = Length.FromMillimeters(allowanceMm),
        };

    internal static ConstructionException Crosses(Panel panel, CurvePath outline, double widestMm)
    {
        PathIntersections own = outline.SelfIntersections();
        Point2D at = own.Points.Count > 0 ? own.Points[0].Point : outline.Start;
        EdgeName edge = panel.Edges.OrderBy(e => e.Stretches.Min(s => s.ClosestTo(at).DistanceMm)).First().Name;
        return new ConstructionException(DiagnosticCode.CutLineCrosses, panel.Name, at, edge, Length.FromMillimeters(widestMm))
        {
            Step = Step,
            Landmark = edge.Text,
            Measured = Length.FromMillimeters(widestMm),
        };
    }
}
