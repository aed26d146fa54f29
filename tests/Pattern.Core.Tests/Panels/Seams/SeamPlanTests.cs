using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;
using static Pattern.Core.Tests.Panels.SeamWalkTests;

namespace Pattern.Core.Tests.Panels;

public class SeamPlanTests
{
    private static readonly SkirtBlock Block = SkirtBlock.For(Bodies.Example).Draft();

    [Fact]
    public void Check_SkirtBlock_WalksItsSideSeamInTwoStretches()
    {
        CheckReport report = Block.Seams.Check(Block.Back, Block.Front);

        Assert.True(report.Passed, report.ToString());
        Assert.Equal(
            ["side seam notches that pair", "side seam stretches between notches", "side seam waist to hip", "side seam hip to hem"],
            report.Findings.Select(f => f.Check));
        Assert.All(report.Findings, f => Assert.Equal("block", f.Place));
    }

    // Cut from one drawing both halves agree, so there is nothing to find; that the edge is there, and sewn in no other seam, can fail.
    [Fact]
    public void ToMirrorImage_OfAnEdge_IsWalkedTheSameWayAndSewnOnce()
    {
        EdgeOf centre = EdgeOf.Panel(PanelName.Back, EdgeName.Centre);
        Seam seam = Seam.ToMirrorImage(centre).Named("centre back seam");
        SeamWalk walk = seam.Walk(Block.Back, Block.Front);

        Assert.True(seam.IsToMirrorImage);
        Assert.Equal("back centre to its mirror image", Seam.ToMirrorImage(centre).Name);
        Assert.Equal(SeamRun.SameWay, walk.Run);
        Assert.Equal(Block.Back.FindEdge(EdgeName.Centre).SewnLength, walk.Whole.FirstLength);
        Assert.Equal(walk.Whole.FirstLength, walk.Whole.SecondLength);
        Assert.Contains(Block.Seams.Seams, one => one.IsToMirrorImage && one.First == centre);
        Assert.Contains(SeamPlan.Of(seam).Check(Block.Front).Failures, finding => finding.Check == "centre back seam edges on the panels");
        Assert.Contains(SeamPlan.Of(seam, seam).Check(Block.Back).Failures, finding => finding.Check == "centre back seam sewn to another edge already");
        Assert.Equal(EdgeOf.Panel(PanelName.Front, EdgeName.Hem), SeamPlan.Of(seam).Renamed(centre, EdgeOf.Panel(PanelName.Front, EdgeName.Hem)).Seams[0].Second);
        Assert.Equal(Block.Back, Assert.Single(seam.TrueLengths(LengthTruing.Default, Block.Back).Panels));
        Assert.False(SeamPlan.Of(seam.WithEase(Mm(2))).Check(Block.Back).Passed);
    }

    [Fact]
    public void Report_SkirtBlock_HoldsTheFindingsOfItsPlan()
    {
        string[] plan = [.. Block.Seams.Check(Block.Back, Block.Front).Findings.Select(f => f.ToString())];

        Assert.All(plan, line => Assert.Contains(line, Block.Report.Findings.Select(f => f.ToString())));
    }

