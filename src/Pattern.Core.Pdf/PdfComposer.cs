using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Pattern.Core.Pdf;

/// <summary>Puts one document together: a page for each sheet, on it the layers of the drawing.</summary>
internal sealed class PdfComposer
{
    // ISO 32000: a page measures 3 to 14,400 units of 1/72 in each way.
    private const double LeastPageMm = 3 * PdfPainter.MmPerPoint;
    private const double MostPageMm = 14_400 * PdfPainter.MmPerPoint;

    private readonly Drawing _drawing;
    private readonly PdfOptions _options;
    private readonly IProgress<PdfProgress>? _progress;
    private readonly CancellationToken _cancellation;
    private readonly PdfDocument _document = new();
    private readonly PdfPainter _painter = new();
    private readonly List<KeyValuePair<LayerName, PdfReference>> _layers = [];

    internal PdfComposer(Drawing drawing, PdfOptions options, IProgress<PdfProgress>? progress, CancellationToken cancellation)
    {
        _drawing = drawing;
        _options = options;
        _progress = progress;
        _cancellation = cancellation;
    }

    internal byte[] Compose() => Compose(_options.Sheets.Arrange(_drawing), "en-GB");

    /// <summary>The document of sheets that are laid out already.</summary>
    internal byte[] Compose(IReadOnlyList<PrintSheet> sheets, string language)
    {
        foreach (PrintSheet sheet in sheets)
        {
            sheet.RefuseOutside(LeastPageMm, MostPageMm);
        }

        // PDFsharp asks the culture of the thread for some of its numbers and dates.
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            return Compose(sheets, language, before);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private byte[] Compose(IReadOnlyList<PrintSheet> sheets, string language, CultureInfo caller)
    {
        // Compressed later, all at once: see ZlibStream.
        _document.Options.NoCompression = true;
        _document.Options.CompressContentStreams = false;
        _document.Options.ColorMode = PdfColorMode.Undefined;
        DeclareLayers(sheets);
        for (int i = 0; i < sheets.Count; i++)
        {
            _cancellation.ThrowIfCancellationRequested();
            AddPage(sheets[i]);
            Report(new PdfProgress(i + 1, sheets.Count), caller);
        }

        _cancellation.ThrowIfCancellationRequested();
        LabelPages(sheets);
        AskForFullSize();
        _document.Internals.Catalog.Elements.SetString("/Lang", language);
        byte[] bytes = new PdfFile(_document, PdfProperties.Of(_drawing, _options)).Write();
        _cancellation.ThrowIfCancellationRequested();
        return bytes;
    }

    // Who is told of the progress prints it in the culture of their own.
    private void Report(PdfProgress done, CultureInfo caller)
    {
        CultureInfo.CurrentCulture = caller;
        _progress?.Report(done);
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
    }

    private static IEnumerable<DrawingLayer> LayersOf(PrintSheet sheet) => sheet.Marks?.Layers ?? [];

    // One layer for each name, the drawing's own first, as "optional content groups" (ISO 32000, 8.11); PDFsharp has no API for them.
    private void DeclareLayers(IReadOnlyList<PrintSheet> sheets)
    {
        var order = new PdfArray(_document);
        foreach (LayerName name in _drawing.Layers.Concat(sheets.SelectMany(LayersOf)).Select(layer => layer.Name).Distinct())
        {
            var group = new PdfDictionary(_document);
            group.Elements.SetName("/Type", "/OCG");
            group.Elements.SetString("/Name", name.Text);
            _document.Internals.AddObject(group);
            _layers.Add(new KeyValuePair<LayerName, PdfReference>(name, group.Reference!));
            order.Elements.Add(group.Reference!);
        }

        var standard = new PdfDictionary(_document);
        standard.Elements.SetString("/Name", "all layers");
        standard.Elements.SetName("/BaseState", "/ON");
        standard.Elements["/Order"] = order;
        var properties = new PdfDictionary(_document);
        properties.Elements["/OCGs"] = order.Clone();
        properties.Elements["/D"] = standard;
        _document.Internals.Catalog.Elements["/OCProperties"] = properties;
    }

    private void AddPage(PrintSheet sheet)
    {
        PdfPage page = _document.AddPage();
        page.Width = XUnit.FromMillimeter(sheet.WidthMm);
        page.Height = XUnit.FromMillimeter(sheet.HeightMm);
        var content = new MemoryStream();
        foreach (DrawingLayer layer in LayersOf(sheet))
        {
            AddLayer(page, sheet, layer, Transform2D.Identity, clip: null, content);
        }

        if (sheet.Placement is { } placement)
        {
            foreach (DrawingLayer layer in (sheet.Drawing ?? _drawing).Layers)
            {
                AddLayer(page, sheet, layer, placement, sheet.Window, content);
            }
        }

        PdfContent only = page.Contents.AppendContent();
        only.CreateStream(content.ToArray());
    }

    private void AddLayer(PdfPage page, PrintSheet sheet, DrawingLayer layer, in Transform2D placement, BoundingBox? clip, MemoryStream content)
    {
        using (XGraphics graphics = XGraphics.FromPdfPage(page, XGraphicsPdfPageOptions.Append, XGraphicsUnit.Point))
        {
            if (!_painter.Paint(graphics, layer, placement, clip, sheet.HeightMm))
            {
                page.Contents.Elements.Clear();
                return;
            }
        }

        // PDFsharp makes a stream for each layer; they become one, with the marks of the layer around each part.
        int index = _layers.FindIndex(known => known.Key == layer.Name);
        string tag = FormattableString.Invariant($"/L{index}");
        Properties(page).Elements[tag] = _layers[index].Value;
        Append(content, $"/OC {tag} BDC\n");
        foreach (PdfItem item in page.Contents.Elements)
        {
            byte[] part = ((PdfDictionary)((PdfReference)item).Value).Stream.Value;
            content.Write(part, 0, part.Length);
        }

        // A part may end without a blank.
        Append(content, "\nEMC\n");
        page.Contents.Elements.Clear();
    }

    private static PdfDictionary Properties(PdfPage page)
    {
        PdfDictionary? properties = page.Resources.Elements.GetDictionary("/Properties");
        if (properties is null)
        {
            properties = new PdfDictionary(page.Owner);
            page.Resources.Elements["/Properties"] = properties;
        }

        return properties;
    }

    private static void Append(MemoryStream content, string operators)
    {
        byte[] bytes = Encoding.ASCII.GetBytes(operators);
        content.Write(bytes, 0, bytes.Length);
    }

    // So that a viewer shows "2C" where it would show a number.
    private void LabelPages(IReadOnlyList<PrintSheet> sheets)
    {
        var labels = new PdfArray(_document);
        for (int i = 0; i < sheets.Count; i++)
        {
            var label = new PdfDictionary(_document);
            label.Elements.SetString("/P", sheets[i].Name);
            labels.Elements.Add(new PdfInteger(i));
            labels.Elements.Add(label);
        }

        var tree = new PdfDictionary(_document);
        tree.Elements["/Nums"] = labels;
        _document.Internals.Catalog.Elements["/PageLabels"] = tree;
    }

    // Print dialogues scale to the page unless a document asks them not to.
    private void AskForFullSize()
    {
        var preferences = new PdfDictionary(_document);
        preferences.Elements.SetName("/PrintScaling", "/None");
        preferences.Elements.SetBoolean("/PickTrayByPDFSize", true);
        preferences.Elements.SetBoolean("/DisplayDocTitle", true);
        _document.Internals.Catalog.Elements["/ViewerPreferences"] = preferences;
    }
}
