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
        Box[] boxes = [.. labels.Select(label => new Box(label))];
        (double X, double Y)[][] borders = [.. labels.Select(label => Border(label).Select(Raw).ToArray())];
        (PointMark Mark, double Radius, double X, double Y)[] dots =
            [.. drawing.Marks<PointMark>().Select(dot => (dot, dot.Diameter.Millimeters / 2, dot.Position.X.Millimeters, dot.Position.Y.Millimeters))];
        (PathMark Mark, BoundingBox Bounds, (double X, double Y)[] Points)[] lines =
            [.. drawing.Marks<PathMark>().SelectMany(mark => new[] { mark.Path }.Concat(mark.ArrowHeads()).Select(path => (mark, path.Bounds, Points(path))))];
        for (int i = 0; i < labels.Length; i++)
        {
            TextMark label = labels[i];
            Box own = boxes[i];
            BoundingBox bounds = label.Bounds;
            BoundingBox roomy = BoundingBox.Around(Moved(bounds.LowerLeft, -5), Moved(bounds.UpperRight, 5));
            if (!drawing.Bounds.Contains(bounds.LowerLeft) || !drawing.Bounds.Contains(bounds.UpperRight))
            {
                yield return $"\"{label.Text}\" leaves the sheet";
            }

            foreach ((PathMark mark, BoundingBox box, (double X, double Y)[] points) in lines)
            {
                double half = mark.Role.Weight.Millimeters / 2;
                if (box.Overlaps(roomy) && Array.Exists(points, point => own.Holds(half, point.X, point.Y)))
                {
                    yield return $"\"{label.Text}\" covers a {mark.Role}";
                }
            }

            foreach ((PointMark dot, _, _, _) in dots.Where(dot => own.Holds(dot.Radius, dot.X, dot.Y)))
            {
                yield return $"\"{label.Text}\" covers the point at {dot.Position}";
            }

            for (int j = 0; j < i; j++)
            {
                Box other = boxes[j];
                if (bounds.Overlaps(labels[j].Bounds)
                    && (Array.Exists(borders[i], point => other.Holds(0, point.X, point.Y)) || Array.Exists(borders[j], point => own.Holds(0, point.X, point.Y))))
                {
                    yield return $"\"{label.Text}\" covers \"{labels[j].Text}\"";
                }
            }
        }
    }

    private static (double X, double Y)[] Points(CurvePath path) => [.. path.Segments.SelectMany(segment =>
    {
        int count = (int)Math.Ceiling(segment.Length.Millimeters * 4);
        return Enumerable.Range(0, count + 1).Select(i => Raw(segment.Kind switch
        {
            PathSegmentKind.Cubic => segment.AsCubic().PointAt((double)i / count),
            PathSegmentKind.Arc => segment.AsArc().PointAtLength(segment.Length * ((double)i / count)),
            _ => segment.AsLine().PointAtLength(segment.Length * ((double)i / count)),
        }));
    })];

    private static (double X, double Y) Raw(Point2D point) => (point.X.Millimeters, point.Y.Millimeters);

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

    internal static bool Grown(TextMark label, double by, Point2D point) => new Box(label).Holds(by, point.X.Millimeters, point.Y.Millimeters);

    // A label's box, in its own directions.
    private readonly struct Box(TextMark label)
    {
        private readonly double _cos = Math.Cos(label.Angle.Radians);
        private readonly double _sin = Math.Sin(label.Angle.Radians);
        private readonly double _x = label.Anchor.X.Millimeters;
        private readonly double _y = label.Anchor.Y.Millimeters;
        private readonly double _size = label.Size.Millimeters;
        private readonly double _width = label.Width.Millimeters;
        private readonly double _left = label.Alignment switch { TextAlignment.Start => 0, TextAlignment.Middle => -label.Width.Millimeters / 2, _ => -label.Width.Millimeters };

        internal bool Holds(double by, double x, double y)
        {
            double dx = x - _x;
            double dy = y - _y;
            double along = (dx * _cos) + (dy * _sin);
            double up = (dy * _cos) - (dx * _sin);
            return along > _left - by && along < _left + _width + by && up > (-0.24 * _size) - by && up < (0.82 * _size) + by;
        }
    }
}
