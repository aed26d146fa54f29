using System;
using System.Collections.Generic;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>Collects what paths have in common with each other and with themselves.</summary>
internal static class PathCrossings
{
    internal static PathIntersections Between(CurvePath first, CurvePath second, double? toleranceMm)
    {
        var points = new List<PathIntersection>();
        var overlaps = new List<PathOverlap>();
        PathSegment[] a = first.SegmentsRaw;
        PathSegment[] b = second.SegmentsRaw;
        var boxes = new BoundingBox[b.Length];
        for (int k = 0; k < b.Length; k++)
        {
            boxes[k] = b[k].LooseBounds;
        }

        for (int i = 0; i < a.Length; i++)
        {
            BoundingBox box = a[i].LooseBounds;
            for (int k = 0; k < b.Length; k++)
            {
                double workingMm = SegmentPair.Tolerance(box, boxes[k], toleranceMm);
                if (box.IsNear(boxes[k], workingMm))
                {
                    CurveIntersections hits = default;
                    Intersector.FindNear(new SegmentPair(a[i], b[k], workingMm), ref hits);
                    Collect(first, i, second, k, hits, 2 * workingMm, points, overlaps);
                }
            }
        }

        return new PathIntersections(points, overlaps);
    }

    internal static PathIntersections With(CurvePath path, in Line line, double? toleranceMm)
    {
        var points = new List<PathIntersection>();
        var overlaps = new List<PathOverlap>();
        for (int i = 0; i < path.SegmentsRaw.Length; i++)
        {
            LineIntersector.Find(path.SegmentsRaw[i], line, toleranceMm, out CurveIntersections hits);
            BoundingBox box = path.SegmentsRaw[i].LooseBounds;
            Collect(path, i, null, 0, hits, 2 * SegmentPair.Tolerance(box, box, toleranceMm), points, overlaps);
        }

        return new PathIntersections(points, overlaps);
    }

    /// <summary>Finds what a path has in common with itself, its joints aside.</summary>
    /// <param name="path">The path.</param>
    /// <param name="toleranceMm">What comes nearer touches; null for the default.</param>
    /// <param name="points">Receives the points; null to stop at the first, which allocates nothing on paths of up to 64 segments.</param>
    /// <param name="overlaps">Receives the stretches.</param>
    /// <param name="most">So many points are enough.</param>
    /// <returns>Whether there is nothing.</returns>
    [SkipLocalsInit]
    internal static unsafe bool IsClear(CurvePath path, double? toleranceMm, List<PathIntersection>? points, List<PathOverlap>? overlaps, int most = int.MaxValue)
    {
        PathSegment[] segments = path.SegmentsRaw;
        const int OnStack = 64;
        int room = segments.Length;
        Entry* few = stackalloc Entry[room <= OnStack ? room : 1];
        Entry[]? many = room <= OnStack ? null : new Entry[room];
        fixed (Entry* pinned = many)
        {
            Entry* entries = many is null ? few : pinned;
            int count = 0;
            for (int i = 0; i < room; i++)
            {
                Entry entry = Entry.Of(segments[i], i);

                // A segment of no length meets nothing but its neighbours, which thereby are each other's.
                if (entry.SizeMm > GeometryTolerance.JoinMm || room == 1)
                {
                    entries[count++] = entry;
                }
            }

            return IsClear(path, toleranceMm, entries, count, points, overlaps, most);
        }
    }

    private static unsafe bool IsClear(
        CurvePath path, double? toleranceMm, Entry* entries, int count, List<PathIntersection>? points, List<PathOverlap>? overlaps, int most)
    {
        bool isClear = true;
        PathSegment[] segments = path.SegmentsRaw;
        bool endsMeet = path.IsClosed || CurvePath.Meets(segments[segments.Length - 1].End, segments[0].Start);
        for (int i = 0; i < count; i++)
        {
            ref Entry own = ref entries[i];
            if (!IsClearAlone(segments[own.Index], own, count == 1 && endsMeet, points, overlaps))
            {
                isClear = false;
                if (points is null)
                {
                    return false;
                }
            }

            for (int k = i + 1; k < count; k++)
            {
                ref Entry other = ref entries[k];
                bool follows = k == i + 1;
                bool precedes = endsMeet && i == 0 && k == count - 1;
                if (!own.IsNear(other) || (own.HasHull && other.HasHull && HullsAreClear(own.Hull, other.Hull, follows, precedes)))
                {
                    continue;
                }

                double workingMm = SegmentPair.Tolerance(segments[own.Index].LooseBounds, segments[other.Index].LooseBounds, toleranceMm);
                CurveIntersections hits = default;
                Intersector.FindNear(new SegmentPair(segments[own.Index], segments[other.Index], workingMm), ref hits);
                for (int h = hits.Count - 1; h >= 0; h--)
                {
                    Point2D at = hits[h].Point;
                    double joinMm = Math.Max(2 * GeometryTolerance.JoinMm, 4 * workingMm);
                    if ((follows && at.DistanceMm(segments[own.Index].End) <= joinMm && hits.FirstRaw(h) > 0.5 && hits.SecondRaw(h) < 0.5)
                        || (precedes && at.DistanceMm(segments[own.Index].Start) <= joinMm && hits.FirstRaw(h) < 0.5 && hits.SecondRaw(h) > 0.5))
                    {
                        hits.RemoveAt(h);
                    }
                }

                if (!hits.IsEmpty)
                {
                    isClear = false;
                    if (points is null)
                    {
                        return false;
                    }

                    Collect(path, own.Index, path, other.Index, hits, 2 * workingMm, points, overlaps!);
                    if (points.Count >= most)
                    {
                        return false;
                    }
                }
            }
        }

        return isClear;
    }

