using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class TruingPlanTests
{
    private static readonly PanelName Sample = PanelName.Of("sample");
    private static readonly PanelName Other = PanelName.Of("other");
    private static readonly EdgeOf Waist = EdgeOf.Panel(Sample, EdgeName.Waist);
    private static readonly EdgeOf Side = EdgeOf.Panel(Sample, EdgeName.SideSeam);
    private static readonly EdgeOf OtherSide = EdgeOf.Panel(Other, EdgeName.SideSeam);

    // The nearest point at a distance from a fixed one lies on the straight line to it.
    [Fact]
    public void True_AnEdgeThatIsTooLong_MovesItsFreeCornerStraightIn()
    {
        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(40)))
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist))
            .True(Rectangle(200, 100));

        Assert.Equal(190, outcome.Panels[0].FindEdge(EdgeName.Waist).End.XMm, 1e-9);
        Assert.Equal(100, outcome.Panels[0].FindEdge(EdgeName.Waist).End.YMm, 1e-6);
        Assert.Equal(-10, outcome.Moves[0].Across.Millimeters, 1e-9);
        Assert.True(outcome.IsLeast);
        Assert.Equal(0, outcome.Panels[0].FindEdge(EdgeName.SideSeam).End.DistanceMm(At(200, 0)));
    }

    // Two legs of a right triangle: up the side line until the slanted waist is long enough.
    [Fact]
    public void True_ACornerAlongALine_StaysOnIt()
    {
        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(40)).Along(Direction.Up))
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(201)), Waist))
            .TrueOrExplain(Rectangle(200, 100).WithWaistEndAt(200, 104));

        Point2D end = outcome.Panels[0].FindEdge(EdgeName.Waist).End;
        Assert.Equal(200, end.XMm);
        Assert.Equal(100 + Math.Sqrt((201 * 201) - (200 * 200)), end.YMm, 1e-9);
    }

    // A circle about the start of the waist: along it the waist keeps its length, so the side seam decides where.
    [Fact]
    public void True_ACornerAlongACurve_StaysOnIt()
    {
        Panel panel = Rectangle(200, 100);
        CurvePath circle = CurvePath.FromArc(CircularArc.Around(At(0, 100), At(200 * Math.Cos(0.3), 100 - (200 * Math.Sin(0.3))), UnitsNet.Angle.FromRadians(0.6)));

        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(50)).Along(circle))
            .MustHold(Condition.SewnLength(WorkedLength.Given("side", Mm(110)), Side))
            .True(panel);

        Point2D end = outcome.Panels[0].FindEdge(EdgeName.Waist).End;
        Assert.Equal(200, end.DistanceMm(At(0, 100)), 1e-9);
        Assert.Equal(110, end.DistanceMm(At(200, 0)), 1e-9);
    }

    [Fact]
    public void True_SeamsWithNotches_FitStretchByStretch()
    {
        Panel one = Rectangle(200, 100).WithNotchAt(30);
        Panel other = Rectangle(150, 104).Renamed(Other).WithNotchAt(40);
        Seam seam = Seam.Between(Side, OtherSide).Running(SeamRun.SameWay).Named("side seam");
        TruingPlan plan = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(20)).Along(Direction.Up), Movable.Notch(Side, 1, Mm(20)))
            .MustHold(Condition.Sewn(seam));

        TruingOutcome outcome = plan.True(one, other);

        SeamWalk walk = seam.Walk([.. outcome.Panels]);
        Assert.All(walk.Stretches, stretch => Assert.Equal(0, stretch.OffMm, 1e-9));
        Assert.Equal(104, outcome.Panels[0].FindEdge(EdgeName.SideSeam).SewnLengthMm(), 1e-9);
        Assert.Equal(40, outcome.Panels[0].Notches[0].DistanceFromStart.Millimeters, 1e-9);
        Assert.Same(other, outcome.Panels[1]);
        Assert.Equal(["side seam, start to notch 1", "side seam, notch 1 to end"], outcome.Conditions.Select(c => c.Name));
    }

    [Fact]
    public void True_ASeamWithEase_SharesItAsTheWalkDoes()
    {
        Panel one = Rectangle(200, 100).WithNotchAt(30);
        Panel other = Rectangle(150, 104).Renamed(Other).WithNotchAt(40);
        Seam seam = Seam.Between(Side, OtherSide).Running(SeamRun.SameWay).WithEase(Mm(3));

        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(20)).Along(Direction.Up), Movable.Notch(Side, 1, Mm(20)))
            .MustHold(Condition.Sewn(seam))
            .True(one, other);

        Assert.All(seam.Walk([.. outcome.Panels]).Stretches, stretch => Assert.Equal(0, stretch.OffMm, 1e-9));
        Assert.Equal(107, outcome.Panels[0].FindEdge(EdgeName.SideSeam).SewnLengthMm(), 1e-9);
    }

    [Fact]
    public void TryTrue_MoreThanTheLimitsAllow_NamesTheConditionAndWhatIsAtItsLimit()
    {
        Panel panel = Rectangle(200, 100);

        bool holds = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(4)).Along(Direction.Left))
            .MustHold(
                Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist).Named("quarter waist"),
                Condition.SewnLength(WorkedLength.Given("hem", Mm(200)), EdgeOf.Panel(Sample, EdgeName.Hem)).Named("hem"))
            .TryTrue([panel], out TruingOutcome outcome);

        Assert.False(holds);
        Assert.Equal(["quarter waist"], outcome.Conflict.Select(c => c.Name));
        Assert.Equal(6, outcome.Conflict[0].Off!.Value.Millimeters, 1e-9);
        Assert.Equal([Waist.AtEnd.ToString()], outcome.AtLimit.Select(m => m.What.Name));
        Assert.Same(panel, outcome.Panels[0]);
    }

    [Fact]
    public void True_MoreThanTheLimitsAllow_ThrowsWithCodeAndFacts()
    {
        ConstructionException refused = Assert.Throws<ConstructionException>(() => TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(4)).Along(Direction.Left))
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist).Named("quarter waist"))
            .True(Rectangle(200, 100)));

        Assert.Equal(DiagnosticCode.ConditionsContradict, refused.Code);
        Assert.Equal("quarter waist", refused.Landmark);
        Assert.Equal(6, refused.Measured!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void True_TheSameConditionTwice_IsMetAndReported()
    {
        Condition waist = Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist);

        TruingOutcome outcome = TruingPlan.Empty.MayMove(Movable.Corner(Waist.AtEnd, Mm(40))).MustHold(waist, waist).True(Rectangle(200, 100));

        Assert.Equal([false, true], outcome.Conditions.Select(c => c.IsRedundant));
        Assert.All(outcome.Conditions, c => Assert.True(c.IsMet));
    }

    [Fact]
    public void Asking_AnotherLength_TruesTheNextBodyByTheSamePlan()
    {
        TruingPlan plan = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(40)))
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist).Named("quarter waist"));

        double first = plan.True(Rectangle(200, 100)).Panels[0].FindEdge(EdgeName.Waist).SewnLengthMm();
        double second = plan.Asking("quarter waist", WorkedLength.Given("quarter waist", Mm(230)))
            .True(Rectangle(220, 90)).Panels[0].FindEdge(EdgeName.Waist).SewnLengthMm();

        Assert.Equal([190, 230], new[] { first, second }.Select(mm => Math.Round(mm, 9)));
        Assert.Throws<ArgumentException>(() => plan.Asking("hem", WorkedLength.Given(Mm(1))));
    }

    // Bodices of any size, by hands of any steadiness: everything that was asked holds, as the panels themselves say it.
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(20)]
    public void True_BodiceHalves_HoldsAllThatWasAskedAndStaysSo(double noise)
    {
        TruingPlan? plan = null;
        for (int seed = 0; seed < 50; seed++)
        {
            var half = new HalfBodice(seed, noise);
            plan = TruingPlan.Empty.MayMove(HalfBodice.Movables()).MustHold(half.Conditions());

            Assert.True(plan.TryTrue(half.Panels, out TruingOutcome outcome), $"body {seed}: {string.Join("; ", outcome.Conflict)}, {string.Join("; ", outcome.AtLimit)}");
            Panel back = outcome.Panels[0];
            Panel front = outcome.Panels[1];
            Holds(half, back, front, seed);
            Assert.All(outcome.Moves, move => Assert.True(move.DistanceMm <= (move.What.WithinMm * Math.Sqrt(2)) + 1e-9));

            Assert.True(plan.TryTrue(outcome.Panels, out TruingOutcome again));
            Assert.False(again.HasChanged);
            Assert.Same(back, again.Panels[0]);
            Assert.Same(front, again.Panels[1]);
        }
    }

    // Asked for things that cannot be together: exactly these are named, whatever else is asked.
    [Fact]
    public void TryTrue_PlantedConflicts_AreNamedExactly()
    {
        var random = new Random(7);
        for (int i = 0; i < 60; i++)
        {
            var half = new HalfBodice(1000 + i, 3);
            double by = Math.Pow(10, random.Next(-6, 2)) * (random.Next(2) == 0 ? -1 : 1);
            Condition[] planted = (i % 4) switch
            {
                0 => [Long("back shoulder", 120, HalfBodice.BackShoulder), Long("front shoulder", 114 + by, HalfBodice.FrontShoulder)],
                1 => [Long("back side", 190, HalfBodice.BackSide), Long("front side", 190 + by, HalfBodice.FrontSide)],
                2 => [Long("back waist", half.WaistMm / 2, HalfBodice.BackWaist), Long("front waist", (half.WaistMm / 2) + by, HalfBodice.FrontWaist)],
                _ => [Condition.Corner(HalfBodice.BackWaist.AtEnd, UnitsNet.Angle.FromDegrees(92)).Named("one angle"), Condition.Corner(HalfBodice.BackWaist.AtEnd, UnitsNet.Angle.FromDegrees(92 + (by / 10))).Named("other angle")],
            };
            string[] expected = [.. planted.Select(c => c.Name), .. new[] { new[] { "shoulder" }, ["side seam"], ["half waist"], [] }[i % 4]];
            Condition[] all = [.. half.Conditions().Concat(planted).OrderBy(_ => random.Next())];

            bool holds = TruingPlan.Empty.MayMove(HalfBodice.Movables()).MustHold(all).TryTrue(half.Panels, out TruingOutcome outcome);

            Assert.False(holds, $"case {i}, off by {by}");
            Assert.Equal(expected.OrderBy(n => n, StringComparer.Ordinal), outcome.Conflict.Select(c => c.Name).OrderBy(n => n, StringComparer.Ordinal));
        }
    }

    // A quarter skirt with a waist dart: closed length, smooth over the dart, square at both ends.
    [Property(MaxTest = 100)]
    public Property True_SkirtQuarters_CloseToTheLengthAskedFor() => Prop.ForAll(
        Gen.Choose(0, 100_000).ToArbitrary(),
        seed =>
        {
            var random = new Random(seed);
            double width = 180 + (random.NextDouble() * 140);
            Panel hand = Rectangle(width, 200).TakeInDart(EdgeName.Waist.At(UnitsNet.Ratio.FromPercent(40 + (random.NextDouble() * 20))), Mm(15 + (random.NextDouble() * 20)), Mm(90 + (random.NextDouble() * 40))).WithCurvedWaist();
            double wanted = hand.FindEdge(EdgeName.Waist).SewnLengthMm() + ((random.NextDouble() - 0.5) * 16);
            TruingOutcome outcome = TruingPlan.Empty
                .MayMove(
                    Movable.Corner(Waist.AtEnd, Mm(40)),
                    Movable.Handles(Waist, Mm(40)),
                    Movable.Legs(Waist.Dart(1), Mm(20)))
                .MustHold(
                    Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(wanted)), Waist),
                    Condition.SewnLength(WorkedLength.Given("side", Mm(203)), Side),
                    Condition.LegsEqual(Waist.Dart(1)),
                    Condition.SmoothOverDarts(Waist),
                    Condition.Square(Waist.AtStart),
                    Condition.Square(Waist.AtEnd))
                .TrueOrExplain(hand);

            PanelEdge waist = outcome.Panels[0].FindEdge(EdgeName.Waist);
            CurvePath closed = waist.Closed();
            return Math.Abs(closed.LengthMm - wanted) < 1e-8
                && Math.Abs(outcome.Panels[0].FindEdge(EdgeName.SideSeam).SewnLengthMm() - 203) < 1e-9
                && Math.Abs(Kink(waist)) < 1e-9
                && Math.Abs(outcome.Panels[0].CornerRad(0) - (Math.PI / 2)) < 1e-9;
        });

    [Fact]
    public void Notes_OfAnOutcome_SayWhatAHandDoes()
    {
        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(40)))
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(190)), Waist))
            .True(Rectangle(200, 100));

        Assert.Equal(
            [
                "Measure the sample waist with its darts folded closed: by hand 20.0 cm. It has to be quarter waist 19.0 cm.",
                "Move the end of the sample waist by 1.0 cm: 1.0 cm to the left and 0.0 cm up.",
            ],
            outcome.Notes.Select(note => note.Describe(TapeStep.Millimeter)));
    }

    // An arc beside a corner that moves bends as a curve does.
    [Fact]
    public void True_AnArcBesideACornerThatMoves_BecomesACurveAndHolds()
    {
        Panel panel = WithArc(90);

        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(20)).Along(Direction.Up), Movable.Handles(Waist, Mm(20)))
            .MustHold(Condition.Square(Waist.AtEnd), Condition.SewnLength(WorkedLength.Given("side", Mm(104)), Side))
            .TrueOrExplain(panel);

        Panel trued = outcome.Panels[0];
        Assert.Equal(Math.PI / 2, trued.CornerRad(0), 1e-11);
        Assert.Equal(104, trued.FindEdge(EdgeName.Waist).End.YMm, 1e-9);
        Assert.All(trued.FindEdge(EdgeName.Waist).Stretches[0].Segments, s => Assert.Equal(PathSegmentKind.Cubic, s.Kind));
        Assert.Equal(PathSegmentKind.Arc, trued.FindEdge(EdgeName.Hem).Stretches[0].Segments[0].Kind);
    }

    // Over a chord of 200 with 10 of rise the tangent leans by 2 atan(10 / 100): where the arc begins and where it ends, the straight edges lean in by as much.
    [Fact]
    public void True_CornersAtTheEndsOfAnArc_AreMeasuredOnTheArc()
    {
        Panel panel = Rectangle(200, 100);
        PanelEdge[] edges = [.. panel.EdgesRaw];
        edges[2] = new PanelEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200, 0)).ArcThrough(At(100, -10), At(0, 0)));
        panel = new Panel(panel.Name, edges, panel.Features);

        Panel trued = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtStart, Mm(40)).Along(Direction.Right), Movable.Corner(Waist.AtEnd, Mm(40)).Along(Direction.Right))
            .MustHold(Condition.Square(Side.AtEnd), Condition.Square(EdgeOf.Panel(Sample, EdgeName.Hem).AtEnd))
            .TrueOrExplain(panel).Panels[0];

        double lean = 100 * Math.Tan(2 * Math.Atan(0.1));
        Assert.Equal(lean, trued.FindEdge(EdgeName.Waist).Start.XMm, 1e-7);
        Assert.Equal(200 - lean, trued.FindEdge(EdgeName.Waist).End.XMm, 1e-7);
        Assert.Equal(PathSegmentKind.Arc, trued.FindEdge(EdgeName.Hem).Stretches[0].Segments[0].Kind);
    }

    // 100 mm of edge: a notch at 90 has 10 before it and one at 5 has 5 behind it, whatever its own limit of 20 says.
    [Theory]
    [InlineData(90, -20, 10)]
    [InlineData(5, -5, 20)]
    public void TryBind_ANotchNearAnEndOfItsEdge_StopsAtThatEnd(double atMm, double least, double most)
    {
        Panel[] panels = [Rectangle(200, 100).WithNotchAt(atMm), Rectangle(150, 100).Renamed(Other).WithNotchAt(50)];
        Movable[] movables = [Movable.Notch(Side, 1, Mm(20))];
        Condition[] conditions = [Condition.Sewn(Seam.Between(Side, OtherSide).Running(SeamRun.SameWay))];
        var room = new TruingRoom(new TruingLayout(movables, conditions, panels));

        Assert.True(room.TryBind(movables, conditions, panels));

        Assert.Equal(least, room.Search.Least[0], 1e-9);
        Assert.Equal(most, room.Search.Most[0], 1e-9);
    }

    // r = (c^2 / 4 + s^2) / (2 s) and 2 r asin(c / 2 r): what is true as an arc stays one.
    [Fact]
    public void True_AnArcThatIsTrueAlready_StaysThatArc()
    {
        const double Radius = ((100.0 * 100) + (10 * 10)) / 20;
        Panel panel = WithArc(90);

        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(4)), Movable.Handles(Waist, Mm(20)))
            .MustHold(Condition.SewnLength(WorkedLength.Given("waist", Mm(2 * Radius * Math.Asin(100 / Radius))), Waist))
            .TrueOrExplain(panel);

        Assert.Same(panel, outcome.Panels[0]);
        Assert.False(outcome.HasChanged);
        Assert.Equal(0, outcome.Moves[0].DistanceMm);
    }

    // The corner goes so far to the left that the side crosses the centre line: lengths that hold and no panel.
    [Fact]
    public void TryTrue_AnOutlineThatWouldCross_SaysSoAndChangesNothing()
    {
        TruingPlan plan = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(400)).Along(Direction.Left))
            .MustHold(Condition.SewnLength(WorkedLength.Given("side", Mm(320)), Side));
        Panel panel = Rectangle(200, 100).WithWaistEndAt(150, 100);

        bool holds = plan.TryTrue([panel], out TruingOutcome outcome);

        Assert.False(holds);
        Assert.False(outcome.IsMet);
        Assert.False(outcome.HasChanged);
        Assert.Equal(DiagnosticCode.OutlineWouldCross, outcome.Refusal!.Code);
        Assert.Empty(outcome.Conflict);
        Assert.Same(panel, outcome.Panels[0]);
        Assert.Equal(DiagnosticCode.OutlineWouldCross, Assert.Throws<ConstructionException>(() => plan.True(panel)).Code);
    }

    [Fact]
    public void TryTrue_ANotchBeyondItsEdge_SaysSo()
    {
        Panel panel = Rectangle(200, 100).WithNotchAt(95);

        bool holds = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(20)).Along(Direction.Up))
            .MustHold(Condition.SewnLength(WorkedLength.Given("side", Mm(90)), Side))
            .TryTrue([panel], out TruingOutcome outcome);

        Assert.False(holds);
        Assert.Equal(DiagnosticCode.PlaceOffEdge, outcome.Refusal!.Code);
    }

    private static Panel WithArc(double middleY) => Panel.Named(Sample)
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 100)).ArcThrough(At(100, middleY), At(200, 100)))
        .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 100)).LineTo(At(200, 0)))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200, 0)).ArcThrough(At(100, -10), At(0, 0)))
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 100)))
        .Make();

    private static Condition Long(string name, double mm, EdgeOf edge) => Condition.SewnLength(WorkedLength.Given(name, Mm(mm)), edge).Named(name);

    // Measured by other means than the engine's: edges closed, corners of the panels, seams walked.
    private static void Holds(HalfBodice half, Panel back, Panel front, int seed)
    {
        double Closed(Panel p) => p.FindEdge(EdgeName.Waist).Closed().LengthMm;
        double Corner(Panel p, EdgeName edge, EdgeEnd end)
        {
            int i = p.IndexOf(edge);
            return p.CornerRad(end == EdgeEnd.End ? i : (i + p.EdgesRaw.Length - 1) % p.EdgesRaw.Length);
        }

        var off = new Dictionary<string, double>
        {
            ["half waist"] = Closed(back) + Closed(front) - half.WaistMm,
            ["armhole"] = back.FindEdge(EdgeName.Armhole).SewnLengthMm() + front.FindEdge(EdgeName.Armhole).SewnLengthMm() - half.ArmholeMm,
            ["side"] = HalfBodice.Side.Walk(back, front).Stretches[0].OffMm,
            ["shoulder"] = HalfBodice.ShoulderSeam.Walk(back, front).Stretches[0].OffMm,
            ["back waist at centre"] = 100 * (Corner(back, EdgeName.Waist, EdgeEnd.Start) - (Math.PI / 2)),
            ["front waist at centre"] = 100 * (Corner(front, EdgeName.Waist, EdgeEnd.Start) - (Math.PI / 2)),
            ["back neck at centre"] = 100 * (Corner(back, EdgeName.Neckline, EdgeEnd.End) - (Math.PI / 2)),
            ["front neck at centre"] = 100 * (Corner(front, EdgeName.Neckline, EdgeEnd.End) - (Math.PI / 2)),
            ["waist over side"] = 100 * (Corner(back, EdgeName.Waist, EdgeEnd.End) + Corner(front, EdgeName.Waist, EdgeEnd.End) - Math.PI),
            ["underarm"] = 100 * (Corner(back, EdgeName.Armhole, EdgeEnd.Start) + Corner(front, EdgeName.Armhole, EdgeEnd.Start) - Math.PI),
            ["shoulder tip"] = 100 * (Corner(back, EdgeName.Armhole, EdgeEnd.End) + Corner(front, EdgeName.Armhole, EdgeEnd.End) - Math.PI),
            ["neck"] = 100 * (Corner(back, EdgeName.Neckline, EdgeEnd.Start) + Corner(front, EdgeName.Neckline, EdgeEnd.Start) - Math.PI),
            ["back dart"] = 100 * Kink(back.FindEdge(EdgeName.Waist)),
            ["front dart"] = 100 * Kink(front.FindEdge(EdgeName.Waist)),
            ["back legs"] = LegsOff(back),
            ["front legs"] = LegsOff(front),
        };
        Assert.All(off, pair => Assert.True(Math.Abs(pair.Value) < 1e-8, $"body {seed}: {pair.Key} is off by {pair.Value}"));
    }

    private static double LegsOff(Panel panel)
    {
        Dart dart = panel.FindEdge(EdgeName.Waist).Darts[0];
        return dart.LegLengthMm(Toward.Start) - dart.LegLengthMm(Toward.End);
    }

    // The corner in the closed edge, where its first stretch has been joined to its second.
    private static double Kink(PanelEdge edge)
    {
        IReadOnlyList<PathSegment> segments = edge.Closed().Segments;
        int joint = edge.Stretches[0].Segments.Count;
        return segments[joint - 1].EndDirection.TurnRadTo(segments[joint].StartDirection);
    }
}
