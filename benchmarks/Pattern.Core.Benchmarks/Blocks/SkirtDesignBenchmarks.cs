using System;
using System.Collections.Generic;
using System.Linq;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Styling;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Blocks;

/// <summary>A design made of a drafted block: trued, checked, with its steps. Budget: 200 us each.</summary>
[MemoryDiagnoser]
public class SkirtDesignBenchmarks
{
    private static readonly Dictionary<string, Func<Block, Block>> Makers = new()
    {
        ["a-line"] = block => block.ALine(),
        ["flared"] = block => block.Flared(),
        ["pencil"] = block => block.Pencil(),
        ["gores"] = block => block.Gores(),
        ["unequal gores"] = block => block.UnequalGores(),
        ["godets"] = block => block.Godets(),
        ["yoke"] = block => block.HipYoke(),
        ["knife pleats"] = block => block.KnifePleats(),
        ["box pleats"] = block => block.BoxPleats(),
        ["inverted pleats"] = block => block.InvertedPleats(),
        ["tiers"] = block => block.Tiers(),
        ["full circle"] = block => block.FullCircle(),
        ["wrap"] = block => block.Wrap(),
    };

    private Block _block = null!;

    [ParamsSource(nameof(Names))]
    public string Design { get; set; } = string.Empty;

    public static IEnumerable<string> Names => Makers.Keys.AsEnumerable();

    [GlobalSetup]
    public void Setup() => _block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch)
        .With(BodyMeasurement.WaistGirth, Length.FromInches(32))
        .With(BodyMeasurement.HipGirth, Length.FromInches(40))).Draft();

    [Benchmark]
    public bool Make() => Makers[Design](_block).Report.Passed;
}
