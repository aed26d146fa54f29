using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Output;

namespace Pattern.Core.Tests.Output;

/// <summary>The room that labels take on a drawing, from their public measures alone, and what they run into.</summary>
internal static class LabelBoxes
{
    // Drawn and compared by other means than the placer's: lines as points a quarter of a millimetre apart, boxes as corners.
    internal static IEnumerable<string> Collisions(Drawing drawing)
    {
        TextMark[] labels = [.. drawing.Marks<TextMark>()];
        (PathMark Mark, BoundingBox Bounds, Point2D[] Points)[] lines =
            [.. drawing.Marks<PathMark>().SelectMany(mark => new[] { mark.Path }.Concat(mark.ArrowHeads()).Select(path => (mark, path.Bounds, Points(path))))];
        for (int i = 0; i < labels.Length; i++)
        {
            TextMark label = labels[i];
            BoundingBox bounds = label.Bounds;
            BoundingBox roomy = BoundingBox.Around(Moved(bounds.LowerLeft, -5), Moved(bounds.UpperRight, 5));
            if (!drawing.Bounds.Contains(bounds.LowerLeft) || !drawing.Bounds.Contains(bounds.UpperRight))
            {
                yield return $"\"{label.Text}\" leaves the sheet";
            }

            foreach ((PathMark mark, BoundingBox box, Point2D[] points) in lines)
            {
                if (box.Overlaps(roomy) && points.Any(point => Grown(label, mark.Role.Weight.Millimeters / 2, point)))
                {
                    yield return $"\"{label.Text}\" covers a {mark.Role}";
                }
            }

            foreach (PointMark dot in drawing.Marks<PointMark>().Where(dot => Grown(label, dot.Diameter.Millimeters / 2, dot.Position)))
            {
                yield return $"\"{label.Text}\" covers the point at {dot.Position}";
            }

            for (int j = 0; j < i; j++)
            {
                if (bounds.Overlaps(labels[j].Bounds)
                    && (Border(label).Any(point => Grown(labels[j], 0, point)) || Border(labels[j]).Any(point => Grown(label, 0, point))))
                {
                    yield return $"\"{label.Text}\" covers \"{labels[j].Text}\"";
                }
            }
        }
    }

    private static Point2D[] Points(CurvePath path) => [.. path.Segments.SelectMany(segment =>
    {
        int count = (int)Math.Ceiling(segment.Length.Millimeters * 4);
        return Enumerable.Range(0, count + 1).Select(i => segment.Kind switch
        {
            PathSegmentKind.Cubic => segment.AsCubic().PointAt((double)i / count),
            PathSegmentKind.Arc => segment.AsArc().PointAtLength(segment.Length * ((double)i / count)),
            _ => segment.AsLine().PointAtLength(segment.Length * ((double)i / count)),
        });
    })];

    private static Point2D Moved(Point2D point, double by) => Point2D.FromMillimeters(point.X.Millimeters + by, point.Y.Millimeters + by);

    // The corners from the public measures of the label alone: anchor, size, angle, width.
    internal static Point2D[] Corners(TextMark label)
    {
        double size = label.Size.Millimeters;
        double width = label.Width.Millimeters;
        double left = label.Alignment switch { TextAlignment.Start => 0, TextAlignment.Middle => -width / 2, _ => -width };
        return [.. new[] { (left, -0.24 * size), (left + width, -0.24 * size), (left + width, 0.82 * size), (left, 0.82 * size) }.Select(corner => Turned(label, corner.Item1, corner.Item2))];
    }

    private static IEnumerable<Point2D> Border(TextMark label)
    {
        Point2D[] corners = Corners(label);
        for (int side = 0; side < 4; side++)
        {
            LineSegment line = LineSegment.Between(corners[side], corners[(side + 1) % 4]);
            for (int i = 0; i < 40; i++)
            {
                yield return line.PointAtLength(line.Length * (i / 40.0));
            }
        }
    }

    internal static double Distance(TextMark label, Point2D point) => Border(label).Min(border => border.DistanceTo(point).Millimeters);

    private static Point2D Turned(TextMark label, double along, double up)
    {
        double cos = Math.Cos(label.Angle.Radians);
        double sin = Math.Sin(label.Angle.Radians);
        return Point2D.FromMillimeters(label.Anchor.X.Millimeters + (along * cos) - (up * sin), label.Anchor.Y.Millimeters + (along * sin) + (up * cos));
    }

    internal static bool Grown(TextMark label, double by, Point2D point)
    {
        double cos = Math.Cos(label.Angle.Radians);
        double sin = Math.Sin(label.Angle.Radians);
        double dx = point.X.Millimeters - label.Anchor.X.Millimeters;
        double dy = point.Y.Millimeters - label.Anchor.Y.Millimeters;
        double along = (dx * cos) + (dy * sin);
        double up = (dy * cos) - (dx * sin);
        double size = label.Size.Millimeters;
        double width = label.Width.Millimeters;
        double left = label.Alignment switch { TextAlignment.Start => 0, TextAlignment.Middle => -width / 2, _ => -width };
        return along > left - by && along < left + width + by && up > (-0.24 * size) - by && up < (0.82 * size) + by;
    }
}
