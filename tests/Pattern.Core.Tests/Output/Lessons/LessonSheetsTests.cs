using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

public class LessonSheetsTests
{
    private const double MarginMm = 13.9;

    public static TheoryData<string, string> Sheets
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (string skirt in DrawnSkirts.Names)
            {
                data.Add(skirt, skirt.Length % 2 == 0 ? "A4" : "Letter");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Arrange_AnySheet_KeepsEveryMarkInsideTheMarginsAndSaysWhatThePageSays(string skirt, string paper)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        foreach (StepSheet sheet in new[] { StepSheet.Of(block).WithReasons(), StepSheet.Of(block).AsExercise(), StepSheet.Of(block).AsForm() })
        {
            IReadOnlyList<PrintSheet> printed = LessonSheets.Arrange(sheet.ToLesson(), PaperSize.Find(paper));

            AssertInside(printed);
            string words = Words(printed);
            string[] lines = [.. printed.SelectMany(Marks).OfType<TextMark>().Select(mark => mark.Text)];
            Assert.All(block.Steps, step => Assert.Equal(1, lines.Count(line => line == "Step " + step.Number)));
            foreach (LessonParagraph paragraph in sheet.ToLesson().Parts.OfType<LessonEntry>().SelectMany(entry => entry.Words))
            {
                Assert.Contains(Regex.Replace(LessonText.Joined(paragraph.Words).Replace(WorkedText.Blank, "__________", StringComparison.Ordinal), " +", " "), words);
            }
        }
    }

    // A step and its picture stand on one sheet: what the contents say of it is where its heading is.
    [Fact]
    public void Arrange_TheExample_PrintsTheSheetOfEachEntryIntoTheContents()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        IReadOnlyList<PrintSheet> printed = LessonSheets.Arrange(StepSheet.Of(block).ToLesson(), PaperSize.A4);

        string first = Words([printed[0]]);
        Match[] entries = Regex.Matches(first, @"Step (?<step>\d+), page (?<page>\d+)").ToArray();
        Assert.NotEmpty(entries);
        Assert.All(entries, entry => Assert.Contains(
            "Step " + entry.Groups["step"].Value,
            Marks(printed[int.Parse(entry.Groups["page"].Value, System.Globalization.CultureInfo.InvariantCulture) - 1]).OfType<TextMark>().Select(mark => mark.Text)));
        Assert.Contains($"Page {printed.Count} of {printed.Count}", Words([printed[^1]]));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\u05E8\u05D5\u05D6\u05DC\u05D9\u05E0\u05D3 \u202E dnilasoR")]
    [InlineData("\u0001\u0000z")]
    [InlineData("\U0001F9F5 ______")]
    [InlineData("a\r\nb\tc")]
    public void Arrange_AHostileName_StaysInsideTheMargins(string name)
        => AssertInside(LessonSheets.Arrange(StepSheet.Of(SkirtBlock.For(Bodies.Example.Named(name)).Draft()).ToLesson(), PaperSize.A4));

    // 4,000 wide letters without a place to break are broken all the same, over more than one sheet.
    [Fact]
    public void Arrange_AVeryLongName_IsBrokenWhereItHasToBe()
    {
        string name = new('w', 4000);
        IReadOnlyList<PrintSheet> printed = LessonSheets.Arrange(StepSheet.Of(SkirtBlock.For(Bodies.Example.Named(name)).Draft()).ToLesson(), PaperSize.A4);

        AssertInside(printed);
        string[] heading = [.. printed.SelectMany(Marks).OfType<TextMark>().Where(mark => mark.Text.Contains("www", StringComparison.Ordinal) && mark.Weight == TextWeight.Bold).Select(mark => mark.Text)];
        Assert.Equal(4000, heading.Sum(line => line.Count(c => c == 'w')));
    }

    [Fact]
    public void Arrange_NarrowPaper_IsRefusedWithWhatItNeeds()
    {
        LessonPage page = StepSheet.Of(SkirtBlock.For(Bodies.Example).Draft()).ToLesson();
        AssertInside(LessonSheets.Arrange(page, PaperSize.A5));

        var refusal = Assert.Throws<ArgumentException>(() => LessonSheets.Arrange(page, PaperSize.Of("card", Length.FromMillimeters(100), Length.FromMillimeters(150))));

        Assert.Contains("card", refusal.Message);
    }

    [Theory]
    [InlineData("one two three", 14, new[] { "one", "two", "three" })]
    [InlineData("  one   two  ", 1000, new[] { "one two" })]
    [InlineData("20 1/2 in", 1000, new[] { "20\u00A01/2 in" })]
    [InlineData("", 10, new string[0])]
    public void Of_Words_BreaksBetweenThem(string words, double widthMm, string[] expected)
        => Assert.Equal(expected, LessonLineBreaks.Of(words, 5, TextWeight.Regular, widthMm));

    // No room at all still ends, a character to a line, and no character is halved.
    [Fact]
    public void Of_NoRoom_PutsACharacterOnEachLine()
        => Assert.Equal(["a", "\U0001F9F5", "b"], LessonLineBreaks.Of("a\U0001F9F5b", 5, TextWeight.Regular, 0));

    private static IEnumerable<DrawingMark> Marks(PrintSheet sheet) => sheet.Marks!.Layers.SelectMany(layer => layer.Marks);

    private static void AssertInside(IEnumerable<PrintSheet> printed) => Assert.All(printed, sheet =>
    {
        foreach (DrawingMark mark in Marks(sheet))
        {
            BoundingBox box = mark.Bounds;
            Assert.InRange(box.LeftMm, MarginMm, sheet.WidthMm);
            Assert.InRange(box.RightMm, 0, sheet.WidthMm - MarginMm);
            Assert.InRange(box.BottomMm, MarginMm - 2, sheet.HeightMm);
            Assert.InRange(box.TopMm, 0, sheet.HeightMm - MarginMm);
        }
    });

    private static string Words(IEnumerable<PrintSheet> printed) => string.Join(" ", printed.SelectMany(Marks).OfType<TextMark>().Select(mark => mark.Text));
}
