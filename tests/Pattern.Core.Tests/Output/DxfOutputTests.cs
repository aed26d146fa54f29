using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

// Layers, texts and units: ASTM D6673, earlier ANSI/AAMA-292; from memory.
public class DxfOutputTests
{
    private static readonly DxfOptions Inches = new() { Unit = LengthUnit.Inch };

    public static TheoryData<LengthUnit> Units => [LengthUnit.Millimeter, LengthUnit.Inch];

    [Theory]
    [MemberData(nameof(Units))]
    public void ToDxf_ManyPieces_EachIsABlockThatIsInsertedOnceAndMeasuresAsTheModel(LengthUnit unit)
    {
        var file = DxfFile.Read(DxfPieces.Many.ToDxf(new DxfOptions { Unit = unit }));

        Assert.Equal(["HEADER", "TABLES", "BLOCKS", "ENTITIES"], file.Sections);
        Assert.Equal(["back_12", "front_12_main-cloth", "front_12_lining", "front_14", "back_gr-er"], file.Blocks.Keys);
        Assert.Equal(file.Blocks.Keys, file.Entities.Where(entity => entity.Type == "INSERT").Select(entity => entity.Text(2)));
        Assert.Equal(["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "13", "14", "15"], file.Layers);
        Assert.All(file.Blocks.Values.SelectMany(block => block).Concat(file.Entities), entity => Assert.Contains(entity.Layer, file.Layers));

        PatternPiece[] pieces = [DxfPieces.Many[0], DxfPieces.Many[1], DxfPieces.Many[1], DxfPieces.Many[2], DxfPieces.Many[3]];
        foreach ((List<DxfFile.Entity> block, PatternPiece piece) in file.Blocks.Values.Zip(pieces))
        {
            AssertMeasures(piece, block, unit == LengthUnit.Inch ? 25.4 : 1);
        }
    }

    // METRIC is millimetres and ENGLISH inches. $INSUNITS: 1 inches, 4 millimetres; $MEASUREMENT: 0 English, 1 metric (DXF reference; from memory).
    [Theory]
    [InlineData(LengthUnit.Millimeter, "METRIC", "4", "1")]
    [InlineData(LengthUnit.Inch, "ENGLISH", "1", "0")]
    public void ToDxf_InAUnit_SaysItInTheTextsAndInTheHeader(LengthUnit unit, string name, string insUnits, string measurement)
    {
        string pattern = DxfPieces.Skirt.ToDxf(new DxfOptions { Unit = unit });
        string drawing = SamplePieces.Skirt.Draw().ToDxf(new DrawingDxfOptions { Unit = unit });

        Assert.Contains("UNITS: " + name, DxfFile.Read(pattern).Texts());
        Assert.All(new[] { pattern, drawing }, text =>
        {
            var file = DxfFile.Read(text);
            Assert.Equal("AC1009", file.Variable("$ACADVER"));
            Assert.Equal(insUnits, file.Variable("$INSUNITS"));
            Assert.Equal(measurement, file.Variable("$MEASUREMENT"));
        });
    }

    // A rectangle of 100 by 200 mm with 10 mm all around: closed forms. The cut line has two vertices more, one at each notch of the hem, which turn nothing.
    [Fact]
    public void ToDxf_Rectangle_HasFourTurnPointsOnEachLineAndAVertexAtEachNotch()
    {
        PatternPiece piece = PatternPiece.From(SamplePieces.Rectangle).WithAllowance(Length.FromMillimeters(10));
        List<DxfFile.Entity> block = DxfFile.Read(piece.ToDxf()).Blocks["back"];

        DxfFile.Entity boundary = Assert.Single(block, entity => entity.Layer == "1" && entity.Type == "POLYLINE");
        Assert.True(boundary.IsClosed);
        Assert.Equal([(-10, 210), (110, 210), (110, 0), (110, -10), (-10, -10), (-10, 0)], boundary.Vertices);
        Assert.Equal([(0, 200), (100, 200), (100, 0), (0, 0)], Assert.Single(block, entity => entity.Layer == "14").Vertices);
        Assert.Equal(
            [(-10, 210), (110, 210), (110, -10), (-10, -10), (0, 200), (100, 200), (100, 0), (0, 0)],
            block.Where(entity => entity.Layer == "2").Select(entity => entity.At(10)));
        Assert.Equal([(110, 0), (-10, 0)], block.Where(entity => entity.Layer == "3").Select(entity => entity.At(10)));
    }

    // The longest text of release 12 has 255 characters, escapes included (DXF reference; from memory).
    [Fact]
    public void ToDxf_LongTexts_AreSplitAndLoseNothing()
    {
        string words = string.Join(" ", Enumerable.Repeat("Shakespeare's wardrobe", 40));
        string chinese = new('\u674E', 60);
        var mark = TextMark.Of(words, Point2D.Origin, Length.FromMillimeters(5), Angle.FromDegrees(90), TextAlignment.Middle, TextWeight.Regular, Ink.Strong);
        var drawing = Drawing.Of("t", "d", BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(10, 10)), [DrawingLayer.Of(LayerName.Names, [mark])]);
        PatternPiece piece = SamplePieces.WithTradeAllowances(SamplePieces.Rectangle).WithLabel(PieceLabel.For(chinese));

        DxfFile.Entity[] drawn = [.. DxfFile.Read(drawing.ToDxf()).Entities];
        var pattern = DxfFile.Read(piece.ToDxf());
        string[] label = [.. pattern.Blocks.Values.Single().Where(entity => entity.Type == "TEXT").Select(entity => entity.Text(1))];

        Assert.All(drawn.Select(entity => entity.Text(1)).Concat(label).Concat(pattern.Texts()), text => Assert.InRange(text.Length, 1, 255));
        Assert.Equal(words, string.Join(" ", drawn.Select(entity => entity.Text(1))));
        Assert.Equal(60, string.Concat(label).Split(@"\U+674E").Length - 1);

        // Turned by a quarter, the next line stands to the right.
        Assert.All(drawn.Zip(drawn.Skip(1)), pair => Assert.Equal(6.5, pair.Second.Number(10) - pair.First.Number(10), 3));
    }

    // A letter is taken to be as wide as it is high: no letter of the format's own font is wider.
    [Theory]
    [InlineData(100, true)]
    [InlineData(20, false)]
    public void ToDxf_TextsOfAPiece_StayInItsBoxDownToTypeOfOneAndAHalfMillimetres(double widthMm, bool fits)
    {
        Panel panel = SamplePieces.Quad((0, 200), (widthMm, 200), (widthMm, 0), (0, 0));
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(Length.FromMillimeters(10)).Cut(2, ClothName.Main)
            .WithInternalLine("hip line", InternalLineKind.Level, CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(widthMm, 90), Point2D.FromMillimeters(0, 90))));

