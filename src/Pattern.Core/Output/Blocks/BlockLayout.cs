using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Where a block's panels, points and lines stand on its sheet: as drafted, unless panels lie over each other.</summary>
/// <remarks>Then a panel that lies over one before it moves to the right of it, and what belongs to it alone goes with it: points nearer to it than to any other panel,
/// the straight lines that end in them, and the curves that do.</remarks>
internal sealed class BlockLayout
{
    private const double BetweenMm = 60;

    // Seam lines that are sewn to each other may lie on each other, but no panel lies inside another by this much.
    private const double OverlapMm = 0.5;
    private const double SamePlaceMm = 1e-6;
    private const int SamplesPerSegment = 16;

    private readonly Block _block;
    private readonly Vector2D[] _shifts;

    internal BlockLayout(Block block)
    {
        _block = block;
        _shifts = Shifts(block);
        Panels = [.. block.Panels.Select((panel, i) => Moved(panel, _shifts[i]))];
        Landmarks = [.. block.Trued.Landmarks.Select(landmark => landmark.At(landmark.Position + ShiftOf(landmark.Position)))];
        Lines = Array.TrueForAll(_shifts, shift => shift == default) ? block.Drafted.Lines : [.. block.Drafted.Lines.Select(Moved)];
    }

    internal IReadOnlyList<Panel> Panels { get; }

    internal IReadOnlyList<Landmark> Landmarks { get; }

    internal IReadOnlyList<BlockLine> Lines { get; }

    /// <summary>A panel of an alternative, moved as the panel of its name is.</summary>
    internal Panel Beside(Panel panel)
    {
        for (int i = 0; i < _shifts.Length; i++)
        {
            if (_block.Panels[i].Name == panel.Name)
            {
                return Moved(panel, _shifts[i]);
            }
        }

        return panel;
    }

    private static Panel Moved(Panel panel, Vector2D shift) => shift == default ? panel : panel.Transformed(Transform2D.Translation(shift));

    private static Vector2D[] Shifts(Block block)
    {
        var shifts = new Vector2D[block.Panels.Count];
        var placed = new List<CurvePath>();
        for (int i = 0; i < shifts.Length; i++)
        {
            CurvePath outline = block.Panels[i].SeamOutline();
            if (placed.Any(other => Overlap(outline, other) || Overlap(other, outline)))
            {
                shifts[i] = Direction.Right.TimesMm(placed.Max(other => other.Bounds.RightMm) - outline.Bounds.LeftMm + BetweenMm);
                outline = outline.Transformed(Transform2D.Translation(shifts[i]));
            }

            placed.Add(outline);
        }

        return shifts;
    }

    private static bool Overlap(CurvePath one, CurvePath other)
    {
        if (!Touch(one.Bounds, other.Bounds))
        {
            return false;
        }

        foreach (PathSegment segment in one.SegmentsRaw)
        {
            for (int i = 0; i < SamplesPerSegment; i++)
            {
                Point2D point = segment.PointAtRaw((i + 0.5) / SamplesPerSegment);
                if (other.ContainmentOf(point) == Containment.Inside && other.ClosestTo(point).DistanceMm > OverlapMm)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Touch(in BoundingBox one, in BoundingBox other)
        => one.LeftMm <= other.RightMm && other.LeftMm <= one.RightMm && one.BottomMm <= other.TopMm && other.BottomMm <= one.TopMm;

    private Vector2D ShiftOf(Point2D point)
    {
        if (Array.TrueForAll(_shifts, shift => shift == default))
        {
            return default(Vector2D);
        }

        // On a seam line: its panel's. Inside several, as the guides between two panels that lie over each other are: the first's.
        CurvePath[] outlines = [.. _block.Panels.Select(panel => panel.SeamOutline())];
        double[] away = [.. outlines.Select(outline => outline.ClosestTo(point).DistanceMm)];
        double least = away.Min();
        int nearest = least > SamePlaceMm ? Array.FindIndex(outlines, outline => outline.ContainmentOf(point) == Containment.Inside) : -1;
        return _shifts[nearest >= 0 ? nearest : Array.FindIndex(away, distance => distance <= least + SamePlaceMm)];
    }

    private BlockLine Moved(BlockLine line)
    {
        Vector2D atStart = ShiftAt(line.Path.Start);
        Vector2D atEnd = ShiftAt(line.Path.End);
        if (line.Path.SegmentsRaw is [{ Kind: PathSegmentKind.Line }])
        {
            return new BlockLine(line.Name, CurvePath.FromLine(new LineSegment(line.Path.Start + atStart, line.Path.End + atEnd)));
        }

        Vector2D shift = atStart == default(Vector2D) ? atEnd : atStart;
        return new BlockLine(line.Name, line.Path.Transformed(Transform2D.Translation(shift)));
    }

    // By the landmark that the line was drawn to, which stands elsewhere by now where truing moved it.
    private Vector2D ShiftAt(Point2D end)
    {
        IReadOnlyList<Landmark> drafted = _block.Drafted.Landmarks;
        for (int i = 0; i < drafted.Count; i++)
        {
            if (drafted[i].Position.DistanceMm(end) <= SamePlaceMm)
            {
                return Landmarks[i].Position - _block.Trued.Landmarks[i].Position;
            }
        }

        return ShiftOf(end);
    }
}
