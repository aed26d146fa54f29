using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

public class TilingTests
{
    private static readonly string[] LShape = ["0 0", "700 0", "700 180", "180 180", "180 900", "0 900", "0 0"];

    public static TheoryData<string, SheetOrientation> Papers
    {
        get
        {
            var data = new TheoryData<string, SheetOrientation>();
            foreach (PaperSize paper in PaperSize.All)
            {
                foreach (SheetOrientation orientation in new[] { SheetOrientation.FewestSheets, SheetOrientation.Portrait, SheetOrientation.Landscape })
                {
                    data.Add(paper.Name, orientation);
                }
            }

            return data;
        }
    }

    // Every line of the sheet, half a millimetre apart; what the title block says stands on the map.
    private static readonly Lazy<(double X, double Y)[]> PointsOfTheDefault = new(() => [..
        from mark in DrawnSkirts.Drawn("default").Without(LayerName.TitleBlock, LayerName.TestSquares).Marks<PathMark>()
        from i in Enumerable.Range(0, (int)(mark.Path.Length.Millimeters / 0.5) + 1)
        let point = mark.Path.PointAtLength(Length.FromMillimeters(i * 0.5), BeyondEnds.StopAtEnd)
        select (point.X.Millimeters, point.Y.Millimeters)]);

    [Theory]
    [MemberData(nameof(Papers))]
    public void Tile_OnAnyPaper_CellsFitTogetherAndHoldEveryLine(string paper, SheetOrientation orientation)
    {
        Drawing drawing = DrawnSkirts.Drawn("default");

        Tiling tiling = SheetLayout.TiledOn(PaperSize.Find(paper)).WithOrientation(orientation).Tile(drawing);

        AssertCellsFitTogether(tiling);
        (double Left, double Bottom, double Right, double Top)[] printed = [.. tiling.Sheets.Where(sheet => !sheet.IsEmpty)
            .Select(sheet => (sheet.Cell.Left.Millimeters, sheet.Cell.Bottom.Millimeters, sheet.Cell.Right.Millimeters, sheet.Cell.Top.Millimeters))];
        foreach ((double x, double y) in PointsOfTheDefault.Value)
        {
            Assert.True(Array.Exists(printed, cell => x >= cell.Left && x <= cell.Right && y >= cell.Bottom && y <= cell.Top), $"({x}, {y}) is on no sheet");
        }

        foreach (DrawingMark mark in tiling.Drawing.Marks<DrawingMark>())
        {
            AssertWithin(tiling.Extent, mark.Bounds);
        }
    }

    [Theory]
    [InlineData("default")]
    [InlineData("fitted level")]
    [InlineData("tiny")]
    [InlineData("huge")]
    public void Tile_OnWhicheverNeedsFewer_TakesTheFewer(string skirt)
    {
        Drawing drawing = DrawnSkirts.Drawn(skirt);
        TiledLayout layout = SheetLayout.TiledOn(PaperSize.A4);

        int portrait = layout.WithOrientation(SheetOrientation.Portrait).Tile(drawing).SheetCount;
        int landscape = layout.WithOrientation(SheetOrientation.Landscape).Tile(drawing).SheetCount;

        Assert.Equal(Math.Min(portrait, landscape), layout.Tile(drawing).SheetCount);
    }

    [Fact]
    public void Tile_ADrawingWithAnEmptyCorner_LeavesSheetsOut()
    {
        Tiling tiling = SheetLayout.TiledOn(PaperSize.A4).Tile(DrawingOf(Path(LShape)));

        TiledSheet[] empty = tiling.Sheets.Where(sheet => sheet.IsEmpty).ToArray();

        Assert.NotEmpty(empty);
        Assert.Equal(tiling.Rows * tiling.Columns, tiling.SheetCount + empty.Length);
        CurvePath outline = Path(LShape);
        foreach (TiledSheet sheet in empty)
        {
            for (double at = 0; at <= outline.Length.Millimeters; at += 0.25)
            {
                Assert.False(sheet.Cell.Contains(outline.PointAtLength(Length.FromMillimeters(at), BeyondEnds.StopAtEnd)), sheet.Name);
            }
        }

        // One sheet for each that is printed, the map before them.
        IReadOnlyList<PrintSheet> printed = tiling.Print();
        Assert.Equal(["map", .. tiling.Sheets.Where(sheet => !sheet.IsEmpty).Select(sheet => sheet.Name)], printed.Select(sheet => sheet.Name));
        Assert.Equal(2 * empty.Length, printed[0].Marks!.Marks<PathMark>().Count(mark => mark.Role == LineRole.MapEmpty && !mark.Path.IsClosed));
    }

