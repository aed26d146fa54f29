using System;
using System.Collections.Concurrent;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Pieces;
using UnitsNet;
using UnitsNet.Units;
using static Pattern.Core.Tests.Output.LabelBoxes;
using static Pattern.Core.Tests.Output.SvgFile;

namespace Pattern.Core.Tests.Output;

public class PieceDrawingTests
{
    private static readonly PieceLabel Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize("12").Dated(new DateTime(2026, 3, 14));

    private static readonly SkirtPatternOptions Lined = new() { Label = Label, Lining = LiningChoice.Loose };

    private static readonly ConcurrentDictionary<string, Lazy<Drawing>> LinedDrawings = new(StringComparer.Ordinal);

    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    // Read back by an XML reader, measured by SvgPathProperties, compared with the model.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToSvg_EveryEdgeOfEveryPiece_MeasuresAsInTheModel(string skirt)
    {
        PieceSet pieces = SkirtPattern.From(DrawnSkirts.Draft(skirt), Lined);
        XElement[] paths = [.. Paths(pieces.Draw().ToSvg())];

        foreach (PatternPiece piece in pieces.Pieces)
        {
            XElement[] own = [.. paths.Where(path => Value(path, "data-panel") == piece.Name.Text)];
            foreach (PieceEdge edge in piece.Edges)
            {
                PanelEdge sewn = piece.Panel.FindEdge(edge.Name);
                Assert.Equal(edge.CutLine.Length.Millimeters, own.Where(path => Value(path, "data-cut") == edge.Name.Text).Sum(Measured), 0.01);
                Assert.Equal(edge.IsOnFold ? 0 : sewn.Stretches.Sum(stretch => stretch.Length.Millimeters), own.Where(path => Value(path, "data-edge") == edge.Name.Text).Sum(Measured), 0.01);
                Assert.Equal(edge.IsOnFold ? 0 : sewn.Stretches.Count, own.Count(path => Value(path, "data-edge") == edge.Name.Text));
            }

            Assert.Equal(piece.CutPerimeter.Millimeters, own.Where(path => (path.Attribute("data-cut") ?? path.Attribute("data-corner")) is not null).Sum(Measured), 0.01);
        }
    }

    [Fact]
    public void Draw_APieceOnTheFold_DrawsNoCutLineThere()
    {
        PatternPiece front = SkirtPattern.From(SamplePieces.Skirt).Find(PanelName.Front);
        Drawing drawing = front.Draw();

        PathMark fold = Assert.Single(drawing.Marks<PathMark>(LayerName.Folds), mark => mark.Role == LineRole.Fold);
        Assert.Equal((MarkPart.Cut, EdgeName.Centre), (fold.Facts!.Part, fold.Facts.Edge));
        Assert.DoesNotContain(drawing.Marks<PathMark>(LayerName.CutLines), mark => mark.Facts!.Part == MarkPart.Cut && mark.Facts.Edge == EdgeName.Centre);
        Assert.DoesNotContain(drawing.Marks<PathMark>(LayerName.SeamLines), mark => mark.Facts!.Edge == EdgeName.Centre);
        Assert.Contains(drawing.Marks<TextMark>(LayerName.Folds), mark => mark.Text == "centre front, on the fold");

        // The arrows of the sign stand upon the fold.
        PathMark sign = Assert.Single(drawing.Marks<PathMark>(LayerName.Folds), mark => mark.Role == LineRole.FoldSign);
        Assert.Equal(ArrowEnds.Both, sign.Arrows);
        Assert.All(new[] { sign.Path.Start, sign.Path.End }, tip => Assert.Equal(0, fold.Path.ClosestTo(tip).Distance.Millimeters, 1e-9));
    }

    [Fact]
    public void Draw_AnUnfoldedPiece_HasNoFold() => Assert.False(SkirtPattern.From(SamplePieces.Skirt).Find(PanelName.Front).Unfolded().Draw().TryFindLayer(LayerName.Folds, out _));

    // Common practice, no source: half an inch on seams, an inch at the zip, an inch and a half to turn up.
    [Theory]
    [InlineData("side, \u00BD\u2033 allowance")]
    [InlineData("centre back seam, zip, 1\u2033 allowance")]
    [InlineData("hem, 1\u00BD\u2033 to turn up")]
    public void Draw_EveryEdge_SaysItsAllowance(string words) => Assert.Contains(
        SkirtPattern.From(SamplePieces.Skirt).Find(PanelName.Back).Draw(new PieceDrawingOptions { Tape = TapeStep.Eighth }).Marks<TextMark>(LayerName.Names),
        mark => mark.Text == words);

