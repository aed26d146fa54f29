using BenchmarkDotNet.Attributes;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Panels;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Panels;

/// <summary>The engine of truing by itself: a skirt's waist in one sweep, a half bodice of 16 conditions and 58 unknowns, a sleeve cap
/// from height and crown, and the same by a plan: a quarter in one sweep among other conditions, and a half apron that is a little too wide. The bodice is drawn by a hand that is
/// off by up to 5 mm; with panels means that they are made anew and looked over.</summary>
[MemoryDiagnoser]
public class TruingBenchmarks
{
    private static readonly CapCurve Cap = CapCurve
        .Over(Length.FromMillimeters(212), Length.FromMillimeters(214))
        .WithEase(Length.FromMillimeters(11), Length.FromMillimeters(14));

    private static readonly DartWedge[] Wedges = [new(70, 22, 130), new(140, 20, 120)];
    private static readonly WaistTarget Waist = new(
        "back", new Point2D(0, -8), Direction.Right, new Point2D(250, -100), new Point2D(235, 12), 187.5, 113.5);

    private readonly HalfBodice _half = new(3, 5);
    private Movable[] _movables = null!;
    private Condition[] _conditions = null!;
    private TruingPlan _plan = null!;
    private TruingRoom _room = null!;
    private Panel[] _trued = null!;
    private Panel _swept = null!;
    private TruingPlan _sweptPlan = null!;
    private Panel _apron = null!;
    private TruingPlan _apronPlan = null!;

    [GlobalSetup]
    public void Setup()
    {
        _movables = HalfBodice.Movables();
        _conditions = _half.Conditions();
        _plan = TruingPlan.Empty.MayMove(_movables).MustHold(_conditions);
        _room = new TruingRoom(new TruingLayout(_movables, _conditions, _half.Panels));
        _trued = [.. _plan.True(_half.Panels).Panels];

        EdgeOf waist = EdgeOf.Panel(PanelName.Of("quarter"), EdgeName.Waist);
        _swept = Rectangle("quarter", 250, 200).TakeInDart(EdgeName.Waist.Middle, Length.FromMillimeters(22), Length.FromMillimeters(110));
        _sweptPlan = TruingPlan.Empty
            .MayMove(Movable.Corner(waist.AtEnd, Length.FromMillimeters(40)), Movable.OneSweep(waist, Angle.FromDegrees(30)))
            .MustHold(
                Condition.SewnLength(WorkedLength.Given("quarter waist", Length.FromMillimeters(222)), waist),
                Condition.SewnLength(WorkedLength.Given("side", Length.FromMillimeters(204)), EdgeOf.Panel(PanelName.Of("quarter"), EdgeName.SideSeam)),
                Condition.Square(waist.AtStart),
                Condition.Square(waist.AtEnd));

        EdgeOf apronWaist = EdgeOf.Panel(PanelName.Of("apron"), EdgeName.Waist);
        _apron = Rectangle("apron", 230, 500);
        _apronPlan = TruingPlan.Empty
            .MayMove(Movable.Corner(apronWaist.AtEnd, Length.FromMillimeters(20)))
            .MustHold(
                Condition.SewnLength(WorkedLength.Given("half width", Length.FromMillimeters(226)), apronWaist),
                Condition.SewnLength(WorkedLength.Given("side", Length.FromMillimeters(500)), EdgeOf.Panel(PanelName.Of("apron"), EdgeName.SideSeam)));
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
    public int CapFromHeightAndCrown() => Cap.CountDrawings(334);

    [Benchmark]
    public bool QuarterInOneSweepByPlan() => _sweptPlan.TryTrue([_swept], out _);

    [Benchmark]
    public bool HalfApronByPlan() => _apronPlan.TryTrue([_apron], out _);

    // Of straight lines, as TakeInDart leaves it.
    private static Panel Rectangle(string name, double width, double height)
    {
        Point2D At(double x, double y) => Point2D.FromMillimeters(x, y);
        return Panel.Named(PanelName.Of(name))
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, height)).LineTo(At(width, height)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(width, height)).LineTo(At(width, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(width, 0)).LineTo(At(0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, height)))
            .Make();
    }
}
