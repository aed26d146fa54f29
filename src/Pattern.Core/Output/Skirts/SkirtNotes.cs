using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>What the sheet of a skirt block says in words.</summary>
internal sealed class SkirtNotes
{
    private readonly SkirtBlock _block;
    private readonly CheckReport _report;
    private readonly DrawingOptions _options;
    private readonly TapeFigures _figures;
    private readonly IReadOnlyList<string> _leftOut;

    internal SkirtNotes(SkirtBlock block, CheckReport report, DrawingOptions options, TapeFigures figures, IReadOnlyList<string> leftOut)
    {
        _block = block;
        _report = report;
        _options = options;
        _figures = figures;
        _leftOut = leftOut;
    }

    internal string Title => _block.Body.Name is { } name ? "Skirt block for " + name : "Skirt block";

    internal TitleBlock TitleBlock() => new()
    {
        Heading = "Skirt block",
        Subject = _block.Body.Name is { } name ? "for " + name : string.Empty,
        Notes = Notes().ToArray(),
        Rows = Rows().ToArray(),
        Verdict = ("checks", _report.Verdict()),
        VerdictInk = _report.Passed ? Ink.Strong : Ink.Accent,
        Cautions = Cautions.OfCutting,
    };

    internal string Description()
    {
        string rows = string.Join("; ", Rows().Select(row => row.Label + " " + row.Value));
        return $"Half of a skirt block at full size, the back to the left, the front to the right: seam lines, darts, levels, landmarks, grainlines and test squares. {rows}. {_report.Verdict()}";
    }

    private IEnumerable<string> Notes()
    {
        yield return "Full size, scale 1:1.";
        yield return "Half of the skirt: back to the left, front to the right.";
        yield return "Seam lines, no seam allowance.";
        foreach (string reason in _leftOut)
        {
            yield return reason;
        }

        if (_options.Date is { } date)
        {
            yield return date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    private IEnumerable<(string Label, string Value)> Rows()
    {
        foreach (Measurement.BodyMeasurement key in new[] { Measurement.BodyMeasurement.WaistGirth, Measurement.BodyMeasurement.HipGirth })
        {
            if (_block.Body.TryFindMm(key, out double valueMm))
            {
                yield return (key.Term, _figures.Of(valueMm));
            }
        }

        yield return ("waist ease", _figures.OrNone(_block.WaistEase.Millimeters));
        yield return ("hip ease", _figures.OrNone(_block.HipEase.Millimeters));
        yield return ("length", _figures.Of(_block.SkirtLength.Millimeters));
        yield return ("waistline", _block.Waistline switch { Waistline.Shaped => "shaped, for a skirt", Waistline.LoweredBack => "lowered at the back, for a skirt", _ => "level, for a dress" });
        if (Fit() is { } fit)
        {
            yield return ("fitted", fit);
        }

        yield return ("shaping", _block.Shaping.Describe(_figures.Usual));
        yield return ("back wider by", _figures.Near(_block.Shaping.BackWider.ValueMm));
        yield return ("back darts", Darts(_block.Back));
        yield return ("front darts", Darts(_block.Front));
        yield return ("closed waist", _figures.Of(2 * (Waist(_block.Back) + Waist(_block.Front))) + " all around");
    }

    private static double Waist(Panel panel) => panel.FindEdge(EdgeName.Waist).SewnLengthMm();

    private string? Fit()
    {
        SkirtFit fit = _block.Fit;
        var parts = new List<string>();
        void Add(string what, double valueMm)
        {
            if (valueMm > 0)
            {
                parts.Add(what + " in by " + _figures.Of(valueMm));
            }
        }

        Add("side hem", fit.SideHemMm);
        Add("CB hem", fit.CentreBackHemMm);
        Add("CB waist", fit.CentreBackWaistMm);
        return parts.Count == 0 ? null : string.Join(", ", parts);
    }

    // The darts of a panel share their intake evenly.
    private string Darts(Panel panel)
    {
        Dart[] darts = panel.Darts.ToArray();
        return darts.Length == 0
            ? "none"
            : FormattableString.Invariant($"{darts.Length} of {_figures.Near(darts[0].IntakeMm)}, {string.Join(", ", darts.Select(dart => _figures.Of(dart.LengthMm)))} long");
    }
}
