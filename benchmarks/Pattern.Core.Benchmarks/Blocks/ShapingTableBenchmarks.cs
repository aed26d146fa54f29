using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Blocks;

/// <summary>Reading the shaping of one body from the law and from a table of rows.</summary>
[MemoryDiagnoser]
public class ShapingTableBenchmarks
{
    private readonly ShapingQuery _query = ShapingQuery.For(Length.FromInches(31), Length.FromInches(40)).WithHipEase(Length.FromInches(1));

    private readonly ShapingTable _rows = ShapingTable.In(LengthUnit.Inch)
        .Row("4", "1/4", "1/2", "3/4", "1/2")
        .Row("8", "1/2", "1", "1 1/4", "1")
        .Row("12", "3/4", "1 1/2", "2", "1 1/4")
        .ReadBy(ShapingLookup.Interpolated);

    [Benchmark(Baseline = true)]
    public ShapingReading Proportional() => ShapingTable.Proportional.Read(_query);

    [Benchmark]
    public ShapingReading Interpolated() => _rows.Read(_query);

    [Benchmark]
    public ShapingQuery Query() => ShapingQuery.For(Length.FromInches(31), Length.FromInches(40)).WithHipEase(Length.FromInches(1));
}
