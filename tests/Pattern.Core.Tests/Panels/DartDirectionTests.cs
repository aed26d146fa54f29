using System;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

/// <summary>Which leg is which, and where a dart is pressed to, on panels of any garment: by the ends of the edge, in the words of the edges beside it.</summary>
public class DartDirectionTests
{
    private static readonly PanelName Leg = PanelName.Of("leg");

    // The order of the edges and where the darts stand: common practice, no source. An elbow dart takes in the back underarm, two small ones shape the head.
    private static readonly Panel Sleeve = Panel.Named(PanelName.Of("sleeve"))
        .WithEdge(EdgeName.SleeveHead, EdgeRole.Seam, CurvePath.From(At(0, 450)).CurveTo(At(90, 470), At(90, 590), At(170, 590)).CurveTo(At(250, 590), At(250, 470), At(340, 450)))
        .WithEdge(EdgeName.FrontUnderarm, EdgeRole.Seam, CurvePath.From(At(340, 450)).LineTo(At(290, 0)))
        .WithEdge(EdgeName.Wrist, EdgeRole.Hem, CurvePath.From(At(290, 0)).LineTo(At(50, 0)))
        .WithEdge(EdgeName.BackUnderarm, EdgeRole.Seam, CurvePath.From(At(50, 0)).LineTo(At(0, 450)))
        .Make()
        .TakeInDart(EdgeName.BackUnderarm.Middle, Mm(20), Mm(90))
        .TakeInDart(EdgeName.SleeveHead.At(Mm(120)), Mm(8), Mm(40))
        .TakeInDart(EdgeName.SleeveHead.At(Mm(250)), Mm(8), Mm(40));

