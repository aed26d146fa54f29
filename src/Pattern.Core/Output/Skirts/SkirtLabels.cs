using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>The names on the drawing of a skirt block, placed so that they cover nothing.</summary>
internal sealed class SkirtLabels
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

    private readonly SkirtBlock _block;
    private readonly TapeFigures _figures;
    private readonly LabelPlacer _placer;

    internal SkirtLabels(SkirtBlock block, TapeFigures figures, LabelPlacer placer)
    {
        _block = block;
        _figures = figures;
        _placer = placer;
    }

    /// <summary>How much room the names left of the centre back need.</summary>
    internal static double RoomLeft(SkirtBlock block) => Room(block, Direction.Left);

    /// <summary>How much room the names right of the centre front need.</summary>
    internal static double RoomRight(SkirtBlock block) => Room(block, Direction.Right);

    /// <summary>Adds every name: those of panels and edges to a list of their own, the others to the layer of what they name.</summary>
    internal void Place(SkirtLines lines, List<DrawingMark> names)
    {
        NamePanel(_block.Back, names);
        NamePanel(_block.Front, names);
        NameEdges(_block.Back, "centre back", names);
        NameEdges(_block.Front, "centre front", names);
        foreach (PathMark grain in lines.Grainlines.OfType<PathMark>().ToArray())
        {
            Along("straight grain", GrainMm, Ink.Cool, grain.Path, [Side.Left, Side.Right], NearMiddle, lines.Grainlines);
        }

        foreach (BlockLine level in _block.Drafted.Lines.Where(line => line.Role == ConstructionRole.Level))
        {
            double depth = -level.Path.Start.YMm;
            string words = depth == 0 ? level.Name.Text : level.Name.Text + ", " + _figures.Of(depth);
            Along(words, LevelMm, Ink.Middle, level.Path, [Side.Left, Side.Right], NearEnds, lines.Levels);
        }

        NameLandmarks(lines);
        NameOtherWaistline(lines);
    }

    private static Direction PreferenceOf(SkirtBlock block, Landmark landmark)
    {
        const double near = 1;
        Point2D point = landmark.Position;
        BoundingBox box = Box(block);
        return point.XMm < box.LeftMm + near ? Direction.Left
            : point.XMm > box.RightMm - near ? Direction.Right
            : point.YMm < box.BottomMm + near || landmark.Kind == LandmarkKind.DartApex ? Direction.Down
            : point.YMm > -block.Levels.YokeMm / 2 ? Direction.Up
            : Direction.Right;
    }

    // The box that the draft stands in, from the centre back to the centre front and from the waist level to the hem.
    private static BoundingBox Box(SkirtBlock block)
    {
        BoundingBox box = block.Drafted.Lines[0].Path.Bounds;
        foreach (BlockLine line in block.Drafted.Lines)
        {
            if (line.Role == ConstructionRole.Frame)
            {
                box = box.Union(line.Path.Bounds);
            }
        }

        return box;
    }

    private static double Room(SkirtBlock block, Direction toward)
    {
        double widest = 0;
        foreach (Landmark landmark in block.Trued.Landmarks)
        {
            if (PreferenceOf(block, landmark) == toward)
            {
                widest = System.Math.Max(widest, TextWidths.WidthMm(landmark.Name.Text, LandmarkMm, TextWeight.Regular));
            }
        }

        return widest + (2 * GapMm);
    }

    private void NamePanel(Panel panel, List<DrawingMark> names)
    {
        BoundingBox box = panel.SeamOutline().Bounds;
        double hip = -_block.Levels.LowerHipMm;
        var spots = new List<LabelSpot>();

        // Best in the free cloth below the hip line; above it where a very short skirt has none.
        foreach (double down in new[] { .4, .5, .3, .6, .2, .7, .8, .1, -.1, -.2, -.3, -.4, -.5, -.6, -.7 })
        {
            double from = down > 0 ? hip - box.BottomMm : box.TopMm - hip;
            foreach (double across in new[] { .25, .75, .5, .3, .7 })
            {
                spots.Add(LabelSpot.On(new Point2D(
                    box.LeftMm + (across * (box.RightMm - box.LeftMm)),
                    hip - (down * from))));
            }
        }

        AddIfPlaced(_placer.TryPlace(panel.Name.Text.ToUpperInvariant(), PanelMm, TextWeight.Bold, Ink.Strong, spots), names);
    }

    private void NameEdges(Panel panel, string centre, List<DrawingMark> names)
    {
        Side inside = SkirtLines.InsideOf(panel);
        Along(centre, EdgeMm, Ink.Strong, panel.FindEdge(EdgeName.Centre).Stretches[0], [inside], NearMiddle, names);
        Along("side seam", EdgeMm, Ink.Strong, panel.FindEdge(EdgeName.SideSeam).Stretches[0], [inside], NearMiddle, names);
        Along("hem", EdgeMm, Ink.Strong, panel.FindEdge(EdgeName.Hem).Stretches[0], [inside], NearMiddle, names);
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

    private void NameLandmarks(SkirtLines lines)
    {
        foreach (Landmark landmark in _block.Trued.Landmarks)
        {
            BesidePoint(landmark.Name.Text, LandmarkMm, landmark.Position, PreferenceOf(_block, landmark), lines.Landmarks);
        }
    }

    private void NameOtherWaistline(SkirtLines lines)
    {
        if (lines.OtherWaistline.Count == 0)
        {
            return;
        }

        string words = _block.Waistline == Waistline.Level ? "shaped waistline, for a skirt" : "level waistline, for a dress";
        foreach (PathMark stretch in lines.OtherWaistline.OfType<PathMark>().Reverse().ToArray())
        {
            int before = lines.OtherWaistline.Count;
            Along(words, LandmarkMm, Ink.Middle, stretch.Path, [Side.Left, Side.Right], NearMiddle, lines.OtherWaistline);
            if (lines.OtherWaistline.Count > before)
            {
                return;
            }
        }

        CurvePath last = ((PathMark)lines.OtherWaistline[lines.OtherWaistline.Count - 1]).Path;
        BesidePoint(words, LandmarkMm, last.SegmentsRaw[0].PointAtRaw(0.5), Direction.Up, lines.OtherWaistline);
    }

    private void BesidePoint(string text, double sizeMm, Point2D point, Direction first, List<DrawingMark> marks)
    {
        (TextMark? label, PathMark? leader) = _placer.PlaceBeside(text, sizeMm, Ink.Middle, point, first, GapMm);
        if (leader is not null)
        {
            marks.Add(leader);
        }

        AddIfPlaced(label, marks);
    }

    private static void AddIfPlaced(TextMark? label, List<DrawingMark> marks)
    {
        if (label is not null)
        {
            marks.Add(label);
        }
    }
}
