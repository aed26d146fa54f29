using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>An edge of one body drawn in one sweep across its darts, and how its points go when its ends, its apexes or its end directions do.</summary>
/// <remarks>
/// <para>Closed, everything beyond a dart is turned about its apex by the angle of its wedge. The angles stay, so all closed places are sums of open ones, turned by angles that
/// do not change. The closed line is the fairest curve between its ends; each dart begins where the line of its first leg meets it.</para>
/// <para>Slopes are exact but for the lengths of the two handles, which are taken by differences: whatever these are, the line stays one curve and the legs of a dart equally
/// long, so that a condition that asks for it sees no slope at all.</para>
/// </remarks>
internal sealed class SweptLine
{
    /// <summary>What has moved by no more is where it was but for rounding.</summary>
    internal const double SameMm = 1e-9;

    private const double DifferenceMm = 1e-3;

    private readonly int _darts;
    private readonly double[] _legX;
    private readonly double[] _legY;
    private readonly double[] _legMm;

    // Turned back by all darts up to the stretch: cosine and sine.
    private readonly double[] _cos;
    private readonly double[] _sin;

    // What closing adds to the points of each stretch, after turning them.
    private readonly double[] _addX;
    private readonly double[] _addY;
    private readonly double[] _apexX;
    private readonly double[] _apexY;
    private readonly double[] _at;
    private readonly CubicBezier[] _open;
    private readonly double[] _goesX = new double[4];
    private readonly double[] _goesY = new double[4];
    private readonly double[] _shareX;
    private readonly double[] _shareY;
    private readonly double[] _atGoes;

    // How the handles grow: along and up the chord, and with either direction.
    private readonly double[] _startHandle = new double[4];
    private readonly double[] _endHandle = new double[4];
    private double _leavingRad;
    private double _arrivingRad;
    private double _leaving;
    private double _arriving;
    private CubicBezier _closed;
    private int _missed;

    internal SweptLine(int darts)
    {
        _darts = darts;
        _legX = new double[darts];
        _legY = new double[darts];
        _legMm = new double[darts];
        _cos = new double[darts + 1];
        _sin = new double[darts + 1];
        _addX = new double[darts + 1];
        _addY = new double[darts + 1];
        _apexX = new double[darts];
        _apexY = new double[darts];
        _at = new double[darts + 2];
        _open = new CubicBezier[darts + 1];
        _shareX = new double[darts + 1];
        _shareY = new double[darts + 1];
        _atGoes = new double[darts + 2];
    }

    /// <summary>The stretches as drawn last, open.</summary>
    internal CubicBezier[] Open => _open;

    /// <summary>Whether the hand drew just this, when it was bound.</summary>
    internal bool IsAsDrawn { get; private set; }

    /// <summary>Takes an edge; its darts keep their angles and the lines of their legs.</summary>
    internal void Bind(PanelEdge edge)
    {
        double turnedRad = 0;
        _cos[0] = 1;
        for (int i = 0; i < _darts; i++)
        {
            Dart dart = edge.Darts[i];
            Direction leg = dart.Apex.DirectionTo(dart.StartLeg);
            (_legX[i], _legY[i], _legMm[i]) = (leg.X, leg.Y, dart.Apex.DistanceMm(dart.StartLeg));
            turnedRad += dart.SignedAngleRad;
            (_cos[i + 1], _sin[i + 1]) = (Math.Cos(turnedRad), -Math.Sin(turnedRad));
        }

        _leavingRad = edge.Stretches[0].StartDirection.AngleRad;
        _arrivingRad = edge.Stretches[_darts].EndDirection.AngleRad - turnedRad;
    }

    /// <summary>Says whether what was drawn last, with nothing moved, is what the hand drew.</summary>
    internal void Compare(PanelEdge edge)
    {
        IsAsDrawn = true;
        for (int i = 0; i <= _darts; i++)
        {
            PathSegment[] segments = edge.Stretches[i].SegmentsRaw;
            IsAsDrawn &= segments.Length == 1 && segments[0].Kind == PathSegmentKind.Cubic && IsSame(segments[0].CubicRaw, _open[i]);
        }
    }

