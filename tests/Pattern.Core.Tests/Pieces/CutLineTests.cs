using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

public class CutLineTests
{
    private const double ToleranceMm = 0.01;

    private static readonly Corner[] Kinds = [Corner.Extended, Corner.SquaredOff, Corner.Mirrored, Corner.Blunt];

    /// <summary>Real women, any options, an allowance for each of the four edges, and a kind of corner.</summary>
    internal static Arbitrary<(SkirtBlock Block, double[] AllowancesMm, Corner Corner)> Skirts { get; } = (
        from body in Gen.Elements(Bodies.Ansur.AsEnumerable())
        from asked in Bodies.Options
        from allowances in Gen.ArrayOf(Bodies.Range(6, 40), 4)
        from corner in Gen.Elements(Kinds)
        select (asked.Apply(SkirtBlock.For(body)).Draft(), allowances, corner)).ToArbitrary();

    /// <summary>Panels of any shape without darts, an allowance for all edges, and a kind of corner.</summary>
    private static Arbitrary<(Panel Panel, double AllowanceMm, Corner Corner)> PlainPanels { get; } = (
        from recipe in AnyPanel.Recipes
        from allowance in Bodies.Range(2, 45)
        from corner in Gen.Elements(Kinds)
        select ((recipe with { DartCount = 0 }).Make(), allowance, corner)).ToArbitrary();

    /// <summary>Panels of any shape with one dart, within 60 mm of an end of its edge where it has room there, and an allowance for all edges.</summary>
    private static Arbitrary<(Panel Panel, double AllowanceMm)> PanelsWithADart { get; } = (
        from recipe in AnyPanel.Recipes
        from edge in Gen.Choose(0, 1000)
        from away in Bodies.Range(2, 60)
        from intake in Bodies.Range(3, 40)
        from length in Bodies.Range(20, 120)
        from atEnd in Gen.Elements(false, true)
        from toward in Gen.Elements(Toward.Start, Toward.End)
        from allowance in Bodies.Range(2, 45)
        select (WithDart((recipe with { DartCount = 0 }).Make(), edge, away, intake, length, atEnd, toward), allowance)).ToArbitrary();

    // No line nearer to the seam than the allowance, and none that crosses itself; or a refusal that says what would do.
    [Property(MaxTest = 200)]
    public Property CutLine_OfAnyPanelWithoutDarts_KeepsItsWidthAndIsSimple() => Prop.ForAll(PlainPanels, any =>
    {
        PatternPiece piece = AllCorners(PatternPiece.From(any.Panel).WithAllowance(Mm(any.AllowanceMm)), any.Corner);
        try
        {
            CurvePath cut = piece.CutLine;
            Assert.True(cut.IsSimple());
            Assert.All(Samples(cut), p => Assert.True(piece.SeamLine.ClosestTo(p).Distance.Millimeters >= any.AllowanceMm - ToleranceMm));
        }
        catch (ConstructionException refusal)
        {
            Assert.True(
                refusal.Code == DiagnosticCode.SeamLineCrosses
                || (refusal.Code is DiagnosticCode.EdgeVanishes or DiagnosticCode.CutLineCrosses && refusal.Allowed < refusal.Measured));
        }
    });

    // The refusals that the property above allows are rare.
    [Fact]
    public void CutLine_OfManyPanelsWithoutDarts_IsDrawnForNearlyAll()
    {
        int refused = 0;
        foreach (PanelRecipe recipe in AnyPanel.Recipes.Sample(300, 20))
        {
            PatternPiece piece = PatternPiece.From((recipe with { DartCount = 0 }).Make()).WithAllowance(Mm(12.7));
            try
            {
                _ = piece.CutLine;
            }
            catch (ConstructionException refusal) when (IsOfACutLine(refusal))
            {
                refused++;
            }
        }

        Assert.InRange(refused, 0, 9);
    }

