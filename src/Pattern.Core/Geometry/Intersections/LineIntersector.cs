using System;

namespace Pattern.Core.Geometry;

/// <summary>All common points of a segment of any kind and a line without ends. The second parameter is millimetres along the line.</summary>
internal static unsafe class LineIntersector
{
    internal static void Find(in PathSegment segment, in Line line, double? askedMm, out CurveIntersections hits)
    {
        hits = default;
        BoundingBox box = segment.LooseBounds;
        double toleranceMm = Math.Max(
            SegmentPair.Tolerance(box, box, askedMm), 8 * Raw.Epsilon * Math.Max(Math.Abs(line.Point.XMm), Math.Abs(line.Point.YMm)));
        Raw.RequireFinite(toleranceMm, nameof(line));
        switch (segment.Kind)
        {
            case PathSegmentKind.Line:
                Straight(segment, line, toleranceMm, ref hits);
                break;
            case PathSegmentKind.Arc:
                Arc(segment, line, toleranceMm, ref hits);
                break;
            default:
                Cubic(segment, line, toleranceMm, ref hits);
                break;
        }
    }

    private static void Add(in PathSegment segment, in Line line, double t, bool isTouching, ref CurveIntersections hits)
    {
        Point2D at = segment.PointAtRaw(t);
        double angle = 0;
        if (segment.TryDirectionAtRaw(t, out Direction heading))
        {
            angle = Math.Abs(heading.TurnRadTo(line.Direction));
            angle = Math.Min(angle, Math.PI - angle);
        }

        hits.Insert(new Intersection(t, line.AlongMm(at), at, angle, isTouching || t == 0 || t == 1));
    }

    private static void AddOverlap(in PathSegment segment, in Line line, ref CurveIntersections hits)
        => hits.Insert(new Overlap(0, 1, line.AlongMm(segment.Start), line.AlongMm(segment.End)));

    private static void Cubic(in PathSegment segment, in Line line, double toleranceMm, ref CurveIntersections hits)
    {
        CubicBezier cubic = segment.CubicRaw;
        double* offsets = stackalloc double[4];
        Offsets(cubic, line, offsets);
        double magnitude = Math.Max(cubic.MagnitudeMm, Math.Max(Math.Abs(line.Point.XMm), Math.Abs(line.Point.YMm)));
        if (Intersector.AreNothing(offsets, 8 * Raw.Epsilon * magnitude))
        {
            AddOverlap(segment, line, ref hits);
            return;
        }

        BernsteinRoots roots = BernsteinRoots.Find(offsets, 3, toleranceMm);
        for (int i = 0; i < roots.Count; i++)
        {
            Add(segment, line, Raw.Clamp(roots[i], 0, 1), roots.IsTouching(i), ref hits);
        }
    }

    private static void Offsets(in CubicBezier cubic, in Line line, double* offsets)
    {
        offsets[0] = line.OffsetMm(cubic.Start);
        offsets[1] = line.OffsetMm(cubic.StartControl);
        offsets[2] = line.OffsetMm(cubic.EndControl);
        offsets[3] = line.OffsetMm(cubic.End);
    }

    private static void Straight(in PathSegment segment, in Line line, double toleranceMm, ref CurveIntersections hits)
    {
        LineSegment own = segment.LineRaw;
        double start = line.OffsetMm(own.Start);
        double end = line.OffsetMm(own.End);
        if (Math.Abs(start) <= toleranceMm && Math.Abs(end) <= toleranceMm)
        {
            AddOverlap(segment, line, ref hits);
        }
        else if (start == 0 || end == 0 || (start < 0) != (end < 0))
        {
            Add(segment, line, start / (start - end), false, ref hits);
        }
        else if (Math.Min(Math.Abs(start), Math.Abs(end)) <= toleranceMm)
        {
            Add(segment, line, Math.Abs(start) < Math.Abs(end) ? 0 : 1, true, ref hits);
        }
    }

    private static void Arc(in PathSegment segment, in Line line, double toleranceMm, ref CurveIntersections hits)
    {
        CircularArc arc = segment.ArcRaw;
        double aside = line.OffsetMm(arc.Centre);
        double along = line.AlongMm(arc.Centre);
        double inside = arc.RadiusMm - Math.Abs(aside);
        if (inside < -toleranceMm || arc.RadiusMm == 0)
        {
            return;
        }

        double noise = 8 * Raw.Epsilon * (Math.Abs(aside) + Math.Abs(along) + arc.RadiusMm);
        bool isTouching = inside <= noise;
        double half = isTouching ? 0 : Math.Sqrt(inside * (arc.RadiusMm + Math.Abs(aside)));
        for (int sign = isTouching ? 1 : -1; sign <= 1; sign += 2)
        {
            double at = along + (sign * half);
            double x = line.Point.XMm + (line.Direction.X * at) - arc.CentreXMm;
            double y = line.Point.YMm + (line.Direction.Y * at) - arc.CentreYMm;
            if (arc.TryShareNear(Math.Atan2(y, x), toleranceMm, out double t))
            {
                Add(segment, line, t, isTouching, ref hits);
            }
        }
    }
}
