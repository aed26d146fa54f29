using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using UnitsNet;

namespace Pattern.Core.Patterns;

/// <summary>The straight waistband of a skirt: from the overlap at the zip around the waist and on by the underlap, with a notch wherever a seam or a centre meets it.</summary>
internal static class SkirtBand
{
    private const double MarkMm = 6;

    /// <summary>Makes the band, in one or in its parts; none where no panel has a waist.</summary>
    internal static IEnumerable<PatternPiece> PartsOf(Block block, SkirtPatternOptions options)
    {
        (Panel Panel, double WaistMm, int Times)[] tops = [.. block.Panels
            .Where(panel => panel.TryFindEdge(EdgeName.Waist, out PanelEdge? edge) && edge!.Role == EdgeRole.Opening)
            .Select(panel => (panel, panel.FindEdge(EdgeName.Waist).SewnLengthMm(), block.TimesOf(panel.Name)))];
        if (tops.Length == 0)
        {
            yield break;
        }

        // Fronts that lie over each other are longer than the waist, each by what lies beyond the centre front.
        double lap = tops.Sum(top => top.Panel.Edges.Where(edge => edge.Role == EdgeRole.Opening && edge.Name != EdgeName.Waist).Sum(edge => edge.SewnLengthMm()));
        double waist = tops.Sum(top => top.Times * top.WaistMm) + (2 * lap);
        double length = waist + options.OverlapMm;
        bool overlaps = options.OverlapMm > 0;
        EdgeName begins = overlaps ? SkirtPattern.OverlapEnd : SkirtPattern.FirstEnd;
        EdgeName ends = overlaps ? SkirtPattern.UnderlapEnd : SkirtPattern.LastEnd;
        Mark[] marks = lap > 0 ? MarksOfWrap(tops, lap) : ZipDesign.Of(block)?.AtSide == true ? [.. MarksFromSide(tops)] : [.. Marks(tops)];
        if (options.WaistbandJoin == WaistbandJoin.SideSeams && SideOf(marks, waist / 4) is { } first && SideOf(marks, waist * 3 / 4) is { } last && first < last)
        {
            yield return Part(SkirtPattern.FirstWaistband, options, begins, SkirtPattern.FirstJoin, 0, first, marks);
            yield return Part(SkirtPattern.FrontWaistband, options, SkirtPattern.FirstJoin, SkirtPattern.LastJoin, first, last, marks);
            yield return Part(SkirtPattern.LastWaistband, options, SkirtPattern.LastJoin, ends, last, length, marks);
            yield break;
        }

        yield return Part(SkirtPattern.Waistband, options, begins, ends, 0, length, marks);
    }

    // The seam of the skirt that stands nearest to where a body has its side.
    private static double? SideOf(Mark[] marks, double nearMm)
        => marks.Where(mark => mark.IsSeam).OrderBy(mark => Math.Abs(mark.At - nearMm)).Select(mark => (double?)mark.At).FirstOrDefault();

    private static PatternPiece Part(PanelName name, SkirtPatternOptions options, EdgeName begins, EdgeName ends, double fromMm, double toMm, Mark[] marks)
    {
        double length = toMm - fromMm;
        double width = options.BandMm;
        var corners = new[] { default(Point2D), new Point2D(length, 0), new Point2D(length, 2 * width), new Point2D(0, 2 * width) };
        CurvePath Side(int i) => CurvePath.FromLine(new LineSegment(corners[i], corners[(i + 1) % 4]));
        PanelBuilder band = Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, Side(0))
            .WithEdge(ends, EdgeRole.Seam, Side(1))
            .WithEdge(SkirtPattern.InsideEdge, EdgeRole.Seam, Side(2))
            .WithEdge(begins, EdgeRole.Seam, Side(3))
            .WithGrainline(new LineSegment(new Point2D(0.3 * length, 0.75 * width), new Point2D(0.7 * length, 0.75 * width)));
        Mark[] inside = [.. marks.Where(mark => mark.At > fromMm && mark.At < toMm)];
        foreach (Mark mark in inside)
        {
            band = band.WithNotch(EdgeName.Waist, Length.FromMillimeters(mark.At - fromMm), mark.Cuts);
        }

