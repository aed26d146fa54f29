using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Panels;

public class ConstructionTests
{
    /// <summary>A sleeve cap y = h/2 (1 + cos(pi x / w)) on either side of the crown, each side with its own width.</summary>
    private static readonly Construction<CapAsked, Cap> SleeveCap = Construction
        .Of<CapAsked, Cap>("sleeve cap", (asked, unknowns) => new Cap(
            Half(unknowns.Length(1).Millimeters, unknowns.Length(2).Millimeters),
            Half(unknowns.Length(1).Millimeters, asked.WidthMm - unknowns.Length(2).Millimeters)))
        .WithLength("cap height", asked => Mm((asked.FrontMm + asked.BackMm) / 3), asked => Mm(0.1 * (asked.FrontMm + asked.BackMm)), asked => Mm(0.5 * (asked.FrontMm + asked.BackMm)))
        .WithLength("crown from the front underarm", asked => Mm(asked.WidthMm / 2), asked => Mm(0.4 * asked.WidthMm), asked => Mm(0.6 * asked.WidthMm))
        .MustMeasure("front cap", cap => cap.Front.Length, asked => Mm(asked.FrontMm))
        .MustMeasure("back cap", cap => cap.Back.Length, asked => Mm(asked.BackMm));

    // A table of symmetric cosine caps, from C = (2b/pi) sqrt(1 + k^2) E(m), k = pi h / b, m = k^2 / (1 + k^2); centimetres.
    [Theory]
    [InlineData(33.4, 42.567, 12.196)]
    [InlineData(33.4, 44.567, 13.695)]
    [InlineData(33.4, 45.067, 14.057)]
    [InlineData(33.4, 46.567, 15.118)]
    [InlineData(30.4, 45.067, 15.580)]
    [InlineData(36.4, 45.067, 12.247)]
    [InlineData(40.0, 45.067, 9.477)]
    public void Draw_ASymmetricSleeveCap_HasTheHeightOfTheClosedForm(double width, double length, double height)
    {
        Cap cap = SleeveCap.Draw(new CapAsked(10 * width, 5 * length, 5 * length));

        Assert.Equal(10 * height, cap.Front.End.YMm, 0.006);
        Assert.Equal(5 * width, cap.Front.End.XMm, 1e-6);
    }

    // Front and back differ: the halves of two different cosines, their lengths from the elliptic integral.
    [Theory]
    [InlineData(334, 135, 161)]
    [InlineData(334, 120, 175)]
    [InlineData(304, 150, 140)]
    public void Draw_ASleeveCapWithTwoLengths_FindsHeightAndCrown(double widthMm, double heightMm, double crownMm)
    {
        var asked = new CapAsked(widthMm, HalfLengthMm(heightMm, crownMm), HalfLengthMm(heightMm, widthMm - crownMm));

        bool isMet = SleeveCap.TryDraw(asked, out ConstructionOutcome<Cap> outcome);

        Assert.True(isMet, outcome.ToString());
        Assert.Equal(heightMm, outcome.Drawn!.Front.End.YMm, 1e-5);
        Assert.Equal(crownMm, outcome.Drawn.Front.End.XMm, 1e-5);
        Assert.Equal(asked.FrontMm, outcome.Drawn.Front.LengthMm, 1e-9);
        Assert.InRange(outcome.Drawings, 3, 20);
    }

    [Fact]
    public void Draw_WhatTheLimitsForbid_SaysWhatIsOffAndAtItsLimit()
    {
        var asked = new CapAsked(334, HalfLengthMm(135, 110), HalfLengthMm(135, 224));

        ConstructionException refused = Assert.Throws<ConstructionException>(() => SleeveCap.Draw(asked));
        bool isMet = SleeveCap.TryDraw(asked, out ConstructionOutcome<Cap> outcome);

        Assert.Equal(DiagnosticCode.ConstructionNotMet, refused.Code);
        Assert.False(isMet);
        Assert.Equal(["crown from the front underarm"], outcome.AtLimit);
        Assert.Equal(2, outcome.Off.Count);
    }

    [Fact]
    public void TryDraw_WhatCannotBeDrawnAtAll_IsNotMet()
    {
        Construction<double, object> never = Construction
            .Of<double, object>("nothing", (_, _) => throw new ConstructionException(DiagnosticCode.LandmarkNotDrawn, "x"))
            .WithLength("a", _ => Mm(1), _ => Mm(0), _ => Mm(2))
            .MustMeasure("b", _ => Mm(1), _ => Mm(1));

        Assert.False(never.TryDraw(1, out ConstructionOutcome<object> outcome));
        Assert.Null(outcome.Drawn);
    }

    // A chord of a circle: the height of the bow from its angle, by school geometry.
    [Fact]
    public void Draw_ABowOfGivenTurn_HasTheHeightOfTheCircle()
    {
        Construction<double, CubicBezier> bow = Construction
            .Of<double, CubicBezier>("bow", (chord, unknowns) => CubicBezier.Between(
                Point2D.Origin, Direction.FromAngle(unknowns.Angle(1)), Point2D.FromMillimeters(chord, 0), Direction.FromAngle(-unknowns.Angle(1))))
            .WithAngle("leaving", _ => Angle.FromDegrees(20), _ => Angle.FromDegrees(0), _ => Angle.FromDegrees(80))
            .MustTurn("turn", curve => curve.StartDirection.AngleTo(curve.EndDirection), _ => Angle.FromDegrees(-90));

        Assert.Equal(45, bow.Draw(200).StartDirection.Angle.Degrees, 1e-8);
    }

    // The complete elliptic integral of the second kind by the arithmetic-geometric mean (Abramowitz and Stegun 17.6), for half a cosine cap. Eight rounds are
    // more than doubles can tell.
    private static double HalfLengthMm(double heightMm, double widthMm)
    {
        double k = Math.PI * heightMm / (2 * widthMm);
        double m = k * k / (1 + (k * k));
        double a = 1;
        double b = Math.Sqrt(1 - m);
        double c = Math.Sqrt(m);
        double sum = c * c / 2;
        double power = 1;

        // Digits double each time: eight rounds are more than a double holds. A test for c = 0 might never end: a and b can stay one bit apart.
        for (int i = 0; i < 8; i++, power *= 2)
        {
            (a, b, c) = ((a + b) / 2, Math.Sqrt(a * b), (a - b) / 2);
            sum += power * c * c;
        }

        return 2 * widthMm / Math.PI * Math.Sqrt(1 + (k * k)) * (Math.PI / (2 * a) * (1 - sum));
    }

    private static CurvePath Half(double height, double width)
    {
        const int Parts = 48;
        double Y(double x) => height / 2 * (1 - Math.Cos(Math.PI * x / width));
        double Slope(double x) => height / 2 * Math.PI / width * Math.Sin(Math.PI * x / width);
        double step = width / Parts;
        return CurvePath.FromSegments(Enumerable.Range(0, Parts).Select(i =>
        {
            double x = i * step;
            return PathSegment.FromCubic(new CubicBezier(
                x, Y(x), x + (step / 3), Y(x) + (Slope(x) * step / 3), x + (2 * step / 3), Y(x + step) - (Slope(x + step) * step / 3), x + step, Y(x + step)));
        }));
    }

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private sealed record CapAsked(double WidthMm, double FrontMm, double BackMm);

    private sealed record Cap(CurvePath Front, CurvePath Back);
}