    [Fact]
    public void Draw_MarksOfAPiece_AreAllThere()
    {
        PatternPiece back = SkirtPattern.From(SamplePieces.Skirt, Lined).Find(PanelName.Back);
        Drawing drawing = back.Draw();

        Assert.Equal(back.Notches.Sum(notch => notch.Cuts.Count), drawing.Marks<PathMark>(LayerName.Notches).Count());
        Assert.Equal(back.Darts.Sum(dart => dart.DrillHoles.Count), drawing.Marks<PointMark>(LayerName.DrillHoles).Count());
        Assert.Equal(back.Darts.Count * 2, drawing.Marks<PathMark>(LayerName.Darts).Count(mark => mark.Role == LineRole.DartLeg));
        Assert.Equal(back.InternalLines.Count, drawing.Marks<PathMark>(LayerName.InternalLines).Count());
        Assert.Equal(
            back.InternalLines.Select(line => line.Name).OrderBy(name => name, StringComparer.Ordinal),
            drawing.Marks<TextMark>(LayerName.InternalLines).Select(mark => mark.Text).OrderBy(name => name, StringComparer.Ordinal));
        Assert.Equal(back.Label!.Lines.Select(line => line.Text), drawing.Marks<TextMark>(LayerName.Labels).Select(mark => mark.Text));
        Assert.Contains(drawing.Marks<PathMark>(LayerName.Labels), mark => Math.Abs(mark.Path.Length.Millimeters - 50) < 1e-9);
    }

    [Fact]
    public void Draw_ANotchWithoutAllowance_IsADot()
    {
        PatternPiece bare = PatternPiece.From(SamplePieces.Skirt.Back);

        Assert.Equal(bare.Notches.Sum(notch => notch.Cuts.Count), bare.Draw().Marks<PointMark>(LayerName.Notches).Count());
    }

    [Fact]
    public void Draw_EveryGrainline_RunsUpTheSheet()
    {
        PathMark[] grain = [.. SkirtPattern.From(SamplePieces.Skirt, Lined).Draw().Marks<PathMark>(LayerName.Grainlines)];

        Assert.Equal(5, grain.Length);
        Assert.All(grain, line => Assert.Equal(line.Path.Start.X.Millimeters, line.Path.End.X.Millimeters, 1e-9));
    }

