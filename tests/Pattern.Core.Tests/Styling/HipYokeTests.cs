using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class HipYokeTests
{
    private static readonly EdgeName YokeSeam = EdgeName.Of("yoke seam");

    // Everywhere as far below the closed waist, to 1/16 in where the line bends to be square to the side of a very shaped body: between its ends a line in one sweep, square to centre and side, lay up to 1/4 in nearer.
    [Theory]
    [InlineData("32", "40", 3.5, 1.0)]
    [InlineData("24", "39", 3.5, 1.6)]
    [InlineData("44", "46", 3, 1.0)]
    public void HipYoke_Line_RunsParallelToTheClosedWaist(string waistGirth, string hipGirth, double inches, double off)
    {
        Block skirt = SkirtBlock.For(Bodies.Inches(waistGirth, hipGirth)).Draft().HipYoke(Length.FromInches(inches));

        foreach (Panel yoke in Yokes(skirt))
        {
            (double X, double Y)[] waist = Sewn.Points(yoke.FindEdge(EdgeName.Waist).Stretches[0]);
            (double X, double Y)[] line = Sewn.Points(yoke.FindEdge(YokeSeam).Stretches[0]);
            Assert.All(line, p => Assert.Equal(inches * 25.4, waist.Min(q => Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y)))), off));
            Assert.InRange(Sewn.SharpestTurnDegrees(line), 0, 0.5);
        }
    }

    // Level: on the panel as it was cut, both ends of the lower panel's top are as high, but for what truing moves the side by.
    [Fact]
    public void HipYoke_Level_IsAtTheSideAsLowAsAtTheCentre()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        Block skirt = block.HipYoke(Tape.Inches("4"), line: YokeLine.Level);

        // Along the panels, so that on a side that leans the way down is longer than straight down, by a fourteenth where it leans by 21 degrees.
        double level = block.FindPanel(PanelName.Back).FindEdge(EdgeName.Centre).End.Y.Millimeters - 101.6;
        foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
        {
            Panel quarter = block.FindPanel(name);
            Panel yoke = skirt.FindPanel(PanelName.Of(name + " yoke"));
            double side = quarter.FindEdge(EdgeName.SideSeam).Start.Y.Millimeters - level;
            Assert.InRange(Sewn.LengthMm(yoke.FindEdge(EdgeName.SideSeam)), side, side * 1.07);
            Assert.Equal(quarter.FindEdge(EdgeName.Centre).End.Y.Millimeters - level, Sewn.LengthMm(yoke.FindEdge(EdgeName.Centre)), 1e-6);
        }
    }

    // Half a centimetre of what is left of the darts below is eased in, what is more comes off the side; gathered, all of it goes into the gathers.
    [Fact]
    public void HipYoke_WhatIsLeftOfDarts_IsEasedInFirst()
    {
        Block plain = SkirtBlock.For(Bodies.Example).Draft().HipYoke(Tape.Inches("3"));

        Assert.All(plain.Seams.Seams.Where(seam => seam.First.EdgeName == YokeSeam), seam => Assert.InRange(seam.Ease.Millimeters, 1, 5.0001));
        Assert.True(plain.Report.Passed, plain.Report.ToString());
    }

    [Property(MaxTest = 80)]
    public Property HipYoke_AnyBodyAndDepth_SewsToItsEaseAndKeepsTheWaist() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from depth in Bodies.Range(40, 130)
         from fullness in Gen.Frequency((2, Gen.Constant(1.0)), (1, Bodies.Range(1, 3)))
         from line in Gen.Elements(YokeLine.Parallel, YokeLine.Level)
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, depth, fullness, line)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                skirt = c.asked.Apply(SkirtBlock.For(c.body)).Draft().HipYoke(Length.FromMillimeters(c.depth), Ratio.FromDecimalFractions(c.fullness), c.line);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double waist = Sewn.WaistMm(skirt) - c.body[BodyMeasurement.WaistGirth].Millimeters - c.asked.WaistEase;
            double seams = skirt.Seams.Seams.Max(seam => Math.Abs(
                Sewn.LengthMm(skirt.FindPanel(seam.First.PanelName).FindEdge(seam.First.EdgeName))
                - Sewn.LengthMm(skirt.FindPanel(seam.Second.PanelName).FindEdge(seam.Second.EdgeName)) - seam.Ease.Millimeters));
            return (skirt.Report.Passed && Math.Abs(waist) < 0.02 && seams < 0.02).Label($"{waist} {seams}\n{skirt.Report}");
        });

    private static Panel[] Yokes(Block skirt) => [.. skirt.Panels.Where(panel => panel.Name.Text.EndsWith("yoke", StringComparison.Ordinal))];
}
