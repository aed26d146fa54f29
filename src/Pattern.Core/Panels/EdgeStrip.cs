using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A panel cut along a line beside one of its edges, with the darts of that edge closed: the strip above the line, and what is left of the panel below it.</summary>
/// <remarks>The line begins and ends as deep along the edges on either side and meets them at the angles at which the edge does. Where both run straight and square it is the exact
/// parallel of the closed edge; where one bends, it is one sweep between the two places. A dart that reaches beyond the line is carried on below it: same apex, same angle, shorter legs.
/// One that ends within the strip is not there any more below it.</remarks>
internal sealed class EdgeStrip
{
    // Computed lines that are meant to be straight or square differ by rounding.
    private const double StraightRad = 1e-6;

    // One sweep does not turn by more than this without bending sharply.
    private const double MostTurnRad = 2 * Math.PI / 3;

    private readonly Panel _panel;
    private readonly PanelEdge _edge;
    private readonly PanelEdge _before;
    private readonly PanelEdge _after;
    private readonly double _depthMm;
    private readonly string _step;
    private readonly bool[] _endsWithin;
    private readonly double[] _crossingsMm;
    private readonly Transform2D[] _closings;
    private readonly CurvePath _line;

    /// <summary>Finds the line.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="name">The edge.</param>
    /// <param name="depthMm">How deep the strip is along the edges on either side.</param>
    /// <param name="closesAll">Whether a dart that ends within the strip is closed all the same.</param>
    /// <param name="step">What is done, for messages.</param>
    internal EdgeStrip(Panel panel, EdgeName name, double depthMm, bool closesAll, string step)
    {
        _panel = panel;
        _depthMm = depthMm;
        _step = step;
        int index = panel.IndexOf(name);
        PanelEdge[] edges = panel.EdgesRaw;
        _edge = edges[index];
        _before = edges[(index + edges.Length - 1) % edges.Length];
        _after = edges[(index + 1) % edges.Length];
        double room = edges.Length < 3 ? 0 : Math.Min(_before.StretchesRaw[_before.StretchesRaw.Length - 1].LengthMm, _after.StretchesRaw[0].LengthMm);
        if (!(depthMm < room * (1 - 1e-9)))
        {
            throw NoRoom(room);
        }

        int darts = _edge.DartsRaw.Length;
        _endsWithin = new bool[darts];
        _crossingsMm = new double[darts];
        _closings = new Transform2D[darts + 1];
        _line = Draw();
        for (int round = 0; !closesAll && FindDartsThatEnd(); round++)
        {
            _line = Draw();
        }
    }

    /// <summary>The line, with the darts closed, from the edge before to the edge after.</summary>
    internal CurvePath Line => _line;

    internal double LineMm => _line.LengthMm;

    /// <summary>How many darts go on below the line.</summary>
    internal int DartsBelow => _endsWithin.Count(ends => !ends);

    /// <summary>How long the shortest dart below the line is; infinite where there is none.</summary>
    internal double ShortestDartMm => Below().FindEdge(_edge.Name).Darts.Select(dart => dart.LengthMm).DefaultIfEmpty(double.PositiveInfinity).Min();

    /// <summary>What lies above the line, its darts closed.</summary>
    internal Panel Strip(PanelName name, EdgeName seam)
    {
        CurvePath last = _before.StretchesRaw[_before.StretchesRaw.Length - 1];
        CurvePath first = _after.StretchesRaw[0];
        PanelEdge[] edges =
        [
            new PanelEdge(_edge.Name, _edge.Role, _edge.Closed()),
            new PanelEdge(_after.Name, _after.Role, first.SubPathMm(0, _depthMm).Transformed(_closings[_closings.Length - 1])),
            new PanelEdge(seam, EdgeRole.Seam, _line.Reversed()),
            new PanelEdge(_before.Name, _before.Role, last.SubPathMm(last.LengthMm - _depthMm, last.LengthMm)),
        ];
        double cut = _before.SewnLengthMm() - _depthMm;
        Notch[] notches =
        [
            .. _panel.Notches
                .Where(notch => notch.Edge == _edge.Name || (notch.Edge == _after.Name && notch.FromStartMm < _depthMm) || (notch.Edge == _before.Name && notch.FromStartMm > cut))
                .Select(notch => notch.Edge == _before.Name ? new Notch(notch.Edge, notch.Position, notch.FromStartMm - cut, notch.Count) : notch)
                .Select(notch => notch.On(edges.First(edge => edge.Name == notch.Edge))),
        ];
        CurvePath outline = CurvePath.FromSegments(edges.SelectMany(edge => edge.StretchesRaw[0].SegmentsRaw)).Closed();
        var panel = new Panel(name, edges, new PanelFeatures(Grain.Within(outline, _panel.Grainline.Direction), notches, [], []));
        panel.RefuseCrossedOutline(_step);
        return panel;
    }

