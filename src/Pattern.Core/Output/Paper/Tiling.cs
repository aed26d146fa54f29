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
/// <para>The room to spare is used. Pieces are laid side by side in as many widths as whole sheets make, and of the ways to lay the sheets over them the one with the fewest
/// sheets that hold anything is taken; of several the one that cuts the fewest words, and then the one that begins at the upper left corner of the pieces. The title block
/// is printed on the map.</para>
/// </remarks>
/// <example><code>
/// Tiling tiling = SheetLayout.TiledOn(PaperSize.Letter).WithOrientation(SheetOrientation.Landscape).Tile(block.Draw());
/// string firstRow = string.Join(", ", tiling.Sheets.Where(sheet =&gt; sheet.Row == 1 &amp;&amp; !sheet.IsEmpty));
/// </code></example>
public sealed class Tiling
{
    private readonly TiledSheet[] _sheets;

    private Tiling(in TilingSearch.Found found, TiledLayout layout)
    {
        TileGrid grid = found.Grid;
        bool[] inked = found.Cells;
        Drawing = found.Drawing;
        Foot = found.Foot;
        Ink = found.Ink;
        Layout = layout;
        Paper = found.Paper;
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

    /// <summary>What is parted: the drawing, of pieces the one in which they are laid out for this paper, without its title block.</summary>
    public Drawing Drawing { get; }

    /// <summary>What the map says of the drawing, or null.</summary>
    internal TitleBlock? Foot { get; }

    /// <summary>Where the drawing has ink.</summary>
    internal Inked Ink { get; }

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
                sheets.Add(new PrintSheet(sheet.Name, marks.On(sheet, move), Paper.WidthMm, Paper.HeightMm, Transform2D.Translation(move), window, Drawing));
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
        return new Tiling(new TilingSearch(layout, papers).Find(drawing), layout);
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
}
