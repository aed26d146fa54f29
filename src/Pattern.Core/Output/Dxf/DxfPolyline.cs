using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>A path as straight lines, each of its vertices being a turn point or a curve point.</summary>
internal sealed class DxfPolyline
{
    // Half a degree: far above what fitted parallels leave at their joints, far below any corner that is sewn or cut.
    private const double LeastCornerRad = Math.PI / 360;

    // What lies this near to a vertex is found there; the finest tolerance that can be asked for.
    private const double AtVertexMm = 0.001;

    private readonly List<Point2D> _points = [];
    private readonly List<bool> _turns = [];
    private readonly DxfUnits _units;

    internal DxfPolyline(CurvePath path, in DxfUnits units)
    {
        _units = units;
        PathSegment[] segments = path.SegmentsRaw;
        IsClosed = path.IsClosed;
        Add(segments[0].Start, !IsClosed || Turns(segments[segments.Length - 1], segments[0]));
        for (int i = 0; i < segments.Length; i++)
        {
            Point2D[] vertices = CurvePath.Trusted(segments[i]).Flatten(units.Tolerance);
            bool isLast = i == segments.Length - 1;
            for (int j = 1; j < vertices.Length - 1; j++)
            {
                Add(vertices[j], isTurn: false);
            }

            bool isTurn = isLast ? !IsClosed || Turns(segments[i], segments[0]) : Turns(segments[i], segments[i + 1]);
            Add(vertices[vertices.Length - 1], isTurn);
        }

        // The format closes the line itself.
        if (IsClosed && _points.Count > 1 && AreOne(_points[0], _points[_points.Count - 1]))
        {
            _turns[0] |= _turns[_points.Count - 1];
            _points.RemoveAt(_points.Count - 1);
            _turns.RemoveAt(_turns.Count - 1);
        }
    }

    /// <summary>Makes a point of the path a vertex, unless it is one.</summary>
    internal void Include(in Point2D onPath)
    {
        int count = _points.Count;
        int place = 0;
        double nearest = double.PositiveInfinity;
        for (int i = 0; i < (IsClosed ? count : count - 1); i++)
        {
            double awayMm = new LineSegment(_points[i], _points[(i + 1) % count]).ClosestTo(onPath).DistanceMm;
            (nearest, place) = awayMm < nearest ? (awayMm, i) : (nearest, place);
        }

        if (Math.Min(onPath.DistanceMm(_points[place]), onPath.DistanceMm(_points[(place + 1) % count])) > AtVertexMm)
        {
            _points.Insert(place + 1, onPath);
            _turns.Insert(place + 1, false);
        }
    }

    internal bool IsClosed { get; }

    internal IReadOnlyList<Point2D> Points => _points;

    /// <summary>Whether the line turns at a vertex, or a straight stretch of it ends there; else it bends on.</summary>
    internal IReadOnlyList<bool> Turnings => _turns;

    internal void Write(DxfText text, string layer, string? lineType = null, int colour = -1)
    {
        // 1: closed; 128: dashes run on across vertices.
        Attributes(text.Entity("POLYLINE", layer), lineType, colour).Whole(66, 1).At(10, 0, 0).Whole(70, (IsClosed ? 1 : 0) + (lineType is null ? 0 : 128));
        foreach (Point2D point in _points)
        {
            text.Entity("VERTEX", layer).At(10, point);
        }

        text.Entity("SEQEND", layer);
    }

    internal static DxfText Attributes(DxfText text, string? lineType, int colour)
    {
        if (lineType is not null)
        {
            text.Word(6, lineType);
        }

        return colour < 0 ? text : text.Whole(62, colour);
    }

    private static bool Turns(in PathSegment before, in PathSegment after)
    {
        if (before.Kind == PathSegmentKind.Line || after.Kind == PathSegmentKind.Line)
        {
            return true;
        }

        if (!before.TryDirectionAtRaw(1, out Direction arriving) || !after.TryDirectionAtRaw(0, out Direction leaving))
        {
            return true;
        }

        Vector2D from = arriving.TimesMm(1);
        Vector2D to = leaving.TimesMm(1);
        double cross = (from.XMm * to.YMm) - (from.YMm * to.XMm);
        double dot = (from.XMm * to.XMm) + (from.YMm * to.YMm);
        return Math.Abs(Math.Atan2(cross, dot)) > LeastCornerRad;
    }

    // Two vertices that are written with the same digits are one.
    private void Add(in Point2D point, bool isTurn)
    {
        int last = _points.Count - 1;
        if (last >= 0 && AreOne(_points[last], point))
        {
            _turns[last] |= isTurn;
            return;
        }

        _points.Add(point);
        _turns.Add(isTurn);
    }

    private bool AreOne(in Point2D a, in Point2D b) => _units.Steps(a.XMm) == _units.Steps(b.XMm) && _units.Steps(a.YMm) == _units.Steps(b.YMm);
}
