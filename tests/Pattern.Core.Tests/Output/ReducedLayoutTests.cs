using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Patterns;
using Pattern.Core.Tests.Blocks;

namespace Pattern.Core.Tests.Output;

public class ReducedLayoutTests
{
    private static readonly Drawing Skirt = SkirtBlock.For(Bodies.Example).WithLength(Tape.Inches("24")).Draft().Draw();

    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    // Each seam line is a half, a quarter, a fifth as long: the closed form of a change of scale.
    [Theory]
    [InlineData(Reduction.Half, 2)]
    [InlineData(Reduction.Quarter, 4)]
    [InlineData(Reduction.Fifth, 5)]
    public void Arrange_ABlock_HasEverySeamLineAtTheScale(Reduction scale, int parts)
    {
        DrawingMark[] small = Marks(SheetLayout.ReducedOn(PaperSize.A3, scale).Arrange(Skirt));
        double[] expected = [.. Skirt.Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Where(mark => mark.Role == LineRole.Seam).Select(mark => mark.Path.Length.Millimeters / parts).Order()];

        double[] drawn = [.. small.OfType<PathMark>().Where(mark => mark.Role == LineRole.LessonSeam).Select(mark => mark.Path.Length.Millimeters).Order()];

        Assert.NotEmpty(expected);
        Assert.Equal(expected.Length, drawn.Length);
        Assert.All(expected.Zip(drawn), pair => Assert.Equal(pair.First, pair.Second, 1e-6));
    }

    // 10 cm of cloth at a quarter are 25 mm of paper, 4 in are 1 in.
    [Fact]
    public void Arrange_AtAQuarter_SaysItsScaleNeverToCutAndShowsSoMuchCloth()
    {
        PrintSheet sheet = Assert.Single(SheetLayout.ReducedOn(PaperSize.A4, Reduction.Quarter).Arrange(Skirt));
        DrawingMark[] marks = Marks([sheet]);

        Assert.Contains("Quarter scale, 1:4: never to cut.", Words(marks));
        Assert.Contains("10 cm of cloth", Words(marks));
        Assert.Contains("4 in of cloth", Words(marks));
        double[] bars = [.. marks.OfType<PathMark>().Take(6).Select(mark => mark.Path.Length.Millimeters)];
        Assert.Contains(bars, bar => Math.Abs(bar - 25) < 1e-6);
        Assert.Contains(bars, bar => Math.Abs(bar - 25.4) < 1e-6);
        Assert.Equal("1:4", sheet.Name);
        Assert.Contains("never to cut", sheet.Marks!.Description);
    }

    // An exercise book is A4, A5 or Letter: a skirt block goes on one page of each at a quarter, its names inside and apart.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Arrange_AnyBlockAtAQuarter_FitsAnExerciseBook(string skirt)
    {
        Drawing drawing = DrawnSkirts.Draft(skirt).Draw();
        foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter })
        {
            DrawingMark[] marks = Marks(SheetLayout.ReducedOn(paper, skirt == "long" ? Reduction.Fifth : Reduction.Quarter).Arrange(drawing));
            double longer = Math.Max(paper.Width.Millimeters, paper.Height.Millimeters);
            Assert.All(marks, mark => Assert.True(mark.Bounds.LeftMm >= 4.9 && mark.Bounds.BottomMm >= 4.9 && mark.Bounds.RightMm <= longer - 4.9 && mark.Bounds.TopMm <= longer - 4.9));
            Assert.Contains(marks.OfType<TextMark>(), mark => mark.Text.Contains("back", StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Arrange_PiecesOfASkirt_ShowTheirCutLines()
    {
        Drawing pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft()).Draw();

        DrawingMark[] marks = Marks(SheetLayout.ReducedOn(PaperSize.A3, Reduction.Quarter).Arrange(pieces));

        Assert.Equal(
            pieces.Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Count(mark => mark.Role == LineRole.Cut || mark.Role == LineRole.Seam),
            marks.OfType<PathMark>().Count(mark => mark.Role == LineRole.LessonSeam));
    }

    [Fact]
    public void Arrange_PaperThatIsTooSmall_IsRefusedWithBothSizes()
    {
        var refusal = Assert.Throws<ArgumentException>(() => SheetLayout.ReducedOn(PaperSize.A5, Reduction.Half).Arrange(Skirt));

        Assert.Contains("1:2", refusal.Message);
        Assert.Contains("A5", refusal.Message);
        Assert.ThrowsAny<ArgumentException>(() => SheetLayout.ReducedOn(PaperSize.A4, (Reduction)7));
    }

    [Fact]
    public void WithPhrases_AnInventedLanguage_LeavesNoEnglishWordInTheHeading()
    {
        string[] words = [.. Words(Marks(SheetLayout.ReducedOn(PaperSize.A4, Reduction.Quarter).WithPhrases(InventedLanguage.Book).Arrange(Skirt))).Skip(1).Take(3)];

        Assert.Empty(InventedLanguage.LeftOver(string.Join(" ", words)));
    }

    private static DrawingMark[] Marks(IEnumerable<PrintSheet> sheets) => [.. sheets.SelectMany(sheet => sheet.Marks!.Layers).SelectMany(layer => layer.Marks)];

    private static IEnumerable<string> Words(IEnumerable<DrawingMark> marks) => marks.OfType<TextMark>().Select(mark => mark.Text);
}
