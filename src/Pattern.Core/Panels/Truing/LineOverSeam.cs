using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Two edges that make one line once a seam beside them is sewn.</summary>
internal sealed class LineOverSeam
{
    internal const string Step = "truing a line over a seam";

    private readonly Part _earlier;
    private readonly Part _later;

    private LineOverSeam(in Part earlier, in Part later)
    {
        _earlier = earlier;
        _later = later;
    }

    /// <summary>The place where two edges meet over a seam; null where this seam does not join them.</summary>
    internal static LineOverSeam? TryFind(Seam seam, EdgeOf earlier, EdgeOf later, Panel[] panels)
    {
        return Joins(seam, earlier, later, panels) ?? Joins(seam.Reversed(), earlier, later, panels);
    }

    private static LineOverSeam? Joins(Seam seam, EdgeOf earlier, EdgeOf later, Panel[] panels)
    {
        if (seam.First.PanelName != earlier.PanelName || seam.Second.PanelName != later.PanelName)
        {
            return null;
        }

        SeamWalk walk = seam.Walk(panels);
        foreach (EdgeEnd end in new[] { EdgeEnd.Start, EdgeEnd.End })
        {
            EdgeEnd other = walk.Run == SeamRun.SameWay ? end : end == EdgeEnd.Start ? EdgeEnd.End : EdgeEnd.Start;
            if (Part.At(walk.First, end, earlier, panels) is { } first && Part.At(walk.Second, other, later, panels) is { } second)
            {
                return new LineOverSeam(first, second);
            }
        }

        return null;
    }

    /// <summary>Turns both parts, in place among the panels.</summary>
    internal TruingResult True(LineTruing truing, Panel[] panels)
    {
        var changes = new ChangeList();
        double before = _earlier.CornerRad(panels) + _later.CornerRad(panels);
        double turn = truing.JoinedAngleRad - before;
        if (Math.Abs(turn) <= PathEnds.SmoothRad)
        {
            return new TruingResult(panels, [], []);
        }

        _earlier.Turn(turn * truing.ShareOfFirstRaw, panels, changes);
        _later.Turn(turn * (1 - truing.ShareOfFirstRaw), panels, changes);
        changes.Angle("joined line", _earlier.Edge + " to " + _later.Edge, before, _earlier.CornerRad(panels) + _later.CornerRad(panels));
        return new TruingResult(panels, changes.Lengths(), changes.Angles());
    }

    /// <summary>One of the two edges, with the end of it that lies at the seam.</summary>
    private readonly record struct Part(EdgeOf Edge, int Panel, int Index, EdgeEnd End)
    {
        /// <summary>The edge if it lies beside that end of the seam.</summary>
        internal static Part? At(WalkSide side, EdgeEnd seamEnd, EdgeOf edge, Panel[] panels)
        {
            Panel panel = side.Panel;
            int seam = panel.IndexOf(side.Edge.Name);
            int beside = seamEnd == EdgeEnd.Start ? (seam == 0 ? panel.EdgesRaw.Length - 1 : seam - 1) : (seam + 1) % panel.EdgesRaw.Length;
            return side.Reaches(seamEnd) && panel.EdgesRaw[beside].Name == edge.EdgeName
                ? new Part(edge, Array.IndexOf(panels, panel), beside, seamEnd == EdgeEnd.Start ? EdgeEnd.End : EdgeEnd.Start)
                : null;
        }

        internal double CornerRad(Panel[] panels)
        {
            Panel panel = panels[Panel];
            return panel.CornerRad(End == EdgeEnd.End ? Index : Index == 0 ? panel.EdgesRaw.Length - 1 : Index - 1);
        }

        /// <summary>Widens the corner inside the panel by an angle.</summary>
        internal void Turn(double angleRad, Panel[] panels, ChangeList changes)
        {
            if (angleRad == 0)
            {
                return;
            }

            Panel panel = panels[Panel];
            double corner = CornerRad(panels);
            PanelEdge edge = panel.EdgesRaw[Index];
            double sign = (End == EdgeEnd.End) == panel.RunsCounterClockwise ? 1 : -1;
            int at = End == EdgeEnd.End ? edge.Stretches.Count - 1 : 0;
            var segments = (PathSegment[])edge.Stretches[at].SegmentsRaw.Clone();
            int segment = End == EdgeEnd.End ? segments.Length - 1 : 0;
            segments[segment] = End == EdgeEnd.End
                ? PathEnds.Bent(segments[segment], null, segments[segment].EndDirection.TurnedRad(sign * angleRad))
                : PathEnds.Bent(segments[segment], segments[segment].StartDirection.TurnedRad(sign * angleRad), null);

            PanelEdge turned = edge.WithStretch(at, CurvePath.Trusted(segments, isClosed: false));
            var redraw = new PanelRedraw(panel, Step);
            redraw.ReplaceAllAlong(Index, turned);
            panels[Panel] = redraw.Make();
            changes.Length("sewn length", Edge.ToString(), edge.SewnLengthMm(), turned.SewnLengthMm());
            changes.Angle(End == EdgeEnd.Start ? "corner at start" : "corner at end", Edge.ToString(), corner, CornerRad(panels));
        }
    }
}
