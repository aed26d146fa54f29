using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Arcs that would have to bend, as curves that can: an arc has no handles.</summary>
internal static class ArcsAsCurves
{
    // A cubic over an eighth of a circle is off by less than five millionths of its radius; more and shorter ones would leave all bending to the last.
    private const double MostRad = Math.PI / 4;

    /// <summary>The panels with curves for those arcs that touch something that may move; the very same panels where no arc does.</summary>
    internal static Panel[] For(Movable[] movables, Panel[] panels)
    {
        Panel[] now = panels;
        for (int p = 0; p < panels.Length; p++)
        {
            if (!HasArc(panels[p]))
            {
                continue;
            }

            PanelEdge[]? edges = null;
            foreach ((int e, int s, int i) in Touched(movables, panels[p]))
            {
                edges ??= (PanelEdge[])panels[p].EdgesRaw.Clone();
                edges[e] = edges[e].WithStretch(s, Bending(edges[e].Stretches[s], i));
            }

            if (edges is not null)
            {
                now = ReferenceEquals(now, panels) ? (Panel[])panels.Clone() : now;
                now[p] = new Panel(panels[p].Name, edges, panels[p].Features);
            }
        }

        return now;
    }

    /// <summary>The panel with curves for all its arcs; itself where it has none.</summary>
    internal static Panel Everywhere(Panel panel) => !HasArc(panel) ? panel : new Panel(
        panel.Name,
        Array.ConvertAll(panel.EdgesRaw, edge => new PanelEdge(edge.Name, edge.Role, Array.ConvertAll(edge.StretchesRaw, Bending), edge.Shapes())),
        panel.Features);

    private static bool HasArc(Panel panel)
    {
        foreach (PanelEdge edge in panel.EdgesRaw)
        {
            foreach (CurvePath stretch in edge.StretchesRaw)
            {
                if (Array.Exists(stretch.SegmentsRaw, s => s.Kind == PathSegmentKind.Arc))
                {
                    return true;
                }
            }
        }

        return false;
    }

    // The last segment of a stretch first, so that the numbers of those before still hold.
    private static List<(int Edge, int Stretch, int Segment)> Touched(Movable[] movables, Panel panel)
    {
        var found = new List<(int Edge, int Stretch, int Segment)>();
        PanelEdge[] edges = panel.EdgesRaw;
        for (int e = 0; e < edges.Length; e++)
        {
            for (int s = 0; s < edges[e].Stretches.Count; s++)
            {
                PathSegment[] segments = edges[e].Stretches[s].SegmentsRaw;
                for (int i = segments.Length - 1; i >= 0; i--)
                {
                    if (segments[i].Kind == PathSegmentKind.Arc && Array.Exists(movables, m => m.Edge.PanelName == panel.Name && Touches(m, panel, e, s, i)))
                    {
                        found.Add((e, s, i));
                    }
                }
            }
        }

        return found;
    }

    private static bool Touches(Movable movable, Panel panel, int e, int s, int i)
    {
        PanelEdge[] edges = panel.EdgesRaw;
        int own = panel.IndexOf(movable.Edge.EdgeName);
        bool begins = i == 0;
        bool ends = i == edges[e].Stretches[s].SegmentsRaw.Length - 1;
        switch (movable.Kind)
        {
            case MovableKind.Corner:
                int arrives = movable.End == EdgeEnd.End ? own : (own + edges.Length - 1) % edges.Length;
                return (e == arrives && ends && s == edges[e].Stretches.Count - 1) || (e == (arrives + 1) % edges.Length && begins && s == 0);
            case MovableKind.Dart:
            case MovableKind.Legs:
                return e == own && ((ends && s == movable.Number - 1) || (begins && s == movable.Number));
            default:
                return e == own && movable.Kind == MovableKind.Handles;
        }
    }

    // The last segment first, so that the numbers of those before still hold.
    private static CurvePath Bending(CurvePath stretch)
    {
        CurvePath now = stretch;
        for (int i = stretch.SegmentsRaw.Length - 1; i >= 0; i--)
        {
            now = stretch.SegmentsRaw[i].Kind == PathSegmentKind.Arc ? Bending(now, i) : now;
        }

        return now;
    }

    private static CurvePath Bending(CurvePath stretch, int index)
    {
        PathSegment[] segments = stretch.SegmentsRaw;
        CircularArc arc = segments[index].AsArc();
        int count = Math.Max(1, (int)Math.Ceiling((Math.Abs(arc.SweepRad) / MostRad) - 1e-9));
        var now = new PathSegment[segments.Length + count - 1];
        Array.Copy(segments, now, index);
        for (int k = 0; k < count; k++)
        {
            now[index + k] = PathSegment.FromCubic(arc.CubicPiece(k, count));
        }

        Array.Copy(segments, index + 1, now, index + count, segments.Length - index - 1);
        return CurvePath.Trusted(now, isClosed: false);
    }
}
