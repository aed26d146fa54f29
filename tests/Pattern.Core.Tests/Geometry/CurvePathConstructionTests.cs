using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

public class CurvePathConstructionTests
{
    private static readonly Point2D[] Armhole = [P(0, 0), P(40, -8), P(75, 20), P(90, 90), P(110, 160)];

    [Fact]
    public void Through_Points_IsSmoothToTheSecondDerivative()
    {
        CurvePath path = CurvePath.Through(Armhole, Direction.Right, Direction.Up);

        Assert.Equal(4, path.Segments.Count);
        Assert.Equal(Direction.Right, path.StartDirection);
        Assert.Equal(90, path.EndDirection.Angle.Degrees, 1e-10);
        for (int i = 1; i < 4; i++)
        {
            CubicBezier before = path.Segments[i - 1].AsCubic();
            CubicBezier after = path.Segments[i].AsCubic();
            Assert.Equal(Armhole[i], after.Start);
            Assert.Equal(0, before.DirectionAt(1).TurnRadTo(after.DirectionAt(0)), 1e-12);
            Assert.Equal(before.CurvaturePerMm(1), after.CurvaturePerMm(0), 1e-12);
        }
    }

    [Fact]
    public void Through_FreeEnds_BeginWithoutCurvature()
    {
        CurvePath path = CurvePath.Through(Armhole);

        Assert.Equal(0, path.Segments[0].AsCubic().CurvaturePerMm(0), 1e-14);
        Assert.Equal(0, path.Segments[3].AsCubic().CurvaturePerMm(1), 1e-14);
    }

    // A spline reproduces every cubic of its own measure: here a straight line, evenly.
    [Fact]
    public void Through_PointsOnALine_IsTheLine()
    {
        CurvePath path = CurvePath.Through([P(0, 0), P(10, 10), P(15, 15), P(100, 100)]);

        Assert.Equal(100 * Math.Sqrt(2), path.Length.Millimeters, 1e-10);
        Assert.All(path.Segments, s => Assert.Equal(s.Start.DistanceMm(s.End) / 3, s.Start.DistanceMm(s.AsCubic().StartControl), 1e-10));
    }

