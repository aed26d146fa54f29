using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>What the sheet of a block says in words.</summary>
internal sealed class BlockNotes
{
    private readonly Block _block;
    private readonly CheckReport _report;
    private readonly DrawingOptions _options;
    private readonly TapeFigures _figures;
    private readonly IReadOnlyList<string> _leftOut;

    internal BlockNotes(Block block, CheckReport report, DrawingOptions options, TapeFigures figures, IReadOnlyList<string> leftOut)
    {
        _block = block;
        _report = report;
        _options = options;
        _figures = figures;
        _leftOut = leftOut;
    }

    internal string Title => _block.Title;

    internal TitleBlock TitleBlock() => new()
    {
        Heading = _block.Heading,
        Subject = _block.Body.Name is { } name ? "for " + name : string.Empty,
        Notes = Notes().ToArray(),
        Rows = Rows().ToArray(),
        Verdict = ("checks", _report.Verdict()),
        VerdictInk = _report.Passed ? Ink.Strong : Ink.Accent,
        Cautions = Cautions.OfCutting,
    };

    internal string Description()
    {
        string remarks = string.Concat(_block.Remarks.Select(remark => remark + " "));
        string rows = string.Join("; ", Rows().Select(row => row.Label + " " + row.Value));
        return $"{_block.Heading} at full size: seam lines, darts, levels, landmarks, grainlines and test squares. {remarks}{rows}. {_report.Verdict()}";
    }

    private IEnumerable<string> Notes()
    {
        yield return "Full size, scale 1:1.";
        foreach (string remark in _block.Remarks)
        {
            yield return remark;
        }

        yield return "Seam lines, no seam allowance.";
        foreach (string reason in _leftOut)
        {
            yield return reason;
        }

        foreach (Finding advice in _report.Advice)
        {
            yield return $"{advice.Check}, {advice.Place}: {advice.Advice}";
        }

        if (_options.Date is { } date)
        {
            yield return date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    private IEnumerable<(string Label, string Value)> Rows() =>
    [
        .. BlockRows.Measurements(_block, _figures),
        .. BlockRows.Settings(_block, _figures),
        .. _block.Method.Readings.SelectMany(reading => Reading(reading.Key, reading.Value)),
        .. BlockRows.Darts(_block, Fine),
    ];

    private IEnumerable<(string Label, string Value)> Reading(string purpose, TableReading reading)
    {
        yield return (purpose, reading.Describe(_figures.Usual));
        foreach (WorkedLength figure in reading.Figures)
        {
            WorkedLength said = BlockRows.Said(figure);
            yield return (said.Name ?? string.Empty, Fine.Near(said.ValueMm));
        }
    }

    // Dart figures as finely as the steps print them.
    private TapeFigures Fine => new(Step.FineEnough(_figures.Usual), TapeStyle.Typographic);
}
