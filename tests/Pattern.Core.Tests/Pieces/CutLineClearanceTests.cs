using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using NetTopologySuite.Operation.Valid;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Panels;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

/// <summary>The whole cut line against every seam line, and as outside readers see it. Distances and validity are measured by NetTopologySuite.</summary>
public class CutLineClearanceTests
{
    private const double FlatMm = 0.001;
    private const double ToleranceMm = 0.01;

    private static Gen<Panel> Skirts { get; } =
        from body in Gen.Elements(Bodies.Ansur.AsEnumerable())
        from asked in Bodies.Options
        from back in Gen.Elements(false, true)
        let block = asked.Apply(SkirtBlock.For(body)).Draft()
        select back ? block.Back : block.Front;

    private static Gen<Panel> FreePanels { get; } = AnyPanel.Recipes.Select(recipe => (recipe with { DartCount = 0 }).Make());

    private static Arbitrary<(PatternPiece Piece, string Said)> Pieces { get; } = Allowed(Gen.Frequency((2, Skirts), (1, FreePanels)));

    // Waist 748 mm, hip 932 mm, length 343 mm, side taken in 26.5 mm at the hem: the hem bends more tightly than its allowance of 406 mm is wide, so its parallel does
    // not reach the side. The cut line was drawn from there to a place behind the corner, 11.8 mm from the side seam.
    [Theory]
    [InlineData(Corner.Extended)]
    [InlineData(Corner.SquaredOff)]
    [InlineData(Corner.Mirrored)]
    [InlineData(Corner.Blunt)]
    public void CutLine_BesideAHemTooTightForItsAllowance_KeepsTheAllowanceOfTheSide(Corner corner)
    {
        Panel front = SkirtBlock.For(Bodies.Millimetres(748, 932)).WithLength(Mm(343)).Fitted(new SkirtFit { SideHem = Mm(26.5) }).Draft().Front;

        PatternPiece piece = PatternPiece.From(front).WithAllowance(Mm(15)).WithAllowance(EdgeName.Hem, Mm(406)).WithCorner(EdgeName.Hem, EdgeName.SideSeam, corner);

        Assert.True(NearestMm(piece.CutLine, front.FindEdge(EdgeName.SideSeam)) >= 15 - ToleranceMm);
        Assert.All(piece.Report.Findings.Where(f => f.Check.StartsWith("allowance", StringComparison.Ordinal) || f.Check.StartsWith("seam lines", StringComparison.Ordinal)), f => Assert.True(f.Passed, f.ToString()));
    }

    // Waist 700.6 mm, hip 894.4 mm, level waistline: the outline ended a rounding error beside where it began.
    [Fact]
    public void CutLine_OfALevelBack_IsSimpleToOutsideReaders()
    {
        Panel back = SkirtBlock.For(Bodies.Millimetres(700.6, 894.4)).WithWaistline(Waistline.Level).Draft().Back;

        for (double allowance = 5; allowance < 25; allowance += 0.1)
        {
            AssertSimple(PatternPiece.From(back).WithAllowance(Mm(allowance)).WithAllowance(EdgeName.Hem, Mm(16.3)).CutLine);
        }
    }

    // The ends of an arc follow from its angles, so where two arcs met they were a last digit apart, and an outside reader found a loop there. Four arcs of 53 degrees,
    // each beside the next in a corner of 143 degrees; allowances of zero keep the corners of the seam line, mirrored ones meet in new points.
    [Theory]
    [InlineData(Corner.Extended)]
    [InlineData(Corner.SquaredOff)]
    [InlineData(Corner.Mirrored)]
    [InlineData(Corner.Blunt)]
    public void CutLine_WhereArcsMeet_IsSimpleToOutsideReaders(Corner corner)
    {
        PanelBuilder builder = Panel.Named(PanelName.Of("pillow"));
        for (int i = 0; i < 4; i++)
        {
            Transform2D turn = Transform2D.Rotation(Point2D.Origin, Angle.FromDegrees((90 * i) + 0.7));
            builder = builder.WithEdge(EdgeName.Of("edge " + (i + 1)), EdgeRole.Seam, CurvePath.From(At(200, 0)).ArcAround(At(-100, -100), Angle.FromRadians(2 * Math.Atan(0.5))).Transformed(turn));
        }

        Panel panel = builder.Make();
        for (int i = 0; i < 40; i++)
        {
            AssertSimple(With(panel, [0.9 * i, 0, 3 + (0.4 * i), 17], corner).CutLine);
            AssertSimple(With(panel, [0.9 * i, 12, 3 + (0.4 * i), 17], corner).CutLine);
        }
    }

