using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Intersections against the reference vectors: exact rational algebra, every row checked by a second program.</summary>
public class IntersectionVectorTests
{
    private readonly record struct Expected(double T, double U, double SinAngle);

    [Fact]
    public void CubicCubic_ReferenceSet1_AllFoundAndNoMore()
    {
        VectorFile pairs = VectorFile.Read("curve_curve_pairs.csv");
        VectorFile hits = VectorFile.Read("curve_curve_hits.csv");
        Assert.True(pairs.Count >= 30);
        for (int i = 0; i < pairs.Count; i++)
        {
            string id = pairs.Text(i, "id");
            List<Expected> expected = hits.RowsWith("id", id)
                .Select(r => new Expected(hits.Number(r, "t_a"), hits.Number(r, "t_b"), hits.Number(r, "sin_angle"))).ToList();
            Assert.Equal((int)pairs.Number(i, "n"), expected.Count);
            CheckBothWays(id, pairs.Cubic(i, "a0x"), pairs.Cubic(i, "b0x"), expected);
        }
    }

    [Fact]
    public void CubicCubic_ReferenceSet2_AllFoundAndNoMore()
    {
        VectorFile pairs = VectorFile.Read("set-2/pairs.csv");
        VectorFile hits = VectorFile.Read("set-2/pair_points.csv");
        for (int i = 0; i < pairs.Count; i++)
        {
            string id = pairs.Text(i, "pair");
            CubicBezier a = pairs.Cubic(i, "Ax0");
            CubicBezier b = pairs.Cubic(i, "Bx0");
            List<Expected> expected = hits.RowsWith("pair", id)
                .Select(r => new Expected(hits.Number(r, "tA"), hits.Number(r, "tB"), hits.Number(r, "sin_angle"))).ToList();
            if (pairs.Number(i, "overlap") == 1)
            {
                CurveIntersections found = a.IntersectionsWith(b);
                Assert.Equal(0, found.Count);
                Assert.Equal(1, found.OverlapCount);
                Assert.Equal(0, found.OverlapAt(0).FirstFrom, 1e-9);
                Assert.Equal(1, found.OverlapAt(0).FirstTo, 1e-9);
                continue;
            }

            CheckBothWays(id, a, b, expected);
        }
    }

    [Fact]
    public void CubicSegment_ReferenceSet1_AllFoundAndNoMore()
    {
        VectorFile pairs = VectorFile.Read("line_curve_pairs.csv");
        VectorFile hits = VectorFile.Read("line_curve_hits.csv");
        for (int i = 0; i < pairs.Count; i++)
        {
            string id = pairs.Text(i, "id");
            CubicBezier curve = pairs.Cubic(i, "p0x");
            var line = new LineSegment(pairs.Point(i, "l0x", "l0y"), pairs.Point(i, "l1x", "l1y"));
            List<Expected> expected = hits.RowsWith("id", id)
                .Select(r => new Expected(hits.Number(r, "t_curve"), hits.Number(r, "u_line"), hits.Number(r, "sin_angle"))).ToList();
            Check(id, PathSegment.FromCubic(curve), curve.IntersectionsWith(line), expected, 1);
            Check(
                id + " swapped",
                PathSegment.FromLine(line),
                line.IntersectionsWith(curve),
                expected.Select(e => new Expected(e.U, e.T, e.SinAngle)).OrderBy(e => e.T).ToList(),
                1);
        }
    }

    [Fact]
    public void CubicLine_ReferenceSet2_AllFoundAndNoMore()
    {
        VectorFile pairs = VectorFile.Read("set-2/lines.csv");
        VectorFile hits = VectorFile.Read("set-2/line_points.csv");
        for (int i = 0; i < pairs.Count; i++)
        {
            string id = pairs.Text(i, "line");
            CubicBezier curve = pairs.Cubic(i, "x0");
            Point2D from = pairs.Point(i, "lx0", "ly0");
            Point2D to = pairs.Point(i, "lx1", "ly1");
            List<int> rows = hits.RowsWith("line", id);
            List<Expected> all = rows.Select(r => new Expected(hits.Number(r, "t"), hits.Number(r, "u"), hits.Number(r, "sin_angle"))).ToList();
            List<Expected> within = all.Where((_, k) => hits.Text(rows[k], "in_segment") == "1").ToList();
            double lengthMm = from.DistanceMm(to);
            Check(id + " segment", PathSegment.FromCubic(curve), curve.IntersectionsWith(new LineSegment(from, to)), within, 1);
            Check(id, PathSegment.FromCubic(curve), curve.IntersectionsWith(Line.Through(from, to)), all, lengthMm);
        }
    }

    private static void CheckBothWays(string id, in CubicBezier a, in CubicBezier b, List<Expected> expected)
    {
        Check(id, PathSegment.FromCubic(a), a.IntersectionsWith(b), expected, 1);
        List<Expected> swapped = expected.Select(e => new Expected(e.U, e.T, e.SinAngle)).OrderBy(e => e.T).ToList();
        Check(id + " swapped", PathSegment.FromCubic(b), b.IntersectionsWith(a), swapped, 1);

        List<Expected> reversed = expected.Select(e => new Expected(1 - e.T, e.U, e.SinAngle)).OrderBy(e => e.T).ToList();
        Check(id + " reversed", PathSegment.FromCubic(a.Reversed()), a.Reversed().IntersectionsWith(b), reversed, 1);
    }

    private static void Check(string id, in PathSegment first, in CurveIntersections found, List<Expected> expected, double secondUnit)
    {
        CurveIntersections points = found;
        string Describe(int k) => $"({points[k].FirstParameter:R}, {points[k].SecondParameter:R}, {points[k].Angle.Degrees:0.000000})";
        string all = string.Join("; ", Enumerable.Range(0, found.Count).Select(Describe));
        Assert.True(found.Count == expected.Count, $"{id}: found {found.Count} of {expected.Count}: {all}");
        Assert.Equal(0, found.OverlapCount);
        for (int k = 0; k < expected.Count; k++)
        {
            Expected e = expected[k];
            Intersection hit = found[k];

            // What rounding of the coordinates does is magnified by a shallow angle; at a tangency only its root is known.
            double rounding = 1e-13 / Math.Max(e.SinAngle, 1e-6);
            double allowed = e.SinAngle == 0 ? 1e-7 : Math.Max(1e-12, e.SinAngle < 1e-6 ? 1e-16 / e.SinAngle : rounding);
            Assert.True(Math.Abs(hit.FirstParameter - e.T) <= allowed, $"{id} {k}: first {hit.FirstParameter:R}, reference {e.T:R}");
            Assert.True(Math.Abs((hit.SecondParameter / secondUnit) - e.U) <= allowed, $"{id} {k}: second {hit.SecondParameter:R}, reference {e.U * secondUnit:R}");
            Assert.Equal(e.SinAngle, Math.Sin(hit.Angle.Radians), 1e-6);
            Assert.True(e.SinAngle > 0 || hit.IsTouching, $"{id} {k}: a tangency touches");
        }

    }
}
