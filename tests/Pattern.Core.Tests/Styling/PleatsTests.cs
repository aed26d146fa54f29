using System;
using System.Collections.Generic;
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

public class PleatsTests
{
    private static readonly Dictionary<string, Func<Block, int?, double, PleatedPart, Block>> Kinds = new()
    {
        ["knife"] = (block, count, depth, part) => block.KnifePleats(count, Ratio.FromDecimalFractions(depth), part),
        ["box"] = (block, count, depth, part) => block.BoxPleats(count, Ratio.FromDecimalFractions(depth), part),
        ["inverted"] = (block, count, depth, part) => block.InvertedPleats(count, Ratio.FromDecimalFractions(depth), part),
    };

    // Found: knife pleats take N (p + 2u) of cloth, box pleats N (p + 4u); inverted pleats are box pleats seen from the wrong side. At full depth all are three times the hip.
    [Theory]
    [InlineData("knife", 16, 1.0)]
    [InlineData("box", 18, 1.0)]
    [InlineData("inverted", 16, 1.0)]
    [InlineData("knife", 24, 0.5)]
    [InlineData("box", 14, 0.6)]
    [InlineData("inverted", 12, 0.7)]
    public void Pleats_Cloth_IsTheClosedForm(string kind, int count, double depth)
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(680, 940)).WithHipEase(Length.FromMillimeters(20)).WithLength(Length.FromMillimeters(600)).Draft();

        Block skirt = Kinds[kind](block, count, depth, PleatedPart.AllAround);

        double visible = 960.0 / count;
        double under = visible * depth * (kind == "knife" ? 1 : 0.5);
        Assert.Equal(count * (visible + ((kind == "knife" ? 2 : 4) * under)), ClothMm(skirt, EdgeName.Hem), 1e-6);
        Assert.Equal(960, skirt.Panels.Sum(panel => 2 * Sewn.LengthMm(panel.FindEdge(EdgeName.Hem))), 1e-6);
        Assert.True(skirt.Report.Passed, skirt.Report.ToString());
    }

    // Found: I. D. Conover, A Complete Course in Dressmaking, vol. 5, 1921 (US public domain, year from memory), pages 63 to 65. Half a skirt, waist 14 in, hip 20 in, of cloth 44 in across: 30 in are pleated away at the
    // waist, 24 in at the hip, in 8 pleats. Hers taper on below the hip to 16 1/2 in; these hang straight from there, as do the figures below.
    [Fact]
    public void KnifePleats_OfConover_PleatAwayHerFigures()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("28", "40")).WithHipEase(Length.Zero).WithLength(Tape.Inches("28")).Draft();

        // 24 in in 8 pleats, each twice its depth of 1 1/2 in; the deepest is as deep as a pleat is wide, 2 1/2 in.
        Block skirt = block.KnifePleats(16, Ratio.FromDecimalFractions(1.5 / 2.5));

        double cloth = ClothMm(skirt, EdgeName.Hem) / 2 / 25.4;
        Assert.Equal(44, cloth, 1e-9);
        Assert.Equal(30, cloth - (Sewn.WaistMm(skirt) / 2 / 25.4), 1e-3);
        Assert.Equal(24, cloth - (skirt.Panels.Sum(panel => Sewn.LengthMm(panel.FindEdge(EdgeName.Hem))) / 25.4), 1e-9);
    }

    // Folded on its fold lines, as one folds paper, every point of the cut top comes to lie on the top as it is sewn, or on its mirror image beyond the centre; what is seen of it is all of the sewn top.
    [Property(MaxTest = 60)]
    public Property Pleats_AnyBody_FoldedGiveBackTheUnpleatedOutline() => Prop.ForAll(
        (from body in Bodies.Any
         from asked in Bodies.Options
         from kind in Gen.Elements(Kinds.Keys.AsEnumerable())
         from depth in Bodies.Range(0.2, 1)
         from part in Gen.Elements(PleatedPart.AllAround, PleatedPart.Front, PleatedPart.Back)
         from isYoked in Gen.Elements(false, true)
         select (body, asked: asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, kind, depth, part, isYoked)).ToArbitrary(),
        c =>
        {
            Block skirt;
            try
            {
                Block block = c.asked.Apply(SkirtBlock.For(c.body)).Draft();
                skirt = Kinds[c.kind](c.isYoked ? block.HipYoke() : block, null, c.depth, c.part);
            }
            catch (ConstructionException e)
            {
                return (e.Step is not null).Label(e.Message);
            }

            double off = 0;
            double ends = 0;
            foreach (Panel sewn in skirt.Panels.Where(panel => skirt.FindFolds(panel.Name).Count > 0))
            {
                (double most, double end) = FoldedOffMm(skirt, sewn);
                (off, ends) = (Math.Max(off, most), Math.Max(ends, end));
            }

            return (skirt.Report.Passed && off < 0.03 && ends < 0.03).Label($"{off} {ends}\n{skirt.Report}");
        });

    // A waist of 43 cm on a hip of 79 cm: the folds lean so much at the top that a layer under one never comes to its inner fold. It was an exception about an index.
    [Fact]
    public void Pleats_ThatLeanTooMuchToFold_AreRefusedWithWhatWouldDo()
    {
        // Its layers ran 8 mm on beyond the side seam, and no check saw it.
        SkirtBlock slim = SkirtBlock.For(Bodies.Millimetres(415.03, 708.56)).WithHipEase(Length.FromMillimeters(27)).WithWaistEase(Length.FromMillimeters(35)).Draft();
        Assert.Equal(
            DiagnosticCode.DesignRefused,
            Assert.Throws<ConstructionException>(() => slim.InvertedPleats(depth: Ratio.FromDecimalFractions(0.8865416), part: PleatedPart.Front)).Code);

        Block block = new SkirtAsked(55.34664, 6.1326, 701.10254, 23.2023, -10.30496, Waistline.Shaped, 40.689195, 0, 0, 0).Apply(SkirtBlock.For(Bodies.Millimetres(426.58, 786.17))).Draft();

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => block.InvertedPleats(depth: Ratio.FromDecimalFractions(0.3448072), part: PleatedPart.Front));

        Assert.Equal(DiagnosticCode.DesignRefused, refusal.Code);
        Assert.Contains("hip yoke", refusal.Message, StringComparison.Ordinal);
        Assert.True(block.HipYoke().InvertedPleats(depth: Ratio.FromDecimalFractions(0.3448072), part: PleatedPart.Front).Report.Passed);
    }

    [Fact]
    public void Pleats_EveryWomanOfAnsur_PassEveryCheck()
    {
        foreach (BodyMeasurements body in Bodies.Ansur.Where((_, i) => i % 16 == 0))
        {
            SkirtBlock block = SkirtBlock.For(body).Draft();
            foreach (Block skirt in new[] { block.KnifePleats(), block.BoxPleats(), block.InvertedPleats(), block.HipYoke().KnifePleats(), block.InvertedPleats(part: PleatedPart.Front) })
            {
                Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
            }
        }
    }

    [Theory]
    [InlineData("knife", 0, 17, "Take 16 or 20")]
    [InlineData("box", 0, 16, "Take 14 or 18")]
    [InlineData("inverted", 1, 7, "or 8")]
    public void Pleats_NumberThatDoesNotShareOut_IsRefusedWithTheNearest(string kind, int part, int count, string message)
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();

        ConstructionException e = Assert.Throws<ConstructionException>(() => Kinds[kind](block, count, 1, (PleatedPart)part));

        Assert.Contains(message, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Pleats_WhatCannotBe_IsRefused()
    {
        Block block = SkirtBlock.For(Bodies.Example).Draft();

        Assert.Contains("gathered", Assert.Throws<ConstructionException>(() => block.HipYoke(fullness: Ratio.FromPercent(200)).KnifePleats()).Message, StringComparison.Ordinal);
        Assert.Contains("pleats last", Assert.Throws<ConstructionException>(() => block.KnifePleats().ALine()).Message, StringComparison.Ordinal);
        Assert.Contains("pleats last", Assert.Throws<ConstructionException>(() => block.BoxPleats(part: PleatedPart.Front).HipYoke()).Message, StringComparison.Ordinal);
        Assert.Contains("below the hip", Assert.Throws<ConstructionException>(() => block.KnifePleats(stitchedDown: Tape.Inches("12"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("knife", PleatedPart.AllAround)]
    [InlineData("box", PleatedPart.Front)]
    [InlineData("inverted", PleatedPart.AllAround)]
    public void From_Pleats_MakePiecesThatPass(string kind, PleatedPart part)
    {
        foreach (bool isYoked in new[] { false, true })
        {
            Block block = SkirtBlock.For(Bodies.Example).Draft();
            var pieces = SkirtPattern.From(Kinds[kind](isYoked ? block.HipYoke() : block, null, 1, part));
            Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        }
    }

    private static double ClothMm(Block skirt, EdgeName edge) => skirt.Panels.Sum(panel => 2 * Sewn.LengthMm(skirt.FindPanelAsCut(panel.Name).FindEdge(edge)));

    // How far the folded top lies off the sewn one at most, and how far its last visible end from the end of that.
    private static (double OffMm, double EndMm) FoldedOffMm(Block skirt, Panel sewn)
    {
        Panel cut = skirt.FindPanelAsCut(sewn.Name);
        PanelEdge top = sewn.Edges[0];
        (double X, double Y)[] closed = [.. Sewn.Points(top.Closed()).Where((_, i) => i % 5 == 0)];
        double centre = top.Start.X.Millimeters;

        // Beyond the side seam a layer may go on straight by what is trimmed in the seam: 2 mm, common practice, no source.
        (double X, double Y) end = closed[^1];
        (double X, double Y) before = closed[^2];
        double chord = Distance(before, end);
        (double X, double Y) beyond = (end.X + (2 * (end.X - before.X) / chord), end.Y + (2 * (end.Y - before.Y) / chord));
        (double X, double Y)[] half = [.. closed, beyond];
        (double X, double Y)[] whole = [.. half.Reverse().Select(p => ((2 * centre) - p.X, p.Y)), .. half];

        // Fold lines in order from the centre out: each as its two points above where it begins to run upright, and where it meets the top.
        var folds = skirt.FindFolds(sewn.Name)
            .Where(fold => !fold.Name.Text.StartsWith("meets", StringComparison.Ordinal))
            .Select(fold => (Top: At(fold.Path.Start), Foot: At(fold.Path.Segments[0].End)))
            .OrderBy(fold => Math.Abs(fold.Foot.X - At(cut.FindEdge(EdgeName.Centre).Start).X))
            .ToArray();
        (double X, double Y)[] points = Sewn.Points(cut.FindEdge(top.Name).Stretches[0]);
        Assert.True(Math.Abs(points[0].X - At(cut.FindEdge(EdgeName.Centre).Start).X) < 1e-6);

        // Begun where the first visible part lies still: beyond the folds at the centre, if there are any.
        int still = folds.Count(fold => (fold.Foot.X - centre) * (At(cut.FindEdge(EdgeName.SideSeam).End).X - centre) <= 1e-6);
        double off = 0;
        int strip = 0;
        (double X, double Y) last = default;
        foreach ((double X, double Y) point in points.Where((_, i) => i % 40 == 0))
        {
            while (strip < folds.Length && Distance(point, folds[strip].Top) < 1e-6)
            {
                strip++;
            }

            (double X, double Y) folded = Folded(point, strip);
            off = Math.Max(off, OffMm(folded, whole));
            last = folded;
        }

        return (off, Distance(last, closed[^1]));

        (double X, double Y) Folded((double X, double Y) point, int at)
        {
            for (int i = at - 1; i >= still; i--)
            {
                point = Mirrored(point, folds[i].Foot, folds[i].Top);
            }

            for (int i = at; i < still; i++)
            {
                point = Mirrored(point, folds[i].Foot, folds[i].Top);
            }

            return point;
        }
    }

    private static double OffMm((double X, double Y) p, (double X, double Y)[] line)
    {
        double least = double.PositiveInfinity;
        for (int i = 1; i < line.Length; i++)
        {
            (double X, double Y) a = line[i - 1];
            (double X, double Y) along = (line[i].X - a.X, line[i].Y - a.Y);
            double squared = (along.X * along.X) + (along.Y * along.Y);
            double t = squared == 0 ? 0 : Math.Clamp((((p.X - a.X) * along.X) + ((p.Y - a.Y) * along.Y)) / squared, 0, 1);
            least = Math.Min(least, Distance(p, (a.X + (t * along.X), a.Y + (t * along.Y))));
        }

        return least;
    }

    private static (double X, double Y) At(Pattern.Core.Geometry.Point2D point) => (point.X.Millimeters, point.Y.Millimeters);

    private static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private static (double X, double Y) Mirrored((double X, double Y) point, (double X, double Y) a, (double X, double Y) b)
    {
        (double X, double Y) along = (b.X - a.X, b.Y - a.Y);
        double part = (((point.X - a.X) * along.X) + ((point.Y - a.Y) * along.Y)) / ((along.X * along.X) + (along.Y * along.Y));
        return ((2 * (a.X + (part * along.X))) - point.X, (2 * (a.Y + (part * along.Y))) - point.Y);
    }
}
