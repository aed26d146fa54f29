using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Looks for the way to lay sheets over a drawing that takes the fewest of them.</summary>
/// <remarks>Its work has a bound: 100 grids for each paper and, of pieces, 9 more for each of up to 12 widths, 100 for the best of those, and one drawing more for its labels; of a block, as many again for its narrow drawing.</remarks>
internal sealed class TilingSearch
{
    private const int MostSheets = 2500;

    // Wider than this no row of sheets is tried.
    private const int MostColumns = 12;

    // The share of the room to spare that goes to the left, and to the top.
    private static readonly double[] Shares = [0, 0.25, 0.5, 0.75, 1];
    private static readonly double[] FewShares = [0, 0.5, 1];

    // Rows and columns more than it takes: where they lie empty in the end, they cost nothing.
    private static readonly (int Columns, int Rows)[] Further = [(0, 0), (1, 0), (0, 1), (1, 1)];

    private readonly TiledLayout _layout;
    private readonly PaperSize[] _papers;

    internal TilingSearch(TiledLayout layout, PaperSize[] papers)
    {
        _layout = layout;
        _papers = papers;
    }

    internal Found Find(Drawing drawing)
    {
        Found best = Over(drawing);
        if (drawing.Narrower is { } narrower)
        {
            Found other = Over(narrower.Draw());
            return other.Sheets < best.Sheets ? other : best;
        }

        if (drawing.Pieces is not { } pieces)
        {
            return best;
        }

        double drawnMm = pieces.WidthMm;
        if (TryFindWidth(pieces, best.Sheets, out double widthMm))
        {
            // The words that were missing from the outlines may cost a sheet again.
            Found other = Over(pieces.Draw(widthMm, []));
            (best, drawnMm) = other.Sheets < best.Sheets ? (other, widthMm) : (best, drawnMm);
        }

        return WithLabelsOnOneSheet(best, pieces, drawnMm);
    }

    // What two sheets would show of a label, one of them shows where its piece has room for that: the sheets stay as they lie.
    private static Found WithLabelsOnOneSheet(in Found found, IPieceLayout pieces, double widthMm)
    {
        TileGrid grid = found.Grid;
        bool[] printed = found.Cells;
        BoundingBox[] sheets = [.. Enumerable.Range(0, printed.Length).Where(i => printed[i]).Select(i => grid.Cell(i / grid.Columns, i % grid.Columns))];
        Drawing shown = Shown(pieces.Draw(widthMm, sheets));
        var ink = new Inked(shown);
        bool[] cells = ink.Cells(grid);
        int count = cells.Count(inked => inked);
        BoundingBox all = grid.Window(0, 0).Union(grid.Window(grid.Rows - 1, grid.Columns - 1));
        bool holds = all.Contains(ink.Bounds.LowerLeft) && all.Contains(ink.Bounds.UpperRight);
        return holds && count <= found.Sheets ? new Found(shown, found.Paper, grid, cells, ink, count, ink.CutWords(grid), found.Foot) : found;
    }

    // The map says what the title block does.
    private static Drawing Shown(Drawing drawing) => drawing.Foot is null ? drawing : drawing.Without(LayerName.TitleBlock, LayerName.TestSquares);

    private Found Over(Drawing drawing)
    {
        Drawing shown = Shown(drawing);
        var ink = new Inked(shown);
        Found? best = null;
        foreach (PaperSize paper in _papers)
        {
            foreach ((int Columns, int Rows) further in Further)
            {
                Found found = Fewest(shown, ink, paper, Shares, further);
                best = best is { } before && !found.IsBetterThan(before) ? before : found;
            }
        }

        return best!.Value.Trimmed(drawing.Foot);
    }

    // With the outlines alone, which cost little: the widths that whole sheets make, up to one row of all pieces.
    private bool TryFindWidth(IPieceLayout pieces, int fewerThan, out double widthMm)
    {
        widthMm = 0;
        BoundingBox row = pieces.Outline(double.MaxValue).Bounds;
        foreach (PaperSize paper in _papers)
        {
            double window = paper.WidthMm - (2 * _layout.MarginMm);
            double width = 0;
            for (int columns = 1; columns <= MostColumns && width < row.RightMm - row.LeftMm; columns++)
            {
                // Half of a cut line lies outside its piece, on either side.
                width = (columns * (window - _layout.OverlapMm)) + _layout.OverlapMm - LineRole.Cut.WeightMm;
                Drawing outline = pieces.Outline(width);
                int sheets = Fewest(outline, new Inked(outline), paper, FewShares, default).Sheets;
                if (sheets < fewerThan)
                {
                    (fewerThan, widthMm) = (sheets, width);
                }
            }
        }

        return widthMm > 0;
    }

    private Found Fewest(Drawing drawing, Inked ink, PaperSize paper, double[] shares, (int Columns, int Rows) further)
    {
        double width = paper.WidthMm - (2 * _layout.MarginMm);
        double height = paper.HeightMm - (2 * _layout.MarginMm);
        RefuseTooMany(ink.Bounds, width, height);
        Found? best = null;
        foreach (double shareTop in shares)
        {
            foreach (double shareLeft in shares)
            {
                TileGrid grid = TileGrid.Over(ink.Bounds, width, height, _layout.OverlapMm, shareLeft, shareTop, further);
                bool[] cells = ink.Cells(grid);
                var found = new Found(drawing, paper, grid, cells, ink, cells.Count(inked => inked), ink.CutWords(grid), null);
                best = best is { } before && !found.IsBetterThan(before) ? before : found;
            }
        }

        return best!.Value;
    }

    private void RefuseTooMany(in BoundingBox ink, double widthMm, double heightMm)
    {
        double count = TileGrid.Count(ink.RightMm - ink.LeftMm, widthMm, _layout.OverlapMm) * TileGrid.Count(ink.TopMm - ink.BottomMm, heightMm, _layout.OverlapMm);
        if (!(count <= MostSheets))
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.TooManySheets, count, _layout.Paper, MostSheets), "layout");
        }
    }

    /// <summary>One way to lay sheets over a drawing.</summary>
    internal readonly struct Found
    {
        internal Found(Drawing drawing, PaperSize paper, in TileGrid grid, bool[] cells, Inked ink, int sheets, int cutWords, TitleBlock? foot)
        {
            Drawing = drawing;
            Paper = paper;
            Grid = grid;
            Cells = cells;
            Ink = ink;
            Sheets = sheets;
            CutWords = cutWords;
            Foot = foot;
        }

        internal Drawing Drawing { get; }

        internal PaperSize Paper { get; }

        internal TileGrid Grid { get; }

        /// <summary>Which sheets hold ink, row after row.</summary>
        internal bool[] Cells { get; }

        internal Inked Ink { get; }

        internal int Sheets { get; }

        /// <summary>How many words no sheet shows whole.</summary>
        internal int CutWords { get; }

        internal TitleBlock? Foot { get; }

        internal bool IsBetterThan(in Found other) => Sheets < other.Sheets || (Sheets == other.Sheets && CutWords < other.CutWords);

        internal Found Trimmed(TitleBlock? foot)
        {
            TileGrid grid = Grid.Trimmed(Cells, out bool[] cells);
            return new Found(Drawing, Paper, grid, cells, Ink, Sheets, CutWords, foot);
        }
    }
}
