using System;
using System.Collections.Generic;
using System.IO;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Reads a shaping table from comma-separated text: remarks and directives, a line of column names, rows.</summary>
/// <remarks>A line that starts with <c># word:</c> is a directive, any other line that starts with <c>#</c> a remark; blank lines are skipped. A cell may be
/// quoted as in RFC 4180; an inch mark inside an unquoted cell is itself. Case never matters, except in the name.</remarks>
internal sealed class ShapingCsvReader(string text, ShapingCsvOptions options)
{
    private readonly HashSet<string> _said = new(StringComparer.Ordinal);
    private readonly List<ShapingRow> _rows = [];
    private LengthUnit? _unit = options.Unit is null ? null : Tape.KnownUnit(options.Unit.Value, nameof(options));
    private ShapingLookup _lookup = options.Lookup;
    private ShapingOutside _outside = options.Outside;
    private string _name = options.Name;

    // For each column in the text, its place in ShapingColumns.Names.
    private int[]? _columns;

    internal TabulatedShaping Read()
    {
        if (text.Length > ShapingCsvLimits.Characters)
        {
            throw Wrong(DiagnosticCode.ShapingTableTooLarge, text.Length, "characters", ShapingCsvLimits.Characters);
        }

        var records = new CsvRecords(new StringReader(text), ShapingCsvLimits.Characters);
        while (records.NextLine())
        {
            string line = records.Text.Trim();
            if (line[0] == '#')
            {
                ReadRemark(line.Substring(1), records.Line);
            }
            else if (_columns is null)
            {
                _columns = ReadHeader(CellsOf(records), records.Line);
            }
            else
            {
                ReadRow(CellsOf(records), records.Line, _columns);
            }
        }

        if (_rows.Count == 0)
        {
            throw Wrong(DiagnosticCode.ShapingTableEmpty, _name);
        }

        return TabulatedShaping.FromChecked(_unit!.Value, _rows.ToArray()).Named(_name).ReadBy(_lookup).Outside(_outside);
    }

    private static FormatException Wrong(DiagnosticCode code, params object[] facts) => new(MessageRegistry.Format(code, facts));

    private static string Place(int line, int column, string name)
        => FormattableString.Invariant($"line {line}, column {column + 1} ({name})");

    private static int[] ReadHeader(IReadOnlyList<string> names, int line)
    {
        var columns = new int[names.Count];
        for (int i = 0; i < columns.Length; i++)
        {
            columns[i] = Array.FindIndex(ShapingColumns.Names, name => string.Equals(name, names[i], StringComparison.OrdinalIgnoreCase));
            if (columns[i] < 0)
            {
                throw Wrong(DiagnosticCode.ShapingColumnUnknown, Place(line, i, names[i]), string.Join(",", ShapingColumns.Names));
            }

            if (Array.IndexOf(columns, columns[i]) < i)
            {
                throw Wrong(DiagnosticCode.ShapingColumnTwice, Place(line, i, names[i]));
            }
        }

        foreach (string name in ShapingColumns.Names)
        {
            if (Array.IndexOf(columns, Array.IndexOf(ShapingColumns.Names, name)) < 0)
            {
                throw Wrong(DiagnosticCode.ShapingColumnMissing, line, name, string.Join(",", ShapingColumns.Names));
            }
        }

        return columns;
    }

    // No line of it is too long: the text is not.
    private static IReadOnlyList<string> CellsOf(CsvRecords records) => records.ReadCells(runsOn: false) == CsvFault.None
        ? records.Cells
        : throw Wrong(DiagnosticCode.ShapingQuoteOpen, records.Line, records.OpenCell + 1);

    private void ReadRemark(string remark, int line)
    {
        int colon = remark.IndexOf(':');
        string word = colon < 0 ? string.Empty : remark.Substring(0, colon).Trim().ToLowerInvariant();
        if (word.Length == 0 || word.IndexOfAny([' ', '#', '\t']) >= 0)
        {
            return;
        }

        string value = remark.Substring(colon + 1).Trim();
        if (_columns is not null)
        {
            throw Wrong(DiagnosticCode.ShapingDirectiveLate, line, word);
        }

        if (!_said.Add(word))
        {
            throw Wrong(DiagnosticCode.ShapingDirectiveTwice, line, word);
        }

        switch (word)
        {
            case "name":
                _name = value.Length is > 0 and <= ShapingCsvLimits.NameLength
                    ? value
                    : throw Wrong(DiagnosticCode.ShapingDirectiveWrong, line, word, value, FormattableString.Invariant($"a name of 1 to {ShapingCsvLimits.NameLength} characters"));
                break;
            case "unit":
                _unit = ShapingCsvWords.Unit(value.ToLowerInvariant()) ?? throw Wrong(DiagnosticCode.ShapingDirectiveWrong, line, word, value, "in, cm or mm");
                break;
            case "lookup":
                _lookup = ShapingCsvWords.Lookup(value.ToLowerInvariant()) ?? throw Wrong(DiagnosticCode.ShapingDirectiveWrong, line, word, value, "nearest, at-or-above or interpolated");
                break;
            case "outside":
                _outside = ShapingCsvWords.Outside(value.ToLowerInvariant()) ?? throw Wrong(DiagnosticCode.ShapingDirectiveWrong, line, word, value, "refuse or clamp");
                break;
            default:
                throw Wrong(DiagnosticCode.ShapingDirectiveUnknown, line, word);
        }
    }

    private void ReadRow(IReadOnlyList<string> cells, int line, int[] columns)
    {
        if (_rows.Count == ShapingCsvLimits.Rows)
        {
            throw Wrong(DiagnosticCode.ShapingTableTooLarge, _rows.Count + 1, FormattableString.Invariant($"rows, up to line {line}"), ShapingCsvLimits.Rows);
        }

        LengthUnit unit = _unit ?? throw Wrong(DiagnosticCode.ShapingUnitMissing, line);
        if (cells.Count != columns.Length)
        {
            throw Wrong(DiagnosticCode.ShapingCellsMiscounted, line, cells.Count, columns.Length);
        }

        double[] figuresMm = new double[columns.Length];
        for (int i = 0; i < columns.Length; i++)
        {
            TapeReading reading = TapeReader.Read(cells[i], unit);
            figuresMm[columns[i]] = reading.IsLength
                ? reading.Millimetres
                : throw new FormatException(ShapingColumns.Unreadable(Place(line, i, ShapingColumns.Names[columns[i]]), reading));
        }

        string? fault = ShapingColumns.Fault(
            figuresMm,
            _rows.Count == 0 ? null : _rows[_rows.Count - 1],
            column => Place(line, Array.IndexOf(columns, column), ShapingColumns.Names[column]));
        if (fault is not null)
        {
            throw new FormatException(fault);
        }

        _rows.Add(ShapingRow.FromMm(figuresMm));
    }
}
