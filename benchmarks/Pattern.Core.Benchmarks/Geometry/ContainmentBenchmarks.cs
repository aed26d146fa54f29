using System;
using BenchmarkDotNet.Attributes;
using NetTopologySuite.Algorithm.Locate;
using Pattern.Core.Geometry;
using Nts = NetTopologySuite.Geometries;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Whether a point lies inside an outline of 20 segments; a time is that of one point.</summary>
[MemoryDiagnoser]
public class ContainmentBenchmarks
{
    private const int Points = 400;

    private readonly Point2D[] _points = new Point2D[Points];
    private readonly Nts.Coordinate[] _coordinates = new Nts.Coordinate[Points];
    private CurvePath _outline = null!;
    private Nts.Polygon _polygon = null!;
    private IndexedPointInAreaLocator _indexed = null!;

    [GlobalSetup]
    public void Setup()
    {
        _outline = QueryInputs.ReadOutline();
        _polygon = new Nts.Polygon(new Nts.LinearRing(QueryInputs.Flatten(_outline, 25)));
        _indexed = new IndexedPointInAreaLocator(_polygon);
        int otherwise = 0;
        for (int i = 0; i < Points; i++)
        {
            // A grid over the box of the outline and a little beyond.
            _points[i] = new Point2D(-20 + (16 * (i % 20)), -20 + (26 * (i / 20)));
            _coordinates[i] = new Nts.Coordinate(_points[i].XMm, _points[i].YMm);
            bool inside = _outline.ContainmentOf(_points[i]) == Containment.Inside;
            otherwise += inside == (_indexed.Locate(_coordinates[i]) == Nts.Location.Interior) ? 0 : 1;
        }

        Console.WriteLine($"// accuracy: NetTopologySuite, 25 chords a curve, answers otherwise for {otherwise} of {Points} points");
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Points, Description = "Pattern.Core")]
    public int PatternCore()
    {
        int sum = 0;
        foreach (Point2D p in _points)
        {
            sum += (int)_outline.ContainmentOf(p);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Points, Description = "NetTopologySuite, 25 chords a curve")]
    public int NetTopologySuiteSimple()
    {
        int sum = 0;
        foreach (Nts.Coordinate c in _coordinates)
        {
            sum += (int)SimplePointInAreaLocator.Locate(c, _polygon);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Points, Description = "NetTopologySuite, the same, indexed beforehand")]
    public int NetTopologySuiteIndexed()
    {
        int sum = 0;
        foreach (Nts.Coordinate c in _coordinates)
        {
            sum += (int)_indexed.Locate(c);
        }

        return sum;
    }
}
