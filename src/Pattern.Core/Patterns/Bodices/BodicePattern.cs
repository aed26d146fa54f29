using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Patterns;

/// <summary>Makes all pieces of a bodice from its block: front on the fold, two backs with a zip between them, facings of the neckline, and of the armhole where no sleeve is sewn in.</summary>
/// <example><code>
/// PieceSet bodice = BodicePattern.From(BodiceBlock.For(body.With(BodyMeasurement.BustGirth, "36")).Draft());
/// bodice.Report.ThrowIfFailed();
/// </code></example>
public static class BodicePattern
{
    /// <summary>Makes the pieces with all options at their defaults.</summary>
    /// <param name="block">A bodice block.</param>
    /// <exception cref="ConstructionException">The block is no bodice, or has no room for a facing.</exception>
    [Pure]
    public static PieceSet From(Block block) => From(block, new BodicePatternOptions());

    /// <summary>Makes the pieces.</summary>
    /// <remarks>Facings are cut from the main cloth and from interfacing.</remarks>
    /// <param name="block">A bodice block.</param>
    /// <param name="options">How they are made.</param>
    /// <exception cref="ConstructionException">The block is no bodice, or has no room for a facing.</exception>
    [Pure]
    public static PieceSet From(Block block, BodicePatternOptions options)
    {
        Guard.NotNull(block, nameof(block));
        Guard.NotNull(options, nameof(options));
        if (block.Record.Own is not BodiceDraft)
        {
            throw new ConstructionException(DiagnosticCode.NotThisGarment, block.Heading, "bodice") { Step = "making the pieces of a bodice" };
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        return PieceSet.Of([.. PiecesOf(block, options with { IsMetric = tape.IsMetric }).Select(piece => piece.WithTape(tape))]);
    }

    /// <summary>Front, back and their facings, of any block with both panels of a bodice.</summary>
    internal static List<PatternPiece> PiecesOf(Block block, BodicePatternOptions options)
    {
        var cut = new List<PatternPiece>();
        var pieces = new List<PatternPiece>();
        foreach (Panel panel in PanelsOf(block))
        {
            PatternPiece piece = Piece(panel, options);
            bool isFront = panel.Name.Text.EndsWith(PanelName.Front.Text, System.StringComparison.Ordinal);
            bool hasCentre = panel.TryFindEdge(EdgeName.Centre, out PanelEdge? centre);

            // A dart at the centre front makes a seam of it.
            bool isFolded = hasCentre && isFront && centre!.Darts.Count == 0;
            piece = isFolded ? piece.CutOnFold(EdgeName.Centre) : hasCentre && !isFront ? piece.WithAllowance(EdgeName.Centre, options.ZipAllowance) : piece;
            cut.Add(piece);
            pieces.Add(Labelled(piece).Cut(isFolded ? 1 : 2, ClothName.Main));
        }

        Face(EdgeName.Neckline);
        if (options.Armhole == ArmholeFinish.Faced)
        {
            Face(EdgeName.Armhole);
        }

        return pieces;

        // A facing has room for its own name and cut alone.
        PatternPiece Labelled(PatternPiece piece) => options.Label is { } label ? piece.WithLabel(label) : piece;

        // A facing has no darts and no seam that the panel was cut apart by: it is cut from the panel as it was before.
        Panel? DraftedOf(PatternPiece piece)
            => block.Record.Turned.Find(one => ReferenceEquals(one.Sewn.EdgesRaw, block.FindPanel(piece.Panel.Name).EdgesRaw))?.Drafted;

        void Face(EdgeName edge)
        {
            PatternPiece[] along = [.. cut.Where(piece => piece.Panel.TryFindEdge(edge, out _))];
            var drafted = new List<Panel>();
            foreach (PatternPiece piece in along)
            {
                Panel? whole = DraftedOf(piece);
                bool isCutApart = whole is not null && along.Count(other => ReferenceEquals(DraftedOf(other), whole)) > 1;
                bool isAsDrafted = whole is null || (!isCutApart && block.FindPanel(piece.Panel.Name).FindEdge(edge).Darts.Count == 0);
                if (isCutApart && drafted.Contains(whole!))
                {
                    continue;
                }

                PatternPiece source = isAsDrafted ? piece
                    : whole!.Name == PanelName.Front ? Piece(whole, options).CutOnFold(EdgeName.Centre)
                    : Piece(whole, options).WithAllowance(EdgeName.Centre, options.ZipAllowance);
                PatternPiece facing = source.FacingOf(edge, options.FacingDepth);
                int count = facing.FoldLine is null ? 2 : 1;
                pieces.Add(facing.Cut(count, ClothName.Main).Cut(count, ClothName.Interfacing));
                if (isCutApart)
                {
                    drafted.Add(whole!);
                }
            }
        }
    }

    // Front and back; or the panels that they were cut apart into.
    private static Panel[] PanelsOf(Block block) => block.Panels.Any(panel => panel.Name == PanelName.Front)
        ? [block.FindPanel(PanelName.Front), block.FindPanel(PanelName.Back)]
        : [.. block.Panels.Reverse()];

    private static PatternPiece Piece(Panel panel, BodicePatternOptions options)
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(options.SeamAllowance);
        foreach (EdgeName edge in new[] { EdgeName.Neckline, EdgeName.Armhole })
        {
            piece = panel.TryFindEdge(edge, out _) ? piece.WithAllowance(edge, options.CurveAllowance) : piece;
        }

        return piece;
    }
}
