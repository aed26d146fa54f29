using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>The line to cut along, all around a panel.</summary>
internal sealed class CutLine
{
    // The farthest that a corner's point or the mirror image of an allowance lies from the end of an edge, in widest allowances.
    private const double Reach = 8;

    private CutLine(EdgeCut[] edges, CurvePath[] lines, CurvePath?[] corners, CurvePath outline)
    {
        Edges = edges;
        Lines = lines;
        Corners = corners;
        Outline = outline;
    }

    internal EdgeCut[] Edges { get; }

    /// <summary>The part along each edge.</summary>
    internal CurvePath[] Lines { get; }

    /// <summary>What lies between the part along each edge and that along the next; null where they meet in a point.</summary>
    internal CurvePath?[] Corners { get; }

    internal CurvePath Outline { get; }

    /// <summary>Draws the line.</summary>
    /// <exception cref="ConstructionException">An edge vanishes, or the line crosses itself; the allowance that would do is part of the message.</exception>
    internal static CutLine Draw(Panel panel, PieceSettings settings, double hand)
    {
        CutLine? line = TryDraw(panel, settings, hand, 1, out CutFault? fault);
        return line ?? throw fault!.ToException(panel, fault.AllowanceMm * WidestShare(panel, settings, hand));
    }

    private static CutLine? TryDraw(Panel panel, PieceSettings settings, double hand, double share, out CutFault? fault)
    {
        int count = panel.EdgesRaw.Length;
        var widths = new double[count];
        double widestMm = 0;
        for (int i = 0; i < count; i++)
        {
            widths[i] = share * AllowanceMm(panel.EdgesRaw[i], settings);
            widestMm = Math.Max(widestMm, widths[i]);
        }

        var edges = new EdgeCut[count];
        for (int i = 0; i < count; i++)
        {
            PanelEdge edge = panel.EdgesRaw[i];
            EdgeCut? cut = EdgeCut.Lay(edge, widths[i], IsOnFold(edge, settings), hand, 1 + (Reach * widestMm));
            if (cut is null)
            {
                fault = new CutFault(edge.Name, widths[i], null);
                return null;
            }

            edges[i] = cut;
        }

        var between = new List<PathSegment>[count];
        for (int i = 0; i < count; i++)
        {
            EdgeCut after = edges[(i + 1) % count];
            Corner corner = CornerOf(edges[i].Edge.Name, after.Edge.Name, settings, out bool acrossEnds);
            between[i] = CornerJoint.Make(edges[i], after, hand, corner, acrossEnds);
        }

        // Along the first edge, between it and the second, along the second, and so on.
        var parts = new List<PathSegment>[2 * count];
        for (int i = 0; i < count; i++)
        {
            if (edges[i].HasVanished)
            {
                fault = new CutFault(edges[i].Edge.Name, widths[i], null);
                return null;
            }

            parts[2 * i] = SharedEnds.WithoutSpecks(edges[i].Line());
            parts[(2 * i) + 1] = between[i];
        }

        SharedEnds.DrawArcsThatMeetAsCubics(parts);
        var all = new List<PathSegment>(32);
        foreach (List<PathSegment> part in parts)
        {
            all.AddRange(part);
        }

        PathSegment[] ring = [.. CurvePath.FromSegments(all).Closed().SegmentsRaw];
        SharedEnds.Join(ring);
        var outline = CurvePath.Trusted(ring, isClosed: true);
        var lines = new CurvePath[count];
        var corners = new CurvePath?[count];
        int at = 0;
        for (int i = 0; i < count; i++)
        {
            lines[i] = Part(ring, ref at, parts[2 * i].Count)!;
            corners[i] = Part(ring, ref at, parts[(2 * i) + 1].Count);
        }

        if (outline.IsSimple())
        {
            fault = TooNear(edges, lines);
            return fault is null
                ? new CutLine(edges, lines, corners, outline)
                : null;
        }

        Point2D crossing = PieceErrors.FirstCrossing(outline);
        EdgeName nearest = PieceErrors.NearestEdge(panel, crossing);
        fault = new CutFault(nearest, widths[panel.IndexOf(nearest)], crossing);
        return null;
    }

    // A dart's cap and its allowance are folded from their own edge and know nothing of the next one. Where the panel bends around them there, either may come too near
    // to what lies beyond the corner: the allowance of the cap to the next edge, or that of the next edge to the cap.
    private static CutFault? TooNear(EdgeCut[] edges, CurvePath[] lines)
    {
        for (int i = 0; i < edges.Length; i++)
        {
            for (int k = 0; k < edges.Length; k++)
            {
                double neededMm = Math.Min(edges[i].AllowanceMm, edges[k].AllowanceMm);
                if (k != i && edges[i].Caps.Length + edges[k].Caps.Length > 0 && Clearance.Find(lines[i], edges[k].Edge, neededMm) is { } fault)
                {
                    return fault;
                }
            }
        }

        return null;
    }

    private static CurvePath? Part(PathSegment[] ring, ref int at, int count)
    {
        if (count == 0)
        {
            return null;
        }

        var part = new PathSegment[count];
        Array.Copy(ring, at, part, 0, count);
        at += count;
        return CurvePath.Trusted(part, isClosed: false);
    }

    // How far all allowances would have to be narrowed for a cut line to be drawn; to a thousandth, rounded down.
    private static double WidestShare(Panel panel, PieceSettings settings, double hand)
    {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 10; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = TryDraw(panel, settings, hand, middle, out _) is null ? (low, middle) : (middle, high);
        }

        return low;
    }

    private static bool IsOnFold(PanelEdge edge, PieceSettings settings) => !settings.IsUnfolded && settings.Fold == edge.Name;

    private static double AllowanceMm(PanelEdge edge, PieceSettings settings) => IsOnFold(edge, settings) ? 0 : settings.AllowanceMm(edge.Name);

    // An edge and its mirror image have the corner that was said of the edge.
    internal static Corner CornerOf(EdgeName ends, EdgeName begins, PieceSettings settings, out bool acrossEnds)
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
