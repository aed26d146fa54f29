using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Geometry;
using UnitsNet.Units;

namespace Pattern.Core.Output;

/// <summary>Writes a lesson as one HTML page.</summary>
internal sealed class LessonHtml
{
    private readonly LessonPage _page;
    private readonly StringBuilder _text = new(64 * 1024);
    private bool _hasLines;

    private LessonHtml(LessonPage page) => _page = page;

    internal static string Write(LessonPage page)
    {
        var writer = new LessonHtml(page);
        writer._text.Append("<!DOCTYPE html>\n<html lang=\"").Escaped(page.Language)
            .Append("\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
            .Escaped(page.Title).Append("</title>\n<style>\n").Append(LessonStyle.Text.Replace("\r\n", "\n")).Append("\n</style>\n</head>\n<body>\n<main>\n");
        foreach (LessonPart part in page.Parts)
        {
            writer.Write(part);
        }

        return writer._text.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private void Write(LessonPart part)
    {
        switch (part)
        {
            case LessonTitle title:
                WriteTitle(title);
                break;
            case LessonHeading heading:
                _text.Append("<h2").Append(heading.Id is null ? string.Empty : " id=\"" + heading.Id + "\"").Append('>');
                Words(heading.Words);
                _text.Append("</h2>\n");
                break;
            case LessonParagraph paragraph:
                WriteParagraph(paragraph);
                break;
            case LessonFields fields:
                _text.Append("<p class=\"fill\">");
                foreach (string label in fields.Labels)
                {
                    _text.Append("<span>").Escaped(label).Append("</span>");
                }

                _text.Append("</p>\n");
                break;
            case LessonContents contents:
                WriteContents(contents);
                break;
            case LessonTable table:
                WriteTable(table);
                break;
            case LessonEntry entry:
                WriteEntry(entry);
                break;
            case LessonFigure figure:
                _text.Append("<div class=\"finished\">\n");
                WritePicture(figure.Picture);
                _text.Append("</div>\n");
                break;
            case LessonBox box:
                _text.Append("<section class=\"cautions\">\n");
                foreach (LessonPart inside in box.Parts)
                {
                    Write(inside);
                }

                _text.Append("</section>\n");
                break;
        }
    }

    private void WriteTitle(LessonTitle title)
    {
        _text.Append("<h1>").Escaped(title.Words);
        if (title.Name is { } name)
        {
            // Kept apart, so that a name that runs from right to left turns nothing else around.
            _text.Append("<bdi>").Escaped(name).Append("</bdi>").Escaped(title.After);
        }

        _text.Append("</h1>\n");
    }

    private void WriteContents(LessonContents contents)
    {
        _text.Append("<nav aria-label=\"").Escaped(contents.Label).Append("\"><strong>").Escaped(contents.Label).Append("</strong>");
        foreach ((string id, string words) in contents.Entries)
        {
            _text.Append(" <a href=\"#").Append(id).Append("\">").Escaped(words).Append("</a>");
        }

        _text.Append("</nav>\n");
    }

    private void WriteEntry(LessonEntry entry)
    {
        if (!_hasLines && entry.Picture.Common.Count > 0)
        {
            WriteLines(entry.Picture.Common);
        }

        _text.Append("<section class=\"step\" id=\"").Append(entry.Id).Append("\">\n");
        WritePicture(entry.Picture);
        _text.Append("<div>\n<h3>").Escaped(entry.Heading).Append("</h3>\n");
        foreach (LessonParagraph words in entry.Words)
        {
            WriteParagraph(words);
        }

        _text.Append("</div>\n</section>\n");
    }

    private void WriteParagraph(LessonParagraph paragraph)
    {
        _text.Append(paragraph.Tone switch { LessonTone.Reason => "<p class=\"why\">", LessonTone.Figure => "<p class=\"measure\">", _ => "<p>" });
        if (paragraph.Label is { } label)
        {
            _text.Append("<small>").Escaped(label).Append("</small> ");
        }

        Words(paragraph.Words);
        _text.Append("</p>\n");
    }

    private void WriteTable(LessonTable table)
    {
        _text.Append("<table>\n");
        if (table.Columns.Count > 0)
        {
            _text.Append("<thead><tr>");
            foreach (string column in table.Columns)
            {
                _text.Append("<th scope=\"col\">").Escaped(column).Append("</th>");
            }

            _text.Append("</tr></thead>\n");
        }

        _text.Append("<tbody>\n");
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            _text.Append("<tr><th scope=\"row\">").Escaped(row[0]).Append("</th>");
            foreach (string value in row.Skip(1))
            {
                _text.Append("<td>");
                Words(value);
                _text.Append("</td>");
            }

            _text.Append("</tr>\n");
        }

        _text.Append("</tbody>\n</table>\n");
    }

    // Each line of the draft once; pictures show it again.
    private void WriteLines(IReadOnlyList<CurvePath> lines)
    {
        _hasLines = true;
        _text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"lines\" width=\"0\" height=\"0\" aria-hidden=\"true\"><defs>\n");
        for (int i = 0; i < lines.Count; i++)
        {
            _text.Append("<path id=\"").Append(IdOf(i)).Append('"');
            WriteData(lines[i]);
        }

        _text.Append("</defs></svg>\n");
    }

