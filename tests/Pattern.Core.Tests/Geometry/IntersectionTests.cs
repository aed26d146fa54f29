using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

public class IntersectionTests
{
    private static readonly CubicBezier Wave = new(0, 0, 60, 90, 120, -90, 180, 10);

    // Independent of the kernel: chords of both curves that cross well within themselves must have a reported point close by.
    [Property(MaxTest = 300)]
    public void Segments_AnyKinds_NoCrossingOfChordsIsMissed(int seed)
    {
        var random = new Random(seed);
        PathSegment a = AnySegment(random);
        PathSegment b = AnySegment(random);

        CurveIntersections found = a.IntersectionsWith(b);

        const int Chords = 200;
        for (int i = 0; i < Chords; i++)
        {
            Point2D a0 = a.PointAtRaw((double)i / Chords);
            Point2D a1 = a.PointAtRaw((double)(i + 1) / Chords);
            for (int k = 0; k < Chords; k++)
            {
                Point2D b0 = b.PointAtRaw((double)k / Chords);
                Point2D b1 = b.PointAtRaw((double)(k + 1) / Chords);
                if (CrossInside(a0, a1, b0, b1))
                {
                    Point2D near = a0.MidpointTo(a1);
                    double reach = 2 * (a0.DistanceMm(a1) + b0.DistanceMm(b1));
                    bool known = Enumerable.Range(0, found.Count).Any(h => found[h].Point.DistanceMm(near) <= reach)
                        || found.OverlapCount > 0;
                    Assert.True(known, $"seed {seed}: chords cross at {near}, {found.Count} points found");
                }
            }
        }
    }

    [Property(MaxTest = 500)]
    public void Segments_AnyKinds_PointsLieOnBothAndOrderDoesNotMatter(int seed)
    {
        var random = new Random(seed);
        PathSegment a = AnySegment(random);
        PathSegment b = AnySegment(random);

        CurveIntersections found = a.IntersectionsWith(b);
        CurveIntersections swapped = b.IntersectionsWith(a);

        Assert.Equal(found.Count, swapped.Count);
        Assert.Equal(found.OverlapCount, swapped.OverlapCount);
        for (int i = 0; i < found.Count; i++)
        {
            Intersection hit = found[i];
            Assert.InRange(hit.FirstParameter, 0, 1);
            Assert.InRange(hit.SecondParameter, 0, 1);
            Assert.True(a.PointAtRaw(hit.FirstParameter).DistanceMm(b.PointAtRaw(hit.SecondParameter)) <= 1.001e-9);
            Assert.True(i == 0 || hit.FirstParameter >= found[i - 1].FirstParameter);
            Assert.InRange(hit.Angle.Degrees, 0, 90.0000001);
        }
    }

    [Property(MaxTest = 200)]
    public void Segments_ScaledAndMoved_MeetAsOften(int seed)
    {
        var random = new Random(seed);
        CubicBezier a = HostileCurves.Cubic(random, 100);
        CubicBezier b = HostileCurves.Cubic(random, 100);
        int count = a.IntersectionsWith(b).Count;

        // Powers of two move no digit.
        foreach (double scale in new[] { 1.0 / (1 << 20), 1024.0 })
        {
            Assert.Equal(count, Scaled(a, scale).IntersectionsWith(Scaled(b, scale)).Count);
        }
    }

    [Property(MaxTest = 100)]
    public void Cubics_PartsOfOneCurve_OverlapWhereTheyShould(int seed)
    {
        var random = new Random(seed);
        double N() => (random.NextDouble() * 200) - 100;
        var curve = new CubicBezier(N(), N(), N(), N(), N(), N(), N(), N());
        CubicBezier a = curve.SubCurveRaw(0, 0.6);
        CubicBezier b = curve.SubCurveRaw(0.3, 1);
        if (random.Next(2) == 0)
        {
            b = b.Reversed();
        }

        CurveIntersections found = a.IntersectionsWith(b);

        Assert.Equal(1, found.OverlapCount);
        Assert.Equal(0.5, found.OverlapAt(0).FirstFrom, 1e-6);
        Assert.Equal(1, found.OverlapAt(0).FirstTo, 1e-6);
    }

    [Fact]
    public void Cubics_EndToEndSmooth_TouchOnceThere()
    {
        Wave.Split(0.4, out CubicBezier before, out CubicBezier after);

        CurveIntersections found = before.IntersectionsWith(after);

        Assert.Equal(1, found.Count);
        Assert.Equal(0, found.OverlapCount);
        Assert.Equal(1, found[0].FirstParameter);
        Assert.Equal(0, found[0].SecondParameter);
        Assert.True(found[0].IsTouching);
    }

