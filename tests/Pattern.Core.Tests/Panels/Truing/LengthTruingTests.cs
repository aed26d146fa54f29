using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;
using static Pattern.Core.Tests.Panels.SeamWalkTests;

namespace Pattern.Core.Tests.Panels;

public class LengthTruingTests
{
    private static readonly Panel First = Rename(WithSideNotch(405, 103), "first");
    private static readonly Panel Second = Mirrored(Rename(WithSideNotch(400, 100), "second"));
    private static readonly Seam Side = Seam.Between(Of(First, EdgeName.SideSeam), Of(Second, EdgeName.SideSeam)).Named("side seam");

    // By hand: 103 + 302 against 100 + 300. Shared half and half: 101.5 + 301 on both; the bottom corners move by 2.5 mm, up and down.
    [Fact]
    public void TrueLengths_BothGive_MeetHalfWay()
    {
        TruingResult result = Side.TrueLengths(First, Second);

        SeamWalk walk = Side.Walk([.. result.Panels]);
        Assert.True(walk.Passed, string.Join("\n", walk.Stretches));
        Assert.Equal([101.5, 301], walk.Stretches.Select(s => s.FirstLength.Millimeters), Near);
        Assert.Equal(At(300, 405), result.Panels[0].FindEdge(EdgeName.SideSeam).Start);
        Assert.Equal(2.5, result.Panels[0].FindEdge(EdgeName.SideSeam).End.Y.Millimeters, 1e-9);
        Assert.Equal(-2.5, result.Panels[1].FindEdge(EdgeName.SideSeam).End.Y.Millimeters, 1e-9);

        Finding first = result.Changes.First(c => c is { Check: "sewn length", Place: "first side" });
        Assert.Equal(405, first.RawBefore, 1e-9);
        Assert.Equal(402.5, first.RawMeasured, 1e-9);

        // The hem follows with its near end and stays straight: sqrt(300^2 + 2.5^2).
        Finding hem = result.Changes.First(c => c is { Check: "sewn length", Place: "second hem" });
        Assert.Equal(Math.Sqrt((300 * 300) + 6.25), hem.RawMeasured, 1e-6);
        Assert.Contains(result.Corners, c => c is { Check: "corner at end", Place: "first side" });
    }

    [Theory]
    [InlineData(SeamSide.First, 100, 300)]
    [InlineData(SeamSide.Second, 103, 302)]
    public void TrueLengths_OneGives_TheOtherPanelIsTheSame(SeamSide gives, double toNotch, double beyond)
    {
        TruingResult result = Side.TrueLengths(new LengthTruing { Gives = gives }, First, Second);

        SeamWalk walk = Side.Walk([.. result.Panels]);
        Assert.Equal([toNotch, beyond], walk.Stretches.Select(s => s.FirstLength.Millimeters), Near);
        Assert.Equal([toNotch, beyond], walk.Stretches.Select(s => s.SecondLength.Millimeters), Near);
        Assert.Same(gives == SeamSide.First ? Second : First, result.Find((gives == SeamSide.First ? Second : First).Name));
    }

    // Held at the notch, as at the hip of a skirt: the waist corner moves for the stretch above, the hem corner for the one below.
    [Fact]
    public void TrueLengths_HeldAtTheNotch_MovesBothEnds()
    {
        TruingResult result = Side.TrueLengths(new LengthTruing { Gives = SeamSide.First, Held = SeamMark.Notch(1) }, First, Second);

        Panel first = result.Panels[0];
        Assert.Equal(402, first.FindEdge(EdgeName.SideSeam).Start.Y.Millimeters, 1e-9);
        Assert.Equal(2, first.FindEdge(EdgeName.SideSeam).End.Y.Millimeters, 1e-9);
        Assert.Equal(0, first.Notches.Single().Position.DistanceTo(First.Notches.Single().Position).Millimeters, 1e-9);
        Assert.Equal(100, first.Notches.Single().DistanceFromStart.Millimeters, 1e-9);
        Assert.True(Side.Walk([.. result.Panels]).Passed);
    }

