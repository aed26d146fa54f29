using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Puts what moved back into the panels. What did not move stays as it is, to the bit.</summary>
internal static class TruingRedraw
{
    private const double OnPointMm = 1e-6;

    internal static Panel[] Panels(TruingRoom room, Panel[] panels)
    {
        var trued = (Panel[])panels.Clone();
        for (int p = 0; p < panels.Length; p++)
        {
            if (room.Layout.IsLaidOut(p))
            {
                trued[p] = Redrawn(room, panels[p], p);
            }
        }

        return trued;
    }

    private static Panel Redrawn(TruingRoom room, Panel panel, int p)
    {
        PanelEdge[] edges = panel.EdgesRaw;
        var redraw = new PanelRedraw(panel, TruingPlan.Step);
        bool any = false;
        for (int e = 0; e < edges.Length; e++)
        {
            PanelEdge edge = Redrawn(room, edges[e], p, e);
            if (!ReferenceEquals(edge, edges[e]))
            {
                redraw.Replace(e, edge, addedAtStartMm: 0);
                any = true;
            }
        }

        Panel now = any ? redraw.Make() : panel;
        Notch[] notches = Slid(room, now, p, out bool slides);
        Landmark[] landmarks = any ? AtApexes(panel, now) : now.Features.Landmarks;
        return any || slides ? new Panel(now.Name, now.EdgesRaw, now.Features with { Notches = notches, Landmarks = landmarks }) : panel;
    }

    private static PanelEdge Redrawn(TruingRoom room, PanelEdge edge, int p, int e)
    {
        int sweep = room.SweepOf(p, e);
        if (sweep >= 0)
        {
            return room.IsSweepUnmoved(sweep) ? edge : room.Swept(sweep, edge);
        }

        var stretches = new CurvePath[edge.Stretches.Count];
        bool any = false;
        for (int s = 0; s < stretches.Length; s++)
        {
            stretches[s] = edge.Stretches[s];
            PathSegment[] old = stretches[s].SegmentsRaw;
            PathSegment[]? now = null;
            int first = room.Layout.FirstPiece(p, e, s);
            for (int i = 0; i < old.Length; i++)
            {
                if (TryMove(room, room.Layout.Pieces[first + i], old[i], out PathSegment moved))
                {
                    now ??= (PathSegment[])old.Clone();
                    now[i] = moved;
                }
            }

            if (now is not null)
            {
                stretches[s] = CurvePath.Trusted(now, isClosed: false);
                any = true;
            }
        }

        var darts = new DartShape[edge.Darts.Count];
        for (int d = 0; d < darts.Length; d++)
        {
            DartShape shape = edge.Darts[d].Shape;
            darts[d] = shape with
            {
                Apex = shape.Apex + room.Gone(room.Layout.Apex(p, e, d)),
                StartLeg = shape.StartLeg + room.Gone(room.Layout.Pieces[room.Layout.DartPiece(p, e, d, DartLine.StartLeg)].End),
                EndLeg = shape.EndLeg + room.Gone(room.Layout.Pieces[room.Layout.DartPiece(p, e, d, DartLine.EndLeg)].End),
            };
            any |= darts[d] != shape;
        }

        return any ? new PanelEdge(edge.Name, edge.Role, stretches, darts) : edge;
    }

    private static bool TryMove(TruingRoom room, in TruingPiece piece, in PathSegment old, out PathSegment moved)
    {
        moved = old;
        Vector2D start = room.Gone(piece.Start);
        Vector2D end = room.Gone(piece.End);
        if (piece.Kind == PathSegmentKind.Cubic)
        {
            CubicBezier cubic = old.CubicRaw;
            var now = new CubicBezier(
                cubic.Start + start, cubic.StartControl + room.Gone(piece.StartControl), cubic.EndControl + room.Gone(piece.EndControl), cubic.End + end);
            moved = PathSegment.FromCubic(now);
            return now != cubic;
        }

        if (start == default && end == default)
        {
            return false;
        }

        moved = PathSegment.FromLine(new LineSegment(old.Start + start, old.End + end));
        return true;
    }

    private static Notch[] Slid(TruingRoom room, Panel panel, int p, out bool any)
    {
        any = false;
        var notches = (Notch[])panel.Features.Notches.Clone();
        for (int slot = 0; slot < room.Layout.Notches.Length; slot++)
        {
            TruingNotch slid = room.Layout.Notches[slot];
            double gone = room.NotchGoneMm(slot);
            if (slid.Panel != p || gone == 0)
            {
                continue;
            }

            PanelEdge edge = panel.EdgesRaw[slid.Edge];
            int[] ofEdge = [.. Enumerable.Range(0, notches.Length).Where(n => panel.Notches[n].Edge == edge.Name).OrderBy(n => panel.Notches[n].FromStartMm)];
            Notch was = panel.Notches[ofEdge[slid.Number]];
            double to = Raw.Clamp(was.FromStartMm + gone, 0, edge.SewnLengthMm());
            notches[ofEdge[slid.Number]] = new Notch(edge.Name, edge.PointAtSewnMm(to), to, was.Count);
            any = true;
        }

        return notches;
    }

    // Points named at the apex of a dart go with it.
    private static Landmark[] AtApexes(Panel old, Panel now)
    {
        Dart[] before = [.. old.Darts];
        Dart[] after = [.. now.Darts];
        return [.. now.Features.Landmarks.Select(landmark =>
        {
            int dart = Array.FindIndex(before, d => d.Apex.DistanceMm(landmark.Position) < OnPointMm);
            return dart < 0 ? landmark : landmark.At(after[dart].Apex);
        })];
    }
}