    [Property(MaxTest = 100)]
    public Property CutLine_OfAnySkirt_HasEachEdgeAtItsAllowance() => Prop.ForAll(Skirts, any =>
    {
        foreach (Panel panel in new[] { any.Block.Front, any.Block.Back })
        {
            PatternPiece piece = PatternPiece.From(panel);
            for (int i = 0; i < 4; i++)
            {
                piece = piece.WithAllowance(panel.Edges[i].Name, Mm(any.AllowancesMm[i]));
            }

            piece = AllCorners(piece, any.Corner);
            Assert.True(piece.CutLine.IsSimple());

            // Only a seam that is mirrored over the hem lets a hem that comes in lie flat, and a blunt corner takes a piece off any hem: they are told so, and of nothing else.
            bool mayBeShort = any.Block.Fit.SideHem > Length.Zero || any.Block.Fit.CentreBackHem > Length.Zero || any.Corner == Corner.Blunt;
            Assert.All(piece.Report.Failures, f => Assert.True(mayBeShort && f.Check == "hem beyond its fold less before it", $"{f}, on a skirt of {any.Block.Body}, {any.Block.Fit}"));
            foreach (PieceEdge edge in piece.Edges)
            {
                Assert.All(Samples(edge.CutLine), p => Assert.True(edge.SeamLine.ClosestTo(p).Distance >= edge.Allowance - Mm(ToleranceMm)));
            }
        }
    });