    // By hand: 400 mm against 405 mm with 3 mm asked for is 2 mm off; by hand 1/16 in = 1.5875 mm is accepted (common practice, no source).
    [Fact]
    public void Check_EdgesThatDifferByMoreThanTheEase_FailsSayingByHowMuch()
    {
        Panel first = Rename(Rectangle(300, 405), "first");
        Panel second = Rename(Mirrored(Rectangle(300, 400)), "second");
        SeamPlan plan = SeamPlan.Of(Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)).Named("side seam").WithEase(Mm(3)));

        Finding finding = Assert.Single(plan.Check(first, second).Failures);

        Assert.Equal("side seam start to end", finding.Check);
        Assert.Equal("block", finding.Place);
        Assert.Equal(405, ((Length)finding.Measured).Millimeters, 1e-9);
        Assert.Equal(403, ((Length)finding.Target).Millimeters, 1e-9);
        Assert.Equal(2, ((Length)finding.Difference).Millimeters, 1e-9);
        Assert.False(finding.PassedByHand);
        Assert.True(plan.Check(Rename(Rectangle(300, 403), "first"), second).Passed);
    }

    [Fact]
    public void Check_NotchWithoutTwin_FailsAndDoesNotGuess()
    {
        Panel first = Rename(WithSideNotch(400, 100), "first");
        Panel second = Rename(Mirrored(Rectangle(300, 400)), "second");
        SeamPlan plan = SeamPlan.Of(Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam)));

        CheckReport report = plan.Check(first, second);

        Finding finding = Assert.Single(report.Failures);
        Assert.Equal("first side to second side notches that pair", finding.Check);
        Assert.Equal(1, ((Scalar)finding.Target).Amount);
        Assert.Equal(0, ((Scalar)finding.Measured).Amount);
        Assert.Contains(report.Findings, f => f.Check == "first side to second side start to end" && f.Passed);
    }

    [Fact]
    public void Check_NotchLostOnBothPanels_IsReportedWhereStretchesAreNamed()
    {
        Panel Without(Panel panel) => new(panel.Name, [.. panel.Edges], panel.Features with { Notches = [] });

        Finding finding = Assert.Single(Block.Seams.Check(Without(Block.Back), Without(Block.Front)).Failures);

        Assert.Equal("side seam stretches between notches", finding.Check);
    }

    [Fact]
    public void Check_EdgeTakenAway_IsReportedNotThrown()
    {
        Finding finding = Assert.Single(Block.Seams.Check(Block.Back).Failures);

        Assert.Equal("side seam edges on the panels", finding.Check);
        Assert.Equal(1, ((Scalar)finding.Measured).Amount);
    }

    [Fact]
    public void Check_MarkTakenAway_IsReportedNotThrown()
    {
        Panel first = Rename(Rectangle(300, 400), "first");
        Panel second = Rename(Mirrored(Rectangle(300, 400)), "second");
        Seam seam = Seam.Between(Of(first, EdgeName.SideSeam), Of(second, EdgeName.SideSeam));

        Assert.Equal("first side to second side marks on the edges", Assert.Single(SeamPlan.Of(seam.OverFirst(SeamMark.Notch(1), SeamMark.End)).Check(first, second).Failures).Check);
        Assert.Equal("first side to second side marks on the edges", Assert.Single(SeamPlan.Of(seam.WithEaseBetween(Mm(2), SeamMark.Notch(1), SeamMark.End)).Check(first, second).Failures).Check);
    }

    // By hand: a band of 500 mm sewn to 300 mm and to 220 mm of waist cannot be: 20 mm of it would be sewn twice.
    [Fact]
    public void Check_BandSewnTwiceInAPlace_FailsSayingHowMuch()
    {
        Panel band = Rename(Mirrored(Rectangle(60, 500)), "band");
        Panel front = Rename(Rectangle(100, 300), "front");
        Panel back = Rename(Rectangle(100, 220), "back");
        SeamPlan plan = SeamPlan.Of(
            Seam.Between(Of(front, EdgeName.SideSeam), Of(band, EdgeName.SideSeam)).Named("front waist").OverSecond(SeamMark.Start, SeamMark.At(Mm(300))),
            Seam.Between(Of(back, EdgeName.SideSeam), Of(band, EdgeName.SideSeam)).Named("back waist").OverSecond(SeamMark.At(Mm(280)), SeamMark.End));

        Finding finding = Assert.Single(plan.Check(band, front, back).Failures);

        Assert.Equal("back waist sewn to another edge already", finding.Check);
        Assert.Equal("band", finding.Place);
        Assert.Equal(20, ((Length)finding.Measured).Millimeters, 1e-9);
    }

    [Fact]
    public void Renamed_PanelCutInTwo_KeepsThePlanTrue()
    {
        PanelPair cut = Block.Front.TurnDartIntoSeam(
            EdgeName.Waist.Dart(1), EdgeName.Hem.Middle, EdgeName.Of("panel seam"), PanelName.Of("centre front"), PanelName.Of("side front"));

        Assert.False(Block.Seams.Check(Block.Back, cut.Before, cut.Beyond).Passed);
        SeamPlan plan = Block.Seams
            .Renamed(EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam), Of(cut.Beyond, EdgeName.SideSeam))
            .With(Seam.Between(Of(cut.Before, EdgeName.Of("panel seam")), Of(cut.Beyond, EdgeName.Of("panel seam"))).Named("panel seam"));

        CheckReport report = plan.Check(Block.Back, cut.Before, cut.Beyond);
        Assert.True(report.Passed, report.ToString());
        Assert.Contains(report.Findings, f => f.Check == "panel seam start to end");
        Assert.Throws<ArgumentException>(() => Block.Seams.Renamed(EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam)));
        Assert.Empty(plan.Without(Of(cut.Beyond, EdgeName.SideSeam)).SeamsOf(Of(cut.Beyond, EdgeName.SideSeam)));
    }

    // Whatever is done to the darts, the side seams keep their lengths: the plan stays true.
    [Property(MaxTest = 60)]
    public Property Check_AfterMovingADart_StaysTrue() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from share in Bodies.Range(0.2, 0.8) select (body, share)).ToArbitrary(),
        c =>
        {
            SkirtBlock block = SkirtBlock.For(c.body).Draft();
            if (!block.Front.Darts.Any())
            {
                return true.ToProperty();
            }

            Panel front = block.Front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.At(Ratio.FromDecimalFractions(c.share)));
            CheckReport report = block.Seams.Check(block.Back, front);
            return report.Passed.Label(report.ToString());
        });

    // A walk and a check say the same.
    [Property(MaxTest = 100)]
    public Property Check_AnyTwoEdges_PassesExactlyWhereTheWalkDoes() => Prop.ForAll(
        (from a in AnyPanel.WithEdge from b in AnyPanel.WithEdge from close in Gen.Elements(false, true) select (a, b, close)).ToArbitrary(),
        t =>
        {
            Panel b = Rename(t.b.Panel, "twin");
            Length ease = t.close ? t.a.Edge.SewnLength - t.b.Edge.SewnLength : Length.Zero;
            Seam seam = Seam.Between(Of(t.a.Panel, t.a.Edge.Name), Of(b, t.b.Edge.Name)).WithEase(ease);
            return seam.Walk(t.a.Panel, b).Passed == SeamPlan.Of(seam).Check(t.a.Panel, b).Passed;
        });

    [Fact]
    public void AnyPanel_Generated_HasDartsOnManyEdges()
    {
        // The properties of this folder say little unless the panels that they are held against are what they claim to be.
        Panel[] panels = AnyPanel.Panels.Sample(400, 40).ToArray();

        Assert.Contains(panels, p => p.Darts.Count() == 4);
        Assert.Contains(panels, p => p.Edges.Any(e => e.Darts.Count >= 2));
        Assert.Contains(panels, p => !p.Darts.Any());
        Assert.Contains(panels, p => p.Edges.Any(e => e.Stretches.Any(s => s.Segments.Any(g => g.Kind == PathSegmentKind.Arc))));
        Assert.InRange(panels.Count(p => p.Darts.Any()), 200, 400);
        Assert.All(panels, p => Assert.True(p.SeamOutline().IsSimple()));
    }
}
