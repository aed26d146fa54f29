using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using System.Threading.Tasks;
using System.Xml.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;
using UnitsNet;

namespace Pattern.Core.Pdf.Tests;

public class PdfOutputTests : IDisposable
{
    private static readonly SheetLayout Tiled = SheetLayout.TiledOn(PaperSize.A4);

    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-core-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void ToPdf_Layers_AreThoseOfTheDrawingAndCanBeSwitched()
    {
        byte[] pdf = Skirts.Rosalind.ToPdf(Tiled);

        using PdfDocument document = ReadPage.Open(pdf);
        var properties = Get<DictionaryToken>(document, document.Structure.Catalog.CatalogDictionary, "OCProperties");
        string[] names = Get<ArrayToken>(document, properties, "OCGs").Data.Select(item => Layer(document, item)).ToArray();
        Assert.Equal([.. Skirts.Rosalind.Layers.Select(layer => layer.Name.Text), "sheet map", "sheet marks"], names);
        DictionaryToken standard = Get<DictionaryToken>(document, properties, "D");
        Assert.Equal(names, Get<ArrayToken>(document, standard, "Order").Data.Select(item => Layer(document, item)));
    }

    [Fact]
    public void ToPdf_Content_IsInLayersThroughout()
    {
        foreach (ReadPage page in ReadPage.All(Skirts.Rosalind.ToPdf(Tiled)).Concat(ReadPage.All(Skirts.Rosalind.ToPdf())))
        {
            Assert.True(page.Beginnings > 0);
            Assert.Equal(page.Beginnings, page.Ends);
            Assert.Equal(page.Lines.Count + page.Fills.Count > 0, page.Layers.Values.Sum() > 0);
        }

        ReadPage whole = ReadPage.All(Skirts.Rosalind.ToPdf())[0];
        foreach (DrawingLayer layer in Skirts.Rosalind.Layers)
        {
            int letters = layer.Marks.OfType<TextMark>().Sum(mark => mark.Text.Length);
            Assert.True(whole.Layers[layer.Name.Text] >= layer.Marks.Count - layer.Marks.OfType<TextMark>().Count() + letters, layer.Name.Text);
        }
    }

    [Fact]
    public void ToPdf_Words_AreAllThereInAnEmbeddedFont()
    {
        ReadPage page = ReadPage.All(Skirts.Rosalind.ToPdf())[0];

        string text = Squeezed(page.Text);
        foreach (TextMark mark in Skirts.Rosalind.Layers.SelectMany(layer => layer.Marks).OfType<TextMark>())
        {
            Assert.Contains(Squeezed(mark.Text), text);
        }

        Assert.All(page.Letters, letter => Assert.Matches("^[A-Z]{6}\\+Inter", letter.FontName));
        Assert.Equal(2, page.Letters.Select(letter => letter.FontName).Distinct().Count());
    }

    [Theory]
    [InlineData("\u0393\u03B9\u03CE\u03C1\u03B3\u03BF\u03C2")]
    [InlineData("\u041D\u0430\u0434\u0435\u0436\u0434\u0430")]
    [InlineData("Zo\u00EB \u0141ucja \u015Eule")]
    public void ToPdf_NamesInOtherLetters_CanBeRead(string name)
        => Assert.Contains(Squeezed(name), Squeezed(ReadPage.All(Skirts.Draw(name).ToPdf())[0].Text));

    [Theory]
    [InlineData("Ro\u0000sa\u0007lind", "Ro\uFFFDsa\uFFFDlind")]
    [InlineData("Rosa\nlind", "Rosa lind")]
    [InlineData("(Rosalind) \\ <&>", "(Rosalind) \\ <&>")]
    [InlineData("\u5317", "\u5317")]
    public void ToPdf_NamesWithHostileCharacters_DoNoHarm(string name, string expected)
    {
        byte[] pdf = Skirts.Draw(name).ToPdf(Tiled);

        using PdfDocument document = ReadPage.Open(pdf);
        Assert.Equal("Skirt block for " + expected, document.Information.Title);
        Assert.True(document.TryGetXmpMetadata(out XmpMetadata? xmp));
        XNamespace dc = "http://purl.org/dc/elements/1.1/";
        Assert.Equal("Skirt block for " + expected, XDocument.Parse(Encoding.UTF8.GetString(xmp!.GetXmlBytes().ToArray()).Trim('\uFEFF')).Descendants(dc + "title").Single().Value);
        Assert.NotEmpty(document.GetPage(1).Letters);
    }

