using System;

namespace Pattern.Core.Layout;

/// <summary>Looks for the place of one shape among others that lie still: how much it would overlap them here or there.</summary>
/// <remarks>The overlap is a sum over convex polygons of how deep the place lies in each, times the weight of the pair. Along any straight line it bends only upwards where the line enters
/// or leaves a polygon, so that its least value on the line lies at one of those points: they are found exactly, and only they are looked at.</remarks>
internal sealed partial class PlaceSearch
{
    // More cells than this save nothing.
    private const int MostCells = 64;

    private double[] _minX = new double[64];
    private double[] _maxX = new double[64];
    private double[] _minY = new double[64];
    private double[] _maxY = new double[64];
    private double[] _originX = new double[64];
    private double[] _originY = new double[64];
    private double[] _weight = new double[64];
    private double[][] _sides = new double[64][];
    private int[] _first = new int[64];
    private int[] _end = new int[64];
    private int[] _seen = new int[64];

    // The polygons of each cell, as chains.
    private int[] _cellHead = new int[1];
    private int[] _entryNext = new int[512];
    private int[] _entryPolygon = new int[512];
    private int _entries;
    private int _polygons;
    private int _columns;
    private int _rows;
    private double _columnsPerMm;
    private double _rowsPerMm;
    private int _look;

    /// <summary>What has been done so far: a line looked along, or as many single places as cost the same.</summary>
    internal long Work { get; private set; }

    internal double MinX { get; private set; }

    internal double MaxX { get; private set; }

    internal double MinY { get; private set; }

    internal double MaxY { get; private set; }

    /// <summary>Clears the ground for a shape; false where the cloth has no place for it.</summary>
    internal bool Begin(LayTask task, LayShape shape, double lengthMm)
    {
        MinX = shape.LeastXMm;
        MaxX = shape.MostXMm(lengthMm);
        MinY = shape.LeastYMm;
        MaxY = shape.MostYMm(task.WidthMm);
        if (MaxX < MinX || MaxY < MinY)
        {
            return false;
        }

        _polygons = 0;
        _entries = 0;
        _columns = Cells((MaxX - MinX) / task.CellXMm);
        _rows = Cells((MaxY - MinY) / task.CellYMm);
        _columnsPerMm = MaxX > MinX ? _columns / (MaxX - MinX) : 0;
        _rowsPerMm = MaxY > MinY ? _rows / (MaxY - MinY) : 0;
        if (_cellHead.Length < _columns * _rows)
        {
            _cellHead = new int[_columns * _rows];
        }

        for (int i = 0; i < _columns * _rows; i++)
        {
            _cellHead[i] = -1;
        }

        return true;
    }

    /// <summary>Adds what lies still.</summary>
    internal void Add(KeepOut keepOut, double x, double y, double weight)
    {
        if (x + keepOut.RightMm <= MinX || x + keepOut.LeftMm >= MaxX || y + keepOut.TopMm < MinY || y + keepOut.BottomMm > MaxY)
        {
            return;
        }

        for (int i = 0; i < keepOut.Count; i++)
        {
            double left = x + keepOut.MinX[i];
            double right = x + keepOut.MaxX[i];
            double bottom = y + keepOut.MinY[i];
            double top = y + keepOut.MaxY[i];
            if (right <= MinX || left >= MaxX || top < MinY || bottom > MaxY)
            {
                continue;
            }

            if (_polygons == _minX.Length)
            {
                Grow();
            }

            int k = _polygons++;
            _minX[k] = left;
            _maxX[k] = right;
            _minY[k] = bottom;
            _maxY[k] = top;
            _originX[k] = x;
            _originY[k] = y;
            _weight[k] = weight;
            _sides[k] = keepOut.Sides;
            _first[k] = keepOut.First[i];
            _end[k] = keepOut.First[i + 1];
            _seen[k] = 0;
            AddToCells(k);
        }
    }

    /// <summary>The weighted overlap at a place; where it is not less than the bound, some number that is not.</summary>
    internal double OverlapAt(double x, double y, double bound)
    {
        _places++;
        double sum = 0;
        for (int entry = _cellHead[(Row(y) * _columns) + Column(x)]; entry >= 0; entry = _entryNext[entry])
        {
            int k = _entryPolygon[entry];
            if (x > _minX[k] && x < _maxX[k] && y > _minY[k] && y < _maxY[k])
            {
                sum += _weight[k] * KeepOut.DepthMm(_sides[k], _first[k], _end[k], x - _originX[k], y - _originY[k]);
                if (sum >= bound)
                {
                    break;
                }
            }
        }

        return sum;
    }

    private static int Cells(double count) => (int)Math.Max(1, Math.Min(MostCells, count));

    private int Column(double x) => Math.Max(0, Math.Min(_columns - 1, (int)((x - MinX) * _columnsPerMm)));

    private int Row(double y) => Math.Max(0, Math.Min(_rows - 1, (int)((y - MinY) * _rowsPerMm)));

    private void AddToCells(int polygon)
    {
        int lastColumn = Column(_maxX[polygon]);
        int lastRow = Row(_maxY[polygon]);
        for (int row = Row(_minY[polygon]); row <= lastRow; row++)
        {
            for (int column = Column(_minX[polygon]); column <= lastColumn; column++)
            {
                if (_entries == _entryNext.Length)
                {
                    Array.Resize(ref _entryNext, 2 * _entries);
                    Array.Resize(ref _entryPolygon, 2 * _entries);
                }

                int cell = (row * _columns) + column;
                _entryPolygon[_entries] = polygon;
                _entryNext[_entries] = _cellHead[cell];
                _cellHead[cell] = _entries++;
            }
        }
    }

    private void Grow()
    {
        int room = 2 * _polygons;
        Array.Resize(ref _minX, room);
        Array.Resize(ref _maxX, room);
        Array.Resize(ref _minY, room);
        Array.Resize(ref _maxY, room);
        Array.Resize(ref _originX, room);
        Array.Resize(ref _originY, room);
        Array.Resize(ref _weight, room);
        Array.Resize(ref _sides, room);
        Array.Resize(ref _first, room);
        Array.Resize(ref _end, room);
        Array.Resize(ref _seen, room);
        Array.Resize(ref _enters, room);
        Array.Resize(ref _leaves, room);
        Array.Resize(ref _crossed, room);
        Array.Resize(ref _inside, room);
        Array.Resize(ref _stops, (2 * room) + 2);
    }
}
