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
        => [.. path.Segments.SelectMany((segment, i) => Enumerable.Range(i == 0 ? 0 : 1, samples + (i == 0 ? 1 : 0)).Select(k => At(segment, k / (double)samples)))];

    internal static double LengthMm(PanelEdge edge) => Stretches(edge).Sum(LengthMm);

    internal static double LengthMm((double X, double Y)[] points) => points.Zip(points.Skip(1), (a, b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)))).Sum();

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

    private static (double X, double Y) At(PathSegment segment, double t)
    {
        if (segment.Kind == PathSegmentKind.Line)
        {
            return (segment.Start.X.Millimeters + (t * (segment.End.X - segment.Start.X).Millimeters), segment.Start.Y.Millimeters + (t * (segment.End.Y - segment.Start.Y).Millimeters));
        }

        if (segment.Kind == PathSegmentKind.Arc)
        {
            CircularArc arc = segment.AsArc();
            double angle = arc.StartAngle.Radians + (t * arc.Sweep.Radians);
            return (arc.Centre.X.Millimeters + (arc.Radius.Millimeters * Math.Cos(angle)), arc.Centre.Y.Millimeters + (arc.Radius.Millimeters * Math.Sin(angle)));
        }

        CubicBezier cubic = segment.AsCubic();
        double s = 1 - t;
        double Mix(Func<Point2D, Length> of)
            => (s * s * s * of(cubic.Start).Millimeters) + (3 * s * s * t * of(cubic.StartControl).Millimeters) + (3 * s * t * t * of(cubic.EndControl).Millimeters) + (t * t * t * of(cubic.End).Millimeters);
        return (Mix(point => point.X), Mix(point => point.Y));
    }

    private static double TurnDegrees((double X, double Y) a, (double X, double Y) b, (double X, double Y) c)
    {
        (double X, double Y) first = (b.X - a.X, b.Y - a.Y);
        (double X, double Y) second = (c.X - b.X, c.Y - b.Y);
        return Math.Atan2((first.X * second.Y) - (first.Y * second.X), (first.X * second.X) + (first.Y * second.Y)) * 180 / Math.PI;
    }
}
