using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Where the sheets of a tiling lie on the drawing. Rows and columns count from zero here.</summary>
internal readonly struct TileGrid
{
    // Sizes are sums of roundings; a sheet more for a millionth of a millimetre would be silly.
    private const double ToleranceMm = 1e-6;

    internal readonly int Columns;
    internal readonly int Rows;
    internal readonly double LeftMm;
    internal readonly double TopMm;
    internal readonly double WindowWidthMm;
    internal readonly double WindowHeightMm;
    internal readonly double OverlapMm;

    private TileGrid(int columns, int rows, double leftMm, double topMm, double windowWidthMm, double windowHeightMm, double overlapMm)
    {
        Columns = columns;
        Rows = rows;
        LeftMm = leftMm;
        TopMm = topMm;
        WindowWidthMm = windowWidthMm;
        WindowHeightMm = windowHeightMm;
        OverlapMm = overlapMm;
    }

    internal double StepXMm => WindowWidthMm - OverlapMm;

    internal double StepYMm => WindowHeightMm - OverlapMm;

    /// <summary>How many sheets it takes to cover a stretch.</summary>
    internal static double Count(double stretchMm, double windowMm, double overlapMm)
        => Math.Max(1, Math.Ceiling((stretchMm - overlapMm - ToleranceMm) / (windowMm - overlapMm)));

    /// <summary>A grid over a box; what its sheets cover beyond the box is shared out between the sides.</summary>
    /// <param name="ink">The box.</param>
    /// <param name="widthMm">What a sheet draws, across.</param>
    /// <param name="heightMm">What a sheet draws, upwards.</param>
    /// <param name="overlapMm">What two neighbours both draw.</param>
    /// <param name="shareLeft">The share that goes to the left; 0 to 1.</param>
    /// <param name="shareTop">The share that goes to the top; 0 to 1.</param>
    /// <param name="further">So many rows and columns more than it takes: where they lie empty in the end, they cost nothing.</param>
    internal static TileGrid Over(
        in BoundingBox ink, double widthMm, double heightMm, double overlapMm, double shareLeft, double shareTop, (int Columns, int Rows) further = default)
    {
        double inkWidth = ink.RightMm - ink.LeftMm;
        double inkHeight = ink.TopMm - ink.BottomMm;
        int columns = (int)Count(inkWidth, widthMm, overlapMm) + further.Columns;
        int rows = (int)Count(inkHeight, heightMm, overlapMm) + further.Rows;
        double spareX = (columns * (widthMm - overlapMm)) + overlapMm - inkWidth;
        double spareY = (rows * (heightMm - overlapMm)) + overlapMm - inkHeight;
        return new TileGrid(columns, rows, ink.LeftMm - (spareX * shareLeft), ink.TopMm + (spareY * shareTop), widthMm, heightMm, overlapMm);
    }

    /// <summary>What the sheet at a place draws.</summary>
    internal BoundingBox Window(int row, int column)
    {
        double left = LeftMm + (column * StepXMm);
        double top = TopMm - (row * StepYMm);
        return new BoundingBox(left, top - WindowHeightMm, left + WindowWidthMm, top);
    }

    /// <summary>What of it is seen when the sheets are joined: each is cut at its left and at its upper edge and laid over the one before.</summary>
    internal BoundingBox Cell(int row, int column)
    {
        BoundingBox window = Window(row, column);
        return new BoundingBox(
            window.LeftMm,
            row == Rows - 1 ? window.BottomMm : TopMm - ((row + 1) * StepYMm),
            column == Columns - 1 ? window.RightMm : LeftMm + ((column + 1) * StepXMm),
            window.TopMm);
    }

    /// <summary>Whether one sheet draws all of a box.</summary>
    internal bool IsWhole(in BoundingBox box)
    {
        // The last sheet that begins before the box; those before it end sooner.
        BoundingBox window = Window(RowAt(box.TopMm), ColumnAt(box.LeftMm));
        return box.RightMm <= window.RightMm + ToleranceMm && box.BottomMm >= window.BottomMm - ToleranceMm;
    }

    /// <summary>The same sheets without the rows and columns at its sides on which nothing is drawn.</summary>
    internal TileGrid Trimmed(bool[] inked, out bool[] kept)
    {
        int left = 0;
        int top = 0;
        int right = Columns;
        int bottom = Rows;
        int columns = Columns;
        bool IsEmpty(int fromRow, int toRow, int fromColumn, int toColumn)
        {
            for (int row = fromRow; row < toRow; row++)
            {
                for (int column = fromColumn; column < toColumn; column++)
                {
                    if (inked[(row * columns) + column])
                    {
                        return false;
                    }
                }
            }

            return true;
        }

        while (top + 1 < bottom && IsEmpty(top, top + 1, 0, Columns))
        {
            top++;
        }

        while (bottom - 1 > top && IsEmpty(bottom - 1, bottom, 0, Columns))
        {
            bottom--;
        }

        while (left + 1 < right && IsEmpty(0, Rows, left, left + 1))
        {
            left++;
        }

        while (right - 1 > left && IsEmpty(0, Rows, right - 1, right))
        {
            right--;
        }

        kept = new bool[(right - left) * (bottom - top)];
        for (int row = top; row < bottom; row++)
        {
            System.Array.Copy(inked, (row * Columns) + left, kept, (row - top) * (right - left), right - left);
        }

        return new TileGrid(right - left, bottom - top, LeftMm + (left * StepXMm), TopMm - (top * StepYMm), WindowWidthMm, WindowHeightMm, OverlapMm);
    }

    internal int ColumnAt(double xMm) => At((xMm - LeftMm) / StepXMm, Columns);

    internal int RowAt(double yMm) => At((TopMm - yMm) / StepYMm, Rows);

    private static int At(double steps, int count) => (int)Math.Max(0, Math.Min(count - 1, Math.Floor(steps)));
}
