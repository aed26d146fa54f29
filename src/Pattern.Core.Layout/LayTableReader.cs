using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Layout;

/// <summary>Reads outlines from comma-separated text.</summary>
internal sealed class LayTableReader
{
    private const string Header = "piece,quantity,vertex,x,y";
    private const int MostCharacters = 10_000_000;
    private const int Columns = 5;
    private const int MostEchoed = 50;

    private readonly string _text;
    private readonly double _mmPerUnit;
    private readonly List<LayPiece> _pieces = [];
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);
    private readonly List<Point2D> _corners = [];
    private string? _name;
    private int _count;
    private int _line;

    internal LayTableReader(string text, LengthUnit unit)
    {
        _text = text;
        _mmPerUnit = Length.From(1, Tape.KnownUnit(unit, nameof(unit))).Millimeters;
    }

    internal IReadOnlyList<LayPiece> Read()
    {
        if (_text.Length > MostCharacters)
        {
            throw new FormatException(MessageRegistry.Format(DiagnosticCode.LayTableTooLarge, _text.Length, MostCharacters));
        }

        bool hasHeader = false;
        foreach (string raw in _text.TrimStart('\uFEFF').Split('\n'))
        {
            _line++;
            string line = raw.Trim();
            if (line.Length == 0)
            {
                continue;
            }

            if (hasHeader)
            {
                ReadRow(line.Split(','));
            }
            else if (line.Replace(" ", string.Empty).Equals(Header, StringComparison.OrdinalIgnoreCase))
            {
                hasHeader = true;
            }
            else
            {
                throw Wrong("the column names", line, Header);
            }
        }

        Finish();
        return _pieces.Count > 0 ? _pieces.AsReadOnly() : throw Wrong("the pieces", string.Empty, "a line of column names, " + Header + ", and a line for each corner");
    }

    private void ReadRow(string[] cells)
    {
        if (cells.Length != Columns)
        {
            throw Wrong("the row", string.Join(",", cells), "5 cells: " + Header);
        }

        string name = cells[0].Trim();
        int count = Whole(cells, 1, "quantity", LayPiece.MostCopies);
        if (name != _name)
        {
            Finish();
            Begin(name, count);
        }
        else if (count != _count)
        {
            throw Wrong("column 2 (quantity)", cells[1], "the quantity of the piece's other lines, " + _count.ToString(CultureInfo.InvariantCulture));
        }

        int expected = _corners.Count + 1;
        if (Whole(cells, 2, "vertex", LayPiece.MostCorners) != expected)
        {
            throw Wrong("column 3 (vertex)", cells[2], expected.ToString(CultureInfo.InvariantCulture) + ", counting from 1 within a piece");
        }

        _corners.Add(new Point2D(_mmPerUnit * Number(cells, 3, "x"), _mmPerUnit * Number(cells, 4, "y")));
    }

    private void Begin(string name, int count)
    {
        try
        {
            _name = PieceText.Checked(name, "piece");
        }
        catch (ArgumentException)
        {
            throw Wrong("column 1 (piece)", name, "a name of 1 to 60 printable characters");
        }

        if (!_names.Add(name))
        {
            throw Wrong("column 1 (piece)", name, "all lines of a piece one after the other");
        }

        _count = count;
    }

    private void Finish()
    {
        if (_name is null)
        {
            return;
        }

        if (_corners.Count < 3)
        {
            throw Wrong("piece " + _name, _corners.Count.ToString(CultureInfo.InvariantCulture) + " corners", "3 corners or more");
        }

        if (!LayPiece.TryMake(_name, _count, [.. _corners], out LayPiece? piece, out string? fault))
        {
            throw new FormatException(fault);
        }

        _pieces.Add(piece);
        _corners.Clear();
    }

    private int Whole(string[] cells, int column, string name, int most)
        => int.TryParse(cells[column].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= 1 && value <= most
            ? value
            : throw Wrong(Place(column, name), cells[column], "a whole number from 1 to " + most.ToString(CultureInfo.InvariantCulture));

    private double Number(string[] cells, int column, string name)
        => double.TryParse(cells[column].Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && Guard.IsFinite(value)
            ? value
            : throw Wrong(Place(column, name), cells[column], "a number with a decimal point, such as 12.5");

    private static string Place(int column, string name) => FormattableString.Invariant($"column {column + 1} ({name})");

    private FormatException Wrong(string place, string found, string allowed)
        => new(MessageRegistry.Format(DiagnosticCode.LayTableWrong, _line, place, Guard.Echo(found, MostEchoed), allowed));
}
