using System;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Blocks;

/// <summary>Measures the panels of a bodice by means of its own: points along the lines, none of the sums and corners that the report uses.</summary>
internal static class BodiceSewn
{
    /// <summary>The length of an edge with its darts closed, added up along points of the closed line.</summary>
    internal static double ClosedMm(Panel panel, EdgeName edge)
    {
        CurvePath line = panel.FindEdge(edge).Closed();
        return Along(line, 4000).Zip(Along(line, 4000).Skip(1), (a, b) => a.DistanceTo(b).Millimeters).Sum();
    }

    /// <summary>The heading of an edge, in degrees, over its first or last tenth of a millimetre.</summary>
    internal static double HeadingDeg(Panel panel, EdgeName edge, bool atEnd)
    {
        PanelEdge found = panel.FindEdge(edge);
        CurvePath line = atEnd ? found.Stretches[^1] : found.Stretches[0];
        Length bit = Length.FromMillimeters(1e-4);
        Point2D from = atEnd ? line.PointAtLength(line.Length - bit) : line.Start;
        Point2D to = atEnd ? line.End : line.PointAtLength(bit);
        return Math.Atan2((to.Y - from.Y).Millimeters, (to.X - from.X).Millimeters) * 180 / Math.PI;
    }

    /// <summary>The angle inside a panel, in degrees, where one edge ends and the next begins.</summary>
    internal static double CornerDeg(Panel panel, EdgeName arriving, EdgeName leaving)
    {
        double turn = HeadingDeg(panel, leaving, atEnd: false) - HeadingDeg(panel, arriving, atEnd: true);
        turn = ((turn % 360) + 540) % 360 - 180;
        return 180 - Math.Abs(turn);
    }

    private static Point2D[] Along(CurvePath line, int parts)
        => [.. Enumerable.Range(0, parts + 1).Select(i => line.PointAtLength(line.Length * ((double)i / parts), BeyondEnds.StopAtEnd))];
}
