using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Pdf.Tests;

/// <summary>Reads the files back with another library: is what is on paper what was drafted?</summary>
public class PdfGeometryTests
{
    private const double ToleranceMm = 0.01;

    public static TheoryData<string> Papers => new(PaperSize.All.Select(paper => paper.Name));

    public static TheoryData<string> Layouts => new(LayoutsByName.Keys);

    private static readonly Dictionary<string, SheetLayout> LayoutsByName = new()
    {
        ["single"] = SheetLayout.SingleSheet,
        ["roll"] = SheetLayout.OnRoll(Length.FromInches(36)),
        ["narrow roll"] = SheetLayout.OnRoll(Length.FromMillimeters(700)),
        ["A4"] = SheetLayout.TiledOn(PaperSize.A4),
        ["A4 lying"] = SheetLayout.TiledOn(PaperSize.A4).WithOrientation(SheetOrientation.Landscape),
        ["Letter"] = SheetLayout.TiledOn(PaperSize.Letter).WithOverlap(Length.FromInches(0.75)).WithMargin(Length.FromInches(0.25)),
        ["A5"] = SheetLayout.TiledOn(PaperSize.A5),
        ["A0"] = SheetLayout.TiledOn(PaperSize.A0),
        ["card"] = SheetLayout.TiledOn(PaperSize.Of("card", Length.FromMillimeters(95), Length.FromMillimeters(120))).WithMargin(Length.FromMillimeters(4)),
    };

