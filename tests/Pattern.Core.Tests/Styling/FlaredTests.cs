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

public class FlaredTests
{
    [Fact]
    public void Flared_EveryWomanOfAnsur_PassesEveryCheck()
    {
        foreach (BodyMeasurements body in Bodies.Ansur.Where((_, i) => i % 4 == 0))
        {
            Block skirt = SkirtBlock.For(body).Draft().Flared();
            Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
        }
    }

    [Property(MaxTest = 200)]
    public Property Flared_AnyBodyAndAmount_KeepsWaistAndSeamsAndASmoothHem() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from slashes in Gen.Choose(0, 8)
         from spread in Bodies.Range(0, 120)
         from falls in Gen.Elements(FlareFalls.Evenly, FlareFalls.TowardSide, FlareFalls.TowardCentre)
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, slashes, spread, falls)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                skirt = c.asked.Apply(SkirtBlock.For(c.body)).Draft().Flared(c.slashes, Length.FromMillimeters(c.spread), c.falls);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double off = Sewn.WaistMm(skirt) - c.body[BodyMeasurement.WaistGirth].Millimeters - c.asked.WaistEase;
            double sides = Sewn.LengthMm(skirt.FindPanel(PanelName.Back).FindEdge(EdgeName.SideSeam)) - Sewn.LengthMm(skirt.FindPanel(PanelName.Front).FindEdge(EdgeName.SideSeam));
            double sharpest = skirt.Panels.Max(panel => Sewn.SharpestTurnDegrees(Sewn.Points(panel.FindEdge(EdgeName.Hem).Stretches[0])));
            double waists = skirt.Panels.Max(panel => Sewn.SharpestTurnDegrees(Sewn.Points(panel.FindEdge(EdgeName.Waist).Stretches[0])));
            return (skirt.Report.Passed && Math.Abs(off) < 0.02 && Math.Abs(sides) < 0.02 && sharpest < 1.5 && waists < 3).Label($"{off} {sides} {sharpest} {waists}\n{skirt.Report}");
        });

    // Every slash adds its spread to the hem, measured straight; along the arc it is a little more. Darts and sides add theirs whatever the slashes do.
    [Theory]
    [InlineData(FlareFalls.Evenly)]
    [InlineData(FlareFalls.TowardSide)]
    [InlineData(FlareFalls.TowardCentre)]
    public void Flared_Slashes_AddTheirSpreadToTheHem(FlareFalls falls)
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        double Hem(int slashes) => Sewn.LengthMm(block.Flared(slashes, Tape.Inches("2"), falls, Length.Zero).FindPanel(PanelName.Front).FindEdge(EdgeName.Hem));

        Assert.InRange(Hem(4) - Hem(0), 4 * 50.8, 4 * 50.8 * 1.002);
    }

    [Fact]
    public void From_AFlaredSkirt_MakesPiecesThatPass()
        => Assert.True(SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().Flared()).Report.Passed);
}
