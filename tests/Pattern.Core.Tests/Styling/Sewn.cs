using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

/// <summary>Measures panels by its own means: chords between many points of a line, and nothing that the library computes a length or an angle with.</summary>
internal static class Sewn
{
    private const int Samples = 400;

    /// <summary>The points of an edge in order, stretch after stretch.</summary>
    internal static IEnumerable<(double X, double Y)[]> Stretches(PanelEdge edge) => edge.Stretches.Select(path => Points(path, Samples));

    internal static (double X, double Y)[] Points(CurvePath path) => Points(path, Samples);

    /// <summary>The more points, the less a curve turns between them; a corner turns as much as ever.</summary>
    internal static (double X, double Y)[] Points(CurvePath path, int samples)
    {
        var points = new (double X, double Y)[(path.Segments.Count * samples) + 1];
        for (int i = 0; i < path.Segments.Count; i++)
        {
            Func<double, (double X, double Y)> at = Places(path.Segments[i]);
            for (int k = i == 0 ? 0 : 1; k <= samples; k++)
            {
                points[(i * samples) + k] = at(k / (double)samples);
            }
        }

        return points;
    }

    internal static double LengthMm(PanelEdge edge) => Stretches(edge).Sum(LengthMm);

    internal static double LengthMm((double X, double Y)[] points)
    {
        double sum = 0;
        for (int i = 1; i < points.Length; i++)
        {
            double x = points[i].X - points[i - 1].X;
            double y = points[i].Y - points[i - 1].Y;
            sum += Math.Sqrt((x * x) + (y * y));
        }

        return sum;
    }

    /// <summary>All waists of a block, each as often as its panel stands in the garment.</summary>
    internal static double WaistMm(Block block) => block.Panels
        .Where(panel => panel.TryFindEdge(EdgeName.Waist, out _))
        .Sum(panel => block.TimesOf(panel.Name) * LengthMm(panel.FindEdge(EdgeName.Waist)));

    /// <summary>The sharpest turn between two chords that follow each other, in degrees.</summary>
    internal static double SharpestTurnDegrees((double X, double Y)[] points)
    {
        double sharpest = 0;
        for (int i = 2; i < points.Length; i++)
        {
            sharpest = Math.Max(sharpest, Math.Abs(TurnDegrees(points[i - 2], points[i - 1], points[i])));
        }

        return sharpest;
    }

    /// <summary>The angle inside a panel between the end of one line and the start of the next, in degrees.</summary>
    internal static double CornerDegrees(CurvePath arriving, CurvePath leaving)
    {
        const double near = 1e-5;
        PathSegment last = arriving.Segments[arriving.Segments.Count - 1];
        return 180 - Math.Abs(TurnDegrees(At(last, 1 - near), At(last, 1), At(leaving.Segments[0], near)));
    }

    internal static double AreaMm2((double X, double Y)[] points)
    {
        double twice = 0;
        for (int i = 0; i < points.Length; i++)
        {
            (double X, double Y) a = points[i];
            (double X, double Y) b = points[(i + 1) % points.Length];
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    private static (double X, double Y) At(PathSegment segment, double t) => Places(segment)(t);

    // Its figures are read once, for many places.
    private static Func<double, (double X, double Y)> Places(PathSegment segment)
    {
        if (segment.Kind == PathSegmentKind.Line)
        {
            (double X, double Y) from = Of(segment.Start);
            (double X, double Y) to = Of(segment.End);
            return t => (from.X + (t * (to.X - from.X)), from.Y + (t * (to.Y - from.Y)));
        }

        if (segment.Kind == PathSegmentKind.Arc)
        {
            CircularArc arc = segment.AsArc();
            (double X, double Y) centre = Of(arc.Centre);
            double radius = arc.Radius.Millimeters;
            double start = arc.StartAngle.Radians;
            double sweep = arc.Sweep.Radians;
            return t => (centre.X + (radius * Math.Cos(start + (t * sweep))), centre.Y + (radius * Math.Sin(start + (t * sweep))));
        }

        CubicBezier cubic = segment.AsCubic();
        (double X, double Y) p0 = Of(cubic.Start);
        (double X, double Y) p1 = Of(cubic.StartControl);
        (double X, double Y) p2 = Of(cubic.EndControl);
        (double X, double Y) p3 = Of(cubic.End);
        return t => (Mix(p0.X, p1.X, p2.X, p3.X, t), Mix(p0.Y, p1.Y, p2.Y, p3.Y, t));
    }

    private static double Mix(double a, double b, double c, double d, double t)
    {
        double s = 1 - t;
        return (s * s * s * a) + (3 * s * s * t * b) + (3 * s * t * t * c) + (t * t * t * d);
    }

    private static (double X, double Y) Of(Point2D point) => (point.X.Millimeters, point.Y.Millimeters);

    private static double TurnDegrees((double X, double Y) a, (double X, double Y) b, (double X, double Y) c)
    {
        (double X, double Y) first = (b.X - a.X, b.Y - a.Y);
        (double X, double Y) second = (c.X - b.X, c.Y - b.Y);
        return Math.Atan2((first.X * second.Y) - (first.Y * second.X), (first.X * second.X) + (first.Y * second.Y)) * 180 / Math.PI;
    }
}
