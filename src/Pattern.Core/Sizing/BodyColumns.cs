using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Sizing;

/// <summary>Which columns of a table of bodies hold what, and the unit of its plain numbers. Reads the table body by body. Immutable.</summary>
/// <remarks>The table is comma-separated text (RFC 4180); its first line names the columns. A cell may carry a unit of its own: <c>29 1/2 in</c>, <c>74.9 cm</c>. Columns that
/// nobody asked for are read over, blank lines skipped.</remarks>
/// <example><code>
/// BodyColumns columns = BodyColumns.In(LengthUnit.Millimeter)
///     .With(BodyMeasurement.WaistGirth, "waistcircumference")
///     .With(BodyMeasurement.HipGirth, "buttockcircumference");
/// using StreamReader file = File.OpenText("bodies.csv");
/// TrialSummary summary = TrialSummary.Of(columns.Read(file).Select(row => Trial.Of(row, BuiltInMethods.Skirt)));
/// Console.WriteLine(summary);
/// </code></example>
public sealed class BodyColumns
{
    private readonly (BodyMeasurement Measurement, string Column)[] _columns;
    private readonly string? _names;

    private BodyColumns(LengthUnit unit, string? names, (BodyMeasurement Measurement, string Column)[] columns)
    {
        Unit = unit;
        _names = names;
        _columns = columns;
    }

    /// <summary>What numbers without a unit are in.</summary>
    public LengthUnit Unit { get; }

    /// <summary>No columns yet, and the unit of numbers that name none.</summary>
    /// <param name="unit">Inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    [Pure]
    public static BodyColumns In(LengthUnit unit) => new(Tape.KnownUnit(unit, nameof(unit)), null, []);

    /// <summary>Takes a measurement from a column; one that was named for it before is left.</summary>
    /// <param name="measurement">Which.</param>
    /// <param name="column">The name of its column, as the first line has it; case counts only where two differ in nothing else.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public BodyColumns With(BodyMeasurement measurement, string column)
    {
        Guard.NotNull(measurement, nameof(measurement));
        return new(Unit, _names, [.. Array.FindAll(_columns, one => !one.Measurement.Equals(measurement)), (measurement, Guard.Name(column, nameof(column)))]);
    }

    /// <summary>Takes the names of the bodies from a column; a body whose cell is empty has none.</summary>
    /// <param name="column">The name of that column.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public BodyColumns NamedBy(string column) => new(Unit, Guard.Name(column, nameof(column)), _columns);

    /// <summary>Reads a table, one body at a time; a row that is none says why, and the next is read all the same.</summary>
    /// <param name="text">The table. It stays open, and is read while one goes through the rows: once, and as far as one goes.</param>
    /// <returns>The rows in order, each from 1; the line of column names is none.</returns>
    /// <exception cref="FormatException">The table is empty, or lacks a column that was asked for or has it twice.</exception>
    [Pure]
    public IEnumerable<BodyRow> Read(TextReader text)
    {
        var records = new CsvRecords(Guard.NotNull(text, nameof(text)));
        if (!records.NextLine() || records.ReadCells(runsOn: true) != CsvFault.None)
        {
            throw Wrong(DiagnosticCode.BodyTableEmpty);
        }

        string[] header = [.. records.Cells];
        int[] places = Array.ConvertAll(_columns, column => PlaceOf(column.Column, header));
        int name = _names is null ? -1 : PlaceOf(_names, header);
        return Rows(records, header.Length, places, name);
    }

    private IEnumerable<BodyRow> Rows(CsvRecords records, int width, int[] places, int name)
    {
        for (int number = 1; records.NextLine(); number++)
        {
            int line = records.Line;
            yield return records.ReadCells(runsOn: true) switch
            {
                CsvFault.QuoteOpen => BodyRow.Bad(number, line, null, DiagnosticCode.BodyQuoteOpen, number, line, records.OpenCell + 1),
                CsvFault.TooLong => BodyRow.Bad(number, line, null, DiagnosticCode.BodyRowTooLong, number, line, CsvRecords.MostCharacters),
                _ => records.Cells.Count == width
                    ? ReadRow(number, line, records.Cells, places, name)
                    : BodyRow.Bad(number, line, null, DiagnosticCode.BodyCellsMiscounted, number, line, records.Cells.Count, width),
            };
        }
    }

    private BodyRow ReadRow(int number, int line, IReadOnlyList<string> cells, int[] places, int name)
    {
        BodyMeasurements body = BodyMeasurements.In(Unit);
        body = name >= 0 && cells[name].Length > 0 ? body.Named(cells[name]) : body;
        for (int i = 0; i < places.Length; i++)
        {
            if (body.TryWith(_columns[i].Measurement, cells[places[i]], out DiagnosticCode code, out string? fault) is not { } measured)
            {
                return BodyRow.Wrong(number, line, _columns[i].Column, code, MessageRegistry.Format(
                    DiagnosticCode.BodyCellWrong, number, line, places[i] + 1, _columns[i].Column, MessageRegistry.Whole(fault!)));
            }

            body = measured;
        }

        return new BodyRow(number, line, body);
    }

    private static int PlaceOf(string column, string[] header)
    {
        int[] exact = Places(column, header, StringComparison.Ordinal);
        int[] found = exact.Length > 0 ? exact : Places(column, header, StringComparison.OrdinalIgnoreCase);
        return found.Length == 1
            ? found[0]
            : throw (found.Length == 0
                ? Wrong(DiagnosticCode.BodyColumnMissing, column, string.Join(", ", header))
                : Wrong(DiagnosticCode.BodyColumnTwice, column, found.Length));
    }

    private static int[] Places(string column, string[] header, StringComparison comparison)
    {
        var places = new List<int>();
        for (int i = 0; i < header.Length; i++)
        {
            if (string.Equals(header[i], column.Trim(), comparison))
            {
                places.Add(i);
            }
        }

        return [.. places];
    }

    private static FormatException Wrong(DiagnosticCode code, params object[] facts) => new(MessageRegistry.Format(code, facts));

    /// <summary>What the columns say.</summary>
    public override string ToString()
        => "columns of bodies: " + string.Join(", ", _columns.Select(one => one.Measurement.ToString()));
}
