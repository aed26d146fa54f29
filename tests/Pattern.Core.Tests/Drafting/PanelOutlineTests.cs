using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using static Pattern.Core.Tests.Drafting.DraftingSheetTests;

namespace Pattern.Core.Tests.Drafting;

/// <summary>From lines on the sheet to a panel.</summary>
public class PanelOutlineTests
{
    private readonly DraftingSheet _sheet = new();
    private readonly Landmark _a;
    private readonly Landmark _b;
    private readonly Landmark _c;
    private readonly Landmark _d;
    private readonly DraftedLine _top;
    private readonly DraftedLine _right;

    // A rectangle of 200 by 300, its top drawn from the left, its right side drawn from below.
    public PanelOutlineTests()
    {
        _a = _sheet.Mark("A", P(0, 0));
        _b = _sheet.SquareAcross(_a, Across.Right, Mm(200), "B", draws: "top");
        _c = _sheet.SquareDown(_b, Mm(300), "C");
        _d = _sheet.SquareDown(_a, Mm(300), "D");
        _top = _sheet.FindLine("top");
        _right = _sheet.Join(_c, _b, "right side");
    }

    private PanelOutline Rectangle => PanelOutline.Of(PanelName.Of("apron"), _a)
        .Along(EdgeName.Waist, EdgeRole.Opening, _top)
        .Along(EdgeName.SideSeam, EdgeRole.Seam, _right)
        .Straight(EdgeName.Hem, EdgeRole.Hem, _d)
        .Straight(EdgeName.Centre, EdgeRole.Centre, _a);

    [Fact]
    public void Trace_ARectangle_HasItsEdgesInOrderAndItsArea()
    {
        Panel panel = _sheet.Trace(Rectangle.WithGrainline(_a, _d).WithNotch(EdgeName.SideSeam, _sheet.MarkAlong(_right, _b, Mm(120), "hip"), count: 2));

        Assert.Equal(["waist", "side", "hem", "centre"], panel.Edges.Select(e => e.Name.Text));
        Assert.Equal([200.0, 300, 200, 300], panel.Edges.Select(e => Math.Round(e.SewnLength.Millimeters, 9)));
        Assert.Equal(60_000, Math.Abs(panel.SeamOutline().SignedArea.SquareMillimeters), 1e-6);
        Assert.Equal(["A", "B", "C", "D"], panel.Landmarks.Select(l => l.Name.Text));
        Assert.Equal(120, panel.Notches.Single().DistanceFromStart.Millimeters, 1e-9);
        Assert.Equal(P(0, -300), panel.Grainline.End);
        Assert.Equal(
            "Trace the apron: waist along the top; side along the right side; hem straight from C to D; centre straight from D to A.",
            _sheet.Steps[_sheet.Steps.Count - 1].Describe(TapeStep.Millimeter));
    }

    [Fact]
    public void Trace_WithADart_TakesItOutOfTheEdgeWithEqualLegs()
    {
        Landmark middle = _sheet.MarkAlong(_top, _a, Mm(80), "middle");
        DraftedDart dart = _sheet.PlaceDart(_top, middle, Mm(30), Mm(100), "apex");
        Panel panel = _sheet.Trace(Rectangle.WithDart(EdgeName.Waist, dart, Toward.End).WithNotch(EdgeName.Waist, _sheet.MarkAlong(_top, _b, Mm(50), "notch")));

        Dart made = panel.FindDart(EdgeName.Waist.Dart(1));
        Assert.Equal(170, panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters, 1e-9);
        Assert.Equal(Math.Sqrt((15 * 15) + (100 * 100)), made.LegLength(Toward.Start).Millimeters, 1e-9);
        Assert.Equal(made.LegLength(Toward.End).Millimeters, made.LegLength(Toward.Start).Millimeters, 1e-9);
        Assert.Equal(Toward.End, made.PressedToward);
        Assert.Equal(120, panel.Notches.Single().DistanceFromStart.Millimeters, 1e-9);
        Assert.Equal(170, panel.FindEdge(EdgeName.Waist).Closed().Length.Millimeters, 1e-9);
    }

