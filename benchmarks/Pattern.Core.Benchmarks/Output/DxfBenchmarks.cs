using System;
using System.Globalization;
using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Output;

/// <summary>A skirt's two pieces and its drawing as DXF text. The pieces' own lines are worked out beforehand: only the writing counts.</summary>
[MemoryDiagnoser]
public class DxfBenchmarks
{
    private static readonly DxfOptions Inches = new() { Unit = LengthUnit.Inch };

    private PatternPiece[] _pieces = null!;
    private Drawing _drawing = null!;

    [GlobalSetup]
    public void Setup()
    {
        SkirtBlock block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40")).Draft();
        _pieces =
        [
            PatternPiece.From(block.Back).WithAllowance(Length.FromInches(0.5)).Cut(2, ClothName.Main),
            PatternPiece.From(block.Front).WithAllowance(Length.FromInches(0.5)).CutOnFold(EdgeName.Centre).Cut(1, ClothName.Main),
        ];
        _drawing = block.Draw();
        Console.WriteLine(string.Format(
            CultureInfo.InvariantCulture, "// characters: pieces {0} in mm, {1} in inches; drawing {2}", Pieces().Length, PiecesInInches().Length, Plain().Length));
    }

    [Benchmark(Baseline = true)]
    public string Pieces() => _pieces.ToDxf();

    [Benchmark]
    public string PiecesInInches() => _pieces.ToDxf(Inches);

    [Benchmark]
    public string Plain() => _drawing.ToDxf();
}
