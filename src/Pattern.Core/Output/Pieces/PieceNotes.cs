using System;
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
    private readonly IReadOnlyList<string> _unnamed;
    private readonly string? _garment;
    private readonly string? _wearer;
    private readonly string? _size;
    private readonly string? _date;

    /// <param name="pieces">The pieces.</param>
    /// <param name="report">Their checks.</param>
    /// <param name="unnamed">What the edges would say that found no room for their name and allowance.</param>
    internal PieceNotes(PieceSet pieces, CheckReport report, IReadOnlyList<string> unnamed)
    {
        _pieces = pieces;
        _report = report;
        _unnamed = unnamed;
        _garment = Agreed(label => label.Garment);
        _wearer = Agreed(label => label.Wearer);
        _size = Agreed(label => label.Size);
        _date = Agreed(label => label.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }

    internal string Title => Heading + (_wearer is null ? string.Empty : " for " + _wearer) + ", pieces to cut";

    private string Heading => _garment ?? "Pieces to cut";

    // The sheet says only what is true of every label; each piece carries its own.
    private string? Agreed(Func<PieceLabel, string?> said)
    {
        string?[] all = [.. _pieces.Pieces.Select(piece => piece.LabelText).OfType<PieceLabel>().Select(said).Distinct()];
        return all.Length == 1 ? all[0] : null;
    }

    internal TitleBlock TitleBlock() => new()
    {
        Heading = Heading,
        Subject = _wearer is null ? string.Empty : "for " + _wearer,
        Notes = [.. Notes()],
        Rows = [.. Rows()],
        Verdict = ("checks", _report.Verdict()),
        VerdictInk = _report.Passed ? Ink.Strong : Ink.Accent,
        Cautions = Cautions.OfCutting,
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
        yield return _unnamed.Count == 0
            ? "Allowances are included; each edge says its own."
            : "Allowances are included. Edges without room for words: " + string.Join("; ", _unnamed) + ".";
        if (_date is not null)
        {
            yield return _date;
        }
    }

    private IEnumerable<(string Label, string Value)> Rows()
    {
        if (_size is not null)
        {
            yield return ("made for", _size);
        }

        foreach (PatternPiece piece in _pieces.Pieces)
        {
            yield return (piece.Name.Text, Cutting(piece));
        }
    }
}
