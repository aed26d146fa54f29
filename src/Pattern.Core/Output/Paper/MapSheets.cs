using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>What is printed before the sheets of a tiling: their map, the test squares, how to join them, the cautions. One sheet, or more where the sheets are small.</summary>
internal sealed class MapSheets
{
    private const double TitleMm = 7.5;
    private const int MostTitle = 120;
    private const double HeadMm = 4.4;
    private const double TextMm = 3.3;
    private const double CautionMm = 2.9;
    private const double BlockGapMm = 5;
    private const double ColumnGapMm = 10;
    private const double LeastTextBesideMm = 55;
    private const double LeastMapMm = 45;
    private const double LeastBesideMm = 150;
    private const double TabMm = 24;

    // Two columns where a sheet lies, if each then holds both squares side by side.
    private const double TwoColumnsMm = (2 * TestSquares.WidthMm) + ColumnGapMm;

    private const string PrintHead = "Print, then measure";

    private static readonly string[] PrintWords =
    [
        "Print at 100 % (actual size), never fitted to the page.",
        "Measure both squares on this sheet, across and up. If either is off, do not cut cloth: look for the scale in the print dialogue, and print again.",
    ];

    private static readonly string[] Cautions =
    [
        "Make a toile before cutting good cloth.",
        "Blades, shears, needles and hot irons injure: cut on a stable surface, guards on, away from children.",
        "Children\u2019s wear: local law on cords, drawstrings and the flammability of nightwear decides.",
    ];

    private readonly Tiling _tiling;
    private readonly double _marginMm;
    private readonly List<Page> _pages = [];
    private readonly double _columnMm;
    private readonly int _columns;
    private int _column;
    private double _yMm;

    internal MapSheets(Tiling tiling)
    {
        _tiling = tiling;
        _marginMm = tiling.Layout.MarginMm;
        double width = tiling.Paper.WidthMm - (2 * _marginMm);
        _columns = width >= TwoColumnsMm && tiling.Paper.WidthMm > tiling.Paper.HeightMm ? 2 : 1;
        _columnMm = (width - ((_columns - 1) * ColumnGapMm)) / _columns;
    }

    private double TopMm => _tiling.Paper.HeightMm - _marginMm;

    private double LeftMm => _marginMm + (_column * (_columnMm + ColumnGapMm));

    private Page Current => _pages[_pages.Count - 1];

    internal IReadOnlyList<PrintSheet> Compose()
    {
        StartPage();
        Block[] after = [.. Squares(), Join(), Caution()];
        TitleBlock? foot = _tiling.Foot;
        Place(Heading());
        double map = _yMm - BlockGapMm - _marginMm;
        if (_columns == 1)
        {
            // The map takes what the rest leaves, where that is enough to see something.
            double rest = after.Sum(block => BlockGapMm + Height(block));
            map = map - rest >= LeastMapMm ? map - rest : map;
        }

        if (foot is not null && _columnMm >= LeastBesideMm)
        {
            // What is drawn, and beside it what it is.
            double half = (_columnMm - ColumnGapMm) / 2;
            Place(page =>
            {
                double below = SheetMap.Draw(_tiling, LeftMm, LeftMm + half, _yMm, map, page.Map);
                return Math.Min(below, WriteFacts(foot, LeftMm + half + ColumnGapMm, half, page));
            });
        }
        else
        {
            double facts = foot is null ? 0 : BlockGapMm + Height(page => WriteFacts(foot, LeftMm, _columnMm, page));
            map = map - facts >= LeastMapMm ? map - facts : map;
            Place(page => SheetMap.Draw(_tiling, LeftMm, LeftMm + _columnMm, _yMm, map, page.Map));
            if (foot is not null)
            {
                PlaceFacts(foot);
            }
        }

        foreach (Block block in after)
        {
            Place(block);
        }

        return _pages.Select(Finish).ToArray();
    }

    private PrintSheet Finish(Page page, int index)
    {
        var box = new BoundingBox(0, 0, _tiling.Paper.WidthMm, _tiling.Paper.HeightMm);
        string name = index == 0 ? "map" : FormattableString.Invariant($"map {index + 1}");
        var marks = new Drawing(
            "Map of the sheets of " + _tiling.Drawing.Title,
            FormattableString.Invariant($"The map of {_tiling}, test squares of 5 cm and 2 in, how to join the sheets, and cautions."),
            box,
            [new DrawingLayer(LayerName.SheetMap, page.Map.ToArray()), new DrawingLayer(LayerName.TestSquares, page.Squares.ToArray())]);
        return new PrintSheet(name, marks, box.RightMm, box.TopMm, placement: null, box);
    }

