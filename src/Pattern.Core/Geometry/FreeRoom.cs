using System;
using System.Collections.Generic;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Where there is room between lines: whether a box at any angle is free of them, and the free place for an upright one that is nearest to a point.</summary>
internal sealed class FreeRoom
{
    // Far less than the room that anybody keeps from a line.
    private const double FlatMm = 0.05;
    private static readonly Length Flatness = Length.FromMillimeters(FlatMm);

    // Rows that are looked through for a place; more than MostRows would not be seen on any sheet.
    private const double RowMm = 2;
    private const int MostRows = 500;

    private readonly List<Obstacle> _obstacles = [];

    // Blocked stretches of one row, by their left ends.
    private double[] _from = new double[64];
    private double[] _to = new double[64];

    /// <summary>How many rows the last search looked at.</summary>
    internal int RowsSeen { get; private set; }

    /// <summary>Takes the room of a line with a width.</summary>
    internal void Take(CurvePath path, double halfWidthMm = 0) => _obstacles.Add(new Obstacle(path.Flatten(Flatness), halfWidthMm + FlatMm));

    /// <summary>Takes the room of a straight line; of a disc where both ends are one point.</summary>
    internal void Take(in Point2D from, in Point2D to, double halfWidthMm = 0) => _obstacles.Add(new Obstacle([from, to], halfWidthMm));

