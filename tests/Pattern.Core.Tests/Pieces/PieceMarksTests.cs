using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

public class PieceMarksTests
{
    // Front single, back double (McConnell, "Sleeves"); 3 to 5 mm into the allowance, kept under it (Kwantlen Polytechnic University, "Stitched", Patterns).
    [Fact]
    public void Notches_OfTheSideSeams_AreSingleInFrontAndDoubleBehindAndStayUnderTheAllowance()
    {
        PieceNotch front = Assert.Single(WithTradeAllowances(Skirt.Front).Notches, n => n.Kind == NotchKind.Match);
        PieceNotch back = Assert.Single(WithTradeAllowances(Skirt.Back).Notches, n => n.Kind == NotchKind.Match);

        Assert.Single(front.Cuts);
        Assert.Equal(2, back.Cuts.Count);
        Assert.All(front.Cuts.Concat(back.Cuts), cut => Assert.InRange(cut.Length.Millimeters, 3, 5));
    }

    // A seam pair: equal lengths from the hem along the sewn edges.
    [Property(MaxTest = 60)]
    public Property Notches_OfASeamPair_SitAtEqualSewnLengths() => Prop.ForAll(CutLineTests.Skirts, any =>
    {
        PatternPiece front = WithTradeAllowances(any.Block.Front);
        PatternPiece back = WithTradeAllowances(any.Block.Back);
        Length FromHem(PatternPiece piece) => piece.Panel.FindEdge(EdgeName.SideSeam).SewnLength - piece.Notches.Single(n => n.Kind == NotchKind.Match).DistanceFromStart;

        Assert.Equal(FromHem(front).Millimeters, FromHem(back).Millimeters, 0.01);
    });

    [Property(MaxTest = 60)]
    public Property Notches_OfAnyPanelThatCanBeCut_RunFromTheCutLineTowardsTheSeamLine() => Prop.ForAll(AnyPanel.Recipes.ToArbitrary(), recipe =>
    {
        PatternPiece piece = PatternPiece.From((recipe with { DartCount = 0 }).Make()).WithAllowance(Mm(10));
        if (!piece.Panel.SeamOutline().IsSimple())
        {
            return;
        }

        foreach (LineSegment cut in piece.Notches.SelectMany(n => n.Cuts))
        {
            Assert.True(piece.CutLine.ClosestTo(cut.Start).Distance < Mm(1e-6));
            Assert.InRange(cut.Length.Millimeters, 3, 5);
            Assert.True(piece.SeamLine.ClosestTo(cut.End).Distance < piece.SeamLine.ClosestTo(cut.Start).Distance);
            Assert.Equal(Containment.Outside, piece.SeamLine.ContainmentOf(cut.End));
        }
    });

    // Common practice, no source: half an inch short of the apex, on the middle line.
    [Fact]
    public void DrillHoles_OfADart_StandHalfAnInchShortOfTheApex()
    {
        PatternPiece piece = WithTradeAllowances(Skirt.Back);
        PieceDart mark = Assert.Single(piece.Darts);
        Dart dart = Skirt.Back.Darts.Single();
        Point2D hole = Assert.Single(mark.DrillHoles);

        Assert.Equal(0.5, hole.DistanceTo(dart.Apex).Inches, 9);
        Assert.Equal(0, Line.Through(dart.Apex, dart.MiddleOfIntake).SignedDistanceTo(hole).Millimeters, 9);
        Assert.True(hole.DistanceTo(dart.MiddleOfIntake) < dart.Apex.DistanceTo(dart.MiddleOfIntake));
        Assert.True(piece.CutLine.ClosestTo(mark.FoldLine.End).Distance < Mm(1e-6));
    }

    [Fact]
    public void DrillHoles_OfADoublePointedDart_StandHalfAnInchShortOfBothPoints()
    {
        Panel panel = Rectangle.TakeInInsideDart(At(50, 150), At(50, 50), Mm(20), Ratio.FromPercent(50));
        PieceDart mark = Assert.Single(PatternPiece.From(panel).WithAllowance(Mm(10)).Darts);

        Assert.Null(mark.Name);
        Assert.Equal(4, mark.Legs.Count);
        Assert.Equal([137.3, 62.7], mark.DrillHoles.Select(hole => Math.Round(hole.Y.Millimeters, 9)));
    }

    [Fact]
    public void Notches_OfADart_StandWhereItsLegsMeetTheCutLine()
    {
        PatternPiece piece = WithTradeAllowances(Skirt.Front);
        Dart dart = Skirt.Front.Darts.Single();

        PieceNotch[] legs = [.. piece.Notches.Where(n => n.Kind == NotchKind.DartLeg)];

        Assert.Equal([dart.CentreLeg, dart.SideLeg], legs.Select(n => n.OnSeam));
        Assert.All(legs, n => Assert.Equal(0, Line.Through(dart.Apex, n.OnSeam).SignedDistanceTo(n.Cuts[0].Start).Millimeters, 6));
        Assert.All(legs, n => Assert.True(piece.CutLine.ClosestTo(n.Cuts[0].Start).Distance < Mm(1e-6)));
    }

    [Fact]
    public void Notches_OfTheFold_StandAtItsEnds()
    {
        PatternPiece piece = WithTradeAllowances(Skirt.Front).CutOnFold(EdgeName.Centre);

        PieceNotch[] ends = [.. piece.Notches.Where(n => n.Kind == NotchKind.Fold)];

        Assert.Equal(2, ends.Length);
        Assert.All(ends, n => Assert.Equal(piece.FoldLine!.Value.Start.X.Millimeters, n.Cuts[0].Start.X.Millimeters, 6));
    }

    [Fact]
    public void Notches_WithoutAllowance_AreNotCut()
        => Assert.All(PatternPiece.From(Skirt.Back).Notches.SelectMany(n => n.Cuts), cut => Assert.Equal(0, cut.Length.Millimeters));

    [Fact]
    public void Unfolded_Darts_AreMirroredAndPressedTheSameWay()
    {
        PatternPiece whole = WithTradeAllowances(Skirt.Front).CutOnFold(EdgeName.Centre).Unfolded();
        Dart[] darts = [.. whole.Panel.Darts];

        Assert.Equal(2, darts.Length);
        Assert.Equal([Toward.Side, Toward.Centre], darts.Select(d => d.PressedToward));
        double fold = Skirt.Front.FindEdge(EdgeName.Centre).Start.X.Millimeters;
        Assert.Equal(fold - darts[1].Apex.X.Millimeters, darts[0].Apex.X.Millimeters - fold, 9);
    }
}
