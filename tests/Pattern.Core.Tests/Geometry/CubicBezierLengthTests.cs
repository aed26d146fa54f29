using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using MathNet.Numerics.Integration;
using Pattern.Core.Geometry;
using SkiaSharp;
using SvgPathProperties;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Arc length against closed forms and against libraries that share no code with this one.</summary>
public class CubicBezierLengthTests
{
    public static TheoryData<double> Ladder => [1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10, 1e-11];

    // Closed form: y = k x^2 from 0 to w has length w/2 sqrt(1 + 4k^2w^2) + asinh(2kw) / 4k.
    [Theory]
    [MemberData(nameof(Ladder))]
    public void LengthMm_Parabola_HoldsTheTolerance(double toleranceMm)
    {
        foreach (double k in new[] { 1e-6, 1e-3, 0.01, 0.1, 1, 10 })
        {
            const double Width = 300;
            double slope = 2 * k * Width;
            double expected = (0.5 * Width * Math.Sqrt(1 + (slope * slope))) + (Math.Log(slope + Math.Sqrt(1 + (slope * slope))) / (4 * k));
            var parabola = CubicBezier.FromQuadratic(P(0, 0), P(Width / 2, 0), P(Width, k * Width * Width));

            double scale = Math.Max(1, expected / 1000);
            Assert.Equal(expected, parabola.LengthMm(toleranceMm), (toleranceMm * scale) + (4e-16 * expected / k * 1e-3));
        }
    }

    [Theory]
    [MemberData(nameof(Ladder))]
    public void LengthMm_LineOfOddSpeed_HoldsTheTolerance(double toleranceMm)
    {
        // B(t) = 400 t^3: a cubic speed that vanishes at the start. And one that goes 3/4 back: turning points in closed form.
        CubicBezier slow = new(0, 0, 0, 0, 0, 0, 240, 320);
        Assert.Equal(400, slow.LengthMm(toleranceMm), toleranceMm);

        // x = 3t(1-t)^2 h - 3t^2(1-t) h rises to h sqrt(3)/6 at t = 1/2 - sqrt(3)/6, falls as far below zero, and comes back.
        CubicBezier back = new(0, 0, 100, 0, -100, 0, 0, 0);
        Assert.Equal(4 * 100 * Math.Sqrt(3) / 6, back.LengthMm(toleranceMm), toleranceMm);
    }

    // The cusp (t^2, t^3) from -1 to 1: two semicubical parabolas of (13 sqrt 13 - 8) / 27 each.
    [Fact]
    public void LengthMm_SemicubicalParabola_MatchesClosedForm()
    {
        // x = (2t-1)^2, y = (2t-1)^3 on 0 to 1, in Bernstein form.
        CubicBezier cusp = new(1, -1, -1.0 / 3, 1, -1.0 / 3, -1, 1, 1);

        Assert.Equal(2 * ((13 * Math.Sqrt(13)) - 8) / 27, cusp.LengthMm(), 1e-14);
        Assert.Equal(0.5, cusp.ParameterAtLengthMm(0.5 * cusp.LengthMm()), 1e-7);
    }

    [Fact]
    public void LengthMm_QuarterCircleOfCubics_ApproachesTheCircle()
    {
        var arc = CircularArc.FromCentre(P(0, 0), Length.FromMillimeters(100), Angle.Zero, Angle.FromDegrees(90));
        double sum = 0;
        for (int i = 0; i < 16; i++)
        {
            sum += arc.CubicPiece(i, 16).LengthMm();
        }

        Assert.Equal(50 * Math.PI, sum, 1e-8);
    }

    [Fact]
    public void LengthMm_AdaptiveQuadratureOfMathNet_Agrees()
    {
        foreach (CurveRow row in GeometryData.Curves.Where(r => r.Class.StartsWith("garment", StringComparison.Ordinal) || r.Class == "random"))
        {
            double reference = GaussKronrodRule.Integrate(t => row.Cubic.DerivativeAtRaw(t).LengthMm, 0, 1, out double error, out _, 1e-13, 40, 31);

            Assert.InRange(error, 0, 1e-6);
            Assert.Equal(reference, row.Cubic.LengthMm(), 1e-8);
        }
    }

    // The path measure of SkiaSharp works in single precision and with chords: a hundredth of a millimetre on curves of a metre.
    [Fact]
    public void LengthMm_PathMeasureOfSkia_Agrees()
    {
        foreach (CurveRow row in GarmentRows())
        {
            CubicBezier c = row.Cubic;
            using var path = new SKPathBuilder();
            path.MoveTo((float)c.X0, (float)c.Y0);
            path.CubicTo((float)c.X1, (float)c.Y1, (float)c.X2, (float)c.Y2, (float)c.X3, (float)c.Y3);
            using SKPath drawn = path.Detach();
            using var measure = new SKPathMeasure(drawn, false, 1000);

            Assert.Equal(measure.Length, c.LengthMm(), 0.02);
        }
    }

    [Fact]
    public void LengthMm_SvgPathProperties_Agrees()
    {
        foreach (CurveRow row in GarmentRows())
        {
            CubicBezier c = row.Cubic;
            string d = string.Format(CultureInfo.InvariantCulture, "M {0:r} {1:r} C {2:r} {3:r} {4:r} {5:r} {6:r} {7:r}", c.X0, c.Y0, c.X1, c.Y1, c.X2, c.Y2, c.X3, c.Y3);

            Assert.Equal(new SvgPath(d).Length, c.LengthMm(), 1e-3 * c.LengthMm());
        }
    }

    [Fact]
    public void ParameterAtLength_Refusals_AreClear()
    {
        CubicBezier curve = new(0, 0, 60, -6, 120, -4, 180, 40);
        Length whole = curve.Length;

        Assert.Throws<ArgumentOutOfRangeException>(() => curve.ParameterAtLength(Length.FromMillimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => curve.ParameterAtLength(whole + Length.FromMillimeters(0.001)));
        Assert.Equal(0, curve.ParameterAtLength(Length.FromMillimeters(-1), BeyondEnds.StopAtEnd));
        Assert.Equal(1, curve.ParameterAtLength(whole * 2, BeyondEnds.StopAtEnd));
        Assert.Equal(1, curve.ParameterAtLength(whole));
    }

    private static IEnumerable<CurveRow> GarmentRows() => GeometryData.Curves.Where(r => r.Class.StartsWith("garment", StringComparison.Ordinal));

    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);
}
