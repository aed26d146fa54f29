using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Blocks;

/// <summary>A bodice and a gown, drafted, trued and checked, with the skirt beside them. Budgets: bodice 150 us, gown 400 us.</summary>
[MemoryDiagnoser]
public class BodiceBlockBenchmarks
{
    private BodyMeasurements _body = null!;

    [GlobalSetup]
    public void Setup() => _body = BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, "88")
        .With(BodyMeasurement.WaistGirth, "68")
        .With(BodyMeasurement.HipGirth, "94")
        .With(BodyMeasurement.BackNeckPointToWaist, "41")
        .With(BodyMeasurement.ScyeDepthLength, "21")
        .With(BodyMeasurement.AcrossBackWidth, "34.4")
        .With(BodyMeasurement.AcrossFrontWidth, "32.4")
        .With(BodyMeasurement.ShoulderLength, "12.25")
        .With(BodyMeasurement.NeckBaseGirth, "37");

    [Benchmark(Baseline = true)]
    public bool Skirt() => SkirtBlock.For(_body).Draft().Report.Passed;

    [Benchmark]
    public bool Bodice() => BodiceBlock.For(_body).Draft().Report.Passed;

    [Benchmark]
    public bool Gown() => GownBlock.For(_body).Draft().Report.Passed;
}
