using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>Taking the numbers of one body.</content>
internal sealed partial class TruingRoom
{
    /// <summary>Reads panels; false where they are of another make than the layout.</summary>
    internal bool TryBind(Movable[] movables, Condition[] conditions, Panel[] panels)
    {
        if (!_layout.Fits(panels))
        {
            return false;
        }

        for (int p = 0; p < panels.Length; p++)
        {
            _sense[p] = _layout.IsLaidOut(p) ? panels[p].RunsCounterClockwise ? 1 : -1 : 0;
        }

        for (int i = 0; i < _layout.Pieces.Length; i++)
        {
            Read(i, _layout.Pieces[i], panels);
        }

        Array.Copy(_base, _now, _base.Length);
        for (int i = 0; i < _layout.Notches.Length; i++)
        {
            TruingNotch notch = _layout.Notches[i];
            _notchMm[i] = WalkSide.NotchesOf(panels[notch.Panel], panels[notch.Panel].EdgesRaw[notch.Edge].Name)[notch.Number];
        }

        for (int j = 0; j < _layout.Unknowns.Length; j++)
        {
            TruingUnknown unknown = _layout.Unknowns[j];
            Movable movable = movables[unknown.Movable];
            _mobility[j] = movable.Mobility;
            _search.Start[j] = 0;
            _search.Most[j] = movable.WithinMm / movable.Mobility;
            _search.Least[j] = -_search.Most[j];
            _paths[j] = movable.Path;
        }

        for (int f = 0; f < _layout.Follows.Length; f++)
        {
            Aim(f, _layout.Follows[f], movables);
        }

        BindSweeps(panels);
        KeepNotchesOnTheirEdges(panels);
        for (int e = 0; e < _layout.Equations.Length; e++)
        {
            TruingEquation equation = _layout.Equations[e];
            _search.Asked[e] = true;
            if (equation.Condition == conditions.Length)
            {
                // A joint keeps the turn that it has, which is none but for rounding.
                _wanted[e] = Sum(equation.Terms);
                continue;
            }

            Condition condition = conditions[equation.Condition];
            _wanted[e] = equation.IsAngle ? condition.AngleRad : condition.Length?.ValueMm ?? 0;
            _ease[e] = condition.Seam?.EaseMm ?? 0;
            if (condition.Seam is { EaseSpan: not null, EaseMm: not 0 } seam)
            {
                _wanted[e] = seam.Walk(panels).Stretches[equation.Stretch].EaseAskedMm;
            }
        }

        return true;
    }

    private void Read(int index, in TruingPiece piece, Panel[] panels)
    {
        PanelEdge edge = panels[piece.Panel].EdgesRaw[piece.Edge];
        int at = 8 * index;
        if (piece.Dart != DartLine.None)
        {
            DartShape dart = edge.Darts[piece.Stretch].Shape;
            Point2D from = piece.Dart == DartLine.Intake ? dart.StartLeg : dart.Apex;
            Point2D to = piece.Dart == DartLine.StartLeg ? dart.StartLeg : dart.EndLeg;
            (_base[at], _base[at + 1], _base[at + 6], _base[at + 7]) = (from.XMm, from.YMm, to.XMm, to.YMm);
            if (_isSwept.Length > 0 && _isSwept[piece.End])
            {
                // The legs of a swept edge are where the sweep puts them; apexes are the hand's.
                (_base[at + 6], _base[at + 7]) = (0, 0);
                (_base[at], _base[at + 1]) = piece.Dart == DartLine.Intake ? (0, 0) : (from.XMm, from.YMm);
            }

            (_startTo[index], _endFrom[index]) = (3, 0);
            _lengths[index] = from.DistanceMm(to);
            return;
        }

        if (_isSwept.Length > 0 && piece.StartControl >= 0 && _isSwept[piece.StartControl])
        {
            // Only its corners are places of the hand; what the sweep draws is measured from nowhere.
            Array.Clear(_base, at, 8);
            (Point2D first, Point2D last) = (edge.Stretches[piece.Stretch].Start, edge.Stretches[piece.Stretch].End);
            (_base[at], _base[at + 1]) = _isSwept[piece.Start] ? (0, 0) : (first.XMm, first.YMm);
            (_base[at + 6], _base[at + 7]) = _isSwept[piece.End] ? (0, 0) : (last.XMm, last.YMm);
            (_startTo[index], _endFrom[index]) = (1, 2);
            return;
        }

        PathSegment segment = edge.Stretches[piece.Stretch].SegmentsRaw[piece.Index];
        Point2D start = segment.Start;
        Point2D end = segment.End;
        (_base[at], _base[at + 1], _base[at + 6], _base[at + 7]) = (start.XMm, start.YMm, end.XMm, end.YMm);
        _lengths[index] = segment.LengthMm();
        (_startTo[index], _endFrom[index]) = (3, 0);
        if (piece.Kind == PathSegmentKind.Cubic)
        {
            CubicBezier cubic = segment.CubicRaw;
            (_base[at + 2], _base[at + 3], _base[at + 4], _base[at + 5]) = (cubic.X1, cubic.Y1, cubic.X2, cubic.Y2);
            _startTo[index] = cubic.Start != cubic.StartControl ? 1 : cubic.Start != cubic.EndControl ? 2 : 3;
            _endFrom[index] = cubic.End != cubic.EndControl ? 2 : cubic.End != cubic.StartControl ? 1 : 0;
        }
        else if (piece.Kind == PathSegmentKind.Arc)
        {
            // An arc does not move, so two points that give its directions serve.
            (double x0, double y0) = (segment.StartDirection.X, segment.StartDirection.Y);
            (double x1, double y1) = (segment.EndDirection.X, segment.EndDirection.Y);
            (_base[at + 2], _base[at + 3], _base[at + 4], _base[at + 5]) = (start.XMm + x0, start.YMm + y0, end.XMm - x1, end.YMm - y1);
            (_startTo[index], _endFrom[index]) = (1, 2);
        }
    }

