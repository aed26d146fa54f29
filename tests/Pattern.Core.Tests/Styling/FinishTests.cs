using System;
using System.Collections.Generic;
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

/// <summary>Pockets, zip and lining.</summary>
public class FinishTests
{
    private static readonly EdgeName Top = EdgeName.Of("top");

    private static readonly Dictionary<string, Func<Block, Block>> Skirts = new()
    {
        ["seam pockets"] = block => block.SeamPockets(),
        ["a-line with seam pockets"] = block => block.ALine().SeamPockets(),
        ["pencil with seam pockets"] = block => block.Pencil().SeamPockets(),
        ["slanted pockets"] = block => block.SlantedPockets(),
        ["flared with slanted pockets"] = block => block.Flared().SlantedPockets(),
        ["banded with slanted pockets"] = block => block.ContourBand().SlantedPockets(),
        ["faced with slanted pockets"] = block => block.LoweredWaist().FacedWaist().SlantedPockets(),
        ["zip"] = block => block.Zip(),
        ["zip, then slanted pockets"] = block => block.Zip().SlantedPockets(),
        ["side zip"] = block => block.ALine().Zip(ZipPlace.Side),
        ["side zip in a yoke"] = block => block.HipYoke().Zip(ZipPlace.Side),
        ["faced, zip at the side"] = block => block.FacedWaist().Zip(ZipPlace.Side).Lined(),
        ["lined"] = block => block.Lined(),
        ["lined a-line"] = block => block.ALine().Lined(),
        ["lined flare"] = block => block.Flared(spread: Tape.Inches("6")).Lined(),
        ["lined gores"] = block => block.Gores().Lined(),
        ["lined pleats"] = block => block.KnifePleats().Lined(),
        ["lined tiers, faced"] = block => block.Tiers().FacedWaist().Lined(),
        ["lined yoke"] = block => block.HipYoke(fullness: Ratio.FromPercent(150)).Lined(),
        ["lined unequal gores with a band"] = block => block.UnequalGores().ContourBand().Zip().Lined(),
        ["lowered flare, faced"] = block => block.LoweredWaist().Flared().FacedWaist().Zip().Lined(),
        ["flared with a band, lined"] = block => block.Flared().ContourBand().Lined(),
        ["tiers with a band, lined"] = block => block.Tiers().ContourBand().Zip().Lined(),
        ["lined godets"] = block => block.Gores().Godets().Lined(),
        ["lined pleats from a yoke"] = block => block.HipYoke().BoxPleats().Lined(),
        ["lined circle"] = block => block.FullCircle().Lined(),
        ["slit pencil, lined"] = block => block.Pencil(room: WalkingRoom.Slit).Lined(),
        ["lined, then slanted pockets"] = block => block.Lined().SlantedPockets(),
        ["everything"] = block => block.LoweredWaist().Pencil().ContourBand().SeamPockets().Zip().Lined(),
    };