    [Property(MaxTest = 300)]
    public Property CutLine_OfAnyPanel_IsSimpleToOutsideReaders() => Prop.ForAll(Pieces, any =>
    {
        CurvePath cut;
        try
        {
            cut = any.Piece.CutLine;
        }
        catch (ConstructionException refusal) when (IsOfACutLine(refusal))
        {
            return;
        }

        AssertSimple(cut);
    });

    // Every point of the cut line beside one edge, against the seam lines of all others: the narrower of both allowances is kept, or the report says that it is not.
    [Property(MaxTest = 200)]
    public Property Report_OfAnyPiece_PassesOnlyWhereTheCutLineKeepsItsDistance() => Prop.ForAll(Pieces, any =>
    {
        IReadOnlyList<PieceEdge> edges;
        CheckReport report;
        try
        {
            edges = any.Piece.Edges;
            report = any.Piece.Report;
        }
        catch (ConstructionException refusal) when (IsOfACutLine(refusal))
        {
            return;
        }

        double most = 0;
        for (int i = 0; i < edges.Count; i++)
        {
            for (int k = 0; k < edges.Count; k++)
            {
                double needed = Math.Min(edges[i].Allowance.Millimeters, edges[k].Allowance.Millimeters);
                most = i == k ? most : Math.Max(most, needed - NearestMm(edges[i].CutLine, any.Piece.Panel.Edges[k]));
                if (edges[i].CornerLine is { } corner)
                {
                    needed = Math.Min(needed, edges[(i + 1) % edges.Count].Allowance.Millimeters);
                    most = Math.Max(most, needed - NearestMm(corner, any.Piece.Panel.Edges[k]));
                }
            }
        }

        Finding counted = report.Findings.Single(f => f.Check == "seam lines that the cut line comes too near");
        Assert.True(counted.Passed ? most < ToleranceMm + (4 * FlatMm) : most > ToleranceMm - (4 * FlatMm), $"{most} mm too near; {any.Said}; {report}");
    });

    private static Arbitrary<(PatternPiece Piece, string Said)> Allowed(Gen<Panel> panels) => (
        from panel in panels
        from allowances in Gen.ArrayOf(Gen.Frequency((4, Bodies.Range(2, 45)), (1, Bodies.Range(0, 420)), (1, Gen.Constant(0.0))), 7)
        from corner in Gen.Elements(Corner.Extended, Corner.SquaredOff, Corner.Mirrored, Corner.Blunt)
        select (With(panel, allowances, corner), $"{panel.Describe()} {string.Join(" ", allowances)} {corner}")).ToArbitrary();

    private static PatternPiece With(Panel panel, double[] allowancesMm, Corner corner)
    {
        PatternPiece piece = PatternPiece.From(panel);
        for (int i = 0; i < panel.Edges.Count; i++)
        {
            piece = piece.WithAllowance(panel.Edges[i].Name, Mm(allowancesMm[i]))
                .WithCorner(panel.Edges[i].Name, panel.Edges[(i + 1) % panel.Edges.Count].Name, corner);
        }

        return piece;
    }

    private static double NearestMm(CurvePath line, PanelEdge edge) => edge.Stretches.Min(stretch => DistanceOp.Distance(LineOf(line), LineOf(stretch)));

    private static LineString LineOf(CurvePath path) => GeometryFactory.Default.CreateLineString([.. path.Flatten(Mm(FlatMm)).Select(On)]);

    // As read segment by segment, each from its start to its end, and as one line.
    private static void AssertSimple(CurvePath cut)
    {
        foreach (double flat in new[] { 0.1, 0.01 })
        {
            AssertValid([.. cut.Flatten(Mm(flat)).Select(On)]);
            AssertValid([.. cut.Segments.SelectMany(segment => CurvePath.FromSegments([segment]).Flatten(Mm(flat)).Prepend(segment.Start).Append(segment.End)).Select(On)]);
        }
    }

    private static void AssertValid(Coordinate[] read)
    {
        Coordinate[] ring = [.. read.Append(read[0]).Where((c, i) => i == 0 || !c.Equals2D(read[i - 1]))];
        var valid = new IsValidOp(GeometryFactory.Default.CreatePolygon(ring));
        Assert.True(valid.IsValid, valid.ValidationError?.ToString());
        Assert.True(GeometryFactory.Default.CreateLinearRing(ring).IsSimple);
    }

    private static Coordinate On(Point2D point) => new(point.X.Millimeters, point.Y.Millimeters);
}
