using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Panels;

/// <summary>One walk, one check and one truing of each sort on a skirt, from typed call to result. What is trued has been changed first, so that there is work to do.</summary>
[MemoryDiagnoser]
public class SeamBenchmarks
{
    private static readonly EdgeOf[] Hem = [EdgeOf.Panel(PanelName.Back, EdgeName.Hem), EdgeOf.Panel(PanelName.Front, EdgeName.Hem)];
    private static readonly EdgeTruing ToLength = new() { ClosedLength = Length.FromMillimeters(210), Start = EndDirection.Square, End = EndDirection.Square, Move = EndMove.AlongEdge };
    private static readonly LengthTruing FrontGives = new() { Gives = SeamSide.Second, Held = SeamMark.Notch(1) };

    private SkirtBlock _block = null!;
    private Panel _moved = null!;
    private Panel _flared = null!;
    private Seam _eased = null!;

    [GlobalSetup]
    public void Setup()
    {
        _block = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40")).Draft();
        _moved = _block.Back.WithDartLength(EdgeName.Waist.Dart(1), Length.FromMillimeters(110));
        _flared = _block.Front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle);
        _eased = _block.Seams.Seams[0].WithEase(Length.FromMillimeters(4));
    }

    [Benchmark(Baseline = true)]
    public SeamWalk Walk() => SeamWalk.Between(_block.Back, EdgeName.SideSeam, _block.Front, EdgeName.SideSeam);

    [Benchmark]
    public CheckReport CheckPlan() => _block.Seams.Check(_block.Back, _block.Front);

    [Benchmark]
    public TruingResult TrueEdge() => _moved.TrueEdge(EdgeName.Waist);

    [Benchmark]
    public TruingResult TrueEdgeNothingToDo() => _block.Back.TrueEdge(EdgeName.Waist);

    [Benchmark]
    public TruingResult TrueEdgeToLength() => _moved.TrueEdge(EdgeName.Waist, ToLength);

    [Benchmark]
    public TruingResult TrueLine() => _block.Seams.TrueLine(Hem, _block.Back, _flared);

    [Benchmark]
    public TruingResult TrueLengths() => _eased.TrueLengths(FrontGives, _block.Back, _block.Front);
}
