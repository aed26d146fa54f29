using System;
using FsCheck.Xunit;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(CurveGenerators)], MaxTest = 300)]
public class CubicBezierPropertyTests
{
    [Property]
    public void Split_Anywhere_PartsSumToTheWhole(HostileCurve hostile, byte share)
    {
        CubicBezier curve = hostile.Curve;
        curve.Split(share / 255.0, out CubicBezier before, out CubicBezier after);

        Assert.Equal(before.End, after.Start);
        AssertWithin(curve.LengthMm(), before.LengthMm() + after.LengthMm(), 1e-11, curve);
        AssertWithin(curve.SignedAreaMm2() / Size(curve), (before.SignedAreaMm2() + after.SignedAreaMm2()) / Size(curve), 1e-12, curve);
    }

    [Property]
    public void Length_RigidMotionAndScale_FollowsThem(HostileCurve hostile, short degrees, byte tenths)
    {
        CubicBezier curve = hostile.Curve;
        double factor = 0.1 + (tenths / 10.0);
        Transform2D turn = Transform2D.Rotation(curve.StartControl, Angle.FromDegrees(degrees))
            .Then(Transform2D.Translation(curve.EndControl - curve.Start));
        Transform2D scale = Transform2D.Scaling(curve.End, Ratio.FromDecimalFractions(factor));

        AssertWithin(curve.LengthMm(), curve.Transformed(turn).LengthMm(), 1e-11, curve);
        AssertWithin(factor * curve.LengthMm(), curve.Transformed(scale).LengthMm(), 1e-10, curve);
    }

    [Property]
    public void Reversed_Twice_IsIdentity(HostileCurve hostile)
    {
        CubicBezier curve = hostile.Curve;

        Assert.Equal(curve, curve.Reversed().Reversed());
        AssertWithin(curve.LengthMm(), curve.Reversed().LengthMm(), 1e-12, curve);
        AssertWithin(-curve.SignedAreaMm2() / Size(curve), curve.Reversed().SignedAreaMm2() / Size(curve), 1e-13, curve);
    }

    [Property]
    public void ParameterAtLength_AndBack_AreInverse(HostileCurve hostile, byte share)
    {
        CubicBezier curve = hostile.Curve;
        double lengthMm = curve.LengthMm() * share / 255;
        double t = curve.ParameterAtLengthMm(lengthMm);

        Assert.InRange(t, 0, 1);
        AssertWithin(lengthMm, curve.LengthMm(0, t), 1e-11, curve);
    }

    [Property]
    public void ParameterAtLength_OfALengthUpTo_GivesTheParameterOnGentleCurves(GentleCurve gentle, byte share)
    {
        double t = share / 255.0;

        Assert.Equal(t, gentle.Curve.ParameterAtLengthMm(gentle.Curve.LengthMm(0, t)), 1e-11);
    }

    [Property]
    public void EveryMeasure_HostileCurve_IsNeverNaN(HostileCurve hostile, byte share)
    {
        CubicBezier curve = hostile.Curve;
        double t = share / 255.0;

        Assert.True(curve.LengthMm() >= 0);
        Assert.False(double.IsNaN(curve.CurvaturePerMm(t)));
        Assert.False(double.IsNaN(curve.MaxCurvaturePerMm(out double at)));
        Assert.InRange(at, 0, 1);
        Assert.False(double.IsNaN(curve.TotalTurningRad()));
        Assert.False(double.IsNaN(curve.SignedAreaMm2()));
        Assert.False(double.IsNaN(curve.Bounds.Width.Millimeters));
        bool isPoint = curve.HodographMm == 0;
        Assert.Equal(!isPoint, curve.TryDirectionAt(t, out Direction direction));
        Assert.Equal(1, Math.Sqrt((direction.X * direction.X) + (direction.Y * direction.Y)), 1e-12);
    }

    [Property]
    public void Bounds_HostileCurve_HoldEveryPoint(HostileCurve hostile)
    {
        CubicBezier curve = hostile.Curve;
        BoundingBox box = curve.Bounds;
        double slack = 1e-15 * curve.MagnitudeMm;
        for (int i = 0; i <= 100; i++)
        {
            Point2D p = curve.PointAtRaw(i / 100.0);
            Assert.True(p.XMm >= box.LeftMm - slack && p.XMm <= box.RightMm + slack && p.YMm >= box.BottomMm - slack && p.YMm <= box.TopMm + slack);
        }
    }

    [Property]
    public void SubCurve_OfASubCurve_LiesOnTheCurve(HostileCurve hostile, byte a, byte b)
    {
        CubicBezier curve = hostile.Curve;
        double from = Math.Min(a, b) / 255.0;
        double to = Math.Max(a, b) / 255.0;
        CubicBezier part = curve.SubCurveRaw(from, to);

        for (int i = 0; i <= 10; i++)
        {
            Point2D expected = curve.PointAtRaw(from + ((to - from) * i / 10));
            Assert.True(expected.DistanceMm(part.PointAtRaw(i / 10.0)) <= 4e-15 * curve.MagnitudeMm);
        }
    }

    [Property]
    public void MaxCurvature_GentleCurve_IsNoLessThanAnySample(GentleCurve gentle)
    {
        double most = gentle.Curve.MaxCurvaturePerMm(out _);

        // What rounding of the coordinates bends a straight curve by: some last bits, over its length.
        double roundingPerMm = 1e-13 / gentle.Curve.LengthMm();
        for (int i = 0; i <= 200; i++)
        {
            double sample = Math.Abs(gentle.Curve.CurvaturePerMm(i / 200.0));
            Assert.True(sample <= (most * (1 + 1e-12)) + roundingPerMm, $"{sample:r} is more than {most:r}");
        }
    }

    [Property]
    public void TotalTurning_GentleCurve_IsTheSumOfSmallTurns(GentleCurve gentle)
    {
        double sum = 0;
        for (int i = 0; i < 200; i++)
        {
            sum += gentle.Curve.DirectionAt(i / 200.0).TurnRadTo(gentle.Curve.DirectionAt((i + 1) / 200.0));
        }

        Assert.Equal(sum, gentle.Curve.TotalTurning.Radians, 1e-9);
    }

    private static double Size(CubicBezier curve) => curve.MagnitudeMm + 1e-300;

    // Relative to the size of the curve; far from the origin the coordinates' own rounding comes on top.
    private static void AssertWithin(double expected, double actual, double relative, CubicBezier curve)
        => Assert.True(
            Math.Abs(expected - actual) <= (relative * curve.HodographMm) + (2e-15 * curve.MagnitudeMm),
            $"expected {expected:r}, was {actual:r} on {curve}");
}
