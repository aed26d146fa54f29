using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Makes the stretches of a seam equally long, but for the ease asked for.</summary>
/// <remarks>The edges are held together at one mark. Every other mark is moved along its edge: notches slide, the ends of an edge go on straight or are cut back,
/// and the edges beside them follow.</remarks>
internal sealed class SeamLengths
{
    private const string Step = "making a seam equally long";
    private const double SameMm = 1e-9;

    private readonly Seam _seam;
    private readonly LengthTruing _asked;
    private readonly SeamWalk _walk;
    private readonly int _held;
    private readonly double[] _firstMm;
    private readonly double[] _secondMm;

    internal SeamLengths(Seam seam, LengthTruing asked, Panel[] panels)
    {
        _seam = seam;
        _asked = asked;
        _walk = seam.Walk(panels);
        if (!_walk.NotchesPair)
        {
            throw new ConstructionException(DiagnosticCode.NotchesUnpaired, seam, _walk.FirstNotchCount, _walk.SecondNotchCount) { Step = Step, Landmark = seam.Place };
        }

        _held = Held();
        _firstMm = [.. _walk.Stretches.Select(s => s.FirstMm)];
        _secondMm = [.. _walk.Stretches.Select(s => s.SecondMm)];
    }

    internal TruingResult True(Panel[] panels)
    {
        // What is done to a half is done to its mirror image.
        if (_seam.IsToMirrorImage || !Share())
        {
            return new TruingResult((Panel[])panels.Clone(), [], []);
        }

        var now = (Panel[])panels.Clone();
        var changes = new ChangeList();
        Move(_walk.First, _firstMm, _walk.FirstAtMm, now, changes);
        Move(_walk.Second, _secondMm, _walk.SecondAtMm, now, changes);
        return new TruingResult(now, changes.Lengths(), changes.Angles());
    }

    private int Held()
    {
        int last = _walk.FirstAtMm.Length - 1;
        if (_asked.Held.IsStart || _asked.Held.IsEnd)
        {
            return _asked.Held.IsStart ? 0 : last;
        }

        double atMm = _walk.First.AlongMm(_walk.First.ResolveMm(_asked.Held));
        for (int i = 0; i <= last; i++)
        {
            if (Math.Abs(_walk.FirstAtMm[i] - atMm) <= GeometryTolerance.JoinMm)
            {
                return i;
            }
        }

        throw new ConstructionException(DiagnosticCode.SeamMarkMissing, _seam) { Step = Step, Landmark = _asked.Held.ToString() };
    }

    /// <summary>Decides the new lengths; false where all stretches asked for agree already.</summary>
    /// <remarks>Where ease lies evenly along an edge that gives way, what is asked of each stretch follows its new length; that settles in a few rounds,
    /// since ease is a small part of a seam.</remarks>
    private bool Share()
    {
        double first = _asked.FirstTakes;
        bool any = false;
        for (int round = 0; round < 100; round++)
        {
            double worst = 0;
            for (int i = 0; i < _firstMm.Length; i++)
            {
                if (!_asked.Includes(i))
                {
                    continue;
                }

                double off = _firstMm[i] - _secondMm[i] - _walk.EaseAskedMm(i, _firstMm, _secondMm);
                worst = Math.Max(worst, Math.Abs(off));
                if (Math.Abs(off) > SameMm)
                {
                    _firstMm[i] -= off * first;
                    _secondMm[i] += off * (1 - first);
                }
            }

            if (worst <= SameMm)
            {
                break;
            }

            any = true;
        }

        return any;
    }

    private void Move(WalkSide side, double[] lengthsMm, double[] wasAtMm, Panel[] panels, ChangeList changes)
    {
        double atStart = 0;
        double atEnd = 0;
        for (int i = 0; i < lengthsMm.Length; i++)
        {
            double added = lengthsMm[i] - (wasAtMm[i + 1] - wasAtMm[i]);
            (atStart, atEnd) = i < _held ? (atStart + added, atEnd) : (atStart, atEnd + added);
        }

        // From the way along the seam to the edge's own order.
        (double ownStart, double ownEnd) = side.Backwards ? (atEnd, atStart) : (atStart, atEnd);
        int at = Array.FindIndex(panels, p => p.Name == side.Panel.Name);
        Panel panel = panels[at];
        int index = panel.IndexOf(side.Edge.Name);
        double oldLength = side.Edge.SewnLengthMm();
        Panel moved = MoveEnd(MoveEnd(panel, index, EdgeEnd.Start, ownStart, side), index, EdgeEnd.End, ownEnd, side);
        moved = SlideNotches(moved, panel, side, lengthsMm, wasAtMm, ownStart);
        RefuseFixedEnd(panel, side, EdgeEnd.Start, ownStart);
        RefuseFixedEnd(panel, side, EdgeEnd.End, ownEnd);
        panels[at] = moved;

        string place = EdgeOf.Panel(panel.Name, side.Edge.Name).ToString();
        changes.Length("sewn length", place, oldLength, moved.EdgesRaw[index].SewnLengthMm());
        for (int i = 0; i < lengthsMm.Length && lengthsMm.Length > 1; i++)
        {
            changes.Length(_walk.Stretches[i].Name, place, wasAtMm[i + 1] - wasAtMm[i], lengthsMm[i]);
        }

        ReportNeighbours(panel, moved, index, changes);
    }