    [Fact]
    public void Trace_WithADartOnASlope_MovesTheApexSquareToTheIntakeAndSaysSo()
    {
        // The line rises 1 in 2; half the intake is 15 across, so the legs end 30 across and 15 up from each other: the apex comes to stand square to their middle.
        Landmark e = _sheet.Mark("E", P(200, 100));
        DraftedLine slope = _sheet.Join(_a, e, "slope");
        Landmark middle = _sheet.MarkOnto(slope, _a, Across.Right, Mm(100), "middle");
        DraftedDart dart = _sheet.PlaceDart(slope, middle, Mm(30), Mm(100), "apex");
        Panel panel = _sheet.Trace(PanelOutline.Of(PanelName.Of("slope"), _a)
            .Along(EdgeName.Waist, EdgeRole.Opening, slope).Straight(EdgeName.SideSeam, EdgeRole.Seam, _c).Straight(EdgeName.Hem, EdgeRole.Hem, _d).Straight(EdgeName.Centre, EdgeRole.Centre, _a)
            .WithDart(EdgeName.Waist, dart));

        Dart made = panel.FindDart(EdgeName.Waist.Dart(1));
        Assert.Equal(made.LegLength(Toward.End).Millimeters, made.LegLength(Toward.Start).Millimeters, 1e-9);

        // From (100, -50), square onto the line through (100, 50) that falls 2 in 1: along (1, -2) / sqrt 5 by 200 / sqrt 5.
        Assert.Equal(140, made.Apex.X.Millimeters, 1e-9);
        Assert.Equal(-30, made.Apex.Y.Millimeters, 1e-9);
        Assert.EndsWith("apex moved ~4.5 cm so that both legs are equal.", _sheet.Steps[_sheet.Steps.Count - 1].Describe(TapeStep.Millimeter), StringComparison.Ordinal);
    }

    [Fact]
    public void Trace_OutlinesThatAreNone_AreRefusedWithPlaceAndGap()
    {
        DraftedLine apart = _sheet.Join(_sheet.Mark("E", P(203, -4)), _d, "apart");
        Refuses(DiagnosticCode.LineNotNext, "B", 5, PanelOutline.Of(PanelName.Front, _a).Along(EdgeName.Waist, EdgeRole.Opening, _top).Along(EdgeName.SideSeam, EdgeRole.Seam, apart));
        Refuses(DiagnosticCode.OutlineNotClosed, "C", Math.Sqrt((200.0 * 200) + (300.0 * 300)), PanelOutline.Of(PanelName.Front, _a).Along(EdgeName.Waist, EdgeRole.Opening, _top, _right));
        Refuses(DiagnosticCode.EdgeNamedTwice, "waist", null, PanelOutline.Of(PanelName.Front, _a).Along(EdgeName.Waist, EdgeRole.Opening, _top).Straight(EdgeName.Waist, EdgeRole.Seam, _c).Straight(EdgeName.Hem, EdgeRole.Hem, _a));
        Refuses(DiagnosticCode.LandmarkOffLine, "D", 200, Rectangle.WithNotch(EdgeName.SideSeam, _d));
        Refuses(DiagnosticCode.EdgeNotOnPanel, "armhole", null, Rectangle.WithNotch(EdgeName.Armhole, _d));
        Landmark near = _sheet.MarkAlong(_top, _a, Mm(80), "near");
        Landmark next = _sheet.MarkAlong(_top, _a, Mm(90), "next");
        PanelOutline both = Rectangle.WithDart(EdgeName.Waist, _sheet.PlaceDart(_top, near, Mm(30), Mm(90), "near apex")).WithDart(EdgeName.Waist, _sheet.PlaceDart(_top, next, Mm(30), Mm(90), "next apex"));
        Refuses(DiagnosticCode.DartWiderThanEdge, "waist", 30, both);
    }

    private void Refuses(DiagnosticCode code, string landmark, double? measuredMm, PanelOutline outline)
    {
        int steps = _sheet.Steps.Count;
        var refusal = Assert.Throws<ConstructionException>(() => _sheet.Trace(outline));
        Assert.Equal((code, landmark), (refusal.Code, refusal.Landmark));
        Assert.Equal(measuredMm.HasValue, refusal.Measured.HasValue);
        Assert.Equal(measuredMm ?? 0, refusal.Measured?.Millimeters ?? 0, 1e-6);
        Assert.Equal(steps, _sheet.Steps.Count);
    }
}
