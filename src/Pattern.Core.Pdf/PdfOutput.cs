using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Threading;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;

namespace Pattern.Core.Pdf;

/// <summary>Drawings as PDF at full size: printed at 100 %, one millimetre on paper is one millimetre of cloth.</summary>
/// <remarks>
/// <para>Every layer of the drawing is a layer that a viewer can switch off and on. Lines are true curves, never pictures. The type is inside the file: Inter, with letters of the
/// Latin, Greek and Cyrillic scripts; others show as empty boxes. The file asks viewers not to scale it when printing; the test squares show whether they obeyed.</para>
/// <para>The same drawing and options give the same bytes, in any culture and on any thread. A page may be up to 5,080 mm (200 in) long, as the format says.</para>
/// </remarks>
/// <example><code>
/// Drawing drawing = block.Draw();
/// drawing.SavePdf("skirt.pdf");
/// drawing.SavePdf("skirt-roll.pdf", SheetLayout.OnRoll(Length.FromCentimeters(91)));
/// drawing.SavePdf("skirt-a4.pdf", SheetLayout.TiledOn(PaperSize.A4).WithOverlap(Length.FromMillimeters(15)));
/// </code></example>
public static class PdfOutput
{
    /// <summary>The drawing as the bytes of a PDF file, on one sheet of its own size.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <exception cref="ArgumentException">The drawing is longer than a PDF page may be.</exception>
    [Pure]
    public static byte[] ToPdf(this Drawing drawing) => drawing.ToPdf(new PdfOptions());

    /// <summary>The drawing as the bytes of a PDF file, on paper of your choice.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="sheets">The paper.</param>
    /// <exception cref="ArgumentException">The drawing does not fit on this paper, or a page would be longer than a PDF page may be.</exception>
    [Pure]
    public static byte[] ToPdf(this Drawing drawing, SheetLayout sheets) => drawing.ToPdf(new PdfOptions { Sheets = sheets });

    /// <summary>The drawing as the bytes of a PDF file.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="options">The paper, and what the document says about itself.</param>
    /// <param name="progress">Is told after each sheet, on the thread that the implementation chooses; may be null.</param>
    /// <param name="cancellation">Is looked at before each sheet.</param>
    /// <exception cref="ArgumentException">The drawing does not fit on this paper, or a page would be longer than a PDF page may be.</exception>
    /// <exception cref="OperationCanceledException">The cancellation was asked for.</exception>
    [Pure]
    public static byte[] ToPdf(this Drawing drawing, PdfOptions options, IProgress<PdfProgress>? progress = null, CancellationToken cancellation = default)
    {
        Guard.NotNull(drawing, nameof(drawing));
        return new PdfComposer(drawing, Guard.NotNull(options, nameof(options)), progress, cancellation).Compose();
    }

    /// <summary>Writes the drawing to a file on one sheet of its own size, as a whole or not at all.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <exception cref="ArgumentException">The path is empty, or the drawing is longer than a PDF page may be.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SavePdf(this Drawing drawing, string path) => drawing.SavePdf(path, new PdfOptions());

    /// <summary>Writes the drawing to a file on paper of your choice, as a whole or not at all.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="sheets">The paper.</param>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character or names a device, the drawing does not fit on this paper, or a page would be longer than a PDF page may be.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SavePdf(this Drawing drawing, string path, SheetLayout sheets) => drawing.SavePdf(path, new PdfOptions { Sheets = sheets });

    /// <summary>Writes the drawing to a file, as a whole or not at all.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="options">The paper, and what the document says about itself.</param>
    /// <param name="progress">Is told after each sheet, on the thread that the implementation chooses; may be null.</param>
    /// <param name="cancellation">Is looked at before each sheet, and once more before the file is touched.</param>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character or names a device, the drawing does not fit on this paper, or a page would be longer than a PDF page may be.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="OperationCanceledException">The cancellation was asked for.</exception>
    public static void SavePdf(this Drawing drawing, string path, PdfOptions options, IProgress<PdfProgress>? progress = null, CancellationToken cancellation = default)
    {
        FilePaths.Checked(path, nameof(path));
        byte[] bytes = drawing.ToPdf(options, progress, cancellation);
        WholeFiles.Write([new KeyValuePair<string, byte[]>(path, bytes)]);
    }

    /// <summary>Writes the drawing to a stream. The stream stays open.</summary>
    /// <remarks>The whole file is formed before the first byte is written.</remarks>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">Where to write; it need not be able to seek.</param>
    /// <param name="options">The paper, and what the document says about itself.</param>
    /// <param name="progress">Is told after each sheet, on the thread that the implementation chooses; may be null.</param>
    /// <param name="cancellation">Is looked at before each sheet, and once more before the stream is touched.</param>
    /// <exception cref="ArgumentException">The drawing does not fit on this paper, or a page would be longer than a PDF page may be.</exception>
    /// <exception cref="OperationCanceledException">The cancellation was asked for.</exception>
    public static void WritePdf(this Drawing drawing, Stream stream, PdfOptions options, IProgress<PdfProgress>? progress = null, CancellationToken cancellation = default)
    {
        Guard.NotNull(stream, nameof(stream));
        byte[] bytes = drawing.ToPdf(options, progress, cancellation);
        stream.Write(bytes, 0, bytes.Length);
    }

    /// <summary>Writes the drawing to a stream, on one sheet of its own size. The stream stays open.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">Where to write; it need not be able to seek.</param>
    /// <exception cref="ArgumentException">The drawing is longer than a PDF page may be.</exception>
    public static void WritePdf(this Drawing drawing, Stream stream) => drawing.WritePdf(stream, new PdfOptions());
}
