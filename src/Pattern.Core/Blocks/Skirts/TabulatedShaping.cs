using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>A shaping table of rows, in rising order of the difference between hip and waist.</summary>
/// <remarks>Immutable: every verb returns a new table. It covers the differences from its first row to its last, both included. Differences closer than a
/// millionth of a millimetre are the same.</remarks>
public sealed class TabulatedShaping : ShapingTable
{
    internal const string DefaultName = "shaping table";

    private readonly ShapingRow[] _rows;

    private TabulatedShaping(string name, LengthUnit unit, ShapingLookup lookup, ShapingOutside outside, ShapingRow[] rows)
        : base(name)
    {
        Unit = unit;
        Lookup = lookup;
        OutsideRule = outside;
        _rows = rows;
    }

    /// <summary>What numbers without a unit are in, and what the table is written in.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Which row serves a difference between two.</summary>
    /// <value><see cref="ShapingLookup.Nearest"/>, unless chosen.</value>
    public ShapingLookup Lookup { get; }

    /// <summary>What happens to a difference outside the table.</summary>
    /// <value><see cref="ShapingOutside.Refuse"/>, unless chosen.</value>
    public ShapingOutside OutsideRule { get; }

    /// <summary>The rows, in rising order of their difference.</summary>
    public IReadOnlyList<ShapingRow> Rows => Array.AsReadOnly(_rows);

