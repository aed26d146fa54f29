using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>Makes all pieces of a skirt from its block, plain or as a design made it: front on the fold, back with a zip, what finishes the waist, pockets, and a lining if wanted.</summary>
/// <example><code>
/// PieceSet skirt = SkirtPattern.From(block, new SkirtPatternOptions { HemAllowance = Tape.Inches("2"), Lining = LiningChoice.Loose });
/// Length enough = skirt.EstimateCloth(ClothName.Main, Tape.Inches("43")).UpperBound;
/// </code></example>
public static class SkirtPattern
{
    /// <summary>The waistband of a skirt.</summary>
    public static PanelName Waistband { get; } = PanelName.Of("waistband");

    /// <summary>The back part of a joined waistband with which it begins.</summary>
    public static PanelName FirstWaistband { get; } = PanelName.Of("first back waistband");

    /// <summary>The front part of a joined waistband, from join to join.</summary>
    public static PanelName FrontWaistband { get; } = PanelName.Of("front waistband");

    /// <summary>The back part of a joined waistband that carries the underlap.</summary>
    public static PanelName LastWaistband { get; } = PanelName.Of("last back waistband");

    /// <summary>Where the first part of a joined waistband is sewn to the front part, over a seam of the skirt.</summary>
    public static EdgeName FirstJoin { get; } = EdgeName.Of("first side join");

    /// <summary>Where the front part of a joined waistband is sewn to the last part, over a seam of the skirt.</summary>
    public static EdgeName LastJoin { get; } = EdgeName.Of("last side join");

    /// <summary>The end of the waistband that lies under the other one and carries the button, where it has an overlap.</summary>
    public static EdgeName UnderlapEnd { get; } = EdgeName.Of("underlap end beneath");

    /// <summary>The end of the waistband that lies on top, where it has an overlap.</summary>
    public static EdgeName OverlapEnd { get; } = EdgeName.Of("centre back end on top");

    /// <summary>The end with which a waistband without an overlap begins; it meets <see cref="LastEnd"/> at the zip.</summary>
    public static EdgeName FirstEnd { get; } = EdgeName.Of("first end at the zip");

    /// <summary>The end with which a waistband without an overlap ends.</summary>
    public static EdgeName LastEnd { get; } = EdgeName.Of("last end at the zip");

    /// <summary>The long edge of the waistband that is turned in and sewn down inside.</summary>
    public static EdgeName InsideEdge { get; } = EdgeName.Of("inside");

    /// <summary>Makes the pieces with all options at their defaults.</summary>
    /// <param name="block">A skirt block, or what a design made of one.</param>
    [Pure]
    public static PieceSet From(Block block) => From(block, new SkirtPatternOptions());

