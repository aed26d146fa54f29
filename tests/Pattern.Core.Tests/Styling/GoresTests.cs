using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class GoresTests
{
    // Closed forms, derived, for a waist of 69 and a hip of 98 cm with ease: W / n, H / n, and (H - W) / 2n taken in by each edge.
    [Theory]
    [InlineData(4, 172.5, 245, 36.25)]
    [InlineData(6, 115, 163.333, 24.167)]
    [InlineData(8, 86.25, 122.5, 18.125)]
    public void Gores_WaistOf69AndHipOf98_TakeInTheClosedForm(int count, double waist, double hip, double takenIn)
    {
        Block skirt = SkirtBlock.For(Bodies.Millimetres(690, 955)).WithHipEase(Length.FromMillimeters(25)).WithLength(Length.FromMillimeters(600)).Draft().Gores(count);

        Panel gore = Assert.Single(skirt.Panels);
        Assert.Equal(count, skirt.TimesOf(gore.Name));
        Assert.Equal(waist, Sewn.LengthMm(gore.FindEdge(EdgeName.Waist)), 1e-2);
        double width = gore.Notches[0].Position.DistanceTo(gore.Notches[1].Position).Millimeters;
        Assert.Equal(hip, width, 1e-3);
        Assert.Equal(takenIn, (width - Sewn.LengthMm(gore.FindEdge(EdgeName.Waist))) / 2, 1e-2);
        Assert.True(skirt.Report.Passed, skirt.Report.ToString());

        // The hem of a gore is its hip and twice the flare, which is laid off straight: 5 cm. Along its arc the hem is no more than 0.3 mm longer.
        Assert.InRange(Sewn.LengthMm(gore.FindEdge(EdgeName.Hem)), hip + 100, hip + 100.3);
    }

    [Property(MaxTest = 200)]
    public Property Gores_AnyBodyCountAndFlare_GiveWaistAndHipOfTheBlockWithEqualSeams() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from count in Gen.Choose(3, 12)
         from flare in Bodies.Range(0, 150)
         from level in Gen.Frequency((1, Gen.Constant((double?)null)), (1, Bodies.Range(0.4, 0.8).Select(share => (double?)(share * asked.SkirtLength))))
         select (body, asked, count, flare, level)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                skirt = c.asked.Apply(SkirtBlock.For(c.body)).Draft().Gores(c.count, Length.FromMillimeters(c.flare), c.level is { } mm ? Length.FromMillimeters(mm) : null);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            Panel gore = skirt.Panels[0];
            double waist = Sewn.WaistMm(skirt) - c.body[BodyMeasurement.WaistGirth].Millimeters - c.asked.WaistEase;
            double hip = (c.count * gore.Notches[0].Position.DistanceTo(gore.Notches[1].Position).Millimeters) - c.body[BodyMeasurement.HipGirth].Millimeters - c.asked.HipEase;
            double seams = Sewn.LengthMm(gore.FindEdge(EdgeName.Of("right"))) - Sewn.LengthMm(gore.FindEdge(EdgeName.Of("left")));
            double joined = Sewn.CornerDegrees(gore.FindEdge(EdgeName.Of("right")).Stretches[0], gore.FindEdge(EdgeName.Hem).Stretches[0])
                + Sewn.CornerDegrees(gore.FindEdge(EdgeName.Hem).Stretches[0], gore.FindEdge(EdgeName.Of("left")).Stretches[0]);
            double sharpest = Sewn.SharpestTurnDegrees(Sewn.Points(gore.FindEdge(EdgeName.Hem).Stretches[0], 4000));
            return (skirt.Report.Passed && Math.Abs(waist) < 0.02 && Math.Abs(hip) < 0.02 && Math.Abs(seams) < 0.02 && Math.Abs(joined - 180) < 0.5 && sharpest < 1)
                .Label($"{waist} {hip} {seams} {joined} {sharpest}\n{skirt.Report}");
        });

    [Fact]
    public void Gores_EveryWomanOfAnsur_PassEveryCheck()
    {
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            Block skirt = SkirtBlock.For(body).Draft().Gores();
            Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
        }
    }

    [Fact]
    public void Gores_FlareFromAboveTheHip_IsRefused()
        => Assert.Equal(DiagnosticCode.DesignRefused, Assert.Throws<ConstructionException>(() => SkirtBlock.For(Bodies.Example).Draft().Gores(from: Tape.Inches("5"))).Code);

    [Fact]
    public void From_Gores_CutsThemAll()
    {
        var pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().Gores(8, from: Tape.Inches("16")));

        Assert.Equal("gore: cut 8 of main cloth, in pairs", pieces.CutList[0].ToString());
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Equal(32 + 1, pieces.Find(SkirtPattern.Waistband).Panel.FindEdge(EdgeName.Waist).SewnLength.Inches, 6);
    }

    // A child's skirt hangs 7 in below the hip: with the usual flare of 2 in its seams would bend by 17 degrees and pinch the hip. Common practice, no source: no more than an eighth.
    [Fact]
    public void Gores_OfAShortSkirt_FlareByAnEighthOfWhatHangsBelowTheHip()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("23", "26")).WithLength(Tape.Inches("15")).Draft();
        double below = 15 - block.Levels.UpperHip.Inches;

        Panel gore = block.Gores(6).Panels[0];

        double hip = gore.Notches[0].Position.DistanceTo(gore.Notches[1].Position).Inches;
        PanelEdge hem = gore.FindEdge(EdgeName.Hem);
        Assert.InRange((hem.Start.DistanceTo(hem.End).Inches - hip) / 2, (below / 8) - 0.14, below / 8);
    }
}
