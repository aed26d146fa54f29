using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>Makes all pieces of a gown from its block: fronts on the fold, backs with a zip from the neck to below the waist, sleeves, and facings.</summary>
/// <example><code>
/// PieceSet gown = GownPattern.From(GownBlock.For(body.With(BodyMeasurement.BustGirth, "36")).Draft());
/// gown.Report.ThrowIfFailed();
/// </code></example>
public static class GownPattern
{
    private const double StopMm = 12;

    /// <summary>Makes the pieces with all options at their defaults.</summary>
    /// <param name="block">A gown block.</param>
    /// <exception cref="ConstructionException">The block is no gown, or has no room for a facing.</exception>
    [Pure]
    public static PieceSet From(Block block) => From(block, new GownPatternOptions());

    /// <summary>Makes the pieces.</summary>
    /// <param name="block">A gown block.</param>
    /// <param name="options">How they are made.</param>
    /// <exception cref="ConstructionException">The block is no gown, the zip is longer than its seam, or the block has no room for a facing.</exception>
    [Pure]
    public static PieceSet From(Block block, GownPatternOptions options)
    {
        Guard.NotNull(block, nameof(block));
        Guard.NotNull(options, nameof(options));
        if (block.Record.Own is not GownDraft gown)
        {
            throw new ConstructionException(DiagnosticCode.NotThisGarment, block.Heading, "gown") { Step = "making the pieces of a gown" };
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        options = options with { IsMetric = tape.IsMetric };
        BodicePatternOptions seams = options.Bodice with { IsMetric = tape.IsMetric, Armhole = gown.Sleeve is null ? options.Bodice.Armhole : ArmholeFinish.SewnIn };
        List<PatternPiece> pieces = BodicePattern.PiecesOf(block, seams);
        PatternPiece front = WithHem(PatternPiece.From(block.FindPanel(GownNames.SkirtFront)), seams, options).CutOnFold(EdgeName.Centre);
        PatternPiece back = WithHem(WithStop(block.FindPanel(GownNames.SkirtBack), options.ZipBelowWaist), seams, options)
            .WithAllowance(EdgeName.Centre, seams.ZipAllowance)
            .WithCorner(EdgeName.Hem, EdgeName.Centre, Corner.Mirrored);
        var below = new List<PatternPiece> { front.Cut(1, ClothName.Main), back.Cut(2, ClothName.Main) };
        if (gown.Sleeve is not null)
        {
            below.Add(Sleeve(block.FindPanel(SleeveBlock.SleevePanel), seams, options).Cut(2, ClothName.Main));
        }

        pieces.InsertRange(2, below.Select(piece => seams.Label is { } label ? piece.WithLabel(label) : piece));
        return PieceSet.Of([.. pieces.Select(piece => piece.WithTape(tape))]);
    }

    private static PatternPiece WithHem(PatternPiece piece, BodicePatternOptions seams, GownPatternOptions options) => piece
        .WithAllowance(seams.SeamAllowance)
        .WithAllowance(EdgeName.Hem, options.HemAllowance)
        .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored);

    private static PatternPiece Sleeve(Panel panel, BodicePatternOptions seams, GownPatternOptions options)
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(seams.SeamAllowance).WithAllowance(EdgeName.SleeveHead, seams.CurveAllowance);
        foreach (PanelEdge edge in panel.Edges.Where(edge => edge.Role == EdgeRole.Hem))
        {
            piece = piece.WithAllowance(edge.Name, options.WristAllowance)
                .WithCorner(edge.Name, EdgeName.FrontUnderarm, Corner.Mirrored)
                .WithCorner(edge.Name, EdgeName.BackUnderarm, Corner.Mirrored);
        }

        return piece;
    }

    // A cut in the allowance beside the end of the zip, and a line across it.
    private static PatternPiece WithStop(Panel panel, Length below)
    {
        PanelEdge centre = panel.FindEdge(EdgeName.Centre);
        double lengthMm = centre.SewnLengthMm();
        double belowMm = below.Millimeters;
        if (belowMm <= 0)
        {
            return PatternPiece.From(panel);
        }

        if (belowMm >= lengthMm)
        {
            throw new ConstructionException(DiagnosticCode.PlaceOffEdge, below, centre.Name, panel.Name, Length.FromMillimeters(lengthMm))
            {
                Step = "marking the stop of the zip",
                Landmark = centre.Name.Text,
                Measured = below,
                Allowed = Length.FromMillimeters(lengthMm),
            };
        }

        double atMm = lengthMm - belowMm;
        Point2D stop = centre.StretchesRaw[0].PointAtMm(atMm);
        Panel marked = new(panel.Name, panel.EdgesRaw, panel.Features with { Notches = [.. panel.Notches, new Notch(centre.Name, stop, atMm, 1)] });
        return PatternPiece.From(marked)
            .WithInternalLine("zip stop", InternalLineKind.Stop, CurvePath.FromLine(new LineSegment(stop, stop + Direction.Right.TimesMm(StopMm))));
    }
}