    private static readonly Panel Trouser = Panel.Named(Leg)
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(60, 1000)).LineTo(At(300, 1000)))
        .WithEdge(EdgeName.Outseam, EdgeRole.Seam, CurvePath.From(At(300, 1000)).LineTo(At(280, 0)))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(280, 0)).LineTo(At(60, 0)))
        .WithEdge(EdgeName.Inseam, EdgeRole.Seam, CurvePath.From(At(60, 0)).LineTo(At(0, 720)))
        .WithEdge(EdgeName.Crotch, EdgeRole.Seam, CurvePath.From(At(0, 720)).CurveTo(At(40, 740), At(60, 800), At(60, 1000)))
        .Make()
        .TakeInDart(EdgeName.Waist.At(Mm(110)), Mm(24), Mm(110));

    private static readonly Panel Lens = Panel.Named(PanelName.Of("lens"))
        .WithEdge(EdgeName.Of("over"), EdgeRole.Seam, CurvePath.From(At(0, 0)).CurveTo(At(50, 80), At(150, 80), At(200, 0)))
        .WithEdge(EdgeName.Of("under"), EdgeRole.Seam, CurvePath.From(At(200, 0)).CurveTo(At(150, -80), At(50, -80), At(0, 0)))
        .Make()
        .TakeInDart(EdgeName.Of("over").Middle, Mm(10), Mm(30));

    public static TheoryData<string, string, string, string> Words => new()
    {
        { "sleeve", "back underarm", "wrist", "sleeve head" },
        { "sleeve", "sleeve head", "back underarm", "front underarm" },
        { "leg", "waist", "crotch", "outseam" },
        { "lens", "over", "start", "end" },
    };

    [Theory]
    [MemberData(nameof(Words))]
    public void WordFor_AnEdgeOfAnyGarment_NamesTheEdgeBesideIt(string panel, string edge, string start, string end)
    {
        Panel on = Find(panel);

        Assert.Equal((start, end), (on.WordFor(EdgeName.Of(edge), Toward.Start), on.WordFor(EdgeName.Of(edge), Toward.End)));
    }

    // The leg that carries the name of an edge is the one nearer to it, along the seam line and so, on these panels, in a straight line.
    [Theory]
    [InlineData("sleeve")]
    [InlineData("leg")]
    public void Legs_OfAnyGarment_AreNearerToTheEdgeOfTheirWord(string panel)
    {
        Panel on = Find(panel);
        Assert.All(on.Darts, dart =>
        {
            foreach (Toward way in new[] { Toward.Start, Toward.End })
            {
                CurvePath named = on.FindEdge(EdgeName.Of(on.WordFor(dart.Name.Edge, way))).Stretches[0];
                (Point2D own, Point2D other) = way == Toward.Start ? (dart.StartLeg, dart.EndLeg) : (dart.EndLeg, dart.StartLeg);
                Assert.True(named.ClosestTo(own).Distance < named.ClosestTo(other).Distance, $"{dart.Name}, {way}");
                Assert.Equal(dart.LegLength(way).Millimeters, own.DistanceTo(dart.Apex).Millimeters, 1e-9);
            }
        });
    }

    [Theory]
    [InlineData("sleeve", "back underarm", "wrist")]
    [InlineData("sleeve", "back underarm", "sleeve head")]
    [InlineData("sleeve", "sleeve head", "front underarm")]
    [InlineData("leg", "waist", "crotch")]
    [InlineData("leg", "waist", "outseam")]
    public void WithDartPressed_TowardTheEdgeBesideIt_FoldsTheCapOntoThatSide(string panel, string edge, string toward)
    {
        Panel pressed = Find(panel).WithDartPressed(EdgeName.Of(edge).Dart(1), EdgeName.Of(toward));

        PanelEdge on = pressed.FindEdge(EdgeName.Of(edge));
        Dart dart = on.Darts[0];
        Assert.Equal(toward, pressed.WordFor(dart.Name.Edge, dart.PressedToward));

        // Half of the cap, folded over the leg on the side it is pressed to, lies on the seam line there.
        bool isStart = pressed.Edges.TakeWhile(e => e.Name != on.Name).LastOrDefault(pressed.Edges[^1]).Name.Text == toward;
        CurvePath seam = on.Stretches[isStart ? 0 : 1];
        var overLeg = Transform2D.Mirror(Line.Through(dart.Apex, isStart ? dart.StartLeg : dart.EndLeg));
        for (double share = 0; share <= 1; share += 0.25)
        {
            Length along = dart.Cap.Length * (share / 2);
            Point2D near = dart.Cap.PointAtLength(isStart ? along : dart.Cap.Length - along);
            Assert.Equal(0, seam.ClosestTo(near.Transformed(overLeg)).Distance.Millimeters, 1e-6);
        }
    }

    [Theory]
    [InlineData("leg", "waist", "hem")]
    [InlineData("leg", "waist", "waist")]
    [InlineData("sleeve", "sleeve head", "wrist")]
    [InlineData("lens", "over", "under")]
    public void WithDartPressed_TowardAnEdgeThatIsNoWay_IsRefused(string panel, string edge, string toward)
    {
        var refusal = Assert.Throws<ConstructionException>(() => Find(panel).WithDartPressed(EdgeName.Of(edge).Dart(1), EdgeName.Of(toward)));

        Assert.Equal(DiagnosticCode.NoSuchNeighbour, refusal.Code);
        Assert.Contains(toward, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(edge + " dart 1", refusal.Landmark);
    }

    [Fact]
    public void WithDartPressed_SaidByEndOrByEdge_IsTheSame()
    {
        DartName dart = EdgeName.Waist.Dart(1);
        Assert.Equal(
            Trouser.WithDartPressed(dart, Toward.End).FindDart(dart).Cap.Segments,
            Trouser.WithDartPressed(dart, EdgeName.Outseam).FindDart(dart).Cap.Segments);
        Assert.Equal(Toward.End, Lens.WithDartPressed(EdgeName.Of("over").Dart(1), Toward.End).Darts.Single().PressedToward);
    }

    // Two edges of this panel have a dart 1 each: the file says which is which.
    [Fact]
    public void ToSvg_DartsOfASleeve_SayTheirEdgeAndTheirLegs()
    {
        XElement[] paths = [.. XDocument.Parse(PatternPiece.From(Sleeve).WithAllowance(Mm(10)).Draw().ToSvg()).Descendants().Where(path => path.Attribute("data-dart") is not null)];

        string[] legs = [.. paths.Where(path => path.Attribute("data-leg") is not null).Select(Said)];
        Assert.Equal(
            [
                "back underarm 1 sleeve head", "back underarm 1 wrist",
                "sleeve head 1 back underarm", "sleeve head 1 front underarm", "sleeve head 2 back underarm", "sleeve head 2 front underarm",
            ],
            legs.OrderBy(leg => leg, StringComparer.Ordinal));
        Assert.Equal(["back underarm", "back underarm", "wrist"], paths.Attributes("data-cap").Select(cap => cap.Value).OrderBy(cap => cap, StringComparer.Ordinal));
    }

    // An unfolded piece has no centre line; its darts lie toward one side or the other.
    [Fact]
    public void ToSvg_UnfoldedPiece_TellsItsSidesApart()
    {
        Panel half = SamplePanels.Rectangle(200, 300).TakeInDart(EdgeName.Waist.At(Mm(100)), Mm(20), Mm(90));
        PatternPiece whole = PatternPiece.From(half).WithAllowance(Mm(10)).CutOnFold(EdgeName.Centre).Unfolded();

        XElement[] caps = [.. XDocument.Parse(whole.Draw().ToSvg()).Descendants().Where(path => path.Attribute("data-cap") is not null)];

        // Pressed towards the centre, either dart lies toward the far side.
        Assert.Equal([("1", "side"), ("2", "other side")], caps.Select(cap => (cap.Attribute("data-dart")!.Value, cap.Attribute("data-cap")!.Value)).Distinct().Order());
    }

    [Fact]
    public void InsideDart_TurnedOver_KeepsItsLeftOnTheLeft()
    {
        InsideDart dart = Assert.Single(Rectangle(200, 300).TakeInInsideDart(At(60, 200), At(60, 80), Mm(12), Ratio.FromPercent(50)).InsideDarts);
        Panel over = Rectangle(200, 300).TakeInInsideDart(At(60, 200), At(60, 80), Mm(12), Ratio.FromPercent(50)).Transformed(Transform2D.Mirror(Line.Through(At(0, 0), At(0, 10))));

        // Going down, the left hand is on the right of the paper: common practice, no source.
        Assert.Equal((66, 54), (dart.Left.X.Millimeters, dart.Right.X.Millimeters));
        Assert.Equal((-54, -66), (over.InsideDarts[0].Left.X.Millimeters, over.InsideDarts[0].Right.X.Millimeters));
        Assert.Equal(12, over.InsideDarts[0].Intake.Millimeters, 1e-9);
    }

    private static Panel Find(string name) => new Dictionary<string, Panel> { ["sleeve"] = Sleeve, ["leg"] = Trouser, ["lens"] = Lens }[name];

    private static string Said(XElement leg)
        => string.Join(' ', leg.Attribute("data-on")!.Value, leg.Attribute("data-dart")!.Value, leg.Attribute("data-leg")!.Value);
}
