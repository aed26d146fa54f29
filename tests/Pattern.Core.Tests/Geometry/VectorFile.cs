using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>A file of reference vectors: comma-separated, one head line, no quotes.</summary>
internal sealed class VectorFile
{
    private readonly Dictionary<string, int> _columns = new();
    private readonly List<string[]> _rows = new();

    private VectorFile(string path)
    {
        string[] lines = File.ReadAllLines(path);
        string[] head = lines[0].Split(',');
        for (int i = 0; i < head.Length; i++)
        {
            _columns.Add(head[i], i);
        }

        for (int i = 1; i < lines.Length; i++)
        {
            if (lines[i].Length > 0)
            {
                _rows.Add(lines[i].Split(','));
            }
        }
    }

    public int Count => _rows.Count;

    public static VectorFile Read(string name) => new(Path.Combine(AppContext.BaseDirectory, "Data", "Geometry", name));

    public string Text(int row, string column) => _rows[row][_columns[column]];

    public double Number(int row, string column)
    {
        string text = Text(row, column);
        return text.Length == 0 ? double.NaN : double.Parse(text == "inf" ? "Infinity" : text, CultureInfo.InvariantCulture);
    }

    public Point2D Point(int row, string x, string y) => new(Number(row, x), Number(row, y));

    public CubicBezier Cubic(int row, string firstColumn)
    {
        string[] cells = _rows[row];
        int at = _columns[firstColumn];
        double N(int i) => double.Parse(cells[at + i], CultureInfo.InvariantCulture);
        return new CubicBezier(N(0), N(1), N(2), N(3), N(4), N(5), N(6), N(7));
    }

    /// <summary>The rows whose column holds a text, in order.</summary>
    public List<int> RowsWith(string column, string text)
    {
        var rows = new List<int>();
        for (int i = 0; i < Count; i++)
        {
            if (Text(i, column) == text)
            {
                rows.Add(i);
            }
        }

        return rows;
    }
}