    // Words are read from below or from the right, those of a turned piece too: upwards wherever a line leans less than 15 degrees.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NoWordStandsOnItsHead(string skirt) => Assert.All(
        LinedDrawing(skirt).Marks<TextMark>(),
        text => Assert.True(Math.Cos(text.Angle.Radians - (Math.PI / 12)) > -0.01, $"{text.Text} at {text.Angle}"));

    [Fact]
    public void Draw_TitleBlock_HasTheCutListTheSizeAndTheDay()
    {
        string[] words = [.. SkirtPattern.From(SamplePieces.Skirt, Lined).Draw().Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text)];

        Assert.All(
            new[] { "Act 2 skirt", "for Rosalind", "2026-03-14", "12", "cut 1 of main cloth on the fold", "cut 2 of main cloth, as a pair", "cut 1 of main cloth; cut 1 of interfacing", "cut 2 of lining, as a pair" },
            expected => Assert.Contains(expected, words));
    }

    [Fact]
    public void Draw_SheetWidth_HoldsTheRows()
    {
        PieceSet pieces = SkirtPattern.From(SamplePieces.Skirt, Lined);
        Length widest = pieces.Pieces.Max(piece => piece.Name == SkirtPattern.Waistband ? piece.Bounds.Height : piece.Bounds.Width);

        foreach (double width in new[] { 428.0, 600, 914.4, 1500 })
        {
            Drawing drawing = pieces.Draw(new PieceDrawingOptions { SheetWidth = Length.FromMillimeters(width) });
            Assert.True(drawing.Bounds.Width.Millimeters <= width + 1e-6, $"{drawing.Bounds.Width} for {width}");
        }

        Assert.True(widest.Millimeters < 400);
    }

    // Once cut out, nothing but the piece itself says what it is.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_PiecesWithoutLabels_AreNamedAllTheSame(string skirt)
    {
        Drawing drawing = SkirtPattern.From(DrawnSkirts.Draft(skirt), new SkirtPatternOptions { Lining = LiningChoice.Loose }).Draw();
        string[] words = [.. drawing.Marks<TextMark>(LayerName.Labels).Select(mark => mark.Text)];

        Assert.All(new[] { "FRONT", "BACK", "WAISTBAND", "FRONT LINING", "BACK LINING" }, name => Assert.Contains(name, words));
        Assert.Contains("cut 2 of main cloth, as a pair", words);
        Assert.Empty(Collisions(drawing));
    }

    [Fact]
    public void Draw_NoTapeGiven_UsesTheOneThatTheAllowancesLieOn()
    {
        // A panel knows no body.
        string[] Words(Length seam) => [.. PatternPiece.From(SamplePieces.Skirt.Front).WithAllowance(seam).Draw().Marks<TextMark>(LayerName.Names).Select(mark => mark.Text)];

        Assert.Contains("side, \u215D\u2033 allowance", Words(Tape.Inches("5/8")));
        Assert.Contains("side, 1.5\u00A0cm allowance", Words(Length.FromMillimeters(15)));
    }

    // 1/2 in is 1.27 cm by definition.
    [Theory]
    [InlineData(LengthUnit.Inch, "side, \u00BD\u2033 allowance")]
    [InlineData(LengthUnit.Centimeter, "side, 1.27\u00A0cm allowance")]
    public void Draw_PiecesOfABody_SpeakItsUnit(LengthUnit unit, string words)
    {
        var body = BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, "64 cm").With(BodyMeasurement.HipGirth, "92 cm");
        PieceSet pieces = SkirtPattern.From(SkirtBlock.For(body).Draft(), new SkirtPatternOptions { SeamAllowance = Length.FromMillimeters(12.7) });
        string[] Words(PieceDrawingOptions options) => [.. pieces.Draw(options).Marks<TextMark>(LayerName.Names).Select(mark => mark.Text)];

        Assert.Contains(words, Words(new PieceDrawingOptions()));
        Assert.Contains("side, \u00BD\u2033 allowance", Words(new PieceDrawingOptions { Tape = TapeStep.Quarter }));
    }

    [Fact]
    public void Draw_LabelsThatDiffer_TitleSaysOnlyWhatAllSay()
    {
        PieceSet pieces = PieceSet.Of(
            PatternPiece.From(SamplePieces.Skirt.Front).WithLabel(PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize("12")),
            PatternPiece.From(SamplePieces.Skirt.Back).WithLabel(PieceLabel.For("Act 2 skirt").ForWhom("Celia").WithSize("16")));
        Drawing drawing = pieces.Draw();
        string[] words = [.. drawing.Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text)];

        Assert.Contains("Act 2 skirt", words);
        Assert.DoesNotContain(words, word => word.Contains("Rosalind", StringComparison.Ordinal) || word.Contains("Celia", StringComparison.Ordinal));
        Assert.Equal("Act 2 skirt, pieces to cut", drawing.Title);
    }

    // A strip of 3 mm holds no words at its ends; the sheet says in its notes what they would have said.
    [Fact]
    public void Draw_EdgesWithoutRoomForWords_AreNamed()
    {
        Panel strip = SamplePieces.Quad((0, 3), (300, 3), (300, 0), (0, 0));
        string[] words = [.. PatternPiece.From(strip).WithAllowance(Length.FromMillimeters(6)).Draw().Marks<TextMark>().Select(mark => mark.Text)];

        // Title blocks break lines.
        Assert.Contains(
            "Edges without room for words: back: side, 0.6\u00A0cm allowance; back: centre back seam, 0.6\u00A0cm allowance.",
            string.Join(" ", words));
        Assert.Contains("BACK", words);
    }

    [Fact]
    public void Draw_FailedChecks_ShoutsAcrossEveryPiece()
    {
        PieceSet pieces = SkirtPattern.From(SamplePieces.Skirt);
        var failure = new Finding("allowance of side", "front", FindingKind.Length, FindingRelation.AtLeast, 12.1, 12.7, 0.01);
        Drawing drawing = new PieceSheet(pieces, new CheckReport([.. pieces.Report.Findings, failure]), new PieceDrawingOptions()).Draw();

        Assert.Equal(LayerName.Warning, drawing.Layers[0].Name);
        Assert.Equal(3, drawing.Marks<TextMark>(LayerName.Warning).Count(mark => mark.Text == "DO NOT CUT"));
        Assert.Contains("DO NOT CUT", drawing.Description);
        Assert.Empty(Collisions(drawing.Without(LayerName.Warning)));
    }

    [Fact]
    public void Draw_NoPieces_IsRefused() => Assert.Contains("PC6101", Assert.Throws<ArgumentException>(() => PieceSet.Of().Draw()).Message);

    [Fact]
    public void SheetWidth_OutsideItsRange_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new PieceDrawingOptions { SheetWidth = Length.FromMillimeters(427) });
        Assert.ThrowsAny<ArgumentException>(() => new PieceDrawingOptions { SheetWidth = Length.FromMeters(double.NaN) });
    }

    // In black and white, roles that run side by side still differ by weight or dash.
    [Fact]
    public void LineRoles_OnOneSheetOfPieces_DifferInWeightOrDash()
    {
        LineRole[] roles = [LineRole.Cut, LineRole.Stitching, LineRole.DartLeg, LineRole.Fold, LineRole.Placement, LineRole.Level, LineRole.Grain, LineRole.DrillHole];

        Assert.Equal(roles.Length, roles.Select(role => (role.Weight.Millimeters, string.Join(" ", role.Dashes))).Distinct().Count());
        Assert.All(roles, role => Assert.True(role == LineRole.Cut || role.Weight < LineRole.Cut.Weight));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NoLabelMeetsALineAPointOrAnotherLabel(string skirt) => Assert.Empty(Collisions(LinedDrawing(skirt)));

    // No clock, no chance, no order of a dictionary in it. That it is the right drawing is for the other tests.
    [Fact]
    public void Draw_DraftedAndDrawnTwice_GivesTheSameBytes()
    {
        string Once() => SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft(), Lined).Draw().ToSvg();

        Assert.Equal(Once(), Once());
    }

    // Real bodies and hostile ones: no word covers anything, no piece covers another, every edge of every piece is drawn, and all stay on the sheet.
    [Property(MaxTest = 30)]
    public Property Draw_AnyBody_PiecesStandApartAndWordsStandFree() => Prop.ForAll(Arb.From(from body in Bodies.Any from asked in Bodies.Options select (body, asked)), given =>
    {
        PieceSet pieces;
        Drawing drawing;
        try
        {
            pieces = SkirtPattern.From(given.asked.Apply(SkirtBlock.For(given.body)).Draft(), Lined);
            drawing = pieces.Draw();
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal) || SkirtRefused.IsCut(refusal))
        {
            // There is nothing to draw.
            return true;
        }

        var faults = new List<string>(Collisions(drawing.Without(LayerName.Warning)));
        BoundingBox[] boxes = [.. drawing.Marks<PathMark>().Where(mark => mark.Facts?.Part is MarkPart.Cut or MarkPart.CutCorner)
            .GroupBy(mark => mark.Facts!.Panel, (_, marks) => marks.Select(mark => mark.Path.Bounds).Aggregate((one, other) => one.Union(other)))];
        for (int i = 0; i < boxes.Length; i++)
        {
            faults.AddRange(boxes.Take(i).Where(other => other.Overlaps(boxes[i])).Select(_ => $"piece {i} covers another"));
            faults.AddRange(drawing.Bounds.Contains(boxes[i].LowerLeft) && drawing.Bounds.Contains(boxes[i].UpperRight) ? [] : [$"piece {i} leaves the sheet"]);
        }

        int edges = pieces.Pieces.Sum(piece => piece.Edges.Count);
        faults.AddRange(drawing.Marks<PathMark>().Count(mark => mark.Facts?.Part == MarkPart.Cut) == edges ? [] : ["an edge is missing"]);
        return faults.Count == 0 ? true : throw new InvalidOperationException(string.Join("; ", faults));
    });

    // Drawn once: it is immutable, and several tests look at it.
    private static Drawing LinedDrawing(string skirt)
        => LinedDrawings.GetOrAdd(skirt, _ => new Lazy<Drawing>(() => SkirtPattern.From(DrawnSkirts.Draft(skirt), Lined).Draw())).Value;
}
