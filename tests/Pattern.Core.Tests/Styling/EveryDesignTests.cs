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

/// <summary>What holds of every design and of those that go on from each other, over bodies and options.</summary>
public class EveryDesignTests
{
    private static readonly Dictionary<string, Func<Block, Block>> Designs = new()
    {
        ["a-line"] = block => block.ALine(),
        ["flared"] = block => block.Flared(),
        ["pencil with a vent"] = block => block.Pencil(),
        ["pencil with a slit"] = block => block.Pencil(room: WalkingRoom.Slit),
        ["pencil with a kick pleat"] = block => block.Pencil(room: WalkingRoom.KickPleat),
        ["gores"] = block => block.Gores(),
        ["yoke"] = block => block.HipYoke(),
        ["gathered yoke"] = block => block.HipYoke(fullness: Ratio.FromPercent(200)),
        ["knife pleats"] = block => block.KnifePleats(),
        ["box pleats"] = block => block.BoxPleats(),
        ["inverted pleats"] = block => block.InvertedPleats(),
        ["inverted pleats in the front"] = block => block.InvertedPleats(part: PleatedPart.Front),
        ["knife pleats from a yoke"] = block => block.HipYoke().KnifePleats(),
        ["box pleats from a yoke in the back"] = block => block.HipYoke().BoxPleats(part: PleatedPart.Back),
        ["unequal gores"] = block => block.UnequalGores(),
        ["gores with godets"] = block => block.Gores(8, flare: Length.Zero).Godets(),
        ["unequal gores with godets"] = block => block.UnequalGores().Godets(circle: Ratio.FromPercent(20)),
        ["godets in the sides"] = block => block.Godets(),
        ["godets in a yoked pencil"] = block => block.Pencil(room: WalkingRoom.None).HipYoke().Godets(),
        ["tiers"] = block => block.Tiers(),
        ["full circle"] = block => block.FullCircle(),
        ["wrap"] = block => block.Wrap(),
        ["a-line with a yoke"] = block => block.ALine().HipYoke(),
        ["yoke with a flared skirt"] = block => block.HipYoke().Flared(),
        ["level yoke"] = block => block.HipYoke(line: YokeLine.Level),
        ["pencil with a yoke"] = block => block.Pencil(room: WalkingRoom.None).HipYoke(),
        ["wrapped a-line"] = block => block.ALine().Wrap(),
    };

    // A slit and the free edge of a vent are hemmed.
    private static readonly string[] OpenEdges = ["slit", "vent edge"];

