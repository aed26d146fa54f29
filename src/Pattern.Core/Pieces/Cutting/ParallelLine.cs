using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>The line beside an edge, drawn on beyond both of its ends.</summary>
internal static class ParallelLine
{
    // A cubic that stands for an eighth of a circle is off by four millionths of the radius.
    private const double LongestArcRad = Math.PI / 4;
    private const double MeetMm = 1e-6;

    /// <summary>Draws the line. Its first and last segments run straight on beyond the ends of the edge.</summary>
    /// <param name="seam">The edge.</param>
    /// <param name="leftMm">How far to the left of it.</param>
    /// <param name="reachMm">How far it runs on.</param>
    /// <returns>The line, or null where nothing is left of it.</returns>
    internal static CurvePath? Beside(CurvePath seam, double leftMm, double reachMm)
    {
        CurvePath? parallel = leftMm == 0 ? seam : Parallel(seam, leftMm);
        if (parallel is null)
        {
            return null;
        }

        var line = new List<PathSegment>(parallel.SegmentsRaw);
        RunOn(line, seam, leftMm, reachMm);
        Reverse(line);
        RunOn(line, seam.Reversed(), -leftMm, reachMm);
        Reverse(line);
        return CurvePath.FromSegments(line);
    }

    private static CurvePath? Parallel(CurvePath seam, double leftMm)
    {
        try
        {
            IReadOnlyList<CurvePath> paths = OffsetBuilder.Build(seam, leftMm, OffsetJoin.Mitre, CurvePath.OffsetToleranceMm).Paths;
            return paths.Count == 1 ? paths[0] : null;
        }
        catch (ConstructionException refusal) when (refusal.Code == DiagnosticCode.OffsetVanishes)
        {
            return null;
        }
    }

    // Draws on beyond the end of the edge, along the line that the parallel of its tangent makes there. Where the edge bends towards its allowance more
    // tightly than that is wide, the parallel itself is trimmed back to where it comes as near to the end of the edge as to the edge:
    // it then crosses the line to draw on along, or the end of the edge is what to keep away from until that line is reached.
    private static void RunOn(List<PathSegment> line, CurvePath seam, double leftMm, double reachMm)
    {
        Direction along = seam.EndDirection;
        Point2D square = seam.End + along.TurnedLeft.TimesMm(leftMm);
        Point2D end = line[line.Count - 1].End;
        if (end.DistanceMm(square) > MeetMm)
        {
            if (along.Dot(end - square) > 0)
            {
                CutAt(line, Line.From(square, along));
                square = line[line.Count - 1].End;
            }
            else
            {
                AddArc(line, seam.End, end, square);
            }
        }

        line.Add(PathSegment.FromLine(new LineSegment(line[line.Count - 1].End, square + along.TimesMm(reachMm))));
    }

    // Ends a line where it last crosses another one ahead of that one's point.
    private static void CutAt(List<PathSegment> line, in Line other)
    {
        for (int i = line.Count - 1; i >= 0; i--)
        {
            LineIntersector.Find(line[i], other, null, out CurveIntersections hits);
            for (int k = hits.Count - 1; k >= 0; k--)
            {
                double t = hits.FirstRaw(k);
                if (hits.SecondRaw(k) > 0 && (t > 0 || i > 0))
                {
                    bool isMore = line[i].TryPartRaw(0, t, out PathSegment last);
                    line.RemoveRange(i, line.Count - i);
                    if (isMore || i == 0)
                    {
                        line.Add(last);
                    }

                    return;
                }
            }
        }
    }

    private static void Reverse(List<PathSegment> line)
    {
        line.Reverse();
        for (int i = 0; i < line.Count; i++)
        {
            line[i] = line[i].Reversed();
        }
    }

    private static void AddArc(List<PathSegment> segments, in Point2D centre, in Point2D from, in Point2D to)
    {
        if (from.DistanceMm(to) <= MeetMm)
        {
            return;
        }

        double sweep = (from - centre).AngleRadTo(to - centre);
        int count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / LongestArcRad));
        double handle = 4.0 / 3 * Math.Tan(sweep / count / 4);
        Point2D at = from;
        for (int i = 1; i <= count; i++)
        {
            Point2D next = i == count ? to : Transform2D.RotationRaw(centre, Direction.FromRadians(sweep * i / count)).Apply(from);
            segments.Add(PathSegment.FromCubic(new CubicBezier(at, at + (Left(at - centre) * handle), next - (Left(next - centre) * handle), next)));
            at = next;
        }
    }

    private static Vector2D Left(in Vector2D vector) => new(-vector.YMm, vector.XMm);
}
