using System;
using System.Linq;
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
    public void IntersectionsWith_LineThatCrossesThrice_FindsAll()
    {
        var s = new CubicBezier(0, -10, 40, 60, 60, -60, 100, 10);

        CurveIntersections hits = s.IntersectionsWith(Line.Horizontal(Point2D.Origin));

        Assert.Equal(3, hits.Count);
        Assert.Equal(0.5, hits[1].FirstParameter, 1e-14);
        Assert.Equal(0, hits[0].Point.Y.Millimeters, 1e-12);
        Assert.Equal(0, hits[2].Point.Y.Millimeters, 1e-12);
    }

    // Closed forms: the ordinates are a product of linear factors, so the roots are known, ends and halves among them.
    [Theory]
    [InlineData(0, 0.5, 1)]
    [InlineData(0, 0.25, 0.75)]
    [InlineData(0.25, 0.5, 0.75)]
    [InlineData(0.125, 0.5, 1)]
    [InlineData(0, 0.3, 0.9)]
    [InlineData(0.1, 0.5, 0.50390625)]
    [InlineData(0, 0.5, 0.5)]
    [InlineData(0.5, 0.5, 0.9)]
    [InlineData(0.2, 1, 1)]
    [InlineData(0, 0, 0.7)]
    public void IntersectionsWith_LineAtKnownRoots_FindsEachOnce(double a, double b, double c)
    {
        // Blossom of 60 (t - a)(t - b)(t - c): the Bernstein coefficients are its values at (0,0,0), (0,0,1), (0,1,1), (1,1,1).
        double Blossom(double u, double v, double w) => 60 * (
            ((u - a) * (v - b) * (w - c)) + ((u - a) * (w - b) * (v - c)) + ((v - a) * (u - b) * (w - c))
            + ((v - a) * (w - b) * (u - c)) + ((w - a) * (u - b) * (v - c)) + ((w - a) * (v - b) * (u - c))) / 6;
        var cubic = new CubicBezier(0, Blossom(0, 0, 0), 10, Blossom(0, 0, 1), 20, Blossom(0, 1, 1), 30, Blossom(1, 1, 1));
        double[] expected = [.. new[] { a, b, c }.Distinct()];

        CurveIntersections hits = cubic.IntersectionsWith(Line.Horizontal(Point2D.Origin));

        Assert.Equal(expected.Length, hits.Count);
        for (int i = 0; i < expected.Length; i++)
        {
            // A double root moves by the square root of rounding.
            bool isDouble = new[] { a, b, c }.Count(r => r == expected[i]) > 1;
            Assert.Equal(expected[i], hits[i].FirstParameter, isDouble ? 1e-5 : 1e-12);
            Assert.Equal(isDouble || expected[i] is 0 or 1, hits[i].IsTouching);
        }
    }

    [Fact]
    public void Split_AnyPlace_PartsMeetAndAddUp()
    {
        Wave.Split(0.3, out CubicBezier before, out CubicBezier after);

        Assert.Equal(before.End, after.Start);
        Assert.Equal(Wave.Length.Millimeters, before.Length.Millimeters + after.Length.Millimeters, 1e-9);
    }
}
