using System;
using FsCheck;
using FsCheck.Fluent;
using MathNet.Numerics.Integration;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class CapCurveTests
{
    // A symmetric cap y = h/2 (1 + cos(2 pi x / b)) is C = (2b/pi) sqrt(1 + k^2) E(m) long, k = pi h / b, m = k^2 / (1 + k^2): heights from that closed form, in centimetres.
    // The cubic that has the cosine's slope in its middle, with handles of 1 - 2/pi of its width, is not quite as long: less than 0.1 mm of height.
    [Theory]
    [InlineData(33.4, 42.567, 12.196)]
    [InlineData(33.4, 44.567, 13.695)]
    [InlineData(33.4, 45.067, 14.057)]
    [InlineData(33.4, 46.567, 15.118)]
    [InlineData(30.4, 45.067, 15.580)]
    [InlineData(36.4, 45.067, 12.247)]
    [InlineData(40.0, 45.067, 9.477)]
    public void DrawAcross_ACosineCap_HasTheHeightOfTheClosedForm(double widthCm, double lengthCm, double heightCm)
    {
        var cosine = new CapBend(Ratio.FromDecimalFractions(1 - (2 / Math.PI)), Ratio.FromDecimalFractions(1 - (2 / Math.PI)));

        DrawnCap cap = CapCurve.Over(Mm(5 * lengthCm), Mm(5 * lengthCm)).WithBend(cosine, cosine).DrawAcross(Mm(10 * widthCm));

        Assert.Equal(10 * heightCm, cap.Height.Millimeters, 0.1);
        Assert.Equal(5 * widthCm, cap.Crown.XMm, 1e-9);
    }

    // The same closed form over a field of widths and lengths, the integral by the arithmetic-geometric mean and the height by halving: apart from the library in every step.
    [Property(MaxTest = 100)]
    public Property DrawAcross_ACosineCapOfAnySize_HasTheHeightOfTheClosedForm() => Prop.ForAll(
        Gen.Choose(260, 460).SelectMany(width => Gen.Choose(112, 145).Select(share => (Width: (double)width, Share: share / 100.0))).ToArbitrary(),
        c =>
        {
            double lengthMm = c.Width * c.Share;
            var cosine = new CapBend(Ratio.FromDecimalFractions(1 - (2 / Math.PI)), Ratio.FromDecimalFractions(1 - (2 / Math.PI)));
            bool isDrawn = CapCurve.Over(Mm(lengthMm / 2), Mm(lengthMm / 2)).WithBend(cosine, cosine).TryDrawAcross(Mm(c.Width), out ConstructionOutcome<DrawnCap> outcome);
            double heightMm = CosineHeightMm(c.Width, lengthMm);

            return isDrawn ? Math.Abs(outcome.Drawn!.Height.Millimeters - heightMm) < 2e-3 * heightMm : heightMm / lengthMm is < 0.181 or > 0.379;
        });

    // A handbook's cap (block and offsets recalled, recomputed by a chord-length spline): points at the quarters of each chord, set off it by 1.7, 0.1, -1.3 twentieths of the chord
    // in front and 1.5, 0.6, -0.7 behind; width 33.4, front 22.306, back 22.761. Height 13.507, crown 16.151 from the front underarm point. All in centimetres.
    [Fact]
    public void DrawAcross_AHandbooksSleeve_IsItsCap()
    {
        DrawnCap cap = CapCurve.Over(Mm(211.81), Mm(213.86)).WithEase(Mm(11.25), Mm(13.75)).DrawAcross(Mm(334));

        Assert.Equal(135.07, cap.Height.Millimeters, 0.5);
        Assert.Equal(161.51, cap.Width.Millimeters - cap.Crown.XMm, 0.5);
        double[] front = [1.7, 0.1, -1.3];
        double[] back = [1.5, 0.6, -0.7];
        Assert.All([1, 2, 3], i =>
        {
            Assert.InRange(CurvePath.FromCubic(cap.Front).ClosestTo(OffChord(cap.Crown, cap.Front.End, i / 4.0, front[i - 1])).DistanceMm, 0, 1.3);
            Assert.InRange(CurvePath.FromCubic(cap.Back).ClosestTo(OffChord(cap.Back.Start, cap.Crown, 1 - (i / 4.0), back[i - 1])).DistanceMm, 0, 0.5);
        });
    }

    // Halves of parabolas: a parabola from its underarm tangent to its vertex is a cubic whose handles reach two thirds of the way to where its end tangents cross, and its length is
    // elementary.
    [Theory]
    [InlineData(160, 170, 140)]
    [InlineData(165, 150, 150)]
    [InlineData(120, 125, 80)]
    public void Draw_ACapOfParabolas_FindsThemByWidthAndByHeight(double frontMm, double backMm, double heightMm)
    {
        CapCurve cap = CapCurve.Over(Mm(ParabolaMm(frontMm, heightMm)), Mm(ParabolaMm(backMm, heightMm))).WithBend(Parabola(frontMm, heightMm), Parabola(backMm, heightMm));

        DrawnCap across = cap.DrawAcross(Mm(frontMm + backMm));
        DrawnCap upTo = cap.DrawUpTo(Mm(heightMm));

        Assert.Equal(heightMm, across.Height.Millimeters, 1e-6);
        Assert.Equal(backMm, across.Crown.XMm, 1e-6);
        Assert.Equal(frontMm + backMm, upTo.Width.Millimeters, 1e-6);
        Assert.Equal(backMm, upTo.Crown.XMm, 1e-6);
    }

    [Property(MaxTest = 200)]
    public Property DrawAcross_AnyArmhole_IsAsLongAsAskedOrSaysWhatIsOff() => Prop.ForAll(
        Gen.Choose(150, 300).SelectMany(front => Gen.Choose(-40, 40).SelectMany(more => Gen.Choose(60, 95).Select(share => (Front: (double)front, Back: (double)(front + more), Share: share / 100.0)))).ToArbitrary(),
        c =>
        {
            CapCurve asked = CapCurve.Over(Mm(c.Front), Mm(c.Back)).WithEase(Mm(8), Mm(12));
            double width = c.Share * (c.Front + c.Back);
            if (!asked.TryDrawAcross(Mm(width), out ConstructionOutcome<DrawnCap> outcome))
            {
                return outcome.Off.Count > 0 && outcome.AtLimit.Count > 0
                    && Assert.Throws<ConstructionException>(() => asked.DrawAcross(Mm(width))).Code == DiagnosticCode.ConstructionNotMet;
            }

            DrawnCap cap = outcome.Drawn!;
            return Math.Abs(QuadratureMm(cap.Front) - c.Front - 8) < 1e-8
                && Math.Abs(QuadratureMm(cap.Back) - c.Back - 12) < 1e-8
                && cap.Back.EndControl.YMm == cap.Crown.YMm && Math.Abs(cap.Front.StartControl.YMm - cap.Crown.YMm) < 1e-12
                && cap.Back.Start == Point2D.Origin && Math.Abs(cap.Front.End.XMm - width) < 1e-12 && cap.Front.End.YMm == 0
                && Math.Abs(cap.Crown.XMm - (width / 2)) <= (0.1 * width) + 1e-9
                && cap.Height.Millimeters / (c.Front + c.Back) is > 0.18 - 1e-9 and < 0.38 + 1e-9
                && outcome.Drawings <= LeastChange.UsualMostDrawings;
        });

    // A higher cap is a narrower one.
    [Fact]
    public void DrawUpTo_HigherAndHigher_GetsNarrowerAndNarrower()
    {
        CapCurve cap = CapCurve.Over(Mm(212), Mm(214)).WithEase(Mm(11), Mm(14));
        double last = double.PositiveInfinity;
        for (double height = 90; height <= 160; height += 10)
        {
            DrawnCap drawn = cap.DrawUpTo(Mm(height));
            Assert.Equal(height, drawn.Height.Millimeters);
            Assert.True(drawn.Width.Millimeters < last);
            Assert.Equal(223, QuadratureMm(drawn.Front), 1e-8);
            Assert.Equal(228, QuadratureMm(drawn.Back), 1e-8);
            last = drawn.Width.Millimeters;
        }
    }

    [Fact]
    public void DrawAcross_WiderThanTheCapIsLong_SaysWhatIsOff()
    {
        CapCurve cap = CapCurve.Over(Mm(200), Mm(200));

        ConstructionException refused = Assert.Throws<ConstructionException>(() => cap.DrawAcross(Mm(420)));
        cap.TryDrawAcross(Mm(420), out ConstructionOutcome<DrawnCap> outcome);

        Assert.Equal(DiagnosticCode.ConstructionNotMet, refused.Code);
        Assert.Equal(["cap height"], outcome.AtLimit);
        Assert.Equal(2, outcome.Off.Count);
    }

    [Fact]
    public void ToPath_OfACap_RunsFromUnderarmToUnderarmWithoutACorner()
    {
        DrawnCap cap = CapCurve.Over(Mm(212), Mm(214)).DrawAcross(Mm(334));
        CurvePath path = cap.ToPath();

        Assert.Equal(426, path.LengthMm, 1e-8);
        Assert.Equal(0, path.Segments[0].EndDirection.TurnRadTo(path.Segments[1].StartDirection), 1e-12);
        Assert.Equal(0, path.StartDirection.AngleRad, 1e-12);
        Assert.Equal(0, path.EndDirection.AngleRad, 1e-12);
    }

    [Theory]
    [InlineData(5, 50, 0)]
    [InlineData(50, 95, 0)]
    [InlineData(50, 50, -1)]
    [InlineData(50, 50, 76)]
    public void CapBend_OutOfRange_IsRefused(double crown, double underarm, double rise)
        => Assert.Throws<ArgumentOutOfRangeException>(() => new CapBend(Ratio.FromPercent(crown), Ratio.FromPercent(underarm), Angle.FromDegrees(rise)));

    private static double CosineHeightMm(double widthMm, double lengthMm)
    {
        double low = 0;
        double high = lengthMm;
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            double k = Math.PI * middle / widthMm;
            double length = 2 * widthMm / Math.PI * Math.Sqrt(1 + (k * k)) * EllipticE(k * k / (1 + (k * k)));
            (low, high) = length < lengthMm ? (middle, high) : (low, middle);
        }

        return low;
    }

    // The complete elliptic integral of the second kind: E = K (1 - sum of 2^(n-1) c_n^2), K = pi / (2 agm(1, sqrt(1 - m))).
    private static double EllipticE(double m)
    {
        double a = 1;
        double b = Math.Sqrt(1 - m);
        double sum = m / 2;
        double power = 1;
        for (int n = 1; n < 12; n++)
        {
            double c = (a - b) / 2;
            (a, b) = ((a + b) / 2, Math.Sqrt(a * b));
            sum += power * c * c;
            power *= 2;
        }

        return Math.PI / (2 * a) * (1 - sum);
    }

    private static Point2D OffChord(Point2D from, Point2D to, double share, double twentieths)
    {
        Vector2D chord = to - from;
        Vector2D out1 = new(-chord.YMm * twentieths / 20, chord.XMm * twentieths / 20);
        return from + (chord * share) + out1;
    }

    private static double QuadratureMm(CubicBezier c) => GaussKronrodRule.Integrate(
        t =>
        {
            double s = 1 - t;
            double dx = (s * s * (c.X1 - c.X0)) + (2 * s * t * (c.X2 - c.X1)) + (t * t * (c.X3 - c.X2));
            double dy = (s * s * (c.Y1 - c.Y0)) + (2 * s * t * (c.Y2 - c.Y1)) + (t * t * (c.Y3 - c.Y2));
            return 3 * Math.Sqrt((dx * dx) + (dy * dy));
        },
        0,
        1,
        out _,
        out _,
        1e-12,
        15,
        15);

    // The tangents cross half way out, at the height of the crown.
    private static CapBend Parabola(double halfMm, double heightMm) => new(
        Ratio.FromDecimalFractions(1.0 / 3),
        Ratio.FromDecimalFractions(2.0 / 3 * Math.Sqrt((halfMm * halfMm / 4) + (heightMm * heightMm)) / halfMm),
        Angle.FromRadians(Math.Atan2(heightMm, halfMm / 2)));

    // From its vertex a parabola falls by y = h (x / w)^2 when its tangent at w crosses that of the vertex half way: the usual integral of sqrt(1 + (2 h x / w^2)^2).
    private static double ParabolaMm(double halfMm, double heightMm)
    {
        double steep = 2 * heightMm / halfMm;
        return halfMm / 2 * (Math.Sqrt(1 + (steep * steep)) + (Math.Asinh(steep) / steep));
    }
}
