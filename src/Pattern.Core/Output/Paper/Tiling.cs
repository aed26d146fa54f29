using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>A drawing parted into sheets of paper. Immutable.</summary>
/// <remarks>
/// <para>Every sheet draws a window of the same size, and neighbours overlap. To join them each sheet is cut along its left and its upper edge and laid over the one before,
/// so that the cells fit together without a gap and without a double line. The margins of the drawing itself are not printed: the sheets have their own.</para>
/// <para>The room to spare is used: of the ways to lay the sheets over the drawing the one with the fewest sheets that hold anything is taken, and the middle one where several do.</para>
/// </remarks>
/// <example><code>
/// Tiling tiling = SheetLayout.TiledOn(PaperSize.Letter).WithOrientation(SheetOrientation.Landscape).Tile(block.Draw());
/// string firstRow = string.Join(", ", tiling.Sheets.Where(sheet =&gt; sheet.Row == 1 &amp;&amp; !sheet.IsEmpty));
/// </code></example>
public sealed class Tiling
{
    private const int MostSheets = 2500;

    private static readonly double[] Shares = [0.5, 0, 1];

    private readonly TiledSheet[] _sheets;

    private Tiling(Drawing drawing, TiledLayout layout, PaperSize paper, in TileGrid grid, bool[] inked)
    {
        Drawing = drawing;
        Layout = layout;
        Paper = paper;
        Columns = grid.Columns;
        Rows = grid.Rows;
        _sheets = new TiledSheet[inked.Length];
        for (int i = 0; i < inked.Length; i++)
        {
            int row = i / Columns;
            int column = i % Columns;
            _sheets[i] = new TiledSheet(row + 1, column + 1, grid.Cell(row, column), grid.Window(row, column), !inked[i]);
        }

        Sheets = Array.AsReadOnly(_sheets);
    }

    /// <summary>What is parted.</summary>
    public Drawing Drawing { get; }

    /// <summary>Margins and overlap.</summary>
    public TiledLayout Layout { get; }

    /// <summary>The sheets as they lie: turned for landscape.</summary>
    public PaperSize Paper { get; }

    /// <summary>From left to right.</summary>
    public int Columns { get; }

    /// <summary>From top to bottom.</summary>
    public int Rows { get; }

    /// <summary>Every place, row after row from the top; those that are left out too.</summary>
    public IReadOnlyList<TiledSheet> Sheets { get; }

    /// <summary>How many sheets show a part of the drawing; the map is not counted.</summary>
    public int SheetCount => _sheets.Count(sheet => !sheet.IsEmpty);

    /// <summary>What all sheets show together.</summary>
    public BoundingBox Extent => _sheets[0].Window.Union(_sheets[_sheets.Length - 1].Window);

    /// <summary>The sheet at a place.</summary>
    /// <param name="row">From the top, starting at 1.</param>
    /// <param name="column">From the left, starting at 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such row or column.</exception>
    [Pure]
    public TiledSheet SheetAt(int row, int column)
        => _sheets[((Guard.InRange(row, 1, Rows, nameof(row)) - 1) * Columns) + Guard.InRange(column, 1, Columns, nameof(column)) - 1];

    /// <summary>The sheets to be printed: the map, then those that show a part of the drawing, row after row.</summary>
    [Pure]
    public IReadOnlyList<PrintSheet> Print()
    {
        var sheets = new List<PrintSheet>(new MapSheets(this).Compose());
        var marks = new JoinMarks(this);
        foreach (TiledSheet sheet in _sheets)
        {
            if (!sheet.IsEmpty)
            {
                double margin = Layout.MarginMm;
                Vector2D move = new(margin - sheet.Window.LeftMm, margin - sheet.Window.BottomMm);
                var window = new BoundingBox(margin, margin, Paper.WidthMm - margin, Paper.HeightMm - margin);
                sheets.Add(new PrintSheet(sheet.Name, marks.On(sheet, move), Paper.WidthMm, Paper.HeightMm, Transform2D.Translation(move), window));
            }
        }

        return sheets.AsReadOnly();
    }

    /// <summary>The size in words.</summary>
    public override string ToString() => FormattableString.Invariant($"{SheetCount} sheets of {Paper.Name}, {Rows} rows by {Columns} columns");

    /// <summary>Whether a place exists and is printed. Counts from 1.</summary>
    internal bool IsPrinted(int row, int column) => row >= 1 && row <= Rows && column >= 1 && column <= Columns && !SheetAt(row, column).IsEmpty;

    internal static Tiling Of(Drawing drawing, TiledLayout layout)
    {
        PaperSize upright = layout.Paper.IsUpright ? layout.Paper : layout.Paper.Turned();
        PaperSize[] papers = layout.Orientation switch
        {
            SheetOrientation.Portrait => [upright],
            SheetOrientation.Landscape => [upright.Turned()],
            _ => [upright, upright.Turned()],
        };

        RefuseWhatCannotBeJoined(layout);
        var ink = new Inked(drawing);
        Tiling? best = null;
        foreach (PaperSize paper in papers)
        {
            Tiling found = Fewest(drawing, layout, paper, ink);
            best = best is null || found.SheetCount < best.SheetCount ? found : best;
        }

        return best!;
    }

    private static Tiling Fewest(Drawing drawing, TiledLayout layout, PaperSize paper, Inked ink)
    {
        double width = paper.WidthMm - (2 * layout.MarginMm);
        double height = paper.HeightMm - (2 * layout.MarginMm);
        RefuseTooMany(ink.Bounds, width, height, layout);
        TileGrid bestGrid = default;
        bool[]? best = null;
        int least = 0;
        foreach (double shareTop in Shares)
        {
            foreach (double shareLeft in Shares)
            {
                TileGrid grid = TileGrid.Over(ink.Bounds, width, height, layout.OverlapMm, shareLeft, shareTop);
                bool[] cells = ink.Cells(grid);
                int count = cells.Count(inked => inked);
                if (best is null || count < least)
                {
                    (bestGrid, best, least) = (grid, cells, count);
                }
            }
        }

        return new Tiling(drawing, layout, paper, bestGrid, best!);
    }

    private static void RefuseWhatCannotBeJoined(TiledLayout layout)
    {
        double width = layout.Paper.WidthMm - (2 * layout.MarginMm);
        double height = layout.Paper.HeightMm - (2 * layout.MarginMm);
        double smaller = Math.Min(width, height);
        if (smaller < TiledLayout.LeastWindowMm)
        {
            throw new ArgumentException(
                MessageRegistry.Format(
                    DiagnosticCode.SheetTooSmall,
                    layout.Paper,
                    layout.Margin,
                    Length.FromMillimeters(Math.Max(0, width)),
                    Length.FromMillimeters(Math.Max(0, height)),
                    Length.FromMillimeters(TiledLayout.LeastWindowMm)),
                nameof(layout));
        }

        if (layout.OverlapMm > smaller / 2)
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.OverlapTooWide, layout.Overlap, Length.FromMillimeters(smaller / 2), layout.Paper),
                nameof(layout));
        }
    }

    private static void RefuseTooMany(in BoundingBox ink, double widthMm, double heightMm, TiledLayout layout)
    {
        double count = TileGrid.Count(ink.RightMm - ink.LeftMm, widthMm, layout.OverlapMm) * TileGrid.Count(ink.TopMm - ink.BottomMm, heightMm, layout.OverlapMm);
        if (!(count <= MostSheets))
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.TooManySheets, count, layout.Paper, MostSheets), nameof(layout));
        }
    }
}
