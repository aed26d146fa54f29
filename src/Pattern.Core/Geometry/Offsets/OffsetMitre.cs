using System;
using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <summary>Puts mitres in the place of round joins, wherever there is room for them.</summary>
internal static class OffsetMitre
{
    // A point farther than four widths away: half of the turn has a cosine of less than a quarter.
    private const double LeastCosine = 0.25;

    /// <param name="round">The trimmed offset with round joins.</param>
    /// <param name="trim">Who knows whether a point keeps its distance; null where crossings of the result with itself tell all.</param>
    internal static CurvePath Mitred(OffsetChain round, OffsetTrim? trim)
    {
        var left = new List<int>(round.Joins.Count);
        var mitre = new List<PathSegment>();
        foreach (int join in round.Joins)
        {
            mitre.Clear();
            AddMitre(round.Segments[join].ArcRaw, mitre);
            if (trim is null || mitre.TrueForAll(s => trim.IsClear(s.LineRaw)))
            {
                left.Add(join);
            }
        }

        while (true)
        {
            // For each segment of the result the join that it belongs to, or -1.
            var owners = new List<int>();
            var segments = new List<PathSegment>();
            for (int i = 0; i < round.Segments.Count; i++)
            {
                if (left.Contains(i))
                {
                    AddMitre(round.Segments[i].ArcRaw, segments);
                }
                else
                {
                    segments.Add(round.Segments[i]);
                }

                while (owners.Count < segments.Count)
                {
                    owners.Add(left.Contains(i) ? i : -1);
                }
            }

            CurvePath path = CurvePath.Trusted(segments.ToArray(), round.IsRing);
            if (left.Count == 0 || path.IsSimple())
            {
                return path;
            }

            // A corner whose point runs into another part of the offset stays round.
            PathIntersections crossings = path.SelfIntersections();
            int before = left.Count;
            foreach (PathIntersection crossing in crossings.Points)
            {
                left.Remove(owners[crossing.FirstSegment]);
                left.Remove(owners[crossing.SecondSegment]);
            }

            foreach (PathOverlap overlap in crossings.Overlaps)
            {
                left.Remove(owners[overlap.FirstSegment]);
                left.Remove(owners[overlap.SecondSegment]);
            }

            if (left.Count == before)
            {
                return path;
            }
        }
    }

    private static void AddMitre(in CircularArc arc, List<PathSegment> segments)
    {
        Point2D from = arc.Start;
        Point2D to = arc.End;
        Direction leaving = arc.DirectionAtRaw(0);
        Direction arriving = arc.DirectionAtRaw(1);
        double cosine = Math.Cos(0.5 * arc.SweepRad);
        double aheadMm = cosine > LeastCosine ? arc.RadiusMm * Math.Tan(0.5 * Math.Abs(arc.SweepRad)) : arc.RadiusMm;
        var leave = new Point2D(from.XMm + (aheadMm * leaving.X), from.YMm + (aheadMm * leaving.Y));
        segments.Add(PathSegment.FromLine(new LineSegment(from, leave)));
        if (cosine <= LeastCosine)
        {
            var arrive = new Point2D(to.XMm - (aheadMm * arriving.X), to.YMm - (aheadMm * arriving.Y));
            segments.Add(PathSegment.FromLine(new LineSegment(leave, arrive)));
            leave = arrive;
        }

        segments.Add(PathSegment.FromLine(new LineSegment(leave, to)));
    }
}
