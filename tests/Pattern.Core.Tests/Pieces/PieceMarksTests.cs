using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
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

        Assert.Equal([dart.StartLeg, dart.EndLeg], legs.Select(n => n.OnSeam));
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

    // A hem of 40 mm beside seams of 10 mm: the fold is the bottom of the rectangle, drawn on to x = -10 and x = 110 mm.
    [Theory]
    [InlineData(Corner.Extended)]
    [InlineData(Corner.SquaredOff)]
    [InlineData(Corner.Mirrored)]
    [InlineData(Corner.Blunt)]
    public void Notches_OfAHem_StandOnTheEdgesBesideItAtItsFold(Corner corner)
    {
        PatternPiece piece = PatternPiece.From(Rectangle).WithAllowance(Mm(10)).WithAllowance(EdgeName.Hem, Mm(40))
            .WithCorner(EdgeName.Hem, EdgeName.SideSeam, corner).WithCorner(EdgeName.Hem, EdgeName.Centre, corner);

        PieceNotch[] hem = [.. piece.Notches.Where(n => n.Kind == NotchKind.Hem)];

        Assert.Equal([EdgeName.SideSeam, EdgeName.Centre], hem.Select(n => n.Edge));
        Assert.Equal([At(100, 0), At(0, 0)], hem.Select(n => n.OnSeam));
        Assert.Equal([200, 0], hem.Select(n => n.DistanceFromStart.Millimeters));
        Assert.All(hem, n => Assert.Single(n.Cuts));
        Assert.True(hem[0].Cuts[0].Start.DistanceTo(At(110, 0)) < Mm(1e-6));
        Assert.True(hem[0].Cuts[0].End.DistanceTo(At(106, 0)) < Mm(1e-6));
        Assert.True(hem[1].Cuts[0].Start.DistanceTo(At(-10, 0)) < Mm(1e-6));
    }

    [Fact]
    public void Notches_OfAHemWithoutAllowance_AreNone()
        => Assert.DoesNotContain(WithTradeAllowances(Rectangle).WithAllowance(EdgeName.Hem, Length.Zero).Notches, n => n.Kind == NotchKind.Hem);

    [Fact]
    public void Notches_OfAHemThatRunsIntoTheFold_StandOnTheOtherSideOnly()
    {
        PatternPiece half = WithTradeAllowances(Skirt.Front).CutOnFold(EdgeName.Centre);

        Assert.Equal([EdgeName.SideSeam], half.Notches.Where(n => n.Kind == NotchKind.Hem).Select(n => n.Edge));
        Assert.Equal(["side", "other side"], half.Unfolded().Notches.Where(n => n.Kind == NotchKind.Hem).Select(n => n.Edge.Text));
    }

    // Turned up at its notches, the hem lies under the cloth above them: beyond each notch the cut line is the mirror image of what comes before it.
    [Property(MaxTest = 60)]
    public Property Notches_OfAnyHem_AreOnTheCutLineWhereItFoldsOntoItself() => Prop.ForAll(CutLineTests.Skirts, any =>
    {
        foreach (Panel panel in new[] { any.Block.Front, any.Block.Back })
        {
            PatternPiece piece = WithTradeAllowances(panel).WithAllowance(EdgeName.SideSeam, Mm(any.AllowancesMm[1]));
            CurvePath hem = piece.FindEdge(EdgeName.Hem).SeamLine;
            PieceNotch[] notches = [.. piece.Notches.Where(n => n.Kind == NotchKind.Hem)];

            Assert.Equal(2, notches.Length);
            foreach (PieceNotch notch in notches)
            {
                bool isAtStart = notch.OnSeam == hem.Start;
                Line fold = isAtStart ? Line.From(hem.Start, hem.StartDirection) : Line.From(hem.End, hem.EndDirection);
                Point2D onCut = notch.Cuts[0].Start;
                CurvePath beside = piece.FindEdge(notch.Edge).CutLine;
                Assert.Equal(0, fold.SignedDistanceTo(onCut).Millimeters, 6);
                Assert.True(beside.ClosestTo(onCut).Distance < Mm(1e-6));
                Assert.Equal(0, fold.SignedDistanceTo(notch.Cuts[0].End).Millimeters, 6);
                Length at = piece.CutLine.LengthTo(piece.CutLine.ClosestTo(onCut));
                for (int mm = 1; mm <= 30; mm += 7)
                {
                    Point2D one = piece.CutLine.PointAtLength(at + Mm(mm));
                    Point2D other = piece.CutLine.PointAtLength(at - Mm(mm));
                    Assert.True(one.Transformed(Transform2D.Mirror(fold)).DistanceTo(other) < Mm(1e-4));
                }
            }
        }
    });

    // A hem that flares out or in at each side, 35 to 145 degrees inside the corner.
    [Property(MaxTest = 100)]
    public Property Notches_OfAHemAtAnyAngle_AreWhereItsLineMeetsTheCutLineBeside() => Prop.ForAll(
        Bodies.Range(-140, 140).ToArbitrary(),
        Bodies.Range(-140, 140).ToArbitrary(),
        Bodies.Range(1, 40).ToArbitrary(),
        (left, right, allowance) =>
        {
            PatternPiece piece = PatternPiece.From(Quad((left, 200), (400 + right, 200), (400, 0), (0, 0))).WithAllowance(Mm(allowance)).WithAllowance(EdgeName.Hem, Mm(20));

            PieceNotch[] hem = [.. piece.Notches.Where(n => n.Kind == NotchKind.Hem)];

            // An allowance a beside an edge that leans by x in a height of 200 mm is a sqrt(1 + (x / 200)^2) wide along the hem.
            double Wide(double lean) => allowance * Math.Sqrt(1 + (lean * lean / 40000));
            Assert.Equal(2, hem.Length);
            Assert.True(hem[0].Cuts[0].Start.DistanceTo(At(400 + Wide(right), 0)) < Mm(1e-6));
            Assert.True(hem[1].Cuts[0].Start.DistanceTo(At(-Wide(left), 0)) < Mm(1e-6));
        });

    [Fact]
    public void Notches_WithoutAllowance_AreNotCut()
        => Assert.All(PatternPiece.From(Skirt.Back).Notches.SelectMany(n => n.Cuts), cut => Assert.Equal(0, cut.Length.Millimeters));

    [Fact]
    public void Unfolded_Darts_AreMirroredAndPressedTheSameWay()
    {
        PatternPiece whole = WithTradeAllowances(Skirt.Front).CutOnFold(EdgeName.Centre).Unfolded();
        Dart[] darts = [.. whole.Panel.Darts];

        Assert.Equal(2, darts.Length);
        Assert.Equal([Toward.End, Toward.Start], darts.Select(d => d.PressedToward));
        double fold = Skirt.Front.FindEdge(EdgeName.Centre).Start.X.Millimeters;
        Assert.Equal(fold - darts[1].Apex.X.Millimeters, darts[0].Apex.X.Millimeters - fold, 9);
    }
}
