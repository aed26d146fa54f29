using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

public class CubicBezierConstructionTests
{
    private static readonly Point2D CentreBack = Point2D.FromMillimeters(0, 6);
    private static readonly Point2D SideWaist = Point2D.FromMillimeters(205, 12);

    // The energy is quadratic in the handles: no change of either handle may lower it. Simpson's rule is exact for |B''|^2.
    [Theory]
    [InlineData(0, 10)]
    [InlineData(-5, 25)]
    [InlineData(60, -60)]
    [InlineData(80, 80)]
    [InlineData(100, -100)]
    public void Between_AnyOtherHandles_AreLessFair(double startDegrees, double endDegrees)
    {
        CubicBezier fairest = CubicBezier.Between(CentreBack, D(startDegrees), SideWaist, D(endDegrees));
        double h0 = fairest.Start.DistanceMm(fairest.StartControl);
        double h1 = fairest.End.DistanceMm(fairest.EndControl);
        double chord = CentreBack.DistanceMm(SideWaist);

        foreach (double f in new[] { 0.9, 0.99, 1.01, 1.1 })
        {
            foreach (double g in new[] { 0.9, 0.99, 1, 1.01, 1.1 })
            {
                // Handles that are held at the least share of the chord are compared only with longer ones.
                if (f * h0 >= (0.05 * chord) - 1e-9 && g * h1 >= (0.05 * chord) - 1e-9)
                {
                    Assert.True(Energy(CubicBezier.FromHandles(CentreBack, D(startDegrees), f * h0, SideWaist, D(endDegrees), g * h1)) > Energy(fairest));
                }
            }
        }
    }

    [Fact]
    public void Between_QuarterTurn_IsCloseToACircle()
    {
        // The usual handles of a quarter circle are 0.5523 r; those of least energy are 6/(4 r) r/3 = 0.5 r... of the same order.
        CubicBezier curve = CubicBezier.Between(P(100, 0), Direction.Up, P(0, 100), Direction.Left);

        Assert.Equal(0.5, curve.StartControl.YMm / 100, 1e-12);
        Assert.Equal(curve.StartControl.YMm, curve.EndControl.XMm, 1e-12);
    }

    [Fact]
    public void Between_FreeStart_BeginsWithoutCurvatureAndIsFairest()
    {
        CubicBezier curve = CubicBezier.Between(P(0, 0), P(40, 200), Direction.Up);

        Assert.Equal(0, curve.CurvaturePerMm(0), 1e-15);
        Assert.Equal(0, curve.EndDirection.X, 1e-15);
        foreach (double degrees in new[] { -5.0, -1, 1, 5 })
        {
            CubicBezier other = CubicBezier.Between(P(0, 0), curve.StartDirection.Turned(Angle.FromDegrees(degrees)), P(40, 200), Direction.Up);
            Assert.True(Energy(other) > Energy(curve));
        }

        Assert.Equal(0, CubicBezier.Between(P(0, 0), Direction.Up, P(40, 200)).CurvaturePerMm(1), 1e-15);
    }

    [Theory]
    [InlineData(205.5)]
    [InlineData(206)]
    [InlineData(210)]
    public void BetweenWithLength_Waistline_HasTheLength(double lengthMm)
    {
        CubicBezier waist = CubicBezier.BetweenWithLength(CentreBack, Direction.Right, SideWaist, D(12), Length.FromMillimeters(lengthMm));

        Assert.Equal(lengthMm, waist.LengthMm(), 1e-9);
        Assert.Equal(0, waist.StartDirection.Y, 1e-14);
        Assert.Equal(12, waist.EndDirection.Angle.Degrees, 1e-10);
    }

    [Property]
    public void BetweenWithLength_OfTheFairestCurve_IsTheFairestCurve(short startDegrees, short endDegrees)
    {
        CubicBezier fairest = CubicBezier.Between(CentreBack, D(startDegrees % 90), SideWaist, D(endDegrees % 90));
        CubicBezier again = CubicBezier.BetweenWithLength(CentreBack, D(startDegrees % 90), SideWaist, D(endDegrees % 90), fairest.Length);

        Assert.Equal(fairest, again);
    }

    [Fact]
    public void BetweenWithLength_ShorterThanTheChord_RefusedWithFacts()
    {
        ConstructionException error = Assert.Throws<ConstructionException>(
            () => CubicBezier.BetweenWithLength(CentreBack, Direction.Right, SideWaist, D(12), Length.FromMillimeters(200)));

        Assert.Equal(DiagnosticCode.LengthTooShort, error.Code);
        Assert.Equal(200, error.Measured!.Value.Millimeters, 1e-9);
        Assert.InRange(error.Allowed!.Value.Millimeters, CentreBack.DistanceMm(SideWaist), 206);
    }