    // Closed form: two A4 sheets side by side with margins of 10 mm show 190 + 190 - 12 = 368 mm.
    [Theory]
    [InlineData(189.9, 1)]
    [InlineData(190.1, 2)]
    [InlineData(367.9, 2)]
    [InlineData(368.1, 3)]
    public void Tile_AWidthAtTheLimit_TakesAsManyColumnsAsItMust(double widthMm, int columns)
    {
        double line = LineRole.Seam.Weight.Millimeters;
        string across = FormattableString.Invariant($"{widthMm - line} 0");

        Tiling tiling = SheetLayout.TiledOn(PaperSize.A4).WithOrientation(SheetOrientation.Portrait).Tile(DrawingOf(Path("0 0", across)));

        Assert.Equal(columns, tiling.Columns);
        Assert.Equal(1, tiling.Rows);
    }

    // A thin frame needs all border sheets but none inside.
    [Fact]
    public void Tile_AHollowFrame_LeavesTheInsideOut()
    {
        Tiling tiling = SheetLayout.TiledOn(PaperSize.A4).Tile(DrawingOf(Path("0 0", "880 0", "880 1300", "0 1300", "0 0")));

        foreach (TiledSheet sheet in tiling.Sheets)
        {
            bool isBorder = sheet.Row == 1 || sheet.Row == tiling.Rows || sheet.Column == 1 || sheet.Column == tiling.Columns;
            Assert.Equal(!isBorder, sheet.IsEmpty);
        }
    }

    [Theory]
    [InlineData("a dot")]
    [InlineData("a text")]
    [InlineData("an arrow head")]
    public void Tile_MarksThatAreNoLines_AreInkToo(string what)
    {
        var far = Point2D.FromMillimeters(600, 600);
        DrawingMark mark = what switch
        {
            "a dot" => PointMark.Of(far, Length.FromMillimeters(3), Ink.Strong),
            "a text" => TextMark.Of("m", far, Length.FromMillimeters(3), Angle.Zero, TextAlignment.Middle, TextWeight.Regular, Ink.Strong),
            _ => PathMark.Of(Path("600 600", "600 560"), LineRole.Grain, null, ArrowEnds.Both),
        };

        Tiling tiling = SheetLayout.TiledOn(PaperSize.A5).Tile(DrawingOf(PathMark.Of(Path("0 0", "10 0"), LineRole.Seam), mark));

        Assert.Equal([tiling.Sheets[^tiling.Columns].Name, tiling.Sheets[tiling.Columns - 1].Name], tiling.Sheets.Where(sheet => !sheet.IsEmpty).Select(sheet => sheet.Name).OrderByDescending(name => name));
    }

    [Fact]
    public void Tile_ADrawingWithoutMarks_PrintsItsMapOnly()
        => Assert.Equal(["map"], SheetLayout.TiledOn(PaperSize.A4).Arrange(DrawingOf(Array.Empty<DrawingMark>())).Select(sheet => sheet.Name));

