using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Tests.Panels;

/// <summary>What tests of truing do to sample panels.</summary>
internal static class TruingTestPanels
{
    internal static Panel WithNotchAt(this Panel panel, double mm)
    {
        PanelEdge side = panel.FindEdge(EdgeName.SideSeam);
        return new Panel(panel.Name, panel.EdgesRaw, panel.Features with { Notches = [new Notch(EdgeName.SideSeam, side.PointAtSewnMm(mm), mm, 1)] });
    }

    internal static Panel Renamed(this Panel panel, PanelName name) => new(name, panel.EdgesRaw, panel.Features);

    /// <summary>The waist ends elsewhere, and the side begins there.</summary>
    internal static Panel WithWaistEndAt(this Panel panel, double x, double y)
    {
        PanelEdge[] edges = [.. panel.EdgesRaw];
        Point2D end = new(x, y);
        edges[0] = new PanelEdge(edges[0].Name, edges[0].Role, CurvePath.FromLine(new LineSegment(edges[0].Start, end)));
        edges[1] = new PanelEdge(edges[1].Name, edges[1].Role, CurvePath.FromLine(new LineSegment(end, edges[1].End)));
        return new Panel(panel.Name, edges, panel.Features);
    }

    /// <summary>The straight stretches of the waist as curves, so that they can bend.</summary>
    internal static Panel WithCurvedWaist(this Panel panel)
    {
        PanelEdge[] edges = [.. panel.EdgesRaw];
        edges[0] = new PanelEdge(
            edges[0].Name,
            edges[0].Role,
            [.. edges[0].Stretches.Select(s => CurvePath.FromCubic(s.SegmentsRaw[0].LineRaw.ToCubic()))],
            [.. edges[0].Darts.Select(d => d.Shape)]);
        return new Panel(panel.Name, edges, panel.Features);
    }

    /// <summary>Trues, and fails with the conflict in words where that is not possible.</summary>
    internal static TruingOutcome TrueOrExplain(this TruingPlan plan, params Panel[] panels)
    {
        bool holds = plan.TryTrue(panels, out TruingOutcome outcome);
        Assert.True(holds, string.Join("; ", outcome.Conflict.Select(c => c.ToString()).Concat(outcome.AtLimit.Select(m => m.ToString()))));
        return outcome;
    }
}
