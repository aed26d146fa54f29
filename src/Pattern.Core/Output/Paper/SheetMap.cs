using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>The sheets of a tiling as they will lie when joined, small, with the drawing on them.</summary>
internal static class SheetMap
{
    private const double LargestNameMm = 8;

    // Lines thinner than this on the drawing would only grey the map.
    private const double LeastWeightMm = 0.5;

    /// <summary>Draws the map as large as fits below a height, in the middle between two sides.</summary>
    /// <returns>How far down it came.</returns>
    internal static double Draw(Tiling tiling, double leftMm, double rightMm, double topMm, double mostHeightMm, List<DrawingMark> marks)
    {
        BoundingBox extent = tiling.Extent;
        double width = extent.RightMm - extent.LeftMm;
        double height = extent.TopMm - extent.BottomMm;
        double scale = Math.Min((rightMm - leftMm) / width, mostHeightMm / height);
        double left = (leftMm + rightMm - (width * scale)) / 2;
        Transform2D small = Transform2D.Scaling(extent.LowerLeft, Ratio.FromDecimalFractions(scale))
            .Then(Transform2D.Translation(new Point2D(left, topMm - (height * scale)) - extent.LowerLeft));

        foreach (TiledSheet sheet in tiling.Sheets)
        {
            if (sheet.IsEmpty)
            {
                CrossOut(Box(sheet, small), marks);
            }
        }

        AddDrawing(tiling.Drawing, small, marks);
        foreach (TiledSheet sheet in tiling.Sheets)
        {
            if (!sheet.IsEmpty)
            {
                Outline(Box(sheet, small), LineRole.MapSheet, marks);
                AddName(sheet, Box(sheet, small), marks);
            }
        }

        return topMm - (height * scale);
    }

    private static BoundingBox Box(TiledSheet sheet, in Transform2D small) => BoundingBox.Around(small.Apply(sheet.Cell.LowerLeft), small.Apply(sheet.Cell.UpperRight));

    private static void AddName(TiledSheet sheet, in BoundingBox box, List<DrawingMark> marks)
    {
        double size = Math.Min(LargestNameMm, 0.34 * Math.Min(box.RightMm - box.LeftMm, box.TopMm - box.BottomMm));
        Point2D middle = box.Centre;
        marks.Add(new TextMark(sheet.Name, new Point2D(middle.XMm, middle.YMm - (0.36 * size)), size, 0, TextAlignment.Middle, TextWeight.Bold, Ink.Accent));
    }

    private static void CrossOut(in BoundingBox box, List<DrawingMark> marks)
    {
        Outline(box, LineRole.MapEmpty, marks);
        Line(box.LowerLeft, box.UpperRight, marks);
        Line(new Point2D(box.LeftMm, box.TopMm), new Point2D(box.RightMm, box.BottomMm), marks);
    }

    private static void AddDrawing(Drawing drawing, in Transform2D small, List<DrawingMark> marks)
    {
        foreach (DrawingLayer layer in drawing.Layers)
        {
            foreach (DrawingMark mark in layer.Marks)
            {
                if (mark is PathMark path && path.Role.WeightMm >= LeastWeightMm && path.Role != LineRole.Warning)
                {
                    marks.Add(new PathMark(path.Path.Transformed(small), LineRole.MapDrawing));
                }
            }
        }
    }

    private static void Outline(in BoundingBox box, LineRole role, List<DrawingMark> marks) => marks.Add(new PathMark(
        CurvePath.From(box.LowerLeft)
            .LineTo(new Point2D(box.RightMm, box.BottomMm))
            .LineTo(box.UpperRight)
            .LineTo(new Point2D(box.LeftMm, box.TopMm))
            .Closed(),
        role));

    private static void Line(in Point2D from, in Point2D to, List<DrawingMark> marks)
        => marks.Add(new PathMark(CurvePath.FromLine(new LineSegment(from, to)), LineRole.MapEmpty));
}
