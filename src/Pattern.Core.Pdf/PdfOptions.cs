using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;

namespace Pattern.Core.Pdf;

/// <summary>How a drawing becomes a PDF.</summary>
public sealed record PdfOptions
{
    /// <summary>On what paper the drawing is printed.</summary>
    /// <value>Default: one sheet of the drawing's own size, for a copy shop or a screen.</value>
    /// <exception cref="ArgumentNullException">The value is null.</exception>
    public SheetLayout Sheets
    {
        get;
        init => field = Guard.NotNull(value, nameof(Sheets));
    } = SheetLayout.SingleSheet;

    /// <summary>Who made the pattern, for the properties of the document.</summary>
    /// <value>Default: none; nothing is taken from the machine.</value>
    public string? Author { get; init; }

    /// <summary>What the pattern is, for the properties of the document.</summary>
    /// <value>Default: the description of the drawing.</value>
    public string? Subject { get; init; }

    /// <summary>When the pattern was made, for the properties of the document. It is written as given: no time zone is looked up.</summary>
    /// <value>Default: none, so that the same drawing gives the same bytes on any day.</value>
    public DateTime? Date { get; init; }

    /// <summary>The paper in words.</summary>
    public override string ToString() => $"PDF, {Sheets}";
}
