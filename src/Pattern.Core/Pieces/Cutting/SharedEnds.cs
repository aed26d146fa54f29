using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>Makes segments that meet to within rounding share their ends bit by bit.</summary>
/// <remarks>What was worked out in two ways differs in its last digits. A reader that takes each number as it stands would find a slit there, or a loop.</remarks>
internal static class SharedEnds
{
    /// <summary>Leaves out segments of no length, unless nothing else is left.</summary>
    internal static List<PathSegment> WithoutSpecks(List<PathSegment> segments)
    {
        for (int i = segments.Count - 1; i >= 0 && segments.Count > 1; i--)
        {
            if (segments[i].Start.DistanceMm(segments[i].End) <= GeometryTolerance.JoinMm && segments[i].LengthMm() <= GeometryTolerance.JoinMm)
            {
                segments.RemoveAt(i);
            }
        }

        return segments;
    }

    /// <summary>Lets each segment of a closed outline begin where the one before it ends.</summary>
    internal static void Join(PathSegment[] ring)
    {
        for (int i = 0; i < ring.Length; i++)
        {
            int next = i + 1 == ring.Length ? 0 : i + 1;
            Point2D end = ring[i].End;
            Point2D start = ring[next].Start;
            if (end == start || !CurvePath.Meets(end, start))
            {
                continue;
            }

            if (ring[next].Kind != PathSegmentKind.Arc)
            {
                ring[next] = StartingAt(ring[next], end);
            }
            else if (ring[i].Kind != PathSegmentKind.Arc)
            {
                ring[i] = StartingAt(ring[i].Reversed(), start).Reversed();
            }
        }
    }

    private static PathSegment StartingAt(in PathSegment segment, in Point2D start)
    {
        if (segment.Kind == PathSegmentKind.Line)
        {
            return PathSegment.FromLine(new LineSegment(start, segment.End));
        }

        CubicBezier cubic = segment.CubicRaw;
        return PathSegment.FromCubic(new CubicBezier(start, new Point2D(cubic.X1, cubic.Y1), new Point2D(cubic.X2, cubic.Y2), cubic.End));
    }
}
