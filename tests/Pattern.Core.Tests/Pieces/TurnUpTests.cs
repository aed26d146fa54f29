using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using NetTopologySuite.Geometries;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

/// <summary>Whether what is turned up lies flat: cloth folds flat along a straight line only, and then each thread t below the fold lies on the thread t above it.</summary>
public class TurnUpTests
{
    // Sliced level by NetTopologySuite, which knows nothing of folds: as wide t below the hem as t above it, never a millimetre less. A straight fold is exact.
    [Property(MaxTest = 100)]
    public Property Hem_OfAnySkirt_IsAsWideBelowTheFoldAsAboveIt() => Prop.ForAll(
        CutLineTests.Skirts,
        Bodies.Range(5, 60).ToArbitrary(),
        (any, depth) =>
        {
            PieceSet set = SkirtPattern.From(any.Block, new SkirtPatternOptions { HemAllowance = Mm(depth), SeamAllowance = Mm(any.AllowancesMm[0]) });
            foreach (PatternPiece piece in new[] { set.Find(PanelName.Front), set.Find(PanelName.Back) })
            {
                PanelEdge hem = piece.Panel.FindEdge(EdgeName.Hem);
                double level = hem.Start.Y.Millimeters;
                Assert.All(hem.Stretches[0].PointsAtEqualLengths(9), p => Assert.Equal(level, p.Y.Millimeters, 1e-6));
                Polygon cut = Flat(piece.CutLine);
                for (int i = 1; i <= 8; i++)
                {
                    double t = (depth * i / 8) - 0.01;
                    Assert.Equal(WidthAt(cut, level + t), WidthAt(cut, level - t), 0.01);
                }

                Assert.True(piece.Report.Passed, piece.Report.ToString());
            }
        });

    // The usual fitted skirt comes in at 1 in over 16 in below the hip, along a parabola: 2 in 16 at the hem. Turned up 1 1/2 in, each of its seams flares by
    // 1 1/2 in x 1/8 less what the parabola straightens out: x(y) = (y / 16)^2, so x(16) - x(14.5) = 1 - 0.8213 = 0.1787 in.
    [Fact]
    public void Hem_OfTheUsualFittedSkirt_FlaresByWhatTheSkirtWidensAbove()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).WithLength(Length.FromInches(26)).Fitted(SkirtFit.Usual).Draft();

        PatternPiece front = PatternPiece.From(block.Front).WithAllowance(EdgeName.Hem, Length.FromInches(1.5)).WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored);

        double sewn = block.Front.FindEdge(EdgeName.Hem).SewnLength.Inches;
        double free = front.FindEdge(EdgeName.Hem).CutLine.Length.Inches;
        Assert.Equal(0.1787, free - sewn, 0.0001);
    }

    // Without mirrored corners the seams of a fitted skirt run on inwards. All other checks pass; this one must not: 0.18 in at the fold's own height each way.
    [Fact]
    public void Report_OfAHemThatTapersIn_Fails()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).WithLength(Length.FromInches(26)).Fitted(SkirtFit.Usual).Draft();

        Finding finding = Assert.Single(PatternPiece.From(block.Front).WithAllowance(EdgeName.Hem, Length.FromInches(1.5)).Report.Failures);

        // Below the hem a seam runs straight on at 2 in 16; above it the parabola is 0.1787 in wider.
        Assert.Equal("hem beyond its fold less before it", finding.Check);
        Assert.Equal(-(0.1787 + (1.5 / 8)), ((Length)finding.Measured).Inches, 0.001);
        Assert.Equal(1, ((Length)finding.Tolerance).Millimeters, 9);
    }

    // A hem that bends around a point below it, like that of a skirt pegged by a curved hem: along it what is turned up is shorter by twice the depth times the angle.
    [Theory]
    [InlineData(600, false)]
    [InlineData(-600, true)]
    public void Report_OfACurvedHem_SaysWhetherItIsTooShortToTurnUp(double radiusMm, bool passes)
    {
        double sag = Math.Abs(radiusMm) - Math.Sqrt((radiusMm * radiusMm) - (100 * 100));
        double rise = radiusMm > 0 ? sag : -sag;
        double lean = Math.Asin(100 / radiusMm);
        double top = 200 * Math.Tan(lean);
        CurvePath hem = CurvePath.From(At(200, 0)).ArcThrough(At(100, rise), At(0, 0));
        Panel panel = Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(-top, 200)).LineTo(At(200 + top, 200)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200 + top, 200)).LineTo(At(200, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, hem)
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(-top, 200)))
            .Make();

        PatternPiece piece = PatternPiece.From(panel).WithAllowance(EdgeName.Hem, Mm(30))
            .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored)
            .WithCorner(EdgeName.Hem, EdgeName.Centre, Corner.Mirrored);
        Finding finding = Assert.Single(piece.Report.Findings, f => f.Check == "hem beyond its fold less before it");

        Assert.Equal(passes, finding.Passed);
        Finding[] advice = [.. piece.Report.Findings.Where(f => f.Check == "hem turned up and eased in")];
        if (!passes)
        {
            Assert.Equal(-2 * 30 * 2 * lean, ((Length)finding.Measured).Millimeters, 0.1);
            Assert.Empty(advice);
            return;
        }

        // Turned up t deep the free edge is 2 t x the angle of the hem longer than where it lies: a sixteenth of the hem, radius x angle / 16, at t = radius / 32. Advice fails nothing.
        Assert.True(piece.Report.Passed, piece.Report.ToString());
        Assert.Equal(600 / 32.0, ((Length)Assert.Single(advice).Target).Millimeters, 0.05);
        Assert.Equal(30, ((Length)advice[0].Measured).Millimeters, 9);
    }

    // A facing that both its neighbours are mirrored over is a folded edge as well; one that its neighbours run past is not.
    [Fact]
    public void Report_OfAFoldedFacing_ChecksIt()
    {
        PatternPiece piece = PatternPiece.From(Rectangle).WithAllowance(EdgeName.Centre, Mm(40)).WithCorner(EdgeName.Centre, EdgeName.Waist, Corner.Mirrored);

        Assert.DoesNotContain(piece.Report.Findings, f => f.Check == "centre beyond its fold less before it");
        Assert.Contains(
            piece.WithCorner(EdgeName.Centre, EdgeName.Hem, Corner.Mirrored).Report.Findings,
            f => f.Check == "centre beyond its fold less before it" && f.Passed);
    }

    private static Polygon Flat(CurvePath outline)
    {
        Coordinate[] points = [.. outline.Flatten(Length.FromMillimeters(0.001)).Select(p => new Coordinate(p.X.Millimeters, p.Y.Millimeters))];
        return new Polygon(new LinearRing([.. points.Take(points.Length - 1), points[0]]));
    }

    private static double WidthAt(Polygon cut, double y)
        => cut.Intersection(new NetTopologySuite.Geometries.LineString([new Coordinate(-5000, y), new Coordinate(5000, y)])).Length;
}