    [Fact]
    public void TrueLengths_OneStretchNamed_LeavesTheOther()
    {
        TruingResult result = Side.TrueLengths(new LengthTruing { Gives = SeamSide.First, Held = SeamMark.Notch(1), Stretches = [1] }, First, Second);

        SeamWalk walk = Side.Walk([.. result.Panels]);
        Assert.Equal([0, 2], walk.Stretches.Select(s => s.Off.Millimeters), Near);
        Assert.Same(First.FindEdge(EdgeName.Hem), result.Panels[0].FindEdge(EdgeName.Hem));
    }

    [Fact]
    public void TrueLengths_WithEase_LeavesTheEase()
    {
        Seam eased = Side.WithEase(Mm(8));

        TruingResult result = eased.TrueLengths(First, Second);

        SeamWalk walk = eased.Walk([.. result.Panels]);
        Assert.True(walk.Passed, string.Join("\n", walk.Stretches));
        Assert.Equal(8, walk.Whole.EaseFound.Millimeters, 1e-6);
    }

    [Fact]
    public void TrueLengths_SeamThatAgrees_ChangesNothing()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();

        TruingResult result = block.Seams.TrueLengths(block.Back, block.Front);

        Assert.False(result.HasChanged);
        Assert.Same(block.Back, result.Panels[0]);
        Assert.Same(block.Front, result.Panels[1]);
    }

    [Fact]
    public void TrueLengths_MoreThanThereIs_IsRefusedSayingHowMuch()
    {
        Panel tiny = Mirrored(Rename(WithSideNotch(400, 100), "second"));
        ConstructionException e = Assert.Throws<ConstructionException>(
            () => Side.WithEase(Mm(-450)).TrueLengths(new LengthTruing { Gives = SeamSide.First }, First, tiny));

        Assert.Equal(DiagnosticCode.TruingTakesTooMuch, e.Code);
        Assert.Equal("side", e.Landmark);
        Assert.Equal(455, e.Measured!.Value.Millimeters, 1e-6);
        Assert.Equal(405, e.Allowed!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void TrueLengths_NotchesThatDoNotPair_AreRefused()
    {
        Panel without = Mirrored(Rename(Rectangle(300, 400), "second"));

        ConstructionException e = Assert.Throws<ConstructionException>(() => Side.TrueLengths(First, without));

        Assert.Equal(DiagnosticCode.NotchesUnpaired, e.Code);
        Assert.Contains("side seam", e.Message);
        Assert.Equal(
            DiagnosticCode.SeamMarkMissing,
            Assert.Throws<ConstructionException>(() => Side.TrueLengths(new LengthTruing { Held = SeamMark.Notch(4) }, First, Second)).Code);
    }

    [Fact]
    public void TrueLengths_FixedPlaceOnABand_IsRefusedAndANotchSlides()
    {
        Panel band = Mirrored(Rename(Rectangle(300, 600), "band"));
        Panel notched = new(band.Name, [.. band.Edges], band.Features with { Notches = [new Notch(EdgeName.SideSeam, At(-300, 200), 400, 1)] });
        Panel front = Rename(Rectangle(300, 410), "first");
        Seam seam = Seam.Between(Of(front, EdgeName.SideSeam), Of(band, EdgeName.SideSeam));
        var bandGives = new LengthTruing { Gives = SeamSide.Second };

        ConstructionException e = Assert.Throws<ConstructionException>(
            () => seam.OverSecond(SeamMark.Start, SeamMark.At(Mm(400))).TrueLengths(bandGives, front, band));
        Assert.Equal(DiagnosticCode.SeamEndFixed, e.Code);

        TruingResult result = seam.OverSecond(SeamMark.Start, SeamMark.Notch(1)).TrueLengths(bandGives, front, notched);
        Assert.Equal(410, result.Find(band.Name).Notches.Single().DistanceFromStart.Millimeters, 1e-9);
        Assert.Equal(600, result.Find(band.Name).FindEdge(EdgeName.SideSeam).SewnLength.Millimeters, 1e-9);
    }

    // Any two edges of any two panels, nearly as long as each other by ease: they agree afterwards, whoever gives, wherever held.
    [Property(MaxTest = 300)]
    public Property TrueLengths_AnyEdges_AgreeAfterwards() => Prop.ForAll(
        (from a in AnyPanel.WithEdge
         from b in AnyPanel.WithEdge
         from off in Bodies.Range(-8, 8)
         from gives in Gen.Elements(SeamSide.Both, SeamSide.First, SeamSide.Second)
         from share in Bodies.Range(0, 1)
         from held in Gen.Elements(SeamMark.Start, SeamMark.End)
         from run in Gen.Elements(SeamRun.Found, SeamRun.SameWay, SeamRun.Opposite)
         select (a, b, off, asked: new LengthTruing { Gives = gives, ShareOfFirst = Ratio.FromDecimalFractions(share), Held = held }, run)).ToArbitrary(),
        t =>
        {
            Panel a = Without(t.a.Panel, t.a.Edge.Name);
            Panel b = Without(Rename(t.b.Panel, "twin"), t.b.Edge.Name);
            Seam seam = Seam.Between(Of(a, t.a.Edge.Name), Of(b, t.b.Edge.Name)).Running(t.run)
                .WithEase(t.a.Edge.SewnLength - t.b.Edge.SewnLength + Mm(t.off));
            try
            {
                TruingResult result = seam.TrueLengths(t.asked, a, b);
                SeamWalk walk = seam.Walk([.. result.Panels]);
                bool others = t.asked.Gives == SeamSide.Both || ReferenceEquals(result.Find((t.asked.Gives == SeamSide.First ? b : a).Name), t.asked.Gives == SeamSide.First ? b : a);
                return (walk.Passed && others && Math.Abs(walk.Whole.Off.Millimeters) < 1e-6).Label(string.Join("; ", walk.Stretches));
            }
            catch (ConstructionException e)
            {
                return (e.Code is DiagnosticCode.OutlineWouldCross or DiagnosticCode.TruingTakesTooMuch or DiagnosticCode.PlaceOffEdge).Label(e.Message).Collect(e.Code.ToString());
            }
        });

    // The same panels, notched in pairs that are a few millimetres off: every stretch agrees afterwards.
    [Property(MaxTest = 200)]
    public Property TrueLengths_NotchesAFewMillimetresOff_AgreeStretchByStretch() => Prop.ForAll(
        (from a in AnyPanel.WithEdge
         from shifts in Gen.ArrayOf(Bodies.Range(-3, 3), 3)
         from gives in Gen.Elements(SeamSide.Both, SeamSide.First, SeamSide.Second)
         from held in Gen.Elements(SeamMark.Start, SeamMark.Notch(1), SeamMark.Notch(2), SeamMark.End)
         select (a, shifts, asked: new LengthTruing { Gives = gives, Held = held })).ToArbitrary(),
        t =>
        {
            EdgeName edge = t.a.Edge.Name;
            Panel a = Notched(Without(t.a.Panel, edge), edge, [0, 0]);
            Panel b = Notched(Rename(Mirrored(Without(t.a.Panel, edge)), "twin"), edge, t.shifts);
            Seam seam = Seam.Between(Of(a, edge), Of(b, edge));
            try
            {
                TruingResult result = seam.TrueLengths(t.asked, a, b);
                SeamWalk walk = seam.Walk([.. result.Panels]);
                return (walk.Passed && walk.Stretches.Count == 3).Label(string.Join("; ", walk.Stretches));
            }
            catch (ConstructionException e)
            {
                return (e.Code is DiagnosticCode.OutlineWouldCross or DiagnosticCode.TruingTakesTooMuch).Label(e.Message).Collect(e.Code.ToString());
            }
        });

    private static Panel Without(Panel panel, EdgeName edge)
        => new(panel.Name, [.. panel.Edges], panel.Features with { Notches = [.. panel.Notches.Where(n => n.Edge != edge)] });

    private static Panel Notched(Panel panel, EdgeName name, double[] shifts)
    {
        PanelEdge edge = panel.FindEdge(name);
        double third = edge.SewnLength.Millimeters / 3;
        Notch At(double mm) => new(name, edge.PointAtSewnMm(mm), mm, 1);
        return new Panel(panel.Name, [.. panel.Edges], panel.Features with { Notches = [.. panel.Notches, At(third + shifts[0]), At((2 * third) + shifts[1])] });
    }
}
