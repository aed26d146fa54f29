using System;

namespace Pattern.Core.Layout;

/// <content>Looking along straight lines.</content>
internal sealed partial class PlaceSearch
{
    // Below this a direction does not run across a side.
    private const double Level = 1e-12;

    // A place so near a side lies on it.
    private const double TouchMm = 1e-7;

    // How often a place is improved along all its lines, and along how many sides of what it touches.
    private const int MostRounds = 4;
    private const int MostSlides = 2;

    // A round that gains less than this is the last.
    private const double WorthIt = 0.99;

    // Looking at one place costs about a thirtieth of looking along a line.
    private const int PlacesPerLine = 30;

    private double[] _enters = new double[64];
    private double[] _leaves = new double[64];
    private int[] _crossed = new int[64];
    private int[] _inside = new int[64];
    private double[] _stops = new double[130];
    private int _places;

    /// <summary>Moves a place along straight lines, across, along and beside what it touches, as long as the overlap grows less.</summary>
    /// <param name="x">Where it is.</param>
    /// <param name="y">Where it is.</param>
    /// <param name="overlap">The overlap there.</param>
    /// <param name="reachMm">How far it moves along one line.</param>
    internal double Settle(ref double x, ref double y, double overlap, double reachMm)
    {
        for (int round = 0; round < MostRounds && overlap > 0; round++)
        {
            double before = overlap;
            overlap = Slide(ref x, ref y, 1, 0, reachMm, overlap);
            overlap = Slide(ref x, ref y, 0, 1, reachMm, overlap);
            overlap = SlideAlongSides(ref x, ref y, reachMm, overlap);
            if (overlap > before * WorthIt)
            {
                break;
            }
        }

        return overlap;
    }

    /// <summary>The first free place on a level line, from the beginning of the cloth.</summary>
    internal double FirstFree(double y)
    {
        Work++;
        int count = 0;
        for (int k = 0; k < _polygons; k++)
        {
            if (y > _minY[k] && y < _maxY[k] && TryCross(k, 0, y, 1, 0, double.MinValue, double.MaxValue, out double enter, out double leave))
            {
                count = Insert(count, k, enter, leave);
            }
        }

        double x = MinX;
        for (int i = 0; i < count; i++)
        {
            if (_enters[i] < x && _leaves[i] > x)
            {
                x = _leaves[i];
            }
        }

        return x;
    }

    private double SlideAlongSides(ref double x, ref double y, double reachMm, double overlap)
    {
        int slides = 0;
        for (int entry = _cellHead[(Row(y) * _columns) + Column(x)]; entry >= 0 && slides < MostSlides && overlap > 0; entry = _entryNext[entry])
        {
            int k = _entryPolygon[entry];
            if (x < _minX[k] || x > _maxX[k] || y < _minY[k] || y > _maxY[k])
            {
                continue;
            }

            double[] sides = _sides[k];
            double dx = x - _originX[k];
            double dy = y - _originY[k];
            double least = double.MaxValue;
            int nearest = _first[k];
            for (int q = _first[k]; q < _end[k] && least >= -TouchMm; q += 3)
            {
                double depth = sides[q + 2] - (sides[q] * dx) - (sides[q + 1] * dy);
                if (depth < least)
                {
                    least = depth;
                    nearest = q;
                }
            }

            if (least >= -TouchMm)
            {
                slides++;
                overlap = Slide(ref x, ref y, -sides[nearest + 1], sides[nearest], reachMm, overlap);
            }
        }

        return overlap;
    }

    private double Slide(ref double x, ref double y, double ux, double uy, double reachMm, double overlap)
    {
        if (overlap <= 0)
        {
            return overlap;
        }

        double least = LeastOnLine(x, y, ux, uy, reachMm, overlap, out double shift);
        if (least < overlap)
        {
            x = Math.Max(MinX, Math.Min(MaxX, x + (shift * ux)));
            y = Math.Max(MinY, Math.Min(MaxY, y + (shift * uy)));
            return least;
        }

        return overlap;
    }

    /// <summary>The least overlap on a line, if it is less than that at its beginning, and how far away it is.</summary>
    private double LeastOnLine(double x, double y, double ux, double uy, double reachMm, double overlap, out double shift)
    {
        Work++;
        if (_places >= PlacesPerLine)
        {
            Work += _places / PlacesPerLine;
            _places %= PlacesPerLine;
        }

        shift = 0;
        double from = -reachMm;
        double to = reachMm;
        Clip(x, ux, MinX, MaxX, ref from, ref to);
        Clip(y, uy, MinY, MaxY, ref from, ref to);
        if (to <= from)
        {
            return overlap;
        }

        int count = Crossings(x, y, ux, uy, from, to);
        int stops = Stops(count, from, to);
        int entered = 0;
        int inside = 0;
        double best = overlap;
        for (int i = 0; i < stops; i++)
        {
            double t = _stops[i];
            while (entered < count && _enters[entered] < t)
            {
                _inside[inside++] = entered++;
            }

            double sum = 0;
            for (int q = 0; q < inside && sum < best; q++)
            {
                int crossing = _inside[q];
                if (_leaves[crossing] <= t)
                {
                    _inside[q--] = _inside[--inside];
                    continue;
                }

                int k = _crossed[crossing];
                sum += _weight[k] * KeepOut.DepthMm(_sides[k], _first[k], _end[k], x + (t * ux) - _originX[k], y + (t * uy) - _originY[k]);
            }

            if (sum < best || (sum == 0 && Math.Abs(t) < Math.Abs(shift)))
            {
                best = sum;
                shift = t;
            }
        }

        return best;
    }

