using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>Which parts of a piece are free of lines: a raster, and for every cell how many taken cells lie left of and below it.</summary>
/// <remarks>A cell that a line touches is taken as a whole, so room found free is free of the lines themselves, not only of their samples.</remarks>
internal sealed class FreeRoom
{
    private const double CellMm = 2;
    private const double FlatMm = 0.05;

    private readonly BoundingBox _box;
    private readonly int _columns;
    private readonly int _rows;
    private readonly bool[] _taken;
    private int[]? _sums;

    /// <summary>Everything outside the outline is taken.</summary>
    internal FreeRoom(CurvePath outline)
    {
        _box = outline.Bounds;
        _columns = Math.Max(1, (int)Math.Ceiling((_box.RightMm - _box.LeftMm) / CellMm));
        _rows = Math.Max(1, (int)Math.Ceiling((_box.TopMm - _box.BottomMm) / CellMm));
        _taken = new bool[_columns * _rows];
        Point2D[] corners = outline.Flatten(UnitsNet.Length.FromMillimeters(FlatMm));
        TakeOutside(corners);
        Take(corners);
    }

    internal void Take(CurvePath path) => Take(path.Flatten(UnitsNet.Length.FromMillimeters(FlatMm)));

    internal void Take(in Point2D from, in Point2D to)
    {
        _sums = null;
        double low = Math.Min(from.YMm, to.YMm) - _box.BottomMm;
        double high = Math.Max(from.YMm, to.YMm) - _box.BottomMm;
        double rise = to.YMm - from.YMm;
        for (int row = Math.Max(0, Cell(low)); row <= Math.Min(_rows - 1, Cell(high)); row++)
        {
            // The part of the line within the row, and a flattening's width more on either side.
            double u = rise == 0 ? 0 : ((row * CellMm) + _box.BottomMm - from.YMm) / rise;
            double v = rise == 0 ? 1 : (((row + 1) * CellMm) + _box.BottomMm - from.YMm) / rise;
            double start = from.XMm + (Clamp(u) * (to.XMm - from.XMm)) - _box.LeftMm;
            double end = from.XMm + (Clamp(v) * (to.XMm - from.XMm)) - _box.LeftMm;
            int last = Math.Min(_columns - 1, Cell(Math.Max(start, end) + FlatMm));
            for (int column = Math.Max(0, Cell(Math.Min(start, end) - FlatMm)); column <= last; column++)
            {
                _taken[(row * _columns) + column] = true;
            }
        }
    }

    /// <summary>Looks for free room for a box, as near to a point as there is.</summary>
    /// <returns>Whether there is any.</returns>
    internal bool TryFind(double widthMm, double heightMm, in Point2D near, out BoundingBox place)
    {
        int wide = (int)Math.Ceiling(widthMm / CellMm);
        int high = (int)Math.Ceiling(heightMm / CellMm);
        int[] sums = _sums ??= Sums();
        double nearest = double.PositiveInfinity;
        place = default;
        for (int row = 0; row + high <= _rows; row++)
        {
            for (int column = 0; column + wide <= _columns; column++)
            {
                if (Count(sums, column, row, column + wide, row + high) != 0)
                {
                    continue;
                }

                // The box stands in the middle of its cells.
                double left = _box.LeftMm + (column * CellMm) + (((wide * CellMm) - widthMm) / 2);
                double bottom = _box.BottomMm + (row * CellMm) + (((high * CellMm) - heightMm) / 2);
                double away = near.DistanceMm(new Point2D(left + (widthMm / 2), bottom + (heightMm / 2)));
                if (away < nearest)
                {
                    nearest = away;
                    place = new BoundingBox(left, bottom, left + widthMm, bottom + heightMm);
                }
            }
        }

        return nearest < double.PositiveInfinity;
    }

    private static int Cell(double mm) => (int)Math.Floor(mm / CellMm);

    private static double Clamp(double u) => Math.Max(0, Math.Min(1, u));

    private void Take(Point2D[] points)
    {
        for (int i = 1; i < points.Length; i++)
        {
            Take(points[i - 1], points[i]);
        }
    }

    private void TakeOutside(Point2D[] corners)
    {
        var crossings = new double[corners.Length];
        for (int row = 0; row < _rows; row++)
        {
            double y = _box.BottomMm + ((row + 0.5) * CellMm);
            int count = 0;
            for (int i = 0; i < corners.Length; i++)
            {
                Point2D a = corners[i];
                Point2D b = corners[(i + 1) % corners.Length];
                if (a.YMm <= y != b.YMm <= y)
                {
                    crossings[count++] = a.XMm + ((b.XMm - a.XMm) * ((y - a.YMm) / (b.YMm - a.YMm)));
                }
            }

            Array.Sort(crossings, 0, count);
            int passed = 0;
            for (int column = 0; column < _columns; column++)
            {
                double x = _box.LeftMm + ((column + 0.5) * CellMm);
                while (passed < count && crossings[passed] < x)
                {
                    passed++;
                }

                _taken[(row * _columns) + column] = passed % 2 == 0;
            }
        }
    }

    private int[] Sums()
    {
        var sums = new int[(_columns + 1) * (_rows + 1)];
        for (int row = 0; row < _rows; row++)
        {
            int inRow = 0;
            for (int column = 0; column < _columns; column++)
            {
                inRow += _taken[(row * _columns) + column] ? 1 : 0;
                sums[((row + 1) * (_columns + 1)) + column + 1] = sums[(row * (_columns + 1)) + column + 1] + inRow;
            }
        }

        return sums;
    }

    private int Count(int[] sums, int left, int bottom, int right, int top)
    {
        int stride = _columns + 1;
        return sums[(top * stride) + right] - sums[(bottom * stride) + right] - sums[(top * stride) + left] + sums[(bottom * stride) + left];
    }
}
