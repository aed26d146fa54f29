using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>The line to cut along, all around a panel.</summary>
internal sealed class CutLine
{
    // The farthest that a corner's point or the mirror image of an allowance lies from the end of an edge, in widest allowances.
    private const double Reach = 8;

    private CutLine(EdgeCut[] edges, CurvePath[] lines, CurvePath outline)
    {
        Edges = edges;
        Lines = lines;
        Outline = outline;
    }

    internal EdgeCut[] Edges { get; }

    /// <summary>The part along each edge.</summary>
    internal CurvePath[] Lines { get; }

    internal CurvePath Outline { get; }

    internal static CutLine Draw(Panel panel, PieceSettings settings, double hand)
    {
        int count = panel.EdgesRaw.Length;
        double widestMm = 0;
        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            widestMm = System.Math.Max(widestMm, AllowanceMm(edge, settings));
        }

        var edges = new EdgeCut[count];
        for (int i = 0; i < count; i++)
        {
            PanelEdge edge = panel.EdgesRaw[i];
            edges[i] = EdgeCut.Lay(panel.Name, edge, AllowanceMm(edge, settings), IsOnFold(edge, settings), hand, 1 + (Reach * widestMm));
        }

        var between = new List<PathSegment>[count];
        for (int i = 0; i < count; i++)
        {
            EdgeCut after = edges[(i + 1) % count];
            Corner corner = CornerOf(edges[i].Edge.Name, after.Edge.Name, settings, out bool acrossEnds);
            between[i] = CornerJoint.Make(edges[i], after, hand, corner, acrossEnds);
        }

        var lines = new CurvePath[count];
        var all = new List<PathSegment>(32);
        for (int i = 0; i < count; i++)
        {
            lines[i] = CurvePath.FromSegments(edges[i].Line(panel.Name));
            all.AddRange(lines[i].SegmentsRaw);
            all.AddRange(between[i]);
        }

        CurvePath outline = CurvePath.FromSegments(all).Closed();
        return outline.IsSimple() ? new CutLine(edges, lines, outline) : throw PieceErrors.Crosses(panel, outline, widestMm);
    }

    private static bool IsOnFold(PanelEdge edge, PieceSettings settings) => !settings.IsUnfolded && settings.Fold == edge.Name;

    private static double AllowanceMm(PanelEdge edge, PieceSettings settings) => IsOnFold(edge, settings) ? 0 : settings.AllowanceMm(edge.Name);

    // An edge and its mirror image have the corner that was said of the edge.
    private static Corner CornerOf(EdgeName ends, EdgeName begins, PieceSettings settings, out bool acrossEnds)
    {
        EdgeName first = PanelUnfolding.OriginalOf(ends);
        EdgeName second = PanelUnfolding.OriginalOf(begins);
        foreach ((EdgeName across, EdgeName along, Corner corner) in settings.Corners)
        {
            acrossEnds = across == first;
            if ((acrossEnds && along == second) || (across == second && along == first))
            {
                return corner;
            }
        }

        acrossEnds = false;
        return Corner.Extended;
    }
}
