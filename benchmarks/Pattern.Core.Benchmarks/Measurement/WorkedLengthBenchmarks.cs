using BenchmarkDotNet.Attributes;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Measurement;

/// <summary>Half the hip and half the ease: what remembering the working costs.</summary>
[MemoryDiagnoser]
public class WorkedLengthBenchmarks
{
    private readonly Length _hip = Length.FromMillimeters(1009.65);
    private readonly Length _ease = Length.FromMillimeters(25.4);
    private readonly WorkedLength _worked = Box(1009.65, 25.4);

    [Benchmark(Baseline = true)]
    public double PlainDoubles() => _hip.Millimeters / 2.0 + _ease.Millimeters / 2.0;

    [Benchmark]
    public Length QuantityLibrary() => _hip / 2 + _ease / 2;

    [Benchmark]
    public double Worked() => Box(_hip.Millimeters, _ease.Millimeters).ValueMm;

    [Benchmark]
    public string Describe() => _worked.Describe(TapeStep.Eighth);

    private static WorkedLength Box(double hipMm, double easeMm)
        => (WorkedLength.MeasuredMm("hip girth", hipMm).Half() + WorkedLength.GivenMm("hip ease", easeMm).Half()).Named("box width");
}
