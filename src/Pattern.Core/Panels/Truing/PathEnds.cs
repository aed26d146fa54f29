using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>What truing does to the ends of lines. A line is given with the end in question as its start.</summary>
internal static class PathEnds
{
    /// <summary>Smaller corners than this are rounding.</summary>
    internal const double SmoothRad = 1e-7;

    /// <summary>The line with some of its start taken off, or going straight on before it.</summary>
    /// <param name="path">The line.</param>
    /// <param name="takenMm">How much is taken off, less than its length; negative to go on.</param>
    internal static CurvePath Shortened(CurvePath path, double takenMm)
    {
        if (takenMm == 0)
        {
            return path;
        }

        if (takenMm > 0)
        {
            return path.SubPathMm(takenMm, path.LengthMm);
        }

        Point2D start = path.Start + path.StartDirection.TimesMm(takenMm);
        PathSegment first = path.SegmentsRaw[0];
        if (first.Kind != PathSegmentKind.Line)
        {
            return CurvePath.FromLine(new LineSegment(start, path.Start)).Then(path);
        }

        var segments = (PathSegment[])path.SegmentsRaw.Clone();
        segments[0] = PathSegment.FromLine(new LineSegment(start, first.End));
        return CurvePath.Trusted(segments, isClosed: false);
    }

    /// <summary>The line with its start elsewhere: its first curve follows and keeps both its directions; a straight line stays straight
    /// unless it runs smoothly into what comes next.</summary>
    internal static CurvePath Following(CurvePath path, in Point2D start)
    {
        Vector2D move = start - path.Start;
        if (move.XMm == 0 && move.YMm == 0)
        {
            return path;
        }

        var segments = (PathSegment[])path.SegmentsRaw.Clone();
        PathSegment first = segments[0];
        bool staysStraight = first.Kind == PathSegmentKind.Line
            && (segments.Length == 1 || Math.Abs(first.EndDirection.TurnRadTo(segments[1].StartDirection)) > SmoothRad);
        segments[0] = staysStraight
            ? PathSegment.FromLine(new LineSegment(start, first.End))
            : PathSegment.FromCubic(WithStartMoved(first, move));
        return CurvePath.Trusted(segments, isClosed: false);
    }

    /// <summary>The segment with other directions at its ends; null keeps one.</summary>
    /// <remarks>A curve turns its handles and keeps their lengths, so it changes least; a line or an arc becomes the fairest curve.</remarks>
    internal static PathSegment Bent(in PathSegment segment, Direction? leaving, Direction? arriving)
    {
        if (leaving is null && arriving is null)
        {
            return segment;
        }

        Direction from = leaving ?? segment.StartDirection;
        Direction to = arriving ?? segment.EndDirection;
        if (segment.Kind != PathSegmentKind.Cubic)
        {
            return PathSegment.FromCubic(CubicBezier.Between(segment.Start, from, segment.End, to));
        }

        CubicBezier cubic = segment.CubicRaw;
        double usual = cubic.Start.DistanceMm(cubic.End) / 3;
        double startHandle = cubic.Start.DistanceMm(cubic.StartControl);
        double endHandle = cubic.End.DistanceMm(cubic.EndControl);
        return PathSegment.FromCubic(CubicBezier.FromHandles(
            cubic.Start, from, startHandle > 0 ? startHandle : usual, cubic.End, to, endHandle > 0 ? endHandle : usual));
    }

    /// <summary>The corners of a line smoothed: at each, both sides turn half way.</summary>
    internal static PathSegment[] Smoothed(PathSegment[] segments, Direction leaving, Direction arriving)
    {
        var smooth = new PathSegment[segments.Length];
        Direction? from = Changed(segments[0].StartDirection, leaving);
        for (int i = 0; i < segments.Length; i++)
        {
            Direction? to;
            Direction? next = null;
            if (i == segments.Length - 1)
            {
                to = Changed(segments[i].EndDirection, arriving);
            }
            else
            {
                Direction before = segments[i].EndDirection;
                double turn = before.TurnRadTo(segments[i + 1].StartDirection);
                to = Math.Abs(turn) > SmoothRad ? before.TurnedRad(turn / 2) : null;
                next = to;
            }

            smooth[i] = Bent(segments[i], from, to);
            from = next;
        }

        return smooth;
    }

    internal static bool IsSmooth(IReadOnlyList<PathSegment> segments)
    {
        for (int i = 1; i < segments.Count; i++)
        {
            if (Math.Abs(segments[i - 1].EndDirection.TurnRadTo(segments[i].StartDirection)) > SmoothRad)
            {
                return false;
            }
        }

        return true;
    }

    private static Direction? Changed(in Direction now, in Direction asked) => Math.Abs(now.TurnRadTo(asked)) > SmoothRad ? asked : null;

    private static CubicBezier WithStartMoved(in PathSegment segment, in Vector2D move)
    {
        switch (segment.Kind)
        {
            case PathSegmentKind.Cubic:
                CubicBezier cubic = segment.CubicRaw;
                return new CubicBezier(cubic.Start + move, cubic.StartControl + move, cubic.EndControl, cubic.End);
            case PathSegmentKind.Line:
                CubicBezier straight = segment.LineRaw.ToCubic();
                return new CubicBezier(straight.Start + move, straight.StartControl + move, straight.EndControl, straight.End);
            default:
                return CubicBezier.Between(segment.Start + move, segment.StartDirection, segment.End, segment.EndDirection);
        }
    }
}