    public static TheoryData<string> Names => new(Designs.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Design_WomenOfAnsur_PassesEveryCheckOrIsRefusedWithItsReason(string name)
    {
        int passed = 0;
        int refused = 0;
        foreach (BodyMeasurements body in Bodies.Ansur.Where((_, i) => i % 8 == 0))
        {
            try
            {
                Block skirt = Designs[name](SkirtBlock.For(body).Draft());
                Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
                passed++;
            }
            catch (ConstructionException e)
            {
                Assert.NotNull(e.Step);
                refused++;
            }
        }

        Assert.True(passed > 240, $"{passed} passed, {refused} refused");
    }

    // Closed waist and seams are measured with chords, by nothing that the report was made with.
    [Property(MaxTest = 250)]
    public Property Design_AnyBody_HasTheClosedWaistOfItsTargetAndSeamsOfTheirEase() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from name in Gen.Elements(Designs.Keys.AsEnumerable())
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, name)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                skirt = Designs[c.name](c.asked.Apply(SkirtBlock.For(c.body)).Draft());
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double waist = Sewn.WaistMm(skirt) - c.body[BodyMeasurement.WaistGirth].Millimeters - c.asked.WaistEase;
            double seams = skirt.Seams.Seams.Max(seam =>
                Math.Abs(Sewn.LengthMm(EdgeOf(skirt, seam.First)) - Sewn.LengthMm(EdgeOf(skirt, seam.Second)) - seam.Ease.Millimeters));
            return (skirt.Report.Passed && Math.Abs(waist) < 0.02 && seams < 0.02).Label($"{c.name}: waist {waist}, seams {seams}\n{skirt.Report}");
        });

    [Theory]
    [MemberData(nameof(Names))]
    public void From_ADesign_MakesPiecesThatPassAndADrawing(string name)
    {
        Block skirt = Designs[name](SkirtBlock.For(Bodies.Example).Draft());

        PieceSet pieces = SkirtPattern.From(skirt);

        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Contains("data-edge=\"waist\"", skirt.Draw().ToSvg(), StringComparison.Ordinal);
        Assert.Equal(skirt.Seams.Seams.Count + 1, skirt.SeamsToCsv().TrimEnd('\n').Split('\n').Length);
        Assert.All(skirt.SeamsToCsv().TrimEnd('\n').Split('\n').Skip(1), row => Assert.EndsWith(",true", row, StringComparison.Ordinal));
    }

    // What is sewn of an edge adds up to the edge: no row is missing, and none says cloth twice. Seam edges are those that are neither hem nor opening nor lie on the fold.
    [Theory]
    [MemberData(nameof(Names))]
    public void Seams_OfADesign_AddUpToEveryEdgeThatIsSewn(string name)
    {
        Block skirt = Designs[name](SkirtBlock.For(Bodies.Example).Draft());
        foreach (Panel panel in skirt.Panels)
        {
            foreach (PanelEdge edge in panel.Edges.Where(edge => edge.Role is EdgeRole.Seam or EdgeRole.Centre))
            {
                var place = Pattern.Core.Panels.EdgeOf.Panel(panel.Name, edge.Name);
                double sewn = skirt.Seams.Seams.Sum(seam => (seam.First == place ? seam.Walk([.. skirt.Panels]).Whole.FirstLength.Millimeters : 0)
                    + (seam.Second == place && !seam.IsToMirrorImage ? seam.Walk([.. skirt.Panels]).Whole.SecondLength.Millimeters : 0));
                bool isOpen = OpenEdges.Contains(edge.Name.Text) || (edge.Role == EdgeRole.Centre && (panel.Name.Text.StartsWith("front", StringComparison.Ordinal) || panel.Name.Text.Contains("tier", StringComparison.Ordinal) || name.StartsWith("wrap", StringComparison.Ordinal)));
                Assert.Equal(isOpen ? 0 : Sewn.LengthMm(edge), sewn, 0.02);
            }
        }
    }

    [Theory]
    [InlineData("a circle has no darts to close", "full circle", "a-line")]
    [InlineData("gores have no front and back", "gores", "yoke")]
    [InlineData("one yoke", "yoke", "yoke")]
    [InlineData("a pencil does not flare", "a-line", "pencil with a vent")]
    [InlineData("pleats come last", "knife pleats", "a-line")]
    [InlineData("godets once only", "gores with godets", "godets in the sides")]
    [InlineData("a godet opens a plain seam", "knife pleats", "godets in the sides")]
    [InlineData("no quarters are left", "godets in the sides", "a-line")]
    [InlineData("tiers hang from the block", "a-line", "tiers")]
    [InlineData("pleats hang straight", "flared", "knife pleats")]
    [InlineData("a wrap begins at the waist", "yoke", "wrap")]
    public void Designs_ThatCannotCombine_AreRefused(string why, string first, string then)
    {
        Block block = Designs[first](SkirtBlock.For(Bodies.Example).Draft());

        ConstructionException e = Assert.Throws<ConstructionException>(() => Designs[then](block));

        Assert.True(e.Code == DiagnosticCode.DesignRefused, why + ": " + e.Message);
    }

    // By hand: 24 in long, waist 32, hip 40 and 1 in of ease: the first tier is 8 in, 16 in shared as 1.3 to 1.6; each strip one and a half times the one above.
    [Fact]
    public void Tiers_DepthsAndWidths_GrowByTheirRatios()
    {
        Block skirt = SkirtBlock.For(Bodies.Example).Draft().Tiers();

        Length Deep(string name) => skirt.FindPanel(PanelName.Of(name)).FindEdge(EdgeName.SideSeam).SewnLength;
        Assert.Equal(16 * 1.3 / 2.9, Deep("front tier 2").Inches, 1e-6);
        Assert.Equal(16 * 1.6 / 2.9, Deep("front tier 3").Inches, 1e-6);
        double hem = skirt.Panels.Where(panel => panel.TryFindEdge(EdgeName.Hem, out _)).Sum(panel => 2 * panel.FindEdge(EdgeName.Hem).SewnLength.Inches);
        Assert.Equal(41 * 1.5 * 1.5, hem, 1e-6);
    }

    // A slim body has its second dart where the usual overlap would end: the overlap ends 4 cm beyond it, where a facing is still flat, and before the side.
    [Fact]
    public void Wrap_OfASlimBody_EndsBetweenDartAndSide()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("24", "36")).Draft();

        Block skirt = block.Wrap();

        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
        Assert.True(SkirtPattern.From(skirt).Report.Passed);
        double centre = block.Front.FindEdge(EdgeName.Centre).End.X.Millimeters;
        double dart = block.Front.Darts.Max(one => Math.Max(Math.Abs(one.StartLeg.X.Millimeters - centre), Math.Abs(one.EndLeg.X.Millimeters - centre)));
        double end = Math.Abs(skirt.FindPanel(PanelName.Front).FindEdge(EdgeName.Of("overlap")).Start.X.Millimeters - centre);
        Assert.InRange(end, dart + 40 - 1e-6, Math.Abs(block.Front.FindEdge(EdgeName.SideSeam).Start.X.Millimeters - centre));
    }

    // The front of a body whose waist is larger than its hip is narrower at the hem than at the waist: the overlap has no more room than there.
    [Fact]
    public void Wrap_WhereTheHemIsNarrowerThanTheWaist_IsRefusedWhereItHasNoRoomAtTheHem()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(593.15, 513.98)).WithHipEase(Length.FromMillimeters(3.78)).WithWaistEase(Length.FromMillimeters(15.2)).Draft();

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => block.Wrap(Length.FromMillimeters(150)));

        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
        Assert.True(block.Wrap().Report.Passed);
    }

    // What geometry says of a curve is no answer to who asked for an A-line.
    [Fact]
    public void ALine_WhoseSideCannotBeDrawn_IsRefusedAsADesign()
    {
        SkirtBlock block = new SkirtAsked(94.37484, 22.52396, 927.76742, 12.254575, -5.05736, Waistline.Level, 48.689925, 0, 0, 12.7).Apply(SkirtBlock.For(Bodies.Millimetres(1790, 1809.6))).Draft();

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => block.ALine(Ratio.FromPercent(79)));

        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
    }

    [Fact]
    public void Wrap_Overlap_IsTheMirrorImageOfTheFrontBeneath()
    {
        Block skirt = SkirtBlock.For(Bodies.Example).Draft().Wrap();
        Panel front = skirt.FindPanel(PanelName.Front);
        double centre = front.FindEdge(EdgeName.Waist).Start.X.Millimeters;
        (double X, double Y)[] waist = [.. Sewn.Stretches(front.FindEdge(EdgeName.Waist)).SelectMany(points => points)];

        foreach ((double X, double Y) point in Sewn.Stretches(front.FindEdge(EdgeName.Of("overlap"))).SelectMany(points => points))
        {
            (double X, double Y) image = ((2 * centre) - point.X, point.Y);
            Assert.True(waist.Min(p => Math.Sqrt(((p.X - image.X) * (p.X - image.X)) + ((p.Y - image.Y) * (p.Y - image.Y)))) < 0.3);
        }
    }

    [Fact]
    public void Pencil_NarrowAndLong_AdvisesOnTheStepThatItLetsOneMake()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).WithLength(Tape.Inches("30")).Draft();

        Assert.Contains(block.Pencil(room: WalkingRoom.None).Report.Advice, finding => finding.Check == "step that the hem lets one make");
        Assert.DoesNotContain(block.Pencil(height: Tape.Inches("12")).Report.Advice, finding => finding.Check == "step that the hem lets one make");
    }

    private static PanelEdge EdgeOf(Block block, EdgeOf edge) => block.FindPanel(edge.PanelName).FindEdge(edge.EdgeName);
}
