using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Draws an edge again with its darts closed, gives it the length asked for by moving one end, and opens it at its darts.</summary>
/// <remarks>Closed, everything beyond a dart is turned about its apex, so the apexes and the closed legs are fixed lines on the sheet: wherever the new line
/// crosses such a leg, the dart now begins. Legs are cut back or go on, the wedge stays; so an intake changes with the length of its legs.
/// <see cref="SweptEdge"/> solves another problem, of a draft and not of a panel: there intakes and dart lengths are given and the apexes follow.</remarks>
internal sealed class EdgeRedraw
{
    private const string Step = "truing an edge";
    private const double LengthMm = 1e-9;

    // What a neighbour must keep of its near stretch.
    private const double MostTaken = 0.98;

    private readonly Panel _panel;
    private readonly EdgeTruing _asked;
    private readonly int _index;
    private readonly PanelEdge _edge;

    // For each stretch, the motion from where it lies open to where it lies closed.
    private readonly Transform2D[] _closing;
    private readonly PathSegment[] _segments;
    private readonly Direction _leaving;
    private readonly Direction _arriving;

    // To which side of the neighbour's heading the edge leaves and arrives, when that is to be square. Said once, so that the edge does not
    // turn over while its end is moved.
    private readonly bool _leavesLeft;
    private readonly bool _arrivesLeft;

    internal EdgeRedraw(Panel panel, EdgeName edge, EdgeTruing asked)
    {
        _panel = panel;
        _asked = asked;
        _index = panel.IndexOf(edge);
        _edge = panel.EdgesRaw[_index];
        _closing = new Transform2D[_edge.Stretches.Count];
        var segments = new List<PathSegment>(_closing.Length);
        for (int i = 0; i < _closing.Length; i++)
        {
            _closing[i] = i == 0 ? Transform2D.Identity : _edge.Darts[i - 1].Closing().Then(_closing[i - 1]);
            foreach (PathSegment segment in _edge.Stretches[i].SegmentsRaw)
            {
                segments.Add(segment.TransformedRaw(_closing[i]));
            }
        }

        _segments = segments.ToArray();
        _leaving = _segments[0].StartDirection;
        _arriving = _segments[_segments.Length - 1].EndDirection;
        _leavesLeft = LiesLeft(Last(panel.EdgesRaw[Before]).EndDirection, _leaving);
        _arrivesLeft = LiesLeft(panel.EdgesRaw[After].Stretches[0].StartDirection.Transformed(_closing[_closing.Length - 1]), _arriving);
    }

    private bool MovesStart => _asked.MovingEnd == EdgeEnd.Start;

    private int Neighbour => MovesStart ? Before : After;

    private int Before => _index == 0 ? _panel.EdgesRaw.Length - 1 : _index - 1;

    private int After => _index == _panel.EdgesRaw.Length - 1 ? 0 : _index + 1;

    internal TruingResult True()
    {
        Drawing drawing = Draw(0);
        double? target = _asked.ClosedLengthMm;
        bool isSmooth = PathEnds.IsSmooth(_segments)
            && Math.Abs(_leaving.TurnRadTo(drawing.Leaving)) <= PathEnds.SmoothRad
            && Math.Abs(_arriving.TurnRadTo(drawing.Arriving)) <= PathEnds.SmoothRad;
        if (isSmooth && (target is null || Math.Abs(_edge.SewnLengthMm() - target.Value) <= PathLengthMm))
        {
            return new TruingResult([_panel], [], []);
        }

        if (target is { } length && Math.Abs(drawing.LengthMm - length) > LengthMm)
        {
            drawing = Draw(FindMove(length, drawing.LengthMm));
            if (!(Math.Abs(drawing.LengthMm - length) <= PathLengthMm))
            {
                // The length jumped past the target, as where the neighbour has a corner.
                throw Impossible(length, drawing.LengthMm);
            }
        }

        var redraw = new PanelRedraw(_panel, Step);
        PanelEdge edge = Open(drawing);
        if (drawing.Near is { } near)
        {
            PanelEdge old = _panel.EdgesRaw[Neighbour];
            PanelEdge moved = old.WithStretch(MovesStart ? old.Stretches.Count - 1 : 0, near);
            double added = moved.SewnLengthMm() - old.SewnLengthMm();
            redraw.Replace(_index, edge, MovesStart ? edge.SewnLengthMm() - _edge.SewnLengthMm() : 0);
            redraw.Replace(Neighbour, moved, MovesStart ? 0 : added);
        }
        else
        {
            redraw.ReplaceAllAlong(_index, edge);
        }

        Panel panel = redraw.Make();
        return new TruingResult([panel], Changes(panel, target), Corners(panel));
    }

    // Lengths agree with their target to what summing them rounds.
    private const double PathLengthMm = 1e-7;

