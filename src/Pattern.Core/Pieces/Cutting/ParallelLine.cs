using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>The line beside a path, segment by segment.</summary>
internal static class ParallelLine
{
    private const double ToleranceMm = 1e-3;
    private const int Deepest = 12;

    internal static CurvePath Of(CurvePath path, double leftMm)
    {
        var segments = new List<PathSegment>(path.SegmentsRaw.Length * 2);
        foreach (PathSegment segment in path.SegmentsRaw)
        {
            switch (segment.Kind)
            {
                case PathSegmentKind.Line:
                    Vector2D aside = segment.StartDirection.TurnedLeft.TimesMm(leftMm);
                    segments.Add(PathSegment.FromLine(new LineSegment(segment.Start + aside, segment.End + aside)));
                    break;
                default:
                    Add(segment, leftMm, 0, 1, 0, segments);
                    break;
            }
        }

        CurvePath beside = CurvePath.Trusted(segments[0]);
        for (int i = 1; i < segments.Count; i++)
        {
            beside = beside.JoinedWithCorner(CurvePath.Trusted(segments[i]));
        }

        return beside;
    }

    private static void Add(in PathSegment segment, double leftMm, double from, double to, int depth, List<PathSegment> segments)
    {
        double span = (to - from) / 3;
        Point2D start = Beside(segment, leftMm, from, out Vector2D leaving);
        Point2D end = Beside(segment, leftMm, to, out Vector2D arriving);
        PathSegment fitted = PathSegment.FromCubic(new CubicBezier(start, start + (leaving * span), end - (arriving * span), end));
        double off = 0;
        foreach (double u in new[] { 0.25, 0.5, 0.75 })
        {
            off = Math.Max(off, CurvePath.Trusted(fitted).ClosestTo(Beside(segment, leftMm, from + (u * (to - from)), out _)).DistanceMm);
        }

        if (off <= ToleranceMm || depth == Deepest)
        {
            segments.Add(fitted);
            return;
        }

        double middle = (from + to) / 2;
        Add(segment, leftMm, from, middle, depth + 1, segments);
        Add(segment, leftMm, middle, to, depth + 1, segments);
    }

    private static Point2D Beside(in PathSegment segment, double leftMm, double t, out Vector2D derivative)
    {
        Direction along = segment.DirectionAtRaw(t);
        derivative = segment.DerivativeAtRaw(t) * (1 - (leftMm * segment.CurvaturePerMmAtRaw(t)));
        return segment.PointAtRaw(t) + along.TurnedLeft.TimesMm(leftMm);
    }
}
