using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

public class PatternPieceTests
{
    // Closed forms of a rectangle of 100 by 200 mm.
    [Fact]
    public void CutLine_OfARectangle_HasTheAreaAndPerimeterOfTheLargerOne()
    {
        PatternPiece piece = PatternPiece.From(Rectangle).WithAllowance(Mm(10)).WithAllowance(EdgeName.Hem, Mm(40));

        Assert.Equal(120 * 250, piece.CutArea.SquareMillimeters, 6);
        Assert.Equal(2 * (120 + 250), piece.CutPerimeter.Millimeters, 6);
        Assert.Equal(2 * (100 + 200), piece.SeamPerimeter.Millimeters, 6);
        Assert.Equal(-40, piece.Bounds.Bottom.Millimeters, 6);
        Assert.Equal(210, piece.Bounds.Top.Millimeters, 6);
        Assert.Equal(4, piece.CutLine.Segments.Count);
    }

    [Fact]
    public void CutLine_WithoutAllowance_IsTheSeamLine()
    {
        PatternPiece piece = PatternPiece.From(Skirt.Back);

        Assert.Equal(piece.SeamPerimeter.Millimeters, piece.CutPerimeter.Millimeters, 9);
        Assert.Equal(piece.SeamLine.Segments.Count, piece.CutLine.Segments.Count);
    }

    [Fact]
    public void CutOnFold_OfARectangle_HasNoAllowanceOnTheFold()
    {
        PatternPiece piece = PatternPiece.From(Rectangle).WithAllowance(Mm(10)).CutOnFold(EdgeName.Centre);

        Assert.Equal(0, piece.Bounds.Left.Millimeters, 9);
        Assert.Equal(110 * 220, piece.CutArea.SquareMillimeters, 6);
        Assert.True(piece.FindEdge(EdgeName.Centre).IsOnFold);
        Assert.Equal(0, piece.FindEdge(EdgeName.Centre).Allowance.Millimeters);
        Assert.Equal(220, piece.FindEdge(EdgeName.Centre).CutLine.Length.Millimeters, 9);
    }

    [Fact]
    public void Unfolded_OfARectangle_IsTwiceAsLargeAndSymmetric()
    {
        PatternPiece half = PatternPiece.From(Rectangle).WithAllowance(Mm(10)).CutOnFold(EdgeName.Centre);
        PatternPiece whole = half.Unfolded();

        Assert.Equal(220 * 220, whole.CutArea.SquareMillimeters, 6);
        Assert.Equal(["waist", "side", "hem", "other side"], whole.Edges.Select(edge => edge.Name.Text));
        Assert.Null(whole.FoldLine);
        Assert.Equal(half.CutLine.Segments, whole.Folded().CutLine.Segments);
    }

    [Fact]
    public void WithAllowance_Negative_IsRefusedWithEdgeMeasureAndLimits()
    {
        var refusal = Assert.Throws<System.ArgumentOutOfRangeException>(() => PatternPiece.From(Rectangle).WithAllowance(EdgeName.Hem, Mm(-5)));

        Assert.Contains("PC6001", refusal.Message);
        Assert.Contains("hem", refusal.Message);
        Assert.Contains("-5.0 mm", refusal.Message);
        Assert.Contains("500.0 mm", refusal.Message);
    }

    [Fact]
    public void WithAllowance_OfAnEdgeThatThePanelLacks_IsRefused()
    {
        var refusal = Assert.Throws<ConstructionException>(() => PatternPiece.From(Rectangle).WithAllowance(EdgeName.Armhole, Mm(5)));

        Assert.Equal(DiagnosticCode.EdgeNotOnPanel, refusal.Code);
        Assert.Equal("armhole", refusal.Landmark);
    }

    [Fact]
    public void WithCorner_OfEdgesThatDoNotMeet_IsRefused()
    {
        var refusal = Assert.Throws<ConstructionException>(() => PatternPiece.From(Rectangle).WithCorner(EdgeName.Hem, EdgeName.Waist, Corner.Mirrored));

        Assert.Equal(DiagnosticCode.CornerBetweenStrangers, refusal.Code);
    }

    [Fact]
    public void CutOnFold_OfACurvedEdge_IsRefusedWithHowFarItIsOff()
    {
        var refusal = Assert.Throws<ConstructionException>(() => PatternPiece.From(Skirt.Back).CutOnFold(EdgeName.SideSeam));

        Assert.Equal(DiagnosticCode.FoldNotStraight, refusal.Code);
        Assert.True(refusal.Measured > refusal.Allowed);
    }

    [Fact]
    public void Unfolded_OfAPieceOnNoFold_IsRefused()
        => Assert.Equal(DiagnosticCode.NothingToUnfold, Assert.Throws<ConstructionException>(() => PatternPiece.From(Rectangle).Unfolded()).Code);

    [Fact]
    public void Label_OfASkirtFront_StandsInsideTheSeamLine()
    {
        PatternPiece piece = WithTradeAllowances(Skirt.Front).CutOnFold(EdgeName.Centre).Cut(1, ClothName.Main).WithLabel(PieceLabel.For("Act 2 skirt").ForWhom("Zo\u00EB"));

        Assert.Equal(["FRONT", "Act 2 skirt", "for Zo\u00EB", "cut 1 of main cloth on the fold", "this line is 5 cm long"], piece.Label!.Lines.Select(line => line.Text));
        Assert.Equal(Containment.Inside, piece.SeamLine.ContainmentOf(piece.Label.Bounds.LowerLeft));
        Assert.Equal(Containment.Inside, piece.SeamLine.ContainmentOf(piece.Label.Bounds.UpperRight));
    }

    [Theory]
    [InlineData("two\nlines", "U+000A")]
    [InlineData("bell\u0007", "U+0007")]
    [InlineData("turned \u202E over", "U+202E")]
    public void PieceLabel_WithACharacterThatCannotBePrinted_IsRefused(string text, string named)
    {
        string message = Assert.Throws<System.ArgumentException>(() => PieceLabel.For(text)).Message;

        Assert.Contains("PC6009", message);
        Assert.Contains(named, message);
    }

    // Not as inline data: an attribute cannot hold half a character.
    [Fact]
    public void PieceLabel_WithHalfACharacter_IsRefused()
        => Assert.Contains("U+D83D", Assert.Throws<System.ArgumentException>(() => PieceLabel.For("half \uD83D")).Message);

    [Fact]
    public void PieceLabel_WithCharactersOfAnyScript_TakesThem()
        => Assert.Equal("\u041E\u043B\u044C\u0433\u0430 \U0001F457", PieceLabel.For("\u041E\u043B\u044C\u0433\u0430 \U0001F457").Garment);
}
