using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Panels;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Panels;

/// <summary>The engine of truing by itself: a skirt's waist in one sweep, a half bodice of 16 conditions and 58 unknowns, a sleeve cap from height and crown. The bodice is drawn by a hand that is
/// off by up to 5 mm; with panels means that they are made anew and looked over.</summary>
[MemoryDiagnoser]
public class TruingBenchmarks
{
    private static readonly Construction<double, Cap> SleeveCap = Construction
        .Of<double, Cap>("sleeve cap", (width, unknowns) => new Cap(
            Half(unknowns.Length(1).Millimeters, unknowns.Length(2).Millimeters), Half(unknowns.Length(1).Millimeters, width - unknowns.Length(2).Millimeters)))
        .WithLength("cap height", _ => Length.FromMillimeters(150), _ => Length.FromMillimeters(60), _ => Length.FromMillimeters(250))
        .WithLength("crown", width => Length.FromMillimeters(width / 2), width => Length.FromMillimeters(width * 0.4), width => Length.FromMillimeters(width * 0.6))
        .MustMeasure("front cap", cap => cap.Front.Length, _ => Length.FromMillimeters(223))
        .MustMeasure("back cap", cap => cap.Back.Length, _ => Length.FromMillimeters(227));

    private static readonly DartWedge[] Wedges = [new(70, 22, 130), new(140, 20, 120)];
    private static readonly WaistTarget Waist = new(
        "back", new Point2D(0, -8), Direction.Right, new Point2D(250, -100), new Point2D(235, 12), 187.5, 113.5);

    private readonly HalfBodice _half = new(3, 5);
    private Movable[] _movables = null!;
    private Condition[] _conditions = null!;
    private TruingPlan _plan = null!;
    private TruingRoom _room = null!;
    private Panel[] _trued = null!;

    [GlobalSetup]
    public void Setup()
    {
        _movables = HalfBodice.Movables();
        _conditions = _half.Conditions();
        _plan = TruingPlan.Empty.MayMove(_movables).MustHold(_conditions);
        _room = new TruingRoom(new TruingLayout(_movables, _conditions, _half.Panels));
        _trued = [.. _plan.True(_half.Panels).Panels];
    }

    [Benchmark(Baseline = true)]
    public object SkirtQuarter() => SkirtWaist.Solve(Waist, Wedges);

    [Benchmark]
    public int BodiceHalf()
    {
        _room.TryBind(_movables, _conditions, _half.Panels);
        _room.Search.Solve(_room);
        return _room.Search.Steps;
    }

    [Benchmark]
    public bool BodiceHalfWithPanels() => _plan.TryTrue(_half.Panels, out _);

    [Benchmark]
    public bool BodiceHalfTrueAlready() => _plan.TryTrue(_trued, out _);

    [Benchmark]
    public int SleeveCapFromHeightAndCrown()
    {
        SleeveCap.Draw(334, 200, out int drawings);
        return drawings;
    }

    private static CubicBezier Half(double height, double width)
        => CubicBezier.Between(Point2D.Origin, Direction.Right, new Point2D(width, height), Direction.Right);

    private readonly record struct Cap(CubicBezier Front, CubicBezier Back);
}
