using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>The names on the drawing of a block, placed so that they cover nothing.</summary>
internal sealed class BlockLabels
{
    private const double PanelMm = 19;
    private const double EdgeMm = 6;
    private const double GrainMm = 5;
    private const double LevelMm = 4.5;
    private const double LandmarkMm = 4.2;
    private const double GapMm = 2;

    // Wherever along a line there is room, those near its ends first: a line is looked for from its ends.
    private static readonly double[] NearEnds = [.1, .9, .13, .87, .16, .84, .2, .8, .25, .75, .3, .7, .35, .65, .4, .6, .45, .55, .5];
    private static readonly double[] NearMiddle = [.5, .45, .55, .4, .6, .35, .65, .3, .7, .25, .75, .2, .8, .15, .85, .1, .9];

    private readonly BlockLayout _layout;
    private readonly BoundingBox _box;
    private readonly double _lowestLevelMm;
    private readonly TapeFigures _figures;
    private readonly LabelPlacer _placer;
    private readonly bool _isNarrow;
    private readonly List<string> _unnamed = [];

    /// <summary>Names what a block shows.</summary>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="figures">How depths are printed.</param>
    /// <param name="placer">Knows what has room.</param>
    /// <param name="isNarrow">Whether names of points at the sides stand inside.</param>
    internal BlockLabels(BlockLayout layout, TapeFigures figures, LabelPlacer placer, bool isNarrow)
    {
        _isNarrow = isNarrow;
        _layout = layout;
        _figures = figures;
        _placer = placer;
        _box = Box(layout);
        _lowestLevelMm = LowestLevel(layout);
    }

    /// <summary>What found no room, as a sentence for the notes; none where everything is named.</summary>
    internal IEnumerable<string> LeftOut() => _unnamed.Count > 0 ? ["Marked without their names, for lack of room: " + string.Join(", ", _unnamed) + "."] : [];

    /// <summary>How much room the names beside the draft need on one side.</summary>
    internal static double Room(BlockLayout layout, Direction toward)
    {
        BoundingBox box = Box(layout);
        double widest = 0;
        foreach (Landmark landmark in layout.Landmarks)
        {
            if (PreferenceOf(box, landmark) == toward)
            {
                widest = System.Math.Max(widest, TextMark.WidthOfMm(landmark.Name.Text, LandmarkMm, TextWeight.Regular));
            }
        }

        return widest + (2 * GapMm);
    }

    /// <summary>Adds every name: those of panels and edges to a list of their own, the others to the layer of what they name.</summary>
    internal void Place(BlockMarks lines, List<DrawingMark> names)
    {
        foreach (Panel panel in _layout.Panels)
        {
            NamePanel(panel, names);
        }

        foreach (Panel panel in _layout.Panels)
        {
            NameEdges(panel, names);
        }

        foreach (PathMark grain in lines.Grainlines.OfType<PathMark>().ToArray())
        {
            Along("straight grain", GrainMm, Ink.Cool, grain.Path, [Side.Left, Side.Right], NearMiddle, lines.Grainlines);
        }

        BlockLine[] levels = [.. _layout.Lines.Where(line => line.Role == ConstructionRole.Level)];
        double topMm = levels.Length == 0 ? 0 : levels.Max(level => level.Path.Start.YMm);
        foreach (BlockLine level in levels)
        {
            double depth = topMm - level.Path.Start.YMm;
            string words = depth == 0 ? level.Name.Text : level.Name.Text + ", " + _figures.Of(depth);
            Along(words, LevelMm, Ink.Middle, level.Path, [Side.Left, Side.Right], NearEnds, lines.Levels);
        }

        NameLandmarks(lines);
        foreach ((string name, PathMark[] stretches) in lines.DrawnAlternatives)
        {
            NameAlternative(name, stretches, lines.Alternatives);
        }
    }

    private Direction WayOf(Landmark landmark)
    {
        Direction way = PreferenceOf(_box, landmark);
        return _isNarrow && (way == Direction.Left || way == Direction.Right) ? Inward(landmark) : way;
    }

    private Direction Inward(Landmark landmark) => landmark.Position.XMm < _box.Centre.XMm ? Direction.Right : Direction.Left;

    private static Direction PreferenceOf(in BoundingBox box, Landmark landmark)
    {
        const double near = 1;
        const double nearTop = 0.1;
        Point2D point = landmark.Position;
        return point.XMm < box.LeftMm + near ? Direction.Left
            : point.XMm > box.RightMm - near ? Direction.Right
            : point.YMm < box.BottomMm + near || landmark.Kind == LandmarkKind.DartApex ? Direction.Down
            : point.YMm > box.TopMm - (nearTop * (box.TopMm - box.BottomMm)) ? Direction.Up
            : Direction.Right;
    }

    // The box that the draft stands in: its frame, or else its panels.
    private static BoundingBox Box(BlockLayout layout)
    {
        BoundingBox[] frame = [.. layout.Lines.Where(line => line.Role == ConstructionRole.Frame).Select(line => line.Path.Bounds)];
        BoundingBox[] boxes = frame.Length > 0 ? frame : [.. layout.Panels.Select(panel => panel.SeamOutline().Bounds)];
        return boxes.Aggregate((one, other) => one.Union(other));
    }

