using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>Makes all pieces of a plain skirt from its block: front on the fold, back with a zip, straight waistband, and a lining if wanted.</summary>
/// <example><code>
/// PieceSet skirt = SkirtPattern.From(block, new SkirtPatternOptions { HemAllowance = Tape.Inches("2"), Lining = LiningChoice.Loose });
/// Length enough = skirt.EstimateCloth(ClothName.Main, Tape.Inches("43")).UpperBound;
/// </code></example>
public static class SkirtPattern
{
    private const double ZipStopMm = 12;

    /// <summary>The waistband of a skirt.</summary>
    public static PanelName Waistband { get; } = PanelName.Of("waistband");

    /// <summary>The end of the waistband that lies under the other one and carries the button.</summary>
    public static EdgeName UnderlapEnd { get; } = EdgeName.Of("underlap end");

    /// <summary>The end of the waistband that lies on top.</summary>
    public static EdgeName OverlapEnd { get; } = EdgeName.Of("overlap end");

    /// <summary>The long edge of the waistband that is turned in and sewn down inside.</summary>
    public static EdgeName InsideEdge { get; } = EdgeName.Of("inside");

    /// <summary>Makes the pieces with all options at their defaults.</summary>
    [Pure]
    public static PieceSet From(SkirtBlock block) => From(block, new SkirtPatternOptions());

    /// <summary>Makes the pieces.</summary>
    /// <param name="block">The block.</param>
    /// <param name="options">How they are made.</param>
    /// <exception cref="ConstructionException">The zip is longer than the centre back.</exception>
    [Pure]
    public static PieceSet From(SkirtBlock block, SkirtPatternOptions options)
    {
        Guard.NotNull(block, nameof(block));
        Guard.NotNull(options, nameof(options));
        PatternPiece front = Skirt(block.Front, options).CutOnFold(EdgeName.Centre);
        PatternPiece back = Skirt(block.Back, options)
            .WithAllowance(EdgeName.Centre, options.ZipAllowance)
            .WithCorner(EdgeName.Hem, EdgeName.Centre, Corner.Mirrored)
            .WithCorner(EdgeName.Centre, EdgeName.Waist, Corner.Mirrored);
        var pieces = new List<PatternPiece>
        {
            WithLevels(front, block).Cut(1, ClothName.Main),
            WithZip(WithLevels(back, block), block, options.ZipMm).Cut(2, ClothName.Main),
            Band(block, options).Cut(1, ClothName.Main).Cut(1, ClothName.Interfacing),
        };
        if (options.Lining == LiningChoice.Loose)
        {
            pieces.Add(Lining(front).Cut(1, ClothName.Lining));
            pieces.Add(Lining(WithZip(back, block, options.ZipMm)).Cut(2, ClothName.Lining));
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        return PieceSet.Of([.. pieces.Select(piece => options.Label is { } label ? piece.WithLabel(label) : piece).Select(piece => piece.WithTape(tape))]);
    }

    private static PatternPiece Skirt(Panel panel, SkirtPatternOptions options) => PatternPiece.From(panel)
        .WithAllowance(options.SeamAllowance)
        .WithAllowance(EdgeName.Hem, options.HemAllowance)
        .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored)
        .WithCorner(EdgeName.SideSeam, EdgeName.Waist, Corner.Mirrored);

    private static PatternPiece Lining(PatternPiece piece)
        => piece.WithName(PanelName.Of(piece.Name + " lining")).WithAllowance(EdgeName.Hem, Length.Zero);

    private static PatternPiece WithLevels(PatternPiece piece, SkirtBlock block) => WithLevel(
        WithLevel(piece, "yoke line", block.Levels.YokeMm),
        "hip line",
        block.Levels.LowerHipMm);

    // From side to side of the seam line at a level below the waist; a dart that reaches so far down is crossed, as on the draft.
    private static PatternPiece WithLevel(PatternPiece piece, string name, double belowMm)
    {
        Point2D[] ends = [.. piece.Panel.CapOutline().IntersectionsWith(Line.Horizontal(new Point2D(0, -belowMm))).Points.Select(hit => hit.Point).OrderBy(p => p.XMm)];
        return ends.Length < 2
            ? piece
            : piece.WithInternalLine(name, InternalLineKind.Level, CurvePath.FromLine(new LineSegment(ends[0], ends[ends.Length - 1])));
    }

    private static PatternPiece WithZip(PatternPiece piece, SkirtBlock block, double zipMm)
    {
        CurvePath centre = block.Back.FindEdge(EdgeName.Centre).Stretches[0].Reversed();
        if (zipMm >= centre.LengthMm)
        {
            throw new ConstructionException(DiagnosticCode.PlaceOffEdge, Length.FromMillimeters(zipMm), EdgeName.Centre, PanelName.Back, centre.Length)
            {
                Step = "marking the stop of the zip",
                Landmark = EdgeName.Centre.Text,
                Measured = Length.FromMillimeters(zipMm),
                Allowed = centre.Length,
            };
        }

        // The centre runs down from the waist here, the panel to its left.
        Length down = Length.FromMillimeters(zipMm);
        Point2D at = centre.PointAtLength(down);
        return piece.WithInternalLine("zip stop", InternalLineKind.Stop, CurvePath.FromLine(new LineSegment(at, at + centre.NormalAtLength(down).TimesMm(ZipStopMm))));
    }

    // From the overlap at the centre back around the waist and on by the underlap; the notches stand where the side seams, the centre front and the centre
    // back of the skirt meet it.
    private static PatternPiece Band(SkirtBlock block, SkirtPatternOptions options)
    {
        double back = block.Back.FindEdge(EdgeName.Waist).SewnLengthMm();
        double front = block.Front.FindEdge(EdgeName.Waist).SewnLengthMm();
        double waist = 2 * (back + front);
        double length = waist + options.OverlapMm;
        double width = options.BandMm;
        var corners = new[] { default(Point2D), new Point2D(length, 0), new Point2D(length, 2 * width), new Point2D(0, 2 * width) };
        CurvePath Side(int i) => CurvePath.FromLine(new LineSegment(corners[i], corners[(i + 1) % 4]));
        PanelBuilder band = Panel.Named(Waistband)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, Side(0))
            .WithEdge(UnderlapEnd, EdgeRole.Seam, Side(1))
            .WithEdge(InsideEdge, EdgeRole.Seam, Side(2))
            .WithEdge(OverlapEnd, EdgeRole.Seam, Side(3))
            .WithGrainline(new LineSegment(new Point2D(0.3 * length, width / 2), new Point2D(0.7 * length, width / 2)))
            .WithNotch(EdgeName.Waist, Length.FromMillimeters(back))
            .WithNotch(EdgeName.Waist, Length.FromMillimeters(back + front))
            .WithNotch(EdgeName.Waist, Length.FromMillimeters(back + (2 * front)));
        if (options.OverlapMm > 0)
        {
            band = band.WithNotch(EdgeName.Waist, Length.FromMillimeters(waist), 2);
        }

        return PatternPiece.From(band.Make())
            .WithAllowance(options.SeamAllowance)
            .WithInternalLine("fold", InternalLineKind.Fold, CurvePath.FromLine(new LineSegment(new Point2D(0, width), new Point2D(length, width))));
    }
}
