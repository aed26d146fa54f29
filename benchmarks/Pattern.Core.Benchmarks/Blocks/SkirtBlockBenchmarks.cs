using System.Linq;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Blocks;

/// <summary>A whole skirt: drafted, trued and checked. Budget: 50 us and 32 KB, linear in the number of bodies.</summary>
[MemoryDiagnoser]
public class SkirtBlockBenchmarks
{
    private SkirtBlockBuilder _one = null!;
    private SkirtBlockBuilder[] _many = null!;

    [Params(1, 10, 100)]
    public int Bodies { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        _one = SkirtBlock.For(Body(812.8, 1016));
        _many = [.. Enumerable.Range(0, Bodies).Select(i => SkirtBlock.For(Body(620 + (4 * i), 860 + (4 * i))))];
    }

    [Benchmark(Baseline = true)]
    public int DraftTrueAndCheck()
    {
        int passed = 0;
        foreach (SkirtBlockBuilder builder in _many)
        {
            passed += builder.Draft().Report.Passed ? 1 : 0;
        }

        return passed;
    }

    [Benchmark]
    public int Steps()
    {
        int length = 0;
        foreach (var step in _one.Draft().Steps)
        {
            length += step.Describe(TapeStep.Eighth).Length;
        }

        return length;
    }

    private static BodyMeasurements Body(double waist, double hip) => BodyMeasurements.In(LengthUnit.Millimeter)
        .With(BodyMeasurement.WaistGirth, Length.FromMillimeters(waist))
        .With(BodyMeasurement.HipGirth, Length.FromMillimeters(hip));
}
