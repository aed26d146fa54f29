using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

public class SeamWalkTests
{
    private static readonly PanelName Twin = PanelName.Of("twin");

    // Two different panels, two of their edges, an ease and how they run.
    private static readonly Arbitrary<(Panel A, EdgeName EdgeA, Panel B, EdgeName EdgeB, double Ease, SeamRun Run)> Pairs =
        (from a in AnyPanel.WithEdge
         from b in AnyPanel.WithEdge
         from ease in Gen.Elements(0.0, 3, 12.5, -8)
         from run in Gen.Elements(SeamRun.Found, SeamRun.SameWay, SeamRun.Opposite)
         select (a.Panel, a.Edge.Name, b.Panel, b.Edge.Name, ease, run)).ToArbitrary();

    // By hand: a rectangle's 400 mm side against a bodice-like side of sqrt(55^2 + 203^2) = 210.319 mm.
    [Fact]
    public void Between_StraightSides_MeasuresBoth()
    {
        SeamWalk walk = SeamWalk.Between(Rectangle(300, 400), EdgeName.SideSeam, Bodice(), EdgeName.Underarm);

        Assert.Equal(400, walk.Whole.FirstLength.Millimeters, 1e-9);
        Assert.Equal(210.318805, walk.Whole.SecondLength.Millimeters, 1e-6);
        Assert.Equal(189.681195, walk.Whole.EaseFound.Millimeters, 1e-6);
        Assert.False(walk.NotchesPair);
        Assert.Single(walk.Stretches);
        Assert.False(walk.Passed);
    }

    // By hand: 190 mm of waist less a dart of 20 mm and one of 12 mm, walked against 158 mm of yoke: they meet.
    [Fact]
    public void Between_EdgeWithDarts_IsMeasuredWithThemClosed()
    {
        Panel skirt = Rectangle(190, 300).TakeInDart(EdgeName.Waist.At(Mm(60)), Mm(20), Mm(110)).TakeInDart(EdgeName.Waist.At(Mm(110)), Mm(12), Mm(90));
        Panel yoke = Rename(Rectangle(158, 100), "yoke");

        SeamWalk walk = SeamWalk.Between(skirt, EdgeName.Waist, yoke, EdgeName.Hem);

        Assert.True(walk.Passed, string.Join("\n", walk.Stretches));
        Assert.Equal(158, walk.Whole.FirstLength.Millimeters, 1e-9);

        // Both run clockwise, so the waist from centre to side meets the hem from side to centre.
        Assert.Equal(SeamRun.Opposite, walk.Run);
    }

    // common practice, no source: 1/16 in is accepted by hand; 1 mm is less, 2 mm is more.
    [Theory]
    [InlineData(0, true, true)]
    [InlineData(0.009, true, true)]
    [InlineData(0.02, false, true)]
    [InlineData(1, false, true)]
    [InlineData(2, false, false)]
    [InlineData(-2, false, false)]
    public void Passed_Difference_IsJudgedByComputerAndByHand(double differenceMm, bool computed, bool byHand)
    {
        SeamWalk walk = SeamWalk.Between(Rectangle(300, 400 + differenceMm), EdgeName.SideSeam, Rename(Mirrored(Rectangle(300, 400)), "twin"), EdgeName.SideSeam);

        Assert.Equal(computed, walk.Passed);
        Assert.Equal(byHand, walk.PassedByHand);
        Assert.Equal(SeamRun.SameWay, walk.Run);
    }

