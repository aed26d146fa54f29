using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Panels;

/// <summary>One operation on the darts of a skirt's back panel, from typed call to new panel, outline checked.</summary>
[MemoryDiagnoser]
public class DartBenchmarks
{
    private static readonly DartName Dart = EdgeName.Waist.Dart(1);
    private Panel _back = null!;

    [GlobalSetup]
    public void Setup() => _back = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch)
        .With(BodyMeasurement.WaistGirth, "32")
        .With(BodyMeasurement.HipGirth, "40")).Draft().Back;

    [Benchmark(Baseline = true)]
    public Panel Transfer() => _back.TransferDart(Dart, EdgeName.SideSeam.Middle);

    [Benchmark]
    public Panel TakeIn() => _back.TakeInDart(EdgeName.Waist.At(Length.FromMillimeters(40)), Length.FromMillimeters(12), Length.FromMillimeters(90));

    [Benchmark]
    public Panel IntoFlare() => _back.TurnDartIntoFlare(Dart, EdgeName.Hem.Middle, Ratio.FromDecimalFractions(1));

    [Benchmark]
    public PanelPair IntoSeam() => _back.TurnDartIntoSeam(Dart, EdgeName.Hem.Middle, EdgeName.Of("panel seam"), PanelName.Of("centre back"), PanelName.Of("side back"));

    [Benchmark]
    public CurvePath CloseEdge() => _back.FindEdge(EdgeName.Waist).Closed();
}
