using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Samples.Methods;

/// <summary>The steps of a block as small pictures on one sheet, and the finished panels as the last: what is new is strong and named, what stood there is quiet.</summary>
public static class StepPictures
{
    private const int Columns = 5;
    private const double WideMm = 56;
    private const double HighMm = 62;
    private const double RoomMm = 10;

    /// <summary>Draws them.</summary>
    /// <param name="block">A drafted block.</param>
    public static Drawing Of(Block block)
    {
        ArgumentNullException.ThrowIfNull(block);
        var marks = new List<DrawingMark>();
        Step[] steps = [.. block.Steps.Where(step => step.Marked.Any() || step.Drew.Any())];
        CurvePath[] outlines = [.. block.Panels.Select(panel => panel.SeamOutline())];
        Frame frame = Frame.Around(outlines.Select(path => path.Bounds).Concat(block.Drafted.Lines.Select(line => line.Path.Bounds)).Aggregate((one, other) => one.Union(other)));
        for (int i = 0; i <= steps.Length; i++)
        {
            Transform2D place = frame.Placed(i % Columns, i / Columns);
            Point2D corner = Point2D.FromMillimeters((i % Columns) * (WideMm + RoomMm), -(i / Columns) * (HighMm + RoomMm));
            foreach (Step before in steps.Take(i))
            {
                marks.AddRange(before.Drew.Select(line => PathMark.Of(line.Path.Transformed(place), LineRole.Frame)));
            }

            if (i == steps.Length)
            {
                marks.Add(Words("finished", corner, 3.2, TextWeight.Bold));
                marks.AddRange(outlines.Select(path => PathMark.Of(path.Transformed(place), LineRole.DartLeg)));
                break;
            }

            marks.Add(Words(steps[i].Number.ToString(CultureInfo.InvariantCulture), corner, 3.2, TextWeight.Bold));
            marks.AddRange(steps[i].Drew.Select(line => PathMark.Of(line.Path.Transformed(place), LineRole.DartLeg)));
            foreach (Landmark landmark in steps[i].Marked)
            {
                Point2D at = place.Apply(landmark.Position);
                bool isRight = (at - corner).X.Millimeters > WideMm / 2;
                marks.Add(PointMark.Of(at, Length.FromMillimeters(1.4), Ink.Strong));
                marks.Add(TextMark.Of(landmark.Name.Text, at + Vector2D.FromMillimeters(isRight ? -1.5 : 1.5, 1), Length.FromMillimeters(2.6), Angle.Zero, isRight ? TextAlignment.End : TextAlignment.Start, TextWeight.Regular, Ink.Strong));
            }
        }

        int rows = (steps.Length / Columns) + 1;
        BoundingBox sheet = BoundingBox.Around(Point2D.FromMillimeters(-5, 5), Point2D.FromMillimeters((Columns * (WideMm + RoomMm)) - RoomMm + 5, -(rows * (HighMm + RoomMm)) + 5));
        string words = string.Create(CultureInfo.InvariantCulture, $"{steps.Length} steps of the {block.Method.Name}, each as a small picture with its new lines and points, and the finished panels.");
        return Drawing.Of("Steps of the " + block.Method.Name, words, sheet, [DrawingLayer.Of(LayerName.Of("steps"), marks)]);
    }

    private static TextMark Words(string text, Point2D corner, double sizeMm, TextWeight weight)
        => TextMark.Of(text, corner + Vector2D.FromMillimeters(0, -3), Length.FromMillimeters(sizeMm), Angle.Zero, TextAlignment.Start, weight, Ink.Strong);

    /// <summary>The draft made small, into one field after the other.</summary>
    private readonly record struct Frame(Point2D UpperLeft, double Scale)
    {
        internal static Frame Around(BoundingBox box)
        {
            double wide = (box.Right - box.Left).Millimeters;
            double high = (box.Top - box.Bottom).Millimeters;
            return new Frame(Point2D.At(box.Left, box.Top), Math.Min(WideMm / wide, (HighMm - 8) / high));
        }

        internal Transform2D Placed(int column, int row) => Transform2D.Scaling(UpperLeft, Ratio.FromDecimalFractions(Scale))
            .Then(Transform2D.Translation(Point2D.FromMillimeters(column * (WideMm + RoomMm), -(row * (HighMm + RoomMm)) - 8) - UpperLeft));
    }
}
