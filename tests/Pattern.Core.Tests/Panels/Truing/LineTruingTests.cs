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
using static Pattern.Core.Tests.Panels.SeamWalkTests;

namespace Pattern.Core.Tests.Panels;

public class LineTruingTests
{
    private static readonly PanelName Second = PanelName.Of("second");

    // Two leaning panels: the hem corner at the side measures 90 + atan(lean / height) on each.
    private static Panel Leaning(double lean, string name) => Panel.Named(PanelName.Of(name))
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 400)).LineTo(At(200, 400)))
        .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 400)).LineTo(At(200 + lean, 0)))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200 + lean, 0)).LineTo(At(0, 0)))
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 400)))
        .Make();

    private static readonly EdgeOf[] Hem = [EdgeOf.Panel(PanelName.Of("first"), EdgeName.Hem), EdgeOf.Panel(Second, EdgeName.Hem)];

    private static readonly SeamPlan Plan =
        SeamPlan.Of(Seam.Between(EdgeOf.Panel(PanelName.Of("first"), EdgeName.SideSeam), EdgeOf.Panel(Second, EdgeName.SideSeam)));

    // By hand: atan(40 / 400) = 5.7106 and atan(20 / 400) = 2.8624 degrees lean, so the corners measure 84.2894 and 87.1376, together 171.4270: 8.5730 short, half each.
    [Fact]
    public void TrueLine_HemOverTwoLeaningSides_EachTakesHalf()
    {
        Panel first = Leaning(40, "first");
        Panel second = Mirrored(Leaning(20, "second"));

        TruingResult result = Plan.TrueLine(Hem, first, second);

        Finding joined = result.Corners.Single(c => c.Check == "joined line");
        Assert.Equal(171.4270, joined.RawBefore * 180 / Math.PI, 1e-3);
        Assert.Equal(180, joined.RawMeasured * 180 / Math.PI, 1e-6);
        Assert.Equal("first hem to second hem", joined.Place);
        Finding[] turned = [.. result.Corners.Where(c => c.Check == "corner at start")];
        Assert.Equal([4.28649, 4.28649], turned.Select(c => (c.RawMeasured - c.RawBefore) * 180 / Math.PI), (a, b) => Math.Abs(a - b) < 1e-4);
        Assert.Equal(2, result.Changes.Count);
        Assert.All(result.Changes, c => Assert.True(c.RawMeasured > c.RawBefore, "a bent hem is longer than a straight one"));

        // Ends stay, and so do all the other edges.
        Assert.Equal(first.FindEdge(EdgeName.Hem).Start, result.Panels[0].FindEdge(EdgeName.Hem).Start);
        Assert.Equal(first.FindEdge(EdgeName.Hem).End, result.Panels[0].FindEdge(EdgeName.Hem).End);
        Assert.Same(first.FindEdge(EdgeName.SideSeam), result.Panels[0].FindEdge(EdgeName.SideSeam));
        Assert.Equal(90, Corner(result.Panels[0], EdgeName.Hem, EdgeName.Centre), 1e-6);

        // Nothing is left to do.
        TruingResult again = Plan.TrueLine(Hem, [.. result.Panels]);
        Assert.False(again.HasChanged);
        Assert.Same(result.Panels[0], again.Panels[0]);
    }

    [Fact]
    public void TrueLine_OnePanelTakesAll_TheOtherIsTheSame()
    {
        Panel first = Leaning(40, "first");
        Panel second = Mirrored(Leaning(20, "second"));

        TruingResult result = Plan.TrueLine(new LineTruing { ShareOfFirst = Ratio.FromPercent(100) }, Hem, first, second);

        Assert.Same(second, result.Find(Second));
        Assert.Equal(180, Corner(result.Panels[0], EdgeName.SideSeam, EdgeName.Hem) + Corner(second, EdgeName.SideSeam, EdgeName.Hem), 1e-6);
    }

    // A pointed hem at the side, 150 degrees.
    [Fact]
    public void TrueLine_ToAnAngle_MeetsAtIt()
    {
        Panel first = Leaning(40, "first");
        Panel second = Mirrored(Leaning(20, "second"));

        TruingResult result = Plan.TrueLine(new LineTruing { JoinedAngle = Angle.FromDegrees(150) }, Hem, first, second);

        Assert.Equal(150, Corner(result.Panels[0], EdgeName.SideSeam, EdgeName.Hem) + Corner(result.Panels[1], EdgeName.SideSeam, EdgeName.Hem), 1e-6);
    }

    // Hem of a skirt of four gores: over three seams, the middle gores turned at both ends. They are drawn side by side, so all run clockwise.
    [Fact]
    public void TrueLine_OverFourGores_IsSmoothAtEverySeam()
    {
        PanelName[] names = [.. Enumerable.Range(1, 4).Select(i => PanelName.Of("gore " + i))];
        EdgeName left = EdgeName.Of("left");
        Panel[] gores = [.. names.Select((name, i) => Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 500)).LineTo(At(100, 500)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(100, 500)).LineTo(At(130 + (5 * i), 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(130 + (5 * i), 0)).LineTo(At(-30, 0)))
            .WithEdge(left, EdgeRole.Seam, CurvePath.From(At(-30, 0)).LineTo(At(0, 500)))
            .Make())];
        SeamPlan plan = SeamPlan.Of([.. Enumerable.Range(0, 3).Select(i => Seam.Between(EdgeOf.Panel(names[i], EdgeName.SideSeam), EdgeOf.Panel(names[i + 1], left)))]);

        TruingResult result = plan.TrueLine([.. names.Select(n => EdgeOf.Panel(n, EdgeName.Hem))], gores);

        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(180, Corner(result.Panels[i], EdgeName.SideSeam, EdgeName.Hem) + Corner(result.Panels[i + 1], EdgeName.Hem, left), 1e-6);
        }

        Assert.Equal(3, result.Corners.Count(c => c.Check == "joined line"));
    }

    [Fact]
    public void TrueLine_HemAndWaistOfAStraightSkirtBlock_AreTrueAlready()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();

        AssertTrueAlready(LineTruing.Default, EdgeName.Hem, block);
        AssertTrueAlready(LineTruing.Default, EdgeName.Waist, block);
    }

    // Cloth folds flat along a straight line only, so a pegged hem is level and cannot be square to its seams as well: both parts of it meet at a straight angle and
    // the lean of both side seams (both come in by 1 in). It is true at that angle; whoever asks for a straight one bends it.
    [Fact]
    public void TrueLine_HemAndWaistOfAPeggedSkirtBlock_AreTrueAtTheLeanOfItsSeams()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Fitted(SkirtFit.Usual).Draft();
        double leans = new[] { block.Back, block.Front }.Sum(LeanOfSideAtHem);

        Assert.InRange(leans, 1, 20);
        AssertTrueAlready(new LineTruing { JoinedAngle = Angle.FromDegrees(180 + leans) }, EdgeName.Hem, block);
        AssertTrueAlready(LineTruing.Default, EdgeName.Waist, block);

        TruingResult straight = block.Seams.TrueLine(Over(EdgeName.Hem), block.Back, block.Front);

        Assert.Equal(180, straight.Panels.Sum(panel => CornerAt(panel)), 1e-6);
        Assert.All([block.Back, block.Front], panel => Assert.True(straight.Find(panel.Name).FindEdge(EdgeName.Hem).SewnLength > panel.FindEdge(EdgeName.Hem).SewnLength));
    }

    // A dart turned into flare makes the front hem lean; trued over the side seam the joined hem has no corner and the side seams still agree.
    [Property(MaxTest = 50)]
    public Property TrueLine_HemAfterFlare_IsSmoothAndKeepsTheSideSeams() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from share in Bodies.Range(0.25, 0.75) select (body, share)).ToArbitrary(),
        c =>
        {
            SkirtBlock block = SkirtBlock.For(c.body).Draft();
            if (!block.Front.Darts.Any())
            {
                return true.ToProperty();
            }

            Panel front = block.Front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.At(Ratio.FromDecimalFractions(c.share)));
            TruingResult result = block.Seams.TrueLine([EdgeOf.Panel(PanelName.Front, EdgeName.Hem), EdgeOf.Panel(PanelName.Back, EdgeName.Hem)], block.Back, front);
            double joined = Corner(result.Panels[0], EdgeName.SideSeam, EdgeName.Hem) + Corner(result.Panels[1], EdgeName.SideSeam, EdgeName.Hem);
            return (Math.Abs(joined - 180) < 1e-6 && block.Seams.Check([.. result.Panels]).Passed).Label($"{joined} degrees");
        });

    // Any two edges beside any seam of any two panels.
    [Property(MaxTest = 200)]
    public Property TrueLine_AnyPanels_MeetsAtTheAngleAsked() => Prop.ForAll(
        (from a in AnyPanel.WithEdge from b in AnyPanel.WithEdge from share in Bodies.Range(0, 1) from angle in Bodies.Range(160, 200) select (a, b, share, angle)).ToArbitrary(),
        t =>
        {
            Panel a = t.a.Panel;
            Panel b = Rename(t.b.Panel, "twin");
            Seam seam = Seam.Between(Of(a, t.a.Edge.Name), Of(b, t.b.Edge.Name)).Running(SeamRun.Opposite);
            EdgeName lineA = Beside(a, t.a.Edge.Name, -1);
            EdgeName lineB = Beside(b, t.b.Edge.Name, 1);
            try
            {
                TruingResult result = SeamPlan.Of(seam).TrueLine(
                    new LineTruing { JoinedAngle = Angle.FromDegrees(t.angle), ShareOfFirst = Ratio.FromDecimalFractions(t.share) }, [Of(a, lineA), Of(b, lineB)], a, b);
                double joined = Corner(result.Panels[0], lineA, t.a.Edge.Name) + Corner(result.Panels[1], t.b.Edge.Name, lineB);
                return (Math.Abs(joined - t.angle) < 1e-5).Label($"{joined} for {t.angle}");
            }
            catch (ConstructionException e)
            {
                return (e.Code == DiagnosticCode.OutlineWouldCross).Label(e.Message).Collect(e.Code.ToString());
            }
        });

    [Fact]
    public void TrueLine_EdgesThatDoNotMeet_AreRefused()
    {
        Panel first = Leaning(40, "first");
        Panel second = Mirrored(Leaning(20, "second"));
        EdgeOf[] apart = [EdgeOf.Panel(PanelName.Of("first"), EdgeName.Hem), EdgeOf.Panel(Second, EdgeName.Waist)];

        ConstructionException e = Assert.Throws<ConstructionException>(() => Plan.TrueLine(apart, first, second));

        Assert.Equal(DiagnosticCode.LinesNotJoined, e.Code);
        Assert.Contains("first hem", e.Message);
        Assert.Equal(DiagnosticCode.SeamEdgeMissing, Assert.Throws<ConstructionException>(() => Plan.TrueLine(Hem, first)).Code);
        Assert.Throws<ArgumentOutOfRangeException>(() => new LineTruing { JoinedAngle = Angle.FromDegrees(5) });
    }

    private static EdgeOf[] Over(EdgeName edge) => [EdgeOf.Panel(PanelName.Back, edge), EdgeOf.Panel(PanelName.Front, edge)];

    private static void AssertTrueAlready(LineTruing truing, EdgeName edge, SkirtBlock block)
    {
        TruingResult result = block.Seams.TrueLine(truing, Over(edge), block.Back, block.Front);

        Assert.False(result.HasChanged);
        Assert.Same(block.Back, result.Panels[0]);
        Assert.Same(block.Front, result.Panels[1]);
    }

    // How far the side seam leans from plumb where it reaches the hem; it runs from the waist down.
    private static double LeanOfSideAtHem(Panel panel) => Math.Abs(Direction.Down.AngleTo(panel.FindEdge(EdgeName.SideSeam).Stretches[0].EndDirection).Degrees);

    private static double CornerAt(Panel panel) => Corner(panel, EdgeName.SideSeam, EdgeName.Hem);

    private static EdgeName Beside(Panel panel, EdgeName edge, int step)
    {
        int index = Enumerable.Range(0, panel.Edges.Count).Single(i => panel.Edges[i].Name == edge);
        return panel.Edges[(index + step + panel.Edges.Count) % panel.Edges.Count].Name;
    }

    // Measured on its own: by the signed area of the flattened outline, not by what the library takes for the inside.
    private static double Corner(Panel panel, EdgeName arriving, EdgeName leaving)
    {
        Direction back = panel.FindEdge(arriving).Stretches[^1].EndDirection.Reversed;
        Direction on = panel.FindEdge(leaving).Stretches[0].StartDirection;
        IEnumerable<Point2D> points = panel.Edges.SelectMany(e => e.Stretches.SelectMany((s, i) =>
            Enumerable.Range(0, 20).Select(k => s.PointAtLength(s.Length * (k / 20.0))).Concat(i < e.Darts.Count ? [e.Darts[i].StartLeg, e.Darts[i].Apex] : [])));
        Point2D[] all = [.. points];
        double area = Enumerable.Range(0, all.Length).Sum(i =>
            (all[i].X.Millimeters * all[(i + 1) % all.Length].Y.Millimeters) - (all[(i + 1) % all.Length].X.Millimeters * all[i].Y.Millimeters));
        double inside = area > 0 ? on.AngleTo(back).Degrees : back.AngleTo(on).Degrees;
        return inside >= 0 ? inside : inside + 360;
    }
}
