using System;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics;
using NetTopologySuite.LinearReferencing;
using Pattern.Core.Geometry;
using Coordinate = NetTopologySuite.Geometries.Coordinate;
using LineString = NetTopologySuite.Geometries.LineString;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The nearest point of a cubic; a time is that of one query.</summary>
[MemoryDiagnoser]
public class ClosestPointBenchmarks
{
    private const int Curves = 1000;

    private CubicBezier[] _curves = [];
    private Point2D[] _queries = [];
    private double[] _distances = [];
    private LengthIndexedLine[] _chains = [];

    [GlobalSetup]
    public void Setup()
    {
        QueryInputs.ReadCubics(out _curves, out _queries, out _distances);
        _chains = Array.ConvertAll(
            _curves, c => new LengthIndexedLine(new LineString(QueryInputs.Flatten(CurvePath.FromCubic(c), 200))));
        Report("Pattern.Core", i => _curves[i].ClosestTo(_queries[i]).DistanceMm);
        Report("MathNet", i => NearestByMathNet(_curves[i], _queries[i]));
        Report("NetTopologySuite", i => NearestByChain(i));
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Curves, Description = "Pattern.Core")]
    public double PatternCore()
    {
        double sum = 0;
        for (int i = 0; i < Curves; i++)
        {
            sum += _curves[i].ClosestTo(_queries[i]).DistanceMm;
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Curves, Description = "MathNet roots of the quintic")]
    public double MathNetRoots()
    {
        double sum = 0;
        for (int i = 0; i < Curves; i++)
        {
            sum += NearestByMathNet(_curves[i], _queries[i]);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Curves, Description = "NetTopologySuite, 200 chords")]
    public double NetTopologySuiteChords()
    {
        double sum = 0;
        for (int i = 0; i < Curves; i++)
        {
            sum += NearestByChain(i);
        }

        return sum;
    }

    private static double NearestByMathNet(in CubicBezier c, in Point2D q)
    {
        // Power coefficients relative to the point, then (B - Q) . B'.
        double[] x = [c.X0 - q.XMm, 3 * (c.X1 - c.X0), 3 * (c.X2 - (2 * c.X1) + c.X0), c.X3 - (3 * c.X2) + (3 * c.X1) - c.X0];
        double[] y = [c.Y0 - q.YMm, 3 * (c.Y1 - c.Y0), 3 * (c.Y2 - (2 * c.Y1) + c.Y0), c.Y3 - (3 * c.Y2) + (3 * c.Y1) - c.Y0];
        double[] f = new double[6];
        for (int i = 0; i < 4; i++)
        {
            for (int j = 1; j < 4; j++)
            {
                f[i + j - 1] += j * ((x[i] * x[j]) + (y[i] * y[j]));
            }
        }

        double best = Math.Min(c.Start.DistanceMm(q), c.End.DistanceMm(q));
        foreach (System.Numerics.Complex root in FindRoots.Polynomial(f))
        {
            if (Math.Abs(root.Imaginary) < 1e-6 && root.Real > 0 && root.Real < 1)
            {
                best = Math.Min(best, c.PointAtRaw(root.Real).DistanceMm(q));
            }
        }

        return best;
    }

    private double NearestByChain(int i)
    {
        var q = new Coordinate(_queries[i].XMm, _queries[i].YMm);
        return _chains[i].ExtractPoint(_chains[i].Project(q)).Distance(q);
    }

    private void Report(string name, Func<int, double> distance)
    {
        double worst = 0;
        for (int i = 0; i < Curves; i++)
        {
            worst = Math.Max(worst, Math.Abs(distance(i) - _distances[i]));
        }

        Console.WriteLine($"// accuracy: {name}: largest error of the distance {worst:0.0e+0} mm");
    }
}
