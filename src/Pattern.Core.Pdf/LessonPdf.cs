using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;

namespace Pattern.Core.Pdf;

/// <summary>Lessons as PDF: one file, A4 or Letter, pictures as lines.</summary>
/// <remarks>The type is that of <see cref="PdfOutput"/>: letters of the Latin, Greek and Cyrillic scripts; others show as empty boxes, and the HTML page shows them. Same sheet, same bytes.</remarks>
/// <example><code>
/// StepSheet.Of(block).SavePdf("steps.pdf", PaperSize.A4);
/// </code></example>
public static class LessonPdf
{
    /// <summary>The sheet as the bytes of a PDF file, upright.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="paper">A5 or larger.</param>
    /// <exception cref="ArgumentException">The paper is too narrow for a picture with its words.</exception>
    [Pure]
    public static byte[] ToPdf(this StepSheet sheet, PaperSize paper) => Write(Guard.NotNull(sheet, nameof(sheet)).ToLesson(), paper);

    /// <summary>Writes the sheet to a file, as a whole or not at all.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="paper">A5 or larger.</param>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character or names a device, or the paper is too narrow for a picture with its words.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SavePdf(this StepSheet sheet, string path, PaperSize paper)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write([new KeyValuePair<string, byte[]>(path, sheet.ToPdf(paper))]);
    }

    /// <summary>The page on taking measurements as the bytes of a PDF file, upright.</summary>
    /// <param name="guide">The page.</param>
    /// <param name="paper">A5 or larger.</param>
    /// <exception cref="ArgumentException">The paper is too narrow for a picture with its words.</exception>
    [Pure]
    public static byte[] ToPdf(this MeasuringGuide guide, PaperSize paper) => Write(Guard.NotNull(guide, nameof(guide)).ToLesson(), paper);

    /// <summary>Writes the page on taking measurements to a file, as a whole or not at all.</summary>
    /// <param name="guide">The page.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="paper">A5 or larger.</param>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character or names a device, or the paper is too narrow for a picture with its words.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SavePdf(this MeasuringGuide guide, string path, PaperSize paper)
    {
        FilePaths.Checked(path, nameof(path));
        WholeFiles.Write([new KeyValuePair<string, byte[]>(path, guide.ToPdf(paper))]);
    }

    private static byte[] Write(LessonPage page, PaperSize paper)
    {
        IReadOnlyList<PrintSheet> sheets = LessonSheets.Arrange(page, Guard.NotNull(paper, nameof(paper)));
        return new PdfComposer(sheets[0].Marks!, new PdfOptions { Subject = page.Title }, null, default).Compose(sheets, page.Language);
    }
}
