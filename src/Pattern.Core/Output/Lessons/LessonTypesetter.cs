using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>Sets the parts of a lesson in a column of paper.</summary>
internal sealed class LessonTypesetter(LessonPage page, double widthMm, double heightMm, IReadOnlyDictionary<string, int> pages)
{
    internal const double TextMm = 3.5;
    private const double TitleMm = 6.5;
    private const double HeadingMm = 4.8;
    private const double SmallMm = 3;
    private const double FigureMm = 6.3;
    private const double LineSpacing = 1.35;
    private const double GapMm = 1.2;
    private const double PictureColumnMm = 61;
    private const double PicturePart = 0.78;
    private const string Blank = "__________";
    private const double LabelPart = 0.36;
    private const double CellGapMm = 3;
    private const double BoxMm = 3;
    private const double RuleMm = 1.2;

    internal IEnumerable<LessonItem> Set(LessonPart part) => part switch
    {
        LessonTitle title => Lines(title.Words + (title.Name is null ? string.Empty : LessonText.OneLine(title.Name)) + title.After, TitleMm, TextWeight.Bold, widthMm),
        LessonHeading heading => SetHeading(heading.Words, HeadingMm, 5, heading.Id),
        LessonParagraph paragraph => SetParagraph(paragraph, widthMm),
        LessonFields fields => [SetFields(fields)],
        LessonContents contents => SetContents(contents),
        LessonTable table => SetTable(table),
        LessonEntry entry => SetEntry(entry),
        LessonFigure figure => [SetFigure(figure.Picture)],
        LessonBox box => SetBox(box),
        _ => [],
    };

    // A heading of many lines stays together with the first of what follows.
    private IEnumerable<LessonItem> SetHeading(string words, double sizeMm, double aboveMm, string? id)
    {
        yield return new LessonItem(aboveMm, _ => []) { KeepsNext = true };
        foreach (LessonItem line in Lines(words, sizeMm, TextWeight.Bold, widthMm))
        {
            yield return new LessonItem(line.HeightMm, line.Draw) { KeepsNext = true, Id = id };
            id = null;
        }
    }

    private static IEnumerable<LessonItem> Lines(string words, double sizeMm, TextWeight weight, double widthMm) => LessonLineBreaks.Of(words.Replace(WorkedText.Blank, Blank), sizeMm, weight, widthMm).Select(line =>
        new LessonItem(LineSpacing * sizeMm, corner => [new TextMark(line, new Point2D(corner.XMm, corner.YMm - sizeMm), sizeMm, 0, TextAlignment.Start, weight, Ink.Strong)]));

    private static IEnumerable<LessonItem> SetParagraph(LessonParagraph paragraph, double widthMm)
    {
        switch (paragraph.Tone)
        {
            case LessonTone.Figure:
                return (paragraph.Label is { } label ? Lines(label, SmallMm, TextWeight.Regular, widthMm) : []).Concat(Lines(paragraph.Words, FigureMm, TextWeight.Bold, widthMm));
            case LessonTone.Reason:
                const double Bar = 2.5;
                return Lines(paragraph.Words, TextMm, TextWeight.Regular, widthMm - Bar)
                    .Select(line => new LessonItem(line.HeightMm, corner => line.Draw(new Point2D(corner.XMm + Bar, corner.YMm)).Concat([Line(corner, new Point2D(corner.XMm, corner.YMm - line.HeightMm), LineRole.LessonNew)])));
            default:
                return Lines(paragraph.Words, TextMm, TextWeight.Regular, widthMm).Concat([new LessonItem(GapMm, _ => [])]);
        }
    }

    private LessonItem SetFields(LessonFields fields)
    {
        const double Height = 12;
        double each = widthMm / Math.Max(1, fields.Labels.Count);
        return new LessonItem(Height, corner => fields.Labels.SelectMany((label, i) =>
        {
            var at = new Point2D(corner.XMm + (i * each), corner.YMm - Height + 2);
            string shown = LessonLineBreaks.Shortened(label, TextMm, TextWeight.Regular, each - 20);
            double from = at.XMm + TextMark.WidthOfMm(shown, TextMm, TextWeight.Regular) + 2;
            return new DrawingMark[] { new TextMark(shown, at, TextMm, 0, TextAlignment.Start, TextWeight.Regular, Ink.Strong), Line(new Point2D(from, at.YMm), new Point2D(at.XMm + each - 5, at.YMm), LineRole.LessonEarlier) };
        }));
    }

    private IEnumerable<LessonItem> SetContents(LessonContents contents)
    {
        string entries = string.Join("; ", contents.Entries.Select(entry => page.OnPage(entry.Words, pages.TryGetValue(entry.Id, out int number) ? number.ToString(System.Globalization.CultureInfo.InvariantCulture) : "00")));
        return Lines(contents.Label + " " + entries, TextMm, TextWeight.Regular, widthMm).Concat([new LessonItem(GapMm, _ => [])]);
    }