    /// <summary>What lies below the line: the panel with its edge there.</summary>
    internal Panel Below()
    {
        var stretches = new List<CurvePath>();
        var darts = new List<DartShape>();
        double from = 0;
        for (int i = 0; i < _endsWithin.Length; i++)
        {
            if (_endsWithin[i])
            {
                continue;
            }

            stretches.Add(_line.SubPathMm(from, _crossingsMm[i]).Transformed(_closings[i].Inverted()));
            darts.Add(_edge.DartsRaw[i].Shape);
            from = _crossingsMm[i];
        }

        stretches.Add(_line.SubPathMm(from, LineMm).Transformed(_closings[_closings.Length - 1].Inverted()));
        for (int i = 0; i < darts.Count; i++)
        {
            double cut = darts[i].StartLeg.DistanceMm(stretches[i].End);
            darts[i] = darts[i] with
            {
                StartLeg = stretches[i].End,
                EndLeg = stretches[i + 1].Start,
                TuckMm = darts[i].TuckMm == 0 ? 0 : darts[i].TuckMm > cut ? darts[i].TuckMm - cut : throw NoRoom(darts[i].TuckMm),
            };
        }

        return Rebuilt(new PanelEdge(_edge.Name, _edge.Role, [.. stretches], [.. darts]));
    }

    private Panel Rebuilt(PanelEdge moved)
    {
        PanelEdge Shorter(PanelEdge edge) => edge == _edge ? moved
            : edge == _before ? new PanelEdge(edge.Name, edge.Role, [.. edge.StretchesRaw.Take(edge.StretchesRaw.Length - 1), Last(edge)], [.. edge.DartsRaw.Select(dart => dart.Shape)])
            : edge == _after ? new PanelEdge(edge.Name, edge.Role, [First(edge), .. edge.StretchesRaw.Skip(1)], [.. edge.DartsRaw.Select(dart => dart.Shape)])
            : edge;
        CurvePath Last(PanelEdge edge) => edge.StretchesRaw[edge.StretchesRaw.Length - 1].SubPathMm(0, edge.StretchesRaw[edge.StretchesRaw.Length - 1].LengthMm - _depthMm);
        CurvePath First(PanelEdge edge) => edge.StretchesRaw[0].SubPathMm(_depthMm, edge.StretchesRaw[0].LengthMm);
        PanelEdge[] edges = [.. _panel.EdgesRaw.Select(Shorter)];
        double part = moved.SewnLengthMm() / _edge.SewnLengthMm();
        double beforeMm = _before.SewnLengthMm() - _depthMm;
        Notch[] notches =
        [
            .. _panel.Notches
                .Where(notch => !(notch.Edge == _before.Name && notch.FromStartMm > beforeMm) && !(notch.Edge == _after.Name && notch.FromStartMm < _depthMm))
                .Select(notch => new Notch(
                    notch.Edge,
                    notch.Position,
                    notch.Edge == _edge.Name ? notch.FromStartMm * part : notch.Edge == _after.Name ? notch.FromStartMm - _depthMm : notch.FromStartMm,
                    notch.Count)),
        ];
        var cut = new Panel(_panel.Name, edges, new PanelFeatures(_panel.Grainline, [], [], []));
        cut.RefuseCrossedOutline(_step);
        CurvePath outline = cut.SeamOutline();
        InsideDart[] inside = [.. _panel.InsideDarts.Where(dart => dart.Corners().Any(corner => outline.ContainmentOf(corner) == Containment.Inside))];
        if (inside.Any(dart => dart.Corners().Any(corner => outline.ContainmentOf(corner) != Containment.Inside)))
        {
            throw NoRoom(0);
        }

        return cut.WithEdges(
            edges,
            new PanelFeatures(
                Grain.LiesWithin(outline, _panel.Grainline) ? _panel.Grainline : Grain.Within(outline, _panel.Grainline.Direction),
                notches,
                [.. _panel.Landmarks.Select(landmark => landmark.At(Moved(landmark.Position, moved))).Where(landmark => outline.ContainmentOf(landmark.Position) != Containment.Outside)],
                inside),
            _step);
    }