    [Fact]
    public void ToPdf_OnOneSheet_HasTheSizeOfTheDrawing()
    {
        ReadPage page = Assert.Single(ReadPage.All(Skirts.Rosalind.ToPdf()));

        Assert.Equal(Skirts.Rosalind.Bounds.Width.Millimeters, page.WidthMm, ToleranceMm);
        Assert.Equal(Skirts.Rosalind.Bounds.Height.Millimeters, page.HeightMm, ToleranceMm);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void ToPdf_Tiled_EverySheetHasTheSizeOfItsPaper(string name)
    {
        PaperSize paper = PaperSize.Find(name);
        TiledLayout layout = SheetLayout.TiledOn(paper);

        foreach (SheetOrientation orientation in new[] { SheetOrientation.Portrait, SheetOrientation.Landscape })
        {
            PaperSize lying = orientation == SheetOrientation.Landscape ? paper.Turned() : paper;
            foreach (ReadPage page in ReadPage.All(Skirts.Rosalind.ToPdf(layout.WithOrientation(orientation))))
            {
                Assert.Equal(lying.Width.Millimeters, page.WidthMm, ToleranceMm);
                Assert.Equal(lying.Height.Millimeters, page.HeightMm, ToleranceMm);
            }
        }
    }

    [Theory]
    [InlineData("single", 1)]
    [InlineData("A4", 1)]
    [InlineData("Letter", 1)]
    [InlineData("card", 1)]
    public void ToPdf_TheTestSquares_MeasureWhatTheySay(string layout, int pairs)
    {
        var squares = ReadPage.All(Skirts.Rosalind.ToPdf(LayoutsByName[layout])).SelectMany(page => page.Lines).Where(IsSquare).Select(line => Side(line.Segments[0])).ToArray();

        Assert.True(squares.Count(side => Math.Abs(side - 50) < ToleranceMm) >= pairs, string.Join(", ", squares));
        Assert.True(squares.Count(side => Math.Abs(side - 50.8) < ToleranceMm) >= pairs, string.Join(", ", squares));
    }

    [Theory]
    [MemberData(nameof(Layouts))]
    public void ToPdf_EveryLineOfTheDrawing_HasItsControlPointsOnEverySheetThatShowsIt(string name)
    {
        IReadOnlyList<PrintSheet> sheets = LayoutsByName[name].Arrange(Skirts.Rosalind);
        IReadOnlyList<ReadPage> pages = ReadPage.All(Skirts.Rosalind.ToPdf(LayoutsByName[name]));

        Assert.Equal(sheets.Count, pages.Count);
        int compared = 0;
        for (int i = 0; i < sheets.Count; i++)
        {
            if (sheets[i].Placement is { } placement)
            {
                foreach (PathMark mark in Marks(sheets[i].Drawing ?? Skirts.Rosalind).Where(mark => mark.Path.Transformed(placement).Bounds.Overlaps(sheets[i].Window)))
                {
                    Assert.True(IsDrawn(mark, placement, pages[i]), $"{mark.Role} on sheet {sheets[i].Name}");
                    compared++;
                }
            }
        }

        Assert.True(compared >= Marks(sheets[^1].Drawing ?? Skirts.Rosalind).Count());
    }

    [Fact]
    public void ToPdf_OneSheet_ALineMovedByALittle_WouldBeFoundOut()
    {
        PrintSheet sheet = SheetLayout.SingleSheet.Arrange(Skirts.Rosalind)[0];
        ReadPage page = ReadPage.All(Skirts.Rosalind.ToPdf())[0];

        Transform2D moved = sheet.Placement!.Value.Then(Transform2D.Translation(Vector2D.FromMillimeters(0.015, 0)));

        Assert.All(Marks(), mark => Assert.False(IsDrawn(mark, moved, page)));
    }

    // Walks along every line in half millimetres: each step is on a sheet whose file shows the line there, and the steps on all cells add up to the lines.
    [Theory]
    [InlineData("A4")]
    [InlineData("A4 lying")]
    [InlineData("Letter")]
    [InlineData("A5")]
    [InlineData("card")]
    public void ToPdf_Tiled_NoLineIsLostAtAJoint(string name)
    {
        Tiling tiling = ((TiledLayout)LayoutsByName[name]).Tile(Skirts.Rosalind);
        PrintSheet[] sheets = tiling.Print().ToArray();
        IReadOnlyList<ReadPage> pages = ReadPage.All(Skirts.Rosalind.ToPdf(LayoutsByName[name]));
        TiledSheet[] printed = tiling.Sheets.Where(sheet => !sheet.IsEmpty).ToArray();
        int maps = sheets.Length - printed.Length;
        Assert.Equal(sheets.Length, pages.Count);

        double totalMm = 0;
        double seenMm = 0;
        foreach (PathMark mark in Marks(tiling.Drawing))
        {
            bool[] isDrawn = printed.Select((sheet, i) => IsDrawn(mark, sheets[maps + i].Placement!.Value, pages[maps + i])).ToArray();
            const double stepMm = 0.5;
            double lengthMm = mark.Path.Length.Millimeters;
            totalMm += lengthMm;
            for (double at = 0; at < lengthMm; at += stepMm)
            {
                double partMm = Math.Min(stepMm, lengthMm - at);
                Point2D point = mark.Path.PointAtLength(Length.FromMillimeters(at + (partMm / 2)));
                int shown = 0;
                for (int i = 0; i < printed.Length; i++)
                {
                    // A cell has its left and its upper border: so no point lies in two.
                    bool isInCell = point.X >= printed[i].Cell.Left && (point.X < printed[i].Cell.Right || printed[i].Column == tiling.Columns)
                        && point.Y <= printed[i].Cell.Top && (point.Y > printed[i].Cell.Bottom || printed[i].Row == tiling.Rows);
                    shown += isInCell && isDrawn[i] && sheets[maps + i].Window.Contains(sheets[maps + i].Placement!.Value.Apply(point)) ? 1 : 0;
                }

                Assert.True(shown == 1, $"{mark.Role} at {at} mm is shown {shown} times");
                seenMm += partMm * shown;
            }
        }

        Assert.Equal(totalMm, seenMm, 1e-6);
    }

    // As a home printer does it, from the file alone: the tips of the arrows of one number lie on two sheets; laid tip to tip, the sheets lie as the plan says.
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public void ToPdf_Tiled_TipsOfTheArrowsMeet(string name)
    {
        Tiling tiling = ((TiledLayout)LayoutsByName[name]).Tile(Skirts.Rosalind);
        PrintSheet[] sheets = tiling.Print().ToArray();
        IReadOnlyList<ReadPage> pages = ReadPage.All(Skirts.Rosalind.ToPdf(LayoutsByName[name]));

        var tips = new List<(int Page, double X, double Y)>();
        for (int i = 0; i < sheets.Length; i++)
        {
            if (sheets[i].Placement is { } placement)
            {
                // Small filled triangles; their tip is between the two long sides.
                Transform2D back = placement.Inverted();
                foreach (ReadPage.ReadLine head in pages[i].Fills.Where(fill => fill.Segments.Count == 3 && Side(fill.Segments[0]) < 5))
                {
                    Point2D tip = back.Apply(Point2D.FromMillimeters(head.Segments[0][0].X, head.Segments[0][0].Y));
                    tips.Add((i, tip.X.Millimeters, tip.Y.Millimeters));
                }
            }
        }

        Assert.True(tips.Count >= 4 * (sheets.Length - 2));
        foreach (var tip in tips)
        {
            Assert.Single(tips, other => other.Page != tip.Page && Math.Abs(other.X - tip.X) < ToleranceMm && Math.Abs(other.Y - tip.Y) < ToleranceMm);
        }
    }

    [Fact]
    public void ToPdf_Weights_AreThoseOfTheRoles()
    {
        ReadPage page = ReadPage.All(Skirts.Rosalind.ToPdf())[0];

        foreach (LineRole role in Marks().Select(mark => mark.Role).Distinct())
        {
            Assert.Contains(page.Lines, line => Math.Abs(line.WeightMm - role.Weight.Millimeters) < 0.001);
        }
    }

    private static IEnumerable<PathMark> Marks() => Marks(Skirts.Rosalind);

    // On tiled sheets the title block stands on the map, and names may stand elsewhere.
    private static IEnumerable<PathMark> Marks(Drawing drawing) => drawing.Layers.SelectMany(layer => layer.Marks).OfType<PathMark>();

    private static bool IsSquare(ReadPage.ReadLine line)
        => line.Segments.Count == 4 && line.Segments.All(segment => segment.Count == 2 && Math.Abs(Side(segment) - Side(line.Segments[0])) < ToleranceMm && Side(segment) > 10);

    private static double Side(IReadOnlyList<(double X, double Y)> segment)
    {
        (double X, double Y) from = segment[0];
        (double X, double Y) to = segment[^1];
        return Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
    }

    /// <summary>Whether a page shows a line with all its control points, in order.</summary>
    private static bool IsDrawn(PathMark mark, Transform2D placement, ReadPage page)
    {
        var expected = new ControlPoints();
        mark.Path.Transformed(placement).WriteTo(expected, LengthUnit.Millimeter);
        return page.Lines.Any(line => line.Segments.Count == expected.Segments.Count && line.Segments.Zip(expected.Segments).All(pair => IsSame(pair.First, pair.Second)));
    }

    private static bool IsSame(IReadOnlyList<(double X, double Y)> read, IReadOnlyList<(double X, double Y)> model)
        => read.Count == model.Count && read.Zip(model).All(pair => Math.Abs(pair.First.X - pair.Second.X) < ToleranceMm && Math.Abs(pair.First.Y - pair.Second.Y) < ToleranceMm);

    private sealed class ControlPoints : IPathSink
    {
        private (double X, double Y) _last;

        internal List<IReadOnlyList<(double X, double Y)>> Segments { get; } = [];

        public void MoveTo(double x, double y) => _last = (x, y);

        public void LineTo(double x, double y)
        {
            Segments.Add([_last, (x, y)]);
            _last = (x, y);
        }

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
        {
            Segments.Add([_last, (startControlX, startControlY), (endControlX, endControlY), (x, y)]);
            _last = (x, y);
        }

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => throw new InvalidOperationException("No arcs were asked for.");

        public void Close()
        {
        }
    }
}
