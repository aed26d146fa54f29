using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

/// <summary>An edge in one sweep across its darts, together with whatever else must hold.</summary>
public class OneSweepTests
{
    private static readonly PanelName Sample = PanelName.Of("sample");
    private static readonly PanelName Other = PanelName.Of("other");
    private static readonly EdgeOf Waist = EdgeOf.Panel(Sample, EdgeName.Waist);
    private static readonly EdgeOf Side = EdgeOf.Panel(Sample, EdgeName.SideSeam);
    private static readonly EdgeOf OtherSide = EdgeOf.Panel(Other, EdgeName.SideSeam);
    private static readonly UnitsNet.Angle Right = UnitsNet.Angle.FromDegrees(30);

    // Both directions along the chord: the closed line is straight, so all of it is school geometry. An upright first leg at x = 80 ends on the line y = 200, the other, turned
    // about the apex, is as long; the open end is the closed one, turned likewise.
    [Fact]
    public void True_ASweepThatIsStraightWhenClosed_LiesWhereGeometryPutsIt()
    {
        const double Turn = 0.2;
        Point2D apex = At(80, 90);
        Point2D Open(Point2D p) => apex + Turned(p - apex, -Turn);
        Movable corner = Movable.Corner(Waist.AtEnd, Mm(60)).Along(Direction.FromRadians(-Turn));

        TruingOutcome outcome = TruingPlan.Empty
            .MayMove(Movable.OneSweep(Waist, Right).KeepingDirections(), corner)
            .MustHold(Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(210)), Waist))
            .TrueOrExplain(Quarter([At(0, 200), At(40, 200), At(80, 190)], [apex + Turned(At(80, 205) - apex, -Turn), Open(At(150, 200)), Open(At(230, 200))], apex));

        PanelEdge waist = outcome.Panels[0].FindEdge(EdgeName.Waist);
        Assert.Equal(0, waist.Darts[0].StartLeg.DistanceMm(At(80, 200)), 1e-9);
        Assert.Equal(0, waist.Darts[0].EndLeg.DistanceMm(Open(At(80, 200))), 1e-9);
        Assert.Equal(0, waist.End.DistanceMm(Open(At(210, 200))), 1e-9);
        Assert.Equal([1, 1], waist.Stretches.Select(s => s.Segments.Count));
        Assert.Equal(apex, waist.Darts[0].Apex);
    }

    // One curve has no corner and no jump of curvature at a dart; all the rest is measured by closing edges, walking seams and looking at corners.
    [Property(MaxTest = 100)]
    public Property True_QuartersWithADartAndASeam_HoldsAllAndIsOneCurve() => Prop.ForAll(
        Gen.Choose(0, 100_000).ToArbitrary(),
        seed =>
        {
            (Panel hand, Panel other, TruingPlan plan, double wanted) = Asked(seed);
            TruingOutcome outcome = plan.TrueOrExplain(hand, other);
            Panel panel = outcome.Panels[0];
            PanelEdge waist = panel.FindEdge(EdgeName.Waist);
            PathSegment[] closed = [.. waist.Closed().Segments];
            double bends = Math.Abs(closed[0].CubicRaw.CurvaturePerMm(1) - closed[1].CubicRaw.CurvaturePerMm(0));
            TruingOutcome again = plan.TrueOrExplain([.. outcome.Panels]);
            return closed.Length == 2
                && Math.Abs(closed[0].EndDirection.TurnRadTo(closed[1].StartDirection)) < 1e-10
                && bends < 1e-8
                && Math.Abs(closed.Sum(s => s.LengthMm()) - wanted) < 1e-8
                && Math.Abs(waist.Darts[0].LegLengthMm(Toward.Start) - waist.Darts[0].LegLengthMm(Toward.End)) < 1e-9
                && Math.Abs(waist.Darts[0].AngleRad - hand.FindEdge(EdgeName.Waist).Darts[0].AngleRad) < 1e-12
                && Math.Abs(Seam().Walk([.. outcome.Panels]).Stretches[0].OffMm) < 1e-8
                && Math.Abs(panel.CornerRad(0) - (Math.PI / 2)) < 1e-10
                && Math.Abs(panel.CornerRad(3) - (Math.PI / 2)) < 1e-10
                && !again.HasChanged && ReferenceEquals(again.Panels[0], panel);
        });

    // The engine's slopes against differences of what it measures.
    [Property(MaxTest = 50)]
    public Property Slopes_OfSweptEdges_AreWhatDifferencesShow() => Prop.ForAll(
        Gen.Choose(0, 100_000).ToArbitrary(),
        seed =>
        {
            (Panel hand, Panel other, TruingPlan plan, _) = Asked(seed);
            Movable[] movables = [.. plan.Movables, Movable.Dart(Waist.Dart(1), Mm(10)), Movable.Corner(Waist.AtStart, Mm(5))];
            Condition[] conditions = [.. plan.Conditions, Condition.Intake(Waist.Dart(1), WorkedLength.Given("intake", Mm(20))), Condition.SewnLength(WorkedLength.Given("centre", Mm(200)), EdgeOf.Panel(Sample, EdgeName.Centre))];
            Panel[] panels = [hand, other];
            var room = new TruingRoom(new TruingLayout(movables, conditions, panels));
            room.TryBind(movables, conditions, panels);
            ILeastChangeProblem problem = room;
            int n = room.Layout.Unknowns.Length;
            int m = room.Layout.Equations.Length;
            double[] at = [.. Enumerable.Range(0, n).Select(j => Math.Sin(seed + j))];
            double[] slopes = new double[n * m];
            double[] more = new double[m];
            double[] less = new double[m];
            problem.TryMeasure(at, more);
            problem.Slopes(slopes);
            const double Step = 1e-4;
            double worst = 0;
            for (int j = 0; j < n; j++)
            {
                double stood = at[j];
                at[j] = stood + Step;
                problem.TryMeasure(at, more);
                at[j] = stood - Step;
                problem.TryMeasure(at, less);
                at[j] = stood;
                for (int i = 0; i < m; i++)
                {
                    worst = Math.Max(worst, Math.Abs(slopes[(i * n) + j] - ((more[i] - less[i]) / (2 * Step))));
                }
            }

            return worst < 1e-5;
        });

    [Fact]
    public void True_WhatASweepHoldsByItself_IsRedundant()
    {
        (Panel hand, Panel other, TruingPlan plan, _) = Asked(3);

        TruingOutcome outcome = plan
            .MustHold(Condition.SmoothOverDarts(Waist).Named("smooth"), Condition.LegsEqual(Waist.Dart(1)).Named("legs"))
            .TrueOrExplain(hand, other);

        Assert.Equal(["smooth", "legs"], outcome.Conditions.Where(c => c.IsRedundant).Select(c => c.Name));
    }

    [Fact]
    public void True_AnEdgeThatMeetsAllButIsNoSweep_IsDrawnAnew()
    {
        Panel hand = Rectangle(200, 200).TakeInDart(EdgeName.Waist.Middle, Mm(20), Mm(100));

        TruingOutcome outcome = TruingPlan.Empty.MayMove(Movable.OneSweep(Waist, Right)).TrueOrExplain(hand);

        PanelEdge waist = outcome.Panels[0].FindEdge(EdgeName.Waist);
        PathSegment[] closed = [.. waist.Closed().Segments];
        Assert.True(outcome.HasChanged);
        Assert.Equal(0, closed[0].EndDirection.TurnRadTo(closed[1].StartDirection), 1e-10);
        Assert.Equal(hand.FindEdge(EdgeName.Waist).End, waist.End);
        Assert.Contains("Fold the darts of the sample waist closed and draw it anew in one sweep", outcome.Notes.Single().Describe(TapeStep.Millimeter), StringComparison.Ordinal);
    }

    // Closed, the edge ends to the left of the line of the leg, so that it never meets it.
    [Fact]
    public void TryTrue_ASweepThatMissesADart_SaysSo()
    {
        Point2D apex = At(80, 90);
        Panel hand = Quarter([At(0, 200), At(80, 200)], [At(95, 198), At(75, 300)], apex);

        bool holds = TruingPlan.Empty.MayMove(Movable.OneSweep(Waist, Right)).TryTrue([hand], out TruingOutcome outcome);

        Assert.False(holds);
        Assert.Equal(DiagnosticCode.DartOffTruedLine, outcome.Refusal!.Code);
        Assert.Same(hand, outcome.Panels[0]);
        Assert.Throws<ConstructionException>(() => TruingPlan.Empty.MayMove(Movable.OneSweep(Waist, Right)).True(hand));
    }

    [Fact]
    public void MayMove_ASweepAndItsBendToo_IsRefused()
    {
        Movable sweep = Movable.OneSweep(Waist, Right);

        Assert.Contains("PC2310", Assert.Throws<ArgumentException>(() => TruingPlan.Empty.MayMove(sweep, Movable.Handles(Waist, Mm(10)))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => TruingPlan.Empty.MayMove(Movable.Legs(Waist.Dart(1), Mm(10))).MayMove(sweep));
        Assert.Throws<ArgumentException>(() => TruingPlan.Empty.MayMove(sweep, Movable.OneSweep(Waist, Right)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Movable.OneSweep(Waist, UnitsNet.Angle.FromDegrees(91)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Movable.OneSweep(Waist, UnitsNet.Angle.FromDegrees(-1)));
    }

    private static (Panel Hand, Panel Other, TruingPlan Plan, double Wanted) Asked(int seed)
    {
        var random = new Random(seed);
        double width = 180 + (random.NextDouble() * 140);
        Panel hand = Rectangle(width, 200).TakeInDart(
            EdgeName.Waist.At(UnitsNet.Ratio.FromPercent(40 + (random.NextDouble() * 20))), Mm(15 + (random.NextDouble() * 20)), Mm(90 + (random.NextDouble() * 40)));
        Panel other = Rectangle(150, 203 + (random.NextDouble() * 6)).Renamed(Other);
        double wanted = hand.FindEdge(EdgeName.Waist).SewnLengthMm() + ((random.NextDouble() - 0.5) * 16);
        TruingPlan plan = TruingPlan.Empty
            .MayMove(Movable.Corner(Waist.AtEnd, Mm(40)), Movable.OneSweep(Waist, Right))
            .MustHold(
                Condition.SewnLength(WorkedLength.Given("quarter waist", Mm(wanted)), Waist),
                Condition.Sewn(Seam()),
                Condition.Square(Waist.AtStart),
                Condition.Square(Waist.AtEnd));
        return (hand, other, plan, wanted);
    }

    private static Seam Seam() => Core.Panels.Seam.Between(Side, OtherSide).Running(SeamRun.SameWay).Named("side seam");

    private static Vector2D Turned(Vector2D v, double radians)
        => new((v.XMm * Math.Cos(radians)) - (v.YMm * Math.Sin(radians)), (v.XMm * Math.Sin(radians)) + (v.YMm * Math.Cos(radians)));

    // A waist of straight lines with one dart, drawn by hand; the rest of the panel around it.
    private static Panel Quarter(Point2D[] first, Point2D[] second, Point2D apex)
    {
        static CurvePath Through(Point2D[] points) => CurvePath.FromSegments(points.Skip(1).Select((p, i) => PathSegment.FromLine(new LineSegment(points[i], p))));
        Point2D start = first[0];
        Point2D end = second[^1];
        PanelEdge[] edges =
        [
            new(EdgeName.Waist, EdgeRole.Opening, [Through(first), Through(second)], [new DartShape(apex, first[^1], second[0], Toward.Start)]),
            new(EdgeName.SideSeam, EdgeRole.Seam, Through([end, At(250, 0)])),
            new(EdgeName.Hem, EdgeRole.Hem, Through([At(250, 0), At(0, 0)])),
            new(EdgeName.Centre, EdgeRole.Centre, Through([At(0, 0), start])),
        ];
        return new Panel(Sample, edges, Rectangle(250, 200).Features);
    }
}