    /// <summary>The dart that the line missed.</summary>
    internal DartName Missed(EdgeName edge) => edge.Dart(_missed + 1);

    /// <summary>Draws the line; false where it cannot be drawn, or a dart's leg misses it.</summary>
    /// <param name="start">Where the edge begins.</param>
    /// <param name="end">Where it ends, open.</param>
    /// <param name="apexes">The apexes, open.</param>
    /// <param name="leavingRad">How far its beginning is turned.</param>
    /// <param name="arrivingRad">How far its end is turned.</param>
    internal bool TryDraw(in Point2D start, in Point2D end, Point2D[] apexes, double leavingRad, double arrivingRad)
    {
        for (int i = 0; i < _darts; i++)
        {
            (_apexX[i], _apexY[i]) = (apexes[i].XMm, apexes[i].YMm);
        }

        _missed = 0;
        AddClosing(_apexX, _apexY, _addX, _addY);
        (double x, double y) = Closed(_darts, end.XMm, end.YMm, _addX, _addY);
        _leaving = _leavingRad + leavingRad;
        _arriving = _arrivingRad + arrivingRad;
        double chord = Raw.Hypot(x - start.XMm, y - start.YMm);
        if (!(chord > GeometryTolerance.JoinMm) || !Guard.IsFinite(chord + _leaving + _arriving))
        {
            return false;
        }

        _closed = CubicBezier.InOneSweep(start, Direction.FromRadians(_leaving), new Point2D(x, y), Direction.FromRadians(_arriving));
        _at[_darts + 1] = 1;
        for (int i = 0; i < _darts; i++)
        {
            _at[i + 1] = Crossing(i, _at[i]);
            if (double.IsNaN(_at[i + 1]))
            {
                _missed = i;
                return false;
            }
        }

        for (int i = 0; i <= _darts; i++)
        {
            CubicBezier c = _closed.SubCurveRaw(_at[i], _at[i + 1]);
            (double x0, double y0) = Opened(i, c.X0, c.Y0);
            (double x1, double y1) = Opened(i, c.X1, c.Y1);
            (double x2, double y2) = Opened(i, c.X2, c.Y2);
            (double x3, double y3) = Opened(i, c.X3, c.Y3);
            _open[i] = new CubicBezier(x0, y0, x1, y1, x2, y2, x3, y3);
        }

        return true;
    }

    /// <summary>Learns how the handles of what was drawn last grow, before <see cref="WriteGoing"/> is asked.</summary>
    internal void LearnHandles()
    {
        for (int k = 0; k < 4; k++)
        {
            (double startMore, double endMore) = Handles(k, DifferenceMm);
            (double startLess, double endLess) = Handles(k, -DifferenceMm);
            _startHandle[k] = (startMore - startLess) / (2 * DifferenceMm);
            _endHandle[k] = (endMore - endLess) / (2 * DifferenceMm);
        }
    }

