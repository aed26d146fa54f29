using System;
using System.IO;
using System.Linq;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Blocks;

public class MarkingTests
{
    private static readonly SkirtBlock Block = SkirtBlock.For(Bodies.Inches("29 1/2", "39 3/4")).Draft();

    private static MarkedFigure Mark(string figure, string value) => Marking.Of(Block, TapeStep.Eighth, (figure, value)).Figures.Single();

    // Half of hip 39 3/4 with ease 1 is 20 3/8; a quarter of waist 29 1/2 is 7 3/8: common practice, no source. Half a mark of an eighth is 1/16.
    [Theory]
    [InlineData("box width", "20 3/8", MarkVerdict.Right)]
    [InlineData("box width", "20 7/16", MarkVerdict.Right)]
    [InlineData("box width", "20 1/2", MarkVerdict.Wrong)]
    [InlineData("box width", "51.75 cm", MarkVerdict.Right)]
    [InlineData("back waist", "7 3/8", MarkVerdict.Right)]
    [InlineData("back waist", "7 5/8", MarkVerdict.Wrong)]
    [InlineData("CB waist level to CF waist level", "20 3/8", MarkVerdict.Right)]
    [InlineData("CB waist level to CF waist level, across", "20 3/8", MarkVerdict.Right)]
    [InlineData("CB waist level to CF waist level, up", "0", MarkVerdict.Right)]
    [InlineData("CB waist level to CB hem", "24 1/4", MarkVerdict.Wrong)]
    [InlineData("hem line", "20 3/8", MarkVerdict.Right)]
    [InlineData("front waist dart 1 length", "5", MarkVerdict.Right)]
    [InlineData("front waist dart 1", "2", MarkVerdict.Wrong)]
    public void AFigure_IsMarkedAgainstTheBlock(string figure, string value, MarkVerdict verdict) => Assert.Equal(verdict, Mark(figure, value).Verdict);

    // A draft by hand to the nearest eighth is what a careful student makes: none of its figures may be called wrong.
    [Property(MaxTest = 40)]
    public Property ADraftOffTheTape_IsNowhereWrong() => Prop.ForAll(Gen.Elements(Bodies.Ansur.AsEnumerable()).ToArbitrary(), body =>
    {
        SkirtBlock block = SkirtBlock.For(body).Draft();
        TapeStep tape = TapeStep.Eighth;
        (string, string)[] asked = [.. block.Panels.SelectMany(panel => panel.Edges.Select(edge => (EdgeOf.Panel(panel.Name, edge.Name).ToString(), "0"))),
            .. block.Trued.Landmarks.Skip(1).Select(landmark => ("CB waist level to " + landmark.Name.Text, "0"))];
        MarkedFigure[] key = [.. Marking.Of(block, tape, asked).Figures];

        Marking marking = Marking.Of(block, tape, [.. key.Select(figure => (figure.Name, Read(figure.OffTape!.Value)))]);

        return (!marking.Wrong.Any() && !marking.NotMarked.Any()).Label(string.Join("\n", marking.Wrong));
    });

    // To the eighth, as one reads it.
    private static string Read(Length length) => (Math.Round(length.Inches * 8) / 8).ToString(System.Globalization.CultureInfo.InvariantCulture) + " in";

    [Fact]
    public void WhatIsWrong_NamesItsStepAndWorking()
    {
        MarkedFigure wrong = Mark("box width", "20 7/8");

        Assert.Equal((MarkVerdict.Wrong, 2), (wrong.Verdict, wrong.Step!.Number));
        Assert.Equal(20.375, wrong.Expected!.Value.Inches, 1e-9);
        Assert.Equal(0.5, wrong.Off!.Value.Inches, 1e-9);
        Assert.Contains("1/2 of hip girth 39 3/4 + 1/2 of hip ease 1 = 20 3/8 in", wrong.ToString(), StringComparison.Ordinal);
        Assert.Contains("1/2 in too long: wrong", wrong.ToString(), StringComparison.Ordinal);
    }

    // The box is wrong, and so is all that is drawn from it; the length is not.
    [Fact]
    public void WhatFollows_IsToldWhatToMendFirst()
    {
        Marking marking = Marking.Of(Block, TapeStep.Eighth, ("back hem", "11"), ("box width", "21"), ("CB waist level to CB hem", "25"), ("back hip width", "11"));

        Assert.All(marking.Figures, figure => Assert.Equal(MarkVerdict.Wrong, figure.Verdict));
        Assert.Empty(marking.Figures[1].FollowsFrom);
        Assert.Empty(marking.Figures[2].FollowsFrom);
        Assert.Equal(["box width"], marking.Figures[3].FollowsFrom);
        Assert.Contains("box width", marking.Figures[0].FollowsFrom);
        Assert.Contains("back hip width", marking.Figures[0].FollowsFrom);
        Assert.Contains("Follows from box width: mend that first.", marking.ToString(), StringComparison.Ordinal);
    }

