using System;
using BenchmarkDotNet.Attributes;
using NetTopologySuite.Geometries;
using Pattern.Core.Geometry;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Whether an outline of 20 segments crosses itself.</summary>
[MemoryDiagnoser]
public class OutlineQueryBenchmarks
{
    private CurvePath _outline = null!;
    private LinearRing _ring = null!;

    [GlobalSetup]
    public void Setup()
    {
        _outline = QueryInputs.ReadOutline();
        _ring = new LinearRing(QueryInputs.Flatten(_outline, 25));
        Console.WriteLine($"// accuracy: simple: Pattern.Core {_outline.IsSimple()}, NetTopologySuite {_ring.IsSimple}");
    }

    [Benchmark(Baseline = true, Description = "Pattern.Core")]
    public bool PatternCore() => _outline.IsSimple();

    [Benchmark(Description = "NetTopologySuite, 25 chords a curve")]
    public bool NetTopologySuiteChords() => _ring.IsSimple;
}