    private void StartPage()
    {
        _pages.Add(new Page());
        _column = 0;
        _yMm = TopMm;
    }

    private double Height(Block block) => _yMm - block(new Page());

    private void Place(Block block, double gapMm = BlockGapMm)
    {
        bool isFresh = _yMm >= TopMm;
        if (!isFresh)
        {
            _yMm -= gapMm;
            if (_yMm - Height(block) < _marginMm - 0.01)
            {
                NextColumn();
            }
        }

        _yMm = block(Current);
    }

    private void NextColumn()
    {
        if (_column + 1 < _columns)
        {
            _column++;
            _yMm = TopMm;
        }
        else
        {
            StartPage();
        }
    }

    private Block Heading() => page =>
    {
        var column = new TextColumn(LeftMm, _columnMm, _yMm, page.Map);
        column.WriteFitted(Title(), TitleMm, TitleMm / 2, TextWeight.Bold, Ink.Strong);
        if (_tiling.Drawing.TryFindLayer(LayerName.Warning, out _))
        {
            column.WriteFitted("DO NOT CUT: the checks of this drawing failed.", TitleMm, TitleMm / 2, TextWeight.Bold, Ink.Accent);
        }

        column.Space(0.5);
        column.Write(SizeWords(), TextMm, TextWeight.Regular, Ink.Middle);
        return column.BottomMm;
    };

    // A title may be as long as its author likes; the sheet is not.
    private string Title()
    {
        string title = _tiling.Drawing.Title;
        if (title.Length <= MostTitle)
        {
            return title;
        }

        return title.Substring(0, char.IsHighSurrogate(title[MostTitle - 1]) ? MostTitle - 1 : MostTitle) + "\u2026";
    }

    private string SizeWords()
    {
        string way = _tiling.Paper.IsUpright ? "portrait" : "landscape";
        BoundingBox extent = _tiling.Extent;
        TiledSheet[] empty = _tiling.Sheets.Where(sheet => sheet.IsEmpty).ToArray();
        string left = empty.Length == 0 ? string.Empty : FormattableString.Invariant($" {empty.Length} would be empty and are not printed; they are crossed out.");
        string rows = _tiling.Rows == 1 ? "1 row" : FormattableString.Invariant($"{_tiling.Rows} rows (numbers, from the top)");
        string columns = _tiling.Columns == 1 ? "1 column" : FormattableString.Invariant($"{_tiling.Columns} columns (letters, from the left)");
        string sheets = _tiling.SheetCount == 1 ? "1 sheet" : FormattableString.Invariant($"{_tiling.SheetCount} sheets");
        return FormattableString.Invariant(
            $"Full size on {sheets} of {_tiling.Paper.Name}, {way}: {rows}, {columns}. Joined they measure {Both(extent.Width)} by {Both(extent.Height)}.{left}");
    }

    private static string Both(Length length) => FormattableString.Invariant($"{length.Centimeters:0.#} cm ({length.Inches:0.#} in)");

    // Side by side with the words beside or below them; one by one where a column is too narrow for that.
    private IEnumerable<Block> Squares()
    {
        if (_columnMm < TestSquares.WidthMm)
        {
            yield return page => SquareAlone(TestSquares.DrawMetric, page);
            yield return page => SquareAlone(TestSquares.DrawInch, page);
            yield return page => PrintText(LeftMm, _columnMm, _yMm, page);
            yield break;
        }

        yield return page =>
        {
            TestSquares.Draw(LeftMm, _yMm, page.Squares);
            double below = _yMm - TestSquares.HeightMm;
            double beside = _columnMm - TestSquares.WidthMm - ColumnGapMm;
            return beside >= LeastTextBesideMm
                ? Math.Min(below, PrintText(LeftMm + TestSquares.WidthMm + ColumnGapMm, beside, _yMm, page))
                : PrintText(LeftMm, _columnMm, below - 3, page);
        };
    }

    private double SquareAlone(Action<double, double, List<DrawingMark>> draw, Page page)
    {
        draw(LeftMm, _yMm, page.Squares);
        return _yMm - TestSquares.HeightMm;
    }

