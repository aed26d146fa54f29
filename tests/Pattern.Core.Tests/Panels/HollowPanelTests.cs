using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using NetTopologySuite.Geometries;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

/// <summary>Cuts of panels whose corners point inwards. Areas and what lies inside are measured by NetTopologySuite.</summary>
public class HollowPanelTests
{
    private static readonly EdgeName Cut = EdgeName.Of("cut");
    private static readonly PanelName Before = PanelName.Of("before");
    private static readonly PanelName Beyond = PanelName.Of("beyond");

    // Far above rounding, far below what a cut could hide.
    private const double NearEndMm = 0.001;

    private static Gen<(Panel Panel, int From, int To, double FromShare, double ToShare)> Cuts { get; } =
        from corners in Gen.Choose(4, 9)
        from turns in Gen.ArrayOf(Bodies.Range(0, 0.7), 9)
        from reaches in Gen.ArrayOf(Bodies.Range(40, 300), 9)
        from mirrored in Gen.Elements(1, -1)
        from first in Gen.Choose(0, 8)
        from step in Gen.Choose(1, 8)
        from fromShare in Bodies.Range(0.02, 0.98)
        from toShare in Bodies.Range(0.02, 0.98)
        let points = Enumerable.Range(0, corners).Select(i =>
        {
            double angle = mirrored * 2 * Math.PI * (i + turns[i]) / corners;
            return At(reaches[i] * Math.Cos(angle), reaches[i] * Math.Sin(angle));
        }).ToArray()
        select (Polygonal(points), first % corners, (first + 1 + (step % (corners - 1))) % corners, fromShare, toShare);

    // By hand: the shoelace gives 11,000 mm2 for the quadrilateral. The cut from (175, 130) to (75, 30) runs outside, past the corner (150, 60) that points in.
    [Fact]
    public void CutApart_PastAHollowCorner_IsRefusedWhereItLeaves()
    {
        Panel quad = Polygonal([At(0, 0), At(200, 0), At(200, 200), At(150, 60)]);

        var refusal = Assert.Throws<ConstructionException>(() => quad.CutApart(Edge(2).Middle, Edge(3).Middle, Cut, Before, Beyond));

        Assert.Equal(11_000, Area(quad), 6);
        Assert.Equal(DiagnosticCode.CutLeavesPanel, refusal.Code);
        Assert.Contains("at " + At(175, 130), refusal.Message, StringComparison.Ordinal);
        Assert.Equal(DiagnosticCode.CutLeavesPanel, Assert.Throws<ConstructionException>(() => quad.OpenDart(Edge(2).Middle, Edge(3).Middle, Mm(5))).Code);
    }

    // A dart at an end of a horseshoe, apex 20 mm deep; the straight way from its apex to the other end runs through its own mouth and across the gap.
    [Fact]
    public void CutsFromAnApex_ThroughTheMouthOfTheDart_AreRefused()
    {
        Panel horseshoe = Polygonal([At(0, 0), At(300, 0), At(300, 100), At(200, 100), At(200, 50), At(100, 50), At(100, 100), At(0, 100)]);
        Panel panel = horseshoe.TakeInDart(Edge(5).At(Mm(25)), Mm(20), Mm(20));

        Assert.Equal(
            DiagnosticCode.CutLeavesPanel,
            Assert.Throws<ConstructionException>(() => panel.TransferDart(Edge(5).Dart(1), Edge(3).At(Mm(25)))).Code);
        Assert.Equal(
            DiagnosticCode.CutLeavesPanel,
            Assert.Throws<ConstructionException>(() => panel.TurnDartIntoSeam(Edge(5).Dart(1), Edge(3).At(Mm(25)), Cut, Before, Beyond)).Code);
    }

    [Property(MaxTest = 500)]
    public Property CutApart_OfAnyHollowPanel_MakesPartsThatAddUpOrIsRefusedBecauseItLeaves() => Prop.ForAll(Cuts.ToArbitrary(), t =>
    {
        bool isInside = IsInside(t.Panel, t.Panel.Edges[t.From], t.FromShare, t.Panel.Edges[t.To], t.ToShare);
        try
        {
            PanelPair parts = t.Panel.CutApart(Place(t.From, t.FromShare), Place(t.To, t.ToShare), Cut, Before, Beyond);
            Assert.True(isInside);
            Assert.Equal(Area(t.Panel), Area(parts.Before) + Area(parts.Beyond), 1e-6);
            AssertGrain(t.Panel, parts.Before);
            AssertGrain(t.Panel, parts.Beyond);
        }
        catch (ConstructionException refusal)
        {
            Assert.Equal(DiagnosticCode.CutLeavesPanel, refusal.Code);
            Assert.False(isInside);
        }
    });

