using System;
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

public class PanelDartTests
{
    private const double Close = 1e-6;

    // Worked by hand: sin(a/2) = 15/140, so the angle is 12.3034 degrees and 2 x 160 sin(a/2) = 30 x 160/140 = 34.2857 mm.
    [Fact]
    public void TransferDart_ThirtyMillimetresOn140_OpensThirtyFourPointTwoNineOn160()
    {
        double length = Math.Sqrt((140 * 140) - (15 * 15));
        Panel panel = Rectangle(320, 300).TakeInDart(EdgeName.Waist.Middle, Mm(30), Mm(length));

        Panel moved = panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.SideSeam.At(Mm(length)));

        Dart dart = Assert.Single(moved.Darts);
        Assert.Equal(140, panel.Darts.Single().LegLength(Toward.Start).Millimeters, Close);
        Assert.Equal(160, dart.LegLength(Toward.End).Millimeters, Close);
        Assert.Equal(160, dart.LegLength(Toward.Start).Millimeters, Close);
        Assert.Equal(34.285714, dart.Intake.Millimeters, 1e-5);
    }

    // A textbook pivot (common practice, no source): the bust dart goes from the waist to every other edge. By hand: the angle is 2 asin(22.5 / leg), the
    // intake at the new place 2 d sin(angle / 2), d being the distance from the bust point (95, 190) to the place on the untouched outline.
    [Theory]
    [InlineData("shoulder", 0.5, 130, 391)]
    [InlineData("neckline", 0.5, double.NaN, double.NaN)]
    [InlineData("centre", 0.5, 0, 168)]
    [InlineData("waist", 0.1, double.NaN, double.NaN)]
    [InlineData("underarm", 0.5, 217.5, 113.5)]
    [InlineData("armhole", 0.5, double.NaN, double.NaN)]
    public void TransferDart_BustDart_PivotsToEveryEdge(string edge, double share, double x, double y)
    {
        Panel panel = BodiceWithBustDart();
        EdgePlace place = EdgeName.Of(edge).At(Ratio.FromDecimalFractions(share));
        Dart before = panel.Darts.Single();
        PanelEdge target = panel.FindEdge(place.Edge);
        Point2D at = double.IsNaN(x) ? target.PointAtSewnMm(share * target.SewnLength.Millimeters) : At(x, y);
        double reach = at.DistanceTo(At(95, 190)).Millimeters;
        double leg = Math.Sqrt((before.Length.Millimeters * before.Length.Millimeters) + (22.5 * 22.5));
        double expected = 2 * reach * Math.Sin(Math.Asin(22.5 / leg));

        Panel moved = panel.TransferDart(EdgeName.Waist.Dart(1), place);

        Dart dart = Assert.Single(moved.Darts);
        Assert.Equal(place.Edge, dart.Name.Edge);
        Assert.Equal(expected, dart.Intake.Millimeters, Close);
        Assert.Equal(reach, dart.LegLength(Toward.Start).Millimeters, Close);
        AssertOnlyMoved(panel, moved);
    }

    [Fact]
    public void TransferDart_BySlashAndSpread_GivesTheSameOutline()
    {
        Panel panel = BodiceWithBustDart();
        EdgePlace shoulder = EdgeName.Shoulder.Middle;

        // Cut the panel apart along dart and slash, and lay the side part against the centre part so that the dart's legs meet.
        PanelPair cut = panel.TurnDartIntoSeam(EdgeName.Waist.Dart(1), shoulder, EdgeName.Of("slash"), PanelName.Of("centre part"), PanelName.Of("side part"));
        Dart dart = panel.Darts.Single();
        Angle closing = (dart.EndLeg - dart.Apex).AngleTo(dart.StartLeg - dart.Apex);
        Panel laid = cut.Beyond.Transformed(Transform2D.Rotation(dart.Apex, closing));

        Panel pivoted = panel.TransferDart(EdgeName.Waist.Dart(1), shoulder);

        Assert.True(pivoted.FindEdge(EdgeName.Underarm).Start.DistanceTo(laid.FindEdge(EdgeName.Underarm).Start).Millimeters < Close);
        Assert.True(pivoted.FindEdge(EdgeName.Armhole).End.DistanceTo(laid.FindEdge(EdgeName.Armhole).End).Millimeters < Close);
        Assert.True(pivoted.FindEdge(EdgeName.Neckline).Start.DistanceTo(cut.Before.FindEdge(EdgeName.Neckline).Start).Millimeters < Close);
        Assert.Equal(
            laid.SeamOutline().SignedArea.SquareMillimeters + cut.Before.SeamOutline().SignedArea.SquareMillimeters,
            pivoted.SeamOutline().SignedArea.SquareMillimeters,
            1e-5);
    }

    [Fact]
    public void TransferDart_ThereAndBack_Restores()
    {
        Panel panel = BodiceWithBustDart();

        Panel there = panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Underarm.Middle);
        Panel back = there.TransferDart(EdgeName.Underarm.Dart(1), EdgeName.Waist.At(panel.FindEdge(EdgeName.Waist).Stretches[0].Length));

        AssertSamePanel(panel, back, Close);
    }

    [Property(MaxTest = 300)]
    public Property TransferPartOfDart_AnywhereByAnyShare_KeepsEverythingButTheDart()
        => Prop.ForAll(Transfers.ToArbitrary(), t =>
        {
            Panel panel = t.Panel;
            Dart dart = panel.Darts.First();
            try
            {
                Panel moved = panel.TransferPartOfDart(dart.Name, t.Place, Ratio.FromDecimalFractions(t.Share));
                AssertOnlyMoved(panel, moved);
                return (Math.Abs(TotalAngle(panel) - TotalAngle(moved)) < 1e-9).Label("angles");
            }
            catch (ConstructionException e) when (Refusals.HasNoWay(e))
            {
                return (e.Step is not null && e.Landmark is not null).Label(e.Message);
            }
        });

    [Property(MaxTest = 200)]
    public Property TransferDart_ThereAndBack_RestoresAnyPanel()
        => Prop.ForAll(Transfers.ToArbitrary(), t =>
        {
            Panel panel = t.Panel;
            Dart dart = panel.Darts.First();
            Panel there;
            try
            {
                there = panel.TransferDart(dart.Name, t.Place);
            }
            catch (ConstructionException refusal) when (Refusals.HasNoWay(refusal))
            {
                return true.Label("refused");
            }

            double stood = panel.FindEdge(dart.Name.Edge).Stretches.Take(dart.Number).Sum(s => s.Length.Millimeters);
            Dart moved = there.FindEdge(t.Place.Edge).Darts.MinBy(d => d.Apex.DistanceTo(dart.Apex).Millimeters)!;
            Panel back = there.TransferDart(moved.Name, dart.Name.Edge.At(Mm(stood)));
            AssertSamePanel(panel, back, 1e-5);
            return true.Label("restored");
        });

    [Property(MaxTest = 200)]
    public Property SplitDart_AnyDart_KeepsTheTotalAngleAndMergesAgain()
        => Prop.ForAll((from block in SkirtPanels from count in Gen.Choose(2, 4) from spacing in Bodies.Range(8, 25) select (block, count, spacing)).ToArbitrary(), t =>
        {
            Dart dart = t.block.Darts.First();
            Panel split;
            try
            {
                split = t.block.SplitDart(dart.Name, t.count, Mm(t.spacing));
            }
            catch (ConstructionException refusal) when (Refusals.HasNoWay(refusal))
            {
                return true.Label("refused");
            }

            AssertOnlyMoved(t.block, split);
            Dart[] parts = [.. split.Darts.Where(d => d.Apex.DistanceTo(dart.Apex).Millimeters < 0.001)];
            Assert.Equal(t.count, parts.Length);
            Assert.All(parts, p => Assert.Equal(dart.Angle.Radians / t.count, p.Angle.Radians, 1e-9));

            Panel merged = split;
            for (int i = 1; i < t.count; i++)
            {
                merged = merged.MergeDarts(parts[0].Name, parts[1].Name);
            }

            AssertSamePanel(t.block, merged, 1e-5);
            return true.Label("split and merged");
        });

    [Fact]
    public void TransferPartOfDart_NoShare_ChangesNothing()
    {
        Panel panel = BodiceWithBustDart();

        Assert.Same(panel, panel.TransferPartOfDart(EdgeName.Waist.Dart(1), EdgeName.Underarm.Middle, Ratio.Zero));
        Assert.Same(panel, panel.TakeInDart(EdgeName.Shoulder.Middle, Length.Zero, Mm(60)));
        Assert.Same(panel, panel.SwingDart(EdgeName.Waist.Dart(1), Angle.Zero));
        Assert.Same(panel, panel.OpenDart(EdgeName.Shoulder.Middle, EdgeName.Centre.Middle, Length.Zero));
        Assert.Same(panel, panel.TurnDartIntoFlare(EdgeName.Waist.Dart(1), EdgeName.Underarm.Middle, Ratio.Zero));
    }

    [Fact]
    public void TakeInDart_OnACurve_StandsTheIntakeApartWithEqualLegs()
    {
        Panel panel = Bodice().TakeInDart(EdgeName.Armhole.Middle, Mm(20), Mm(40));

        Dart dart = Assert.Single(panel.Darts);
        Assert.Equal(20, dart.Intake.Millimeters, 1e-9);
        Assert.Equal(40, dart.Length.Millimeters, 1e-9);
        Assert.Equal(dart.LegLength(Toward.Start).Millimeters, dart.LegLength(Toward.End).Millimeters, 1e-9);
        Assert.True(panel.FindEdge(EdgeName.Armhole).SewnLength < Bodice().FindEdge(EdgeName.Armhole).SewnLength);
    }

    [Fact]
    public void CloseDart_EndingInsideThePanel_IsRefusedWithTheDistance()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(() => BodiceWithBustDart().CloseDart(EdgeName.Waist.Dart(1)));

        Assert.Equal(DiagnosticCode.DartNotFlat, e.Code);

        // The bust point (95, 190) is 95 mm from the centre line x = 0, the nearest edge.
        Assert.Equal(95, e.Measured!.Value.Millimeters, Close);
    }

    [Fact]
    public void OpenDartThenCloseDart_Restores()
    {
        Panel panel = Bodice();

        Panel opened = panel.OpenDart(EdgeName.Waist.Middle, EdgeName.Shoulder.Middle, Mm(40));
        Dart dart = Assert.Single(opened.Darts);
        Assert.Equal(40, dart.Intake.Millimeters, Close);
        Assert.Equal(panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters, opened.FindEdge(EdgeName.Waist).SewnLength.Millimeters, Close);

        AssertSamePanel(panel, opened.CloseDart(dart.Name), Close);
    }

    [Fact]
    public void TurnDartIntoFlare_AllOfIt_WidensTheHemAndKeepsTheWaist()
    {
        Panel skirt = SkirtBlock.For(Bodies.Example).Draft().Back;

        Panel flared = skirt.TurnDartIntoFlare(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle, Ratio.FromDecimalFractions(1));

        Assert.Empty(flared.Darts);
        Assert.Equal(skirt.FindEdge(EdgeName.Waist).SewnLength.Millimeters, flared.FindEdge(EdgeName.Waist).SewnLength.Millimeters, Close);
        Assert.Equal(skirt.FindEdge(EdgeName.SideSeam).SewnLength.Millimeters, flared.FindEdge(EdgeName.SideSeam).SewnLength.Millimeters, Close);

        // The opening at the hem is the arc's chord: 2 d sin(angle / 2), d from the apex to the middle of the hem.
        Dart dart = skirt.Darts.Single();
        Point2D hem = skirt.FindEdge(EdgeName.Hem).PointAtSewnMm(skirt.FindEdge(EdgeName.Hem).SewnLength.Millimeters / 2);
        double opening = 2 * dart.Apex.DistanceTo(hem).Millimeters * Math.Sin(dart.Angle.Radians / 2);
        Assert.InRange((flared.FindEdge(EdgeName.Hem).SewnLength - skirt.FindEdge(EdgeName.Hem).SewnLength).Millimeters, opening, opening * 1.02);
    }

    [Fact]
    public void TurnDartIntoGathers_LetsTheIntakeIntoTheEdge()
    {
        Panel panel = BodiceWithBustDart();

        Panel gathered = panel.TurnDartIntoGathers(EdgeName.Waist.Dart(1));

        Assert.Empty(gathered.Darts);
        Assert.Equal(45, (gathered.FindEdge(EdgeName.Waist).SewnLength - panel.FindEdge(EdgeName.Waist).SewnLength).Millimeters, Close);
    }

    [Fact]
    public void TurnDartIntoTuck_KeepsTheIntakeAndStitchesLess()
    {
        Panel tucked = BodiceWithBustDart().TurnDartIntoTuck(EdgeName.Waist.Dart(1), Mm(50));

        Dart dart = Assert.Single(tucked.Darts);
        Assert.True(dart.IsTuck);
        Assert.Equal(50, dart.StitchedLength.Millimeters, Close);
        Assert.Equal(45, dart.Intake.Millimeters, Close);
        ConstructionException e = Assert.Throws<ConstructionException>(() => BodiceWithBustDart().TurnDartIntoTuck(EdgeName.Waist.Dart(1), Mm(250)));
        Assert.Equal(DiagnosticCode.TuckTooLong, e.Code);
    }

    [Fact]
    public void TurnDartIntoSeam_MakesTwoPanelsWithEqualSeams()
    {
        Panel panel = BodiceWithBustDart();
        var seam = EdgeName.Of("panel seam");

        PanelPair parts = panel.TurnDartIntoSeam(EdgeName.Waist.Dart(1), EdgeName.Shoulder.Middle, seam, PanelName.Of("centre front"), PanelName.Of("side front"));

        Assert.Equal(parts.Before.FindEdge(seam).SewnLength.Millimeters, parts.Beyond.FindEdge(seam).SewnLength.Millimeters, Close);
        foreach (EdgeName split in new[] { EdgeName.Waist, EdgeName.Shoulder })
        {
            Assert.Equal(
                panel.FindEdge(split).SewnLength.Millimeters,
                (parts.Before.FindEdge(split).SewnLength + parts.Beyond.FindEdge(split).SewnLength).Millimeters,
                Close);
        }

        Assert.Equal(
            Math.Abs(panel.SeamOutline().SignedArea.SquareMillimeters),
            Math.Abs(parts.Before.SeamOutline().SignedArea.SquareMillimeters) + Math.Abs(parts.Beyond.SeamOutline().SignedArea.SquareMillimeters),
            1e-5);
        Assert.Single(parts.Beyond.Notches, n => n.Edge == EdgeName.Underarm);
        Assert.Equal(20, parts.Before.Grainline.Start.X.Millimeters, Close);
        Assert.Equal(0, parts.Beyond.Grainline.Direction.AngleTo(panel.Grainline.Direction).Degrees, Close);
    }

    [Fact]
    public void CutApart_Yoke_PartsThePanel()
    {
        PanelPair parts = Rectangle(320, 300).CutApart(EdgeName.SideSeam.At(Mm(125)), EdgeName.Centre.At(Mm(175)), EdgeName.Of("yoke"), PanelName.Of("yoke"), PanelName.Of("skirt"));

        Assert.Equal(320 * 125, Math.Abs(parts.Before.SeamOutline().SignedArea.SquareMillimeters), Close);
        Assert.Equal(320 * 175, Math.Abs(parts.Beyond.SeamOutline().SignedArea.SquareMillimeters), Close);
    }

    [Fact]
    public void WithDartLength_AsItIs_IsTheSamePanel()
    {
        Panel panel = Rectangle(200, 300).TakeInDart(EdgeName.Waist.Middle, Mm(20), Mm(120));

        Assert.Same(panel, panel.WithDartLength(EdgeName.Waist.Dart(1), panel.Darts.Single().Length));
        Assert.NotSame(panel, panel.WithDartLength(EdgeName.Waist.Dart(1), Mm(119.5)));
    }

    [Fact]
    public void WithDartLength_KeepsIntakeAndMiddleLine()
    {
        Panel panel = BodiceWithBustDart();
        Dart before = panel.Darts.Single();

        Dart after = panel.WithDartLength(EdgeName.Waist.Dart(1), before.Length - Mm(25)).Darts.Single();

        Assert.Equal(before.Intake.Millimeters, after.Intake.Millimeters, Close);
        Assert.Equal(before.Length.Millimeters - 25, after.Length.Millimeters, Close);
        Assert.Equal(25, before.Apex.DistanceTo(after.Apex).Millimeters, Close);
    }

    [Fact]
    public void SwingDart_KeepsIntakeAndEqualLegs()
    {
        Panel panel = BodiceWithBustDart();
        Dart before = panel.Darts.Single();

        Panel swung = panel.SwingDart(EdgeName.Waist.Dart(1), Angle.FromDegrees(8));

        Dart after = swung.Darts.Single();
        Assert.Equal(before.Intake.Millimeters, after.Intake.Millimeters, Close);
        Assert.Equal(after.LegLength(Toward.Start).Millimeters, after.LegLength(Toward.End).Millimeters, Close);
        Assert.Equal(panel.FindEdge(EdgeName.Waist).End, swung.FindEdge(EdgeName.Waist).End);
    }

    [Theory]
    [InlineData(Toward.Start)]
    [InlineData(Toward.End)]
    public void Cap_FoldedEitherWay_LiesOnTheSeamLine(Toward toward)
    {
        Panel panel = Bodice()
            .TakeInDart(EdgeName.Waist.At(Mm(55)), Mm(16), Mm(100))
            .TakeInDart(EdgeName.Waist.At(Mm(85)), Mm(16), Mm(100))
            .WithDartPressed(EdgeName.Waist.Dart(1), toward)
            .WithDartPressed(EdgeName.Waist.Dart(2), toward);

        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        Assert.Equal(2, waist.Darts.Count);
        for (int i = 0; i < 2; i++)
        {
            Assert.True(waist.Darts[i].Cap.Start.DistanceTo(waist.Darts[i].StartLeg).Millimeters < Close);
            Assert.True(waist.Darts[i].Cap.End.DistanceTo(waist.Darts[i].EndLeg).Millimeters < Close);
            Assert.True(CheckList.CapOffSeamMm(waist, i) < 0.01);
        }
    }

    // An edge that is an arc: the cap mirrors arcs as arcs, and has to lie on the arc again once folded.
    [Fact]
    public void Cap_OnACircularEdge_LiesOnTheArc()
    {
        CurvePath arc = CurvePath.From(At(0, 300)).ArcAround(At(150, 80), Angle.FromDegrees(-68));
        Panel panel = Panel.Named(PanelName.Of("arc"))
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, arc)
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(arc.End).LineTo(At(300, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(300, 0)).LineTo(At(0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 300)))
            .Make()
            .TakeInDart(EdgeName.Waist.Middle, Mm(25), Mm(120));

        Assert.Equal(0, CheckList.CapOffSeamMm(panel.FindEdge(EdgeName.Waist), 0), 1e-6);
        Assert.All(panel.Darts.Single().Cap.Segments, s => Assert.Equal(PathSegmentKind.Arc, s.Kind));
    }

    [Fact]
    public void TakeInInsideDart_TravelsWithATransfer()
    {
        Panel panel = BodiceWithBustDart(30).TakeInInsideDart(At(170, 180), At(165, 60), Mm(10), Ratio.FromDecimalFractions(0.5));

        Panel moved = panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Shoulder.Middle);

        InsideDart before = panel.InsideDarts.Single();
        InsideDart after = moved.InsideDarts.Single();
        Assert.Equal(before.Length.Millimeters, after.Length.Millimeters, Close);
        Assert.Equal(before.FirstApex.DistanceTo(At(95, 190)).Millimeters, after.FirstApex.DistanceTo(At(95, 190)).Millimeters, Close);
        Assert.True(before.FirstApex.DistanceTo(after.FirstApex).Millimeters > 5);
    }

    [Fact]
    public void BadInput_IsRefusedByCodePlaceMeasuredAndAllowed()
    {
        Panel panel = BodiceWithBustDart();

        AssertRefused(DiagnosticCode.ApexOutsidePanel, () => Bodice().TakeInDart(EdgeName.Waist.Middle, Mm(20), Mm(600)));
        AssertRefused(DiagnosticCode.DartWiderThanEdge, () => Bodice().TakeInDart(EdgeName.Shoulder.Middle, Mm(130), Mm(60)));
        AssertRefused(DiagnosticCode.TransferOntoItself, () => panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Waist.At(panel.FindEdge(EdgeName.Waist).Stretches[0].Length)));
        AssertRefused(DiagnosticCode.PlaceOffEdge, () => panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Shoulder.At(Mm(0))));
        AssertRefused(DiagnosticCode.PlaceOffEdge, () => panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Shoulder.At(Mm(900))));
        AssertRefused(DiagnosticCode.DartNotOnEdge, () => panel.TransferDart(EdgeName.Waist.Dart(2), EdgeName.Shoulder.Middle));
        AssertRefused(DiagnosticCode.EdgeNotOnPanel, () => panel.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle));
        AssertRefused(DiagnosticCode.DartsApart, () => panel.TakeInDart(EdgeName.Shoulder.Middle, Mm(10), Mm(50)).MergeDarts(EdgeName.Waist.Dart(1), EdgeName.Shoulder.Dart(1)));

        // A dart from the underarm stands between the bust point and the side of the waist.
        AssertRefused(DiagnosticCode.CutCrossesDart, () => panel
            .TakeInDart(EdgeName.Underarm.At(Mm(40)), Mm(10), Mm(80))
            .TransferDart(EdgeName.Waist.Dart(1), EdgeName.Underarm.At(Mm(5))));

        // The armhole cuts in between the bust point and the top of the underarm seam seen from high on the shoulder.
        AssertRefused(DiagnosticCode.CutLeavesPanel, () => Bodice()
            .TakeInDart(EdgeName.Shoulder.At(Mm(20)), Mm(6), Mm(60))
            .TransferDart(EdgeName.Shoulder.Dart(1), EdgeName.Underarm.At(Mm(205))));
    }

    [Fact]
    public void Make_OutlineThatCrossesItself_IsRefusedWithTheEdges()
    {
        PanelBuilder builder = Panel.Named(PanelName.Of("bow tie"))
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 0)).LineTo(At(100, 100)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(100, 100)).LineTo(At(100, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(100, 0)).LineTo(At(0, 100)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 100)).LineTo(At(0, 0)));

        ConstructionException e = Assert.Throws<ConstructionException>(() => builder.Make());

        Assert.Equal(DiagnosticCode.OutlineWouldCross, e.Code);
        Assert.Contains("waist", e.Message);
        Assert.Contains("hem", e.Message);
    }

    private static void AssertRefused(DiagnosticCode code, Func<Panel> operation)
    {
        ConstructionException e = Assert.Throws<ConstructionException>(() => operation());
        Assert.True(code == e.Code, e.Message);
        Assert.StartsWith("PC2", e.Message);
    }

    private static Gen<Panel> SkirtPanels { get; } =
        from body in Bodies.Any
        from asked in Bodies.Options
        let panels = Draft(body, asked)
        where panels.Length > 0
        from panel in Gen.Elements(panels)
        select panel;

    private static Gen<(Panel Panel, EdgePlace Place, double Share)> Transfers { get; } =
        from panel in Gen.Frequency((2, SkirtPanels), (1, from intake in Bodies.Range(5, 70) select BodiceWithBustDart(intake)))
        from edge in Gen.Elements(panel.Edges.Select(e => e.Name))
        from at in Bodies.Range(0.02, 0.98)
        from share in Bodies.Range(0.01, 1)
        select (panel, edge.At(Ratio.FromDecimalFractions(at)), share);

    private static Panel[] Draft(Core.Measurement.BodyMeasurements body, SkirtAsked asked)
    {
        try
        {
            SkirtBlock block = asked.Apply(SkirtBlock.For(body)).Draft();
            return [.. new[] { block.Front, block.Back }.Where(p => p.Darts.Any())];
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
        {
            return [];
        }
    }

    private static double TotalAngle(Panel panel) => panel.Darts.Sum(d => d.Angle.Radians);

    /// <summary>Sewn lengths of all edges, the area outside the wedges, notches along their edges and the grain are as they were.</summary>
    private static void AssertOnlyMoved(Panel before, Panel after)
    {
        foreach (PanelEdge edge in before.Edges)
        {
            Assert.Equal(edge.SewnLength.Millimeters, after.FindEdge(edge.Name).SewnLength.Millimeters, 1e-6);
        }

        Assert.Equal(before.SeamOutline().SignedArea.SquareMillimeters, after.SeamOutline().SignedArea.SquareMillimeters, 1e-4);
        Assert.Equal(0, before.Grainline.Direction.AngleTo(after.Grainline.Direction).Degrees, 9);
        CurvePath cloth = after.SeamOutline();
        if (cloth.ContainmentOf(before.Grainline.Start) == Containment.Inside && cloth.ContainmentOf(before.Grainline.End) == Containment.Inside)
        {
            Assert.Equal(before.Grainline, after.Grainline);
        }

        Assert.Equal(before.Notches.Select(n => (n.Edge, n.DistanceFromStart)), after.Notches.Select(n => (n.Edge, n.DistanceFromStart)));
        Assert.All(after.Notches, n => Assert.True(after.FindEdge(n.Edge).Stretches.Min(s => s.ClosestTo(n.Position).Distance.Millimeters) < 1e-6));
        Assert.Equal(before.Landmarks.Select(l => l.Name), after.Landmarks.Select(l => l.Name));
    }

    private static void AssertSamePanel(Panel expected, Panel actual, double tolerance)
    {
        Assert.Equal(expected.Darts.Count(), actual.Darts.Count());
        foreach ((PanelEdge e, PanelEdge a) in expected.Edges.Zip(actual.Edges))
        {
            Assert.Equal(e.Name, a.Name);
            Assert.Equal(e.Stretches.Count, a.Stretches.Count);
            foreach ((CurvePath p, CurvePath q) in e.Stretches.Zip(a.Stretches))
            {
                for (double share = 0; share <= 1; share += 0.25)
                {
                    Assert.InRange(p.PointAtLength(p.Length * share).DistanceTo(q.PointAtLength(q.Length * share)).Millimeters, 0, tolerance);
                }
            }
        }

        Assert.All(expected.Landmarks.Zip(actual.Landmarks), pair => Assert.InRange(pair.First.Position.DistanceTo(pair.Second.Position).Millimeters, 0, tolerance));
    }
}
