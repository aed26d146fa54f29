using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using UnitsNet;
using Xunit.Abstractions;

namespace Pattern.Core.Tests.Blocks;

public class GownBlockTests(ITestOutputHelper output)
{
    private static readonly BodyMeasurements Viola = BodiceBodies.Handbook.With(BodyMeasurement.HipGirth, "94");

    private static readonly GownBlock Usual = GownBlock.For(Viola).Draft();

    [Fact]
    public void Draft_Anybody_HasTheFivePanelsAndTheirEdges()
    {
        Assert.True(Usual.Report.Passed, Usual.Report.ToString());
        Assert.Equal(["back", "front", "skirt back", "skirt front", "sleeve"], Usual.Panels.Select(panel => panel.Name.Text));
        Assert.Equal(["waist", "side", "hem", "centre"], Usual.FindPanel(GownBlock.SkirtBack).Edges.Select(edge => edge.Name.Text));
        Assert.Equal([2, 2, 2, 2, 2], Usual.Panels.Select(panel => Usual.TimesOf(panel.Name)));
    }

    [Fact]
    public void Draft_WithoutSleeves_HasFourPanels()
        => Assert.Equal(4, GownBlock.For(Viola).WithoutSleeves().Draft().Panels.Count);

    // The bodice is the one that is drafted alone: nothing below the waist changes it.
    [Fact]
    public void Draft_TheBodiceOfIt_IsTheBodiceBlock()
    {
        BodiceBlock alone = BodiceBlock.For(Viola).Draft();
        foreach (Panel panel in alone.Panels)
        {
            Panel here = Usual.FindPanel(panel.Name);
            Assert.All(panel.Edges, edge => Assert.True(edge.End.DistanceTo(here.FindEdge(edge.Name).End).Millimeters < 1e-9));
        }
    }

    [Fact]
    public void Draft_EaseAndLengthAskedFor_AreThoseOfThePanels()
    {
        GownBlock gown = GownBlock.For(Viola).WithWaistEase(Length.FromCentimeters(4)).WithSkirtEase(Length.FromCentimeters(6)).WithSkirtLength(Length.FromCentimeters(70)).Draft();
        Assert.True(gown.Report.Passed, gown.Report.ToString());
        Panel back = gown.FindPanel(GownBlock.SkirtBack);
        Panel front = gown.FindPanel(GownBlock.SkirtFront);
        Assert.Equal(720, 2 * (BodiceSewn.ClosedMm(back, EdgeName.Waist) + BodiceSewn.ClosedMm(front, EdgeName.Waist)), 2);
        Assert.Equal(1000, 2 * (BodiceSewn.ClosedMm(back, EdgeName.Hem) + BodiceSewn.ClosedMm(front, EdgeName.Hem)), 2);
        Assert.Equal(700, BodiceSewn.ClosedMm(front, EdgeName.Centre), 2);
    }

    [Fact]
    public void Draft_WomenOfAnsur_PassOrAreRefusedWithAReason()
    {
        int passed = 0;
        int refused = 0;
        foreach (BodyMeasurements body in BodiceBodies.Ansur.Where((_, i) => i % 40 == 0))
        {
            try
            {
                GownBlock gown = GownBlock.For(body).Draft();
                Assert.True(gown.Report.Passed, body + "\n" + gown.Report);
                passed++;
            }
            catch (ConstructionException e)
            {
                output.WriteLine(body + ": " + e.Message);
                refused++;
            }
        }

        output.WriteLine($"{passed} pass, {refused} refused");
        Assert.InRange(refused, 0, 2);
    }

    // Measured as a cutter does who lays both waists together from the centre: the darts meet, and so do the sides.
    [Property(MaxTest = 40)]
    public Property Draft_AnyBody_DartsAndSidesMeetAtTheWaist() => Prop.ForAll(BodiceBodies.Any.ToArbitrary(), body =>
    {
        GownBlock gown;
        try
        {
            gown = GownBlock.For(body).WithoutSleeves().Draft();
        }
        catch (ConstructionException e)
        {
            return e.Message.StartsWith("PC", StringComparison.Ordinal).Label(e.Message);
        }

        Property all = gown.Report.Passed.Label(gown.Report.ToString());
        foreach ((PanelName above, PanelName below) in new[] { (PanelName.Back, GownBlock.SkirtBack), (PanelName.Front, GownBlock.SkirtFront) })
        {
            PanelEdge bodice = gown.FindPanel(above).FindEdge(EdgeName.Waist);
            PanelEdge skirt = gown.FindPanel(below).FindEdge(EdgeName.Waist);
            double off = BodiceSewn.ClosedMm(gown.FindPanel(above), EdgeName.Waist) - BodiceSewn.ClosedMm(gown.FindPanel(below), EdgeName.Waist);
            all = all.And((Math.Abs(off) < 0.01).Label($"{below} waist off by {off}"));
            if (bodice.Darts.Count == skirt.Darts.Count && bodice.Darts.Count > 0)
            {
                double nearest = bodice.Stretches[^1].Length.Millimeters - skirt.Stretches[0].Length.Millimeters;
                all = all.And((Math.Abs(nearest) < 0.01).Label($"{below} dart off by {nearest}"));
            }
        }

        return all;
    });

    [Fact]
    public void From_AGown_MakesPiecesThatPass()
    {
        PieceSet pieces = GownPattern.From(Usual, new GownPatternOptions { Bodice = new BodicePatternOptions { Label = PieceLabel.For("Gown").ForWhom("Viola") } });
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Equal(
            ["front", "back", "skirt front", "skirt back", "sleeve", "front neckline facing", "back neckline facing"],
            pieces.Pieces.Select(piece => piece.Name.Text));
        Assert.Equal(DiagnosticCode.NotThisGarment, Assert.Throws<ConstructionException>(() => GownPattern.From(BodiceBlock.For(Viola).Draft())).Code);
    }
}