    /// <summary>The edge, darts closed, when the moving end has moved so far: along the neighbour, or out along the edge.</summary>
    private Drawing Draw(double movedMm)
    {
        Point2D start = _edge.Start;
        Point2D end = _edge.End;
        CurvePath before = Last(_panel.EdgesRaw[Before]);
        CurvePath after = _panel.EdgesRaw[After].Stretches[0];
        CurvePath? near = null;
        if (movedMm != 0)
        {
            near = MovesStart ? before.Reversed() : after;
            if (_asked.Move == EndMove.AlongNeighbour)
            {
                near = PathEnds.Shortened(near, movedMm);
            }
            else
            {
                Direction outward = MovesStart ? _edge.Stretches[0].StartDirection.Reversed : Last(_edge).EndDirection;
                near = PathEnds.Following(near, near.Start + outward.TimesMm(movedMm));
            }

            if (MovesStart)
            {
                near = near.Reversed();
                before = near;
                start = near.End;
            }
            else
            {
                after = near;
                end = near.Start;
            }
        }

        Transform2D closing = _closing[_closing.Length - 1];
        Direction leaving = _asked.Start == EndDirection.Kept ? _leaving : Square(before.EndDirection, _leavesLeft);
        Direction arriving = _asked.End == EndDirection.Kept ? _arriving : Square(after.StartDirection.Transformed(closing), _arrivesLeft);
        Point2D closedEnd = closing.Apply(end);
        PathSegment[] segments;
        if (_asked.Line == TruedLine.OneSweep)
        {
            segments = [PathSegment.FromCubic(CubicBezier.Between(start, leaving, closedEnd, arriving))];
        }
        else
        {
            segments = (PathSegment[])_segments.Clone();
            if (near is not null && MovesStart)
            {
                segments[0] = PathEnds.Following(CurvePath.Trusted(segments[0]), start).SegmentsRaw[0];
            }
            else if (near is not null)
            {
                int last = segments.Length - 1;
                segments[last] = PathEnds.Following(CurvePath.Trusted(segments[last].Reversed()), closedEnd).SegmentsRaw[0].Reversed();
            }

            segments = PathEnds.Smoothed(segments, leaving, arriving);
        }

        double length = 0;
        foreach (PathSegment segment in segments)
        {
            length += segment.LengthMm();
        }

        return new Drawing(segments, near, leaving, arriving, length);
    }

    private double FindMove(double targetMm, double unmovedMm)
    {
        double most = _asked.Move == EndMove.AlongNeighbour
            ? MostTaken * (MovesStart ? Last(_panel.EdgesRaw[Before]) : _panel.EdgesRaw[After].Stretches[0]).LengthMm
            : Math.Max(targetMm, unmovedMm);
        double least = _asked.Move == EndMove.AlongNeighbour ? -Math.Max(targetMm, unmovedMm) : -MostTaken * unmovedMm;
        double closest = unmovedMm;
        var off = new LengthOff(this, targetMm);

        // The nearest place where the length passes the target: steps that double, to both sides in turn.
        double step = Math.Max(1, Math.Abs(unmovedMm - targetMm));
        (double At, double Off) up = (0, unmovedMm - targetMm);
        (double At, double Off) down = up;
        while (up.At < most || down.At > least)
        {
            if (TryStep(ref up, Math.Min(most, up.At + step), off, targetMm, ref closest, out double root)
                || TryStep(ref down, Math.Max(least, down.At - step), off, targetMm, ref closest, out root))
            {
                return root;
            }

            step *= 2;
        }

        throw Impossible(targetMm, closest);
    }

    private ConstructionException Impossible(double targetMm, double closestMm)
        => new(DiagnosticCode.TruingLengthImpossible, _edge.Name, _panel.Name, PanelErrors.Millimetres(targetMm), PanelErrors.Millimetres(closestMm))
        {
            Step = Step,
            Landmark = _edge.Name.Text,
            Measured = PanelErrors.Millimetres(closestMm),
            Allowed = PanelErrors.Millimetres(targetMm),
        };

    private static bool TryStep(ref (double At, double Off) from, double to, in LengthOff off, double targetMm, ref double closest, out double root)
    {
        root = 0;
        if (to == from.At)
        {
            return false;
        }

        double value = off.At(to);
        if (Math.Abs(value) < Math.Abs(closest - targetMm))
        {
            closest = targetMm + value;
        }

        if (value < 0 != from.Off < 0)
        {
            root = RootFinder.Find(off, from.At, from.Off, to, value, LengthMm);
            return true;
        }

        from = (to, value);
        return false;
    }

