using System;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UnitsNet.Units;

namespace Pattern.Core.Pdf.Tests;

public class LessonPdfTests
{
    private static readonly SkirtBlock Block = SkirtBlock
        .For(BodyMeasurements.In(LengthUnit.Inch).Named("Hippolyta").With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40"))
        .WithLength(Tape.Inches("24"))
        .Draft();

    // Points of 1/72 in: A4 is 210 mm by 297 mm, Letter 8 1/2 in by 11 in.
    [Theory]
    [InlineData("A4", 595.276, 841.89)]
    [InlineData("Letter", 612, 792)]
    public void ToPdf_AStepSheet_IsOneFileOfThatPaperWithEveryStep(string paper, double width, double height)
    {
        using PdfDocument read = PdfDocument.Open(StepSheet.Of(Block).WithReasons().ToPdf(PaperSize.Find(paper)));
        Page[] pages = [.. read.GetPages()];
        string words = string.Join(" ", pages.SelectMany(page => page.GetWords()).Select(word => word.Text));

        Assert.All(pages, page => Assert.Equal((width, height), (Math.Round(page.Width, 3), Math.Round(page.Height, 3))));
        Assert.All(Block.Steps, step => Assert.Contains("Step " + step.Number, words));
        Assert.Contains("box width", words);
        Assert.Contains("20 1/2 in", words.Replace('\u00A0', ' '));

        // Pictures are lines, and no picture is an image.
        Assert.All(pages, page => Assert.Empty(page.GetImages()));
        Assert.Contains(pages, page => page.Paths.Count > 20);
    }

    [Fact]
    public void ToPdf_AnotherLanguage_IsTheLanguageOfTheDocument()
    {
        Phrasebook book = Phrasebook.Of("nl", phrase => phrase.English == "Steps" ? "Stappen" : null);
        byte[] bytes = StepSheet.Of(Block).WithPhrases(book).ToPdf(PaperSize.A4);

        using PdfDocument read = PdfDocument.Open(bytes);
        Assert.Contains("Stappen", read.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
        Assert.Contains("nl", read.Structure.Catalog.CatalogDictionary.Data["Lang"].ToString());
        Assert.Equal(bytes, StepSheet.Of(Block).WithPhrases(book).ToPdf(PaperSize.A4));
    }

    [Theory]
    [InlineData("<b>&\"'")]
    [InlineData("\u05E8\u05D5\u05D6 \u202E \u0627\u0644")]
    [InlineData("\u0001\uD800\uFFFF")]
    [InlineData("wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww")]
    public void ToPdf_AHostileName_CanBeOpened(string name)
    {
        using PdfDocument read = PdfDocument.Open(StepSheet.Of(SkirtBlock.For(Block.Body.Named(name)).Draft()).ToPdf(PaperSize.Letter));

        Assert.InRange(read.NumberOfPages, 5, 60);
    }

    [Fact]
    public void SavePdf_ToAFile_WritesIt()
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".pdf");
        try
        {
            StepSheet.Of(Block).AsForm().SavePdf(path, PaperSize.A4);
            Assert.Equal(StepSheet.Of(Block).AsForm().ToPdf(PaperSize.A4), File.ReadAllBytes(path));
        }
        finally
        {
            File.Delete(path);
        }
    }
}
