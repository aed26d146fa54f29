using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

public class ClosestPointTests
{
    // Reference vectors, set 1: exact rational algebra; distances good to well under 1e-12 relative.
    [Fact]
    public void ClosestTo_ReferenceSet1_AgreesOnDistanceAndPoint()
    {
        VectorFile file = VectorFile.Read("cubics.csv");
        Assert.True(file.Count >= 100);
        for (int i = 0; i < file.Count; i++)
        {
            CubicBezier curve = file.Cubic(i, "p0x");
            for (int k = 1; k <= 3; k++)
            {
                Point2D query = file.Point(i, $"q{k}_x", $"q{k}_y");
                double gap = file.Number(i, $"q{k}_gap");
                Check(file.Text(i, "id"), curve, query, file.Number(i, $"q{k}_dist"), file.Point(i, $"q{k}_px", $"q{k}_py"), gap);
            }
        }
    }

    // Reference vectors, set 2: 50-digit arithmetic.
    [Fact]
    public void ClosestTo_ReferenceSet2_AgreesOnDistanceAndPoint()
    {
        VectorFile curves = VectorFile.Read("set-2/curves.csv");
        VectorFile file = VectorFile.Read("set-2/closest.csv");
        var byId = new Dictionary<string, int>();
        for (int i = 0; i < curves.Count; i++)
        {
            byId.Add(curves.Text(i, "id"), i);
        }

        for (int i = 0; i < file.Count; i++)
        {
            string id = file.Text(i, "id");
            Check(
                id + " query " + file.Text(i, "query"),
                curves.Cubic(byId[id], "x0"),
                file.Point(i, "qx", "qy"),
                file.Number(i, "distance"),
                file.Point(i, "px", "py"),
                file.Number(i, "tie_gap"));
        }
    }

    private static void Check(string id, in CubicBezier curve, in Point2D query, double distance, in Point2D nearest, double gap)
    {
        CurveLocation found = curve.ClosestTo(query);
        double magnitude = Math.Max(curve.MagnitudeMm, Math.Max(Math.Abs(query.XMm), Math.Abs(query.YMm)));
        double rounding = 8e-16 * magnitude;
        Assert.True(Math.Abs(found.DistanceMm - distance) <= rounding, $"{id}: distance {found.DistanceMm:R}, reference {distance:R}");

        // Where the distance hardly changes along the curve the point is known no better than the root of that.
        if (double.IsNaN(gap) || gap > 1e-6 * magnitude)
        {
            double off = found.Point.DistanceMm(nearest);
            double allowed = Math.Max(1e-11 * magnitude, Math.Sqrt(2 * 1e-15 * magnitude * Math.Max(distance, 1e-9 * magnitude)));
            Assert.True(off <= allowed, $"{id}: point is {off:R} away, allowed {allowed:R}");
        }
    }

    [Property(MaxTest = 300)]
    public void ClosestTo_AnyCubic_NeverFartherThanAThousandSamples(int seed)
    {
        CubicBezier curve = HostileCurves.Cubic(seed, out Random random);
        var query = new Point2D(curve.X0 + (random.NextDouble() * 200) - 100, curve.Y0 + (random.NextDouble() * 200) - 100);

        CurveLocation found = curve.ClosestTo(query);

        double slack = 4e-16 * Math.Max(curve.MagnitudeMm, Math.Abs(query.XMm) + Math.Abs(query.YMm));
        for (int i = 0; i <= 1000; i++)
        {
            Assert.True(found.DistanceMm <= curve.PointAtRaw(i / 1000.0).DistanceMm(query) + slack);
        }

        Assert.InRange(found.Parameter, 0, 1);
    }

    [Property(MaxTest = 100)]
    public void ClosestTo_AnyPath_NeverFartherThanItsSamples(int seed)
    {
        CurvePath path = HostileCurves.Path(seed, out Random random);
        var query = new Point2D((random.NextDouble() * 400) - 200, (random.NextDouble() * 400) - 200);

        PathLocation found = path.ClosestTo(query);

        foreach (PathSegment segment in path.Segments)
        {
            for (int i = 0; i <= 200; i++)
            {
                Assert.True(found.DistanceMm <= segment.PointAtRaw(i / 200.0).DistanceMm(query) + 1e-12);
            }
        }

        Assert.Equal(found.Point, path.Segments[found.SegmentIndex].PointAtRaw(found.Parameter));
    }