        PatternPiece piece = PatternPiece.From(band.Make())
            .WithAllowance(options.SeamAllowance)
            .WithInternalLine("fold", InternalLineKind.Fold, CurvePath.FromLine(new LineSegment(new Point2D(0, width), new Point2D(length, width))));
        foreach (Mark mark in inside)
        {
            var foot = new Point2D(mark.At - fromMm, 0);
            piece = piece.WithInternalLine(mark.Name, InternalLineKind.Placement, CurvePath.FromLine(new LineSegment(foot, new Point2D(foot.XMm, Math.Min(MarkMm, width / 2)))));
        }

        return piece;
    }

    // Walked from the zip around the body: the panels of one half, and those of the other half back again.
    private static List<Mark> Marks((Panel Panel, double WaistMm, int Times)[] tops)
    {
        bool hasCentres = tops.All(top => top.Panel.Edges.Any(edge => edge.Role == EdgeRole.Centre) || top.Times == 2) && tops.Any(top => top.Panel.Edges.Any(edge => edge.Role == EdgeRole.Centre));
        double[] walk = hasCentres
            ? [.. tops.Select(top => top.WaistMm), .. tops.Reverse().Select(top => top.WaistMm)]
            : [.. tops.SelectMany(top => Enumerable.Repeat(top.WaistMm, top.Times))];
        var marks = new List<Mark>();
        double at = 0;
        for (int i = 0; i < walk.Length; i++)
        {
            at += walk[i];
            bool isEnd = i == walk.Length - 1;
            bool isFront = hasCentres && i == tops.Length - 1;
            string name = isEnd ? hasCentres ? "CB" : "zip" : isFront ? "CF" : hasCentres && tops.Length == 2 ? "side" : "seam";
            marks.Add(new Mark(name, at, isEnd ? 2 : 1, !isEnd && !isFront));
        }

        return marks;
    }

    // Walked from the zip in the left side around the body: the back from side to centre and on to the other side, then the front.
    private static IEnumerable<Mark> MarksFromSide((Panel Panel, double WaistMm, int Times)[] tops)
    {
        double[] backs = [.. tops.Where(top => top.Panel.Name.Text.StartsWith(PanelName.Back.Text, StringComparison.Ordinal)).Select(top => top.WaistMm)];
        double[] fronts = [.. tops.Select(top => top.WaistMm).Skip(backs.Length)];
        double[] walk = [.. backs.Reverse(), .. backs, .. fronts, .. fronts.Reverse()];
        double at = 0;
        for (int i = 0; i < walk.Length; i++)
        {
            at += walk[i];
            bool isBack = i == backs.Length - 1;
            bool isSide = i == (2 * backs.Length) - 1 || i == walk.Length - 1;
            bool isFront = i == (2 * backs.Length) + fronts.Length - 1;
            yield return new Mark(isBack ? "CB" : isFront ? "CF" : isSide ? "side" : "seam", at, isBack ? 2 : 1, !isBack && !isFront);
        }
    }

    // Walked from one front edge around the body to the other.
    private static Mark[] MarksOfWrap((Panel Panel, double WaistMm, int Times)[] tops, double lapMm)
    {
        double half = tops.Sum(top => top.WaistMm);
        double front = tops[tops.Length - 1].WaistMm;
        return
        [
            new Mark("CF", lapMm, 1, false),
            new Mark("side", lapMm + front, 1, true),
            new Mark("CB", lapMm + half, 2, false),
            new Mark("side", lapMm + (2 * half) - front, 1, true),
            new Mark("CF", lapMm + (2 * half), 1, false),
        ];
    }

    /// <summary>Where a seam or a centre of the skirt meets the band.</summary>
    private readonly record struct Mark(string Name, double At, int Cuts, bool IsSeam);
}