    [Property(MaxTest = 300)]
    public Property OpenDart_OfAnyHollowPanel_KeepsTheClothOrIsRefused() => Prop.ForAll(Cuts.ToArbitrary(), t =>
    {
        bool isInside = IsInside(t.Panel, t.Panel.Edges[t.From], t.FromShare, t.Panel.Edges[t.To], t.ToShare);
        try
        {
            Panel opened = t.Panel.OpenDart(Place(t.From, t.FromShare), Place(t.To, t.ToShare), Mm(1));
            Assert.True(isInside);
            Assert.Equal(Area(t.Panel), Area(opened), 1e-6);
            Assert.Equal(0, t.Panel.Grainline.Direction.AngleTo(opened.Grainline.Direction).Degrees, 9);
        }
        catch (ConstructionException refusal) when (refusal.Code == DiagnosticCode.CutLeavesPanel)
        {
            Assert.False(isInside);
        }
        catch (ConstructionException refusal)
        {
            // A slash shorter than half a millimetre, or one so long that what turns meets what stays.
            Assert.True(refusal.Code is DiagnosticCode.DartWiderThanEdge or DiagnosticCode.OutlineWouldCross, refusal.Message);
        }
    });

    [Property(MaxTest = 300)]
    public Property TurnDartIntoSeam_OfAnyHollowPanel_MakesPartsThatAddUp() => Prop.ForAll(Cuts.ToArbitrary(), t =>
    {
        Panel panel;
        try
        {
            panel = t.Panel.TakeInDart(Place(t.From, t.FromShare), Mm(6), Mm(25));
        }
        catch (ConstructionException refusal) when (Refusals.HasNoRoom(refusal))
        {
            return;
        }

        PanelPair parts;
        try
        {
            parts = panel.TurnDartIntoSeam(Edge(t.From).Dart(1), Place(t.To, t.ToShare), Cut, Before, Beyond);
        }
        catch (ConstructionException refusal) when (Refusals.HasNoWay(refusal))
        {
            // Where there is no straight way from it.
            return;
        }

        Assert.Equal(Area(panel), Area(parts.Before) + Area(parts.Beyond), 1e-6);
        AssertGrain(panel, parts.Before);
        AssertGrain(panel, parts.Beyond);
    });

    private static void AssertGrain(Panel whole, Panel part)
    {
        Assert.Equal(0, whole.Grainline.Direction.AngleTo(part.Grainline.Direction).Degrees, 9);
        var line = GeometryFactory.Default.CreateLineString([On(part.Grainline.Start), On(part.Grainline.End)]);
        Assert.True(Shape(part).Covers(line), part.Grainline.ToString());
    }

    private static bool IsInside(Panel panel, PanelEdge from, double fromShare, PanelEdge to, double toShare)
    {
        Point2D a = from.Start + ((from.End - from.Start) * fromShare);
        Point2D b = to.Start + ((to.End - to.Start) * toShare);
        double share = NearEndMm / a.DistanceTo(b).Millimeters;
        return Shape(panel).Covers(GeometryFactory.Default.CreateLineString([On(a + ((b - a) * share)), On(b - ((b - a) * share))]));
    }

    private static EdgePlace Place(int edge, double share) => Edge(edge).At(Ratio.FromDecimalFractions(share));

    private static EdgeName Edge(int index) => EdgeName.Of("edge " + (index + 1));

    private static Panel Polygonal(Point2D[] corners)
    {
        PanelBuilder builder = Panel.Named(PanelName.Of("hollow"));
        for (int i = 0; i < corners.Length; i++)
        {
            builder = builder.WithEdge(Edge(i), EdgeRole.Seam, CurvePath.From(corners[i]).LineTo(corners[(i + 1) % corners.Length]));
        }

        return builder.Make();
    }

    private static double Area(Panel panel) => Shape(panel).Area;

    // All edges are straight, so the ends of its segments are the outline.
    private static Polygon Shape(Panel panel)
    {
        Coordinate[] corners = [.. panel.SeamOutline().Segments.Select(segment => On(segment.Start))];
        return GeometryFactory.Default.CreatePolygon([.. corners, corners[0]]);
    }

    private static Coordinate On(Point2D point) => new(point.X.Millimeters, point.Y.Millimeters);
}