    // By hand: notches at 100 of 400 on one side, 103 of 405 on the other, 5 mm of ease asked for evenly: 5 * 100/400 = 1.25 and 3.75.
    [Fact]
    public void Stretches_BetweenNotches_HaveTheirShareOfTheEase()
    {
        Panel first = Rename(WithSideNotch(405, 103), "first");
        Panel second = Mirrored(Rename(WithSideNotch(400, 100), "second"));
        SeamWalk walk = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)).WithEase(Mm(5)).Walk(first, second);

        Assert.Equal(["start to notch 1", "notch 1 to end"], walk.Stretches.Select(s => s.Name));
        Assert.Equal([3, 2], walk.Stretches.Select(s => s.EaseFound.Millimeters), Near);
        Assert.Equal([1.25, 3.75], walk.Stretches.Select(s => s.EaseAsked.Millimeters), Near);
        Assert.Equal([1.75, -1.75], walk.Stretches.Select(s => s.Off.Millimeters), Near);
        Assert.True(walk.Whole.Passed);
        Assert.Equal([0, 1.75, 0], walk.Marks().Select(m => m.OffFromStart.Millimeters), Near);
        Assert.Equal([0, -1.75, 0], walk.Marks().Select(m => m.OffFromEnd.Millimeters), Near);
    }

    // By hand: all 5 mm before the notch, none after it.
    [Fact]
    public void WithEaseBetween_StartAndNotch_AsksForItThereOnly()
    {
        Panel first = Rename(WithSideNotch(405, 105), "first");
        Panel second = Mirrored(Rename(WithSideNotch(400, 100), "second"));
        Seam seam = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)).WithEaseBetween(Mm(5), SeamMark.Start, SeamMark.Notch(1));

        SeamWalk walk = seam.Walk(first, second);

        Assert.Equal([5, 0], walk.Stretches.Select(s => s.EaseAsked.Millimeters), Near);
        Assert.True(walk.Passed);

        // The first 52.5 mm of 105 meet the first 50 of 100; beyond the notch both go on evenly.
        Assert.Equal(50, walk.MatchOnSecond(Mm(52.5)).Millimeters, 1e-9);
        Assert.Equal(52.5, walk.MatchOnFirst(Mm(50)).Millimeters, 1e-9);
        Assert.Equal(300, walk.MatchOnSecond(Mm(305)).Millimeters, 1e-9);
    }

    [Fact]
    public void OverSecond_PartOfABand_IsWalkedFromNotchToNotch()
    {
        Panel band = Panel.Named(PanelName.Of("band"))
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.From(At(0, 0)).LineTo(At(0, -500)))
            .WithEdge(EdgeName.Of("end"), EdgeRole.Seam, CurvePath.From(At(0, -500)).LineTo(At(40, -500)))
            .WithEdge(EdgeName.Of("top"), EdgeRole.Opening, CurvePath.From(At(40, -500)).LineTo(At(40, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(40, 0)).LineTo(At(0, 0)))
            .WithNotch(EdgeName.Waist, Mm(200))
            .Make();
        Panel front = Rectangle(300, 500);
        Seam seam = Seam.Between(Of(front, EdgeName.Waist), Of(band, EdgeName.Waist)).OverSecond(SeamMark.Notch(1), SeamMark.End);

        SeamWalk walk = seam.Walk(front, band);

        Assert.True(walk.Passed, walk.Whole.ToString());
        Assert.Equal(300, walk.Whole.SecondLength.Millimeters, 1e-9);

        // The band runs counter-clockwise, the front clockwise: the same way, beginning at the notch.
        Assert.Equal(200, walk.MatchOnSecond(Mm(0)).Millimeters, 1e-9);
    }

    [Property(MaxTest = 200)]
    public Property Walk_OneEdgeAgainstTheOther_AgreesBothWays() => Prop.ForAll(Pairs, p =>
    {
        Panel b = Rename(p.B, "twin");
        Seam seam = Seam.Between(Of(p.A, p.EdgeA), Of(b, p.EdgeB)).WithEase(Mm(p.Ease)).Running(p.Run);
        SeamWalk there = seam.Walk(p.A, b);
        SeamWalk back = seam.Reversed().Walk(p.A, b);

        IEnumerable<WalkedStretch> turned = there.Run == SeamRun.Opposite ? back.Stretches.Reverse() : back.Stretches;
        double worst = there.Stretches.Zip(turned, (s, t) => new[]
        {
            s.FirstLength.Millimeters - t.SecondLength.Millimeters,
            s.SecondLength.Millimeters - t.FirstLength.Millimeters,
            s.EaseFound.Millimeters + t.EaseFound.Millimeters,
            s.EaseAsked.Millimeters + t.EaseAsked.Millimeters,
            s.Off.Millimeters + t.Off.Millimeters,
        }.Max(Math.Abs)).Max();
        return (there.Run == back.Run && there.Stretches.Count == back.Stretches.Count && there.Passed == back.Passed && worst < 1e-9).Label($"{worst} mm, {there.Run} and {back.Run}");
    });

    [Property(MaxTest = 200)]
    public Property Walk_AnyEdges_StretchesAddUpToTheWhole() => Prop.ForAll(Pairs, p =>
    {
        Panel b = Rename(p.B, "twin");
        SeamWalk walk = Seam.Between(Of(p.A, p.EdgeA), Of(b, p.EdgeB)).WithEase(Mm(p.Ease)).Running(p.Run).Walk(p.A, b);
        double first = walk.Stretches.Sum(s => s.FirstLength.Millimeters) - p.A.FindEdge(p.EdgeA).Closed().Length.Millimeters;
        double second = walk.Stretches.Sum(s => s.SecondLength.Millimeters) - b.FindEdge(p.EdgeB).Closed().Length.Millimeters;
        double asked = walk.Stretches.Sum(s => s.EaseAsked.Millimeters) - p.Ease;
        return (Math.Max(Math.Abs(first), Math.Max(Math.Abs(second), Math.Abs(asked))) < 1e-6).Label($"{first}, {second}, {asked}");
    });

    [Property(MaxTest = 200)]
    public Property Match_AnyPlace_ThereAndBackIsThePlace() => Prop.ForAll(
        (from pair in Pairs.Generator from share in Bodies.Range(0, 1) select (pair, share)).ToArbitrary(),
        t =>
        {
            Panel b = Rename(t.pair.B, "twin");
            SeamWalk walk = Seam.Between(Of(t.pair.A, t.pair.EdgeA), Of(b, t.pair.EdgeB)).WithEase(Mm(t.pair.Ease)).Running(t.pair.Run).Walk(t.pair.A, b);
            Length at = walk.Whole.FirstLength * t.share;
            Length other = walk.MatchOnSecond(at);
            double off = (walk.MatchOnFirst(other) - at).Millimeters;
            return (Math.Abs(off) < 1e-8 && other.Millimeters >= -1e-9 && other.Millimeters <= walk.Whole.SecondLength.Millimeters + 1e-9).Label($"{off} mm");
        });

    [Property(MaxTest = 100)]
    public Property Walk_PanelAndItsMirrorImage_MeetStretchByStretch() => Prop.ForAll(AnyPanel.WithEdge.ToArbitrary(), c =>
    {
        Panel mirrored = Rename(Mirrored(c.Panel), "twin");
        SeamWalk walk = SeamWalk.Between(c.Panel, c.Edge.Name, mirrored, c.Edge.Name);
        return (walk.Passed && walk.Run == SeamRun.SameWay).Label(string.Join("; ", walk.Stretches));
    });

    [Property(MaxTest = 100)]
    public Property Walk_SideSeamsOfAnySkirt_Meet() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from asked in Bodies.Options select asked.Apply(SkirtBlock.For(body)).Draft()).ToArbitrary(),
        block =>
        {
            SeamWalk walk = SeamWalk.Between(block.Back, EdgeName.SideSeam, block.Front, EdgeName.SideSeam);
            return (walk.Passed && walk.Stretches.Count == 2 && walk.Run == SeamRun.SameWay).Label(string.Join("; ", walk.Stretches));
        });

    [Property(MaxTest = 100)]
    public Property Walk_PanelsScaled_Scales() => Prop.ForAll(
        (from recipe in AnyPanel.Recipes from scale in Bodies.Range(0.5, 2) from index in Gen.Choose(0, 1000) select (recipe, scale, index)).ToArbitrary(),
        t =>
        {
            Panel small = t.recipe.Make();
            Panel large = t.recipe.Make(t.scale);
            EdgeName a = small.Edges[t.index % small.Edges.Count].Name;
            EdgeName b = small.Edges[(t.index + 1) % small.Edges.Count].Name;
            SeamWalk one = SeamWalk.Between(small, a, small, b);
            SeamWalk other = SeamWalk.Between(large, a, large, b);
            double worst = one.Stretches.Count == other.Stretches.Count && small.Darts.Count() == large.Darts.Count()
                ? one.Stretches.Zip(other.Stretches, (s, l) => Math.Abs((s.Off.Millimeters * t.scale) - l.Off.Millimeters)).Max()
                : double.PositiveInfinity;
            return (worst < 1e-6).Label($"{worst} mm off");
        });

    [Fact]
    public void ProposeNotches_EveryTenCentimetres_PairsThemAtEqualDistances()
    {
        SeamWalk walk = SeamWalk.Between(Rectangle(300, 400), EdgeName.SideSeam, Rename(Rectangle(300, 400), "twin"), EdgeName.SideSeam);

        IReadOnlyList<NotchPair> pairs = walk.ProposeNotchesEvery(Mm(100));

        // Both run clockwise: 100 mm from the top of one is 100 mm from the bottom of the other.
        Assert.Equal([100, 200, 300], pairs.Select(p => p.OnFirst.Millimeters), Near);
        Assert.Equal([300, 200, 100], pairs.Select(p => p.OnSecond.Millimeters), Near);
        Assert.Equal(300, pairs[0].FirstPosition.Y.Millimeters, 1e-9);
        Assert.Equal(100, pairs[0].SecondPosition.Y.Millimeters, 1e-9);
    }

    [Fact]
    public void ProposeNotches_AtThirdsOfAnEasedSeam_PairsThemWithTheirShareOfTheEase()
    {
        Panel first = Rename(Rectangle(300, 412), "first");
        Panel second = Rename(Mirrored(Rectangle(300, 400)), "second");
        SeamWalk walk = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)).WithEase(Mm(12)).Walk(first, second);

        NotchPair pair = walk.ProposeNotchesAt(Ratio.FromDecimalFractions(0.25)).Single();

        Assert.Equal(103, pair.OnFirst.Millimeters, 1e-9);
        Assert.Equal(100, pair.OnSecond.Millimeters, 1e-9);
    }

    // The hip line of a skirt lies 10 in below the waist (common practice, no source), and both side seams carry their notch there.
    [Fact]
    public void ProposeNotches_AtTheHipLevel_FindsTheNotchThatTheBlockHas()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        SeamWalk walk = SeamWalk.Between(block.Back, EdgeName.SideSeam, block.Front, EdgeName.SideSeam);

        NotchPair pair = walk.ProposeNotchesAtLevel(Length.FromInches(-10)).Single();

        Assert.Equal(block.Back.Notches[0].DistanceFromStart.Millimeters, pair.OnFirst.Millimeters, 1e-6);
        Assert.Equal(block.Front.Notches[0].DistanceFromStart.Millimeters, pair.OnSecond.Millimeters, 1e-6);
        Assert.Empty(walk.ProposeNotchesAtLevel(Length.FromInches(10)));
    }

    // By hand: darts of 20 mm and 12 mm with their middles at 60 and 130 of 190 stand at 50 and 100 of the closed edge.
    [Fact]
    public void ProposeNotches_AtDartLegs_StandAcrossFromTheClosedDarts()
    {
        Panel skirt = Rectangle(190, 300).TakeInDart(EdgeName.Waist.At(Mm(60)), Mm(20), Mm(110));
        skirt = skirt.TakeInDart(EdgeName.Waist.At(Mm(106)), Mm(12), Mm(90));
        SeamWalk walk = SeamWalk.Between(skirt, EdgeName.Waist, Rename(Rectangle(158, 100), "yoke"), EdgeName.Hem);

        IReadOnlyList<NotchPair> pairs = walk.ProposeNotchesAtDartLegs();

        Assert.Equal([50, 100], pairs.Select(p => p.OnFirst.Millimeters), Near);
        Assert.Equal([108, 58], pairs.Select(p => p.OnSecond.Millimeters), Near);
        Assert.Equal(50, pairs[0].FirstPosition.X.Millimeters, 1e-9);
        Assert.Equal(50, pairs[0].SecondPosition.X.Millimeters, 1e-9);
    }

    [Fact]
    public void WithNotches_Proposed_ThenWalkPairsThem()
    {
        Panel first = Rename(Rectangle(300, 412), "first");
        Panel second = Rename(Mirrored(Rectangle(300, 400)), "second");
        Seam seam = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)).WithEase(Mm(12));
        SeamWalk walk = seam.Walk(first, second);

        IReadOnlyList<Panel> notched = walk.WithNotches(walk.ProposeNotchesEvery(Mm(100)), firstCount: 2, secondCount: 1);

        SeamWalk again = seam.Walk([.. notched]);
        Assert.Equal(5, again.Stretches.Count);
        Assert.True(again.Passed, string.Join("\n", again.Stretches));
        Assert.All(notched[0].Notches, n => Assert.Equal(2, n.Count));
        Assert.Empty(first.Notches);
    }

    [Fact]
    public void Walk_EdgeThatIsNotThere_IsRefusedByCode()
    {
        Seam seam = Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam");

        ConstructionException e = Assert.Throws<ConstructionException>(() => seam.Walk(Rectangle(100, 100)));

        Assert.Equal(DiagnosticCode.SeamEdgeMissing, e.Code);
        Assert.Equal("back side", e.Landmark);
        Assert.Contains("side seam", e.Message);
    }

    [Fact]
    public void Walk_MarkThatIsNotThere_IsRefusedByCode()
    {
        Panel first = Rectangle(100, 100);
        Panel second = Rename(Rectangle(100, 100), "twin");
        Seam seam = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam));

        Assert.Equal(DiagnosticCode.SeamMarkMissing, Assert.Throws<ConstructionException>(() => seam.OverFirst(SeamMark.Start, SeamMark.Notch(1)).Walk(first, second)).Code);
        Assert.Equal(DiagnosticCode.SeamMarkMissing, Assert.Throws<ConstructionException>(() => seam.OverFirst(SeamMark.End, SeamMark.Start).Walk(first, second)).Code);
        Assert.Equal(DiagnosticCode.SeamMarkMissing, Assert.Throws<ConstructionException>(() => seam.OverFirst(SeamMark.Start, SeamMark.At(Mm(101))).Walk(first, second)).Code);
        Assert.Equal(
            DiagnosticCode.SeamMarkMissing,
            Assert.Throws<ConstructionException>(() => seam.WithEaseBetween(Mm(5), SeamMark.Start, SeamMark.Notch(3)).Walk(first, second)).Code);
    }

    [Fact]
    public void Between_EdgeAndItself_IsTheCallersMistake()
        => Assert.Throws<ArgumentException>(() => Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam)));

    [Fact]
    public void MatchOnSecond_PlaceOffTheEdge_IsRefused()
    {
        SeamWalk walk = SeamWalk.Between(Rectangle(100, 100), EdgeName.SideSeam, Rename(Rectangle(100, 100), "twin"), EdgeName.SideSeam);

        Assert.Equal(DiagnosticCode.PlaceOffEdge, Assert.Throws<ConstructionException>(() => walk.MatchOnSecond(Mm(100.1))).Code);
    }

    internal static Panel Rename(Panel panel, string name) => new(PanelName.Of(name), [.. panel.Edges], panel.Features);

    internal static Panel Mirrored(Panel panel) => panel.Transformed(Transform2D.Mirror(Line.Vertical(Point2D.Origin)));

    internal static EdgeOf Of(Panel panel, EdgeName edge) => EdgeOf.Panel(panel.Name, edge);

    internal static Panel WithSideNotch(double height, double notch)
    {
        Panel plain = Rectangle(300, height);
        return new Panel(plain.Name, [.. plain.Edges], plain.Features with { Notches = [new Notch(EdgeName.SideSeam, At(300, height - notch), notch, 1)] });
    }

    internal static bool Near(double a, double b) => Math.Abs(a - b) < 1e-6;
}