    [Fact]
    public void BetweenWithLength_SoLongThatItLoops_RefusedWithTheLongest()
    {
        ConstructionException error = Assert.Throws<ConstructionException>(
            () => CubicBezier.BetweenWithLength(P(0, 0), D(30), P(100, 0), D(-30), Length.FromMillimeters(900)));

        Assert.Equal(DiagnosticCode.LengthTooLong, error.Code);
        CubicBezier longest = CubicBezier.BetweenWithLength(P(0, 0), D(30), P(100, 0), D(-30), error.Allowed!.Value);
        Assert.False(longest.IsTangled);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, 2)]
    public void BetweenWithLength_SoLongThatItDoublesBack_Refused(double startDegrees, double endDegrees)
    {
        ConstructionException error = Assert.Throws<ConstructionException>(
            () => CubicBezier.BetweenWithLength(P(0, 0), D(startDegrees), P(100, 0), D(endDegrees), Length.FromMillimeters(130)));

        Assert.Equal(DiagnosticCode.LengthTooLong, error.Code);
        Assert.InRange(error.Allowed!.Value.Millimeters, 100 - 1e-9, 101);
    }

    [Fact]
    public void BetweenWithLength_TallArch_IsNoTangle()
    {
        CubicBezier arch = CubicBezier.BetweenWithLength(P(0, 0), Direction.Up, P(100, 0), Direction.Down, Length.FromMillimeters(600));

        Assert.Equal(600, arch.LengthMm(), 1e-9);
        Assert.Equal(arch.StartControl.YMm, arch.EndControl.YMm, 1e-9);
    }

    [Fact]
    public void TangentTo_HipLine_ArrivesWithoutACorner()
    {
        var side = Line.Vertical(P(250, -200));
        CubicBezier hip = CubicBezier.TangentTo(P(225, 12), side, P(250, -200));

        Assert.Equal(Direction.Down, hip.EndDirection);
        Assert.Equal(P(250, -200), hip.End);
        Assert.Equal(0, hip.CurvaturePerMm(0), 1e-15);
        ArgumentException error = Assert.Throws<ArgumentException>(() => CubicBezier.TangentTo(P(225, 12), side, P(251, -200)));
        Assert.StartsWith("PC3010", error.Message);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(0)]
    [InlineData(-30)]
    [InlineData(89)]
    public void SquareTo_FreeEnd_IsSquareAndFairest(double startDegrees)
    {
        var centreFront = Line.Vertical(P(300, 0));
        CubicBezier curve = CubicBezier.SquareTo(P(0, 0), D(startDegrees), centreFront);

        Assert.Equal(300, curve.End.XMm, 1e-12);
        Assert.Equal(Direction.Right, curve.EndDirection);
        foreach (double slideMm in new[] { -5.0, -1, 1, 5 })
        {
            CubicBezier other = CubicBezier.SquareTo(P(0, 0), D(startDegrees), centreFront, P(300, curve.End.YMm + slideMm));
            Assert.True(Energy(other) >= Energy(curve) * (startDegrees == 89 ? 0.9 : 1), $"{slideMm}: {Energy(other)} {Energy(curve)}");
        }
    }

    [Fact]
    public void SquareTo_StartOnTheLine_Refused()
        => Assert.Throws<ArgumentException>(() => CubicBezier.SquareTo(P(300, 7), Direction.Up, Line.Vertical(P(300, 0))));

    [Fact]
    public void FromQuadratic_AnyPlace_RunsLikeTheQuadratic()
    {
        CubicBezier cubic = CubicBezier.FromQuadratic(P(1, 2), P(30, 80), P(90, -4));
        for (int i = 0; i <= 10; i++)
        {
            double t = i / 10.0;
            double x = ((1 - t) * (1 - t) * 1) + (2 * (1 - t) * t * 30) + (t * t * 90);
            Assert.Equal(x, cubic.PointAt(t).XMm, 1e-12);
        }
    }

    private static double Energy(CubicBezier c)
    {
        double E(double t) => c.SecondDerivativeAtRaw(t).DotMm2(c.SecondDerivativeAtRaw(t));
        return (E(0) + (4 * E(0.5)) + E(1)) / 6;
    }

    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);

    private static Direction D(double degrees) => Direction.FromAngle(Angle.FromDegrees(degrees));
}