    // Closed form: the foot of the perpendicular on a parabola from a point of its axis above the focus lies to the side.
    [Fact]
    public void ClosestTo_AxisOfParabola_FindsTheClosedForm()
    {
        // y = x^2 for x from -1 to 1; from (0, 1) the nearest points are (+-1/sqrt 2, 1/2), at sqrt(3)/2.
        CubicBezier parabola = CubicBezier.FromQuadratic(new(-1, 1), new(0, -1), new(1, 1));

        CurveLocation found = parabola.ClosestTo(new Point2D(0, 1));

        Assert.Equal(Math.Sqrt(3) / 2, found.DistanceMm, 1e-15);
        Assert.Equal(Math.Sqrt(0.5), Math.Abs(found.Point.XMm), 1e-14);
    }

    // The centre of curvature makes a root of the quintic threefold.
    [Fact]
    public void ClosestTo_CentreOfCurvature_FindsTheVertex()
    {
        CubicBezier parabola = CubicBezier.FromQuadratic(new(-1, 1), new(0, -1), new(1, 1));

        CurveLocation found = parabola.ClosestTo(new Point2D(0, 0.5));

        Assert.Equal(0.5, found.DistanceMm, 1e-15);
        Assert.Equal(0, found.Point.XMm, 1e-4);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-200)]
    [InlineData(1e-80)]
    [InlineData(1e80)]
    [InlineData(1e150)]
    public void ClosestTo_AnyScale_StaysFinite(double scale)
    {
        var curve = new CubicBezier(0, 0, scale, 2 * scale, 2 * scale, -scale, 3 * scale, scale);

        CurveLocation found = curve.ClosestTo(new Point2D(scale, scale));

        Assert.InRange(found.DistanceMm, 0, scale);
    }

    [Fact]
    public void ClosestTo_PointCurve_IsThatPoint()
    {
        CurveLocation found = new CubicBezier(3, 4, 3, 4, 3, 4, 3, 4).ClosestTo(Point2D.Origin);

        Assert.Equal(5, found.Distance.Millimeters, 1e-15);
        Assert.Equal(new Point2D(3, 4), found.Point);
    }

    [Fact]
    public void ClosestTo_Arc_InsideOutsideAndBeyondTheEnds()
    {
        var arc = CircularArc.FromCentre(Point2D.Origin, Length.FromMillimeters(10), Angle.FromDegrees(350), Angle.FromDegrees(40));

        Assert.Equal(5, arc.ClosestTo(new Point2D(15, 0)).DistanceMm, 1e-14);
        Assert.Equal(0.25, arc.ClosestTo(new Point2D(4, 0)).Parameter, 1e-14);
        Assert.Equal(1, arc.ClosestTo(new Point2D(0, 10)).Parameter);
        Assert.Equal(0, arc.ClosestTo(new Point2D(0, -10)).Parameter);
        Assert.Equal(10, arc.ClosestTo(Point2D.Origin).DistanceMm, 1e-14);
        Assert.Equal(0.25, arc.Reversed().ClosestTo(new Point2D(15, 15 * Math.Tan(Math.PI / 9))).Parameter, 1e-14);
    }

    [Fact]
    public void ClosestTo_LineSegment_FootAndEnds()
    {
        var line = LineSegment.Between(new Point2D(0, 0), new Point2D(30, 40));

        Assert.Equal(0.5, line.ClosestTo(new Point2D(15 - 4, 20 + 3)).Parameter, 1e-15);
        Assert.Equal(5, line.ClosestTo(new Point2D(15 - 4, 20 + 3)).DistanceMm, 1e-14);
        Assert.Equal(0, line.ClosestTo(new Point2D(-3, 0)).Parameter);
        Assert.Equal(1, line.ClosestTo(new Point2D(31, 41)).Parameter);
        Assert.Equal(5, LineSegment.Between(new Point2D(3, 4), new Point2D(3, 4)).ClosestTo(Point2D.Origin).DistanceMm, 1e-15);
    }

#if !PATTERN_NETSTANDARD
    [Fact]
    public void ClosestTo_AllocatesNothing()
    {
        CubicBezier curve = HostileCurves.Cubic(7, out _);
        CurvePath path = HostileCurves.Path(7, out _);
        double sum = curve.ClosestTo(Point2D.Origin).DistanceMm + path.ClosestTo(Point2D.Origin).DistanceMm;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            sum += curve.ClosestTo(new Point2D(i, i)).DistanceMm + path.ClosestTo(new Point2D(i, -i)).DistanceMm;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }
#endif
}
