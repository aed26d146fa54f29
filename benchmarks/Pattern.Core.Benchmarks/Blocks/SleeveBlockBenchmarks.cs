using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Blocks;

/// <summary>A whole sleeve: its cap found, drafted and checked. Budget: 60 us for one with straight seams.</summary>
[MemoryDiagnoser]
public class SleeveBlockBenchmarks
{
    private SleeveBlockBuilder _straight = null!;
    private SleeveBlockBuilder _bent = null!;

    [GlobalSetup]
    public void Setup()
    {
        CurvePath front = CurvePath.From(Point2D.Origin).CurveTo(Direction.Right, Point2D.FromMillimeters(14, 165), Direction.FromAngle(Angle.FromDegrees(122)));
        CurvePath back = CurvePath.From(Point2D.Origin).CurveTo(Direction.Left, Point2D.FromMillimeters(-40, 180), Direction.FromAngle(Angle.FromDegrees(68)));
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Centimeter)
            .With(BodyMeasurement.UpperArmGirth, "28.4")
            .With(BodyMeasurement.WristGirth, "16")
            .With(BodyMeasurement.OuterArmLength, "58.5");
        _straight = SleeveBlock.For(Armhole.Of(front, back), body);
        _bent = _straight.WithElbowDart();
    }

    [Benchmark(Baseline = true)]
    public bool Straight() => _straight.Draft().Report.Passed;

    [Benchmark]
    public bool WithElbowDart() => _bent.Draft().Report.Passed;
}
