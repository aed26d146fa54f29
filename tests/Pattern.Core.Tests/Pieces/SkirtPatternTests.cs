using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

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

    // Walked around the waist: a quarter of the back, the front, the front, the back.
    [Fact]
    public void Waistband_Notches_StandWhereTheSeamsOfTheSkirtMeetIt()
    {
        PatternPiece band = SkirtPattern.From(Skirt).Find(SkirtPattern.Waistband);
        double back = Skirt.Back.FindEdge(EdgeName.Waist).Closed().Length.Millimeters;
        double front = Skirt.Front.FindEdge(EdgeName.Waist).Closed().Length.Millimeters;

        double[] expected = [back, back + front, back + front + front, back + front + front + back];
        double[] at = [.. band.Notches.Select(n => n.DistanceFromStart.Millimeters)];
        Assert.Equal(4, at.Length);
        Assert.All(at.Zip(expected, (one, other) => one - other), off => Assert.Equal(0, off, 6));
    }

    [Fact]
    public void Lining_Hem_EndsAtTheFinishedLengthOfTheSkirt()
    {
        PieceSet set = SkirtPattern.From(Skirt, new SkirtPatternOptions { Lining = LiningChoice.Loose });

        Assert.Equal(1.5, (set.Find(PanelName.Of("back lining")).Bounds.Bottom - set.Find(PanelName.Back).Bounds.Bottom).Inches, 9);
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
        => Assert.Contains("PC6010", Assert.Throws<ArgumentException>(() => PieceSet.Of(PatternPiece.From(Skirt.Back), PatternPiece.From(Skirt.Back))).Message);

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
