using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using UnitsNet;
using Nts = NetTopologySuite.Geometries;

namespace Pattern.Core.Tests.Geometry;

public class ContainmentTests
{
    private static readonly CurvePath Square =
        CurvePath.From(new(0, 0)).LineTo(new(10, 0)).LineTo(new(10, 10)).LineTo(new(0, 10)).Closed();

    [Theory]
    [InlineData(5, 5, Containment.Inside)]
    [InlineData(5, 0, Containment.Boundary)]
    [InlineData(0, 0, Containment.Boundary)]
    [InlineData(10, 10, Containment.Boundary)]
    [InlineData(5, 1e-10, Containment.Boundary)]
    [InlineData(5, 1e-8, Containment.Inside)]
    [InlineData(5, -1e-8, Containment.Outside)]
    [InlineData(-5, 0, Containment.Outside)]
    [InlineData(-5, 10, Containment.Outside)]
    [InlineData(15, 5, Containment.Outside)]
    public void ContainmentOf_Square_IsRight(double x, double y, Containment expected)
    {
        Assert.Equal(expected, Square.ContainmentOf(new(x, y)));
        Assert.Equal(expected, Square.Reversed().ContainmentOf(new(x, y)));
    }

    [Fact]
    public void ContainmentOf_Circle_TrueToTheArc()
    {
        foreach (double degrees in new[] { 360.0, -360.0 })
        {
            CurvePath circle = CurvePath.From(new Point2D(10, 0)).ArcAround(Point2D.Origin, Angle.FromDegrees(degrees)).Closed();
            for (int i = 0; i < 48; i++)
            {
                // Headings that hit the ends of the pieces and the level of the centre exactly are among these.
                double a = i * Math.PI / 24;
                Point2D At(double r) => new(r * Math.Cos(a), r * Math.Sin(a));
                Assert.Equal(Containment.Inside, circle.ContainmentOf(At(10 - 1e-7)));
                Assert.Equal(Containment.Boundary, circle.ContainmentOf(At(10)));
                Assert.Equal(Containment.Outside, circle.ContainmentOf(At(10 + 1e-7)));
                Assert.Equal(Math.Sign(degrees), circle.WindingNumberAround(At(3)));
            }

            Assert.Equal(Math.Sign(degrees), circle.WindingNumberAround(Point2D.Origin));
        }
    }

    [Fact]
    public void WindingNumberAround_FigureEightAndDouble_CountsTurns()
    {
        CurvePath eight = CurvePath.From(new(0, 0)).LineTo(new(10, 10)).LineTo(new(10, 0)).LineTo(new(0, 10)).Closed();
        CurvePath twice = CurvePath.From(new Point2D(10, 0)).ArcAround(Point2D.Origin, Angle.FromDegrees(360)).ArcAround(Point2D.Origin, Angle.FromDegrees(360)).Closed();

        Assert.Equal(-1, eight.WindingNumberAround(new(8, 5)));
        Assert.Equal(1, eight.WindingNumberAround(new(2, 5)));
        Assert.Equal(0, eight.WindingNumberAround(new(5, 2)));
        Assert.Equal(2, twice.WindingNumberAround(new(1, 1)));
        Assert.Throws<InvalidOperationException>(() => CurvePath.From(new(0, 0)).LineTo(new(10, 0)).ContainmentOf(new(1, 1)));
    }

    [Fact]
    public void ContainmentOf_PointsOfCurve_AreBoundary()
    {
        var blob = new CubicBezier(0, 0, 80, -40, 90, 120, -30, 60);
        CurvePath path = CurvePath.FromCubic(blob).Closed();
        for (int i = 0; i <= 100; i++)
        {
            double t = i / 100.0;
            Point2D on = blob.PointAtRaw(t);
            Vector2D heading = blob.DerivativeAtRaw(t);
            double unit = 1e-7 / heading.LengthMm;
            Assert.Equal(Containment.Boundary, path.ContainmentOf(on));
            if (i is > 0 and < 100)
            {
                Assert.Equal(Containment.Inside, path.ContainmentOf(new(on.XMm - (unit * heading.YMm), on.YMm + (unit * heading.XMm))));
                Assert.Equal(Containment.Outside, path.ContainmentOf(new(on.XMm + (unit * heading.YMm), on.YMm - (unit * heading.XMm))));
            }
        }
    }

    // NetTopologySuite on fine chords, where the point is clear of the path; the winding number also by adding up angles.
    [Property(MaxTest = 150)]
    public void ContainmentOf_AnyPath_AgreesWithAnglesAndNetTopologySuite(int seed)
    {
        CurvePath path = HostileCurves.Path(seed, out Random random).Closed();
        var points = new List<Point2D>();
        foreach (PathSegment segment in path.Segments)
        {
            for (int i = 0; i < 400; i++)
            {
                points.Add(segment.PointAtRaw(i / 400.0));
            }
        }

        points.Add(points[0]);
        bool isSimple = path.IsSimple();
        var ring = new Nts.LinearRing(points.ConvertAll(p => new Nts.Coordinate(p.XMm, p.YMm)).ToArray());
        for (int k = 0; k < 40; k++)
        {
            var query = new Point2D((random.NextDouble() * 300) - 150, (random.NextDouble() * 300) - 150);
            if (k < 10)
            {
                // On the level of a joint, where counting crossings goes wrong if it can.
                query = new Point2D(query.XMm, path.Segments[k % path.Segments.Count].Start.YMm);
            }

            if (path.ClosestTo(query).DistanceMm < 0.1)
            {
                continue;
            }

            double turned = 0;
            for (int i = 0; i + 1 < points.Count; i++)
            {
                turned += Math.Atan2((points[i] - query).CrossMm2(points[i + 1] - query), (points[i] - query).DotMm2(points[i + 1] - query));
            }

            int expected = (int)Math.Round(turned / (2 * Math.PI));
            Assert.Equal(expected, path.WindingNumberAround(query));
            Assert.Equal(expected != 0, path.ContainmentOf(query) == Containment.Inside);
            if (isSimple)
            {
                bool inside = new Nts.Polygon(ring).Contains(new Nts.Point(query.XMm, query.YMm));
                Assert.Equal(inside, path.ContainmentOf(query) == Containment.Inside);
            }
        }
    }
}