    /// <summary>Gives the table a name.</summary>
    /// <param name="name">For steps, reports and messages; one line of up to 100 characters.</param>
    /// <exception cref="ArgumentException">The name is empty or blank, too long, or has more than one line.</exception>
    [Pure]
    public TabulatedShaping Named(string name)
        => Guard.Name(name, nameof(name)).Trim().Length > ShapingCsvLimits.NameLength
            ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ShapingTableTooLarge, name.Trim().Length, "characters in its name", ShapingCsvLimits.NameLength), nameof(name))
            : name.IndexOfAny(['\r', '\n']) < 0
            ? new TabulatedShaping(name.Trim(), Unit, Lookup, OutsideRule, _rows)
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ShapingNameBroken, nameof(name)), nameof(name));

    /// <summary>Says which row serves a difference between two.</summary>
    /// <param name="lookup">The rule.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rule has no name.</exception>
    [Pure]
    public TabulatedShaping ReadBy(ShapingLookup lookup)
        => lookup is ShapingLookup.Nearest or ShapingLookup.AtOrAbove or ShapingLookup.Interpolated
            ? new TabulatedShaping(Name, Unit, lookup, OutsideRule, _rows)
            : throw new ArgumentOutOfRangeException(nameof(lookup), MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(lookup), lookup));

    /// <summary>Says what happens to a difference outside the table.</summary>
    /// <param name="outside">The rule.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rule has no name.</exception>
    [Pure]
    public TabulatedShaping Outside(ShapingOutside outside)
        => outside is ShapingOutside.Refuse or ShapingOutside.Clamp
            ? new TabulatedShaping(Name, Unit, Lookup, outside, _rows)
            : throw new ArgumentOutOfRangeException(nameof(outside), MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(outside), outside));

    /// <summary>Adds a row below the others.</summary>
    /// <param name="difference">Hip girth less waist girth that it is for; more than that of the row before. Without a unit it is in <see cref="Unit"/>, as are the others.</param>
    /// <param name="backWider">How much wider the back is than the front at the hip; negative where the front is wider.</param>
    /// <param name="frontDart">Whole dart intake of one front panel; not negative.</param>
    /// <param name="backDart">Whole dart intake of one back panel; not negative.</param>
    /// <param name="frontDrop">How far the waist drops at centre front; negative where it rises.</param>
    /// <exception cref="FormatException">A figure cannot be read; the message names the row, counted from 1, and the column.</exception>
    /// <exception cref="ArgumentException">A figure is out of range, the row does not follow the one before, or there are 1,000 already.</exception>
    [Pure]
    public TabulatedShaping Row(string difference, string backWider, string frontDart, string backDart, string frontDrop)
    {
        string[] cells =
        [
            Guard.NotNull(difference, nameof(difference)),
            Guard.NotNull(backWider, nameof(backWider)),
            Guard.NotNull(frontDart, nameof(frontDart)),
            Guard.NotNull(backDart, nameof(backDart)),
            Guard.NotNull(frontDrop, nameof(frontDrop)),
        ];
        double[] figuresMm = new double[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            TapeReading reading = TapeReader.Read(cells[i], Unit);
            figuresMm[i] = reading.IsLength ? reading.Millimetres : throw new FormatException(ShapingColumns.Unreadable(Place(i), reading));
        }

        return Append(figuresMm);
    }

    /// <summary>Adds a row below the others.</summary>
    /// <param name="difference">Hip girth less waist girth that it is for; more than that of the row before.</param>
    /// <param name="backWider">How much wider the back is than the front at the hip; negative where the front is wider.</param>
    /// <param name="frontDart">Whole dart intake of one front panel; not negative.</param>
    /// <param name="backDart">Whole dart intake of one back panel; not negative.</param>
    /// <param name="frontDrop">How far the waist drops at centre front; negative where it rises.</param>
    /// <exception cref="ArgumentException">A figure is out of range, the row does not follow the one before, or there are 1,000 already; the message names the row and the column.</exception>
    [Pure]
    public TabulatedShaping Row(Length difference, Length backWider, Length frontDart, Length backDart, Length frontDrop) => Append(
    [
        Guard.Millimetres(difference, nameof(difference)),
        Guard.Millimetres(backWider, nameof(backWider)),
        Guard.Millimetres(frontDart, nameof(frontDart)),
        Guard.Millimetres(backDart, nameof(backDart)),
        Guard.Millimetres(frontDrop, nameof(frontDrop)),
    ]);

    /// <summary>Adds a row below the others.</summary>
    /// <param name="row">Its difference is more than that of the row before.</param>
    /// <exception cref="ArgumentException">The row does not follow the one before, or there are 1,000 already.</exception>
    [Pure]
    public TabulatedShaping Row(ShapingRow row) => Append(Guard.NotNull(row, nameof(row)).ToMm());

    /// <summary>Writes the table as text that <see cref="ShapingTable.FromCsv"/> reads back to the same table.</summary>
    /// <remarks>Inches as tape fractions where they are on a mark of 1/64, else as decimals. Lines end in a line feed.</remarks>
    [Pure]
    public string ToCsv() => ShapingCsvWriter.Write(this);

    internal static TabulatedShaping Empty(LengthUnit unit)
        => new(DefaultName, Tape.KnownUnit(unit, nameof(unit)), ShapingLookup.Nearest, ShapingOutside.Refuse, []);

    internal static TabulatedShaping FromChecked(LengthUnit unit, ShapingRow[] rows)
        => new(DefaultName, unit, ShapingLookup.Nearest, ShapingOutside.Refuse, rows);

    /// <inheritdoc/>
    protected internal override string Describe(ShapingReading reading, TapeStep step) => Describe(reading, step, Phrasebook.English);

    internal override string Describe(ShapingReading reading, TapeStep step, Phrasebook book)
    {
        double differenceMm = reading.Query.Difference.ValueMm;
        string served = reading switch
        {
            { IsClamped: true } => ReferenceEquals(reading.Rows[0], _rows[0]) && differenceMm < _rows[0].DifferenceMm
                ? "{table}: first row {row}, clamped for {difference}"
                : "{table}: last row {row}, clamped for {difference}",
            { Rows.Count: 2 } => "{table}: between row {row} and row {next}, interpolated for {difference}",
            _ when IsSame(reading.Rows[0].DifferenceMm, differenceMm) => "{table}: row {row} for {difference}",
            _ when Lookup == ShapingLookup.Nearest => "{table}: row {row}, nearest to {difference}",
            _ => "{table}: row {row}, at or above {difference}",
        };
        return book.Say(
            served,
            ("table", book.Say(Name)),
            ("row", WorkedText.Figure(reading.Rows[0].DifferenceMm, step)),
            ("next", WorkedText.Figure(reading.Rows[reading.Rows.Count - 1].DifferenceMm, step)),
            ("difference", WorkedText.NameAndFigure(reading.Query.Difference, step, book)));
    }

    /// <inheritdoc/>
    protected override ShapingReading Answer(ShapingQuery query)
    {
        if (_rows.Length == 0)
        {
            throw new ConstructionException(DiagnosticCode.ShapingTableEmpty, Name);
        }

        double differenceMm = query.Difference.ValueMm;
        int above = Array.FindIndex(_rows, row => row.DifferenceMm > differenceMm || IsSame(row.DifferenceMm, differenceMm));
        if (above >= 0 && IsSame(_rows[above].DifferenceMm, differenceMm))
        {
            return Answer(query, _rows[above], [_rows[above]], isClamped: false);
        }

        if (above <= 0)
        {
            ShapingRow end = above < 0 ? _rows[_rows.Length - 1] : _rows[0];
            return OutsideRule == ShapingOutside.Clamp ? Answer(query, end, [end], isClamped: true) : throw Refusal(query, end);
        }

        ShapingRow over = _rows[above];
        ShapingRow under = _rows[above - 1];
        if (Lookup == ShapingLookup.Interpolated)
        {
            return Answer(query, ShapingRow.Between(under, over, differenceMm), [under, over], isClamped: false);
        }

        double toOver = over.DifferenceMm - differenceMm;
        double toUnder = differenceMm - under.DifferenceMm;
        ShapingRow served = Lookup == ShapingLookup.AtOrAbove || toOver < toUnder || IsSame(toOver, toUnder) ? over : under;
        return Answer(query, served, [served], isClamped: false);
    }

    // Two girths in inches rarely differ by exactly the figure of a row, whatever a double can hold.
    private static bool IsSame(double oneMm, double otherMm) => Math.Abs(oneMm - otherMm) <= Tape.OnTheMarkMm;

    private ConstructionException Refusal(ShapingQuery query, ShapingRow end) => new(
        DiagnosticCode.ShapingOutsideTable,
        query.Difference.Value,
        Name,
        _rows[0].Difference,
        _rows[_rows.Length - 1].Difference)
    {
        Measured = query.Difference.Value,
        Allowed = end.Difference,
    };

    private ShapingReading Answer(ShapingQuery query, ShapingRow row, ShapingRow[] served, bool isClamped) => new(
        this,
        query,
        row.BackWiderMm >= 0
            ? WorkedLength.GivenMm("back wider than front", row.BackWiderMm, LengthSource.Table)
            : WorkedLength.GivenMm("front wider than back", -row.BackWiderMm, LengthSource.Table).Times(-1).Named("back wider than front"),
        WorkedLength.GivenMm("front dart intake", row.FrontDartMm, LengthSource.Table),
        WorkedLength.GivenMm("back dart intake", row.BackDartMm, LengthSource.Table),
        WorkedLength.GivenMm("centre front drop", row.FrontDropMm, LengthSource.Table))
    {
        Rows = Array.AsReadOnly(served),
        IsClamped = isClamped,
    };

    private TabulatedShaping Append(double[] figuresMm)
    {
        if (_rows.Length == ShapingCsvLimits.Rows)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ShapingTableTooLarge, _rows.Length + 1, "rows", ShapingCsvLimits.Rows));
        }

        if (ShapingColumns.Fault(figuresMm, _rows.Length == 0 ? null : _rows[_rows.Length - 1], Place) is string fault)
        {
            throw new ArgumentException(fault);
        }

        var rows = new ShapingRow[_rows.Length + 1];
        _rows.CopyTo(rows, 0);
        rows[_rows.Length] = ShapingRow.FromMm(figuresMm);
        return new TabulatedShaping(Name, Unit, Lookup, OutsideRule, rows);
    }

    private string Place(int column) => FormattableString.Invariant($"row {_rows.Length + 1}, column {column + 1} ({ShapingColumns.Names[column]})");
}
