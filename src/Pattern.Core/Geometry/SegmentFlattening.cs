using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Walks along any segment from vertex to vertex of a polyline within a tolerance, in portions.</summary>
internal struct SegmentFlattening
{
    /// <summary>More chords than this are refused: the tolerance is a slip of the pen.</summary>
    internal const int ChordLimit = 1_000_000;

    private readonly PathSegment _segment;
    private readonly int _arcChords;
    private FlattenWalk _walk;
    private int _done;

    internal SegmentFlattening(in PathSegment segment, double toleranceMm)
    {
        _segment = segment;
        _walk = default;
        _arcChords = 1;
        if (segment.Kind == PathSegmentKind.Cubic)
        {
            _walk = new FlattenWalk(segment.CubicRaw, toleranceMm);
        }
        else if (segment.Kind == PathSegmentKind.Arc)
        {
            _arcChords = ArcChords(segment.ArcRaw, toleranceMm);
        }
    }

    /// <summary>Millimetres of a tolerance that a caller passes for a segment.</summary>
    internal static double CheckedMm(in PathSegment segment, Length tolerance, string parameter)
    {
        double toleranceMm = GeometryTolerance.CheckedMm(tolerance, parameter);

        // A bound of the number of chords, from the second derivative alone.
        double chords = segment.Kind switch
        {
            PathSegmentKind.Line => 1,
            PathSegmentKind.Arc => Math.Sqrt(segment.ArcRaw.RadiusMm / (8 * toleranceMm)) * Math.Abs(segment.ArcRaw.SweepRad),
            _ => FlattenWalk.MostChords(segment.CubicRaw, toleranceMm),
        };
        return chords <= ChordLimit
            ? toleranceMm
            : throw new ArgumentOutOfRangeException(
                parameter, MessageRegistry.Format(DiagnosticCode.ToleranceTooFine, parameter, tolerance, chords, ChordLimit));
    }

    /// <summary>Writes the next vertices, the start excluded; 0 at the end.</summary>
    internal unsafe int Fill(Point2D* vertices, int room)
    {
        if (_segment.Kind == PathSegmentKind.Cubic)
        {
            return _walk.Fill(vertices, room);
        }

        int count = 0;
        while (_done < _arcChords && count < room)
        {
            _done++;
            vertices[count++] = _done == _arcChords ? _segment.End : _segment.PointAtRaw((double)_done / _arcChords);
        }

        return count;
    }

    private static int ArcChords(in CircularArc arc, double toleranceMm)
    {
        // The sagitta r (1 - cos(a/2)) of a chord over the angle a is 2 r sin^2(a/4); at most a third of a turn each keeps the shape.
        double sine = Math.Sqrt(Math.Min(1, toleranceMm / 2 / Math.Max(arc.RadiusMm, 1e-300)));
        double angle = Math.Min(4 * Math.Asin(sine), 2 * Math.PI / 3);
        return Math.Max(1, (int)Math.Ceiling((Math.Abs(arc.SweepRad) / angle) - 1e-9));
    }
}
