using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>The straight waistband of a skirt: from the overlap at the zip around the waist and on by the underlap, with a notch wherever a seam or a centre meets it.</summary>
internal static class SkirtBand
{
    private const double MarkMm = 6;

    /// <summary>Makes the band; null where no panel has a waist.</summary>
    internal static PatternPiece? Of(Block block, SkirtPatternOptions options)
    {
        (Panel Panel, double WaistMm, int Times)[] tops = [.. block.Panels
            .Where(panel => panel.TryFindEdge(EdgeName.Waist, out PanelEdge? edge) && edge!.Role == EdgeRole.Opening)
            .Select(panel => (panel, panel.FindEdge(EdgeName.Waist).SewnLengthMm(), block.TimesOf(panel.Name)))];
        if (tops.Length == 0)
        {
            return null;
        }

        double waist = tops.Sum(top => top.Times * top.WaistMm);
        double length = waist + options.OverlapMm;
        double width = options.BandMm;
        var corners = new[] { default(Point2D), new Point2D(length, 0), new Point2D(length, 2 * width), new Point2D(0, 2 * width) };
        CurvePath Side(int i) => CurvePath.FromLine(new LineSegment(corners[i], corners[(i + 1) % 4]));
        PanelBuilder band = Panel.Named(SkirtPattern.Waistband)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, Side(0))
            .WithEdge(SkirtPattern.UnderlapEnd, EdgeRole.Seam, Side(1))
            .WithEdge(SkirtPattern.InsideEdge, EdgeRole.Seam, Side(2))
            .WithEdge(SkirtPattern.OverlapEnd, EdgeRole.Seam, Side(3))
            .WithGrainline(new LineSegment(new Point2D(0.3 * length, 0.75 * width), new Point2D(0.7 * length, 0.75 * width)));
        (string Name, double At, int Cuts)[] inside = [.. Marks(tops).Where(mark => mark.At < length)];
        foreach ((_, double at, int cuts) in inside)
        {
            band = band.WithNotch(EdgeName.Waist, Length.FromMillimeters(at), cuts);
        }

        PatternPiece piece = PatternPiece.From(band.Make())
            .WithAllowance(options.SeamAllowance)
            .WithInternalLine("fold", InternalLineKind.Fold, CurvePath.FromLine(new LineSegment(new Point2D(0, width), new Point2D(length, width))));
        return inside.Aggregate(piece, (one, mark) => one.WithInternalLine(
            mark.Name, InternalLineKind.Placement, CurvePath.FromLine(new LineSegment(new Point2D(mark.At, 0), new Point2D(mark.At, Math.Min(MarkMm, width / 2))))));
    }

    // Walked from the zip around the body: the panels of one half, and those of the other half back again.
    private static List<(string Name, double At, int Cuts)> Marks((Panel Panel, double WaistMm, int Times)[] tops)
    {
        bool hasCentres = tops.All(top => top.Panel.Edges.Any(edge => edge.Role == EdgeRole.Centre) || top.Times == 2) && tops.Any(top => top.Panel.Edges.Any(edge => edge.Role == EdgeRole.Centre));
        double[] walk = hasCentres
            ? [.. tops.Select(top => top.WaistMm), .. tops.Reverse().Select(top => top.WaistMm)]
            : [.. tops.SelectMany(top => Enumerable.Repeat(top.WaistMm, top.Times))];
        var marks = new List<(string Name, double At, int Cuts)>();
        double at = 0;
        for (int i = 0; i < walk.Length; i++)
        {
            at += walk[i];
            bool isEnd = i == walk.Length - 1;
            bool isFront = hasCentres && i == tops.Length - 1;
            marks.Add((isEnd ? hasCentres ? "CB" : "zip" : isFront ? "CF" : hasCentres && tops.Length == 2 ? "side" : "seam", at, isEnd ? 2 : 1));
        }

        return marks;
    }
}
