using System;
using System.Collections.Generic;
using System.Linq;
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

    /// <summary>How far curves lie from their chords, at the worst of all samples, measured in two ways that cannot get lost where a curve turns back on itself.</summary>
    /// <returns>The mean count of points; the distance to the nearest of all chords; and the distance where the chords must be met in their order, as a pen draws them,
    /// which is the larger one; and how many curves are further off in order than 0.0501 mm.</returns>
    internal static (double Points, double ToAnyChord, double InOrder, int Missed) Accuracy(Func<CubicBezier, IReadOnlyList<Point2D>> flatten)
    {
        double toAny = 0;
        double inOrder = 0;
        double points = 0;
        int missed = 0;
        foreach (CubicBezier curve in BenchCurves.Curves)
        {
            IReadOnlyList<Point2D> vertices = flatten(curve);
            points += vertices.Count;

            // For each chord, the least that the worst sample so far can be off if this sample is given to it and none before it to a later one.
            double[] least = new double[vertices.Count - 1];
            int samples = 40 * vertices.Count;
            for (int i = 0; i <= samples; i++)
            {
                Point2D p = curve.PointAtRaw((double)i / samples);
                double nearest = double.MaxValue;
                double before = double.MaxValue;
                for (int j = 0; j < least.Length; j++)
                {
                    double d = Distance(p, vertices[j], vertices[j + 1]);
                    nearest = Math.Min(nearest, d);
                    before = Math.Min(before, least[j]);
                    least[j] = Math.Max(before, d);
                }

                toAny = Math.Max(toAny, nearest);
            }

            double off = least.Min();
            inOrder = Math.Max(inOrder, off);
            missed += off > 0.0501 ? 1 : 0;
        }

        return (points / BenchCurves.Count, toAny, inOrder, missed);
    }

    private static double Distance(Point2D p, Point2D a, Point2D b)
    {
        Vector2D e = b - a;
        double squared = e.DotMm2(e);
        double u = squared > 0 ? Math.Clamp((p - a).DotMm2(e) / squared, 0, 1) : 0;
        return (p - a - (e * u)).LengthMm;
    }
}