    // A landmark at an end of the edge, or at a leg of a dart that goes on, names that place wherever it is.
    private Point2D Moved(Point2D position, PanelEdge moved)
    {
        if (position.DistanceMm(_edge.Start) < GeometryTolerance.JoinMm)
        {
            return moved.Start;
        }

        if (position.DistanceMm(_edge.End) < GeometryTolerance.JoinMm)
        {
            return moved.End;
        }

        for (int i = 0, below = 0; i < _endsWithin.Length; i++)
        {
            if (_endsWithin[i])
            {
                continue;
            }

            if (position.DistanceMm(_edge.DartsRaw[i].StartLeg) < GeometryTolerance.JoinMm)
            {
                return moved.DartsRaw[below].StartLeg;
            }

            if (position.DistanceMm(_edge.DartsRaw[i].EndLeg) < GeometryTolerance.JoinMm)
            {
                return moved.DartsRaw[below].EndLeg;
            }

            below++;
        }

        return position;
    }

    private CurvePath Draw()
    {
        bool allClosed = !_endsWithin.Contains(true);
        CurvePath closed = _edge.StretchesRaw[0];
        _closings[0] = Transform2D.Identity;
        for (int i = 0; i < _endsWithin.Length; i++)
        {
            _closings[i + 1] = _endsWithin[i] ? _closings[i] : _edge.DartsRaw[i].Closing().Then(_closings[i]);
            closed = !allClosed ? closed : closed.Then(_edge.StretchesRaw[i + 1].Transformed(_closings[i + 1]));
        }

        Transform2D beyond = _closings[_closings.Length - 1];
        CurvePath last = _before.StretchesRaw[_before.StretchesRaw.Length - 1];
        CurvePath before = last.SubPathMm(last.LengthMm - _depthMm, last.LengthMm);
        CurvePath after = _after.StretchesRaw[0].SubPathMm(0, _depthMm).Transformed(beyond);
        double startRad = before.EndDirection.TurnRadTo(_edge.StretchesRaw[0].StartDirection);
        double endRad = after.StartDirection.TurnRadTo(_edge.StretchesRaw[_edge.StretchesRaw.Length - 1].EndDirection.Transformed(beyond));
        if (allClosed && IsStraightAndSquare(before, startRad) && IsStraightAndSquare(after, endRad))
        {
            double hand = _panel.RunsCounterClockwise ? 1 : -1;
            PathOffset beside = closed.Offset(Length.FromMillimeters(hand * _depthMm), OffsetJoin.Mitre);
            return beside.Paths.Count == 1 ? Between(beside.Paths[0], before.Start, after.End) : throw NoRoom(0);
        }

        Direction leaving = before.StartDirection.TurnedRad(startRad);
        Direction arriving = after.EndDirection.TurnedRad(endRad);
        return Math.Abs(leaving.TurnRadTo(arriving)) <= MostTurnRad
            ? CurvePath.FromCubic(CubicBezier.InOneSweep(before.Start, leaving, after.End, arriving))
            : throw NoRoom(0);
    }

    // The offset is fitted to within a thousandth of a millimetre; its ends are known.
    private static CurvePath Between(CurvePath path, in Point2D start, in Point2D end) => path.WithStartMovedTo(start).Reversed().WithStartMovedTo(end).Reversed();

    private static bool IsStraightAndSquare(CurvePath beside, double cornerRad) => Math.Abs(Math.Abs(cornerRad) - (Math.PI / 2)) < StraightRad
        && beside.SegmentsRaw.All(segment => Math.Abs(segment.TurningRad) < StraightRad && Math.Abs(segment.StartDirection.TurnRadTo(beside.EndDirection)) < StraightRad);

    // Where each closed dart is crossed; whether one was found that ends before the line, so that it has to be drawn again without it.
    private bool FindDartsThatEnd()
    {
        double least = 0;
        for (int i = 0; i < _endsWithin.Length; i++)
        {
            if (_endsWithin[i])
            {
                continue;
            }

            Dart dart = _edge.DartsRaw[i];
            PathIntersections hits = _line.IntersectionsWith(CurvePath.FromLine(new LineSegment(_closings[i].Apply(dart.StartLeg), _closings[i].Apply(dart.Apex))));
            if (hits.Points.Count == 0)
            {
                _endsWithin[i] = true;
                return true;
            }

            _crossingsMm[i] = _line.LengthToMm(_line.ClosestTo(hits.Points[0].Point));
            least = _crossingsMm[i] > least ? _crossingsMm[i] : throw NoRoom(0);
        }

        return false;
    }

    private ConstructionException NoRoom(double roomMm) => new(DiagnosticCode.StripWithoutRoom, _panel.Name, _edge.Name, Length.FromMillimeters(_depthMm), Length.FromMillimeters(roomMm))
    {
        Step = _step,
        Landmark = _edge.Name.Text,
        Measured = Length.FromMillimeters(_depthMm),
        Allowed = Length.FromMillimeters(roomMm),
    };
}
