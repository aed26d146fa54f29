using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Patterns;

/// <summary>Makes the pieces of a sleeve from its block: a right and a left one.</summary>
/// <example><code>
/// SleeveBlock sleeve = SleeveBlock.For(armhole, body.With(BodyMeasurement.BustGirth, "34 1/2")).Draft();
/// PieceSet pieces = SleevePattern.From(sleeve, new SleevePatternOptions { HemAllowance = Tape.Inches("1 1/2") });
/// </code></example>
public static class SleevePattern
{
    /// <summary>Makes the pieces with all options at their defaults.</summary>
    /// <param name="block">A sleeve block.</param>
    [Pure]
    public static PieceSet From(Block block) => From(block, new SleevePatternOptions());

    /// <summary>Makes the pieces.</summary>
    /// <param name="block">A sleeve block.</param>
    /// <param name="options">How they are made.</param>
    /// <exception cref="ConstructionException">The block is no sleeve, or an allowance does not fit its piece.</exception>
    [Pure]
    public static PieceSet From(Block block, SleevePatternOptions options)
    {
        Guard.NotNull(block, nameof(block));
        Guard.NotNull(options, nameof(options));
        if (block.Record.Own is not SleeveDraft)
        {
            throw new ConstructionException(DiagnosticCode.NotThisGarment, block.Heading, "sleeve") { Step = "making the pieces of a sleeve" };
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        SleevePatternOptions filled = options.FilledFor(tape.IsMetric);
        return PieceSet.Of([.. block.Panels.Select(panel => Piece(panel, filled).Cut(block.TimesOf(panel.Name), ClothName.Main).WithTape(tape))]);
    }

    // What is turned up has the shape of the sleeve that it lies on; at the head the cut edges of both sides of a seam match.
    private static PatternPiece Piece(Panel panel, SleevePatternOptions options)
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(options.SeamAllowance);
        for (int i = 0; i < panel.Edges.Count; i++)
        {
            PanelEdge edge = panel.Edges[i];
            foreach (PanelEdge beside in new[] { panel.Edges[(i + panel.Edges.Count - 1) % panel.Edges.Count], panel.Edges[(i + 1) % panel.Edges.Count] })
            {
                piece = edge.Role == EdgeRole.Hem ? piece.WithAllowance(edge.Name, options.HemAllowance).WithCorner(edge.Name, beside.Name, Corner.Mirrored)
                    : edge.Name == EdgeName.SleeveHead ? piece.WithCorner(edge.Name, beside.Name, Corner.SquaredOff)
                    : piece;
            }
        }

        return options.Label is { } label ? piece.WithLabel(label) : piece;
    }
}
