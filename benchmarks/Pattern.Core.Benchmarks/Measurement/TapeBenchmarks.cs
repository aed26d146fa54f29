using System.Globalization;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Measurement;

/// <summary>Reading and printing lengths, against what the quantity library does itself (it reads no fractions).</summary>
[MemoryDiagnoser]
public class TapeBenchmarks
{
    private static readonly Length Length = Length.FromInches(4.625);

    [Benchmark(Baseline = true)]
    public Length QuantityLibraryParse() => Length.Parse("4.625 in", CultureInfo.InvariantCulture);

    [Benchmark]
    public Length ParseDecimal() => Tape.Inches("4.625 in");

    [Benchmark]
    public Length ParseFraction() => Tape.Inches("4 5/8 in");

    [Benchmark]
    public Length ParseTypographic() => Tape.Inches("4⅝″");

    [Benchmark]
    public string QuantityLibraryFormat() => Length.ToString("F3", CultureInfo.InvariantCulture);

    [Benchmark]
    public string FormatFraction() => Tape.Format(Length, TapeStep.Eighth);
}
