using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

public class CubicBezierTests
{
    private static readonly CubicBezier Wave = new(0, 0, 60, -6, 120, -4, 180, 40);

    [Fact]
    public void PointAt_Ends_AreExact()
    {
        Assert.Equal(Wave.Start, Wave.PointAt(0));
        Assert.Equal(Wave.End, Wave.PointAt(1));
    }

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(1.001)]
    [InlineData(double.NaN)]
    public void PointAt_OutsideCurve_Refused(double t) => Assert.Throws<ArgumentOutOfRangeException>(() => Wave.PointAt(t));

    // Closed form: the parabola y = x^2 from 0 to 1 has length (2 sqrt 5 + asinh 2) / 4.
    [Fact]
    public void Length_Parabola_MatchesClosedForm()
    {
        var parabola = CubicBezier.FromQuadratic(
            Point2D.FromMillimeters(0, 0), Point2D.FromMillimeters(0.5, 0), Point2D.FromMillimeters(1, 1));
        double expected = ((2 * Math.Sqrt(5)) + Math.Log(2 + Math.Sqrt(5))) / 4;

        Assert.Equal(expected, parabola.Length.Millimeters, 1e-12);
    }

    [Fact]
    public void ParameterAtLengthMm_ThereAndBack_Agrees()
    {
        double t = Wave.ParameterAtLengthMm(60);

        Assert.Equal(60, Wave.LengthMm(0, t), 1e-8);
    }

    [Fact]
    public void Between_StraightAhead_IsTheEvenLine()
    {
        CubicBezier line = CubicBezier.Between(
            Point2D.FromMillimeters(0, 0), Direction.Right, Point2D.FromMillimeters(90, 0), Direction.Right);

        Assert.Equal(30, line.StartControl.X.Millimeters, 1e-12);
        Assert.Equal(60, line.EndControl.X.Millimeters, 1e-12);
    }

    [Fact]
    public void Between_SameEnds_Refused() => Assert.Throws<ArgumentException>(
        () => CubicBezier.Between(Point2D.Origin, Direction.Right, Point2D.Origin, Direction.Up));

    [Fact]
    public void IntersectLine_ThreeCrossings_FindsAll()
    {
        var s = new CubicBezier(0, -10, 40, 60, 60, -60, 100, 10);

        int count = s.IntersectLine(Line.Horizontal(Point2D.Origin), out ParameterHits hits);

        Assert.Equal(3, count);
        Assert.Equal(0.5, hits.T1, 1e-14);
        Assert.Equal(0, s.PointAt(hits.T0).Y.Millimeters, 1e-12);
        Assert.Equal(0, s.PointAt(hits.T2).Y.Millimeters, 1e-12);
    }

    [Fact]
    public void Split_AnyPlace_PartsMeetAndAddUp()
    {
        Wave.Split(0.3, out CubicBezier before, out CubicBezier after);

        Assert.Equal(before.End, after.Start);
        Assert.Equal(Wave.Length.Millimeters, before.Length.Millimeters + after.Length.Millimeters, 1e-9);
    }
}