    private static bool HullsAreClear(in CubicBezier own, in CubicBezier other, bool follows, bool precedes)
    {
        if (follows && precedes)
        {
            return false;
        }

        if (follows)
        {
            return PieceTests.LeadApart(own, -1, other, 1) || PieceTests.MeetAtMostOnce(own, other);
        }

        if (precedes)
        {
            return PieceTests.LeadApart(own, 1, other, -1) || PieceTests.MeetAtMostOnce(own, other);
        }

        return PieceTests.AreApart(own, other, GeometryTolerance.JoinMm);
    }

    private static bool IsClearAlone(
        in PathSegment segment, in Entry entry, bool endsMeet, List<PathIntersection>? points, List<PathOverlap>? overlaps)
    {
        if (segment.Kind != PathSegmentKind.Cubic
            || PieceTests.AllAhead(entry.Hull, entry.Hull.X3 - entry.Hull.X0, entry.Hull.Y3 - entry.Hull.Y0))
        {
            return true;
        }

        CubicBezier cubic = segment.CubicRaw;
        if (cubic.IsStraight(16 * Raw.Epsilon * cubic.MagnitudeMm, out _))
        {
            return !cubic.TurnsBack(out double tip, out double from, out double to) || Overlapping(entry.Index, tip, from, to, overlaps);
        }

        if (!cubic.TryFindSelfIntersection(out Intersection crossing) || (endsMeet && crossing.FirstParameter == 0 && crossing.SecondParameter == 1))
        {
            return true;
        }

        points?.Add(new PathIntersection(entry.Index, entry.Index, crossing));
        return false;
    }

    private static bool Overlapping(int index, double tip, double from, double to, List<PathOverlap>? overlaps)
    {
        overlaps?.Add(new PathOverlap(index, index, new Overlap(from, tip, to, tip)));
        return false;
    }

    private static void Collect(
        CurvePath first, int i, CurvePath? second, int k, in CurveIntersections hits, double sameMm, List<PathIntersection> points, List<PathOverlap> overlaps)
    {
        for (int h = 0; h < hits.OverlapCount; h++)
        {
            overlaps.Add(new PathOverlap(i, k, hits.OverlapAt(h)));
        }

        for (int h = 0; h < hits.Count; h++)
        {
            Intersection hit = hits[h];
            int firstSegment = i;
            int secondSegment = k;
            double t = BeginsNext(first, ref firstSegment, hit.FirstParameter);
            double u = second is null ? hit.SecondParameter : BeginsNext(second, ref secondSegment, hit.SecondParameter);
            var found = new PathIntersection(
                firstSegment, secondSegment, new Intersection(t, u, hit.Point, hit.AngleRad, hit.IsTouching));
            bool isNew = true;
            for (int n = 0; n < points.Count && isNew; n++)
            {
                isNew = points[n].Point.DistanceMm(hit.Point) > sameMm
                    || !IsNextTo(first, points[n].FirstPosition, found.FirstPosition)
                    || (second is not null && !IsNextTo(second, points[n].SecondPosition, found.SecondPosition));
            }

            if (isNew)
            {
                points.Add(found);
            }
        }
    }

    // The end of a segment is the beginning of the next one.
    private static double BeginsNext(CurvePath path, ref int segment, double t)
    {
        int count = path.SegmentsRaw.Length;
        if (t != 1 || (segment == count - 1 && !path.IsClosed))
        {
            return t;
        }

        segment = (segment + 1) % count;
        return 0;
    }

    private static bool IsNextTo(CurvePath path, double position, double other)
    {
        const double Near = 1e-3;
        double apart = Math.Abs(position - other);
        return apart <= Near || (path.IsClosed && path.SegmentsRaw.Length - apart <= Near);
    }

    /// <summary>What is asked of a segment again and again, computed once.</summary>
    private struct Entry
    {
        internal CubicBezier Hull;
        internal double LeftMm;
        internal double RightMm;
        internal double BottomMm;
        internal double TopMm;
        internal int Index;
        internal bool HasHull;

        internal readonly double SizeMm => Math.Max(RightMm - LeftMm, TopMm - BottomMm);

        internal static Entry Of(in PathSegment segment, int index)
        {
            Entry entry = default;
            entry.Index = index;
            entry.HasHull = segment.TryHull(out entry.Hull);
            BoundingBox box = entry.HasHull ? entry.Hull.ControlBounds : segment.LooseBounds;
            entry.LeftMm = box.LeftMm;
            entry.RightMm = box.RightMm;
            entry.BottomMm = box.BottomMm;
            entry.TopMm = box.TopMm;
            return entry;
        }

        internal readonly bool IsNear(in Entry other)
            => LeftMm <= other.RightMm + GeometryTolerance.JoinMm && other.LeftMm <= RightMm + GeometryTolerance.JoinMm
                && BottomMm <= other.TopMm + GeometryTolerance.JoinMm && other.BottomMm <= TopMm + GeometryTolerance.JoinMm;
    }
}
