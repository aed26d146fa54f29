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

public class UnequalGoresTests
{
    private static readonly EdgeName TowardFront = EdgeName.Of("toward front");
    private static readonly EdgeName TowardBack = EdgeName.Of("toward back");

    // Found in excerpts: L. I. Baldt, Clothing for Women, 1916 (US public domain), six gores for a hip of 40 in: half of the front and of the back gore a twelfth of the hip, 3 1/3 in, at
    // the bottom twice that, 6 2/3 in; two side gores halve what is left of half the hip, 6 2/3 in each. With a sweep of 90 in a side gore is left (45 - 13 1/3) / 2 = 15 5/6 in at the bottom: 3 1/3 in beside
    // the panel and 5 5/6 in at the hip seam more than at the hip.
    [Fact]
    public void UnequalGores_SixOfBaldt_HaveHerWidths()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("28", "40")).WithHipEase(Length.Zero).WithLength(Tape.Inches("36")).Draft();

        Block skirt = block.UnequalGores(6, flare: Length.FromInches(35.0 / 6), panelFlare: Length.FromInches(10.0 / 3));

        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
        Assert.Equal(["back gore", "side back gore", "side front gore", "front gore"], skirt.Panels.Select(panel => panel.Name.Text));
        Assert.All(new[] { "front gore", "back gore" }, name =>
        {
            Assert.Equal(40 / 12.0, HipInches(skirt, name), 1e-6);
            Assert.Equal(40 / 6.0, AcrossHemInches(skirt, name), 0.03);
        });
        Assert.All(new[] { "side front gore", "side back gore" }, name =>
        {
            Assert.Equal(20 / 3.0, HipInches(skirt, name), 1e-6);
            Assert.Equal(95 / 6.0, AcrossHemInches(skirt, name), 0.15);
        });
    }

    // The same book, seven gores: the back gore, cut in two at the centre back, is 1 in wider at the hip than the front one, each side of the centre; the front is half as wide again at the bottom.
    [Fact]
    public void UnequalGores_SevenOfBaldt_HaveHerWidths()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("28", "40")).WithHipEase(Length.Zero).WithLength(Tape.Inches("36")).Draft();

        Block skirt = block.UnequalGores(6, backWidth: Length.FromInches(2 * ((40 / 12.0) + 1)), panelFlare: Length.FromInches(40 / 24.0));

        Assert.Equal(40 / 8.0, AcrossHemInches(skirt, "front gore"), 0.02);
        Assert.Equal((40 / 12.0) + 1, HipInches(skirt, "back gore"), 1e-6);
        Assert.Equal((20 - (40 / 6.0) - 1) / 2, HipInches(skirt, "side gore".Replace("side", "side back", StringComparison.Ordinal)), 1e-6);
        var pieces = SkirtPattern.From(skirt);
        Assert.Equal(
            ["front gore: cut 1 of main cloth on the fold", "side front gore: cut 2 of main cloth, as a pair", "side back gore: cut 2 of main cloth, as a pair", "back gore: cut 2 of main cloth, as a pair"],
            pieces.CutList.Take(4).Select(row => row.ToString()));
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    // Both edges of a seam have the same marks at the same place, and no two seams of six gores the same: one cut beside the front gore, three beside the back gore.
    [Theory]
    [InlineData(4, "1 3")]
    [InlineData(6, "1 2 3")]
    [InlineData(8, "1 2 2 3")]
    public void UnequalGores_Notches_TellTheSeamsApart(int count, string expected)
    {
        Block skirt = SkirtBlock.For(Bodies.Example).Draft().UnequalGores(count);

        string Cuts(EdgeName edge) => string.Join(" ", skirt.Panels.Reverse().SelectMany(panel => panel.Notches.Where(notch => notch.Edge == edge)).Select(notch => notch.Count));
        Assert.Equal(expected, Cuts(TowardBack));
        Assert.Equal(expected, Cuts(TowardFront));
    }

    [Property(MaxTest = 150)]
    public Property UnequalGores_AnyBodyAndWidth_GiveWaistAndHipOfTheBlockWithEqualSeams() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from count in Gen.Elements(4, 6, 8)
         from front in Bodies.Range(60, 300)
         from back in Bodies.Range(60, 300)
         from flare in Bodies.Range(0, 150)
         from beside in Bodies.Range(0, 150)
         from level in Gen.Frequency((1, Gen.Constant((double?)null)), (1, Bodies.Range(0.4, 0.8).Select(share => (double?)(share * asked.SkirtLength))))
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, count, front, back, flare, beside, level)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                skirt = c.asked.Apply(SkirtBlock.For(c.body)).Draft().UnequalGores(
                    c.count, Mm(c.front), Mm(c.back), Mm(c.flare), Mm(c.beside), c.level is { } mm ? Mm(mm) : null);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double waist = Sewn.WaistMm(skirt) - c.body[BodyMeasurement.WaistGirth].Millimeters - c.asked.WaistEase;
            double hip = (2 * skirt.Panels.Sum(panel => HipInches(skirt, panel.Name.Text)) * 25.4) - c.body[BodyMeasurement.HipGirth].Millimeters - c.asked.HipEase;
            double seams = skirt.Seams.Seams.Max(seam => Math.Abs(
                Sewn.LengthMm(skirt.FindPanel(seam.First.PanelName).FindEdge(seam.First.EdgeName)) - Sewn.LengthMm(skirt.FindPanel(seam.Second.PanelName).FindEdge(seam.Second.EdgeName))));
            double notches = skirt.Seams.Seams.Where(seam => !seam.IsToMirrorImage).Max(seam => Math.Abs(FromHem(skirt, seam.First) - FromHem(skirt, seam.Second)));
            double sharpest = skirt.Panels.Max(panel => DartTurnTests.SharpestCornerDegrees(panel.FindEdge(EdgeName.Hem)));
            return (skirt.Report.Passed && Math.Abs(waist) < 0.02 && Math.Abs(hip) < 0.02 && seams < 0.02 && notches < 0.02 && sharpest < 0.05)
                .Label($"{waist} {hip} {seams} {notches} {sharpest}\n{skirt.Report}");
        });

    // The block's shaping goes into the seams, all of it: gores of the same width in sum as the block.
    [Fact]
    public void UnequalGores_EveryWomanOfAnsur_PassesOrIsRefusedWithItsReason()
    {
        int refused = 0;
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            SkirtBlock block = SkirtBlock.For(body).Draft();
            try
            {
                Block skirt = block.UnequalGores();
                Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
            }
            catch (ConstructionException e)
            {
                Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
                refused++;
            }
        }

        Assert.Equal(0, refused);
    }

    [Fact]
    public void UnequalGores_OddOrTooNarrow_AreRefused()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("24", "40")).Draft();

        Assert.Contains("4, 6 or 8", Assert.Throws<ConstructionException>(() => block.UnequalGores(5)).Message, StringComparison.Ordinal);
        Assert.Equal(DiagnosticCode.DesignRefused, Assert.Throws<ConstructionException>(() => block.UnequalGores(4, Tape.Inches("2"), Tape.Inches("2"))).Code);
        Assert.Equal(DiagnosticCode.DesignRefused, Assert.Throws<ConstructionException>(() => block.FullCircle().UnequalGores()).Code);
    }

    private static Length Mm(double mm) => Length.FromMillimeters(mm);

    private static double FromHem(Block skirt, EdgeOf edge)
    {
        Panel panel = skirt.FindPanel(edge.PanelName);
        PanelEdge seam = panel.FindEdge(edge.EdgeName);
        double at = panel.Notches.Single(notch => notch.Edge == edge.EdgeName).DistanceFromStart.Millimeters;
        return seam.Start.Y > seam.End.Y ? seam.SewnLength.Millimeters - at : at;
    }

    private static double HipInches(Block skirt, string name)
    {
        Panel gore = skirt.FindPanel(PanelName.Of(name));
        return gore.Notches.Count == 2
            ? gore.Notches[0].Position.DistanceTo(gore.Notches[1].Position).Inches
            : Math.Abs((gore.Notches[0].Position.X - gore.FindEdge(EdgeName.Centre).Start.X).Inches);
    }

    // Straight across, from seam to seam or from seam to centre.
    private static double AcrossHemInches(Block skirt, string name)
    {
        PanelEdge hem = skirt.FindPanel(PanelName.Of(name)).FindEdge(EdgeName.Hem);
        return hem.Start.DistanceTo(hem.End).Inches;
    }
}
