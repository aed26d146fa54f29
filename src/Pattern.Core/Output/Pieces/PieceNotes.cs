using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>What a sheet of pieces says in words.</summary>
internal sealed class PieceNotes
{
    private readonly PieceSet _pieces;
    private readonly CheckReport _report;
    private readonly PieceLabel? _label;

    internal PieceNotes(PieceSet pieces, CheckReport report)
    {
        _pieces = pieces;
        _report = report;

        // The first label speaks for the sheet; each piece carries its own.
        _label = pieces.Pieces.Select(piece => piece.LabelText).FirstOrDefault(label => label is not null);
    }

    internal string Title => Heading + (_label?.Wearer is { } wearer ? " for " + wearer : string.Empty) + ", pieces to cut";

    private string Heading => _label?.Garment ?? "Pieces to cut";

    internal TitleBlock TitleBlock() => new()
    {
        Heading = Heading,
        Subject = _label?.Wearer is { } wearer ? "for " + wearer : string.Empty,
        Notes = [.. Notes()],
        Rows = [.. Rows()],
        Verdict = ("checks", _report.Verdict()),
        VerdictInk = _report.Passed ? Ink.Strong : Ink.Accent,
        Cautions = Cautions.OfSkirtsAndTools,
    };

    internal string Description()
    {
        string list = string.Join("; ", _pieces.Pieces.Select(piece => piece.Name.Text + ": " + Cutting(piece)));
        return $"Pieces at full size, ready to cut: cut lines, stitching lines, darts, notches, drill holes, grainlines, folds and labels. {list}. {_report.Verdict()}";
    }

    private static string Cutting(PatternPiece piece)
    {
        string cutting = string.Join("; ", piece.CuttingLines());
        return cutting.Length > 0 ? cutting : "how many to cut is not said";
    }

    private IEnumerable<string> Notes()
    {
        yield return "Full size, scale 1:1.";
        yield return "Cut along the strong lines, sew along the dashed ones.";
        yield return "Allowances are included; each edge says its own.";
        if (_label?.Date is { } date)
        {
            yield return date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        }
    }

    private IEnumerable<(string Label, string Value)> Rows()
    {
        if (_label?.Size is { } size)
        {
            yield return ("made for", size);
        }

        foreach (PatternPiece piece in _pieces.Pieces)
        {
            yield return (piece.Name.Text, Cutting(piece));
        }
    }
}
