using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using Pattern.Core.Geometry;
using Coordinate = NetTopologySuite.Geometries.Coordinate;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The inputs that the benchmarks of queries share.</summary>
internal static class QueryInputs
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Data", "Geometry");

    public static void ReadCubics(out CubicBezier[] curves, out Point2D[] queries, out double[] distances)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Folder, "bench-cubics.csv"));
        curves = new CubicBezier[lines.Length - 1];
        queries = new Point2D[curves.Length];
        distances = new double[curves.Length];
        for (int i = 0; i < curves.Length; i++)
        {
            double[] n = Array.ConvertAll(lines[i + 1].Split(','), c => double.Parse(c, CultureInfo.InvariantCulture));
            curves[i] = new CubicBezier(n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7]);
            queries[i] = new Point2D(n[8], n[9]);
            distances[i] = n[14];
        }
    }

    public static CurvePath ReadOutline()
    {
        var segments = new List<PathSegment>();
        Point2D at = default;
        foreach (string line in File.ReadAllLines(Path.Combine(Folder, "bench-outline.txt")))
        {
            string[] words = line.Split([' '], StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 0)
            {
                continue;
            }

            double N(int i) => double.Parse(words[i], CultureInfo.InvariantCulture);
            var end = new Point2D(N(words.Length - 2), N(words.Length - 1));
            if (words[0] == "L")
            {
                segments.Add(PathSegment.FromLine(new LineSegment(at, end)));
            }
            else if (words[0] == "C")
            {
                segments.Add(PathSegment.FromCubic(new CubicBezier(at.XMm, at.YMm, N(1), N(2), N(3), N(4), end.XMm, end.YMm)));
            }

            at = end;
        }

        return CurvePath.FromSegments(segments).Closed();
    }

    /// <summary>Points on a path, so many on each curved segment.</summary>
    public static Coordinate[] Flatten(CurvePath path, int perCurve)
    {
        var points = new List<Coordinate>();
        foreach (PathSegment segment in path.Segments)
        {
            int count = segment.Kind == PathSegmentKind.Line ? 1 : perCurve;
            for (int i = 0; i < count; i++)
            {
                Point2D p = segment.PointAtRaw((double)i / count);
                points.Add(new Coordinate(p.XMm, p.YMm));
            }
        }

        Point2D end = path.End;
        points.Add(new Coordinate(end.XMm, end.YMm));
        return points.ToArray();
    }
}