    private IEnumerable<LessonItem> SetTable(LessonTable table)
    {
        if (table.Columns.Count > 0)
        {
            foreach (LessonItem line in SetRow(table.Columns, TextWeight.Bold))
            {
                yield return new LessonItem(line.HeightMm, line.Draw) { KeepsNext = true };
            }
        }

        foreach (LessonItem line in table.Rows.SelectMany(row => SetRow(row, TextWeight.Regular)))
        {
            yield return line;
        }
    }

    private IEnumerable<LessonItem> SetRow(IReadOnlyList<string> cells, TextWeight weight)
    {
        double label = cells.Count > 1 ? LabelPart * widthMm : widthMm;
        double other = cells.Count > 1 ? (widthMm - label) / (cells.Count - 1) : 0;
        LessonItem[][] columns = [.. cells.Select((cell, i) => Lines(cell, TextMm, weight, (i == 0 ? label : other) - CellGapMm).ToArray())];
        int most = columns.Max(column => column.Length);
        var lines = new List<LessonItem>(most + 1);
        for (int i = 0; i < most; i++)
        {
            int row = i;
            lines.Add(new LessonItem(LineSpacing * TextMm, corner => columns.SelectMany((column, at) => row < column.Length ? column[row].Draw(new Point2D(corner.XMm + (at == 0 ? 0 : label + ((at - 1) * other)), corner.YMm)) : [])));
        }

        lines.Add(new LessonItem(2 * RuleMm, corner => [Line(new Point2D(corner.XMm, corner.YMm - RuleMm), new Point2D(corner.XMm + widthMm, corner.YMm - RuleMm), LineRole.LessonEarlier)]));
        LessonItem whole = LessonItem.Stack(lines);
        return whole.HeightMm <= heightMm ? [whole] : lines;
    }

    private IEnumerable<LessonItem> SetEntry(LessonEntry entry)
    {
        const double Above = 2.5;
        double words = widthMm - PictureColumnMm;
        LessonItem[] lines = [.. Lines(entry.Heading, TextMm, TextWeight.Bold, words), .. entry.Words.SelectMany(paragraph => SetParagraph(paragraph, words))];
        LessonItem column = LessonItem.Stack(lines, PictureColumnMm);
        double height = Math.Max(PicturePart * entry.Picture.HeightMm, column.HeightMm) + (2 * Above);
        if (height <= heightMm)
        {
            return [new LessonItem(height, corner => Rule(corner).Concat(Picture(entry.Picture, corner)).Concat(column.Draw(new Point2D(corner.XMm, corner.YMm - Above)))) { Id = entry.Id }];
        }

        // More words than a sheet holds: the picture first, then line by line.
        LessonItem picture = new((PicturePart * entry.Picture.HeightMm) + (2 * Above), corner => Rule(corner).Concat(Picture(entry.Picture, corner))) { Id = entry.Id };
        return [picture, .. Lines(entry.Heading, TextMm, TextWeight.Bold, widthMm), .. entry.Words.SelectMany(paragraph => SetParagraph(paragraph, widthMm))];

        IEnumerable<DrawingMark> Rule(Point2D corner) => [Line(corner, new Point2D(corner.XMm + widthMm, corner.YMm), LineRole.LessonEarlier)];
        static IEnumerable<DrawingMark> Picture(LessonPicture shown, Point2D corner) => shown.Marks(new Point2D(corner.XMm, corner.YMm - Above), PicturePart);
    }

    // As large as it is, where there is room for that.
    private LessonItem SetFigure(LessonPicture picture)
    {
        double scale = Math.Min(1, Math.Min(widthMm / picture.WidthMm, heightMm / 2 / picture.HeightMm));
        return new LessonItem(scale * picture.HeightMm, corner => picture.Marks(corner, scale)) { KeepsNext = true };
    }

    private IEnumerable<LessonItem> SetBox(LessonBox box)
    {
        LessonItem[] inside = [.. new LessonTypesetter(page, widthMm - (2 * BoxMm), heightMm, pages).SetAll(box.Parts)];
        LessonItem stack = LessonItem.Stack(inside, BoxMm);
        if (stack.HeightMm + (2 * BoxMm) > heightMm)
        {
            return inside;
        }

        double height = stack.HeightMm + (2 * BoxMm);
        return
        [
            new LessonItem(2 * BoxMm, _ => []),
            new LessonItem(height, corner => stack.Draw(new Point2D(corner.XMm, corner.YMm - BoxMm)).Concat([Frame(corner, height)])) { Id = inside.Select(item => item.Id).FirstOrDefault(id => id is not null) },
        ];
    }

    private IEnumerable<LessonItem> SetAll(IEnumerable<LessonPart> parts) => parts.SelectMany(Set);

    private PathMark Frame(Point2D corner, double height) => new(
        CurvePath.From(corner).LineTo(new Point2D(corner.XMm + widthMm, corner.YMm)).LineTo(new Point2D(corner.XMm + widthMm, corner.YMm - height)).LineTo(new Point2D(corner.XMm, corner.YMm - height)).Closed(),
        LineRole.LessonSeam);

    private static PathMark Line(in Point2D from, in Point2D to, LineRole role) => new(CurvePath.FromLine(new LineSegment(from, to)), role);
}
