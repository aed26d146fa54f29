using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Pieces;

public class LabelTests
{
    private static readonly PieceLabel Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithMeasurements(Bodies.Example, TapeStep.Quarter).Dated(new DateTime(2026, 3, 14)).WithNote("make a toile first");

    // ISO 3098 lettering is at least 2.5 mm tall (from memory); a capital is about 0.7 of the size of its type.
    [Property(MaxTest = 60)]
    public Property Label_OfAnySkirt_CoversNothingAndIsLegible() => Prop.ForAll(CutLineTests.Skirts, any =>
    {
        foreach (PatternPiece piece in SkirtPattern.From(any.Block, new SkirtPatternOptions { Label = Label }).Pieces)
        {
            LabelBlock label = piece.Label!;
            Assert.Equal(50, label.ScaleCheck.Length.Millimeters, 9);
            Assert.All(label.Lines, line => Assert.True(line.TypeSize.Millimeters >= 3.5));
            Assert.All(label.Lines, line => Assert.True(label.Bounds.Contains(line.Start)));
            Assert.True(label.Bounds.Contains(label.ScaleCheck.Start) && label.Bounds.Contains(label.ScaleCheck.End));
            Assert.All(LinesOf(piece), path => Assert.All(path.PointsAtEqualLengths(300), p => Assert.False(label.Bounds.Contains(p))));
            Assert.Equal(Containment.Inside, piece.SeamLine.ContainmentOf(label.Bounds.Centre));
            Assert.Equal(Containment.Inside, piece.SeamLine.ContainmentOf(label.Bounds.LowerLeft));
        }
    });

    // A strip that is just as long as name and scale line: rounding must not push the end of the line out of the label.
    [Fact]
    public void Label_OfAnyStrip_HoldsItsScaleLine()
    {
        int held = 0;
        for (int i = 0; i < 600; i++)
        {
            double at = 0.37 * i;
            double wide = 22 + (i % 20);
            double tall = 120 + (0.5 * i);
            PatternPiece strip = PatternPiece.From(Quad((at, at + tall), (at + wide, at + tall), (at + wide, at), (at, at))).WithLabel(PieceLabel.For("a"));
            if (strip.Label is { } label)
            {
                held++;
                Assert.True(label.Bounds.Contains(label.ScaleCheck.Start) && label.Bounds.Contains(label.ScaleCheck.End), $"{i}: {label.Bounds}, {label.ScaleCheck}");
            }
        }

        Assert.True(held > 100);
    }

    // Half of a bent band on the fold, 1 1/2 in deep, has no room for a label: the pieces were not to be cut for that. Capitals of 1.8 mm (ISO 3098, from memory) are 2.5 mm of type.
    [Fact]
    public void Label_OfAContourBand_IsSmallOrLeftOutWithAdvice()
    {
        BodyMeasurements rosalind = BodyMeasurements.In(UnitsNet.Units.LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4");
        Block skirt = SkirtBlock.For(rosalind).WithLength(Tape.Inches("26")).Draft().ContourBand();

        var pieces = SkirtPattern.From(skirt, new SkirtPatternOptions { Label = PieceLabel.For("Contour band").WithMeasurements(rosalind, TapeStep.Eighth) });

        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Contains("front band", pieces.Report.Advice.Where(advice => advice.Check == "label has room").Select(advice => advice.Place));
        Assert.All(pieces.Pieces.Where(piece => piece.Label is not null), piece => Assert.All(piece.Label!.Lines, line => Assert.True(line.TypeSize >= Mm(2.5) - Mm(1e-9), line.TypeSize.ToString())));
    }

    [Fact]
    public void Label_WithoutRoom_IsAdviceAndNoException()
    {
        PatternPiece loop = PatternPiece.From(Quad((0, 20), (40, 20), (40, 0), (0, 0))).WithAllowance(Mm(10)).WithLabel(Label);

        Assert.Null(loop.Label);
        Assert.True(loop.Report.Passed);
        Finding advice = Assert.Single(loop.Report.Advice);
        Assert.Equal("label has room", advice.Check);
    }

    // Every measurement that a fitting room takes of one body: far more than one line holds.
    [Fact]
    public void WithMeasurements_OfABodyMeasuredWithCare_StandsOnSeveralLines()
    {
        BodyMeasurements body = BodyMeasurement.All.Aggregate(BodyMeasurements.In(UnitsNet.Units.LengthUnit.Inch), (one, key) => one.With(key, (key.LeastPlausible + key.MostPlausible) / 2));
        PieceLabel label = PieceLabel.For("Act 2 skirt").WithMeasurements(body);
        PatternPiece piece = PatternPiece.From(Skirt.Back).WithLabel(label);

        Assert.True(body.Describe(TapeStep.Eighth).Length > 300);
        Assert.Equal(body.Describe(TapeStep.Eighth), label.Size);
        string[] lines = [.. piece.Label!.Lines.Select(line => line.Text)];
        Assert.All(lines, line => Assert.True(line.Length <= 60, line));
        Assert.Contains(label.Size!, string.Join(" ", lines));
        Assert.True(piece.Report.Passed);
    }

    [Fact]
    public void WithSize_LongerThanALine_BreaksAfterCommasAndBlanksAndInLongWords()
    {
        string[] Lines(string size) => [.. PatternPiece.From(Skirt.Back).WithLabel(PieceLabel.For("Cape").WithSize(size)).Label!.Lines.Skip(2).SkipLast(1).Select(line => line.Text)];
        string word = new('a', 50);

        Assert.Equal([word + ",", word], Lines(word + ", " + word));
        Assert.Equal([word, word], Lines(word + " " + word));
        Assert.Equal([new string('b', 60), "bbb"], Lines(new string('b', 63)));
        Assert.Throws<ArgumentException>(() => PieceLabel.For("Cape").WithSize(new string('a', 2001)));
    }

    [Fact]
    public void Label_InANarrowUprightPiece_RunsUp()
    {
        CurvePath stitching = CurvePath.FromLine(LineSegment.Between(At(50, 10), At(50, 590)));

        PatternPiece strip = PatternPiece.From(Quad((0, 600), (60, 600), (60, 0), (0, 0))).WithLabel(Label).WithInternalLine("stitch here", InternalLineKind.Stitching, stitching);

        Assert.Equal(Direction.Up, strip.Label!.Reading);
    }

    [Fact]
    public void PieceLabel_Lines_SayWhatTheCallerSaid()
    {
        PatternPiece piece = PatternPiece.From(Skirt.Back).Cut(2, ClothName.Main).WithLabel(Label);

        Assert.Equal(
            ["BACK", "Act 2 skirt", "for Rosalind", "waist girth 32 in, hip girth 40 in", "cut 2 of main cloth, as a pair", "make a toile first", "2026-03-14", "this line is 5 cm long"],
            piece.Label!.Lines.Select(line => line.Text));
    }

    private static IEnumerable<CurvePath> LinesOf(PatternPiece piece)
    {
        yield return piece.CutLine;
        yield return piece.SeamLine;
        yield return CurvePath.FromLine(piece.Grainline);
        foreach (LineSegment line in piece.Darts.SelectMany(d => d.Legs.Append(d.FoldLine)))
        {
            yield return CurvePath.FromLine(line);
        }

        foreach (InternalLine line in piece.InternalLines)
        {
            yield return line.Path;
        }
    }
}