    // Apart from the others: a test case cannot be handed half a character.
    [Fact]
    public void ToPdf_NamesWithHalfACharacter_DoNoHarm()
    {
        using PdfDocument document = ReadPage.Open(Skirts.Draw("Rosa" + '\uD800' + "lind").ToPdf());

        Assert.Equal("Skirt block for Rosa\uFFFDlind", document.Information.Title);
    }

    [Fact]
    public void ToPdf_Properties_AreThoseTheCallerGave()
    {
        byte[] pdf = Skirts.Rosalind.ToPdf(new PdfOptions { Author = "Wardrobe & Props", Subject = "Act <II>", Date = new DateTime(2026, 3, 1, 9, 30, 0, DateTimeKind.Local) });

        using PdfDocument document = ReadPage.Open(pdf);
        Assert.Equal("Skirt block for Rosalind", document.Information.Title);
        Assert.Equal("Wardrobe & Props", document.Information.Author);
        Assert.Equal("Act <II>", document.Information.Subject);
        Assert.Equal("Pattern.Core", document.Information.Creator);
        Assert.Equal("D:20260301093000", document.Information.CreationDate);
        Assert.True(document.TryGetXmpMetadata(out XmpMetadata? xmp));
        Assert.Contains("2026-03-01T09:30:00<", Encoding.UTF8.GetString(xmp!.GetXmlBytes().ToArray()));
        var preferences = Get<DictionaryToken>(document, document.Structure.Catalog.CatalogDictionary, "ViewerPreferences");
        Assert.Equal("None", Get<NameToken>(document, preferences, "PrintScaling").Data);
    }

    [Fact]
    public void ToPdf_WithoutADate_KnowsNone()
    {
        byte[] pdf = Skirts.Rosalind.ToPdf();

        using PdfDocument document = ReadPage.Open(pdf);
        Assert.Null(document.Information.CreationDate);
        Assert.Null(document.Information.ModifiedDate);
        Assert.Null(document.Information.Author);
        Assert.Equal(Skirts.Rosalind.Description, document.Information.Subject);
        Assert.DoesNotMatch(@"\b20[0-9]{2}-[0-9]{2}-[0-9]{2}T", Encoding.Latin1.GetString(pdf));
    }

