using System.Collections.Generic;
using System.Linq;
using System.Text;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>Writes a lesson as Markdown, its pictures as files beside it.</summary>
internal sealed class LessonMarkdown
{
    private const string Special = "\\`*_[]<>&|~#!$";

    private readonly StringBuilder _text = new(16 * 1024);
    private readonly List<KeyValuePair<string, Drawing>> _pictures = [];

    internal static MarkdownPage Write(LessonPage page)
    {
        var writer = new LessonMarkdown();
        foreach (LessonPart part in page.Parts)
        {
            writer.Write(part);
        }

        return new MarkdownPage(writer._text.ToString(), writer._pictures);
    }

    private void Write(LessonPart part)
    {
        switch (part)
        {
            case LessonTitle title:
                // Kept apart, so that a name that runs from right to left turns nothing else around.
                Line("# " + Text(title.Words) + (title.Name is { } name ? "\u2068" + Text(name) + "\u2069" + Text(title.After) : string.Empty));
                break;
            case LessonHeading heading:
                Line("## " + Text(heading.Words));
                break;
            case LessonParagraph paragraph:
                Line(Text(paragraph));
                break;
            case LessonFields fields:
                Line(string.Join(" ", fields.Labels.Select(label => Text(label + ": " + WorkedText.Blank))));
                break;
            case LessonContents contents:
                Line("**" + Text(contents.Label) + "** " + string.Join(", ", contents.Entries.Select(entry => Text(entry.Words))));
                break;
            case LessonTable table:
                WriteTable(table);
                break;
            case LessonEntry entry:
                Line("### " + Text(entry.Heading));
                Picture(entry.Picture, entry.FileName, entry.Heading);
                foreach (LessonParagraph words in entry.Words)
                {
                    Line(Text(words));
                }

                break;
            case LessonFigure figure:
                Picture(figure.Picture, figure.FileName, figure.Picture.Words);
                break;
            case LessonBox box:
                foreach (LessonPart inside in box.Parts)
                {
                    Write(inside);
                }

                break;
        }
    }

    private void Picture(LessonPicture picture, string fileName, string title)
    {
        string file = fileName + ".svg";
        _pictures.Add(new KeyValuePair<string, Drawing>(file, picture.ToDrawing(title)));
        Line("![" + Text(picture.Words) + "](" + file + ")");
    }

    private void WriteTable(LessonTable table)
    {
        if (table.Rows.Count == 0)
        {
            return;
        }

        int columns = table.Rows[0].Count;
        Row(table.Columns.Count > 0 ? table.Columns : [.. Enumerable.Repeat(" ", columns)]);
        _text.Append('|').Append(string.Concat(Enumerable.Repeat(" --- |", columns))).Append('\n');
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            Row(row);
        }

        _text.Append('\n');
    }

    private void Row(IReadOnlyList<string> cells) => _text.Append("| ").Append(string.Join(" | ", cells.Select(Text))).Append(" |\n");

    private void Line(string words) => _text.Append(words).Append("\n\n");

    private static string Text(LessonParagraph paragraph) => paragraph.Tone switch
    {
        LessonTone.Figure => "**" + (paragraph.Label is { } label ? Text(label) + ": " : string.Empty) + Text(paragraph.Words) + "**",
        LessonTone.Reason => "> " + Text(paragraph.Words),
        _ => Text(paragraph.Words),
    };

    // Whatever the words hold, they are words: no character of them begins a mark of Markdown or a tag.
    private static string Text(string words)
    {
        string line = LessonText.Joined(LessonText.OneLine(words));
        var text = new StringBuilder(line.Length + 16);
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            bool isHalf = char.IsSurrogate(c) && !(char.IsHighSurrogate(c) ? i + 1 < line.Length && char.IsLowSurrogate(line[i + 1]) : i > 0 && char.IsHighSurrogate(line[i - 1]));
            bool beginsList = text.Length == 0 ? c is '-' or '+' or '=' : c is '.' or ')' && IsNumber(text);
            text.Append(Special.IndexOf(c) >= 0 || beginsList ? "\\" : string.Empty).Append(isHalf || c >= '\uFFFE' ? '\uFFFD' : c);
        }

        return text.ToString();
    }

    private static bool IsNumber(StringBuilder text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] is < '0' or > '9')
            {
                return false;
            }
        }

        return text.Length > 0;
    }
}
