using System;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>A panel made ready to cut: seam line, cut line, marks and label. Immutable: every method returns a new piece.</summary>
/// <remarks>What is not said keeps its default: no allowance, extended corners, no fold, no label. The lines are worked out when they are
/// first asked for, so what cannot be drawn is refused by the first reading, not by the call that asked for it.</remarks>
/// <example><code>
/// PatternPiece front = PatternPiece.From(block.Front)
///     .WithAllowance(Tape.Inches("1/2"))
///     .WithAllowance(EdgeName.Hem, Tape.Inches("1 1/2"))
///     .CutOnFold(EdgeName.Centre)
///     .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored)
///     .Cut(1, ClothName.Main);
/// </code></example>
public sealed partial class PatternPiece
{
    private const double MostAllowanceMm = 500;
    internal const int MostCut = 999;

    private readonly Panel _half;
    private readonly PieceSettings _settings;
    private readonly Lazy<PieceLines> _lines;
    private readonly Lazy<LabelBlock?> _label;
    private readonly Lazy<CheckReport> _report;

    private PatternPiece(Panel half, PieceSettings settings)
    {
        _half = half;
        _settings = settings;
        _lines = new Lazy<PieceLines>(() => new PieceLines(half, settings));
        _label = new Lazy<LabelBlock?>(PlaceLabel);
        _report = new Lazy<CheckReport>(() => PieceChecks.Check(this));
    }

    /// <summary>Begins a piece.</summary>
    /// <param name="panel">The panel that is sewn: a half where it will lie on the fold.</param>
    public static PatternPiece From(Panel panel) => new(Guard.NotNull(panel, nameof(panel)), PieceSettings.Default);

    /// <summary>Gives the piece a name other than that of its panel, as for a lining.</summary>
    [Pure]
    public PatternPiece WithName(PanelName name) => With(_settings with { Name = name });

    /// <summary>Sets the allowance of every edge that has none of its own.</summary>
    /// <param name="allowance">From the seam line to the cut line; 0 to 500 mm. Common practice: 1/2 in (12 mm).</param>
    /// <exception cref="ArgumentOutOfRangeException">The allowance is negative, or too wide for any garment.</exception>
    [Pure]
    public PatternPiece WithAllowance(Length allowance) => With(_settings with { DefaultMm = Allowance(allowance, "every edge", nameof(allowance)) });

    /// <summary>Sets the allowance of one edge.</summary>
    /// <remarks>An edge on the fold has none while it is on the fold. The mirror image of an edge has the allowance of the edge unless it is given its own.</remarks>
    /// <param name="edge">The edge.</param>
    /// <param name="allowance">From the seam line to the cut line; 0 to 500 mm. Common practice: 5/8 in (15 mm) in home sewing, 3/8 in (10 mm) for
    /// enclosed seams, 1 in (25 mm) at a zip, 1 1/2 in (38 mm) for a hem.</param>
    /// <exception cref="ArgumentOutOfRangeException">The allowance is negative, or too wide for any garment.</exception>
    /// <exception cref="ConstructionException">The panel has no such edge.</exception>
    [Pure]
    public PatternPiece WithAllowance(EdgeName edge, Length allowance)
    {
        RequireEdge(edge);
        return With(_settings with { Allowances = _settings.AllowancesWith(edge, Allowance(allowance, edge.Text, nameof(allowance))) });
    }

    /// <summary>Says how the allowances of two edges meet at the corner between them.</summary>
    /// <param name="across">The edge that the other one runs into: the one that is folded back, where it is <see cref="Corner.Mirrored"/>.</param>
    /// <param name="along">The edge that runs on: its allowance is mirrored or squared off.</param>
    /// <param name="corner">How they meet. Default <see cref="Corner.Extended"/>.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, or the edges do not meet.</exception>
    [Pure]
    public PatternPiece WithCorner(EdgeName across, EdgeName along, Corner corner)
    {
        var checkedCorner = (Corner)Guard.Choice((int)corner, 4, nameof(corner));
        int first = _half.IndexOf(across);
        int second = _half.IndexOf(along);
        int apart = Math.Abs(first - second);
        if (apart != 1 && apart != _half.Edges.Count - 1)
        {
            throw new ConstructionException(DiagnosticCode.CornerBetweenStrangers, across, along, _half.Name) { Step = "shaping a corner", Landmark = across.Text };
        }

        bool Same((EdgeName Across, EdgeName Along, Corner Corner) said)
            => (said.Across == across && said.Along == along) || (said.Across == along && said.Along == across);
        return With(_settings with { Corners = [.. _settings.Corners.Where(said => !Same(said)), (across, along, checkedCorner)] });
    }

