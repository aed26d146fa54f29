using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>Makes segments that meet to within rounding share their ends bit by bit.</summary>
/// <remarks>What was worked out in two ways differs in its last digits. A reader that takes each number as it stands would find a slit there, or a loop.</remarks>
internal static class SharedEnds
{
    /// <summary>Leaves out segments of no length, unless nothing else is left. The one after each begins where it began, or the one before ends where it ended.</summary>
    internal static List<PathSegment> WithoutSpecks(List<PathSegment> segments)
    {
        for (int i = segments.Count - 1; i >= 0 && segments.Count > 1; i--)
        {
            PathSegment speck = segments[i];
            if (speck.Start.DistanceMm(speck.End) > GeometryTolerance.JoinMm || speck.LengthMm() > GeometryTolerance.JoinMm)
            {
                continue;
            }

            // An arc's ends cannot be moved. Beside it a speck goes only where what is left meets.
            if (i + 1 < segments.Count && segments[i + 1].Kind != PathSegmentKind.Arc)
            {
                segments[i + 1] = StartingAt(segments[i + 1], speck.Start);
            }
            else if (i > 0 && segments[i - 1].Kind != PathSegmentKind.Arc)
            {
                segments[i - 1] = StartingAt(segments[i - 1].Reversed(), speck.End).Reversed();
            }
            else if (i == 0 || i + 1 == segments.Count ? speck.LengthMm() > GeometryTolerance.JoinMm / 2 : !CurvePath.Meets(segments[i - 1].End, segments[i + 1].Start))
            {
                continue;
            }

            segments.RemoveAt(i);
        }

        return segments;
    }

    /// <summary>Draws an arc as cubics where it meets another arc in a point that both work out differently: the shorter one of each two.</summary>
    /// <remarks>An arc's ends follow from its centre, radius and angles, so they cannot be moved by a last digit; those of a cubic can. The cubics are off by no more than
    /// <see cref="GeometryTolerance.JoinMm"/>.</remarks>
    /// <param name="parts">The segments of a closed outline in their order, in parts of which some may be empty.</param>
    internal static void DrawArcsThatMeetAsCubics(List<PathSegment>[] parts)
    {
        int first = Array.FindIndex(parts, part => part.Count > 0);
        for (int i = first; i >= 0 && i < parts.Length; i++)
        {
            for (int k = 0; k < parts[i].Count; k++)
            {
                bool isLast = k + 1 == parts[i].Count;
                int after = isLast ? Array.FindIndex(parts, i + 1, part => part.Count > 0) : i;
                after = after < 0 ? first : after;
                int next = isLast ? 0 : k + 1;
                PathSegment one = parts[i][k];
                PathSegment other = parts[after][next];
                if (one.Kind != PathSegmentKind.Arc || other.Kind != PathSegmentKind.Arc || one.End == other.Start)
                {
                    continue;
                }

                if (other.LengthMm() < one.LengthMm())
                {
                    DrawAsCubics(parts[after], next);
                }
                else
                {
                    k += DrawAsCubics(parts[i], k) - 1;
                }
            }
        }
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

    private static int DrawAsCubics(List<PathSegment> part, int index)
    {
        CircularArc arc = part[index].ArcRaw;
        var cubics = new PathSegment[arc.CubicCount(GeometryTolerance.JoinMm)];
        for (int i = 0; i < cubics.Length; i++)
        {
            cubics[i] = PathSegment.FromCubic(arc.CubicPiece(i, cubics.Length));
        }

        part.RemoveAt(index);
        part.InsertRange(index, cubics);
        return cubics.Length;
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
