using System;
using BenchmarkDotNet.Attributes;
using NetTopologySuite.Geometries;
using Pattern.Core.Geometry;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Common points of two cubics; a time is that of one pair. The pairs are neighbours in the list of curves.</summary>
[MemoryDiagnoser]
public class IntersectionBenchmarks
{
    private const int Pairs = 999;

    private CubicBezier[] _curves = [];
    private NetTopologySuite.Geometries.LineString[] _chains = [];

    [GlobalSetup]
    public void Setup()
    {
        QueryInputs.ReadCubics(out _curves, out _, out _);
        _chains = Array.ConvertAll(_curves, c => new LineString(QueryInputs.Flatten(CurvePath.FromCubic(c), 100)));
        int own = 0;
        int wrong = 0;
        for (int i = 0; i < Pairs; i++)
        {
            int count = _curves[i].IntersectionsWith(_curves[i + 1]).Count;
            own += count;
            wrong += count == _chains[i].Intersection(_chains[i + 1]).NumPoints ? 0 : 1;
        }

        Console.WriteLine($"// accuracy: {own} points in {Pairs} pairs; NetTopologySuite, 100 chords, counts otherwise in {wrong} pairs");
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Pairs, Description = "Pattern.Core")]
    public int PatternCore()
    {
        int sum = 0;
        for (int i = 0; i < Pairs; i++)
        {
            sum += _curves[i].IntersectionsWith(_curves[i + 1]).Count;
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Pairs, Description = "NetTopologySuite, 100 chords")]
    public int NetTopologySuiteChords()
    {
        int sum = 0;
        for (int i = 0; i < Pairs; i++)
        {
            sum += _chains[i].Intersection(_chains[i + 1]).NumPoints;
        }

        return sum;
    }
}
