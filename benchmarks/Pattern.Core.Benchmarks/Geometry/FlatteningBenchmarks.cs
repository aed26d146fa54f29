using System;
using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Geometry;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>A thousand cubics into chords that keep within 0.05 mm; the times are per curve.</summary>
[MemoryDiagnoser]
[WarmupCount(6)]
[IterationCount(9)]
public unsafe class FlatteningBenchmarks
{
    private readonly Point2D[] _vertices = new Point2D[10_000];

    [Benchmark(Baseline = true, OperationsPerInvoke = BenchCurves.Count)]
    public int Kernel()
    {
        int count = 0;
        fixed (Point2D* vertices = _vertices)
        {
            CubicBezier[] curves = BenchCurves.Curves;
            for (int i = 0; i < curves.Length; i++)
            {
                count += curves[i].FlattenRaw(0.05, vertices, 10_000);
            }
        }

        return count;
    }

    /// <summary>What most libraries do: halve until both control points are within the tolerance of the chord.</summary>
    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public int Halving()
    {
        int count = 0;
        foreach (CubicBezier curve in BenchCurves.Curves)
        {
            count += Halve(curve, 0.05, _vertices, 0, 0) + 1;
        }

        return count;
    }

    internal static int Halve(in CubicBezier c, double toleranceMm, Point2D[] vertices, int count, int depth)
    {
        double ex = c.X3 - c.X0;
        double ey = c.Y3 - c.Y0;
        double chord = Math.Sqrt((ex * ex) + (ey * ey));
        double d1 = Math.Abs((ex * (c.Y1 - c.Y0)) - (ey * (c.X1 - c.X0)));
        double d2 = Math.Abs((ex * (c.Y2 - c.Y0)) - (ey * (c.X2 - c.X0)));
        if (depth == 16 || (depth > 1 && 0.75 * Math.Max(d1, d2) <= toleranceMm * chord))
        {
            vertices[count] = c.End;
            return count + 1;
        }

        c.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
        return Halve(after, toleranceMm, vertices, Halve(before, toleranceMm, vertices, count, depth + 1), depth + 1);
    }

    internal static (double Points, double Deviation) Accuracy(Func<CubicBezier, IReadOnlyList<Point2D>> flatten)
    {
        double worst = 0;
        double points = 0;
        foreach (CubicBezier curve in BenchCurves.Curves)
        {
            IReadOnlyList<Point2D> vertices = flatten(curve);
            points += vertices.Count;
            int chord = 0;
            int samples = 40 * vertices.Count;
            for (int i = 0; i <= samples; i++)
            {
                // Samples run on with the chords, so the nearest of this chord and the next few is the one over it.
                Point2D p = curve.PointAtRaw((double)i / samples);
                double best = double.MaxValue;
                for (int j = chord; j < Math.Min(chord + 4, vertices.Count - 1); j++)
                {
                    double d = Distance(p, vertices[j], vertices[j + 1]);
                    chord = d < best ? j : chord;
                    best = Math.Min(best, d);
                }

                worst = Math.Max(worst, best);
            }
        }

        return (points / BenchCurves.Count, worst);
    }

    private static double Distance(Point2D p, Point2D a, Point2D b)
    {
        Vector2D e = b - a;
        double squared = e.DotMm2(e);
        double u = squared > 0 ? Math.Clamp((p - a).DotMm2(e) / squared, 0, 1) : 0;
        return (p - a - (e * u)).LengthMm;
    }
}