    private static double PrintText(double leftMm, double widthMm, double topMm, Page page)
    {
        var column = new TextColumn(leftMm, widthMm, topMm, page.Map);
        column.Write(PrintHead, HeadMm, TextWeight.Bold, Ink.Strong);
        column.Space(0.8);
        foreach (string words in PrintWords)
        {
            column.Write(words, TextMm, TextWeight.Regular, Ink.Strong);
            column.Space(0.8);
        }

        return column.BottomMm;
    }

    private Block Join() => page =>
    {
        var head = new TextColumn(LeftMm, _columnMm, _yMm, page.Map);
        head.Write("Join the sheets", HeadMm, TextWeight.Bold, Ink.Strong);
        double y = head.BottomMm - 1;
        y = JoinLegend.Cut("Cut along the solid lines that have scissors: at the left edge of a sheet, and at its upper edge.", LeftMm, _columnMm, y, TextMm, page.Map);
        y = JoinLegend.Lay("Lay the cut edge on the dotted line of its neighbour, over the strip that names it. Glue or tape it there.", LeftMm, _columnMm, y, TextMm, page.Map);
        y = JoinLegend.Arrows("The tips of arrows with the same number must meet. Then every line of the drawing runs on without a step.", LeftMm, _columnMm, y, TextMm, page.Map);
        return JoinLegend.Rows("Join each row first, then the rows to one another, from the top.", LeftMm, _columnMm, y, TextMm, page.Map);
    };

    // Line by line where all of them are higher than a sheet.
    private void PlaceFacts(TitleBlock foot)
    {
        if (Height(page => WriteFacts(foot, LeftMm, _columnMm, page)) <= TopMm - _marginMm)
        {
            Place(page => WriteFacts(foot, LeftMm, _columnMm, page));
            return;
        }

        double gapMm = BlockGapMm;
        foreach (Action<TextColumn> line in Facts(foot, _columnMm))
        {
            Place(
                page =>
                {
                    var column = new TextColumn(LeftMm, _columnMm, _yMm, page.Map);
                    line(column);
                    return column.BottomMm;
                },
                gapMm);
            gapMm = 0;
        }
    }

    private double WriteFacts(TitleBlock foot, double leftMm, double widthMm, Page page)
    {
        var column = new TextColumn(leftMm, widthMm, _yMm, page.Map);
        foreach (Action<TextColumn> line in Facts(foot, widthMm))
        {
            line(column);
        }

        return column.BottomMm;
    }

    // Notes, then rows, the verdict last.
    private static IEnumerable<Action<TextColumn>> Facts(TitleBlock foot, double widthMm)
    {
        for (int i = 0; i < foot.Notes.Count; i++)
        {
            string note = foot.Notes[i];
            double below = i == foot.Notes.Count - 1 ? 1.4 : 0.4;
            yield return column =>
            {
                column.Write(note, TextMm, TextWeight.Regular, Ink.Middle);
                column.Space(below);
            };
        }

        // A method names its settings as it likes: values stand clear of the longest name.
        double tab = TabMm;
        foreach ((string label, string _) in foot.Rows)
        {
            tab = Math.Max(tab, TextMark.WidthOfMm(label, TextMm, TextWeight.Regular) + TextMm);
        }

        tab = Math.Min(tab, widthMm / 2);
        foreach ((string label, string value) in foot.Rows)
        {
            yield return column => column.WriteRow(label, value, tab, TextMm, TextWeight.Regular, Ink.Strong);
        }

        yield return column =>
        {
            column.Space(0.8);
            column.WriteRow(foot.Verdict.Label, foot.Verdict.Value, tab, TextMm, TextWeight.Bold, foot.VerdictInk);
        };
    }

    private Block Caution() => page =>
    {
        var column = new TextColumn(LeftMm, _columnMm, _yMm, page.Map);
        foreach (string words in _tiling.Foot?.Cautions ?? Cautions)
        {
            column.Write(words, CautionMm, TextWeight.Regular, Ink.Middle);
        }

        return column.BottomMm;
    };

    /// <summary>Draws at the current place and returns how far down it came.</summary>
    private delegate double Block(Page page);

    private sealed class Page
    {
        internal List<DrawingMark> Map { get; } = [];

        internal List<DrawingMark> Squares { get; } = [];
    }
}