    /// <summary>Writes how the points of the stretches go, four of each, when ends, apexes and directions go as told.</summary>
    internal void WriteGoing(in Vector2D start, in Vector2D end, Vector2D[] apexes, double leavingRad, double arrivingRad, Vector2D[] points)
    {
        for (int i = 0; i < _darts; i++)
        {
            (_apexX[i], _apexY[i]) = (apexes[i].XMm, apexes[i].YMm);
        }

        AddClosing(_apexX, _apexY, _shareX, _shareY);
        (double endX, double endY) = Closed(_darts, end.XMm, end.YMm, _shareX, _shareY);
        (double alongX, double alongY) = (endX - start.XMm, endY - start.YMm);
        double startGrows = (_startHandle[0] * alongX) + (_startHandle[1] * alongY) + (_startHandle[2] * leavingRad) + (_startHandle[3] * arrivingRad);
        double endGrows = (_endHandle[0] * alongX) + (_endHandle[1] * alongY) + (_endHandle[2] * leavingRad) + (_endHandle[3] * arrivingRad);
        (_goesX[0], _goesY[0]) = (start.XMm, start.YMm);
        (_goesX[1], _goesY[1]) = (
            start.XMm + (startGrows * Math.Cos(_leaving)) - ((_closed.Y1 - _closed.Y0) * leavingRad), start.YMm + (startGrows * Math.Sin(_leaving)) + ((_closed.X1 - _closed.X0) * leavingRad));
        (_goesX[2], _goesY[2]) = (
            endX - (endGrows * Math.Cos(_arriving)) - ((_closed.Y2 - _closed.Y3) * arrivingRad), endY - (endGrows * Math.Sin(_arriving)) + ((_closed.X2 - _closed.X3) * arrivingRad));
        (_goesX[3], _goesY[3]) = (endX, endY);
        for (int i = 0; i < _darts; i++)
        {
            _atGoes[i + 1] = CrossingGoes(i, apexes[i]);
        }

        for (int i = 0; i <= _darts; i++)
        {
            double from = _at[i];
            double to = _at[i + 1];
            for (int k = 0; k < 4; k++)
            {
                // The control points of a part are blossoms: from counts 3 - k times and to k times.
                double u = k < 3 ? from : to;
                double v = k < 2 ? from : to;
                double w = k < 1 ? from : to;
                double goesX = Blossom(_goesX, u, v, w);
                double goesY = Blossom(_goesY, u, v, w);
                (double perX, double perY) = BlossomSlope(v, w);
                (goesX, goesY) = (goesX + (perX * _atGoes[k < 3 ? i : i + 1]), goesY + (perY * _atGoes[k < 3 ? i : i + 1]));
                (perX, perY) = BlossomSlope(u, w);
                (goesX, goesY) = (goesX + (perX * _atGoes[k < 2 ? i : i + 1]), goesY + (perY * _atGoes[k < 2 ? i : i + 1]));
                (perX, perY) = BlossomSlope(u, v);
                (goesX, goesY) = (goesX + (perX * _atGoes[k < 1 ? i : i + 1]), goesY + (perY * _atGoes[k < 1 ? i : i + 1]));
                goesX -= _shareX[i];
                goesY -= _shareY[i];
                points[(4 * i) + k] = new Vector2D((_cos[i] * goesX) + (_sin[i] * goesY), (_cos[i] * goesY) - (_sin[i] * goesX));
            }
        }
    }

    /// <summary>How far the line that was drawn last leaves the hand's, at most.</summary>
    internal double OffHandMm(PanelEdge edge)
    {
        const int Samples = 8;
        double most = 0;
        for (int i = 0; i <= _darts; i++)
        {
            for (int k = 0; k <= Samples; k++)
            {
                most = Math.Max(most, edge.Stretches[i].ClosestTo(_open[i].PointAtRaw((double)k / Samples)).DistanceMm);
            }
        }

        return most;
    }

    // Turning about an apex is turning about nothing and then adding what brings the apex back.
    private void AddClosing(double[] apexX, double[] apexY, double[] addX, double[] addY)
    {
        (addX[0], addY[0]) = (0, 0);
        for (int i = 0; i < _darts; i++)
        {
            double cos = _cos[i] - _cos[i + 1];
            double sin = _sin[i] - _sin[i + 1];
            addX[i + 1] = addX[i] + (cos * apexX[i]) - (sin * apexY[i]);
            addY[i + 1] = addY[i] + (sin * apexX[i]) + (cos * apexY[i]);
        }
    }

    private (double X, double Y) Closed(int stretch, double x, double y, double[] addX, double[] addY)
        => ((_cos[stretch] * x) - (_sin[stretch] * y) + addX[stretch], (_sin[stretch] * x) + (_cos[stretch] * y) + addY[stretch]);

    private (double X, double Y) Opened(int stretch, double x, double y)
    {
        double fromX = x - _addX[stretch];
        double fromY = y - _addY[stretch];
        return ((_cos[stretch] * fromX) + (_sin[stretch] * fromY), (_cos[stretch] * fromY) - (_sin[stretch] * fromX));
    }