    [Fact]
    public void Names_OfManyColumns_GoOnAsALedgerDoes()
    {
        Tiling tiling = SheetLayout.TiledOn(PaperSize.A4).WithOrientation(SheetOrientation.Portrait).Tile(DrawingOf(Path("0 0", "5500 0")));

        Assert.Equal("1A", tiling.SheetAt(1, 1).Name);
        Assert.Equal("1Z", tiling.SheetAt(1, 26).Name);
        Assert.Equal("1AA", tiling.SheetAt(1, 27).Name);
        Assert.Throws<ArgumentOutOfRangeException>(() => tiling.SheetAt(1, tiling.Columns + 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => tiling.SheetAt(0, 1));
    }

    // As someone at a table sees it: two sheets that lie right show the tips of the same arrows at the same place.
    [Theory]
    [InlineData("A4", 12)]
    [InlineData("Letter", 25)]
    [InlineData("A5", 5)]
    public void Print_ArrowsOfNeighbours_MeetTipToTip(string paper, double overlapMm)
    {
        Drawing drawing = DrawnSkirts.Drawn("default");
        Tiling tiling = SheetLayout.TiledOn(PaperSize.Find(paper)).WithOverlap(Length.FromMillimeters(overlapMm)).Tile(drawing);

        var tips = new List<(string Sheet, Point2D Tip, Direction Heading)>();
        foreach (PrintSheet sheet in tiling.Print().Where(sheet => sheet.Placement is not null))
        {
            foreach (PathMark arrow in sheet.Marks!.Marks<PathMark>().Where(mark => mark.Arrows == ArrowEnds.End))
            {
                tips.Add((sheet.Name, sheet.Placement!.Value.Inverted().Apply(arrow.Path.End), arrow.Path.EndDirection));
                AssertWithin(sheet.Window, arrow.Bounds);
            }
        }

        foreach (var (name, tip, heading) in tips)
        {
            var met = Assert.Single(tips, other => other.Sheet != name && other.Tip.DistanceTo(tip).Millimeters < 1e-9);
            Assert.Equal(180, Math.Abs(heading.AngleTo(met.Heading).Degrees), 9);
        }

        int upright = Pairs(tiling, (row, column) => (row, column + 1));
        int level = Pairs(tiling, (row, column) => (row + 1, column));
        Assert.Equal(4 * (upright + level), tips.Count);
    }

    [Fact]
    public void Print_EachSheet_SaysItsRowAndColumn()
    {
        Tiling tiling = SheetLayout.TiledOn(PaperSize.A4).Tile(DrawnSkirts.Drawn("default"));

        foreach (PrintSheet sheet in tiling.Print().Where(sheet => sheet.Placement is not null))
        {
            string[] words = sheet.Marks!.Marks<TextMark>().Select(mark => mark.Text).ToArray();
            Assert.Contains(sheet.Name, words);
            Assert.Contains(words, text => text.StartsWith(FormattableString.Invariant($"{sheet.Name}  \u00B7  row {sheet.Name[0]} of {tiling.Rows}, column {sheet.Name[1..]} of"), StringComparison.Ordinal));
            Assert.All(sheet.Marks!.Marks<DrawingMark>(), mark => AssertWithin(sheet.Marks!.Bounds, mark.Bounds));
        }
    }

    [Theory]
    [InlineData("A4", 10)]
    [InlineData("Letter", 5)]
    [InlineData("A5", 20)]
    [InlineData("A0", 10)]
    [InlineData("card", 5)]
    public void Print_TheMap_HoldsTestSquaresAndStaysInsideItsMargins(string paper, double marginMm)
    {
        PaperSize size = paper == "card" ? PaperSize.Of("card", Length.FromMillimeters(90), Length.FromMillimeters(110)) : PaperSize.Find(paper);
        var layout = SheetLayout.TiledOn(size).WithMargin(Length.FromMillimeters(marginMm));

        PrintSheet[] maps = layout.Arrange(DrawnSkirts.Drawn("default")).TakeWhile(sheet => sheet.Placement is null).ToArray();

        double[] squares = maps.SelectMany(map => map.Marks!.Marks<PathMark>(LayerName.TestSquares)).Where(mark => mark.Path.IsClosed).Select(mark => mark.Path.Length.Millimeters / 4).ToArray();
        Assert.Equal([50, 50.8], squares, (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.True(maps.Length == 1 || paper is "A5" or "card");
        foreach (PrintSheet map in maps)
        {
            var inside = BoundingBox.Around(Point2D.FromMillimeters(marginMm, marginMm), Point2D.FromMillimeters(map.Width.Millimeters - marginMm, map.Height.Millimeters - marginMm));
            Assert.All(map.Marks!.Marks<DrawingMark>(), mark => AssertWithin(inside, mark.Bounds));
        }
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A5")]
    public void Print_TheMapOfADrawingThatFailed_SaysNotToCut(string paper)
    {
        TiledLayout layout = SheetLayout.TiledOn(PaperSize.Find(paper));

        Assert.Contains(layout.Arrange(DrawnSkirts.Failed())[0].Marks!.Marks<TextMark>(), mark => mark.Text.StartsWith("DO NOT CUT", StringComparison.Ordinal));
        Assert.DoesNotContain(layout.Arrange(DrawnSkirts.Drawn("default"))[0].Marks!.Marks<TextMark>(), mark => mark.Text.StartsWith("DO NOT", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A5")]
    public void Print_TheMapOfADrawingWithALongTitle_StaysOnThePaper(string paper)
    {
        Drawing drawing = Drawing.Of(new string('W', 5000), "a test", BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(100, 100)), DrawnSkirts.Drawn("default").Layers);

        foreach (PrintSheet sheet in SheetLayout.TiledOn(PaperSize.Find(paper)).Arrange(drawing))
        {
            Assert.All(sheet.Marks!.Marks<DrawingMark>(), mark => AssertWithin(sheet.Marks!.Bounds, mark.Bounds));
        }
    }

    [Fact]
    public void Tile_AMarginThatLeavesTooLittle_IsRefused()
    {
        Drawing drawing = DrawnSkirts.Drawn("default");

        var error = Assert.Throws<ArgumentException>(() => SheetLayout.TiledOn(PaperSize.A4).WithMargin(Length.FromMillimeters(80)).Tile(drawing));
        Assert.StartsWith("PC7102: A sheet of A4, 210 mm by 297 mm with margins of 80.0 mm (3.15 in) leaves 50.0 mm (1.969 in) by 137.0 mm", error.Message);
        error = Assert.Throws<ArgumentException>(() => SheetLayout.TiledOn(PaperSize.A4).WithMargin(Length.FromMillimeters(200)).Tile(drawing));
        Assert.Contains("leaves 0.0 mm", error.Message);
    }

    [Theory]
    [InlineData(95.1)]
    [InlineData(297)]
    public void Tile_AnOverlapOfMoreThanHalf_IsRefused(double overlapMm)
    {
        var error = Assert.Throws<ArgumentException>(
            () => SheetLayout.TiledOn(PaperSize.A4).WithOverlap(Length.FromMillimeters(overlapMm)).Tile(DrawnSkirts.Drawn("default")));
        Assert.StartsWith("PC7103: The overlap is " + FormattableString.Invariant($"{overlapMm:0.0}"), error.Message);
    }

    [Fact]
    public void WithOverlap_OutsideItsRange_IsRefusedAtTheDoor()
    {
        TiledLayout layout = SheetLayout.TiledOn(PaperSize.A4);

        Assert.Throws<ArgumentOutOfRangeException>(() => layout.WithOverlap(Length.FromMillimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => layout.WithOverlap(Length.FromMillimeters(298)));
        Assert.Throws<ArgumentOutOfRangeException>(() => layout.WithMargin(Length.FromMillimeters(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => layout.WithOrientation((SheetOrientation)7));
        Assert.Throws<ArgumentNullException>(() => SheetLayout.TiledOn(null!));
    }

    [Theory]
    [InlineData(100_000)]
    [InlineData(900_000)]
    public void Tile_SoLargeThatNobodyWouldJoinIt_IsRefused(double sideMm)
    {
        var error = Assert.Throws<ArgumentException>(() => SheetLayout.TiledOn(PaperSize.A5).Tile(DrawingOf(Path("0 0", FormattableString.Invariant($"{sideMm} {sideMm}")))));
        Assert.StartsWith("PC7104", error.Message);
    }

    [Theory]
    [InlineData(300, 200, 310, 310, 200, false)]
    [InlineData(300, 200, 250, 250, 300, true)]
    [InlineData(200, 300, 310, 310, 200, true)]
    [InlineData(200, 200, 310, 310, 200, false)]
    [InlineData(300, 200, 300, 300, 200, false)]
    public void OnRoll_TurnsWhereItFitsOrSaves(double widthMm, double heightMm, double rollMm, double sheetWidthMm, double sheetHeightMm, bool isTurned)
    {
        BoundingBox box = BoundingBox.Around(Point2D.FromMillimeters(-7, 5), Point2D.FromMillimeters(widthMm - 7, heightMm + 5));
        Drawing drawing = Drawing.Of("a box", "a box", box, []);

        PrintSheet sheet = Assert.Single(SheetLayout.OnRoll(Length.FromMillimeters(rollMm)).Arrange(drawing));

        Assert.Equal(sheetWidthMm, sheet.Width.Millimeters, 9);
        Assert.Equal(sheetHeightMm, sheet.Height.Millimeters, 9);
        Transform2D placement = sheet.Placement!.Value;
        Vector2D across = placement.Apply(Vector2D.FromMillimeters(1, 0));
        Assert.Equal(isTurned ? 0 : 1, across.X.Millimeters, 12);
        Assert.False(placement.TurnsOver);
        BoundingBox onSheet = BoundingBox.Around(placement.Apply(box.LowerLeft), placement.Apply(box.UpperRight));
        Assert.Equal(0, onSheet.Left.Millimeters, 9);
        Assert.Equal(0, onSheet.Bottom.Millimeters, 9);
        AssertWithin(sheet.Window, onSheet);
    }

    [Fact]
    public void OnRoll_TooNarrowBothWays_IsRefused()
    {
        Drawing drawing = Drawing.Of("a box", "a box", BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(900, 800)), []);

        var error = Assert.Throws<ArgumentException>(() => SheetLayout.OnRoll(Length.FromMillimeters(610)).Arrange(drawing));
        Assert.StartsWith("PC7105: The drawing is 900.0 mm (35.433 in) wide and 800.0 mm", error.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => SheetLayout.OnRoll(Length.Zero));
    }

    // Counted by hand at margins of 10 mm and an overlap of 12 mm, the map included: front and back side by side, the band upright beside them.
    [Theory]
    [InlineData("29 1/2", "39 3/4", "A4", 13)]
    [InlineData("26", "37", "Letter", 13)]
    public void Tile_ThePiecesOfASkirt_TakeNoMoreSheetsThanByHand(string waist, string hip, string paper, int sheets)
    {
        Drawing pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Inches(waist, hip)).WithLength(Tape.Inches("26")).Draft(), new SkirtPatternOptions { Label = PieceLabel.For("Act 2 skirt") }).Draw();

        Assert.InRange(SheetLayout.TiledOn(PaperSize.Find(paper)).Arrange(pieces).Count, 2, sheets);
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Tile_ThePiecesOfAnySkirt_HoldEveryPieceAndSayTheTitleOnTheMap(string skirt)
    {
        PieceSet set = SkirtPattern.From(DrawnSkirts.Draft(skirt));
        foreach (string paper in new[] { "A4", "Letter" })
        {
            Tiling tiling = SheetLayout.TiledOn(PaperSize.Find(paper)).Tile(set.Draw());

            AssertCellsFitTogether(tiling);
            Assert.False(tiling.Drawing.TryFindLayer(LayerName.TitleBlock, out _));
            Assert.Equal(set.Pieces.Sum(piece => piece.Edges.Count), tiling.Drawing.Marks<PathMark>().Count(mark => mark.Facts?.Part == MarkPart.Cut));
            foreach (DrawingMark mark in tiling.Drawing.Marks<DrawingMark>())
            {
                AssertWithin(tiling.Extent, mark.Bounds);
            }

            string[] said = [.. tiling.Print().TakeWhile(sheet => sheet.Placement is null).SelectMany(sheet => sheet.Marks!.Marks<TextMark>()).Select(mark => mark.Text)];
            Assert.All(set.Pieces, piece => Assert.Contains(piece.Name.Text, said));
        }
    }

    // A check of the scale that is joined of two sheets checks the joining. A sheet shows a whole label in its cell: what is seen of it when all are joined.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Tile_ThePiecesOfAnySkirt_KeepALabelAndItsScaleLineOnOneSheet(string skirt)
    {
        PieceSet set = SkirtPattern.From(DrawnSkirts.Draft(skirt), new SkirtPatternOptions { Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithMeasurements(Bodies.Example) });
        foreach (string paper in new[] { "A4", "Letter" })
        {
            Tiling tiling = SheetLayout.TiledOn(PaperSize.Find(paper)).Tile(set.Draw());
            DrawingMark[] labels = [.. tiling.Drawing.Marks<DrawingMark>(LayerName.Labels)];
            TextMark[] titles = [.. labels.OfType<TextMark>().Where(mark => mark.Weight == TextWeight.Bold)];
            PathMark[] checks = [.. labels.OfType<PathMark>().Where(mark => mark.Path.Length.Millimeters > 49)];
            BoundingBox CellOf(BoundingBox box) => tiling.Sheets.FirstOrDefault(sheet => sheet.Cell.Contains(box.LowerLeft) && sheet.Cell.Contains(box.UpperRight))?.Cell ?? default;

            Assert.Equal(set.Pieces.Count(piece => piece.Label is not null), titles.Length);
            Assert.Equal(titles.Length, checks.Length);
            foreach (TextMark title in titles.Where(title => title.Text.Contains("FRONT", StringComparison.Ordinal) || title.Text.Contains("BACK", StringComparison.Ordinal)))
            {
                BoundingBox cell = CellOf(title.Bounds);
                Assert.True(cell != default, $"{paper}: {title.Text} at {title.Bounds}");
                Assert.Contains(checks, check => cell.Contains(check.Bounds.LowerLeft) && cell.Contains(check.Bounds.UpperRight));
            }
        }
    }

    // By hand: a box of 20 1/2 by 26 in lies on three sheets of A4 side by side (190 mm each, 10 mm of them shared: 550 mm for 521) and three below each other, with the map ten.
    [Theory]
    [InlineData("32", "40")]
    [InlineData("29 1/2", "39 3/4")]
    [InlineData("26", "37")]
    public void Tile_ABlockThatJustFits_HasItsNamesInsideAndTakesNoSheetForThem(string waist, string hip)
    {
        Drawing block = SkirtBlock.For(Bodies.Inches(waist, hip)).WithLength(Tape.Inches("26")).Draft().Draw();

        Tiling tiling = SheetLayout.TiledOn(PaperSize.Find("A4")).Tile(block);

        Assert.InRange(SheetLayout.TiledOn(PaperSize.Find("A4")).Arrange(block).Count, 2, 10);
        Assert.Equal(
            block.Marks<PathMark>(LayerName.SeamLines).Sum(mark => mark.Path.Length.Millimeters),
            tiling.Drawing.Marks<PathMark>(LayerName.SeamLines).Sum(mark => mark.Path.Length.Millimeters),
            1e-9);
        string[] Names(Drawing drawing) => [.. drawing.Marks<TextMark>(LayerName.Landmarks).Select(mark => mark.Text).Order()];
        Assert.Equal(Names(block), Names(tiling.Drawing));
        Assert.Empty(LabelBoxes.Collisions(tiling.Drawing));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Tile_TheBlock_SaysItsTitleOnTheMapAndNotOnTheSheets(string skirt)
    {
        Drawing drawing = DrawnSkirts.Drawn(skirt);
        foreach (string paper in new[] { "A4", "Letter" })
        {
            Tiling tiling = SheetLayout.TiledOn(PaperSize.Find(paper)).Tile(drawing);
            string[] said = [.. tiling.Print().TakeWhile(sheet => sheet.Placement is null).SelectMany(sheet => sheet.Marks!.Marks<TextMark>()).Select(mark => mark.Text)];

            Assert.False(tiling.Drawing.TryFindLayer(LayerName.TitleBlock, out _));
            Assert.True(tiling.SheetCount <= SheetLayout.TiledOn(PaperSize.Find(paper)).Tile(Drawing.Of("all", "all", drawing.Bounds, drawing.Layers)).SheetCount);
            Assert.Contains("hip girth", said);
            Assert.All(tiling.Print().TakeWhile(sheet => sheet.Placement is null), sheet =>
            {
                TextMark[] words = [.. sheet.Marks!.Marks<TextMark>(LayerName.SheetMap)];
                Assert.All(words, one => Assert.All(words, other => Assert.True(one == other || !Inner(one.Bounds).Overlaps(Inner(other.Bounds)), $"{paper}: {one.Text} over {other.Text}")));
            });
        }
    }

    // A line of type may touch the next.
    private static BoundingBox Inner(BoundingBox box)
        => BoundingBox.Around(Point2D.FromMillimeters(box.Left.Millimeters + 0.1, box.Bottom.Millimeters + 0.9), Point2D.FromMillimeters(box.Right.Millimeters - 0.1, box.Top.Millimeters - 0.9));

    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    // A number that a line runs through is read as another one.
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void Print_ThePiecesOfASkirt_NoNumberOfAJointIsStruckThrough(string paper)
    {
        Drawing pieces = SkirtPattern.From(DrawnSkirts.Draft("default")).Draw();
        foreach (PrintSheet sheet in SheetLayout.TiledOn(PaperSize.Find(paper)).Arrange(pieces).Where(sheet => sheet.Placement is not null))
        {
            Point2D[] ink = [.. sheet.Drawing!.Marks<PathMark>().SelectMany(mark => mark.Path.Transformed(sheet.Placement!.Value).Flatten(Length.FromMillimeters(0.1)).Zip(
                mark.Path.Transformed(sheet.Placement!.Value).Flatten(Length.FromMillimeters(0.1)).Skip(1),
                (a, b) => Enumerable.Range(0, 1 + (int)a.DistanceTo(b).Millimeters).Select(i => LineSegment.Between(a, b).PointAtRaw(i / (1.0 + (int)a.DistanceTo(b).Millimeters)))).SelectMany(points => points))];
            foreach (TextMark number in sheet.Marks!.Marks<TextMark>().Where(mark => mark.Text.All(char.IsDigit) || mark.Text.StartsWith("Lay", StringComparison.Ordinal)))
            {
                Assert.False(ink.Any(point => number.Bounds.Contains(point)), sheet.Name + ": " + number.Text + " at " + number.Bounds);
            }
        }
    }

    private static int Pairs(Tiling tiling, Func<int, int, (int Row, int Column)> next)
    {
        HashSet<(int Row, int Column)> printed = [.. tiling.Sheets.Where(sheet => !sheet.IsEmpty).Select(sheet => (sheet.Row, sheet.Column))];
        return printed.Count(place => printed.Contains(next(place.Row, place.Column)));
    }

    private static void AssertCellsFitTogether(Tiling tiling)
    {
        double overlap = tiling.Layout.Overlap.Millimeters;
        double margin = tiling.Layout.Margin.Millimeters;
        foreach (TiledSheet sheet in tiling.Sheets)
        {
            Assert.Equal(tiling.Paper.Width.Millimeters - (2 * margin), sheet.Window.Width.Millimeters, 9);
            Assert.Equal(tiling.Paper.Height.Millimeters - (2 * margin), sheet.Window.Height.Millimeters, 9);
            Assert.Equal(sheet.Window.Left.Millimeters, sheet.Cell.Left.Millimeters, 9);
            Assert.Equal(sheet.Window.Top.Millimeters, sheet.Cell.Top.Millimeters, 9);
            if (sheet.Column < tiling.Columns)
            {
                TiledSheet right = tiling.SheetAt(sheet.Row, sheet.Column + 1);
                Assert.Equal(sheet.Cell.Right, right.Cell.Left);
                Assert.Equal(overlap, (sheet.Window.Right - right.Window.Left).Millimeters, 9);
            }

            if (sheet.Row < tiling.Rows)
            {
                TiledSheet below = tiling.SheetAt(sheet.Row + 1, sheet.Column);
                Assert.Equal(sheet.Cell.Bottom, below.Cell.Top);
                Assert.Equal(overlap, (below.Window.Top - sheet.Window.Bottom).Millimeters, 9);
            }
        }
    }

    private static void AssertWithin(BoundingBox outer, BoundingBox inner)
    {
        const double tolerance = 1e-6;
        Assert.True(
            inner.Left.Millimeters >= outer.Left.Millimeters - tolerance && inner.Right.Millimeters <= outer.Right.Millimeters + tolerance
                && inner.Bottom.Millimeters >= outer.Bottom.Millimeters - tolerance && inner.Top.Millimeters <= outer.Top.Millimeters + tolerance,
            $"{inner} is not within {outer}");
    }

    private static Drawing DrawingOf(CurvePath path) => DrawingOf(PathMark.Of(path, LineRole.Seam));

    private static Drawing DrawingOf(params DrawingMark[] marks)
        => Drawing.Of("a test", "a test", BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(100, 100)), [DrawingLayer.Of(LayerName.SeamLines, marks)]);

    private static CurvePath Path(params string[] corners)
    {
        Point2D[] points = corners.Select(corner => corner.Split(' ')).Select(pair => Point2D.FromMillimeters(Number(pair[0]), Number(pair[1]))).ToArray();
        CurvePath path = CurvePath.From(points[0]).LineTo(points[1]);
        return points.Skip(2).Aggregate(path, (soFar, point) => soFar.LineTo(point));
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
