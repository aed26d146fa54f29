using System.Collections.Generic;
using System.Linq;
using System.Text;

namespace Pattern.Core.Output;

/// <summary>One HTML page that needs nothing beside it: headings, paragraphs, tables, pictures. Black on white; a wide table goes sideways on a phone.</summary>
internal sealed class PlainPage
{
    private const string Style = """
        :root { color-scheme: light; }
        body { margin: 0 auto; max-width: 62rem; padding: 1rem; background: #fff; color: #000; font: 1rem/1.45 Inter, Helvetica, Arial, "Liberation Sans", sans-serif; }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .5rem; overflow-wrap: anywhere; }
        h2 { font-size: 1.2rem; margin: 2rem 0 .5rem; break-after: avoid; }
        p { margin: .25rem 0; overflow-wrap: anywhere; }
        .wide { overflow-x: auto; }
        table { border-collapse: collapse; width: 100%; }
        th, td { border-bottom: 1px solid #000; padding: .3rem .75rem .3rem 0; text-align: left; vertical-align: top; font-weight: normal; }
        thead th, td strong { font-weight: bold; }
        td.n { white-space: nowrap; font-variant-numeric: tabular-nums; }
        ol.steps { padding-left: 2.5rem; }
        ol.steps li { margin: .35rem 0; break-inside: avoid; }
        .why { font-style: italic; }
        pre { font: .85rem/1.4 "DejaVu Sans Mono", Consolas, monospace; white-space: pre-wrap; }
        figure { margin: 1rem 0; break-inside: avoid; }
        figure svg { display: block; width: 100%; height: auto; max-height: 44rem; }
        @page { margin: 14mm; }
        @media print { body { max-width: none; padding: 0; font-size: 10pt; } tr { break-inside: avoid; } .wide { overflow: visible; } figure svg { max-height: 190mm; } }
        """;

    // What is longer is words, and may go on in a next line.
    private const int LongestFigure = 40;

    private readonly StringBuilder _text = new(16 * 1024);

    internal PlainPage(string title)
        => _text.Append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>").Escaped(title)
            .Append("</title>\n<style>\n").Append(Style.Replace("\r\n", "\n")).Append("\n</style>\n</head>\n<body>\n<main>\n<h1>").Escaped(title).Append("</h1>\n");

    /// <summary>For what has no verb here, such as a picture.</summary>
    internal StringBuilder Raw => _text;

    internal PlainPage Heading(string words)
    {
        _text.Append("<h2>").Escaped(words).Append("</h2>\n");
        return this;
    }

    internal PlainPage Paragraph(string words)
    {
        _text.Append("<p>").Escaped(words).Append("</p>\n");
        return this;
    }

    /// <summary>A table; cells after the first are figures.</summary>
    internal PlainPage Table(IEnumerable<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        _text.Append("<div class=\"wide\"><table>\n<thead><tr>");
        foreach (string column in columns)
        {
            _text.Append("<th scope=\"col\">").Escaped(column).Append("</th>");
        }

        _text.Append("</tr></thead>\n<tbody>\n");
        foreach (IReadOnlyList<string> row in rows)
        {
            _text.Append("<tr><th scope=\"row\">").Escaped(row[0]).Append("</th>");
            foreach (string cell in row.Skip(1))
            {
                _text.Append(cell.Length <= LongestFigure ? "<td class=\"n\">" : "<td>").Escaped(cell).Append("</td>");
            }

            _text.Append("</tr>\n");
        }

        _text.Append("</tbody>\n</table></div>\n");
        return this;
    }

    internal string Write() => _text.Append("</main>\n</body>\n</html>\n").ToString();
}