    private double Crossing(int dart, double after)
    {
        (double apexX, double apexY) = Closed(dart, _apexX[dart], _apexY[dart], _addX, _addY);
        (double legX, double legY) = ClosedLeg(dart);
        CurveIntersections hits = _closed.IntersectionsWith(Line.From(new Point2D(apexX, apexY), Direction.FromRadians(Math.Atan2(legY, legX))));
        double best = double.NaN;
        double bestOff = double.PositiveInfinity;
        for (int i = 0; i < hits.Count; i++)
        {
            double t = hits.FirstRaw(i);
            Point2D hit = _closed.PointAtRaw(t);
            double along = ((hit.XMm - apexX) * legX) + ((hit.YMm - apexY) * legY);
            if (along > 0 && t > after && t < 1 && Math.Abs(along - _legMm[dart]) < bestOff)
            {
                best = t;
                bestOff = Math.Abs(along - _legMm[dart]);
            }
        }

        return best;
    }

    private (double X, double Y) ClosedLeg(int dart)
        => ((_cos[dart] * _legX[dart]) - (_sin[dart] * _legY[dart]), (_sin[dart] * _legX[dart]) + (_cos[dart] * _legY[dart]));

    private double CrossingGoes(int dart, in Vector2D apexGoes)
    {
        double t = _at[dart + 1];
        (double apexX, double apexY) = Closed(dart, apexGoes.XMm, apexGoes.YMm, _shareX, _shareY);
        (double legX, double legY) = ClosedLeg(dart);
        Vector2D tangent = _closed.DerivativeAtRaw(t);
        double goes = (legX * (Blossom(_goesY, t, t, t) - apexY)) - (legY * (Blossom(_goesX, t, t, t) - apexX));
        double per = (legX * tangent.YMm) - (legY * tangent.XMm);
        return per != 0 ? -goes / per : 0;
    }

    private (double Start, double End) Handles(int way, double step)
    {
        double rad = step / LeastChange.MmPerRad;
        Direction leaving = Direction.FromRadians(_leaving + (way == 2 ? rad : 0));
        Direction arriving = Direction.FromRadians(_arriving + (way == 3 ? rad : 0));
        CubicBezier c = CubicBezier.InOneSweep(_closed.Start, leaving, new Point2D(_closed.X3 + (way == 0 ? step : 0), _closed.Y3 + (way == 1 ? step : 0)), arriving);
        double per = way >= 2 ? LeastChange.MmPerRad : 1;
        return (per * Raw.Hypot(c.X1 - c.X0, c.Y1 - c.Y0), per * Raw.Hypot(c.X3 - c.X2, c.Y3 - c.Y2));
    }

    private static double Blossom(double[] points, double u, double v, double w)
    {
        double a = points[0] + (u * (points[1] - points[0]));
        double b = points[1] + (u * (points[2] - points[1]));
        double c = points[2] + (u * (points[3] - points[2]));
        a += v * (b - a);
        b += v * (c - b);
        return a + (w * (b - a));
    }

    // Linear in each of its places, so its slope in one of them is the same all along.
    private (double X, double Y) BlossomSlope(double v, double w)
    {
        double x0 = _closed.X1 - _closed.X0;
        double x1 = _closed.X2 - _closed.X1;
        double x2 = _closed.X3 - _closed.X2;
        double y0 = _closed.Y1 - _closed.Y0;
        double y1 = _closed.Y2 - _closed.Y1;
        double y2 = _closed.Y3 - _closed.Y2;
        x0 += v * (x1 - x0);
        x1 += v * (x2 - x1);
        y0 += v * (y1 - y0);
        y1 += v * (y2 - y1);
        return (x0 + (w * (x1 - x0)), y0 + (w * (y1 - y0)));
    }

    private static bool IsSame(in CubicBezier one, in CubicBezier other)
        => one.Start.DistanceMm(other.Start) <= SameMm && one.StartControl.DistanceMm(other.StartControl) <= SameMm
            && one.EndControl.DistanceMm(other.EndControl) <= SameMm && one.End.DistanceMm(other.End) <= SameMm;
}
