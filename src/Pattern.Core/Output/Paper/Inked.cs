using System.Collections.Generic;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>Where a drawing has ink: its marks as broad strokes, to find the sheets on which nothing is drawn.</summary>
/// <remarks>A stroke may be a little broader than what it stands for, never narrower: a sheet too many is paper, one too few is a hole.</remarks>
internal sealed class Inked
{
    private const double ToleranceMm = 0.05;

    private readonly List<Stroke> _strokes = [];
    private readonly List<BoundingBox> _words = [];

    internal Inked(Drawing drawing)
    {
        BoundingBox? bounds = null;
        foreach (DrawingLayer layer in drawing.Layers)
        {
            foreach (DrawingMark mark in layer.Marks)
            {
                BoundingBox box = Add(mark);
                bounds = bounds is { } before ? before.Union(box) : box;
            }
        }

        Bounds = bounds ?? drawing.Bounds;
    }

    /// <summary>The smallest box around all ink; the sheet of a drawing that has none.</summary>
    internal BoundingBox Bounds { get; }

    /// <summary>Which cells of a grid hold ink, row after row.</summary>
    internal bool[] Cells(in TileGrid grid)
    {
        bool[] inked = new bool[grid.Rows * grid.Columns];
        foreach (Stroke stroke in _strokes)
        {
            BoundingBox box = BoundingBox.Around(stroke.From, stroke.To);
            int lastColumn = grid.ColumnAt(box.RightMm + stroke.HalfMm);
            int lastRow = grid.RowAt(box.BottomMm - stroke.HalfMm);
            for (int row = grid.RowAt(box.TopMm + stroke.HalfMm); row <= lastRow; row++)
            {
                for (int column = grid.ColumnAt(box.LeftMm - stroke.HalfMm); column <= lastColumn; column++)
                {
                    int cell = (row * grid.Columns) + column;
                    inked[cell] = inked[cell] || stroke.Meets(grid.Cell(row, column));
                }
            }
        }

        return inked;
    }

    /// <summary>How many words no single sheet of a grid shows whole.</summary>
    internal int CutWords(in TileGrid grid)
    {
        int cut = 0;
        foreach (BoundingBox words in _words)
        {
            cut += grid.IsWhole(words) ? 0 : 1;
        }

        return cut;
    }

    /// <summary>Whether any ink lies in a box.</summary>
    internal bool Meets(in BoundingBox box)
    {
        foreach (Stroke stroke in _strokes)
        {
            if (stroke.Meets(box))
            {
                return true;
            }
        }

        return false;
    }

    private BoundingBox Add(DrawingMark mark)
    {
        switch (mark)
        {
            case PathMark path:
                AddPath(path.Path, path.Role.WeightMm / 2);
                foreach (CurvePath head in path.ArrowHeads())
                {
                    // Filled: from the tip to the middle of the foot, as broad as the foot.
                    Point2D foot = head.SegmentsRaw[0].End.MidpointTo(head.SegmentsRaw[1].End);
                    _strokes.Add(new Stroke(head.Start, foot, foot.DistanceMm(head.SegmentsRaw[0].End)));
                }

                return Grown(path.Bounds, path.Role.WeightMm / 2);
            case PointMark point:
                _strokes.Add(new Stroke(point.Position, point.Position, point.DiameterMm / 2));
                return point.Bounds;
            case TextMark text:
                _words.Add(text.Bounds);
                TurnedBox box = text.Box;
                double half = box.HeightMm / 2;
                _strokes.Add(new Stroke(box.At(0, half), box.At(box.WidthMm, half), half));
                return text.Bounds;
            default:
                return mark.Bounds;
        }
    }

    private void AddPath(CurvePath path, double halfMm)
    {
        Point2D[] points = path.Flatten(Length.FromMillimeters(ToleranceMm));
        for (int i = 1; i < points.Length; i++)
        {
            _strokes.Add(new Stroke(points[i - 1], points[i], halfMm + ToleranceMm));
        }
    }

    private static BoundingBox Grown(in BoundingBox box, double byMm) => new(box.LeftMm - byMm, box.BottomMm - byMm, box.RightMm + byMm, box.TopMm + byMm);

    private readonly struct Stroke
    {
        internal readonly Point2D From;
        internal readonly Point2D To;
        internal readonly double HalfMm;

        internal Stroke(in Point2D from, in Point2D to, double halfMm)
        {
            From = from;
            To = to;
            HalfMm = halfMm;
        }

        /// <summary>Whether the straight way comes as near to a box as the stroke is broad.</summary>
        internal bool Meets(in BoundingBox box)
        {
            double enter = 0;
            double leave = 1;
            return Clip(From.XMm, To.XMm - From.XMm, box.LeftMm - HalfMm, box.RightMm + HalfMm, ref enter, ref leave)
                && Clip(From.YMm, To.YMm - From.YMm, box.BottomMm - HalfMm, box.TopMm + HalfMm, ref enter, ref leave);
        }

        // Keeps the part of the way, from enter to leave, on which start + way * u lies between two bounds.
        private static bool Clip(double start, double way, double least, double most, ref double enter, ref double leave)
        {
            if (way == 0)
            {
                return start >= least && start <= most;
            }

            double first = (least - start) / way;
            double second = (most - start) / way;
            enter = System.Math.Max(enter, System.Math.Min(first, second));
            leave = System.Math.Min(leave, System.Math.Max(first, second));
            return enter <= leave;
        }
    }
}