    /// <summary>Lays one edge on the fold of the cloth: no seam and no allowance there, and one cut makes both halves.</summary>
    /// <param name="edge">A straight edge without darts.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, or it is not straight.</exception>
    [Pure]
    public PatternPiece CutOnFold(EdgeName edge)
    {
        _ = PanelUnfolding.FoldLine(_half, edge);
        return With(_settings with { Fold = edge, IsUnfolded = false });
    }

    /// <summary>Makes the whole piece of one that lies on the fold: the half and its mirror image, with darts, notches and inner lines.</summary>
    /// <remarks>The edges on either side of the fold go on across it and keep their names; every other edge gets an image, named "other" and
    /// the name of the edge. <see cref="Folded"/> takes it back.</remarks>
    /// <exception cref="ConstructionException">No edge lies on the fold.</exception>
    [Pure]
    public PatternPiece Unfolded() => _settings.Fold is not null
        ? With(_settings with { IsUnfolded = true })
        : throw new ConstructionException(DiagnosticCode.NothingToUnfold, _half.Name) { Step = "unfolding a piece", Landmark = _half.Name.Text };

    /// <summary>Lays an unfolded piece on the fold again.</summary>
    [Pure]
    public PatternPiece Folded() => With(_settings with { IsUnfolded = false });

    /// <summary>Says how often the piece is cut from a cloth; said again for the same cloth, the last one counts.</summary>
    /// <param name="count">1 to 999. Two or more that are not on the fold are cut as pairs, one the mirror image of the other.</param>
    /// <param name="cloth">What it is cut from.</param>
    [Pure]
    public PatternPiece Cut(int count, ClothName cloth) => With(_settings with
    {
        Cuts = [.. _settings.Cuts.Where(c => c.Cloth != cloth), new CutCount(Guard.InRange(count, 1, MostCut, nameof(count)), cloth)],
    });

    /// <summary>Puts a label on the piece.</summary>
    [Pure]
    public PatternPiece WithLabel(PieceLabel label) => With(_settings with { Label = Guard.NotNull(label, nameof(label)) });

    /// <summary>Says which tape lies on the table of who makes the piece: what is printed on and beside the piece is in its figures.</summary>
    /// <remarks>No line changes. A drawing that is asked for another tape takes that one.</remarks>
    /// <param name="tape">The tape, and its finest usual mark.</param>
    [Pure]
    public PatternPiece WithTape(TapeStep tape) => With(_settings with { Tape = tape });

    /// <summary>Draws a line inside the piece.</summary>
    /// <param name="name">What is printed along it: 1 to 60 printable characters on one line.</param>
    /// <param name="kind">What it is for.</param>
    /// <param name="path">Where it runs; on a piece on the fold, on the half that is drawn.</param>
    /// <exception cref="ArgumentException">The name is blank, too long or has characters that cannot be printed.</exception>
    [Pure]
    public PatternPiece WithInternalLine(string name, InternalLineKind kind, CurvePath path) => With(_settings with
    {
        InternalLines =
        [
            .. _settings.InternalLines,
            new InternalLine(
                PieceText.Checked(name, nameof(name)),
                (InternalLineKind)Guard.Choice((int)kind, 5, nameof(kind)),
                Guard.NotNull(path, nameof(path))),
        ],
    });

    private PatternPiece With(PieceSettings settings) => new(_half, settings);

    private void RequireEdge(EdgeName edge)
    {
        if (_settings.Fold is null || !PanelUnfolding.TryFindOriginal(edge, out EdgeName original) || _half.Edges.All(e => e.Name != original))
        {
            _ = _half.IndexOf(edge);
        }
    }

    private double Allowance(Length allowance, string edge, string parameter)
    {
        double mm = Guard.Millimetres(allowance, parameter);
        return mm >= 0 && mm <= MostAllowanceMm
            ? mm
            : throw new ArgumentOutOfRangeException(
                parameter,
                MessageRegistry.Format(DiagnosticCode.AllowanceOutOfRange, edge, _half.Name, allowance, Length.Zero, Length.FromMillimeters(MostAllowanceMm)));
    }
}
