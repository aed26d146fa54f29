using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Pieces;

/// <summary>Both pieces of a skirt, from the drafted block to the cut line with its marks; with labels placed as well; and a whole set with lining.</summary>
[MemoryDiagnoser]
public class PatternPieceBenchmarks
{
    private static readonly PieceLabel Label = PieceLabel.For("Act 2 skirt").ForWhom("Rosalind").WithSize("waist 32 in, hip 40 in");
    private static readonly SkirtPatternOptions WithLining = new() { Lining = LiningChoice.Loose, Label = Label };

    private SkirtBlock _block = null!;

    [GlobalSetup]
    public void Setup()
        => _block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40")).Draft();

    [Benchmark(Baseline = true)]
    public int BothPieces() => Of(_block.Front).CutOnFold(EdgeName.Centre).CutLine.Segments.Count + Of(_block.Back).CutLine.Segments.Count;

    [Benchmark]
    public bool BothPiecesWithLabels()
        => Of(_block.Front).CutOnFold(EdgeName.Centre).WithLabel(Label).Label is not null && Of(_block.Back).WithLabel(Label).Label is not null;

    [Benchmark]
    public Length WholeSetWithLiningAndCloth()
    {
        PieceSet set = SkirtPattern.From(_block, WithLining);
        return set.EstimateCloth(ClothName.Main, Length.FromMillimeters(1400)).UpperBound + set.EstimateCloth(ClothName.Lining, Length.FromMillimeters(1400)).UpperBound;
    }

    /// <summary>The seam lines of both panels without allowance: what is not the work of a piece.</summary>
    [Benchmark]
    public CurvePath[] SeamLinesOnly() => [_block.Front.CapOutline(), _block.Back.CapOutline()];

    private static PatternPiece Of(Panel panel) => PatternPiece.From(panel)
        .WithAllowance(Length.FromInches(0.5))
        .WithAllowance(EdgeName.Hem, Length.FromInches(1.5))
        .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored);
}