    private static void ReportNeighbours(Panel old, Panel now, int index, ChangeList changes)
    {
        int count = old.EdgesRaw.Length;
        int before = (index + count - 1) % count;
        int after = (index + 1) % count;
        string Place(int i) => EdgeOf.Panel(old.Name, old.EdgesRaw[i].Name).ToString();
        changes.Length("sewn length", Place(before), old.EdgesRaw[before].SewnLengthMm(), now.EdgesRaw[before].SewnLengthMm());
        if (after != before)
        {
            changes.Length("sewn length", Place(after), old.EdgesRaw[after].SewnLengthMm(), now.EdgesRaw[after].SewnLengthMm());
        }

        changes.Angle("corner at start", Place(index), old.CornerRad(before), now.CornerRad(before));
        changes.Angle("corner at end", Place(index), old.CornerRad(index), now.CornerRad(index));
        changes.Angle("corner at start", Place(before), old.CornerRad((before + count - 1) % count), now.CornerRad((before + count - 1) % count));
        changes.Angle("corner at end", Place(after), old.CornerRad(after), now.CornerRad(after));
    }

    private static Panel MoveEnd(Panel panel, int index, EdgeEnd end, double addedMm, WalkSide side)
    {
        if (Math.Abs(addedMm) <= SameMm || !side.Reaches(end))
        {
            // A seam over a part of an edge ends at a notch, which slides.
            return panel;
        }

        PanelEdge edge = panel.EdgesRaw[index];
        CurvePath near = end == EdgeEnd.Start ? edge.Stretches[0] : edge.Stretches[edge.Stretches.Count - 1].Reversed();
        if (-addedMm >= near.LengthMm - GeometryTolerance.JoinMm)
        {
            throw new ConstructionException(
                DiagnosticCode.TruingTakesTooMuch, PanelErrors.Millimetres(-addedMm), end == EdgeEnd.Start ? "start" : "end", edge.Name, panel.Name, PanelErrors.Millimetres(near.LengthMm))
            {
                Step = Step,
                Landmark = edge.Name.Text,
                Measured = PanelErrors.Millimetres(-addedMm),
                Allowed = PanelErrors.Millimetres(near.LengthMm),
            };
        }

        near = PathEnds.Shortened(near, -addedMm);
        Point2D corner = near.Start;
        int count = panel.EdgesRaw.Length;
        int beside = end == EdgeEnd.Start ? (index + count - 1) % count : (index + 1) % count;
        PanelEdge neighbour = panel.EdgesRaw[beside];
        CurvePath follows = end == EdgeEnd.Start
            ? PathEnds.Following(neighbour.Stretches[neighbour.Stretches.Count - 1].Reversed(), corner).Reversed()
            : PathEnds.Following(neighbour.Stretches[0], corner);

        PanelEdge besideNow = neighbour.WithStretch(end == EdgeEnd.Start ? neighbour.Stretches.Count - 1 : 0, follows);
        var redraw = new PanelRedraw(panel, Step);
        redraw.Replace(index, edge.WithStretch(end == EdgeEnd.Start ? 0 : edge.Stretches.Count - 1, end == EdgeEnd.Start ? near : near.Reversed()), end == EdgeEnd.Start ? addedMm : 0);
        redraw.Replace(beside, besideNow, end == EdgeEnd.Start ? 0 : besideNow.SewnLengthMm() - neighbour.SewnLengthMm());
        return redraw.Make();
    }

    /// <summary>Puts the notches of the seam where its new stretches begin and end.</summary>
    private static Panel SlideNotches(Panel panel, Panel old, WalkSide side, double[] lengthsMm, double[] wasAtMm, double addedAtStartMm)
    {
        PanelEdge edge = panel.FindEdge(side.Edge.Name);
        double startMm = side.Reaches(EdgeEnd.Start) ? 0 : side.FromMm - addedAtStartMm;
        double totalMm = lengthsMm.Sum();
        Notch[] now = [.. panel.Notches];
        bool any = false;
        double atMm = 0;
        for (int mark = 0; mark < wasAtMm.Length; mark++)
        {
            double oldMm = side.OnEdgeMm(wasAtMm[mark]);
            double newMm = startMm + (side.Backwards ? totalMm - atMm : atMm);
            for (int n = 0; n < now.Length; n++)
            {
                Notch was = old.Notches[n];
                if (was.Edge == edge.Name && Math.Abs(was.FromStartMm - oldMm) <= GeometryTolerance.JoinMm && Math.Abs(now[n].FromStartMm - newMm) > SameMm)
                {
                    now[n] = new Notch(edge.Name, edge.PointAtSewnMm(newMm), newMm, was.Count);
                    any = true;
                }
            }

            atMm += mark < lengthsMm.Length ? lengthsMm[mark] : 0;
        }

        return any ? new Panel(panel.Name, panel.EdgesRaw, panel.Features with { Notches = now }) : panel;
    }

    private void RefuseFixedEnd(Panel panel, WalkSide side, EdgeEnd end, double addedMm)
    {
        double markMm = end == EdgeEnd.Start ? side.FromMm : side.FromMm + side.LengthMm;
        if (Math.Abs(addedMm) > SameMm && !side.Reaches(end) && !WalkSide.NotchesOf(panel, side.Edge.Name).Any(n => Math.Abs(n - markMm) <= GeometryTolerance.JoinMm))
        {
            throw new ConstructionException(DiagnosticCode.SeamEndFixed, _seam, side.Edge.Name, panel.Name, PanelErrors.Millimetres(addedMm))
            {
                Step = Step,
                Landmark = side.Edge.Name.Text,
                Measured = PanelErrors.Millimetres(addedMm),
                Allowed = UnitsNet.Length.Zero,
            };
        }
    }
}