    [Fact]
    public void Through_RepeatedPoint_Refused()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => CurvePath.Through([P(0, 0), P(1, 0), P(1, 0)]));

        Assert.StartsWith("PC3011", error.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => CurvePath.Through([P(0, 0)]));
    }

    // Closed form: a right angle with a radius r loses 2r of line and gains pi r / 2.
    [Fact]
    public void Filleted_RightAngle_MatchesClosedForm()
    {
        CurvePath corner = CurvePath.From(P(0, 0)).LineTo(P(100, 0)).LineTo(P(100, 80));
        CurvePath round = corner.Filleted(1, Length.FromMillimeters(20));

        Assert.Equal(3, round.Segments.Count);
        CircularArc arc = round.Segments[1].AsArc();
        Assert.True(arc.Centre.IsCloseTo(P(80, 20), Length.FromMillimeters(1e-9)));
        Assert.Equal(180 - 40 + (10 * Math.PI), round.Length.Millimeters, 1e-9);
        AssertSmooth(round);
        AssertJoined(round);
    }

    [Fact]
    public void Filleted_ClosedPathAtItsStart_KeepsItClosed()
    {
        CurvePath square = CurvePath.From(P(0, 0)).LineTo(P(100, 0)).LineTo(P(100, 100)).LineTo(P(0, 100)).Closed();
        CurvePath round = square;
        for (int i = 3; i >= 0; i--)
        {
            round = round.Filleted(i, Length.FromMillimeters(10));
        }

        Assert.True(round.IsClosed);
        Assert.Equal(10000 - ((4 - Math.PI) * 100), round.SignedArea.SquareMillimeters, 1e-8);
        Assert.Equal(360, round.TotalTurning.Degrees, 1e-9);
        AssertSmooth(round);
        AssertJoined(round);
    }

    [Fact]
    public void Filleted_BetweenCurves_TouchesBoth()
    {
        CurvePath corner = CurvePath.From(P(0, 0)).CurveTo(P(40, 30), P(70, 40), P(100, 20)).CurveTo(P(110, 60), P(140, 90), P(130, 130));
        CurvePath round = corner.Filleted(1, Length.FromMillimeters(12));

        Assert.Equal(12, round.Segments[1].AsArc().Radius.Millimeters, 1e-12);
        AssertSmooth(round);
        AssertJoined(round);
    }

    [Fact]
    public void Filleted_TooLarge_Refused()
    {
        CurvePath corner = CurvePath.From(P(0, 0)).LineTo(P(100, 0)).LineTo(P(100, 80));

        ConstructionException error = Assert.Throws<ConstructionException>(() => corner.Filleted(1, Length.FromMillimeters(81)));

        Assert.Equal(DiagnosticCode.FilletDoesNotFit, error.Code);
        Assert.Throws<ArgumentOutOfRangeException>(() => corner.Filleted(0, Length.FromMillimeters(5)));
    }

    [Fact]
    public void Extended_BothEnds_RunAlongTheTangents()
    {
        CurvePath curve = CurvePath.From(P(0, 0)).CurveTo(Direction.Up, P(60, 60), Direction.Right);
        CurvePath longer = curve.ExtendedAtStart(Length.FromMillimeters(10)).ExtendedAtEnd(Length.FromMillimeters(5));

        Assert.True(longer.Start.IsCloseTo(P(0, -10), Length.FromMillimeters(1e-12)));
        Assert.True(longer.End.IsCloseTo(P(65, 60), Length.FromMillimeters(1e-12)));
        AssertSmooth(longer);
    }

    [Fact]
    public void SplitAt_LengthAndPosition_Agree()
    {
        CurvePath path = CurvePath.Through(Armhole);
        path.SplitAt(Length.FromMillimeters(100), out CurvePath before, out CurvePath after);
        PathLocation place = path.LocationAtLength(Length.FromMillimeters(100));
        path.SplitAt(place, out CurvePath before2, out _);

        Assert.Equal(100, before.Length.Millimeters, 1e-9);
        Assert.Equal(path.Length.Millimeters, before.Length.Millimeters + after.Length.Millimeters, 1e-9);
        Assert.Equal(100, path.LengthTo(place).Millimeters, 1e-9);
        Assert.True(before2.End.IsCloseTo(before.End, Length.FromMillimeters(1e-9)));
        path.SplitAt(place.Point, out CurvePath before3, out _);
        Assert.Equal(100, before3.Length.Millimeters, 1e-9);
        Assert.Throws<ArgumentException>(() => path.SplitAt(P(0, 50), out _, out _));
        Assert.Throws<InvalidOperationException>(() => path.Closed().SplitAt(Length.FromMillimeters(100), out _, out _));
    }

    [Fact]
    public void FindAtDistanceFrom_EveryKind_LiesAtTheDistance()
    {
        CurvePath path = CurvePath.Through(Armhole).LineTo(P(150, 160)).ArcAround(P(150, 180), Angle.FromDegrees(100));
        Point2D compass = P(60, 90);
        foreach (double radiusMm in new[] { 30.0, 60, 90, 100, 105, 115 })
        {
            IReadOnlyList<PathLocation> found = path.FindAtDistanceFrom(compass, Length.FromMillimeters(radiusMm));

            Assert.All(found, p => Assert.Equal(radiusMm, p.Point.DistanceMm(compass), 1e-9));
            Assert.Equal(CountCrossings(path, compass, radiusMm), found.Count);
            Assert.Equal(found.OrderBy(p => path.LengthTo(p).Millimeters), found);
        }
    }

    // Closed form: a compass of 5 at the origin meets y = 3 at x = -4 and 4, and touches y = 5 at x = 0.
    [Fact]
    public void FindAtDistanceFrom_Line_MatchesClosedForm()
    {
        IReadOnlyList<PathLocation> two = CurvePath.From(P(-10, 3)).LineTo(P(10, 3)).FindAtDistanceFrom(P(0, 0), Length.FromMillimeters(5));
        IReadOnlyList<PathLocation> one = CurvePath.From(P(-10, 5)).LineTo(P(10, 5)).FindAtDistanceFrom(P(0, 0), Length.FromMillimeters(5));
        IReadOnlyList<PathLocation> none = CurvePath.From(P(-10, 5.01)).LineTo(P(10, 5.01)).FindAtDistanceFrom(P(0, 0), Length.FromMillimeters(5));

        Assert.Equal([-4.0, 4.0], two.Select(p => Math.Round(p.Point.XMm, 12)));
        Assert.Equal(0, Assert.Single(one).Point.XMm, 1e-6);
        Assert.Empty(none);
    }

    [Fact]
    public void FindAtDistanceFrom_Joint_IsOnePlace()
    {
        CurvePath corner = CurvePath.From(P(0, 0)).LineTo(P(100, 0)).LineTo(P(100, 80));

        Assert.Equal(P(100, 0), Assert.Single(corner.FindAtDistanceFrom(P(60, 30), Length.FromMillimeters(50)), p => p.Point.XMm > 99 && p.Point.YMm < 30).Point);
    }

    [Fact]
    public void Transformed_StretchedArc_IsTheEllipse()
    {
        CurvePath circle = CurvePath.From(P(50, 0)).ArcAround(P(0, 0), Angle.FromDegrees(360)).Closed();
        CurvePath ellipse = circle.Transformed(Transform2D.Scaling(P(0, 0), Ratio.FromDecimalFractions(2), Ratio.FromDecimalFractions(1)));

        // Closed form: the area of an ellipse is pi a b. The cubics lie outside by at most a millionth of a millimetre.
        Assert.Equal(Math.PI * 100 * 50, ellipse.SignedArea.SquareMillimeters, 5e-4);
        Assert.All(ellipse.Flatten(Length.FromMillimeters(0.1)), p => Assert.Equal(1, Math.Sqrt((p.XMm * p.XMm / 1e4) + (p.YMm * p.YMm / 2500)), 1e-7));
    }

    private static int CountCrossings(CurvePath path, Point2D compass, double radiusMm)
    {
        int count = 0;
        bool last = path.Start.DistanceMm(compass) > radiusMm;
        Point2D[] samples = path.PointsAtEqualLengths(20000);
        foreach (Point2D sample in samples)
        {
            bool now = sample.DistanceMm(compass) > radiusMm;
            count += now == last ? 0 : 1;
            last = now;
        }

        return count;
    }

    private static void AssertSmooth(CurvePath path)
    {
        for (int i = path.IsClosed ? 0 : 1; i < path.Segments.Count; i++)
        {
            PathSegment before = path.Segments[i == 0 ? path.Segments.Count - 1 : i - 1];
            Assert.Equal(0, before.EndDirection.TurnRadTo(path.Segments[i].StartDirection), 1e-9);
        }
    }

    private static void AssertJoined(CurvePath path)
    {
        for (int i = path.IsClosed ? 0 : 1; i < path.Segments.Count; i++)
        {
            PathSegment before = path.Segments[i == 0 ? path.Segments.Count - 1 : i - 1];
            Assert.Equal(0, before.End.DistanceMm(path.Segments[i].Start), 1e-9);
        }
    }

    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);
}