    private void Aim(int f, in TruingFollow follow, Movable[] movables)
    {
        Movable movable = movables[_layout.Unknowns[follow.Unknown].Movable];
        double mobility = movable.Mobility;
        (double x, double y) = follow.Way switch
        {
            FollowWay.Across => (1.0, 0.0),
            FollowWay.Up => (0.0, 1.0),
            FollowWay.AlongLine => (movable.Way!.Value.X, movable.Way!.Value.Y),
            FollowWay.AlongPath or FollowWay.Swept => (0.0, 0.0),
            FollowWay.AlongStartHandle => Unit(follow.Piece, 0, _startTo[follow.Piece]),
            FollowWay.AlongEndHandle => Unit(follow.Piece, _endFrom[follow.Piece], 3),
            _ => Unit(follow.Piece, 0, 3),
        };
        _followX[f] = mobility * x;
        _followY[f] = mobility * y;
        if (follow.Way == FollowWay.AlongPath)
        {
            SetOnPath(follow);
        }
        else if (follow.Way is FollowWay.AlongStartHandle or FollowWay.AlongEndHandle)
        {
            LimitHandle(follow);
        }
    }

    // A handle that turned round would make a cusp: it keeps a tenth of its length.
    private void LimitHandle(in TruingFollow follow)
    {
        int at = 8 * follow.Piece;
        bool start = follow.Way == FollowWay.AlongStartHandle;
        int from = start ? 0 : _endFrom[follow.Piece];
        int to = start ? _startTo[follow.Piece] : 3;
        double handle = 0.9 * Raw.Hypot(_base[at + (2 * to)] - _base[at + (2 * from)], _base[at + (2 * to) + 1] - _base[at + (2 * from) + 1]) / _mobility[follow.Unknown];
        int j = follow.Unknown;
        if (start)
        {
            _search.Least[j] = Math.Max(_search.Least[j], -handle);
        }
        else
        {
            _search.Most[j] = Math.Min(_search.Most[j], handle);
        }
    }

    private void SetOnPath(in TruingFollow follow)
    {
        int j = follow.Unknown;
        CurvePath path = _paths[j]!;
        foreach (TruingPiece piece in _layout.Pieces)
        {
            int index = Array.IndexOf(_layout.Pieces, piece);
            if (piece.Start == follow.Spot || piece.End == follow.Spot)
            {
                int at = (8 * index) + (piece.Start == follow.Spot ? 0 : 6);
                PathLocation nearest = path.ClosestTo(new Point2D(_base[at], _base[at + 1]));
                _pathFromMm[j] = path.LengthToMm(nearest);
                _pathFrom[j] = path.PointAtMm(_pathFromMm[j]);
                _search.Least[j] = Math.Max(_search.Least[j], -_pathFromMm[j] / _mobility[j]);
                _search.Most[j] = Math.Min(_search.Most[j], (path.LengthMm - _pathFromMm[j]) / _mobility[j]);
                return;
            }
        }
    }

    private void KeepNotchesOnTheirEdges(Panel[] panels)
    {
        for (int i = 0; i < _layout.Notches.Length; i++)
        {
            TruingNotch notch = _layout.Notches[i];
            if (notch.Unknown >= 0)
            {
                double sewn = panels[notch.Panel].EdgesRaw[notch.Edge].SewnLengthMm();
                double mobility = _mobility[notch.Unknown];
                _search.Least[notch.Unknown] = Math.Max(_search.Least[notch.Unknown], -_notchMm[i] / mobility);
                _search.Most[notch.Unknown] = Math.Min(_search.Most[notch.Unknown], (sewn - _notchMm[i]) / mobility);
            }
        }
    }

    private (double X, double Y) Unit(int piece, int from, int to)
    {
        int at = 8 * piece;
        double x = _base[at + (2 * to)] - _base[at + (2 * from)];
        double y = _base[at + (2 * to) + 1] - _base[at + (2 * from) + 1];
        double length = Raw.Hypot(x, y);
        return length > 0 ? (x / length, y / length) : (0, 0);
    }
}