    private void WritePicture(LessonPicture picture)
    {
        _text.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"").Escaped(picture.Words).Append("\" viewBox=\"0 0 ").Number(Math.Round(picture.WidthMm, 2)).Append(' ')
            .Number(Math.Round(picture.HeightMm, 2)).Append("\">\n");
        foreach (LessonLines lines in picture.Lines)
        {
            _text.Append("<g class=\"").Append(ClassOf(lines.Stroke)).Append("\">");
            for (int i = 0; i < lines.Common.Count; i++)
            {
                _text.Append("<use href=\"#").Append(IdOf(lines.Common.From + i)).Append("\"/>");
            }

            foreach (CurvePath path in lines.Own)
            {
                _text.Append("<path");
                WriteData(path);
            }

            _text.Append("</g>\n");
        }

        foreach (LessonPoint point in picture.Points)
        {
            _text.Append("<circle class=\"").Append(point.IsFull ? "marked" : "from").Append("\" cx=\"").Number(Math.Round(point.Position.XMm, 2)).Append("\" cy=\"").Number(Math.Round(-point.Position.YMm, 2))
                .Append("\" r=\"").Number(LessonPicture.PointMm / 2).Append("\"/>\n");
        }

        foreach (TextMark name in picture.Names)
        {
            string anchor = name.Alignment switch { TextAlignment.Start => "start", TextAlignment.End => "end", _ => "middle" };
            _text.Append("<text x=\"").Number(Math.Round(name.Anchor.XMm, 2)).Append("\" y=\"").Number(Math.Round(-name.Anchor.YMm, 2)).Append("\" font-size=\"").Number(Math.Round(name.SizeMm, 2))
                .Append("\" text-anchor=\"").Append(anchor).Append("\">").Escaped(name.Text).Append("</text>\n");
        }

        _text.Append("</svg>\n");
    }

    private static string ClassOf(LessonStroke stroke) => stroke switch
    {
        LessonStroke.Earlier => "old",
        LessonStroke.New => "new",
        LessonStroke.Leader => "leader",
        LessonStroke.Seam => "seam",
        LessonStroke.Dart => "dart",
        LessonStroke.Level => "level",
        LessonStroke.Body => "body",
        _ => "tape",
    };

    private void WriteData(CurvePath path)
    {
        _text.Append(" vector-effect=\"non-scaling-stroke\" d=\"");
        var sink = new PathData(_text, 0, 0, decimals: 2);
        path.WriteTo(ref sink, LengthUnit.Millimeter, ArcOutput.Cubics);
        _text.Append("\"/>\n");
    }

    // A blank is a line to write on; a screen reader says that it is one.
    private void Words(string words)
    {
        string[] parts = LessonText.AroundBlanks(words);
        for (int i = 0; i < parts.Length; i++)
        {
            if (i > 0)
            {
                _text.Append("<span class=\"blank\"><span class=\"hidden\">").Escaped(_page.Blank).Append("</span></span>");
            }

            _text.Escaped(parts[i]);
        }
    }

    private static string IdOf(int line) => "line-" + (line + 1).ToString(CultureInfo.InvariantCulture);
}
