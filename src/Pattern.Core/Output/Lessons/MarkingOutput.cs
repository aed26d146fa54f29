using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>A marked drawing as a page.</summary>
public static class MarkingOutput
{
    /// <summary>One HTML page that needs nothing beside it: each figure with its mark, and for what is wrong the step that it comes from and what to mend first.</summary>
    /// <remarks>Black on white, so that it prints as it looks. No script, no fonts and no files from elsewhere. Same marks, same characters, in any culture.</remarks>
    /// <param name="marking">The marks.</param>
    [Pure]
    public static string ToHtml(this Marking marking)
    {
        TapeStep tape = Guard.NotNull(marking, nameof(marking)).Tape;
        var page = new PlainPage("Marked: " + marking.Block.Title);
        page.Paragraph(marking.Block.Body.Describe(tape) + ". Drawn to the nearest " + tape + ": " + marking.Counts() + ".");
        page.Table(
            ["Figure", "Mark", "Drawn", "Expected", "Off the tape"],
            marking.Figures.Select(figure => new[] { figure.Name, Marking.Word(figure.Verdict), Figure(figure.DrawnMm, tape), Figure(figure.ExpectedMm, tape), Figure(figure.OffTapeMm, tape) }));
        Write(page, "To mend", marking.Wrong, tape);
        Write(page, "Not marked", marking.NotMarked, tape);
        page.Paragraph("Off the tape is what a draft comes to whose every distance is laid to the nearest mark.");
        return page.Write();
    }

    private static void Write(PlainPage page, string heading, IEnumerable<MarkedFigure> figures, TapeStep tape)
    {
        if (!figures.Any())
        {
            return;
        }

        page.Heading(heading);
        page.Raw.Append("<ol class=\"steps\">\n");
        foreach (MarkedFigure figure in figures)
        {
            page.Raw.Append("<li value=\"").Append(figure.Row.ToString(CultureInfo.InvariantCulture)).Append("\">").Escaped(figure.Describe(tape)).Append("</li>\n");
        }

        page.Raw.Append("</ol>\n");
    }

    private static string Figure(double? mm, TapeStep tape) => mm is { } known ? WorkedLength.DrawnMm(null, known).Describe(tape) : string.Empty;
}