    private static double LowestLevel(BlockLayout layout)
    {
        double[] levels = [.. layout.Lines.Where(line => line.Role == ConstructionRole.Level).Select(line => line.Path.Start.YMm)];
        return levels.Length > 0 ? levels.Min() : double.PositiveInfinity;
    }

    private void NamePanel(Panel panel, List<DrawingMark> names)
    {
        CurvePath outline = panel.SeamOutline();
        BoundingBox box = outline.Bounds;
        double hip = System.Math.Min(box.TopMm, System.Math.Max(box.BottomMm, _lowestLevelMm));
        var spots = new List<Point2D>();

        // Best in the free cloth below the lowest level; above it where there is none. Upright where a long name finds no room on a narrow panel.
        foreach (double down in new[] { .4, .5, .3, .6, .2, .7, .8, .1, -.1, -.2, -.3, -.4, -.5, -.6, -.7 })
        {
            double from = down > 0 ? hip - box.BottomMm : box.TopMm - hip;
            foreach (double across in new[] { .25, .75, .5, .3, .7 })
            {
                // The box of a slanted panel reaches over its neighbour, where the name would speak of that.
                var spot = new Point2D(box.LeftMm + (across * (box.RightMm - box.LeftMm)), hip - (down * from));
                if (outline.ContainmentOf(spot) == Containment.Inside)
                {
                    spots.Add(spot);
                }
            }
        }

        AddIfPlaced(_placer.TryPlace(panel.Name.Text.ToUpperInvariant(), PanelMm, TextWeight.Bold, Ink.Strong, [.. spots.Select(spot => LabelSpot.On(spot)), .. spots.Select(spot => LabelSpot.Upright(spot))]), names);
    }

    // An opening with darts needs no name: nothing else has darts.
    private void NameEdges(Panel panel, List<DrawingMark> names)
    {
        Side inside = BlockMarks.InsideOf(panel);
        foreach (PanelEdge edge in panel.Edges.Where(edge => edge.Role == EdgeRole.Centre).Concat(panel.Edges.Where(edge => edge.Role != EdgeRole.Centre)))
        {
            if (edge.Role != EdgeRole.Opening)
            {
                Along(WordsOf(panel, edge), EdgeMm, Ink.Strong, edge.Stretches[0], [inside], NearMiddle, names);
            }
        }
    }

    private static string WordsOf(Panel panel, PanelEdge edge)
    {
        string name = edge.Name.Text;
        return edge.Role switch
        {
            EdgeRole.Centre => panel.Name.Text.StartsWith(name + " ", StringComparison.Ordinal) ? panel.Name.Text : name + " " + panel.Name.Text,
            EdgeRole.Seam when !name.EndsWith("seam", StringComparison.Ordinal) => name + " seam",
            _ => name,
        };
    }

    private void Along(string text, double sizeMm, Ink ink, CurvePath path, Side[] sides, double[] parts, List<DrawingMark> marks)
    {
        var spots = new List<LabelSpot>();
        foreach (double gapMm in new[] { GapMm, 2 * GapMm })
        {
            foreach (Side side in sides)
            {
                spots.AddRange(LabelSpot.Along(path, side, gapMm, parts));
            }
        }

        AddIfPlaced(_placer.TryPlace(text, sizeMm, TextWeight.Regular, ink, spots), marks);
    }

    // The names of what is cut stay where they read best; those of the points that a hand drew it from move, and give way in the end.
    private void NameLandmarks(BlockMarks lines)
    {
        var ranks = new LandmarkRanks(_layout);
        foreach (Landmark landmark in _layout.Landmarks.OrderBy(ranks.Of))
        {
            bool stays = ranks.Of(landmark) < LandmarkRank.Guide;
            if (!BesidePoint(landmark.Name.Text, LandmarkMm, landmark.Position, WayOf(landmark), ranks.LeanOf(landmark), stays ? double.PositiveInfinity : LabelPlacer.ShortLeadersMm, lines.Landmarks))
            {
                _unnamed.Add(landmark.Name.Text);
            }
        }
    }

    private void NameAlternative(string name, PathMark[] stretches, List<DrawingMark> marks)
    {
        if (stretches.Length == 0)
        {
            return;
        }

        foreach (PathMark stretch in stretches.Reverse())
        {
            int before = marks.Count;
            Along(name, LandmarkMm, Ink.Middle, stretch.Path, [Side.Left, Side.Right], NearMiddle, marks);
            if (marks.Count > before)
            {
                return;
            }
        }

        BesidePoint(name, LandmarkMm, stretches[stretches.Length - 1].Path.SegmentsRaw[0].PointAtRaw(0.5), Direction.Up, null, double.PositiveInfinity, marks);
    }

    private bool BesidePoint(string text, double sizeMm, Point2D point, Direction first, Direction? lean, double farthestMm, List<DrawingMark> marks)
    {
        (TextMark? label, PathMark? leader) = _placer.PlaceBeside(text, sizeMm, Ink.Middle, point, first, lean, GapMm, farthestMm);
        if (leader is not null)
        {
            marks.Add(leader);
        }

        AddIfPlaced(label, marks);
        return label is not null;
    }

    private static void AddIfPlaced(TextMark? label, List<DrawingMark> marks)
    {
        if (label is not null)
        {
            marks.Add(label);
        }
    }
}
