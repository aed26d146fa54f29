using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class CircleTests
{
    // Closed forms, derived: radius W / (2 pi f), hem W + 2 pi f L, area L W + pi f L^2, for a waist of 68 cm and a length of 60 cm.
    [Theory]
    [InlineData(0.25, 432.901, 1622.48, 0.6907)]
    [InlineData(1 / 3.0, 324.676, 1936.64, 0.785)]
    [InlineData(0.5, 216.451, 2564.96, 0.9735)]
    [InlineData(0.75, 144.3, 3507.43, 1.2562)]
    [InlineData(1, 108.225, 4449.91, 1.539)]
    [InlineData(1.5, 72.15, 6334.87, 2.1045)]
    [InlineData(2, 54.113, 8219.82, 2.6699)]
    public void Circle_WaistOf68AndLengthOf60_IsTheClosedForm(double part, double radius, double hem, double area)
    {
        Block skirt = Block(680, 940).Circle(Ratio.FromDecimalFractions(part));

        Assert.Equal(680, Sewn.WaistMm(skirt), 1e-2);
        Assert.Equal(hem, skirt.Panels.Sum(panel => 2 * Sewn.LengthMm(panel.FindEdge(EdgeName.Hem))), 2e-2);
        Assert.Equal(area, skirt.Panels.Sum(panel => 2 * Sewn.AreaMm2(Sewn.Points(panel.SeamOutline()))) / 1e6, 1e-4);
        Assert.All(skirt.Panels, panel => Assert.Equal(radius, panel.FindEdge(EdgeName.Waist).Stretches[0].Segments[0].AsArc().Radius.Millimeters, 1e-3));
        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
    }

    // (H + 2 - W) / (2 pi d) in centimetres: 0.2228 for a hip of 94 at the depth of 20, so a quarter just passes; a hip of 98 needs 0.2546.
    [Fact]
    public void Circle_QuarterThatTheHipDoesNotPass_IsRefusedWithThePartThatIsNeeded()
    {
        Assert.True(Block(680, 940).Circle(Ratio.FromPercent(25)).Report.Passed);

        ConstructionException e = Assert.Throws<ConstructionException>(() => Block(680, 980).Circle(Ratio.FromPercent(25)));

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
        Assert.Contains("at least 25.5 % of a circle", e.Message, StringComparison.Ordinal);
    }

    // From memory: the waist is cut 2 cm smaller, which gives a radius of 105.04 mm for a waist of 68 cm; sewn it is what it is.
    [Fact]
    public void From_ACircle_CutsTheWaistSmallerThanItIsSewn()
    {
        Block skirt = Block(680, 940).FullCircle();

        PieceSet pieces = SkirtPattern.From(skirt);

        Assert.Equal(105.04, pieces.Find(PanelName.Front).Panel.FindEdge(EdgeName.Waist).Stretches[0].Segments[0].AsArc().Radius.Millimeters, 5e-3);
        Assert.Equal(108.225, skirt.FindPanel(PanelName.Front).FindEdge(EdgeName.Waist).Stretches[0].Segments[0].AsArc().Radius.Millimeters, 5e-3);
        Assert.Equal(680 + 30, pieces.Find(SkirtPattern.Waistband).Panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters, 1e-6);
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    // From memory: parts on the bias drop by 1 to 4 cm, so 3 cm are left there until the skirt has hung.
    [Fact]
    public void Circle_Steps_SayHowMuchIsLeftBelowTheHemOnTheBias()
    {
        string steps = string.Join(" ", Block(680, 940).FullCircle().ToStepsText().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        int at = steps.IndexOf("lower where it lies on the bias", StringComparison.Ordinal);

        Assert.True(at >= 0, steps);
        Assert.Matches("run out to nothing at both: ~?(3(\\.0)? cm|30(\\.0)? mm)", steps.Substring(at, Math.Min(160, steps.Length - at)));
    }

    // The allowance of the zip is wider than the hem: measured along chords of the curved hem, its turn-up seemed to be cut off there.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.5)]
    [InlineData(1.5)]
    [InlineData(2)]
    public void From_AnyCircle_MakesPiecesThatPass(double part)
    {
        PieceSet pieces = SkirtPattern.From(Block(680, 940).Circle(Ratio.FromDecimalFractions(part)));

        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    [Property(MaxTest = 150)]
    public Property Circle_AnyBody_PassesOrSaysWhatTheHipNeeds() => Prop.ForAll(
        (from body in Bodies.Any from part in Bodies.Range(0.25, 2) select (body, part)).ToArbitrary(),
        c =>
        {
            double waist = c.body[BodyMeasurement.WaistGirth].Millimeters;
            double hip = c.body[BodyMeasurement.HipGirth].Millimeters;
            SkirtBlock block;
            try
            {
                block = SkirtBlock.For(c.body).Draft();
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            bool passes = waist + (2 * Math.PI * c.part * block.Levels.UpperHip.Millimeters) >= hip + 20;
            try
            {
                Block skirt = block.Circle(Ratio.FromDecimalFractions(c.part));
                return (passes && skirt.Report.Passed && Math.Abs(Sewn.WaistMm(skirt) - waist) < 0.02).Label(skirt.Report.ToString());
            }
            catch (ConstructionException e)
            {
                return (!passes && e.Code == DiagnosticCode.DesignRefused).Label(e.Message);
            }
        });

    private static SkirtBlock Block(double waist, double hip)
        => SkirtBlock.For(Bodies.Millimetres(waist, hip)).WithLength(Length.FromMillimeters(600)).Draft();
}
