using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Lays a lesson out on sheets of paper, upright and at full size: words, and pictures as lines.</summary>
internal sealed class LessonSheets
{
    private const double MarginMm = 14;
    private const double FootMm = 2.8;
    private const double FootRoomMm = 7;

    // What an entry with its picture needs; smaller paper takes less of the words on a line.
    private const double LeastWidthMm = 140;

    private readonly LessonPage _page;
    private readonly double _widthMm;
    private readonly double _heightMm;
    private readonly List<List<DrawingMark>> _sheets = [];
    private readonly Dictionary<string, int> _pages = [];

    private LessonSheets(LessonPage page, PaperSize paper)
    {
        _page = page;
        _widthMm = Math.Min(paper.WidthMm, paper.HeightMm);
        _heightMm = Math.Max(paper.WidthMm, paper.HeightMm);
    }

    private double ColumnMm => _widthMm - (2 * MarginMm);

    private double RoomMm => _heightMm - (2 * MarginMm) - FootRoomMm;

    /// <summary>The sheets, each with its number.</summary>
    internal static IReadOnlyList<PrintSheet> Arrange(LessonPage page, PaperSize paper)
    {
        var sheets = new LessonSheets(page, paper);
        if (sheets._widthMm < LeastWidthMm)
        {
            throw new ArgumentException(MessageRegistry.Format(
                DiagnosticCode.PaperTooNarrow, paper, UnitsNet.Length.FromMillimeters(sheets._widthMm), UnitsNet.Length.FromMillimeters(LeastWidthMm)), nameof(paper));
        }

        // Once to learn on which sheet everything stands, and once to print it into the contents.
        sheets.Fill([]);
        sheets.Fill(new Dictionary<string, int>(sheets._pages));
        return sheets.Number();
    }

    private void Fill(Dictionary<string, int> pages)
    {
        _sheets.Clear();
        _pages.Clear();
        var setter = new LessonTypesetter(_page, ColumnMm, RoomMm, pages);
        LessonItem[] items = [.. _page.Parts.SelectMany(setter.Set)];
        double usedMm = RoomMm;
        for (int i = 0; i < items.Length;)
        {
            int end = i + 1;
            double togetherMm = items[i].HeightMm;
            while (items[end - 1].KeepsNext && end < items.Length && togetherMm + items[end].HeightMm <= RoomMm)
            {
                togetherMm += items[end++].HeightMm;
            }

            if (usedMm + togetherMm > RoomMm)
            {
                _sheets.Add([]);
                usedMm = 0;
            }

            for (; i < end; i++)
            {
                Put(items[i], usedMm);
                usedMm += items[i].HeightMm;
            }
        }
    }

    private void Put(LessonItem item, double downMm)
    {
        _sheets[_sheets.Count - 1].AddRange(item.Draw(new Point2D(MarginMm, _heightMm - MarginMm - downMm)));
        if (item.Id is { } id)
        {
            _pages[id] = _sheets.Count;
        }
    }

    private PrintSheet[] Number()
    {
        string count = _sheets.Count.ToString(CultureInfo.InvariantCulture);
        return [.. _sheets.Select((marks, i) =>
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture);
            string foot = _page.Foot(number, count);
            double roomMm = ColumnMm - TextMark.WidthOfMm(foot, FootMm, TextWeight.Regular) - 5;
            string title = LessonLineBreaks.Shortened(_page.Title, FootMm, TextWeight.Regular, roomMm);
            marks.Add(new TextMark(title, new Point2D(MarginMm, MarginMm), FootMm, 0, TextAlignment.Start, TextWeight.Regular, Ink.Strong));
            marks.Add(new TextMark(foot, new Point2D(_widthMm - MarginMm, MarginMm), FootMm, 0, TextAlignment.End, TextWeight.Regular, Ink.Strong));
            var box = new BoundingBox(0, 0, _widthMm, _heightMm);
            Drawing drawn = Drawing.Of(_page.Title, foot, box, [DrawingLayer.Of(LayerName.Lesson, marks)]);
            return new PrintSheet(number, drawn, _widthMm, _heightMm, null, box);
        })];
    }
}
