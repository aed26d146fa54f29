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
        // A dart at the centre front makes a seam of it.
        Panel frontPanel = block.FindPanel(PanelName.Front);
        bool isFolded = frontPanel.FindEdge(EdgeName.Centre).Darts.Count == 0;
        PatternPiece front = isFolded ? Piece(frontPanel, options).CutOnFold(EdgeName.Centre) : Piece(frontPanel, options);
        PatternPiece back = Piece(block.FindPanel(PanelName.Back), options).WithAllowance(EdgeName.Centre, options.ZipAllowance);
        var pieces = new List<PatternPiece> { Labelled(front).Cut(isFolded ? 1 : 2, ClothName.Main), Labelled(back).Cut(2, ClothName.Main) };
        Face(EdgeName.Neckline);
        if (options.Armhole == ArmholeFinish.Faced)
        {
            Face(EdgeName.Armhole);
        }

        return pieces;

        // A facing has room for its own name and cut alone.
        PatternPiece Labelled(PatternPiece piece) => options.Label is { } label ? piece.WithLabel(label) : piece;

        // A facing has no darts: it is cut from the panel as it was before a dart was turned to that edge.
        PatternPiece FacedLike(PatternPiece piece, EdgeName edge)
        {
            Panel panel = block.FindPanel(piece.Panel.Name);
            TurnedPanel? turned = block.Record.Turned.Find(one => ReferenceEquals(one.Sewn.EdgesRaw, panel.EdgesRaw));
            return turned is null || panel.FindEdge(edge).Darts.Count == 0 ? piece
                : panel.Name == PanelName.Front ? Piece(turned.Drafted, options).CutOnFold(EdgeName.Centre)
                : Piece(turned.Drafted, options).WithAllowance(EdgeName.Centre, options.ZipAllowance);
        }

        void Face(EdgeName edge)
        {
            foreach (PatternPiece piece in new[] { front, back })
            {
                PatternPiece facing = FacedLike(piece, edge).FacingOf(edge, options.FacingDepth);
                int count = facing.FoldLine is null ? 2 : 1;
                pieces.Add(facing.Cut(count, ClothName.Main).Cut(count, ClothName.Interfacing));
            }
        }
    }

    private static PatternPiece Piece(Panel panel, BodicePatternOptions options) => PatternPiece.From(panel)
        .WithAllowance(options.SeamAllowance)
        .WithAllowance(EdgeName.Neckline, options.CurveAllowance)
        .WithAllowance(EdgeName.Armhole, options.CurveAllowance);
}
