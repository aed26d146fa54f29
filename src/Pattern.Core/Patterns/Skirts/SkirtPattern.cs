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
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>Makes all pieces of a plain skirt from its block: front on the fold, back with a zip, straight waistband, and a lining if wanted.</summary>
/// <example><code>
/// PieceSet skirt = SkirtPattern.From(block, new SkirtPatternOptions { HemAllowance = Tape.Inches("2"), Lining = LiningChoice.Loose });
/// Length enough = skirt.EstimateCloth(ClothName.Main, Tape.Inches("43")).UpperBound;
/// </code></example>
public static class SkirtPattern
{
    private const double ZipStopMm = 12;
    private const double BandMarkMm = 6;

    // Marks nearer to each other than this cannot be told apart once they are cut; common practice, no source.
    private const double ApartMm = 12;

    /// <summary>The waistband of a skirt.</summary>
    public static PanelName Waistband { get; } = PanelName.Of("waistband");

    /// <summary>The end of the waistband that lies under the other one and carries the button.</summary>
    public static EdgeName UnderlapEnd { get; } = EdgeName.Of("underlap end beneath");

    /// <summary>The end of the waistband that lies on top.</summary>
    public static EdgeName OverlapEnd { get; } = EdgeName.Of("centre back end on top");

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
        options = Guard.NotNull(options, nameof(options)).FilledFor(TapeStep.For(block.Body.Unit).IsMetric, block.Levels.UpperHipMm);
        PatternPiece front = Front(block.Front, options);
        PatternPiece back = Back(block.Back, block, options);
        var pieces = new List<PatternPiece>
        {
            WithLevels(front, block).Cut(1, ClothName.Main),
            WithZip(WithLevels(back, block), options.ZipMm).Cut(2, ClothName.Main),
            Band(block, options).Cut(1, ClothName.Main).Cut(1, ClothName.Interfacing),
        };
        if (options.Lining == LiningChoice.Loose)
        {
            double shorter = options.ShorterMm!.Value;
            double hem = options.LiningHemMm!.Value;
            string words = $"turn up {FiguresOf(hem / 2, block)} twice; hangs {FiguresOf(shorter, block)} shorter than the skirt";
            pieces.Add(Lining(Front(Shortened(block.Front, shorter), options), hem, words).Cut(1, ClothName.Lining));
            pieces.Add(Lining(WithZip(Back(Shortened(block.Back, shorter), block, options), options.ZipMm), hem, words).Cut(2, ClothName.Lining));
        }

        TapeStep tape = TapeStep.For(block.Body.Unit);
        return PieceSet.Of([.. pieces.Select(piece => options.Label is { } label ? piece.WithLabel(label) : piece).Select(piece => piece.WithTape(tape))]);
    }

    private static PatternPiece Skirt(Panel panel, SkirtPatternOptions options) => PatternPiece.From(panel)
        .WithAllowance(options.SeamAllowance)
        .WithAllowance(EdgeName.Hem, options.HemAllowance)
        .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored)
        .WithCorner(EdgeName.SideSeam, EdgeName.Waist, Corner.Mirrored);

    private static PatternPiece Front(Panel panel, SkirtPatternOptions options) => Skirt(panel, options).CutOnFold(EdgeName.Centre);

    private static PatternPiece Back(Panel panel, SkirtBlock block, SkirtPatternOptions options) => Skirt(WithCentreNotches(panel, block, options.ZipMm), options)
        .WithAllowance(EdgeName.Centre, options.ZipAllowance)
        .WithCorner(EdgeName.Hem, EdgeName.Centre, Corner.Mirrored)
        .WithCorner(EdgeName.Centre, EdgeName.Waist, Corner.Mirrored);

    // The two halves of the back are sewn together from the stop of the zip down: a cut beside the stop, and a match at the hip.
    private static Panel WithCentreNotches(Panel back, SkirtBlock block, double zipMm)
    {
        CurvePath centre = back.FindEdge(EdgeName.Centre).Stretches[0];
        double length = centre.LengthMm;
        if (zipMm >= length)
        {
            throw new ConstructionException(DiagnosticCode.PlaceOffEdge, Length.FromMillimeters(zipMm), EdgeName.Centre, PanelName.Back, centre.Length)
            {
                Step = "marking the stop of the zip",
                Landmark = EdgeName.Centre.Text,
                Measured = Length.FromMillimeters(zipMm),
                Allowed = centre.Length,
            };
        }

        var notches = new List<Notch>(back.Notches) { new(EdgeName.Centre, centre.PointAtMm(length - zipMm), length - zipMm, 1) };
        foreach (PathIntersection hip in centre.IntersectionsWith(Line.Horizontal(new Point2D(0, -block.Levels.LowerHipMm))).Points.Take(1))
        {
            double at = centre.LengthTo(centre.ClosestTo(hip.Point)).Millimeters;
            if (Math.Abs(at - (length - zipMm)) > ApartMm)
            {
                notches.Add(new Notch(EdgeName.Centre, hip.Point, at, 2));
            }
        }

        return new Panel(back.Name, [.. back.Edges], back.Features with { Notches = [.. notches] });
    }

    private static string FiguresOf(double mm, SkirtBlock block)
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
    private static PatternPiece Lining(PatternPiece piece, double hemMm, string words)
    {
        PanelEdge hem = piece.Panel.FindEdge(EdgeName.Hem);
        var down = new Vector2D(0, -hemMm / 2);
        return piece.WithName(PanelName.Of(piece.Name + " lining"))
            .WithAllowance(EdgeName.Hem, Length.FromMillimeters(hemMm))
            .WithInternalLine(words, InternalLineKind.Fold, CurvePath.FromLine(new LineSegment(hem.Start + down, hem.End + down)));
    }

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

    private static PatternPiece WithZip(PatternPiece piece, double zipMm)
    {
        // The centre runs down from the waist here, the panel to its left.
        CurvePath centre = piece.Panel.FindEdge(EdgeName.Centre).Stretches[0].Reversed();
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
            .WithGrainline(new LineSegment(new Point2D(0.3 * length, 0.75 * width), new Point2D(0.7 * length, 0.75 * width)));
        (string Name, double At, int Cuts)[] marks = [("side", back, 1), ("CF", back + front, 1), ("side", back + (2 * front), 1), ("CB", waist, 2)];
        (string Name, double At, int Cuts)[] inside = [.. marks.Where(mark => mark.At < length)];
        foreach ((_, double at, int cuts) in inside)
        {
            band = band.WithNotch(EdgeName.Waist, Length.FromMillimeters(at), cuts);
        }

        PatternPiece piece = PatternPiece.From(band.Make())
            .WithAllowance(options.SeamAllowance)
            .WithInternalLine("fold", InternalLineKind.Fold, CurvePath.FromLine(new LineSegment(new Point2D(0, width), new Point2D(length, width))));
        return inside.Aggregate(piece, (one, mark) => one.WithInternalLine(
            mark.Name, InternalLineKind.Placement, CurvePath.FromLine(new LineSegment(new Point2D(mark.At, 0), new Point2D(mark.At, Math.Min(BandMarkMm, width / 2))))));
    }
}
