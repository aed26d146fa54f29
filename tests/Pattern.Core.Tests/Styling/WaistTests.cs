using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class WaistTests
{
    private static readonly EdgeName Top = EdgeName.Of("top");

    private static readonly Dictionary<string, Func<Block, Block>> Shapes = new()
    {
        ["block"] = block => block,
        ["a-line"] = block => block.ALine(),
        ["half a-line"] = block => block.ALine(Ratio.FromPercent(50)),
        ["flared"] = block => block.Flared(),
        ["pencil"] = block => block.Pencil(),
        ["gores"] = block => block.Gores(),
        ["yoke"] = block => block.HipYoke(),
        ["tiers"] = block => block.Tiers(),
        ["lowered"] = block => block.LoweredWaist(),
        ["lowered a-line"] = block => block.LoweredWaist().ALine(),
        ["pencil, lowered"] = block => block.Pencil().LoweredWaist(),
        ["lowered, with a yoke"] = block => block.LoweredWaist().HipYoke(),
    };

    private static readonly Dictionary<string, Func<Block, Block>> Finishes = new()
    {
        ["as it is"] = block => block,
        ["contour band"] = block => block.ContourBand(),
        ["narrow contour band"] = block => block.ContourBand(Tape.Inches("3/4")),
        ["facing"] = block => block.FacedWaist(),
    };

    public static TheoryData<string, string> All
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (string shape in Shapes.Keys)
            {
                foreach (string finish in Finishes.Keys.Where(finish => (finish != "as it is" || shape.Contains("lowered", StringComparison.Ordinal))
                    && !(shape.Contains("yoke", StringComparison.Ordinal) && finish.Contains("band", StringComparison.Ordinal))))
                {
                    all.Add(shape, finish);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Finish_OfAShape_PassesWithItsPiecesAndSeams(string shape, string finish)
    {
        Block skirt = Finishes[finish](Shapes[shape](SkirtBlock.For(Bodies.Example).Draft()));

        PieceSet pieces = SkirtPattern.From(skirt);

        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Contains(skirt.Report.Findings, finding => finding.Check == "closed waist all around");
        Assert.All(skirt.SeamsToCsv().TrimEnd('\n').Split('\n').Skip(1), row => Assert.EndsWith(",true", row, StringComparison.Ordinal));
        Assert.Equal(finish == "as it is", pieces.Pieces.Any(piece => piece.Name == SkirtPattern.Waistband));
        Assert.Equal(skirt.Draw().ToSvg(), skirt.ToBuilder().Draft().Draw().ToSvg());
    }

    // Closed waist and seams are measured with chords. The waist of the body is the top of a band; lowered, the waist is what the block has there: see below.
    [Property(MaxTest = 200)]
    public Property Finish_AnyBody_HasTheClosedWaistOfItsTargetAndSeamsThatWalk() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from shape in Gen.Elements(Shapes.Keys.AsEnumerable())
         from finish in Gen.Elements(Finishes.Keys.AsEnumerable())
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, shape, finish)).ToArbitrary(),
        c =>
        {
            Block shape;
            Block skirt;
            try
            {
                shape = Shapes[c.shape](c.asked.Apply(SkirtBlock.For(c.body)).Draft());
                skirt = Finishes[c.finish](shape);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double target = c.shape.Contains("lowered", StringComparison.Ordinal) ? Sewn.WaistMm(shape) : c.body[BodyMeasurement.WaistGirth].Millimeters + c.asked.WaistEase;
            Panel[] bands = [.. skirt.Panels.Where(panel => panel.TryFindEdge(Top, out _))];
            double waist = bands.Length == 0 ? Sewn.WaistMm(skirt) : bands.Sum(panel => skirt.TimesOf(panel.Name) * Sewn.LengthMm(panel.FindEdge(Top)));
            double seams = skirt.Seams.Seams.Where(seam => !seam.IsToMirrorImage).Max(seam =>
                Math.Abs(Sewn.LengthMm(EdgeOf(skirt, seam.First)) - Sewn.LengthMm(EdgeOf(skirt, seam.Second)) - seam.Ease.Millimeters));
            return (skirt.Report.Passed && Math.Abs(waist - target) < 0.03 && seams < 0.02).Label($"{c.shape}, {c.finish}: waist {waist - target}, seams {seams}\n{skirt.Report}");
        });

    // The new waist is cut through the panel of the block: its stretches end on centre, side and dart legs of the block, as deep along the seams, and in between as far from the old
    // waistline but for 1/8 in where the side bends.
    [Theory]
    [InlineData("1/2")]
    [InlineData("1")]
    [InlineData("2")]
    public void LoweredWaist_Stretches_AreCutThroughTheBlock(string by)
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();
        Block lowered = block.LoweredWaist(Tape.Inches(by));
        double deep = Tape.Inches(by).Millimeters;
        foreach (Panel panel in block.Panels)
        {
            PanelEdge old = panel.FindEdge(EdgeName.Waist);
            PanelEdge now = lowered.FindPanel(panel.Name).FindEdge(EdgeName.Waist);
            Assert.Equal(old.Darts.Count, now.Darts.Count);
            Assert.Equal(deep, Sewn.LengthMm(panel.FindEdge(EdgeName.SideSeam)) - Sewn.LengthMm(lowered.FindPanel(panel.Name).FindEdge(EdgeName.SideSeam)), 1e-3);
            Assert.Equal(deep, Sewn.LengthMm(panel.FindEdge(EdgeName.Centre)) - Sewn.LengthMm(lowered.FindPanel(panel.Name).FindEdge(EdgeName.Centre)), 1e-3);
            for (int i = 0; i < now.Darts.Count; i++)
            {
                Assert.True(OffLine(now.Darts[i].StartLeg, old.Darts[i].Apex, old.Darts[i].StartLeg) < 1e-6);
                Assert.True(OffLine(now.Darts[i].EndLeg, old.Darts[i].Apex, old.Darts[i].EndLeg) < 1e-6);
            }

            for (int i = 0; i < now.Stretches.Count; i++)
            {
                (double X, double Y)[] waist = Sewn.Points(old.Stretches[i]);
                Assert.All(Sewn.Points(now.Stretches[i]), p => Assert.Equal(deep, waist.Min(q => Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y)))), 3.2));
            }
        }

        Assert.True(Sewn.WaistMm(lowered) > Sewn.WaistMm(block) + deep, "below the waist the body is wider");
        Assert.Contains(lowered.Report.Findings, finding => finding.Check == "waist square to side" && finding.Passed);
    }

    [Fact]
    public void LoweredWaist_ThatLeavesTooLittleOfADart_SaysHowFarItMayGo()
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();
        double shortest = block.Panels.SelectMany(panel => panel.Darts).Min(dart => dart.Length.Millimeters);

        ConstructionException e = Assert.Throws<ConstructionException>(() => block.LoweredWaist(Length.FromMillimeters(shortest - 10)));

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
        Assert.Contains("of a dart would be left below the new waist", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gores are drawn anew")]
    [InlineData("circles are drawn anew")]
    [InlineData("pleats are drawn anew")]
    [InlineData("one finish")]
    [InlineData("a finish comes last")]
    [InlineData("a wrap goes on in its overlap")]
    [InlineData("a pleated waist is cut otherwise")]
    [InlineData("a band ends below a dart")]
    [InlineData("a yoke needs no band")]
    [InlineData("a yoke has its depth")]
    public void Waists_ThatCannotCombine_AreRefused(string why)
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();

        ConstructionException e = Assert.Throws<ConstructionException>(() => why switch
        {
            "gores are drawn anew" => block.LoweredWaist().Gores(),
            "circles are drawn anew" => block.LoweredWaist().FullCircle(),
            "pleats are drawn anew" => block.LoweredWaist().KnifePleats(),
            "one finish" => block.ContourBand().FacedWaist(),
            "a finish comes last" => block.FacedWaist().ALine(),
            "a wrap goes on in its overlap" => block.Wrap().ContourBand(),
            "a yoke needs no band" => block.HipYoke().ContourBand(),
            "a yoke has its depth" => block.HipYoke().LoweredWaist(),
            "a pleated waist is cut otherwise" => block.BoxPleats().LoweredWaist(),
            _ => block.ContourBand(Tape.Inches("5")),
        });

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
    }

    [Fact]
    public void ContourBand_Pieces_AreCutTwiceAndInterfacedOnce()
    {
        PieceSet pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().Pencil().ContourBand());

        Assert.Contains(pieces.CutList, row => row.ToString().StartsWith("front band: cut 2 of main cloth on the fold", StringComparison.Ordinal));
        Assert.Contains(pieces.Pieces, piece => piece.InternalLines.Any(line => line.Name == "centre back fold"));
        string cut = string.Join("\n", pieces.CutList);
        Assert.True(cut.Contains("back band", StringComparison.Ordinal), cut);
    }

    [Fact]
    public void LoweredWaist_WomenOfAnsur_PassesOrIsRefusedWithItsReason()
    {
        foreach (Func<Block, Block> make in new Func<Block, Block>[] { block => block.LoweredWaist(), block => block.ContourBand(), block => block.FacedWaist() })
        {
            int refused = 0;
            foreach (BodyMeasurements body in Bodies.Ansur.Where((_, i) => i % 16 == 3))
            {
                try
                {
                    Block skirt = make(SkirtBlock.For(body).Draft());
                    Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
                }
                catch (ConstructionException e)
                {
                    Assert.NotNull(e.Step);
                    refused++;
                }
            }

            Assert.True(refused < 4, $"{refused} refused");
        }
    }

    private static double OffLine(Point2D point, Point2D from, Point2D to)
    {
        (double x, double y) = ((to.X - from.X).Millimeters, (to.Y - from.Y).Millimeters);
        return Math.Abs((x * (point.Y - from.Y).Millimeters) - (y * (point.X - from.X).Millimeters)) / Math.Sqrt((x * x) + (y * y));
    }

    private static PanelEdge EdgeOf(Block block, EdgeOf edge) => block.FindPanel(edge.PanelName).FindEdge(edge.EdgeName);
}