    public static TheoryData<string> Names => new(Skirts.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Finish_OfASkirt_PassesWithPiecesAndSeamsAndIsMadeAgain(string name)
    {
        Block skirt = Skirts[name](SkirtBlock.For(Bodies.Example).Draft());

        PieceSet pieces = SkirtPattern.From(skirt);

        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.All(skirt.SeamsToCsv().TrimEnd('\n').Split('\n').Skip(1), row => Assert.EndsWith(",true", row, StringComparison.Ordinal));
        Assert.Equal(skirt.Draw().ToSvg(), skirt.ToBuilder().Draft().Draw().ToSvg());
    }

    // Measured with chords: the closed waist is that of the body (or of the level it was lowered to), and what is sewn of each pair of edges agrees, stretch by stretch.
    [Property(MaxTest = 200)]
    public Property Finish_AnyBody_HasTheClosedWaistOfItsTargetAndSeamsThatWalk() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from name in Gen.Elements(Skirts.Keys.AsEnumerable())
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, name)).ToArbitrary(),
        c =>
        {
            Block block;
            Block skirt;
            try
            {
                block = c.asked.Apply(SkirtBlock.For(c.body)).Draft();
                skirt = Skirts[c.name](block);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            bool isLowered = skirt.Designs.Any(design => design.Name == "lowered waist");
            double target = isLowered ? Sewn.WaistMm(block.LoweredWaist()) : c.body[BodyMeasurement.WaistGirth].Millimeters + c.asked.WaistEase;
            Panel[] bands = [.. skirt.Panels.Where(panel => panel.TryFindEdge(Top, out _))];
            double waist = bands.Length == 0 ? Sewn.WaistMm(skirt) : bands.Sum(panel => skirt.TimesOf(panel.Name) * Sewn.LengthMm(panel.FindEdge(Top)));
            double seams = skirt.Seams.Walk([.. skirt.Panels]).SelectMany(walk => walk.Stretches).Max(stretch => Math.Abs(stretch.Off.Millimeters));
            return (skirt.Report.Passed && Math.Abs(waist - target) < 0.03 && seams < 0.02).Label($"{c.name}: waist {waist - target}, seams {seams}\n{skirt.Report}");
        });

    // Every edge that is sewn stands in the plan with its whole length: bags and layers, the side above and below an opening, bands and facings, linings. What is free is hemmed, neatened,
    // sewn to the zip, caught by hand, or lies on the fold; a waist without a piece of its own has the straight waistband.
    [Theory]
    [MemberData(nameof(Names))]
    public void Seams_OfAFinishedSkirt_AddUpToEveryEdgeThatIsSewn(string name)
    {
        string[] open = ["slit", "vent edge", "lining opening", "lining top"];
        Block skirt = Skirts[name](SkirtBlock.For(Bodies.Example).Draft());
        IReadOnlyList<SeamWalk> walks = skirt.Seams.Walk([.. skirt.Panels]);
        foreach (Panel panel in skirt.Panels)
        {
            foreach (PanelEdge edge in panel.Edges.Where(edge => edge.Role == EdgeRole.Seam && !open.Contains(edge.Name.Text)))
            {
                EdgeOf place = EdgeOf.Panel(panel.Name, edge.Name);
                double sewn = walks.Sum(walk => (walk.Seam.First == place ? walk.Whole.FirstLength.Millimeters : 0)
                    + (walk.Seam.Second == place && !walk.Seam.IsToMirrorImage ? walk.Whole.SecondLength.Millimeters : 0));
                bool isAtZip = panel.Name.Text == "back facing" && edge.Name == EdgeName.Centre;
                Assert.True(Math.Abs(sewn - (isAtZip ? 0 : Sewn.LengthMm(edge))) < 0.02, $"{name}: {place} {Sewn.LengthMm(edge)}, sewn {sewn}");
            }
        }
    }

    [Fact]
    public void ToJson_OfAFinishedSkirt_ThereAndBackIsTheSame()
    {
        Block skirt = Skirts["everything"](SkirtBlock.For(Bodies.Example).Draft());

        Block read = PatternDocument.FromJson(PatternDocument.Of(skirt).ToJson()).Block;

        Assert.Equal(skirt.SeamsToCsv(), read.SeamsToCsv());
        Assert.Equal(skirt.Seams.Seams.Where(seam => seam.IsToMirrorImage).Select(seam => seam.Name), read.Seams.Seams.Where(seam => seam.IsToMirrorImage).Select(seam => seam.Name));
        Assert.Equal(skirt.Draw().ToSvg(), read.ToBuilder().Draft().Draw().ToSvg());
    }

    // Both bags are cut to one line, and a hand of usual size goes in: 15 to 17 cm by usage, at the height and depth that are usual.
    [Fact]
    public void SeamPockets_AsUsual_LieWhereAHandIs()
    {
        Block skirt = SkirtBlock.For(Bodies.Millimetres(680, 940)).Draft().SeamPockets();
        Panel bag = skirt.FindPanel(PanelName.Of("front pocket bag"));
        double top = skirt.FindPanel(PanelName.Front).FindEdge(EdgeName.SideSeam).Start.Y.Millimeters;
        (double X, double Y)[] edge = [.. Sewn.Stretches(bag.FindEdge(EdgeName.Of("bag edge"))).SelectMany(points => points)];

        Assert.Equal(160, Sewn.LengthMm(bag.FindEdge(EdgeName.Of("mouth"))), 0.02);
        Assert.InRange(top - bag.FindEdge(EdgeName.Of("mouth")).Start.Y.Millimeters, 30, 50);
        Assert.InRange(top - edge.Min(point => point.Y), 250, 280);
        Assert.Contains(skirt.SeamsToCsv().Split('\n'), row => row.StartsWith("side seam above the pocket,back,side,40.000000,front,side,40.000000", StringComparison.Ordinal));
    }

    // The corner that is cut off the front is what the inner layer has more than the bag: 10 cm along the waist where no dart is in the way, 16 cm down the side.
    [Fact]
    public void SlantedPockets_Corner_IsWhatTheInnerLayerKeeps()
    {
        Block plain = SkirtBlock.For(Bodies.Millimetres(680, 940)).Draft().ALine();
        Block skirt = plain.SlantedPockets();
        double Area(string name) => Sewn.AreaMm2([.. skirt.FindPanel(PanelName.Of(name)).Edges.SelectMany(Sewn.Stretches).SelectMany(points => points)]);
        double before = Sewn.AreaMm2([.. plain.FindPanel(PanelName.Front).Edges.SelectMany(Sewn.Stretches).SelectMany(points => points)]);

        Assert.Equal(before - Area("front"), Area("front pocket") - Area("pocket bag"), 2);
        Assert.Equal(100, Sewn.LengthMm(skirt.FindPanel(PanelName.Of("front pocket")).FindEdge(EdgeName.Waist)), 0.02);
        Assert.Equal(160, Sewn.LengthMm(skirt.FindPanel(PanelName.Of("front pocket")).FindEdge(EdgeName.SideSeam)), 0.02);
    }

    // By hand: a waist of 24 in opened by a zip of 7 in on both sides is 38 in around; a hip of 40 in does not pass, and passes from 8 in on.
    [Theory]
    [InlineData("7", false)]
    [InlineData("7 1/2", false)]
    [InlineData("8", true)]
    [InlineData(null, true)]
    public void Zip_Opening_LetsTheHipPassOrFails(string? length, bool passes)
    {
        Block skirt = SkirtBlock.For(Bodies.Inches("24", "40")).Draft().Zip(length: length is null ? null : Tape.Inches(length));

        Finding finding = skirt.Report.Findings.Single(one => one.Check == "waist and both sides of the zip, for the hip to pass");

        Assert.Equal(passes, finding.Passed);
        Assert.Equal(passes, skirt.Report.Passed);
        Assert.Equal(40, ((Length)finding.Target).Inches, 1e-6);
        if (length is not null)
        {
            Assert.Equal(24 + (2 * Tape.Inches(length).Inches), ((Length)finding.Measured).Inches, 1e-4);
        }
    }

    [Fact]
    public void Zip_AtTheSide_LaysTheBackOnTheFoldAndMarksTheSideSeam()
    {
        PieceSet pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().Zip(ZipPlace.Side, Tape.Inches("8")));

        PatternPiece back = pieces.Pieces.Single(piece => piece.Name == PanelName.Back);
        InternalLine stop = back.InternalLines.Single(line => line.Name == "zip stop");
        Assert.NotNull(back.FoldLine);
        Assert.Contains(pieces.CutList, row => row.ToString().StartsWith("back: cut 1 of main cloth on the fold", StringComparison.Ordinal));
        Assert.Equal(8, back.Panel.FindEdge(EdgeName.SideSeam).Stretches[0].LengthTo(back.Panel.FindEdge(EdgeName.SideSeam).Stretches[0].ClosestTo(stop.Path.Start)).Inches, 1e-4);
        PatternPiece band = pieces.Pieces.Single(piece => piece.Name == SkirtPattern.Waistband);
        Assert.Equal(["CB", "side", "CF", "side"], band.InternalLines.Where(line => line.Kind == InternalLineKind.Placement).Select(line => line.Name));
    }

    [Theory]
    [InlineData("lined", "back", "back lining")]
    [InlineData("lined a-line", "front", "front lining")]
    [InlineData("lined gores", "gore", "gore lining")]
    public void Lined_Panels_AreThoseOfTheSkirtButShorter(string name, string shell, string lining)
    {
        Block skirt = Skirts[name](SkirtBlock.For(Bodies.Example).Draft());
        Panel own = skirt.FindPanel(PanelName.Of(shell));
        Panel inside = skirt.FindPanel(PanelName.Of(lining));

        Assert.Equal(Sewn.LengthMm(own.FindEdge(EdgeName.Waist)), Sewn.LengthMm(inside.FindEdge(EdgeName.Of("lining top"))), 0.01);
        Assert.Equal(25.4, Sewn.LengthMm(own.Edges[1]) - Sewn.LengthMm(inside.Edges[1]), 0.01);
        Assert.Contains(SkirtPattern.From(skirt).CutList, row => row.ToString().StartsWith(lining + ": cut", StringComparison.Ordinal) && row.ToString().Contains("of lining", StringComparison.Ordinal));
    }

    // A lining as full as the skirt only adds weight: pleats are lined with an A-line of the same waist.
    [Fact]
    public void Lined_Pleats_HaveAnALineInside()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        Block skirt = block.KnifePleats().Lined();

        Assert.Equal(Sewn.WaistMm(block), 2 * skirt.Panels.Where(panel => panel.TryFindEdge(EdgeName.Of("lining top"), out _)).Sum(panel => Sewn.LengthMm(panel.FindEdge(EdgeName.Of("lining top")))), 0.02);
        Assert.Equal(
            Sewn.LengthMm(block.ALine().FindPanel(PanelName.Back).FindEdge(EdgeName.SideSeam)) - 25.4,
            Sewn.LengthMm(skirt.FindPanel(PanelName.Of("back lining")).FindEdge(EdgeName.SideSeam)),
            0.01);
    }

    [Fact]
    public void From_ADesignWithALiningAskedForInThePieces_IsLined()
    {
        PieceSet pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().ALine(), new SkirtPatternOptions { Lining = LiningChoice.Loose, LiningShorter = Tape.Inches("2") });

        Assert.Contains(pieces.Pieces, piece => piece.Name.Text == "front lining" && piece.InternalLines.Any(line => line.Name.EndsWith("hangs 2 in shorter than the skirt", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("a hand does not fit")]
    [InlineData("the bag would show at the hem")]
    [InlineData("a yoke has no whole side seam")]
    [InlineData("gores have no side seam")]
    [InlineData("one pocket at a side")]
    [InlineData("pocket and zip at one side")]
    [InlineData("zip and pocket at one side")]
    [InlineData("a slanted pocket cuts into a dart")]
    [InlineData("a wrap needs no zip")]
    [InlineData("the zip is longer than its seam")]
    [InlineData("lined twice")]
    [InlineData("a wrap has no centre front for a pocket")]
    [InlineData("nor for a slanted one")]
    [InlineData("godets below a band")]
    [InlineData("pockets before lining")]
    [InlineData("a shape after its pockets")]
    public void Finishes_ThatCannotBeMade_AreRefused(string why)
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();

        ConstructionException e = Assert.Throws<ConstructionException>(() => why switch
        {
            "a hand does not fit" => block.SeamPockets(Tape.Inches("4")),
            "the bag would show at the hem" => SkirtBlock.For(Bodies.Example).WithLength(Tape.Inches("12")).Draft().SeamPockets(),
            "a yoke has no whole side seam" => block.HipYoke().SeamPockets(),
            "gores have no side seam" => block.Gores().SlantedPockets(),
            "one pocket at a side" => block.SeamPockets().SlantedPockets(),
            "pocket and zip at one side" => block.SeamPockets().Zip(ZipPlace.Side),
            "zip and pocket at one side" => block.Zip(ZipPlace.Side).SlantedPockets(),
            "a slanted pocket cuts into a dart" => block.SlantedPockets(along: Tape.Inches("6")),
            "a wrap needs no zip" => block.Wrap().Zip(),
            "the zip is longer than its seam" => SkirtBlock.For(Bodies.Example).WithLength(Tape.Inches("16")).Draft().Zip(length: Tape.Inches("16")),
            "godets below a band" => block.Gores().Godets().ContourBand().Lined(),
            "a wrap has no centre front for a pocket" => block.Wrap().SeamPockets(),
            "nor for a slanted one" => block.Wrap().SlantedPockets(),
            "lined twice" => block.Lined().Lined(),
            "pockets before lining" => block.SlantedPockets().Lined(),
            _ => block.SeamPockets().ALine(),
        });

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
    }

    [Fact]
    public void Pockets_BelowAYoke_AreRefusedBecauseOfItsSeam()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();

        Assert.All(
            new Func<Block>[] { () => block.HipYoke().SeamPockets(), () => block.HipYoke().SlantedPockets(), () => block.ALine().HipYoke().SeamPockets() },
            pocketed => Assert.Contains("It has a yoke", Assert.Throws<ConstructionException>(pocketed).Message, StringComparison.Ordinal));
    }

    // A waist lowered and banded brings the hip notch up to the lower end of the opening; whether it lies just above or just below that end, bag and side agree.
    [Theory]
    [InlineData(794, 1009)]
    [InlineData(766, 981)]
    public void SeamPockets_HipNotchAtTheEndOfTheOpening_StandsOnTheBagToo(double waist, double hip)
    {
        Block skirt = Skirts["everything"](SkirtBlock.For(Bodies.Millimetres(waist, hip)).Draft());

        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
    }

    [Fact]
    public void Finishes_WomenOfAnsur_PassOrAreRefusedWithTheirReason()
    {
        foreach (string name in new[] { "seam pockets", "slanted pockets", "zip", "lined", "everything" })
        {
            int refused = 0;
            foreach (BodyMeasurements body in Bodies.Ansur.Where((_, i) => i % 24 == 7))
            {
                try
                {
                    Block skirt = Skirts[name](SkirtBlock.For(body).Draft());
                    Assert.True(skirt.Report.Passed, name + " " + body + "\n" + skirt.Report);
                }
                catch (ConstructionException e)
                {
                    Assert.NotNull(e.Step);
                    refused++;
                }
            }

            Assert.True(refused <= (name == "everything" ? 8 : 0), $"{name}: {refused} refused");
        }
    }
}