    [Fact]
    public void ToPdf_Twice_GivesTheSameBytes()
    {
        foreach (SheetLayout layout in new[] { SheetLayout.SingleSheet, SheetLayout.OnRoll(Length.FromMillimeters(914)), Tiled })
        {
            Assert.Equal(Skirts.Rosalind.ToPdf(layout), Skirts.Draw("Rosalind").ToPdf(layout));
        }

        Assert.NotEqual(Skirts.Rosalind.ToPdf(), Skirts.Draw("Celia").ToPdf());
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("th-TH")]
    [InlineData("de-DE")]
    public void ToPdf_InAnyCulture_GivesTheSameBytes(string culture)
    {
        var options = new PdfOptions { Sheets = Tiled, Date = new DateTime(2026, 3, 1) };
        byte[] expected = Skirts.Rosalind.ToPdf(options);
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            var heard = new HashSet<string>();
            Assert.Equal(expected, Skirts.Rosalind.ToPdf(options, new Listener(_ => heard.Add(CultureInfo.CurrentCulture.Name))));
            Assert.Equal([culture], heard);
            Assert.Equal(culture, CultureInfo.CurrentCulture.Name);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public async Task ToPdf_OnEightThreads_GivesTheSameBytes()
    {
        string[] names = Enumerable.Range(0, 8).Select(i => "Rosalind " + (char)('A' + i)).ToArray();
        Drawing[] drawings = names.Select(Skirts.Draw).ToArray();
        byte[][] expected = drawings.Select(drawing => drawing.ToPdf(Tiled)).ToArray();

        byte[][][] made = await Task.WhenAll(drawings.Select(drawing => Task.Factory.StartNew(
            () => Enumerable.Range(0, 4).Select(_ => drawing.ToPdf(Tiled)).ToArray(), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));

        for (int i = 0; i < names.Length; i++)
        {
            Assert.All(made[i], pdf => Assert.Equal(expected[i], pdf));
        }
    }

    // ISO 32000-1, 7.5.4: each entry of the cross-reference table is 20 bytes long and leads to its object.
    [Fact]
    public void ToPdf_TheTableOfObjects_LeadsToEachOfThem()
    {
        byte[] pdf = Skirts.Rosalind.ToPdf(Tiled);
        string text = Encoding.Latin1.GetString(pdf);

        int table = int.Parse(text.Split("startxref\n")[1].Split('\n')[0], CultureInfo.InvariantCulture);
        string[] lines = text[table..].Split('\n');
        Assert.Equal("xref", lines[0]);
        int count = int.Parse(lines[1].Split(' ')[1], CultureInfo.InvariantCulture);
        for (int i = 1; i < count; i++)
        {
            string line = lines[2 + i];
            Assert.Equal(19, line.Length);
            if (line[17] == 'n')
            {
                int place = int.Parse(line[..10], CultureInfo.InvariantCulture);
                Assert.StartsWith($"{i} 0 obj", text[place..Math.Min(text.Length, place + 20)]);
            }
        }

        Assert.StartsWith("%PDF-1.7\n", text);
        Assert.EndsWith("%%EOF\n", text);
    }

    [Fact]
    public void ToPdf_Progress_IsToldAfterEachSheet()
    {
        var told = new List<PdfProgress>();

        Skirts.Rosalind.ToPdf(new PdfOptions { Sheets = Tiled }, new Listener(told.Add));

        int count = Tiled.Arrange(Skirts.Rosalind).Count;
        Assert.Equal(Enumerable.Range(1, count), told.Select(progress => progress.SheetsDone));
        Assert.All(told, progress => Assert.Equal(count, progress.SheetCount));
        Assert.Equal($"{count} of {count} sheets", told[^1].ToString());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(9)]
    public void SavePdf_Cancelled_LeavesTheOldFile(int after)
    {
        string path = Path.Combine(_folder, "skirt.pdf");
        File.WriteAllText(path, "the old one");
        using var source = new CancellationTokenSource();
        var listener = new Listener(progress => CancelAt(progress.SheetsDone));
        void CancelAt(int done)
        {
            if (done >= after)
            {
                source.Cancel();
            }
        }

        CancelAt(0);

        Assert.Equal(9, Tiled.Arrange(Skirts.Rosalind).Count);
        Assert.Throws<OperationCanceledException>(() => Skirts.Rosalind.SavePdf(path, new PdfOptions { Sheets = Tiled }, listener, source.Token));
        Assert.Equal("the old one", File.ReadAllText(path));
        Assert.Equal([path], Directory.GetFiles(_folder));
    }

    [Fact]
    public void SavePdf_ToAFile_ReplacesTheOldOne()
    {
        string path = Path.Combine(_folder, "skirt.pdf");
        File.WriteAllText(path, "the old one");

        Skirts.Rosalind.SavePdf(path);
        Assert.Equal(Skirts.Rosalind.ToPdf(), File.ReadAllBytes(path));
        Skirts.Rosalind.SavePdf(path, Tiled);
        Assert.Equal(Skirts.Rosalind.ToPdf(Tiled), File.ReadAllBytes(path));
        Assert.Equal([path], Directory.GetFiles(_folder));
    }

    [Fact]
    public void SavePdf_WhereNothingCanBeWritten_SaysSoAndLeavesWhatIsThere()
    {
        string file = Path.Combine(_folder, "file");
        File.WriteAllText(file, "no folder");

        Assert.Throws<IOException>(() => Skirts.Rosalind.SavePdf(Path.Combine(file, "skirt.pdf")));
        Assert.Throws<IOException>(() => Skirts.Rosalind.SavePdf(_folder));
        Assert.Throws<IOException>(() => Skirts.Rosalind.SavePdf(Path.Combine(_folder, "missing", "skirt.pdf")));
        Assert.Throws<ArgumentException>(() => Skirts.Rosalind.SavePdf(" "));
        Assert.Equal("no folder", File.ReadAllText(file));
        Assert.Equal([file], Directory.GetFiles(_folder));
    }

    // For the superuser no folder is read-only: then the check is that the file comes out whole.
    [Fact]
    public void SavePdf_IntoAReadOnlyFolder_WritesAllOrNothing()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string inner = Directory.CreateDirectory(Path.Combine(_folder, "inner")).FullName;
        string path = Path.Combine(inner, "skirt.pdf");
        File.WriteAllText(path, "the old one");
        File.SetUnixFileMode(inner, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Exception? error = Record.Exception(() => Skirts.Rosalind.SavePdf(path));
            if (error is null)
            {
                Assert.Equal(Skirts.Rosalind.ToPdf(), File.ReadAllBytes(path));
            }
            else
            {
                Assert.StartsWith("PC7002", Assert.IsType<IOException>(error).Message);
                Assert.Equal("the old one", File.ReadAllText(path));
            }

            Assert.Equal([path], Directory.GetFiles(inner));
        }
        finally
        {
            File.SetUnixFileMode(inner, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void WritePdf_ToAStream_WritesAllAndLeavesItOpen()
    {
        using var stream = new MemoryStream();
        stream.WriteByte(1);

        Skirts.Rosalind.WritePdf(stream);

        Assert.Equal([1, .. Skirts.Rosalind.ToPdf()], stream.ToArray());
        stream.WriteByte(2);
    }

    [Fact]
    public void WritePdf_ToAFullDisk_PassesTheErrorOn()
    {
        using var stream = new FullDisk();

        Assert.Same(stream.Error, Assert.Throws<IOException>(() => Skirts.Rosalind.WritePdf(stream, new PdfOptions { Sheets = Tiled })));
    }

    [Fact]
    public void WritePdf_OfADrawingThatDoesNotFit_TouchesNothing()
    {
        using var stream = new FullDisk();

        Assert.Throws<ArgumentException>(() => Skirts.Rosalind.WritePdf(stream, new PdfOptions { Sheets = SheetLayout.OnRoll(Length.FromMillimeters(300)) }));
    }

    // ISO 32000-1, annex C: 14,400 units of 1/72 in.
    [Theory]
    [InlineData(5080, true)]
    [InlineData(5080.1, false)]
    public void ToPdf_ADrawingAsLongAsAPageMayBe_IsTakenAndALongerOneRefused(double lengthMm, bool isTaken)
    {
        BoundingBox box = BoundingBox.Around(Point2D.Origin, Point2D.FromMillimeters(lengthMm, 300));
        CurvePath line = CurvePath.FromLine(new LineSegment(box.LowerLeft, box.UpperRight));
        Drawing drawing = Drawing.Of("train", "a long train", box, [DrawingLayer.Of(LayerName.SeamLines, [PathMark.Of(line, LineRole.Seam)])]);

        foreach (SheetLayout layout in new[] { SheetLayout.SingleSheet, SheetLayout.OnRoll(Length.FromMillimeters(300)) })
        {
            if (isTaken)
            {
                ReadPage page = Assert.Single(ReadPage.All(drawing.ToPdf(layout)));
                Assert.Equal(lengthMm, Math.Max(page.WidthMm, page.HeightMm), 0.01);
            }
            else
            {
                var error = Assert.Throws<ArgumentException>(() => drawing.ToPdf(layout));
                Assert.StartsWith("PC7106: A page would be ", error.Message);
                Assert.Contains("5080.0 mm (200.0 in) each way. Tile the drawing", error.Message);
            }
        }

        Assert.True(ReadPage.All(drawing.ToPdf(Tiled)).Count > 17);
    }

    [Fact]
    public void ToPdf_ADrawingWithoutASize_IsRefused()
    {
        Drawing drawing = Drawing.Of("dot", "a dot", BoundingBox.Around(Point2D.Origin, Point2D.Origin), []);

        Assert.StartsWith("PC7106", Assert.Throws<ArgumentException>(() => drawing.ToPdf()).Message);
        Assert.Single(ReadPage.All(drawing.ToPdf(Tiled)));
    }

    [Fact]
    public void Methods_WithoutTheirArguments_SaySo()
    {
        Assert.Throws<ArgumentNullException>(() => ((Drawing)null!).ToPdf());
        Assert.Throws<ArgumentNullException>(() => Skirts.Rosalind.ToPdf((PdfOptions)null!));
        Assert.Throws<ArgumentNullException>(() => Skirts.Rosalind.ToPdf((SheetLayout)null!));
        Assert.Throws<ArgumentNullException>(() => Skirts.Rosalind.WritePdf(null!));
        Assert.Throws<ArgumentNullException>(() => Skirts.Rosalind.SavePdf(null!));
    }

    private static string Squeezed(string text) => new(text.Where(c => !char.IsWhiteSpace(c)).ToArray());

    private static string Layer(PdfDocument document, IToken item)
        => Get<StringToken>(document, (DictionaryToken)document.Structure.GetObject(((IndirectReferenceToken)item).Data).Data, "Name").Data;

    private static T Get<T>(PdfDocument document, DictionaryToken from, string key)
        where T : IToken
    {
        IToken found = from.Data[key];
        return (T)(found is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : found);
    }

    private sealed class Listener(Action<PdfProgress> hear) : IProgress<PdfProgress>
    {
        public void Report(PdfProgress value) => hear(value);
    }

    private sealed class FullDisk : MemoryStream
    {
        internal IOException Error { get; } = new("No space left on device.");

        public override void Write(byte[] buffer, int offset, int count) => throw Error;

        public override void Write(ReadOnlySpan<byte> buffer) => throw Error;
    }
}