    /// <summary>The closed line opened again at its darts.</summary>
    private PanelEdge Open(in Drawing drawing)
    {
        int count = _edge.Darts.Count;
        var stretches = new CurvePath[count + 1];
        if (_asked.Line == TruedLine.Blended)
        {
            for (int i = 0, next = 0; i <= count; i++)
            {
                Transform2D opening = _closing[i].Inverted();
                var segments = new PathSegment[_edge.Stretches[i].SegmentsRaw.Length];
                for (int k = 0; k < segments.Length; k++)
                {
                    segments[k] = drawing.Segments[next++].TransformedRaw(opening);
                }

                stretches[i] = CurvePath.Trusted(segments, isClosed: false);
            }

            return new PanelEdge(_edge.Name, _edge.Role, stretches, _edge.Shapes());
        }

        var darts = new DartShape[count];
        CubicBezier line = drawing.Segments[0].CubicRaw;
        double from = 0;
        Transform2D open = Transform2D.Identity;
        for (int i = 0; i < count; i++)
        {
            Dart dart = _edge.Darts[i];
            Point2D apex = _closing[i].Apply(dart.Apex);
            double to = Crossing(line, apex, _closing[i].Apply(dart.StartLeg), from, i);
            stretches[i] = CurvePath.FromCubic(line.SubCurveRaw(from, to).Transformed(open));
            Point2D onLine = line.PointAtRaw(to);
            Transform2D beyond = _closing[i + 1].Inverted();
            darts[i] = dart.Shape with { StartLeg = open.Apply(onLine), EndLeg = beyond.Apply(onLine) };
            from = to;
            open = beyond;
        }

        stretches[count] = CurvePath.FromCubic(line.SubCurveRaw(from, 1).Transformed(open));
        return new PanelEdge(_edge.Name, _edge.Role, stretches, darts);
    }

    private double Crossing(in CubicBezier line, in Point2D apex, in Point2D leg, double after, int dart)
    {
        Direction outward = apex.DirectionTo(leg);
        double legMm = apex.DistanceMm(leg);
        CurveIntersections hits = line.IntersectionsWith(Line.From(apex, outward));
        double best = double.NaN;
        double bestOff = double.PositiveInfinity;
        for (int i = 0; i < hits.Count; i++)
        {
            double along = outward.Dot(line.PointAtRaw(hits.FirstRaw(i)) - apex);
            if (along > 0 && hits.FirstRaw(i) > after && hits.FirstRaw(i) < 1 && Math.Abs(along - legMm) < bestOff)
            {
                best = hits.FirstRaw(i);
                bestOff = Math.Abs(along - legMm);
            }
        }

        return double.IsNaN(best)
            ? throw new ConstructionException(DiagnosticCode.DartOffTruedLine, _edge.Name, _panel.Name, new DartName(_edge.Name, dart + 1)) { Step = Step, Landmark = _edge.Name.Text }
            : best;
    }

    private Finding[] Changes(Panel panel, double? target)
    {
        var list = new ChangeList();
        PanelEdge now = panel.EdgesRaw[_index];
        list.Length("sewn length", Place(_edge), _edge.SewnLengthMm(), now.SewnLengthMm(), target);
        for (int i = 0; i < now.Darts.Count; i++)
        {
            list.Length($"dart {i + 1} intake", Place(_edge), _edge.Darts[i].IntakeMm, now.Darts[i].IntakeMm);
            list.Length($"dart {i + 1} legs", Place(_edge), _edge.Darts[i].LegLengthMm(Toward.Start), now.Darts[i].LegLengthMm(Toward.Start));
        }

        PanelEdge neighbour = panel.EdgesRaw[Neighbour];
        list.Length("sewn length", Place(neighbour), _panel.EdgesRaw[Neighbour].SewnLengthMm(), neighbour.SewnLengthMm());
        return list.Lengths();
    }

    private Finding[] Corners(Panel panel)
    {
        var list = new ChangeList();
        PanelEdge now = panel.EdgesRaw[_index];
        list.Angle("corner at start", Place(_edge), _panel.CornerRad(Before), panel.CornerRad(Before));
        list.Angle("corner at end", Place(_edge), _panel.CornerRad(_index), panel.CornerRad(_index));
        for (int i = 0; i < now.Darts.Count; i++)
        {
            list.Angle($"dart {i + 1}, closed", Place(_edge), Math.PI - CheckList.CornerAcrossDartRad(_edge, i), Math.PI - CheckList.CornerAcrossDartRad(now, i));
        }

        return list.Angles();
    }

    private string Place(PanelEdge edge) => EdgeOf.Panel(_panel.Name, edge.Name).ToString();

    private static CurvePath Last(PanelEdge edge) => edge.Stretches[edge.Stretches.Count - 1];

    // Which of the two directions square to a line is nearer to where the edge goes now.
    private static bool LiesLeft(in Direction line, in Direction now)
    {
        Direction left = line.TurnedLeft;
        return (left.X * now.X) + (left.Y * now.Y) >= 0;
    }

    private static Direction Square(in Direction line, bool left) => left ? line.TurnedLeft : line.TurnedRight;

    private readonly record struct Drawing(PathSegment[] Segments, CurvePath? Near, Direction Leaving, Direction Arriving, double LengthMm);

    private readonly struct LengthOff(EdgeRedraw redraw, double targetMm) : IScalarFunction
    {
        public double At(double movedMm) => redraw.Draw(movedMm).LengthMm - targetMm;
    }
}
