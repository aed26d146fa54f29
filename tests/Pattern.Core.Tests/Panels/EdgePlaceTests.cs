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

public class EdgePlaceTests
{
    // A front's centre runs up from the hem and a back's down to it, or the other way: six inches below the waist are six inches below the waist.
    [Property(MaxTest = 60)]
    public Property From_TheWaist_IsThatFarBelowTheWaistOnBothPanels() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from share in Bodies.Range(0.05, 0.95) select (body, share)).ToArbitrary(),
        c =>
        {
            SkirtBlock block = SkirtBlock.For(c.body).Draft();
            foreach (Panel panel in new[] { block.Front, block.Back })
            {
                // The centre line is straight, so that chords are lengths.
                PanelEdge centre = panel.FindEdge(EdgeName.Centre);
                Point2D waist = panel.FindEdge(EdgeName.Waist).Start == centre.Start || panel.FindEdge(EdgeName.Waist).End == centre.Start ? centre.Start : centre.End;
                Point2D hem = waist == centre.Start ? centre.End : centre.Start;
                double lengthMm = waist.DistanceTo(hem).Millimeters;
                double askedMm = c.share * lengthMm;

                double fromStart = EdgeName.Centre.From(EdgeName.Waist, Mm(askedMm)).DistanceFromStart(panel).Millimeters;
                double fromHem = EdgeName.Centre.From(EdgeName.Hem, Mm(lengthMm - askedMm)).DistanceFromStart(panel).Millimeters;

                Assert.Equal(waist == centre.Start ? askedMm : lengthMm - askedMm, fromStart, 1e-6);
                Assert.Equal(fromStart, fromHem, 1e-6);
            }
        });

    [Fact]
    public void CutApart_SixInchesBelowTheWaistOnEitherSide_IsLevel()
    {
        Panel sample = Rectangle(320, 300);

        PanelPair parts = sample.CutApart(
            EdgeName.SideSeam.From(EdgeName.Waist, Mm(152.4)), EdgeName.Centre.From(EdgeName.Waist, Mm(152.4)), EdgeName.Of("yoke seam"), PanelName.Of("one"), PanelName.Of("other"));

        PanelEdge seam = parts.Before.FindEdge(EdgeName.Of("yoke seam"));
        Assert.Equal(seam.Start.Y.Millimeters, seam.End.Y.Millimeters, 1e-9);
        Assert.Equal(300 - 152.4, seam.Start.Y.Millimeters, 1e-9);
    }

    [Fact]
    public void From_AnEdgeThatDoesNotMeetIt_IsRefusedWithBothThatDo()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(
            () => Rectangle(320, 300).TransferDart(EdgeName.Waist.Dart(1), EdgeName.SideSeam.From(EdgeName.Centre, Mm(50))));

        Assert.Equal(DiagnosticCode.DartNotOnEdge, e.Code);
        e = Assert.Throws<ConstructionException>(() => EdgeName.SideSeam.From(EdgeName.Centre, Mm(50)).DistanceFromStart(Rectangle(320, 300)));
        Assert.Equal(DiagnosticCode.NoSuchNeighbour, e.Code);
        Assert.Contains("waist", e.Message, StringComparison.Ordinal);
        Assert.Contains("hem", e.Message, StringComparison.Ordinal);
    }

    // The message repeats what was asked, from where it was asked.
    [Fact]
    public void From_FartherThanTheEdgeIsLong_IsRefusedInTheWordsAsked()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(
            () => Rectangle(320, 300).TakeInDart(EdgeName.SideSeam.From(EdgeName.Hem, Mm(2540)), Mm(10), Mm(50)));

        Assert.Equal(DiagnosticCode.PlaceOffEdge, e.Code);
        Assert.Contains("2540", e.Message, StringComparison.Ordinal);
        Assert.Contains("from hem", e.Message, StringComparison.Ordinal);
        Assert.Equal(2540, e.Measured!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void ToString_SaysThePlaceAsItWasAsked()
    {
        Assert.Equal("hem, 50 % along", EdgeName.Hem.Middle.ToString());
        Assert.Equal("side, 63.5 mm from its start", EdgeName.SideSeam.At(Mm(63.5)).ToString());
        Assert.Equal("centre, 152.4 mm from waist", EdgeName.Centre.From(EdgeName.Waist, Mm(152.4)).ToString());
        Assert.NotEqual(EdgeName.Centre.From(EdgeName.Waist, Mm(10)), EdgeName.Centre.At(Mm(10)));
    }

    // Legs of one length and the intake that was, wherever the apex goes; the edge given back its length closes to what it was.
    [Property(MaxTest = 100)]
    public Property MoveApex_AnyDartToAnyPoint_StandsThereWithItsIntakeAndEqualLegs() => Prop.ForAll(
        (from panel in AnyPanel.Panels from x in Bodies.Range(-60, 60) from y in Bodies.Range(-60, 60) from n in Gen.Choose(0, 100) select (panel, x, y, n)).ToArbitrary(),
        c =>
        {
            Dart[] darts = [.. c.panel.Darts];
            if (darts.Length == 0)
            {
                return;
            }

            Dart before = darts[c.n % darts.Length];
            Point2D to = Point2D.FromMillimeters(before.Apex.X.Millimeters + c.x, before.Apex.Y.Millimeters + c.y);
            Panel moved;
            try
            {
                moved = c.panel.MoveApex(before.Name, to);
            }
            catch (ConstructionException refusal) when (Refusals.HasNoRoom(refusal) || refusal.Code is DiagnosticCode.ApexTooNear or DiagnosticCode.OutlineWouldCross)
            {
                return;
            }

            Dart after = moved.FindDart(before.Name);
            Assert.Equal(to, after.Apex);
            Assert.True(before.StartLeg == after.StartLeg || before.EndLeg == after.EndLeg);
            Assert.Equal(before.StartLeg.DistanceTo(before.EndLeg).Millimeters, after.StartLeg.DistanceTo(after.EndLeg).Millimeters, 1e-6);
            Assert.Equal(to.DistanceTo(after.StartLeg).Millimeters, to.DistanceTo(after.EndLeg).Millimeters, 1e-6);
            foreach (PanelEdge edge in c.panel.Edges.Where(edge => edge.Name != before.Name.Edge))
            {
                Assert.Equal(edge.SewnLength.Millimeters, moved.FindEdge(edge.Name).SewnLength.Millimeters, 1e-9);
            }
        });

    // Either way along the edge, and a good way: what is laid off anew lies inside the panel, so nothing has to be refused.
    [Theory]
    [InlineData(-40)]
    [InlineData(40)]
    public void MoveApex_EitherWayOnAStraightEdge_HasRoom(double by)
    {
        Panel panel = Rectangle(320, 300).TakeInDart(EdgeName.Waist.Middle, Mm(30), Mm(139));
        Point2D apex = panel.Darts.Single().Apex;

        Dart moved = panel.MoveApex(EdgeName.Waist.Dart(1), Point2D.FromMillimeters(apex.X.Millimeters + by, apex.Y.Millimeters)).Darts.Single();

        Assert.Equal(30, moved.Intake.Millimeters, 1e-9);
        Assert.True(moved.StartLeg.Y.Millimeters <= 300 && moved.EndLeg.Y.Millimeters <= 300);
    }

    [Fact]
    public void MoveApex_OfASkirtFront_AndTheWaistTruedToItsLength_ClosesToWhatItWas()
    {
        Panel front = SkirtBlock.For(Bodies.Ansur[0]).Draft().Front;
        Dart dart = front.FindDart(EdgeName.Waist.Dart(1));
        Length waist = front.FindEdge(EdgeName.Waist).SewnLength;

        Panel moved = front.MoveApex(dart.Name, Point2D.FromMillimeters(dart.Apex.X.Millimeters + 8, dart.Apex.Y.Millimeters - 15))
            .TrueEdge(EdgeName.Waist, new EdgeTruing { ClosedLength = waist }).Panel;

        Assert.Equal(waist.Millimeters, moved.FindEdge(EdgeName.Waist).Closed().Length.Millimeters, 0.01);
        Assert.Equal(dart.Apex.X.Millimeters + 8, moved.FindDart(dart.Name).Apex.X.Millimeters, 1e-6);
    }

    // What one could not do before: two darts whose apexes lie apart made one.
    [Fact]
    public void MoveApex_OntoThatOfAnotherDart_LetsBothBecomeOne()
    {
        Panel panel = Rectangle(320, 300).TakeInDart(EdgeName.Waist.At(Mm(130)), Mm(16), Mm(100)).TakeInDart(EdgeName.Waist.At(Mm(150)), Mm(16), Mm(120));
        Assert.Throws<ConstructionException>(() => panel.MergeDarts(EdgeName.Waist.Dart(2), EdgeName.Waist.Dart(1)));

        Panel one = panel.MoveApex(EdgeName.Waist.Dart(1), panel.FindDart(EdgeName.Waist.Dart(2)).Apex).MergeDarts(EdgeName.Waist.Dart(2), EdgeName.Waist.Dart(1));

        Assert.Single(one.Darts);
    }

    [Fact]
    public void MoveApex_OntoTheEdge_IsRefusedWithHalfTheIntake()
    {
        Panel panel = Rectangle(320, 300).TakeInDart(EdgeName.Waist.Middle, Mm(30), Mm(139));
        Point2D start = panel.Darts.Single().StartLeg;

        ConstructionException e = Assert.Throws<ConstructionException>(
            () => panel.MoveApex(EdgeName.Waist.Dart(1), Point2D.FromMillimeters(start.X.Millimeters, start.Y.Millimeters - 10)));

        Assert.Equal(DiagnosticCode.ApexTooNear, e.Code);
        Assert.Equal(10, e.Measured!.Value.Millimeters, 1e-6);
        Assert.Equal(15, e.Allowed!.Value.Millimeters, 1e-6);
    }

    [Property(MaxTest = 60)]
    public Property WithGrainlineAlong_AnyEdge_IsParallelToItAndOnThePanel() => Prop.ForAll(AnyPanel.WithEdge.ToArbitrary(), c =>
    {
        Panel panel = c.Panel.WithGrainlineAlong(c.Edge.Name);

        double ex = (c.Edge.End.X - c.Edge.Start.X).Millimeters;
        double ey = (c.Edge.End.Y - c.Edge.Start.Y).Millimeters;
        double gx = (panel.Grainline.End.X - panel.Grainline.Start.X).Millimeters;
        double gy = (panel.Grainline.End.Y - panel.Grainline.Start.Y).Millimeters;
        Assert.True(Math.Abs((ex * gy) - (ey * gx)) <= 1e-9 * Math.Sqrt(((ex * ex) + (ey * ey)) * ((gx * gx) + (gy * gy))));
        Assert.NotEqual(Containment.Outside, panel.SeamOutline().ContainmentOf(panel.Grainline.Midpoint));
    });
}
