using System;
using System.Linq;
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
using Pattern.Core.Tests.Output;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Patterns;

public class SkirtPatternTests
{
    private static readonly PieceLabel Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithMeasurements(Bodies.Example, TapeStep.Quarter).Dated(new DateTime(2026, 3, 14));

    [Fact]
    public void From_ABlock_ListsWhatToCut()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { Lining = LiningChoice.Loose });

        Assert.Equal(
            [
                "front: cut 1 of main cloth on the fold",
                "back: cut 2 of main cloth, as a pair",
                "waistband: cut 1 of main cloth",
                "waistband: cut 1 of interfacing",
                "front lining: cut 1 of lining on the fold",
                "back lining: cut 2 of lining, as a pair",
            ],
            set.CutList.Select(row => row.ToString()));
    }

    [Fact]
    public void From_ABlock_PassesAllChecksOfItsPieces()
        => Assert.All(SkirtPattern.From(Skirt, new SkirtPatternOptions { Lining = LiningChoice.Loose, Label = Label }).Pieces, piece => Assert.True(piece.Report.Passed, piece.Report.ToString()));

    // The body's waist is 32 in, without ease; one inch of overlap; twice 1 1/4 in wide; half an inch of allowance around.
    [Fact]
    public void Waistband_OfAWaistOfThirtyTwoInches_MeasuresThatAndTheOverlap()
    {
        PatternPiece band = SkirtPattern.From(Skirt).Find(SkirtPattern.Waistband);

        Assert.Equal(33, band.Panel.FindEdge(EdgeName.Waist).SewnLength.Inches, 4);
        Assert.Equal(34, band.Bounds.Width.Inches, 4);
        Assert.Equal(3.5, band.Bounds.Height.Inches, 9);
    }

    // By hand: a waist of 32 in has 8 in in each quarter, so walked around it, back, front, front, back, the seams stand every 8 in.
    [Fact]
    public void Waistband_Notches_StandWhereTheSeamsOfTheSkirtMeetIt()
    {
        PatternPiece band = SkirtPattern.From(Skirt).Find(SkirtPattern.Waistband);

        double[] at = [.. band.Notches.Select(n => n.DistanceFromStart.Inches)];
        Assert.Equal([8, 16, 24, 32], at, (one, other) => Math.Abs(one - other) < 1e-6);
    }

    [Fact]
    public void Lining_Hem_EndsAtTheFinishedLengthOfTheSkirt()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { Lining = LiningChoice.Loose });

        Assert.Equal(1.5, (set.Find(PanelName.Of("back lining")).Bounds.Bottom - set.Find(PanelName.Back).Bounds.Bottom).Inches, 9);
    }

    // The quarters of a small waist are short: their bands say their name and how they are cut.
    [Theory]
    [InlineData("24", "34")]
    [InlineData("22", "40")]
    [InlineData("21", "23")]
    public void Waistband_JoinedForASmallWaist_HasLabelsWithRoom(string waist, string hip)
    {
        PieceSet set = SkirtPattern.From(SkirtBlock.For(Bodies.Inches(waist, hip)).Draft(), new SkirtPatternOptions { WaistbandJoin = WaistbandJoin.SideSeams, Label = Label });

        Assert.True(set.Report.Passed, set.Report.ToString());
        Assert.All(set.Pieces, piece => Assert.Contains(piece.Label!.Lines, line => line.Text.Contains("cut ", StringComparison.Ordinal)));
    }

    // The hem of an A-line is an arc between straight ends: the facing has its shape, and ends 2 in inside it, measured square to it.
    [Theory]
    [InlineData("32", "40")]
    [InlineData("24", "34")]
    [InlineData("29 1/2", "39 3/4")]
    [InlineData("52", "60")]
    public void Facings_OfAnALine_HaveTheShapeOfItsHemAndTwoInchesOfDepth(string waist, string hip)
    {
        Block aLine = SkirtBlock.For(Bodies.Inches(waist, hip)).Draft().ALine();

        PieceSet turned = SkirtPattern.From(aLine);
        PieceSet faced = SkirtPattern.From(aLine, new SkirtPatternOptions { Hem = HemFinish.FacedWhereCurved, Label = Label });

        Assert.DoesNotContain(turned.Pieces, piece => piece.Name.Text.Contains("facing", StringComparison.Ordinal));
        Assert.True(faced.Report.Passed, faced.Report.ToString());
        Assert.DoesNotContain(faced.Report.Advice, finding => finding.Check.Contains("turned up", StringComparison.Ordinal));
        foreach (Panel panel in aLine.Panels)
        {
            PatternPiece facing = faced.Find(PanelName.Of(panel.Name + " hem facing"));
            PatternPiece skirt = faced.Find(panel.Name);
            CurvePath hem = panel.FindEdge(EdgeName.Hem).Stretches[0];
            CurvePath own = facing.Panel.FindEdge(EdgeName.Hem).Stretches[0];
            Assert.Equal(hem.Length.Millimeters, own.Length.Millimeters, 6);
            Assert.All(own.PointsAtEqualLengths(50), point => Assert.True(hem.ClosestTo(point).Distance.Millimeters < 1e-6));
            Assert.All(facing.Panel.FindEdge(EdgeName.Of("inner")).Stretches[0].PointsAtEqualLengths(50), point => Assert.Equal(50.8, hem.ClosestTo(point).Distance.Millimeters, 0.02));
            Assert.Equal(12.7, skirt.FindEdge(EdgeName.Hem).Allowance.Millimeters, 9);
            Assert.Equal(skirt.FoldLine is null, facing.FoldLine is null);
            Assert.Equal(skirt.Cuts.Select(cut => cut.Count), facing.Cuts.Select(cut => cut.Count));
        }

        Assert.Equal(3 * aLine.Panels.Count, faced.Report.Findings.Count(finding => finding.Check.StartsWith("facing ", StringComparison.Ordinal)));
    }

    // A level hem turns up flat: nothing to face.
    [Fact]
    public void Facings_OfAPlainSkirt_AreNone()
        => Assert.Equal(3, SkirtPattern.From(Skirt, new SkirtPatternOptions { Hem = HemFinish.FacedWhereCurved }).Pieces.Count);

    // A facing that was drawn again elsewhere, or for another hem, is found out.
    [Fact]
    public void Facing_OfAnotherHem_FailsItsCheck()
    {
        PieceSet one = SkirtPattern.From(SkirtBlock.For(Bodies.Inches("32", "40")).Draft().ALine(), new SkirtPatternOptions { Hem = HemFinish.FacedWhereCurved });
        PieceSet other = SkirtPattern.From(SkirtBlock.For(Bodies.Inches("32", "41")).Draft().ALine(), new SkirtPatternOptions { Hem = HemFinish.FacedWhereCurved });

        PieceSet mixed = one.With(other.Find(PanelName.Of("front hem facing")));

        Assert.Contains(mixed.Report.Failures, finding => finding.Check == "facing along the edge that it faces");
    }

    [Fact]
    public void Facing_DeeperThanThePanel_IsRefused()
        => Assert.Equal(
            DiagnosticCode.FacingWithoutRoom,
            Assert.Throws<ConstructionException>(() => PatternPiece.From(Quad((0, 100), (40, 100), (40, 0), (0, 0))).FacingOf(Quad((0, 100), (40, 100), (40, 0), (0, 0)).Edges[0].Name, Length.FromMillimeters(200))).Code);

    [Fact]
    public void Lining_AsLongAsTheSkirt_SaysSo()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { Lining = LiningChoice.Loose, LiningShorter = Length.Zero });

        Assert.Equal("turn up 1/2 in twice; hangs as long as the skirt", set.Find(PanelName.Of("back lining")).InternalLines.Single(line => line.Kind == InternalLineKind.Fold).Name);
    }

    // Nothing lies over or under anything where both ends meet.
    [Fact]
    public void Waistband_WithoutOverlap_HasTwoEndsAtTheCentreBack()
    {
        PatternPiece band = SkirtPattern.From(Skirt, new SkirtPatternOptions { WaistbandOverlap = Length.Zero }).Find(SkirtPattern.Waistband);

        Assert.Equal([SkirtPattern.LastEnd, SkirtPattern.FirstEnd], band.Edges.Select(edge => edge.Name).Where(name => name.Text.Contains("end", StringComparison.Ordinal)));
        Assert.All(band.Edges, edge => Assert.DoesNotMatch("top|beneath|lap", edge.Name.Text));
        Assert.Equal(32, band.Panel.FindEdge(EdgeName.Waist).SewnLength.Inches, 6);
    }

    // Sewn together at the joins, the parts are the band in one: waist 32 and overlap 1.
    [Fact]
    public void Waistband_JoinedAtTheSideSeams_IsAsLongAsTheBandInOne()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { WaistbandJoin = WaistbandJoin.SideSeams, Label = Label });
        double Sewn(PanelName name) => set.Find(name).Panel.FindEdge(EdgeName.Waist).SewnLength.Inches;

        Assert.True(set.Report.Passed, set.Report.ToString());
        Assert.Equal(33, Sewn(SkirtPattern.FirstWaistband) + Sewn(SkirtPattern.FrontWaistband) + Sewn(SkirtPattern.LastWaistband), 6);
        Assert.Equal(16, Sewn(SkirtPattern.FrontWaistband), 6);
        Assert.Equal(8, set.Find(SkirtPattern.FrontWaistband).Panel.Notches.Single().DistanceFromStart.Inches, 6);
        Assert.Equal(8, set.Find(SkirtPattern.LastWaistband).Panel.Notches.Single().DistanceFromStart.Inches, 6);
        Assert.DoesNotContain(set.Pieces, piece => piece.Name == SkirtPattern.Waistband);
        foreach (EdgeName join in new[] { SkirtPattern.FirstJoin, SkirtPattern.LastJoin })
        {
            Assert.Equal(2, set.Pieces.Count(piece => piece.Edges.Any(edge => edge.Name == join)));
        }
    }

    // Common practice, no source: an inch shorter, turned up half an inch twice; in centimetres 2.5, whose half is 1 1/4 cm.
    [Theory]
    [InlineData("32 in", "40 in", UnitsNet.Units.LengthUnit.Inch, "turn up 1/2 in twice; hangs 1 in shorter than the skirt", 25.4)]
    [InlineData("81 cm", "102 cm", UnitsNet.Units.LengthUnit.Centimeter, "turn up 1.25 cm twice; hangs 2.5 cm shorter than the skirt", 25)]
    public void Lining_Hem_SaysOnThePieceHowItIsHemmedAndHangsShorter(string waist, string hip, UnitsNet.Units.LengthUnit unit, string words, double shorterMm)
    {
        BodyMeasurements body = BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, waist).With(BodyMeasurement.HipGirth, hip);
        foreach (SkirtFit fit in new[] { SkirtFit.Straight, SkirtFit.Usual })
        {
            PieceSet set = SkirtPattern.From(SkirtBlock.For(body).Fitted(fit).Draft(), new SkirtPatternOptions { Lining = LiningChoice.Loose, Label = Label });

            Assert.True(set.Report.Passed, set.Report.ToString());
            foreach (PanelName name in new[] { PanelName.Front, PanelName.Back })
            {
                PatternPiece skirt = set.Find(name);
                PatternPiece lining = set.Find(PanelName.Of(name + " lining"));
                PanelEdge hem = lining.Panel.FindEdge(EdgeName.Hem);
                double level = hem.Start.Y.Millimeters;
                Assert.Equal(shorterMm, level - skirt.Panel.FindEdge(EdgeName.Hem).Start.Y.Millimeters, 6);
                Assert.Equal(shorterMm, lining.FindEdge(EdgeName.Hem).Allowance.Millimeters, 9);
                InternalLine first = Assert.Single(lining.InternalLines, line => line.Kind == InternalLineKind.Fold);
                Assert.Equal(words, first.Name);
                Assert.Equal(level - (shorterMm / 2), first.Path.Start.Y.Millimeters, 6);

                // As wide as the skirt at its own hem: seams are cut off, not drawn anew.
                double[] across = [.. skirt.Panel.CapOutline().IntersectionsWith(Line.Horizontal(hem.Start)).Points.Select(p => p.Point.X.Millimeters)];
                Assert.Equal(across.Max() - across.Min(), hem.SewnLength.Millimeters, 6);
            }

            Assert.Equal(2, set.Draw().Marks<TextMark>(LayerName.InternalLines).Count(mark => mark.Text == words));
        }
    }

    [Fact]
    public void Notches_OfTheCentreBack_StandBesideTheStopOfTheZipAndAtTheHip()
    {
        PatternPiece back = SkirtPattern.From(Skirt).Find(PanelName.Back);
        PieceNotch[] centre = [.. back.Notches.Where(n => n.Edge == EdgeName.Centre && n.Kind == NotchKind.Match)];

        double top = back.Panel.FindEdge(EdgeName.Centre).End.Y.Inches;
        Assert.Equal([-10, top - 7], centre.Select(n => n.OnSeam.Y.Inches).Select(y => Math.Round(y, 6)));
        Assert.Equal([2, 1], centre.Select(n => n.Cuts.Count));
        Assert.All(centre.SelectMany(n => n.Cuts), cut => Assert.Equal(-1, cut.Start.X.Inches, 6));
    }

    // A zip that ends within half an inch of the hip: one mark, since two could not be told apart.
    [Fact]
    public void Notches_OfAZipThatEndsAtTheHip_AreOne()
    {
        PatternPiece back = SkirtPattern.From(Skirt, new SkirtPatternOptions { ZipLength = Length.FromInches(10) }).Find(PanelName.Back);

        Assert.Single(back.Notches, n => n.Edge == EdgeName.Centre && n.Kind == NotchKind.Match);
    }

    [Fact]
    public void Waistband_Words_NameItsNotchesItsEndsAndTheirAllowance()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { Label = Label });
        PatternPiece band = set.Find(SkirtPattern.Waistband);

        Assert.Equal(["fold", "side", "CF", "side", "CB"], band.InternalLines.Select(line => line.Name));
        PieceNotch[] notches = [.. band.Notches.Where(n => n.Kind == NotchKind.Match)];
        Assert.All(notches.Zip(band.InternalLines.Skip(1)), pair => Assert.True(pair.First.OnSeam.DistanceTo(pair.Second.Path.Start) < Length.FromMillimeters(1e-6)));
        Drawing sheet = set.Draw(new PieceDrawingOptions { Tape = TapeStep.Eighth });
        string[] marks = [.. sheet.Marks<TextMark>(LayerName.InternalLines).Select(mark => mark.Text)];
        Assert.Equal(2, marks.Count(text => text == "side"));
        Assert.Contains("CF", marks);
        Assert.Contains("CB", marks);
        string[] names = [.. sheet.Marks<TextMark>(LayerName.Names).Select(mark => mark.Text)];
        Assert.Contains("centre back end on top, \u00BD\u2033 allowance", names);
        Assert.Contains("underlap end beneath, \u00BD\u2033 allowance", names);
        Assert.Contains("centre back seam, zip, 1\u2033 allowance", names);
        Assert.Contains("centre front, on the fold", sheet.Marks<TextMark>(LayerName.Folds).Select(mark => mark.Text));
        Assert.Contains("Allowances are included; each edge says its own.", string.Join(" ", sheet.Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text)));

        // Read at arm's length on the table: 5 mm, as on the large pieces.
        Assert.All(band.Label!.Lines, line => Assert.True(line.TypeSize >= Mm(4.4), line.Text));
    }

    [Fact]
    public void InternalLines_OfTheBack_AreLevelsAndTheStopOfTheZip()
    {
        PatternPiece back = SkirtPattern.From(Skirt).Find(PanelName.Back);

        Assert.Equal(["yoke line", "hip line", "zip stop"], back.InternalLines.Select(line => line.Name));
        Assert.Equal(-10, back.InternalLines[1].Path.Start.Y.Inches, 9);
        CurvePath centre = back.Panel.FindEdge(EdgeName.Centre).Stretches[0];
        Assert.Equal(7, (centre.Length - centre.LengthTo(centre.ClosestTo(back.InternalLines[2].Path.Start))).Inches, 9);
        Assert.Equal(Containment.Inside, back.SeamLine.ContainmentOf(back.InternalLines[2].Path.End));
    }

    [Fact]
    public void From_AZipLongerThanTheCentreBack_IsRefused()
    {
        SkirtBlock block = Skirt.ToBuilder().WithLength(Length.FromInches(12)).Draft();

        var refusal = Assert.Throws<ConstructionException>(() => SkirtPattern.From(block, new SkirtPatternOptions { ZipLength = Length.FromInches(20) }));

        Assert.Equal(DiagnosticCode.PlaceOffEdge, refusal.Code);
        Assert.Equal(20, refusal.Measured!.Value.Inches, 9);
    }

    // Worked by hand from the boxes: on wide cloth everything lies in one row, as long as the longest piece.
    [Fact]
    public void EstimateCloth_OnWideCloth_IsTheLongestPieceOfEachRow()
    {
        PieceSet set = SkirtPattern.From(Skirt);
        PatternPiece band = set.Find(SkirtPattern.Waistband);
        PatternPiece back = set.Find(PanelName.Back);
        PatternPiece front = set.Find(PanelName.Front);

        ClothEstimate wide = set.EstimateCloth(ClothName.Main, Length.FromMillimeters(1400));
        ClothEstimate narrow = set.EstimateCloth(ClothName.Main, Length.FromMillimeters(650));

        double skirtLength = Math.Max(back.Bounds.Height.Millimeters, front.Bounds.Height.Millimeters);
        Assert.Equal(Math.Max(band.Bounds.Width.Millimeters, skirtLength), wide.UpperBound.Millimeters, 6);
        Assert.Single(wide.Rows);
        Assert.Equal(["back", "back", "front", "waistband"], wide.Rows[0].Pieces.Select(name => name.Text).OrderBy(name => name, StringComparer.Ordinal));
        Assert.True(narrow.Rows.Count > 1);
        Assert.All(narrow.Rows, row => Assert.True(row.Width <= narrow.UsableWidth));
        double area = (2 * front.CutArea.SquareMillimeters) + (2 * back.CutArea.SquareMillimeters) + band.CutArea.SquareMillimeters;
        Assert.Equal(area, wide.PieceArea.SquareMillimeters, area * 1e-6);
        Assert.True(narrow.UpperBound * narrow.UsableWidth > narrow.PieceArea);
    }

    [Fact]
    public void EstimateCloth_OnClothNarrowerThanAPiece_IsRefused()
    {
        var refusal = Assert.Throws<ConstructionException>(() => SkirtPattern.From(Skirt).EstimateCloth(ClothName.Main, Length.FromMillimeters(300)));

        Assert.Equal(DiagnosticCode.PieceWiderThanCloth, refusal.Code);
        Assert.Equal("front", refusal.Landmark);
        Assert.Equal(300, refusal.Allowed!.Value.Millimeters);
    }

    [Fact]
    public void PieceSet_WithTwoPiecesOfOneName_IsRefused()
        => Assert.Contains("PC6102", Assert.Throws<ArgumentException>(() => PieceSet.Of(PatternPiece.From(Skirt.Back), PatternPiece.From(Skirt.Back))).Message);

    [Fact]
    public void PieceSet_AskedForAPieceItLacks_NamesThoseItHas()
    {
        var refusal = Assert.Throws<ConstructionException>(() => SkirtPattern.From(Skirt).Find(PanelName.Of("pocket")));

        Assert.Equal(DiagnosticCode.PieceNotInSet, refusal.Code);
        Assert.Contains("front, back, waistband", refusal.Message);
    }

    [Fact]
    public void PieceSet_WithAPieceOfAKnownName_ReplacesIt()
    {
        PieceSet set = SkirtPattern.From(Skirt);
        PatternPiece longer = set.Find(PanelName.Back).WithAllowance(EdgeName.Hem, Length.FromInches(3));

        Assert.Equal(3, set.With(longer).Pieces.Count);
        Assert.Same(longer, set.With(longer).Find(PanelName.Back));
        Assert.Equal(2, set.Without(PanelName.Back).Pieces.Count);
    }
}
