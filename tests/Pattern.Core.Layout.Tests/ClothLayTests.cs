using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;
using Coordinate = NetTopologySuite.Geometries.Coordinate;
using LinearRing = NetTopologySuite.Geometries.LinearRing;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Pattern.Core.Layout.Tests;

public class ClothLayTests
{
    private static readonly LayEffort Little = new() { MostMoves = 150 };

    private static readonly PieceSet Skirt = SkirtPattern.From(SkirtBlock.For(
        BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind").With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4")).Draft());

    public static TheoryData<string> Cloths => new("open", "folded", "napped", "off grain");

    // The cut lines themselves, to 0.01 mm, not the outlines that the search knows.
    [Theory]
    [MemberData(nameof(Cloths))]
    public void LayOn_SkirtPieces_NoCutLinesOverlap(string kind)
    {
        Cloth cloth = ClothOf(kind);
        ClothLay lay = Skirt.LayOn(cloth, effort: Little);

        Assert.Empty(LayCheck.Faults([.. lay.Pieces.Select(piece => Polygon(piece.CutLine))], cloth.UsableWidth.Millimeters, lay.Length.Millimeters));
        Assert.True(lay.LowerBound <= lay.Length);
        Assert.Equal(lay.PieceArea.SquareMillimeters, lay.Pieces.Sum(piece => Math.Abs(piece.CutLine.SignedArea.SquareMillimeters)), 3);
    }

    // The grain lies along the cloth, and with a nap its beginning lies at the beginning of the cloth.
    [Theory]
    [MemberData(nameof(Cloths))]
    public void LayOn_AnyCloth_KeepsEveryPieceOnItsGrain(string kind)
    {
        Cloth cloth = ClothOf(kind);

        foreach (LaidPiece piece in Skirt.LayOn(cloth, effort: Little).Pieces)
        {
            Direction grain = piece.Piece.Grainline!.Value.Transformed(piece.Place).Direction;
            double offDegrees = Math.Abs(Math.Asin(grain.Y)) * 180 / Math.PI;
            Assert.InRange(offDegrees, 0, cloth.GrainTolerance.Degrees + 1e-9);
            Assert.True(kind != "napped" || grain.X > 0, piece.Name);
        }
    }

    // Common practice, no source: of a piece that is cut twice one is the mirror image of the other; what lies on the fold is laid whole on open cloth.
    [Fact]
    public void LayOn_OpenCloth_LaysAsManyMirrorImagesAsPieces()
    {
        ClothLay lay = Skirt.LayOn(ClothOf("open"), effort: Little);

        foreach (PatternPiece piece in Skirt.Pieces)
        {
            int count = piece.Cuts.Single(cut => cut.Cloth == ClothName.Main).Count;
            LaidPiece[] laid = [.. lay.Pieces.Where(one => one.Piece.Name == piece.Name.Text)];
            Assert.Equal(count, laid.Length);
            Assert.Equal(piece.FoldLine is null ? count / 2 : 0, laid.Count(one => one.IsMirrored));
            Assert.All(laid, one => Assert.Equal(one.IsMirrored, one.Place.TurnsOver));
            double whole = piece.FoldLine is null ? piece.CutArea.SquareMillimeters : 2 * piece.CutArea.SquareMillimeters;
            Assert.All(laid, one => Assert.Equal(whole, Math.Abs(one.CutLine.SignedArea.SquareMillimeters), 2));
        }
    }

    [Fact]
    public void LayOn_FoldedCloth_PutsFoldsOnTheFold()
    {
        Cloth cloth = ClothOf("folded");
        ClothLay lay = Skirt.LayOn(cloth, effort: Little);

        Assert.Equal(690, cloth.UsableWidth.Millimeters, 9);
        Assert.Contains(lay.Pieces, piece => piece.IsOnFold);
        foreach (LaidPiece piece in lay.Pieces.Where(piece => piece.IsOnFold))
        {
            LineSegment fold = Skirt.Pieces.Single(one => one.Name.Text == piece.Piece.Name).FoldLine!.Value.Transformed(piece.Place);
            Assert.Equal(0, fold.Start.Y.Millimeters, 6);
            Assert.Equal(0, fold.End.Y.Millimeters, 6);
        }

        string[] odd = [.. Skirt.Pieces.Where(piece => piece.FoldLine is null && piece.Cuts.Any(cut => cut.Cloth == ClothName.Main && cut.Count % 2 == 1)).Select(piece => piece.Name.Text)];
        Assert.Equal(odd, lay.Spares);
    }

    // Four rectangles that fill the cloth: there is no shorter lay, and the search must say so and stop.
    [Fact]
    public void LayOn_RectanglesThatFillTheCloth_ReachesTheBound()
    {
        ClothLay lay = new[] { Rectangle("a", 4, 100, 50) }.LayOn(Cloth.Wide(Length.FromMillimeters(100)));

        Assert.Equal(200, lay.Length.Millimeters, 6);
        Assert.Equal(200, lay.LowerBound.Millimeters, 6);
        Assert.Equal(100, lay.Efficiency.Percent, 4);
        Assert.Equal(0, lay.Moves);
    }

    // Closed forms: by area 3 x 3600 / 100 = 108; the longest 60; but no two lie side by side, so 180. Upright triangles 60 high cross the middle with at least 10 / 60 of their base.
    [Fact]
    public void LowerBound_PiecesWiderThanHalf_CountsWhatTheyTakeOfTheMiddle()
    {
        Cloth cloth = Cloth.Wide(Length.FromMillimeters(100));

        ClothLay squares = new[] { Rectangle("square", 3, 60, 60) }.LayOn(cloth, Little);
        Assert.Equal(180, squares.LowerBound.Millimeters, 6);
        Assert.Equal(180, squares.Length.Millimeters, 6);

        LayPiece triangle = LayPiece.Of("triangle", 30, At(0, 0), At(30, 0), At(15, 60));
        ClothLay triangles = new[] { triangle }.LayOn(cloth, new LayEffort { MostMoves = 0 });
        Assert.Equal(Math.Max(30 * 900 / 100.0, 30 * 30 * 10 / 60.0), triangles.LowerBound.Millimeters, 3);
    }

    [Fact]
    public void WithGap_AnyPieces_KeepsThemApart()
    {
        ClothLay lay = new[] { Rectangle("a", 6, 40, 30) }.LayOn(Cloth.Wide(Length.FromMillimeters(100)).WithGap(Length.FromMillimeters(5)), Little);

        Polygon[] laid = [.. lay.Pieces.Select(piece => Polygon(piece.CutLine))];
        Assert.All(laid, one => Assert.All(laid.Where(other => other != one), other => Assert.True(one.Distance(other) >= 5 - 1e-5)));
    }

    // Curves may grow together by nothing and apart by little: the grown outline holds the flat one, within a millimetre.
    [Fact]
    public void Simplified_CutLines_OnlyGrow()
    {
        foreach (PatternPiece piece in Skirt.Pieces)
        {
            Point2D[] flat = piece.CutLine.Flatten(Length.FromMillimeters(0.05));
            var outline = Outline.Of([.. flat.Skip(1).Select(corner => corner.X.Millimeters)], [.. flat.Skip(1).Select(corner => corner.Y.Millimeters)]);

            Outline grown = OutlineGrowth.Simplified(outline);

            Assert.True(grown.Count <= outline.Count);
            Assert.True(Polygon(grown).Buffer(1e-6).Covers(Polygon(outline)), piece.Name.Text);
            double farthest = Polygon(grown).Coordinates.Max(corner => Polygon(outline).Distance(new NetTopologySuite.Geometries.Point(corner)));
            Assert.True(farthest <= OutlineGrowth.MostMm + 1e-6, $"{piece.Name.Text} grows by {farthest}");
        }
    }

    [Theory]
    [InlineData("shirts")]
    [InlineData("trousers")]
    [InlineData("marques")]
    public void ConvexParts_OfTheOpenSets_AreConvexAndCoverThePiece(string name)
    {
        foreach (LayPiece piece in OpenSet.Named(name).Pieces)
        {
            Polygon whole = Polygon(piece.CutLine);
            Polygon[] parts = [.. ConvexParts.Of(OutlineOf(piece)).Select(Polygon)];

            Assert.All(parts, part => Assert.Equal(part.ConvexHull().Area, part.Area, 6));
            Assert.Equal(whole.Area, parts.Sum(part => part.Area), 6);
            Assert.All(parts, part => Assert.Equal(part.Area, part.Intersection(whole).Area, 6));
        }
    }

    // Where two outlines overlap, judged by another library at places from a seed.
    [Fact]
    public void KeepOut_AnyShift_IsDeepExactlyWhereOutlinesOverlap()
    {
        var random = new LayRandom(7);
        LayPiece[] pieces = [.. OpenSet.Named("marques").Pieces];
        int deep = 0;
        for (int i = 0; i < 2000; i++)
        {
            Outline one = OutlineOf(pieces[random.Below(pieces.Length)]);
            Outline other = OutlineOf(pieces[random.Below(pieces.Length)]);
            double x = random.Between(-400, 400);
            double y = random.Between(-400, 400);
            double depth = new KeepOut(ConvexParts.Of(one), ConvexParts.Of(other), 0).DepthMm(x, y);
            double overlap = Polygon(one).Intersection(Polygon(Outline.Of([.. other.X.Select(v => v + x)], [.. other.Y.Select(v => v + y)]))).Area;
            Assert.Equal(overlap > 1e-6, depth > 1e-6);
            deep += depth > 0 ? 1 : 0;
        }

        Assert.InRange(deep, 200, 1800);
    }

    [Fact]
    public void LayOn_NoTime_ReturnsTheFirstLay()
    {
        var set = OpenSet.Named("marques");

        ClothLay first = set.Pieces.LayOn(set.Cloth, new LayEffort { MostMoves = 0 });
        ClothLay noTime = set.Pieces.LayOn(set.Cloth, new LayEffort { TimeLimit = TimeSpan.Zero });

        Assert.Equal(first.ToCsv(LengthUnit.Centimeter), noTime.ToCsv(LengthUnit.Centimeter));
        Assert.Empty(LayCheck.Faults(set.Text, first.ToCsv(LengthUnit.Centimeter), set.Width, first.Length.Centimeters, set.Rotations));
    }

    [Fact]
    public void LayOn_Progress_HearsOfShorterAndShorterLays()
    {
        var set = OpenSet.Named("marques");
        var heard = new Heard();

        ClothLay lay = set.Pieces.LayOn(set.Cloth, new LayEffort { MostMoves = 400 }, heard);

        Assert.True(heard.Lengths.Count > 1);
        Assert.Equal(heard.Lengths.OrderByDescending(length => length), heard.Lengths);
        Assert.Equal(lay.Length.Millimeters, heard.Lengths[^1], 9);
    }

    [Fact]
    public void LayOn_Cancelled_Throws()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();

        Assert.Throws<OperationCanceledException>(() => Skirt.LayOn(ClothOf("open"), cancellation: cancelled.Token));
    }

    // The bound on the work: a search that never reaches its lower bound ends by itself, long before the moves that it was allowed.
    [Fact]
    public void LayOn_NothingBetterToFind_EndsByItself()
    {
        ClothLay lay = new[] { LayPiece.Of("a", 3, At(0, 0), At(50, 0), At(0, 50)) }.LayOn(Cloth.Wide(Length.FromMillimeters(60)), new LayEffort { MostMoves = 10_000_000 });

        Assert.InRange(lay.Moves, 1, 100_000);
    }

    [Fact]
    public void Draw_AnyLay_ShowsEveryPieceAndWhatItComesTo()
    {
        ClothLay lay = Skirt.LayOn(ClothOf("napped"), effort: Little);
        Drawing drawing = lay.Draw();

        Assert.True(drawing.TryFindLayer(LayerName.CutLines, out DrawingLayer? cut));
        Assert.Equal(lay.Pieces.Count, cut!.Marks.Count);
        Assert.All(cut.Marks, mark => Assert.True(drawing.Bounds.Overlaps(mark.Bounds)));
        Assert.Contains("140.0 cm wide", drawing.Description, StringComparison.Ordinal);
        Assert.Contains("<svg", drawing.ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void LayOn_PieceWiderThanCloth_IsRefused()
    {
        var refusal = Assert.Throws<ConstructionException>(() => new[] { Rectangle("wide", 1, 300, 120) }.LayOn(Cloth.Wide(Length.FromMillimeters(100))));

        Assert.Equal(DiagnosticCode.PieceWiderThanCloth, refusal.Code);
        Assert.Equal(120, refusal.Measured!.Value.Millimeters, 6);
        Assert.Equal(100, refusal.Allowed!.Value.Millimeters, 6);
    }

    [Fact]
    public void LayOn_NothingCutFromTheCloth_IsRefused()
        => Assert.Equal(DiagnosticCode.LayNothing, Assert.Throws<ConstructionException>(() => Skirt.LayOn(ClothOf("open"), ClothName.Of("lace"))).Code);

    [Fact]
    public void LayOn_NoPiecesOrTooMany_IsRefused()
    {
        Cloth cloth = ClothOf("open");
        Assert.Throws<ArgumentOutOfRangeException>(() => Array.Empty<LayPiece>().LayOn(cloth));
        Assert.Throws<ArgumentOutOfRangeException>(() => new[] { Rectangle("a", 300, 9, 9), Rectangle("b", 201, 9, 9) }.LayOn(cloth));
    }

    [Fact]
    public void Of_OutlinesThatCannotBeCut_AreRefused()
    {
        Refused(DiagnosticCode.LayOutlineCrosses, At(0, 0), At(10, 10), At(10, 0), At(0, 10));
        Refused(DiagnosticCode.LayOutlineCrosses, At(0, 0), At(10, 0), At(5, 0), At(5, 5));
        Refused(DiagnosticCode.LayOutlineCrosses, At(0, 0), At(0, 0), At(5, 5), At(0, 5));
        Refused(DiagnosticCode.LayOutlineTooSmall, At(0, 0), At(0.1, 0), At(0.1, 0.1));
        Refused(DiagnosticCode.LayOutlineTooFar, At(0, 0), At(2_000_000, 0), At(5, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => LayPiece.Of("a", 1, At(0, 0), At(1, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LayPiece.Of("a", 0, At(0, 0), At(9, 0), At(9, 9)));
    }

    [Fact]
    public void Cloth_OutsideItsRanges_IsRefused()
    {
        Cloth cloth = Cloth.Wide(Length.FromCentimeters(140));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cloth.Wide(Length.FromMillimeters(9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Cloth.Wide(Length.FromMeters(11)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cloth.WithSelvedge(Length.FromMillimeters(201)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cloth.WithGrainTolerance(Angle.FromDegrees(11)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cloth.WithGap(Length.FromMillimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cloth.WithTurns());
        Assert.Throws<ArgumentOutOfRangeException>(() => new LayEffort { MostMoves = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new LayEffort { TimeLimit = TimeSpan.FromSeconds(-1) });
    }

    [Theory]
    [InlineData("", "Line 1")]
    [InlineData("name,count\n", "Line 1")]
    [InlineData("piece,quantity,vertex,x,y\n", "expected a line of column names")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,0\n", "Line 2, the row")]
    [InlineData("piece,quantity,vertex,x,y\na,0,1,0,0\n", "Line 2, column 2 (quantity)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,2,0,0\n", "Line 2, column 3 (vertex)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,0,0\na,2,2,1,0\n", "Line 3, column 2 (quantity)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,zero,0\n", "Line 2, column 4 (x)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,NaN,0\n", "Line 2, column 4 (x)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,0,0\na,1,2,5,0\nb,1,1,0,0\n", "piece a")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,0,0\na,1,2,5,0\na,1,3,5,5\nb,1,1,0,0\nb,1,2,5,0\nb,1,3,5,5\na,1,1,0,0\n", "Line 8, column 1 (piece)")]
    [InlineData("piece,quantity,vertex,x,y\na,1,1,0,0\na,1,2,5,5\na,1,3,5,0\na,1,4,0,5\n", "meets itself")]
    public void FromCsv_TextThatIsNotOfTheForm_SaysWhere(string text, string expected)
        => Assert.Contains(expected, Assert.Throws<FormatException>(() => LayPiece.FromCsv(text, LengthUnit.Centimeter)).Message, StringComparison.Ordinal);

    private static void Refused(DiagnosticCode code, params Point2D[] outline)
        => Assert.Contains(code.ToString("D"), Assert.Throws<ArgumentException>(() => LayPiece.Of("a", 1, outline)).Message, StringComparison.Ordinal);

    private static Cloth ClothOf(string kind)
    {
        Cloth cloth = Cloth.Wide(Length.FromCentimeters(140)).WithSelvedge(Length.FromMillimeters(10));
        return kind switch
        {
            "folded" => cloth.OnTheFold(),
            "napped" => cloth.Napped(),
            "off grain" => cloth.WithGrainTolerance(Angle.FromDegrees(1)),
            _ => cloth,
        };
    }

    private static Point2D At(double x, double y) => Point2D.FromMillimeters(x, y);

    private static LayPiece Rectangle(string name, int count, double along, double across) => LayPiece.Of(name, count, At(0, 0), At(along, 0), At(along, across), At(0, across));

    private static Outline OutlineOf(LayPiece piece)
    {
        Point2D[] corners = piece.CutLine.Flatten(Length.FromMillimeters(0.05));
        return Outline.Of([.. corners.Skip(1).Select(corner => corner.X.Millimeters)], [.. corners.Skip(1).Select(corner => corner.Y.Millimeters)]);
    }

    private static Polygon Polygon(CurvePath path)
        => new(new LinearRing([.. path.Flatten(Length.FromMillimeters(0.01)).SkipLast(1).Append(path.Start).Select(corner => new Coordinate(corner.X.Millimeters, corner.Y.Millimeters))]));

    private static Polygon Polygon(Outline outline)
        => new(new LinearRing([.. outline.X.Zip(outline.Y, (x, y) => new Coordinate(x, y)).Append(new Coordinate(outline.X[0], outline.Y[0]))]));

    private sealed class Heard : IProgress<LayProgress>
    {
        internal List<double> Lengths { get; } = [];

        public void Report(LayProgress value) => Lengths.Add(value.Length.Millimeters);
    }
}