    /// <summary>Whether a box has no point in common with any line.</summary>
    internal bool IsFree(in TurnedBox box)
    {
        BoundingBox bounds = box.Bounds;
        foreach (Obstacle obstacle in _obstacles)
        {
            if (obstacle.Meets(box, bounds))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a straight line meets no other.</summary>
    internal bool IsFree(in LineSegment line)
    {
        foreach (Obstacle obstacle in _obstacles)
        {
            if (obstacle.Crosses(line))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Looks for room for an upright box within an outline, as near to a point as there is in rows of 2 mm.</summary>
    /// <returns>Whether there is any.</returns>
    internal bool TryFind(CurvePath outline, double widthMm, double heightMm, in Point2D near, out BoundingBox place)
    {
        BoundingBox box = outline.Bounds;
        double lowest = box.BottomMm + (heightMm / 2);
        double spare = box.TopMm - box.BottomMm - heightMm;
        double nearest = double.PositiveInfinity;
        place = default;
        RowsSeen = 0;
        if (spare < 0 || widthMm > box.RightMm - box.LeftMm)
        {
            return false;
        }

        double first = Math.Max(lowest, Math.Min(lowest + spare, near.YMm));
        double rowMm = Math.Max(RowMm, spare / MostRows);
        int rows = (int)(spare / rowMm) + 1;
        for (int i = 0; i <= 2 * rows; i++)
        {
            // Alternately above and below, so that what is far comes last.
            double y = first + ((i + 1) / 2 * (i % 2 == 0 ? -rowMm : rowMm));
            if (Math.Abs(first - near.YMm) + ((i + 1) / 2 * rowMm) >= nearest)
            {
                break;
            }

            if (y >= lowest && y <= lowest + spare && TryFindInRow(outline, y, widthMm, heightMm, near, ref nearest, out double x))
            {
                place = new BoundingBox(x - (widthMm / 2), y - (heightMm / 2), x + (widthMm / 2), y + (heightMm / 2));
            }
        }

        return nearest < double.PositiveInfinity;
    }

    private bool TryFindInRow(CurvePath outline, double yMm, double widthMm, double heightMm, in Point2D near, ref double nearestMm, out double xMm)
    {
        int count = 0;
        RowsSeen++;
        foreach (Obstacle obstacle in _obstacles)
        {
            obstacle.AddTo(yMm - (heightMm / 2), yMm + (heightMm / 2), ref count, ref _from, ref _to);
        }

        Array.Sort(_from, _to, 0, count);
        xMm = 0;
        bool found = false;
        double free = double.NegativeInfinity;
        for (int i = 0; i < count; i++)
        {
            if (_from[i] - free >= widthMm && free > double.NegativeInfinity)
            {
                double x = Math.Max(free + (widthMm / 2), Math.Min(_from[i] - (widthMm / 2), near.XMm));
                var middle = new Point2D(x, yMm);
                double away = near.DistanceMm(middle);
                if (away < nearestMm && outline.ContainmentOf(middle) == Containment.Inside)
                {
                    (xMm, nearestMm, found) = (x, away, true);
                }
            }

            free = Math.Max(free, _to[i]);
        }

        return found;
    }

    /// <summary>A line of straight pieces with a width.</summary>
    private sealed class Obstacle
    {
        private readonly Point2D[] _points;
        private readonly double _halfWidthMm;
        private readonly BoundingBox _bounds;

        internal Obstacle(Point2D[] points, double halfWidthMm)
        {
            _points = points;
            _halfWidthMm = halfWidthMm;
            BoundingBox bounds = BoundingBox.Around(points[0], points[0]);
            foreach (Point2D point in points)
            {
                bounds = bounds.Including(point.XMm, point.YMm);
            }

            // The corner of a slanted box moves farther than the box grows, by the root of two at most.
            double by = 1.5 * halfWidthMm;
            _bounds = new BoundingBox(bounds.LeftMm - by, bounds.BottomMm - by, bounds.RightMm + by, bounds.TopMm + by);
        }

        internal bool Meets(in TurnedBox box, in BoundingBox bounds)
        {
            if (!_bounds.Overlaps(bounds))
            {
                return false;
            }

            TurnedBox grown = box.Grown(_halfWidthMm);
            for (int i = 1; i < _points.Length; i++)
            {
                if (grown.Meets(_points[i - 1], _points[i]))
                {
                    return true;
                }
            }

            return false;
        }

        internal bool Crosses(in LineSegment line)
        {
            if (!_bounds.Overlaps(BoundingBox.Around(line.Start, line.End)))
            {
                return false;
            }

            Vector2D way = line.End - line.Start;
            for (int i = 1; i < _points.Length; i++)
            {
                Vector2D own = _points[i] - _points[i - 1];
                double before = way.CrossMm2(_points[i - 1] - line.Start);
                double after = way.CrossMm2(_points[i] - line.Start);
                double start = own.CrossMm2(line.Start - _points[i - 1]);
                double end = own.CrossMm2(line.End - _points[i - 1]);
                if (before * after < 0 && start * end < 0)
                {
                    return true;
                }
            }

            return false;
        }

        // The stretches of a row from bottom to top that it blocks.
        internal void AddTo(double bottomMm, double topMm, ref int count, ref double[] from, ref double[] to)
        {
            if (_bounds.BottomMm > topMm || _bounds.TopMm < bottomMm)
            {
                return;
            }

            double low = bottomMm - _halfWidthMm;
            double high = topMm + _halfWidthMm;
            for (int i = 1; i < _points.Length; i++)
            {
                Point2D a = _points[i - 1];
                Point2D b = _points[i];
                if (Math.Min(a.YMm, b.YMm) > high || Math.Max(a.YMm, b.YMm) < low)
                {
                    continue;
                }

                double rise = b.YMm - a.YMm;
                double u = rise == 0 ? 0 : Within((low - a.YMm) / rise);
                double v = rise == 0 ? 1 : Within((high - a.YMm) / rise);
                double start = a.XMm + (u * (b.XMm - a.XMm));
                double end = a.XMm + (v * (b.XMm - a.XMm));
                if (count == from.Length)
                {
                    Array.Resize(ref from, 2 * count);
                    Array.Resize(ref to, 2 * count);
                }

                from[count] = Math.Min(start, end) - _halfWidthMm;
                to[count++] = Math.Max(start, end) + _halfWidthMm;
            }
        }

        private static double Within(double part) => Math.Max(0, Math.Min(1, part));
    }
}