    // A hem whose corner is mirrored over a side that curves ends 0.04 mm off level beyond the side, and is no narrower for it.
    [Fact]
    public void Report_HemMirroredOverASideThatCurves_FindsItAsWideAsBefore()
    {
        Panel panel = Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(0, 0), Point2D.FromMillimeters(269.1, 0))))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(Point2D.FromMillimeters(269.1, 0)).CurveTo(Point2D.FromMillimeters(269.54, -140), Point2D.FromMillimeters(269.48, -290), Point2D.FromMillimeters(269.48, -431)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(269.48, -431), Point2D.FromMillimeters(0, -431))))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(0, -431), Point2D.FromMillimeters(0, 0))))
            .Make();
        PatternPiece piece = AllCorners(
            PatternPiece.From(panel).WithAllowance(EdgeName.SideSeam, Mm(28.26)).WithAllowance(EdgeName.Hem, Mm(34.66)).WithAllowance(EdgeName.Centre, Mm(11.13)).WithAllowance(EdgeName.Waist, Mm(19.55)),
            Corner.Mirrored);

        Assert.True(piece.Report.Passed, piece.Report.ToString());
    }

    // Fold the dart as it is pressed: its allowance lies under that of the seam line, the same distance from it.
    [Property(MaxTest = 100)]
    public Property CutCap_OfAnySkirt_FoldedLiesUnderTheAllowanceOfTheWaist() => Prop.ForAll(Skirts, any =>
    {
        foreach (Panel panel in new[] { any.Block.Front, any.Block.Back })
        {
            PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(any.AllowancesMm[0]));
            PanelEdge waist = panel.FindEdge(EdgeName.Waist);
            foreach (PieceDart mark in piece.Darts)
            {
                Dart dart = panel.FindDart(mark.Name!.Value);
                Line leg = Line.Through(dart.Apex, dart.StartLeg);
                Line fold = Line.Through(dart.Apex, dart.StartLeg.MidpointTo(dart.EndLeg));
                CurvePath seam = Under(waist, dart.Number - 1);
                int half = mark.CutCap!.Segments.Count / 2;
                Assert.Equal(0, mark.CutCap.Segments.Count % 2);
                for (int i = 0; i < mark.CutCap.Segments.Count; i++)
                {
                    foreach (Point2D onCap in CurvePath.FromSegments([mark.CutCap.Segments[i]]).PointsAtEqualLengths(4))
                    {
                        Point2D p = i < half ? onCap : onCap.Transformed(Transform2D.Mirror(fold));
                        p = p.Transformed(Transform2D.Mirror(leg));
                        Assert.Equal(any.AllowancesMm[0], seam.ClosestTo(p).Distance.Millimeters, 0.003);
                    }
                }
            }
        }
    });

    [Property(MaxTest = 60)]
    public Property Corner_Mirrored_FoldedBackLandsOnTheCutLine() => Prop.ForAll(Skirts, any =>
    {
        foreach (Panel panel in new[] { any.Block.Front, any.Block.Back })
        {
            PatternPiece piece = WithTradeAllowances(panel);
            PieceEdge side = piece.FindEdge(EdgeName.SideSeam);
            PieceEdge hem = piece.FindEdge(EdgeName.Hem);
            Line fold = Line.From(hem.SeamLine.Start, hem.SeamLine.StartDirection);
            Length from = piece.CutLine.LengthTo(piece.CutLine.ClosestTo(side.CutLine.End));
            Length to = piece.CutLine.LengthTo(piece.CutLine.ClosestTo(hem.CutLine.Start));
            CurvePath corner = piece.CutLine.SubPath(from, to);

            Assert.True(corner.Length > Mm(30), "The corner reaches down as far as the hem is turned up.");
            Assert.All(Samples(corner), p => Assert.True(side.CutLine.ClosestTo(p.Transformed(Transform2D.Mirror(fold))).Distance < Mm(1e-5)));
        }
    });

    // A hem that bends around (0, 0) by more than 1 mm off the line through its ends, which would be its fold, and square sides. Turned up along the curve, each point keeps its angle and lands as far inside the hem as it was outside; a point t below the
    // tangent at the edge of a seam allowance a has the radius r = sqrt(a^2 + (R + t)^2) and lands 2 a (1 - R / r) from that edge.
    [Theory]
    [InlineData(600, 1.52)]
    [InlineData(1200, 0.79)]
    [InlineData(4000, 0.24)]
    public void Corner_MirroredAtACurvedHem_FoldsOntoTheCutLineAsNearlyAsAnyCurveFolds(double radiusMm, double worstMm)
    {
        double half = 100 / radiusMm;
        Point2D On(double radius, double angle) => At(radius * Math.Sin(angle), -radius * Math.Cos(angle));
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(On(radiusMm - 300, half)).LineTo(On(radiusMm - 300, -half)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(On(radiusMm - 300, -half)).LineTo(On(radiusMm, -half)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(On(radiusMm, -half)).ArcAround(At(0, 0), Angle.FromRadians(2 * half)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(On(radiusMm, half)).LineTo(On(radiusMm - 300, half)))
            .Make();
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(12.7)).WithAllowance(EdgeName.Hem, Mm(38)).WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored);

        PieceEdge side = piece.FindEdge(EdgeName.SideSeam);
        CurvePath corner = piece.CutLine.SubPath(
            piece.CutLine.LengthTo(piece.CutLine.ClosestTo(piece.FindEdge(EdgeName.Hem).CutLine.End)),
            piece.CutLine.LengthTo(piece.CutLine.ClosestTo(side.CutLine.Start)));
        double worst = 0;
        foreach (Point2D p in corner.PointsAtEqualLengths(40))
        {
            double r = p.DistanceTo(At(0, 0)).Millimeters;
            Point2D folded = At(0, 0) + (Vector2D.FromMillimeters(p.X.Millimeters, p.Y.Millimeters) * (((2 * radiusMm) - r) / r));
            double off = side.CutLine.ClosestTo(folded).Distance.Millimeters;
            Assert.Equal(2 * 12.7 * (1 - (radiusMm / r)), off, 1e-4);
            worst = Math.Max(worst, off);
        }

        Assert.True(corner.Length > Mm(37));
        Assert.Equal(worstMm, worst, 0.01);
    }

    // A dart anywhere on an edge, and close to its corners above all: no line comes nearer to a seam than the allowance, or the piece is refused.
    [Property(MaxTest = 200)]
    public Property CutLine_OfAnyPanelWithADartNearACorner_KeepsItsWidth() => Prop.ForAll(PanelsWithADart, any =>
    {
        PatternPiece piece = PatternPiece.From(any.Panel).WithAllowance(Mm(any.AllowanceMm));
        try
        {
            CurvePath cut = piece.CutLine;
            Assert.All(Samples(cut), p => Assert.True(
                piece.SeamLine.ClosestTo(p).Distance.Millimeters >= any.AllowanceMm - ToleranceMm,
                $"{piece.SeamLine.ClosestTo(p).Distance.Millimeters} mm at {p}"));
        }
        catch (ConstructionException refusal)
        {
            Assert.True(refusal.Code is DiagnosticCode.SeamLineCrosses or DiagnosticCode.DartWiderThanStretch || refusal.Allowed < refusal.Measured, refusal.Message);
        }
    });

    // A dart 38 mm wide, 2 mm from a corner: its cap stands out 50 mm beyond the corner, so the cut line of the edge before it came to 43.55 mm of the cap where
    // 44.52 mm were asked for.
    [Fact]
    public void CutLine_BesideTheCapOfADartAtACorner_IsRefusedWithWhatWouldDo()
    {
        Panel plain = Panel.Named(PanelName.Of("any"))
            .WithEdge(EdgeName.Of("with the dart"), EdgeRole.Seam, CurvePath.From(At(178.60188, 7.931788)).LineTo(At(43.629234, 229.74031)))
            .WithEdge(EdgeName.Of("after"), EdgeRole.Seam, CurvePath.From(At(43.629234, 229.74031)).LineTo(At(-254.569157, -4.338278)).LineTo(At(168.339337, -215.549812)))
            .WithEdge(EdgeName.Of("before"), EdgeRole.Seam, CurvePath.From(At(168.339337, -215.549812)).LineTo(At(178.60188, 7.931788)))
            .Make();
        Panel panel = plain.TakeInDart(EdgeName.Of("with the dart").At(Mm(20.7)), Mm(38), Mm(28), Toward.End);
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(44.519819));

        ConstructionException refusal = Assert.Throws<ConstructionException>(() => piece.CutLine);

        Assert.Equal(DiagnosticCode.CutLineTooNear, refusal.Code);
        PatternPiece narrower = PatternPiece.From(panel).WithAllowance((Length)refusal.Allowed!);
        Assert.All(Samples(narrower.CutLine), p => Assert.True(narrower.SeamLine.ClosestTo(p).Distance >= (Length)refusal.Allowed - Mm(ToleranceMm)));
    }

    [Property(MaxTest = 60)]
    public Property Unfolded_OfAnySkirtFront_IsTheHalfAndItsImage() => Prop.ForAll(Skirts, any =>
    {
        PatternPiece half = WithTradeAllowances(any.Block.Front).CutOnFold(EdgeName.Centre);
        PatternPiece whole = half.Unfolded();
        Line fold = Line.Through(half.FoldLine!.Value.Start, half.FoldLine.Value.End);

        Assert.Equal(2 * half.CutArea.SquareMillimeters, whole.CutArea.SquareMillimeters, 0.05);
        Assert.All(Samples(whole.CutLine), p => Assert.True(whole.CutLine.ClosestTo(p.Transformed(Transform2D.Mirror(fold))).Distance < Mm(0.003)));
        Assert.All(Samples(half.CutLine).Where(p => Math.Abs(fold.SignedDistanceTo(p).Millimeters) > 1e-3), p => Assert.True(whole.CutLine.ClosestTo(p).Distance < Mm(0.003)));
        Assert.Equal(2 * half.Darts.Count, whole.Darts.Count);
        Assert.Equal(half.CutLine.Segments, whole.Folded().CutLine.Segments);
        Assert.Equal(half.Notches.Select(n => n.OnSeam), whole.Folded().Notches.Select(n => n.OnSeam));
    });

    // A round of radius 20 mm with 30 mm of allowance cannot keep its shape; nothing may loop.
    [Fact]
    public void CutLine_OfACurveTighterThanTheAllowance_HasNoLoop()
    {
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.From(At(100, 100)).LineTo(At(70, 100)).ArcAround(At(50, 100), Angle.FromDegrees(-180)).LineTo(At(0, 100)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(0, 100)).LineTo(At(0, 0)).LineTo(At(100, 0)).LineTo(At(100, 100)))
            .Make();

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(EdgeName.Armhole, Mm(30));

        PieceEdge armhole = piece.FindEdge(EdgeName.Armhole);
        Assert.True(piece.CutLine.IsSimple());
        Assert.All(Samples(armhole.CutLine), p => Assert.True(armhole.SeamLine.ClosestTo(p).Distance.Millimeters >= 30 - ToleranceMm));
    }

    // A notch 5 mm wide at its bottom, 20 mm of allowance: nothing is left of the bottom edge.
    [Fact]
    public void CutLine_CornerMirroredAtAJoint_KeepsNoSegmentWithoutLength()
    {
        SkirtBlock block = new SkirtAsked(51.88524, 13.74392, 1075.09382, 11.41325, 2.4435600000000015, Waistline.Level, 40.373115, 25.4, 25.4, 12.7)
            .Apply(SkirtBlock.For(Bodies.Millimetres(740.32955, 978.24405))).Draft();

        AssertNoSegmentIsAPoint(SkirtPattern.From(block, new SkirtPatternOptions { Lining = LiningChoice.Loose }));
    }

    [Fact]
    public void CutLine_OfAnEdgeThatVanishes_IsRefusedWithWhatWouldDo()
    {
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Of("left"), EdgeRole.Seam, CurvePath.From(At(0, 0)).LineTo(At(0, 100)))
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.From(At(0, 100)).LineTo(At(47.5, 60)))
            .WithEdge(EdgeName.Of("short"), EdgeRole.Seam, CurvePath.From(At(47.5, 60)).LineTo(At(52.5, 60)))
            .WithEdge(EdgeName.Of("over"), EdgeRole.Seam, CurvePath.From(At(52.5, 60)).LineTo(At(100, 100)))
            .WithEdge(EdgeName.Of("right"), EdgeRole.Seam, CurvePath.From(At(100, 100)).LineTo(At(100, 0)).LineTo(At(0, 0)))
            .Make();

        var refusal = Assert.Throws<ConstructionException>(() => PatternPiece.From(panel).WithAllowance(Mm(20)).CutLine);

        Assert.Equal(DiagnosticCode.EdgeVanishes, refusal.Code);
        Assert.Equal("short", refusal.Landmark);
        Assert.Equal(20, refusal.Measured!.Value.Millimeters, 9);

        // The line beside the short edge is shorter by 2 a tan(turn / 2); the turn is atan2(40, 47.5).
        double most = 2.5 / Math.Tan(Math.Atan2(40, 47.5) / 2);
        Assert.InRange(refusal.Allowed!.Value.Millimeters, most - 0.05, most);
        Assert.True(PatternPiece.From(panel).WithAllowance(refusal.Allowed.Value).CutLine.IsSimple());
    }

    // Closed forms at one corner of 60 degrees, allowances of 10 mm. Extended: a / sin 30. Blunt: one allowance beyond the corner.
    [Theory]
    [InlineData(Corner.Extended, 20)]
    [InlineData(Corner.Blunt, 10)]
    public void Corner_OfSixtyDegrees_LiesWhereTrigonometrySays(Corner corner, double aboveMm)
    {
        double height = 100 * Math.Sqrt(3);
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(0, 0)).LineTo(At(200, 0)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 0)).LineTo(At(100, height)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(100, height)).LineTo(At(0, 0)))
            .Make();

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(10)).WithCorner(EdgeName.SideSeam, EdgeName.Centre, corner);

        Assert.Equal(aboveMm, piece.Bounds.Top.Millimeters - height, 9);
    }

    // A needle of 5 degrees whose sides bend apart, the same on both sides of y = 0: its end is upright, one allowance beyond the tip.
    [Fact]
    public void Corner_OfANeedleWhoseSidesBend_IsCutOffSquareToTheMiddleBetweenThem()
    {
        double half = 100 * Math.Tan(2.5 * Math.PI / 180);
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 60)).CurveTo(At(150, 10), At(100, half), At(0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).CurveTo(At(100, -half), At(150, -10), At(200, -60)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200, -60)).LineTo(At(200, 60)))
            .Make();

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(10));

        Assert.Equal(-10, piece.Bounds.Left.Millimeters, 6);
    }

    // The allowance of the side ends square where its seam line, drawn on, meets the cut line of the waist: inside angle 120 degrees.
    [Fact]
    public void Corner_SquaredOff_EndsSquareToTheSeamWhereItMeetsTheOtherCutLine()
    {
        Panel panel = Quad((0, 200), (100, 200), (100 + (200 / Math.Sqrt(3)), 0), (0, 0));

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Mm(10)).WithAllowance(EdgeName.Waist, Mm(15)).WithCorner(EdgeName.Waist, EdgeName.SideSeam, Corner.SquaredOff);

        // Drawn on from (100, 200) at 60 degrees from the waist line, the side reaches y = 215 after 15 / sin 60 = 17.32 mm, 8.66 mm to the left.
        Point2D onWaist = At(100 - (15 / Math.Sqrt(3)), 215);
        Point2D square = onWaist + (Vector2D.FromMillimeters(Math.Sqrt(3) / 2, 0.5) * 10);
        Assert.True(piece.FindEdge(EdgeName.Waist).CutLine.End.DistanceTo(onWaist) < Mm(1e-6));
        Assert.True(piece.FindEdge(EdgeName.SideSeam).CutLine.Start.DistanceTo(square) < Mm(1e-6));
    }

    // A seam that runs straight on with another allowance: the cut line steps from the one to the other.
    [Fact]
    public void Corner_OfEdgesThatRunStraightOn_StepsSquareToTheSeam()
    {
        Panel panel = Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Of("zip"), EdgeRole.Seam, CurvePath.From(At(0, 0)).LineTo(At(100, 0)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(100, 0)).LineTo(At(200, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200, 0)).LineTo(At(200, 100)).LineTo(At(0, 100)).LineTo(At(0, 0)))
            .Make();

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(EdgeName.Of("zip"), Mm(25)).WithAllowance(EdgeName.SideSeam, Mm(12));

        Assert.Equal((200 * 100) + (100 * 25) + (100 * 12), piece.CutArea.SquareMillimeters, 6);
    }

    // A hem without allowance has nothing to fold back; its mirrored corner is no error.
    [Fact]
    public void Corner_MirroredOverAnEdgeWithoutAllowance_EndsAtTheSeamLine()
    {
        PatternPiece piece = WithTradeAllowances(Rectangle).WithAllowance(EdgeName.Hem, Length.Zero);

        Assert.Equal(0, piece.Bounds.Bottom.Millimeters, 9);
        Assert.Equal((100 + 25.4) * (200 + 12.7), piece.CutArea.SquareMillimeters, 6);
    }

    [Fact]
    public void CutLine_OfASeamLineThatTouchesItself_IsRefused()
    {
        // A notch of 90 degrees with a dart on either side, 15.7 mm from its bottom: folded out, their caps reach 17.3 mm across it and overlap.
        EdgeName notch = EdgeName.Armhole;
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(notch, EdgeRole.Seam, CurvePath.From(At(0, 100)).LineTo(At(50, 50)).LineTo(At(100, 100)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(100, 100)).LineTo(At(100, 0)).LineTo(At(0, 0)).LineTo(At(0, 100)))
            .Make()
            .TakeInDart(notch.At(Mm(55)), Mm(20), Mm(10 * Math.Sqrt(3)))
            .TakeInDart(notch.At(Mm(66.4)), Mm(20), Mm(10 * Math.Sqrt(3)), Toward.End);

        var refusal = Assert.Throws<ConstructionException>(() => PatternPiece.From(panel).WithAllowance(Mm(5)).CutLine);

        Assert.Equal(DiagnosticCode.SeamLineCrosses, refusal.Code);
        Assert.Equal("armhole", refusal.Landmark);
    }

    private static Panel WithDart(Panel panel, int index, double awayMm, double intakeMm, double lengthMm, bool atEnd, Toward toward)
    {
        PanelEdge edge = panel.Edges[index % panel.Edges.Count];
        try
        {
            return panel.TakeInDart(edge.Name.At(atEnd ? edge.SewnLength - Mm(awayMm) : Mm(awayMm)), Mm(intakeMm), Mm(lengthMm), toward);
        }
        catch (ConstructionException refusal) when (Refusals.HasNoRoom(refusal))
        {
            // No room for it there.
            return panel;
        }
    }

    private static PatternPiece AllCorners(PatternPiece piece, Corner corner)
    {
        IReadOnlyList<PanelEdge> edges = piece.Panel.Edges;
        for (int i = 0; i < edges.Count; i++)
        {
            piece = piece.WithCorner(edges[i].Name, edges[(i + 1) % edges.Count].Name, corner);
        }

        return piece;
    }

    // The waist with all darts closed, where it lies under a dart that is pressed towards the centre: by rotation about the apexes, and so independent of
    // how the cap was folded.
    private static CurvePath Under(PanelEdge edge, int dart)
    {
        CurvePath closed = edge.Stretches[0];
        for (int i = 0; i < dart; i++)
        {
            closed = closed.Transformed(Transform2D.Rotation(edge.Darts[i].Apex, Opening(edge.Darts[i]))).Then(edge.Stretches[i + 1]);
        }

        Transform2D closing = Transform2D.Identity;
        for (int i = dart; i < edge.Darts.Count; i++)
        {
            closing = Transform2D.Rotation(edge.Darts[i].Apex, -Opening(edge.Darts[i])).Then(closing);
            closed = closed.Then(edge.Stretches[i + 1].Transformed(closing));
        }

        return closed;
    }

    private static Angle Opening(Dart dart) => (dart.StartLeg - dart.Apex).AngleTo(dart.EndLeg - dart.Apex);

    private static IEnumerable<Point2D> Samples(CurvePath path) => path.PointsAtEqualLengths(150).Concat(path.Segments.Select(segment => segment.Start));

    private static void AssertNoSegmentIsAPoint(PieceSet set) => Assert.All(
        set.Pieces.SelectMany(piece => piece.Edges.Select(edge => (What: $"{piece.Name} {edge.Name}", edge.CutLine)).Append((What: piece.Name.Text, piece.CutLine))),
        line => Assert.All(line.CutLine.Segments, segment => Assert.True(segment.Length > GeometryTolerance.Default, $"{line.What} at {segment.Start}: {segment.Length.Millimeters} mm")));
}