    /// <summary>Makes the pieces.</summary>
    /// <remarks>What is sewn at the centre front lies on the fold where it is straight; the zip stands in the centre back, or where there is none, in the first seam at the waist.</remarks>
    /// <param name="block">A skirt block, or what a design made of one.</param>
    /// <param name="options">How they are made.</param>
    /// <exception cref="ConstructionException">The block is no skirt, the zip is longer than its seam, or a lining is asked for that cannot be derived from it.</exception>
    [Pure]
    public static PieceSet From(Block block, SkirtPatternOptions options)
    {
        Guard.NotNull(block, nameof(block));
        Guard.NotNull(options, nameof(options));
        SkirtDraft hand = block.Record.Own as SkirtDraft
            ?? throw new ConstructionException(DiagnosticCode.NotThisGarment, block.Heading, "skirt") { Step = "making the pieces of a skirt" };
        if (options.Lining != LiningChoice.None && block.Designs.Count > 0 && !block.Panels.Any(LinedDesign.IsLining))
        {
            block = block.Lined(options.LiningShorter);
        }

        options = options.FilledFor(TapeStep.For(block.Body.Unit).IsMetric, hand.Depths.Levels.UpperHipMm, ZipDesign.Of(block)?.LengthMm);
        var zip = new SkirtZip(block, options.ZipMm, block.Designs.Count == 0 ? hand.Depths.Levels.LowerHipMm : null);
        var pieces = new List<PatternPiece>();
        var facings = new List<PatternPiece>();
        foreach (Panel panel in block.Panels.Where(panel => !LinedDesign.IsLining(panel)).Reverse())
        {
            Panel cut = block.FindPanelAsCut(panel.Name);
            EdgeName[] faced = options.FacedHemsOf(cut);
            PatternPiece piece = Skirt(zip.Marked(WithSeamsFor(faced, cut)), block, zip, options);
            if (block.Designs.Count == 0)
            {
                piece = WithLevels(piece, hand.Depths.Levels);
            }

            piece = block.FindFolds(panel.Name).Aggregate(piece, (one, fold) => one.WithInternalLine(fold.Name.Text, InternalLineKind.Fold, fold.Path));
            int count = block.TimesOf(panel.Name);
            count = piece.FoldLine is null ? count : count / 2;
            bool isBand = ContourBandDesign.IsBand(panel);
            piece = Finished(piece);
            piece = zip.WithStop(piece).Cut(isBand ? 2 * count : count, IsBagOfLining(panel) ? ClothName.Lining : ClothName.Main);
            pieces.Add(isBand || FacedWaistDesign.IsFacing(panel) ? piece.Cut(count, ClothName.Interfacing) : piece);
            facings.AddRange(faced.Select(hem => piece.FacingOf(hem, options.HemFacingDepth).Cut(count, ClothName.Main)));
        }

        pieces.AddRange(facings);
        pieces.AddRange(SkirtBand.PartsOf(block, options).Select(band => band.Cut(1, ClothName.Main).Cut(1, ClothName.Interfacing)));
        if (block.Panels.Any(LinedDesign.IsLining))
        {
            double shorter = block.Designs.Last(design => design.Name == LinedDesign.LinedName).Settings[0].Raw;
            pieces.AddRange(block.Panels.Where(LinedDesign.IsLining).Reverse().Select(panel => LiningOf(panel, shorter, block, zip, options)));
        }
        else if (options.Lining == LiningChoice.Loose)
        {
            double shorter = options.ShorterMm!.Value;
            pieces.AddRange(block.Panels.Reverse().Select(panel => LiningOf(Shortened(panel, shorter), shorter, block, zip, options)));
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        return PieceSet.Of([.. pieces.Select(piece => options.Label is { } label ? piece.WithLabel(label) : piece).Select(piece => piece.WithTape(tape))]);
    }

    // Allowances by what becomes of each edge; where a hem meets a seam, or a seam the waist, what is folded back has the shape of what it lies on.
    private static PatternPiece Skirt(Panel panel, Block block, SkirtZip zip, SkirtPatternOptions options)
    {
        PatternPiece piece = PatternPiece.From(panel).WithAllowance(options.SeamAllowance);
        int count = panel.Edges.Count;
        for (int i = 0; i < count; i++)
        {
            PanelEdge edge = panel.Edges[i];
            bool isFold = IsOnFold(panel, edge, block, zip);
            if (edge.Role == EdgeRole.Hem)
            {
                piece = piece.WithAllowance(edge.Name, options.HemOf(edge));
            }
            else if (isFold)
            {
                piece = piece.CutOnFold(edge.Name);
            }
            else if (zip.Takes(panel, edge))
            {
                piece = piece.WithAllowance(edge.Name, options.ZipAllowance);
            }

            PanelEdge next = panel.Edges[(i + 1) % count];
            bool isNextFold = IsOnFold(panel, next, block, zip);
            if (isFold || isNextFold)
            {
                continue;
            }

            if (edge.Role == EdgeRole.Hem && next.Role == EdgeRole.Hem)
            {
                // A front edge is folded back before the hem is turned up.
                piece = piece.WithCorner(next.Name, edge.Name, Corner.Mirrored);
            }
            else if (edge.Role == EdgeRole.Hem != (next.Role == EdgeRole.Hem))
            {
                piece = edge.Role == EdgeRole.Hem ? piece.WithCorner(edge.Name, next.Name, Corner.Mirrored) : piece.WithCorner(next.Name, edge.Name, Corner.Mirrored);
            }
            else if (edge.Role == EdgeRole.Opening != (next.Role == EdgeRole.Opening))
            {
                piece = edge.Role == EdgeRole.Opening ? piece.WithCorner(next.Name, edge.Name, Corner.Mirrored) : piece.WithCorner(edge.Name, next.Name, Corner.Mirrored);
            }
        }

        return piece;
    }

    // A hem that is faced is sewn to its facing like any seam.
    private static Panel WithSeamsFor(EdgeName[] faced, Panel panel) => faced.Length == 0 ? panel : new Panel(
        panel.Name,
        [.. panel.Edges.Select(edge => Array.IndexOf(faced, edge.Name) < 0 ? edge : new PanelEdge(edge.Name, EdgeRole.Seam, edge.StretchesRaw[0]))],
        panel.Features);

    // What the seam plan sews to its mirror image is a seam, and lies on no fold.
    private static bool IsOnFold(Panel panel, PanelEdge edge, Block block, SkirtZip zip) => edge.Role == EdgeRole.Centre && !zip.Takes(panel, edge)
        && block.TimesOf(panel.Name) % 2 == 0 && SkirtStock.IsStraight(edge) && !block.Seams.SeamsOf(EdgeOf.Panel(panel.Name, edge.Name)).Any();

    private static string FiguresOf(double mm, Block block)
    {
        TapeStep step = TapeStep.For(block.Body.Unit);
        return Tape.Format(Length.FromMillimeters(mm), Tape.IsOnMark(mm, step) ? step : step.IsMetric ? TapeStep.HalfMillimeter : TapeStep.SixtyFourth);
    }

    // A panel with a level hem, cut off above it: seams as they are, so that skirt and lining stay equally wide.
    private static Panel Shortened(Panel panel, double byMm)
    {
        if (byMm == 0)
        {
            return panel;
        }

        PanelEdge hem = panel.FindEdge(EdgeName.Hem);
        Line level = Line.Horizontal(new Point2D(0, hem.Start.YMm + byMm));
        CurvePath side = panel.FindEdge(EdgeName.SideSeam).Stretches[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).Stretches[0];
        PathIntersection onSide = side.IntersectionsWith(level).Points.Last();
        PathIntersection onCentre = centre.IntersectionsWith(level).Points.First();
        CurvePath newSide = CurvePath.FromSegments(PathSpot.Between(side, PathSpot.StartOf(side), new PathSpot(onSide.FirstSegment, onSide.FirstParameter)));
        CurvePath newCentre = CurvePath.FromSegments(PathSpot.Between(centre, new PathSpot(onCentre.FirstSegment, onCentre.FirstParameter), PathSpot.EndOf(centre)));
        LineSegment grain = panel.Grainline;
        double up = Math.Max(0, level.Point.YMm + (byMm / 2) - Math.Min(grain.Start.YMm, grain.End.YMm));
        var lift = new Vector2D(0, up);
        return new Panel(
            panel.Name,
            [
                panel.FindEdge(EdgeName.Waist),
                new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, newSide),
                new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(new LineSegment(newSide.End, newCentre.Start))),
                new PanelEdge(EdgeName.Centre, EdgeRole.Centre, newCentre),
            ],
            panel.Features with
            {
                Grainline = new LineSegment(grain.Start + lift, grain.End + lift),
                Notches = [.. panel.Notches.Where(notch => notch.Position.YMm > level.Point.YMm)],
                Landmarks = [.. panel.Landmarks.Where(landmark => landmark.Position.YMm >= level.Point.YMm)],
            });
    }

    // The line along which the hem of the lining is turned first says how it is hemmed.
    private static PatternPiece LiningOf(Panel panel, double shorterMm, Block block, SkirtZip zip, SkirtPatternOptions options)
    {
        double hemMm = options.LiningHemOf(panel.FindEdge(EdgeName.Hem));
        string words = $"turn up {FiguresOf(hemMm / 2, block)} twice; hangs " + (shorterMm > 0 ? $"{FiguresOf(shorterMm, block)} shorter than the skirt" : "as long as the skirt");
        PatternPiece piece = zip.WithStop(Skirt(zip.Marked(panel), block, zip, options));
        CurvePath hem = panel.FindEdge(EdgeName.Hem).StretchesRaw[0];
        CurvePath fold = hem.Offset(Length.FromMillimeters((panel.RunsCounterClockwise ? -0.5 : 0.5) * hemMm), OffsetJoin.Mitre).Paths[0];
        int count = block.TimesOf(panel.Name);
        piece = LinedDesign.IsLining(panel) ? piece : piece.WithName(PanelName.Of(piece.Name + " lining"));
        return piece.WithAllowance(EdgeName.Hem, Length.FromMillimeters(hemMm))
            .WithInternalLine(words, InternalLineKind.Fold, fold)
            .Cut(piece.FoldLine is null ? count : count / 2, ClothName.Lining);
    }

    // The free edge of a facing is neatened as it is cut; the inner layer of a pocket shows where the slanted edge lies on it.
    private static PatternPiece Finished(PatternPiece piece)
        => FacedWaistDesign.IsFacing(piece.Panel) ? piece.WithAllowance(FacedWaistDesign.Free, Length.Zero)
        : piece.Panel.Name == SlantedPocketsDesign.Inner ? piece.WithInternalLine(
            "edge of the front", InternalLineKind.Placement, CurvePath.FromLine(new LineSegment(piece.Panel.FindEdge(EdgeName.Waist).Start, piece.Panel.FindEdge(EdgeName.SideSeam).End)))
        : piece;

    private static bool IsBagOfLining(Panel panel) => panel.Name == SeamPocketsDesign.FrontBag || panel.Name == SlantedPocketsDesign.Bag;

    private static PatternPiece WithLevels(PatternPiece piece, SkirtLevels levels) => WithLevel(WithLevel(piece, "yoke line", levels.YokeMm), "hip line", levels.LowerHipMm);

    // From side to side of the seam line at a level below the waist; a dart that reaches so far down is crossed, as on the draft.
    private static PatternPiece WithLevel(PatternPiece piece, string name, double belowMm)
    {
        Point2D[] ends = [.. piece.Panel.CapOutline().IntersectionsWith(Line.Horizontal(new Point2D(0, -belowMm))).Points.Select(hit => hit.Point).OrderBy(p => p.XMm)];
        return ends.Length < 2
            ? piece
            : piece.WithInternalLine(name, InternalLineKind.Level, CurvePath.FromLine(new LineSegment(ends[0], ends[ends.Length - 1])));
    }
}
