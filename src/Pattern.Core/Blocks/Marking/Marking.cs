using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>A drawing marked against a block: which of its figures are within the rounding of the tape and which are not, and which step those come from. Immutable.</summary>
/// <remarks>A figure is named as the block names it: a figure of the steps (<c>box width</c>), an edge as sewn (<c>back waist</c>), a dart (<c>back waist dart 1</c>, <c>back waist dart 1 length</c>), a line of the
/// hand draft (<c>hip line</c>), or two landmarks of the finished block and the straight way between them (<c>CB waist to CB hem</c>), level or upright only (<c>CB waist to CB hem, across</c>,
/// <c>CB waist to CB hem, up</c>).
/// Rounding may take a figure as far as it takes a draft with every distance laid to the nearest mark, and half a mark more for reading it off the drawing.</remarks>
/// <example><code>
/// Marking marking = Marking.Read(block, TapeStep.Eighth, new StringReader("figure,value\nbox width,20 3/8\nback waist,7 5/8\n"));
/// Console.WriteLine(marking);
/// </code></example>
public sealed class Marking
{
    /// <summary>Rows of one table: far above the figures of any drawing.</summary>
    internal const int MostRows = 2000;

    private Marking(Block block, TapeStep tape, MarkedFigure[] figures)
    {
        Block = block;
        Tape = tape;
        Figures = figures;
    }

    /// <summary>The block.</summary>
    public Block Block { get; }

    /// <summary>The tape that the drawing was made with.</summary>
    public TapeStep Tape { get; }

    /// <summary>The figures in the order of the table, those that could not be read among them.</summary>
    public IReadOnlyList<MarkedFigure> Figures { get; }

    /// <summary>Those that are wrong.</summary>
    public IEnumerable<MarkedFigure> Wrong => Figures.Where(figure => figure.Verdict == MarkVerdict.Wrong);

    /// <summary>Those that could not be marked, each with row, column and reason.</summary>
    public IEnumerable<MarkedFigure> NotMarked => Figures.Where(figure => figure.Verdict == MarkVerdict.NotMarked);

    /// <summary>Marks figures that were typed in.</summary>
    /// <param name="block">The block that was to be drawn.</param>
    /// <param name="tape">The tape that it was drawn with.</param>
    /// <param name="figures">What was measured on the drawing, and what the tape said: <c>("box width", "20 3/8")</c>. A plain number is in the unit of the tape.</param>
    /// <exception cref="ConstructionException">The block was read from a file, and its method is not known.</exception>
    [Pure]
    public static Marking Of(Block block, TapeStep tape, params (string Figure, string Value)[] figures)
    {
        Guard.InRange(Guard.NotNull(figures, nameof(figures)).Length, 0, MostRows, nameof(figures));
        return Of(block, tape, figures.Select((figure, i) => new MarkingRow(i + 1, i + 2, [Guard.NotNull(figure.Figure, nameof(figures)), Guard.NotNull(figure.Value, nameof(figures))], CsvFault.None)));
    }

    /// <summary>Marks a table of drawn figures, comma-separated text (RFC 4180): its first line is <c>figure,value</c>, each further line a figure and what was drawn.</summary>
    /// <remarks>A cell may carry its unit; a plain number is in that of the tape. A row that cannot be read says why, with row and column, and never stops the rest.</remarks>
    /// <param name="block">The block that was to be drawn.</param>
    /// <param name="tape">The tape that it was drawn with.</param>
    /// <param name="table">The table. It stays open.</param>
    /// <exception cref="FormatException">The first line is another, or there are more than 2,000 rows.</exception>
    /// <exception cref="ConstructionException">The block was read from a file, and its method is not known.</exception>
    [Pure]
    public static Marking Read(Block block, TapeStep tape, TextReader table)
    {
        var records = new CsvRecords(Guard.NotNull(table, nameof(table)));
        bool hasLine = records.NextLine() && records.ReadCells(runsOn: false) == CsvFault.None;
        string[] header = hasLine ? [.. records.Cells] : [];
        if (header.Length != 2 || !string.Equals(header[0], MarkingRow.FigureColumn, StringComparison.OrdinalIgnoreCase) || !string.Equals(header[1], MarkingRow.ValueColumn, StringComparison.OrdinalIgnoreCase))
        {
            throw new FormatException(MessageRegistry.Format(DiagnosticCode.MarkingTableWrong, string.Join(",", header)));
        }

        var rows = new List<MarkingRow>();
        while (records.NextLine())
        {
            if (rows.Count == MostRows)
            {
                throw new FormatException(MessageRegistry.Format(DiagnosticCode.MarkingTableTooLarge, MostRows));
            }

            int line = records.Line;
            CsvFault fault = records.ReadCells(runsOn: false);
            rows.Add(new MarkingRow(rows.Count + 1, line, [.. records.Cells], fault));
        }

        return Of(block, tape, rows);
    }

    /// <summary>The marks in words, a line for each figure.</summary>
    /// <param name="tape">The finest mark of the tape that figures are read off.</param>
    [Pure]
    public string Describe(TapeStep tape)
    {
        var text = new StringBuilder(1024);
        text.Append(Block.Title).Append(", drawn to ").Append(Tape).Append(": ").Append(Counts()).Append('\n');
        foreach (MarkedFigure figure in Figures)
        {
            text.Append(figure.Row.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append(". ").Append(figure.Describe(tape)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>A row for each figure: <c>row,figure,verdict,drawn_mm,expected_mm,off_mm,step,follows_from,problem</c>.</summary>
    [Pure]
    public string ToCsv()
    {
        var text = new StringBuilder("row,figure,verdict,drawn_mm,expected_mm,off_mm,step,follows_from,problem\n");
        foreach (MarkedFigure figure in Figures)
        {
            string[] cells =
            [
                figure.Row.ToString(CultureInfo.InvariantCulture), figure.Name, Word(figure.Verdict), Number(figure.DrawnMm), Number(figure.ExpectedMm), Number(figure.DrawnMm - figure.ExpectedMm),
                figure.Step?.Number.ToString(CultureInfo.InvariantCulture) ?? string.Empty, string.Join("; ", figure.FollowsFrom), figure.Problem ?? string.Empty,
            ];
            text.Append(string.Join(",", cells.Select(CsvText.Cell))).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The marks in words, on the tape that the drawing was made with.</summary>
    public override string ToString() => Describe(Tape);

    internal static string Word(MarkVerdict verdict)
        => verdict switch { MarkVerdict.Right => "right", MarkVerdict.WithinRounding => "within rounding", MarkVerdict.Wrong => "wrong", _ => "not marked" };

    internal string Counts() => string.Join(", ", new[] { MarkVerdict.Right, MarkVerdict.WithinRounding, MarkVerdict.Wrong, MarkVerdict.NotMarked }
        .Select(verdict => Figures.Count(figure => figure.Verdict == verdict).ToString(CultureInfo.InvariantCulture) + " " + Word(verdict)));

    private static Marking Of(Block block, TapeStep tape, IEnumerable<MarkingRow> rows)
    {
        var key = new MarkingKey(Guard.NotNull(block, nameof(block)), tape);
        return new Marking(block, tape, key.Mark([.. rows]));
    }

    private static string Number(double? mm) => mm is { } known ? (Math.Round(known, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture) : string.Empty;
}

/// <summary>A row of a table of drawn figures, as it was read.</summary>
internal sealed record MarkingRow(int Number, int Line, IReadOnlyList<string> Cells, CsvFault Fault)
{
    internal const string FigureColumn = "figure";
    internal const string ValueColumn = "value";
}