    private static void Clip(double start, double step, double least, double most, ref double from, ref double to)
    {
        if (step > Level)
        {
            from = Math.Max(from, (least - start) / step);
            to = Math.Min(to, (most - start) / step);
        }
        else if (step < -Level)
        {
            from = Math.Max(from, (most - start) / step);
            to = Math.Min(to, (least - start) / step);
        }
    }

    /// <summary>Finds the polygons that a stretch runs through, in the order in which it enters them.</summary>
    private int Crossings(double x, double y, double ux, double uy, double from, double to)
    {
        double xa = Math.Min(x + (from * ux), x + (to * ux));
        double xb = Math.Max(x + (from * ux), x + (to * ux));
        double ya = Math.Min(y + (from * uy), y + (to * uy));
        double yb = Math.Max(y + (from * uy), y + (to * uy));
        int lastRow = Row(yb);
        int count = 0;
        _look++;
        for (int row = Row(ya); row <= lastRow; row++)
        {
            int column = Column(xa);
            int lastColumn = Column(xb);
            if (_rows > 1 && Math.Abs(ux) > Level && Math.Abs(uy) > Level)
            {
                // Of a slanting line only the columns that it passes in this row, and their neighbours for rounding.
                double one = x + ((MinY + (row / _rowsPerMm) - y) / uy * ux);
                double other = x + ((MinY + ((row + 1) / _rowsPerMm) - y) / uy * ux);
                column = Math.Max(column, Column(Math.Max(xa, Math.Min(one, other))) - 1);
                lastColumn = Math.Min(lastColumn, Column(Math.Min(xb, Math.Max(one, other))) + 1);
            }

            for (; column <= lastColumn; column++)
            {
                for (int entry = _cellHead[(row * _columns) + column]; entry >= 0; entry = _entryNext[entry])
                {
                    int k = _entryPolygon[entry];
                    if (_seen[k] == _look)
                    {
                        continue;
                    }

                    _seen[k] = _look;
                    if (xb > _minX[k] && xa < _maxX[k] && yb > _minY[k] && ya < _maxY[k] && TryCross(k, x, y, ux, uy, from, to, out double enter, out double leave))
                    {
                        count = Insert(count, k, enter, leave);
                    }
                }
            }
        }

        return count;
    }

    private bool TryCross(int polygon, double x, double y, double ux, double uy, double from, double to, out double enter, out double leave)
    {
        enter = double.MinValue;
        leave = double.MaxValue;
        double dx = x - _originX[polygon];
        double dy = y - _originY[polygon];
        double[] sides = _sides[polygon];
        int end = _end[polygon];
        for (int q = _first[polygon]; q < end; q += 3)
        {
            double depth = sides[q + 2] - (sides[q] * dx) - (sides[q + 1] * dy);
            double rise = (sides[q] * ux) + (sides[q + 1] * uy);
            if (rise > Level)
            {
                leave = Math.Min(leave, depth / rise);
            }
            else if (rise < -Level)
            {
                enter = Math.Max(enter, depth / rise);
            }
            else if (depth <= 0)
            {
                return false;
            }

            if (enter >= leave || leave <= from || enter >= to)
            {
                return false;
            }
        }

        return true;
    }

    private int Insert(int count, int polygon, double enter, double leave)
    {
        int at = count;
        for (; at > 0 && _enters[at - 1] > enter; at--)
        {
            _enters[at] = _enters[at - 1];
            _leaves[at] = _leaves[at - 1];
            _crossed[at] = _crossed[at - 1];
        }

        _enters[at] = enter;
        _leaves[at] = leave;
        _crossed[at] = polygon;
        return count + 1;
    }

    /// <summary>The ends of the stretch, and where it enters and leaves polygons, in order.</summary>
    private int Stops(int crossings, double from, double to)
    {
        int count = 0;
        _stops[count++] = from;
        for (int i = 0; i < crossings; i++)
        {
            if (_enters[i] > from)
            {
                _stops[count++] = _enters[i];
            }
        }

        // Those are in order already; the ends of crossings are put in between.
        for (int i = 0; i < crossings; i++)
        {
            double stop = _leaves[i];
            if (stop < to)
            {
                int at = count++;
                for (; at > 0 && _stops[at - 1] > stop; at--)
                {
                    _stops[at] = _stops[at - 1];
                }

                _stops[at] = stop;
            }
        }

        _stops[count++] = to;
        return count;
    }
}