    // Who leaves out the truing has the figure of the hand draft.
    [Fact]
    public void TheFigureBeforeTruing_IsKnown()
    {
        Block tailored = SkirtBlock.For(Bodies.Millimetres(1100, 1105)).Draft();
        foreach (Block block in new[] { tailored, Block })
        {
            MarkedFigure expected = Marking.Of(block, TapeStep.SixtyFourth, ("CF waist level to front side waist", "0")).Figures[0];
            double byHand = block.Drafted.Find("CF waist level").Position.DistanceTo(block.Drafted.Find("front side waist").Position).Millimeters;
            MarkedFigure untrued = Marking.Of(block, TapeStep.SixtyFourth, ("CF waist level to front side waist", byHand.ToString(System.Globalization.CultureInfo.InvariantCulture) + " mm")).Figures[0];

            Assert.True(untrued.Verdict != MarkVerdict.Wrong || untrued.IsUntrued, $"{expected.Expected} {byHand} {untrued}");
        }
    }

    [Theory]
    [InlineData("box width,20 3/8,5", 1, null, "PC1302: Row 1, line 2, column 1 to 2")]
    [InlineData("box width", 1, null, "There are 1 cells")]
    [InlineData("\nnothing such,7", 1, "figure", "PC1302: Row 1, line 3, column 1 (figure)")]
    [InlineData("box width,", 1, "value", "PC1302: Row 1, line 2, column 2 (value)")]
    [InlineData("box width,\"31,5\"", 1, "value", "two ways")]
    [InlineData("box width,wide", 1, "value", "column 2 (value)")]
    [InlineData("back waist,7 3/8\nbox width,\"20", 2, null, "Row 2, line 3")]
    public void ABadRow_SaysRowAndColumn_AndTheRestIsMarked(string rows, int row, string? column, string problem)
    {
        Marking marking = Marking.Read(Block, TapeStep.Eighth, new StringReader("Figure,Value\n" + rows + "\nback waist,7 3/8\n"));

        MarkedFigure bad = marking.NotMarked.First();
        Assert.Equal((row, column), (bad.Row, bad.Column));
        Assert.NotNull(bad.Code);
        Assert.Contains(problem, bad.Problem, StringComparison.Ordinal);
        Assert.True(marking.Figures.Count == 1 || marking.Figures[^1].Verdict == MarkVerdict.Right || problem.StartsWith("Row 2", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("box width,20 3/8\n")]
    [InlineData("value,figure\n")]
    public void AnotherTable_IsRefused(string text)
        => Assert.StartsWith("PC1301", Assert.Throws<FormatException>(() => Marking.Read(Block, TapeStep.Eighth, new StringReader(text))).Message, StringComparison.Ordinal);

    [Fact]
    public void ATableOfTooManyRows_IsRefused()
    {
        string rows = string.Concat(Enumerable.Repeat("box width,20 3/8\n", 2001));

        Assert.StartsWith("PC1304", Assert.Throws<FormatException>(() => Marking.Read(Block, TapeStep.Eighth, new StringReader("figure,value\n" + rows))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void CsvAndPage_HoldEveryFigure()
    {
        Marking marking = Marking.Of(Block, TapeStep.Eighth, ("box width", "21"), ("<b>,\"x\"", "3"), ("back waist", "7 3/8"));

        string[] rows = marking.ToCsv().TrimEnd('\n').Split('\n');
        Assert.Equal("row,figure,verdict,drawn_mm,expected_mm,off_mm,step,follows_from,problem", rows[0]);
        Assert.Equal("1,box width,wrong,533.4,517.525,15.875,2,,", rows[1]);
        Assert.StartsWith("2,\"<b>,\"\"x\"\"\",not marked,,,,,,", rows[2], StringComparison.Ordinal);
        Assert.StartsWith("3,back waist,right,187.325,187.325,0,,,", rows[3], StringComparison.Ordinal);
        string page = marking.ToHtml();
        Assert.Equal("html", XDocument.Parse(page.Replace("<!DOCTYPE html>\n", string.Empty, StringComparison.Ordinal)).Root!.Name.LocalName);
        Assert.DoesNotContain("<b>", page, StringComparison.Ordinal);
    }
}