        DxfFile.Entity[] texts = [.. DxfFile.Read(piece.ToDxf()).Blocks.Values.Single().Where(entity => entity.Type == "TEXT")];

        Assert.All(texts, text =>
        {
            double height = text.Number(40);
            double end = text.Number(10) + (height * text.Text(1).Length);
            Assert.InRange(height, 1.5, 4);
            Assert.InRange(text.Number(10), -10, widthMm + 10);
            Assert.True(fits ? end <= widthMm + 10 + 0.001 : height < 4);
        });
    }

    [Fact]
    public void ToDxf_RectangleOnTheFold_HasAMirrorLineAlongTheWholeFold()
    {
        PatternPiece piece = PatternPiece.From(SamplePieces.Rectangle).WithAllowance(Length.FromMillimeters(10)).CutOnFold(EdgeName.Centre);
        List<DxfFile.Entity> block = DxfFile.Read(piece.ToDxf()).Blocks["back"];

        DxfFile.Entity mirror = Assert.Single(block, entity => entity.Layer == "6");
        Assert.Equal("LINE", mirror.Type);
        Assert.Equal([(0, -10), (0, 210)], new[] { mirror.At(10), mirror.At(11) }.OrderBy(point => point.Y));
        Assert.DoesNotContain(DxfFile.Read(piece.Unfolded().ToDxf()).Blocks["back"], entity => entity.Layer == "6");
    }

    // Independent of the flattening: the mid point of every chord is compared with the nearest point of the path.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.5)]
    public void ToDxf_Curves_KeepWithinTheTolerance(double toleranceMm)
    {
        List<DxfFile.Entity> block = DxfFile.Read(DxfPieces.Back.ToDxf(new DxfOptions { Tolerance = Length.FromMillimeters(toleranceMm) })).Blocks["back_12"];
        foreach ((string layer, CurvePath path) in new[] { ("1", DxfPieces.Back.CutLine), ("14", DxfPieces.Back.SeamLine) })
        {
            List<(double X, double Y)> vertices = block.Single(entity => entity.Layer == layer && entity.Type == "POLYLINE").Vertices;
            for (int i = 0; i < vertices.Count; i++)
            {
                (double X, double Y) next = vertices[(i + 1) % vertices.Count];
                for (int part = 0; part < 8; part++)
                {
                    double share = part / 8.0;
                    var point = Point2D.FromMillimeters(vertices[i].X + (share * (next.X - vertices[i].X)), vertices[i].Y + (share * (next.Y - vertices[i].Y)));
                    Assert.InRange(path.ClosestTo(point).Point.DistanceTo(point).Millimeters, 0, toleranceMm + 0.0001);
                }
            }
        }
    }

    [Fact]
    public void ToDxf_Texts_SayWhatTheCallerGaveAndNothingElse()
    {
        var file = DxfFile.Read(DxfPieces.Skirt.ToDxf(new DxfOptions
        {
            Author = "Wardrobe room",
            StyleName = "Act 2",
            SampleSize = "14",
            Created = new DateTime(2026, 3, 14, 9, 5, 0),
        }));

        Assert.Equal(
            ["AUTHOR: Wardrobe room", "STYLE NAME: Act 2", "CREATION DATE: 2026-03-14", "CREATION TIME: 09:05", "SAMPLE SIZE: 14", "UNITS: METRIC", "VERSION: ASTM D6673"],
            file.Texts());
        Assert.Equal(
            ["STYLE NAME: Act 2 skirt", "SAMPLE SIZE: 12", "UNITS: METRIC", "VERSION: ASTM D6673"],
            DxfFile.Read(DxfPieces.Skirt.ToDxf()).Texts());
    }

    [Fact]
    public void ToDxf_TextsOfAPiece_NameItSizeItAndSayHowItIsCut()
    {
        var file = DxfFile.Read(DxfPieces.Many.ToDxf());

        Assert.Equal(
            [
                "Piece Name: front", "Size: 12", "Quantity: 1, on the fold", "Material: lining", "Category: Act 2 skirt", "Annotation: cut 1 of lining on the fold",
                "Annotation: for Rosalind", "Annotation: Make a toile first",
            ],
            file.Blocks["front_12_lining"].Where(entity => entity.Type == "TEXT").Select(entity => entity.Text(1)));
        Assert.All(file.Blocks.Values.SelectMany(block => block).Where(entity => entity.Type == "TEXT"), text => Assert.Equal("15", text.Layer));
        Assert.Contains(file.Blocks["back_12"], entity => entity.Type == "TEXT" && entity.Text(1) == "Annotation: hip line, 100 % straight");
    }

    // Common practice, no source: what a viewer shows in one colour cannot be told apart, and a point is hardly seen.
    [Fact]
    public void ToDxf_OnAScreen_LinesHaveColoursOfTheirOwnAndMarksCanBeSeen()
    {
        var file = DxfFile.Read(SkirtPattern.From(SamplePieces.Skirt).Pieces.ToDxf());
        int Colour(string layer) => file.All.Single(entity => entity.Type == "LAYER" && entity.Text(2) == layer).Whole(62);

        Assert.Equal(4, new[] { "1", "14", "6", "8" }.Select(Colour).Distinct().Count());
        foreach (var block in file.Blocks.Values)
        {
            Point2D[] holes = [.. block.Where(entity => entity.Type == "POINT" && entity.Layer == "13").Select(entity => Place(entity, 10))];
            Point2D[] notches = [.. block.Where(entity => entity.Type == "POINT" && entity.Layer == "4").Select(entity => Place(entity, 10))];
            LineSegment[] signs = [.. block.Where(entity => entity.Type == "LINE" && entity.Layer == "15").Select(entity => LineSegment.Between(Place(entity, 10), Place(entity, 11)))];
            Assert.All(holes, hole => Assert.Equal(2, signs.Count(sign => sign.Midpoint.DistanceTo(hole).Millimeters < 0.001)));

            // An arrow across each dart: a line, and the two strokes of its head.
            Assert.Equal((2 * holes.Length) + notches.Length + (3 * holes.Length), signs.Length);
            Assert.All(notches, notch => Assert.Contains(signs, sign => sign.Start.DistanceTo(notch).Millimeters < 0.001));
        }
    }

    private static Point2D Place(DxfFile.Entity entity, int code) => Point2D.FromMillimeters(entity.At(code).X, entity.At(code).Y);

    [Fact]
    public void ToDxf_WordsOfALine_StandOffTheSeamLine()
    {
        PieceSet pieces = SkirtPattern.From(SamplePieces.Skirt);
        var file = DxfFile.Read(pieces.Pieces.ToDxf());

        foreach (PatternPiece piece in pieces.Pieces)
        {
            var block = file.Blocks.First(pair => pair.Key.StartsWith(piece.Name.Text, StringComparison.Ordinal)).Value;
            string[] names = [.. piece.InternalLines.Select(line => "Annotation: " + line.Name)];
            Assert.All(
                block.Where(entity => entity.Type == "TEXT" && names.Contains(entity.Text(1))),
                text => Assert.True(piece.SeamLine.ClosestTo(Place(text, 10)).Distance.Millimeters > 1.5, text.Text(1)));
        }
    }

    // The words of a band run along it in letters of 4 mm, and none lies upon another.
    [Fact]
    public void ToDxf_WordsOfABand_AreAsLargeAsThoseOfOtherPieces()
    {
        PieceSet pieces = SkirtPattern.From(SamplePieces.Skirt, new SkirtPatternOptions { Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize("12") });
        var texts = DxfFile.Read(pieces.Find(SkirtPattern.Waistband).ToDxf()).Blocks.First().Value.Where(entity => entity.Type == "TEXT").ToArray();

        Assert.All(texts, text => Assert.Equal("4.0", text.Text(40)));
        Assert.Equal(texts.Length, texts.Select(text => (Math.Round(text.At(10).X / 4), Math.Round(text.At(10).Y / 4))).Distinct().Count());
    }

    // \U+XXXX for a character beyond ASCII, a blank after a caret, %%% for a percent sign (DXF reference; from memory).
    [Fact]
    public void ToDxf_WordsBeyondAscii_AreEscapedAsTheFormatAsks()
    {
        string[] texts = [.. DxfFile.Read(DxfPieces.Many.ToDxf()).Blocks["back_gr-er"].Where(entity => entity.Type == "TEXT").Select(entity => entity.Text(1))];

        Assert.Contains(@"Size: gr\U+00F6\U+00DFer", texts);
        Assert.Contains(@"Category: Titania's cape \U+263E \U+005C 100 %%%%%%", texts);
        Assert.Contains(@"Annotation: for Zo\U+00EB \U+674E ^ ", texts);
    }

    [Fact]
    public void ToDxf_InAnyCultureAndAgain_GivesTheSameCharacters()
    {
        string expected = DxfPieces.Many.ToDxf(Inches);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "ar-SA", "sv-SE" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(expected, DxfPieces.Many.ToDxf(Inches));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Units))]
    public void ToDxf_OfADrawing_KeepsLayersLinesAndWords(LengthUnit unit)
    {
        Drawing drawing = SamplePieces.Skirt.Draw();
        var file = DxfFile.Read(drawing.ToDxf(new DrawingDxfOptions { Unit = unit }));
        double perUnit = unit == LengthUnit.Inch ? 25.4 : 1;

        Assert.Equal(["HEADER", "TABLES", "ENTITIES"], file.Sections);
        Assert.Equal(drawing.Layers.Select(layer => layer.Name.Text.Replace(' ', '-')), file.Layers.Skip(1));
        foreach (DrawingLayer layer in drawing.Layers)
        {
            DxfFile.Entity[] own = [.. file.Entities.Where(entity => entity.Layer == layer.Name.Text.Replace(' ', '-'))];
            PathMark[] paths = [.. layer.Marks.OfType<PathMark>()];
            DxfFile.Entity[] lines = [.. own.Where(entity => entity.Type is "LINE" or "POLYLINE")];
            Assert.Equal(paths.Length, lines.Length);
            Assert.All(paths.Zip(lines), pair =>
            {
                Assert.Equal(pair.First.Path.Length.Millimeters, perUnit * pair.Second.Length(), 0.05);
                Assert.Equal(pair.First.Role.Dashes.Count > 0, pair.Second.Has(6));
            });
            Assert.All(lines.Where(line => line.Has(6)), line => Assert.Contains(line.Text(6), file.LineTypes));
            Assert.Equal(paths.Sum(path => path.ArrowHeads().Count), own.Count(entity => entity.Type == "SOLID"));
            Assert.Equal(layer.Marks.OfType<PointMark>().Count(), own.Count(entity => entity.Type == "CIRCLE"));
            Assert.Equal(layer.Marks.OfType<TextMark>().Count(), own.Count(entity => entity.Type == "TEXT"));
        }

        DxfFile.Entity title = file.Entities.Single(entity => entity.Type == "TEXT" && entity.Text(1) == "Skirt block");
        TextMark mark = drawing.Marks<TextMark>().Single(text => text.Text == "Skirt block");
        Assert.Equal(mark.Anchor.X.Millimeters, perUnit * title.Number(10), 3);
        Assert.Equal(0.7 * mark.Size.Millimeters, perUnit * title.Number(40), 3);
    }

    [Property(MaxTest = 25)]
    public FsCheck.Property ToDxf_AnyBody_MeasuresAsTheModel() => Prop.ForAll(Bodies.Any.ToArbitrary(), body =>
    {
        PatternPiece[] pieces;
        try
        {
            pieces = DxfPieces.Of(SkirtBlock.For(body).Draft());
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
        {
            return;
        }

        try
        {
            _ = pieces.Select(piece => piece.CutLine.Length).ToArray();
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsCut(refusal))
        {
            return;
        }

        var file = DxfFile.Read(pieces.ToDxf());
        Assert.Equal(["back", "front"], file.Blocks.Keys);
        AssertMeasures(pieces[0], file.Blocks["back"], 1);
        AssertMeasures(pieces[1], file.Blocks["front"], 1);
    });

    [Theory]
    [InlineData(LengthUnit.Centimeter)]
    [InlineData((LengthUnit)(-5))]
    public void ToDxf_InAnotherUnit_IsRefused(LengthUnit unit)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => DxfPieces.Skirt.ToDxf(new DxfOptions { Unit = unit }));

        Assert.Contains("PC7201", refusal.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplePieces.Skirt.Draw().ToDxf(new DrawingDxfOptions { Unit = unit }));
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(0)]
    [InlineData(0.0009)]
    [InlineData(5.1)]
    public void ToDxf_WithAToleranceOutsideItsRange_IsRefused(double mm)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => DxfPieces.Skirt.ToDxf(new DxfOptions { Tolerance = Length.FromMillimeters(mm) }));

        Assert.Contains("tolerance", refusal.Message);
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplePieces.Skirt.Draw().ToDxf(new DrawingDxfOptions { Tolerance = Length.FromMillimeters(mm) }));
    }

    [Fact]
    public void ToDxf_WithoutPieces_IsRefused()
    {
        Assert.Contains("PC6101", Assert.Throws<ArgumentException>(() => Array.Empty<PatternPiece>().ToDxf()).Message);
        Assert.Throws<ArgumentNullException>(() => ((PatternPiece[])null!).ToDxf());
        Assert.Throws<ArgumentNullException>(() => ((PatternPiece)null!).ToDxf());
        Assert.Throws<ArgumentNullException>(() => ((Drawing)null!).ToDxf());
        Assert.Throws<ArgumentNullException>(() => new PatternPiece[] { null! }.ToDxf());
    }

    [Fact]
    public void ToDxf_TheSamePieceTwice_IsRefusedWithNameSizeAndCloth()
    {
        string message = Assert.Throws<ArgumentException>(() => new[] { DxfPieces.Back, DxfPieces.Front, DxfPieces.Back.WithAllowance(Length.Zero) }.ToDxf()).Message;

        Assert.Contains("PC7202", message);
        Assert.Contains("two pieces back of size 12 cut of main cloth", message);
    }

    [Theory]
    [InlineData("a\nb")]
    [InlineData("a\u0007b")]
    [InlineData(" ")]
    public void ToDxf_AuthorThatCannotBePrinted_IsRefused(string author)
    {
        Assert.Throws<ArgumentException>(() => DxfPieces.Skirt.ToDxf(new DxfOptions { Author = author }));
        Assert.Throws<ArgumentException>(() => DxfPieces.Skirt.ToDxf(new DxfOptions { StyleName = author }));
        Assert.Throws<ArgumentException>(() => DxfPieces.Skirt.ToDxf(new DxfOptions { SampleSize = author }));
    }

    // A text of a drawing may hold anything; a line end in it would begin a group code.
    [Fact]
    public void ToDxf_DrawingWithControlCharacters_StaysReadable()
    {
        var words = TextMark.Of("one\r\n  0\r\nEOF \u0007\uD800", Point2D.Origin, Length.FromMillimeters(5), Angle.Zero, TextAlignment.Middle, TextWeight.Regular, Ink.Strong);
        var drawing = Drawing.Of("t", "d", BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(10, 10)), [DrawingLayer.Of(LayerName.Names, [words])]);

        DxfFile.Entity text = Assert.Single(DxfFile.Read(drawing.ToDxf()).Entities);
        Assert.Equal(@"one    0  EOF \U+FFFD\U+FFFD", text.Text(1));
        Assert.Equal(1, text.Whole(72));
    }

    [Fact]
    public void ToDxf_LongNames_BlocksStayApart()
    {
        PatternPiece Sized(string size) => DxfPieces.Of(SamplePieces.Skirt.Back, size);
        var file = DxfFile.Read(new[] { Sized("waist 29 1/2 in, hip 39 3/4 in"), Sized("waist 29 1/2 in, hip 39 7/8 in") }.ToDxf());

        Assert.Equal(["back_waist-29-1-2-in-hip-39-3-4", "back_waist-29-1-2-in-hip-39-7-8"], file.Blocks.Keys);
        Assert.All(file.Blocks.Keys, name => Assert.InRange(name.Length, 1, 31));

        file = DxfFile.Read(new[] { Sized("a very long name of a size, number 1"), Sized("a very long name of a size, number 2") }.ToDxf());
        Assert.Equal(["back_a-very-long-name-of-a-size", "back_a-very-long-name-of-a-si-2"], file.Blocks.Keys);
    }

    [Fact]
    public void SaveDxf_WhatCannotBeDrawn_LeavesTheOldFile()
    {
        string folder = Path.Combine(Path.GetTempPath(), "dxf-" + Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(folder);
        try
        {
            string path = Path.Combine(folder, "skirt.dxf");
            DxfPieces.Skirt.SaveDxf(path);
            byte[] old = File.ReadAllBytes(path);
            Assert.Equal(Encoding.ASCII.GetBytes(DxfPieces.Skirt.ToDxf()), old);

            Assert.Throws<ArgumentException>(() => new[] { DxfPieces.Back, DxfPieces.Back }.SaveDxf(path));
            Assert.Throws<ArgumentOutOfRangeException>(() => DxfPieces.Back.SaveDxf(path, new DxfOptions { Unit = LengthUnit.Foot }));
            Assert.Throws<ArgumentOutOfRangeException>(() => SamplePieces.Skirt.Draw().SaveDxf(path, new DrawingDxfOptions { Unit = LengthUnit.Foot }));
            Assert.Throws<IOException>(() => DxfPieces.Skirt.SaveDxf(folder));
            Assert.Throws<IOException>(() => DxfPieces.Skirt.SaveDxf(Path.Combine(folder, "none", "skirt.dxf")));

            Assert.Equal(old, File.ReadAllBytes(path));
            Assert.Equal([path], Directory.GetFileSystemEntries(folder));

            SamplePieces.Skirt.Draw().SaveDxf(path);
            Assert.Equal(SamplePieces.Skirt.Draw().ToDxf(), File.ReadAllText(path));
            DxfPieces.Back.SaveDxf(path, Inches);
            Assert.Equal(DxfPieces.Back.ToDxf(Inches), File.ReadAllText(path));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void WriteDxf_WhatIsRefused_WritesNoByte()
    {
        using var stream = new MemoryStream();
        Assert.Throws<ArgumentOutOfRangeException>(() => DxfPieces.Skirt.WriteDxf(stream, new DxfOptions { Unit = LengthUnit.Foot }));
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplePieces.Skirt.Draw().WriteDxf(stream, new DrawingDxfOptions { Tolerance = Length.FromMillimeters(-1) }));
        Assert.Equal(0, stream.Length);

        DxfPieces.Skirt.WriteDxf(stream);
        Assert.Equal(DxfPieces.Skirt.ToDxf(), Encoding.ASCII.GetString(stream.ToArray()));
        stream.SetLength(0);
        SamplePieces.Skirt.Draw().WriteDxf(stream);
        Assert.Equal(SamplePieces.Skirt.Draw().ToDxf(), Encoding.ASCII.GetString(stream.ToArray()));
    }

    [Fact]
    public void WriteDxf_ToAStreamThatFails_PassesTheFailureOnAfterOneAttempt()
    {
        using var full = new FullDisk();
        Assert.Same(FullDisk.Failure, Assert.Throws<IOException>(() => DxfPieces.Skirt.WriteDxf(full)));
        Assert.Equal(1, full.Attempts);
    }

    private static void AssertMeasures(PatternPiece piece, List<DxfFile.Entity> block, double mmPerUnit)
    {
        DxfFile.Entity boundary = Assert.Single(block, entity => entity.Layer == "1");
        DxfFile.Entity sew = Assert.Single(block, entity => entity.Layer == "14");
        Assert.Equal("POLYLINE", boundary.Type);
        Assert.True(boundary.IsClosed && sew.IsClosed);
        Assert.Equal(piece.CutPerimeter.Millimeters, mmPerUnit * boundary.Length(), 0.05);
        Assert.Equal(piece.SeamPerimeter.Millimeters, mmPerUnit * sew.Length(), 0.05);
        Assert.Equal(piece.Bounds.Left.Millimeters, mmPerUnit * boundary.Vertices.Min(vertex => vertex.X), 0.05);
        Assert.Equal(piece.Bounds.Right.Millimeters, mmPerUnit * boundary.Vertices.Max(vertex => vertex.X), 0.05);
        Assert.Equal(piece.Bounds.Bottom.Millimeters, mmPerUnit * boundary.Vertices.Min(vertex => vertex.Y), 0.05);
        Assert.Equal(piece.Bounds.Top.Millimeters, mmPerUnit * boundary.Vertices.Max(vertex => vertex.Y), 0.05);

        // Each vertex has its point, turn points at the corners only and at all of them.
        DxfFile.Entity[] marks = [.. block.Where(entity => entity.Layer is "2" or "3")];
        (double X, double Y)[] vertices = [.. block.Where(entity => entity.Type == "POLYLINE").SelectMany(entity => entity.Vertices)];
        Assert.Equal(vertices, marks.Select(mark => mark.At(10)));
        foreach ((DxfFile.Entity line, CurvePath path, int from) in new[] { (boundary, piece.CutLine, 0), (sew, piece.SeamLine, boundary.Vertices.Count) })
        {
            Func<Point2D, bool> isCorner = DxfPieces.Corners(path);
            for (int i = 0; i < line.Vertices.Count; i++)
            {
                var point = Point2D.FromMillimeters(mmPerUnit * line.Vertices[i].X, mmPerUnit * line.Vertices[i].Y);
                Assert.Equal(isCorner(point) ? "2" : "3", marks[from + i].Layer);
            }
        }

        LineSegment[] cuts = [.. piece.Notches.SelectMany(notch => notch.Cuts)];
        DxfFile.Entity[] notches = [.. block.Where(entity => entity.Layer == "4")];
        Assert.Equal(cuts.Length, notches.Length);
        foreach ((LineSegment cut, DxfFile.Entity notch) in cuts.Zip(notches))
        {
            Assert.Equal("POINT", notch.Type);
            AssertAt(cut.Start, notch.At(10), mmPerUnit);
            if (notch.Has(39))
            {
                Assert.True(boundary.Vertices.Min(vertex => DxfFile.Entity.Distance(vertex, notch.At(10))) * mmPerUnit <= 0.0011, "A notch is no vertex of the boundary.");
                double depth = notch.Number(39);
                double angle = notch.Number(50) * Math.PI / 180;
                AssertAt(cut.End, (notch.Number(10) + (depth * Math.Cos(angle)), notch.Number(20) + (depth * Math.Sin(angle))), mmPerUnit);
            }
        }

        DxfFile.Entity grain = Assert.Single(block, entity => entity.Layer == "7");
        AssertAt(piece.Grainline.Start, grain.At(10), mmPerUnit);
        AssertAt(piece.Grainline.End, grain.At(11), mmPerUnit);
        Point2D[] holes = [.. piece.Darts.SelectMany(dart => dart.DrillHoles)];
        DxfFile.Entity[] drilled = [.. block.Where(entity => entity.Layer == "13")];
        Assert.Equal(holes.Length, drilled.Length);
        Assert.All(holes.Zip(drilled), pair => AssertAt(pair.First, pair.Second.At(10), mmPerUnit));
        Assert.Equal(piece.FoldLine is null ? 0 : 1, block.Count(entity => entity.Layer == "6"));
        Assert.Equal(
            piece.Darts.Sum(dart => dart.Legs.Count + 1) + piece.InternalLines.Count,
            block.Count(entity => entity.Layer == "8"));
    }

    private static void AssertAt(Point2D expected, (double X, double Y) read, double mmPerUnit)
    {
        Assert.Equal(expected.X.Millimeters, mmPerUnit * read.X, 0.001);
        Assert.Equal(expected.Y.Millimeters, mmPerUnit * read.Y, 0.001);
    }

    /// <summary>A stream that takes nothing.</summary>
    private sealed class FullDisk : MemoryStream
    {
        internal static readonly IOException Failure = new("No space is left.");

        internal int Attempts { get; private set; }

        public override void Write(byte[] buffer, int offset, int count)
        {
            Attempts++;
            throw Failure;
        }
    }
}