    [Fact]
    public void Cubics_SideBySide_NearMissIsNone()
    {
        foreach (double gap in new[] { 1.0, 1e-3, 1e-6, 1e-7 })
        {
            Assert.True(Wave.IntersectionsWith(Wave.MovedRaw(0, gap)).Count <= 2, "moved up, a wave meets itself near its turns at most");
            var flat = new CubicBezier(0, 0, 40, 10, 80, 10, 120, 0);
            Assert.True(flat.IntersectionsWith(new CubicBezier(0, gap, 40, 10 + gap, 80, 10 + gap, 120, gap)).IsEmpty);
        }
    }

    [Fact]
    public void Cubics_OsculatingAtOnePoint_TouchOnce()
    {
        // y = x^2 and y = x^2 + x^3 from -0.5 to 0.5: threefold contact at 0, no other.
        CubicBezier square = Graph(x => x * x, -0.5, 0.5);
        CubicBezier cube = Graph(x => (x * x) + (x * x * x), -0.5, 0.5);

        CurveIntersections found = square.IntersectionsWith(cube);

        Assert.Equal(1, found.Count);
        Assert.Equal(0, found[0].Point.XMm, 2e-3);
    }

    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-6)]
    [InlineData(1e-8)]
    public void Cubics_AlmostTangent_BothCrossingsFound(double depth)
    {
        CubicBezier square = Graph(x => x * x, -1, 1);
        CubicBezier cap = Graph(x => (2 * depth) - (x * x), -1, 1);

        CurveIntersections found = square.IntersectionsWith(cap);

        Assert.Equal(2, found.Count);
        Assert.Equal(-Math.Sqrt(depth), found[0].Point.XMm, 1e-3 * Math.Sqrt(depth));
        Assert.Equal(Math.Sqrt(depth), found[1].Point.XMm, 1e-3 * Math.Sqrt(depth));
    }

    [Fact]
    public void Cubics_StraightTurningBack_CrossedOnEachWay()
    {
        // Runs 0, 90, 0: passes x = 30 twice.
        var there = new CubicBezier(0, 0, 120, 0, 120, 0, 0, 0);
        var across = new CubicBezier(30, -50, 30, -10, 30, 10, 30, 50);

        CurveIntersections found = there.IntersectionsWith(across);

        Assert.Equal(2, found.Count);
        Assert.Equal(1, found[0].FirstParameter + found[1].FirstParameter, 1e-12);
    }

    [Fact]
    public void Cubics_StraightOddSpeed_OverlapOnTheCommonStretch()
    {
        var slow = new CubicBezier(0, 0, 3, 3, 20, 20, 100, 100);
        var fast = new CubicBezier(40, 40, 160, 160, 170, 170, 180, 180);

        CurveIntersections found = slow.IntersectionsWith(fast);

        Assert.Equal(1, found.OverlapCount);
        Assert.Equal(0, found.Count);
        Assert.Equal(40, slow.PointAtRaw(found.OverlapAt(0).FirstFrom).XMm, 1e-8);
        Assert.Equal(1, found.OverlapAt(0).FirstTo, 1e-9);
        Assert.Equal(0, found.OverlapAt(0).SecondFrom, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Cubics_OfNoLength_AreAnswered(int kind)
    {
        var point = new CubicBezier(90, 5, 90, 5, 90, 5, 90, 5);
        CubicBezier other = kind == 0 ? point : Wave;

        CurveIntersections found = point.IntersectionsWith(other);

        Assert.Equal(Wave.PointAtRaw(0.5).DistanceMm(new Point2D(90, 5)) < 1e-9 || kind == 0 ? 1 : 0, found.Count);
    }

    [Fact]
    public void Arcs_CrossTouchOverlap()
    {
        CircularArc Arc(double x, double radius, double from, double sweep) => new(x, 0, radius, from * Math.PI / 180, sweep * Math.PI / 180);

        CurveIntersections cross = Arc(0, 5, -90, 180).IntersectionsWith(Arc(6, 5, 90, 180));
        CurveIntersections touch = Arc(0, 5, -90, 180).IntersectionsWith(Arc(10, 5, 90, 180));
        CurveIntersections inner = Arc(0, 5, -90, 180).IntersectionsWith(Arc(2, 3, -90, 180));
        CurveIntersections overlap = Arc(0, 5, 0, 90).IntersectionsWith(Arc(0, 5, 120, -90));
        CurveIntersections apart = Arc(0, 5, -90, 180).IntersectionsWith(Arc(11, 5, 90, 180));

        Assert.Equal(2, cross.Count);
        Assert.Equal(3, cross[0].Point.XMm, 1e-14);
        Assert.Equal(-4, cross[0].Point.YMm, 1e-14);
        Assert.Equal(1, touch.Count);
        Assert.True(touch[0].IsTouching);
        Assert.Equal(1, inner.Count);
        Assert.Equal(5, inner[0].Point.XMm, 1e-14);
        Assert.Equal(1, overlap.OverlapCount);
        Assert.Equal(1.0 / 3, overlap.OverlapAt(0).FirstFrom, 1e-9);
        Assert.True(apart.IsEmpty);
    }

    [Fact]
    public void ArcAndCubic_SixCrossings_AllFound()
    {
        // An S wound tightly through a circle; counted by sampling |B| - r.
        var s = new CubicBezier(-60, -10, 190, 75, -190, -75, 60, 10);
        var circle = new CircularArc(0, 0, 21, 0, 2 * Math.PI);
        int changes = 0;
        double last = 0;
        for (int i = 0; i <= 100_000; i++)
        {
            double value = s.PointAtRaw(i / 1e5).DistanceMm(Point2D.Origin) - 21;
            changes += value * last < 0 ? 1 : 0;
            last = value;
        }

        CurveIntersections found = s.IntersectionsWith(circle);

        Assert.Equal(changes, found.Count);
        for (int i = 0; i < found.Count; i++)
        {
            Assert.Equal(21, found[i].Point.DistanceMm(Point2D.Origin), 1e-12);
        }
    }

    [Fact]
    public void LineAndArc_TangentAndThrough()
    {
        var arc = new CircularArc(0, 0, 5, 0, Math.PI);

        Assert.Equal(1, arc.IntersectionsWith(Line.Horizontal(new Point2D(0, 5))).Count);
        Assert.Equal(2, arc.IntersectionsWith(Line.Horizontal(new Point2D(0, 3))).Count);
        Assert.Equal(0, arc.IntersectionsWith(Line.Horizontal(new Point2D(0, -3))).Count);
        Assert.Equal(1, arc.IntersectionsWith(Line.Vertical(new Point2D(3, 0))).Count);
        Assert.Equal(4, arc.IntersectionsWith(new LineSegment(new(3, 0), new(3, 10)))[0].Point.YMm, 1e-14);
        Assert.Equal(0, arc.IntersectionsWith(new LineSegment(new(3, 0), new(3, 3.9))).Count);
    }

    [Fact]
    public void Lines_CrossTouchOverlapMiss()
    {
        LineSegment L(double x0, double y0, double x1, double y1) => new(new(x0, y0), new(x1, y1));

        Assert.Equal(0.5, L(0, 0, 10, 10).IntersectionsWith(L(0, 10, 10, 0))[0].FirstParameter, 1e-15);
        Assert.True(L(0, 0, 10, 0).IntersectionsWith(L(5, 0, 5, 5))[0].IsTouching);
        Assert.Equal(1, L(0, 0, 10, 0).IntersectionsWith(L(10, 0, 20, 0)).Count);
        Assert.Equal(0, L(0, 0, 10, 0).IntersectionsWith(L(10, 0, 20, 0)).OverlapCount);
        Assert.Equal(0.4, L(0, 0, 10, 0).IntersectionsWith(L(20, 0, 4, 0)).OverlapAt(0).FirstFrom, 1e-9);
        Assert.True(L(0, 0, 10, 0).IntersectionsWith(L(0, 1e-6, 10, 1e-6)).IsEmpty);
        Assert.Equal(1, L(0, 0, 10, 0).IntersectionsWith(L(0, 1e-6, 10, 1e-6), Length.FromMillimeters(1e-5)).OverlapCount);
    }

    // Closed form: x = t^3 - t, y = t^2 crosses itself at t = -1 and 1.
    [Fact]
    public void TryFindSelfIntersection_ClosedForm_Found()
    {
        // From t = -2 to 2: Bernstein points by blossoming.
        static double X(double a, double b, double c) => (a * b * c) - ((a + b + c) / 3);
        static double Y(double a, double b, double c) => ((a * b) + (b * c) + (c * a)) / 3;
        const double L = -2, R = 2;
        var curve = new CubicBezier(X(L, L, L), Y(L, L, L), X(L, L, R), Y(L, L, R), X(L, R, R), Y(L, R, R), X(R, R, R), Y(R, R, R));

        Assert.True(curve.TryFindSelfIntersection(out Intersection crossing));
        Assert.Equal(0.25, crossing.FirstParameter, 1e-14);
        Assert.Equal(0.75, crossing.SecondParameter, 1e-14);
        Assert.Equal(1, crossing.Point.YMm, 1e-14);
        Assert.False(Wave.TryFindSelfIntersection(out _));
    }

    [Property(MaxTest = 300)]
    public void TryFindSelfIntersection_AnyCubic_AgreesWithChords(int seed)
    {
        CubicBezier curve = HostileCurves.Cubic(seed, out _);
        bool found = curve.TryFindSelfIntersection(out Intersection crossing);
        if (found)
        {
            Assert.True(crossing.FirstParameter < crossing.SecondParameter);
            Assert.Equal(0, curve.PointAtRaw(crossing.FirstParameter).DistanceMm(curve.PointAtRaw(crossing.SecondParameter)), 1e-9);
            return;
        }

        if (curve.IsStraight(1e-6, out _))
        {
            return;
        }

        const int Chords = 150;
        for (int i = 0; i < Chords; i++)
        {
            for (int k = i + 2; k < Chords; k++)
            {
                Assert.False(
                    CrossInside(At(i), At(i + 1), At(k), At(k + 1)),
                    $"seed {seed}: chords {i} and {k} cross");
            }
        }

        Point2D At(int i) => curve.PointAtRaw((double)i / Chords);
    }

    [Fact]
    public void Paths_CrossingAtAJoint_CountedOnce()
    {
        CurvePath corner = CurvePath.From(new(0, 0)).LineTo(new(10, 10)).LineTo(new(20, 0));
        CurvePath through = CurvePath.From(new(10, 0)).LineTo(new(10, 10)).LineTo(new(10, 20));

        PathIntersections found = corner.IntersectionsWith(through);

        PathIntersection only = Assert.Single(found.Points);
        Assert.Equal(1, only.FirstSegment);
        Assert.Equal(0, only.FirstParameter);
        Assert.Equal(1, only.SecondSegment);
    }

    [Fact]
    public void IsSimple_Outlines_RightAnswers()
    {
        CurvePath square = CurvePath.From(new(0, 0)).LineTo(new(10, 0)).LineTo(new(10, 10)).LineTo(new(0, 10)).Closed();
        CurvePath bow = CurvePath.From(new(0, 0)).LineTo(new(10, 10)).LineTo(new(10, 0)).LineTo(new(0, 10)).Closed();
        CurvePath touching = CurvePath.From(new(0, 0)).LineTo(new(10, 0)).LineTo(new(10, 10)).LineTo(new(5, 0)).LineTo(new(0, 10)).Closed();
        CurvePath folded = CurvePath.From(new(0, 0)).LineTo(new(10, 0)).LineTo(new(4, 0)).LineTo(new(4, 5));
        CurvePath circle = CurvePath.From(new(5, 0)).ArcAround(Point2D.Origin, Angle.FromDegrees(360)).Closed();
        CurvePath lens = CurvePath.From(P(0, 0)).CurveTo(P(30, 20), P(60, 20), P(90, 0)).CurveTo(P(60, -20), P(30, -20), P(0, 0)).Closed();
        CurvePath loop = CurvePath.From(P(0, 0)).CurveTo(P(100, 60), P(-60, 60), P(40, 0));
        CurvePath turnsBack = CurvePath.From(P(0, 0)).CurveTo(P(100, 0), P(100, 0), P(0, 0));
        CurvePath smooth = CurvePath.From(P(0, 0)).CurveTo(P(10, 0), P(20, 5), P(30, 5)).CurveTo(P(40, 5), P(50, 0), P(60, 0));

        Assert.True(square.IsSimple());
        Assert.False(bow.IsSimple());
        Assert.Single(bow.SelfIntersections().Points);
        Assert.Equal(new Point2D(5, 5), bow.SelfIntersections().Points[0].Point);
        Assert.False(touching.IsSimple());
        Assert.False(folded.IsSimple());
        Assert.Single(folded.SelfIntersections().Overlaps);
        Assert.True(circle.IsSimple());
        Assert.True(lens.IsSimple());
        Assert.False(loop.IsSimple());
        Assert.False(turnsBack.IsSimple());
        Assert.True(smooth.IsSimple());
    }

    // NetTopologySuite on fine chords as the outside judge.
    [Property(MaxTest = 150)]
    public void IsSimple_AnyPath_AgreesWithNetTopologySuite(int seed)
    {
        CurvePath path = HostileCurves.Path(seed, out _);
        var points = new List<NetTopologySuite.Geometries.Coordinate>();
        foreach (PathSegment segment in path.Segments)
        {
            int chords = segment.Kind == PathSegmentKind.Line ? 1 : 160;
            for (int i = 0; i < chords; i++)
            {
                Point2D p = segment.PointAtRaw((double)i / chords);
                points.Add(new(p.XMm, p.YMm));
            }
        }

        Point2D end = path.End;
        points.Add(new(end.XMm, end.YMm));
        bool crossed = !new NetTopologySuite.Geometries.LineString(points.ToArray()).IsSimple;
        bool found = !path.IsSimple();

        // Chords blunt what is within a hair, so that only clear contacts bind in this direction.
        if (crossed)
        {
            Assert.True(found, $"seed {seed}");
        }

        Assert.Equal(found, !path.SelfIntersections().IsEmpty);
    }

#if !PATTERN_NETSTANDARD
    [Fact]
    public void Values_AllocateNothing()
    {
        CurvePath square = CurvePath.From(new(0, 0)).LineTo(new(10, 0)).LineTo(new(10, 10)).LineTo(new(0, 10)).Closed();
        var other = new CubicBezier(10, -60, 60, 60, 100, 60, 160, -60);
        int sum = Wave.IntersectionsWith(other).Count + (square.IsSimple() ? 1 : 0);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100; i++)
        {
            sum += Wave.IntersectionsWith(other).Count + Wave.IntersectionsWith(Line.Horizontal(new(0, 1))).Count + (square.IsSimple() ? 1 : 0);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 100);
    }
#endif

    private static Point2D P(double x, double y) => new(x, y);

    private static CubicBezier Scaled(in CubicBezier c, double s)
        => new(c.X0 * s, c.Y0 * s, c.X1 * s, c.Y1 * s, c.X2 * s, c.Y2 * s, c.X3 * s, c.Y3 * s);

    // The graph of a cubic polynomial: by its values and slopes at the ends (slopes exact to rounding by central difference of a cubic).
    private static CubicBezier Graph(Func<double, double> f, double from, double to)
    {
        double third = (to - from) / 3;
        double Slope(double x) => ((8 * (f(x + 0.5) - f(x - 0.5))) - (f(x + 1) - f(x - 1))) / 6;
        return new CubicBezier(
            from, f(from), from + third, f(from) + (third * Slope(from)), to - third, f(to) - (third * Slope(to)), to, f(to));
    }

    private static PathSegment AnySegment(Random random)
    {
        double N() => (random.NextDouble() * 200) - 100;
        return random.Next(4) switch
        {
            0 => PathSegment.FromLine(new LineSegment(new(N(), N()), new(N(), N()))),
            1 => PathSegment.FromArc(new CircularArc(N(), N(), 10 + (80 * random.NextDouble()), N(), (random.NextDouble() * 12) - 6)),
            _ => PathSegment.FromCubic(HostileCurves.Cubic(random, 100)),
        };
    }

    // A circle of 10 and lines along a ray: of one millimetre across it, of nothing on it, of nothing beside it.
    [Fact]
    public void IntersectionsWith_ShortLinesAtAnArc_CrossItWhereTheRayDoes()
    {
        CircularArc arc = new(0, 0, 10, -1, 2);

        CurveIntersections across = arc.IntersectionsWith(new LineSegment(new Point2D(9.5, 0), new Point2D(10.5, 0)));
        CurveIntersections on = arc.IntersectionsWith(new LineSegment(new Point2D(10, 0), new Point2D(10, 0)));
        CurveIntersections beside = arc.IntersectionsWith(new LineSegment(new Point2D(9.5, 0), new Point2D(9.5, 0)));

        Assert.Equal(1, across.Count);
        Assert.Equal(0, across[0].Point.DistanceMm(new Point2D(10, 0)), 1e-9);
        Assert.Equal(0.5, across.SecondRaw(0), 1e-9);
        Assert.True(on.Count >= 1);
        Assert.Equal(0, beside.Count);
    }

    private static bool CrossInside(in Point2D a0, in Point2D a1, in Point2D b0, in Point2D b1)
    {
        static double Side(in Point2D p, in Point2D q, in Point2D r) => ((q.XMm - p.XMm) * (r.YMm - p.YMm)) - ((q.YMm - p.YMm) * (r.XMm - p.XMm));
        double s0 = Side(a0, a1, b0), s1 = Side(a0, a1, b1), s2 = Side(b0, b1, a0), s3 = Side(b0, b1, a1);
        return Math.Max(Math.Min(s0, -s1), Math.Min(-s0, s1)) > 1e-6 && Math.Max(Math.Min(s2, -s3), Math.Min(-s2, s3)) > 1e-6;
    }
}
