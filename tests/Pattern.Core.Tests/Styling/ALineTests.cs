using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class ALineTests
{
    private static readonly Arbitrary<(BodyMeasurements Body, SkirtAsked Asked, double Share, double? Side)> Case =
        (from body in Bodies.Any
         from asked in Bodies.Options
         from share in Gen.Frequency((2, Gen.Constant(1.0)), (1, Bodies.Range(0, 1)))
         from side in Gen.Frequency((1, Gen.Constant((double?)null)), (1, Bodies.Range(0, 120).Select(mm => (double?)mm)))
         select (body, asked with { SideHem = 0, BackHem = 0, BackWaist = 0 }, share, side)).ToArbitrary();

    // Closed form, derived: a dart whose legs are l and whose intake is w has the angle 2 asin(w / 2l); closed, it opens a hem 600 mm from its mouth along the leg by 2 (600 - l) sin(a / 2).
    [Theory]
    [InlineData(20, 140, 8.1921, 65.714)]
    [InlineData(25, 125, 11.4783, 95.0)]
    [InlineData(20, 100, 11.4783, 100.0)]
    public void TurnDartIntoFlare_SquareToALevelHem_OpensItByTheClosedForm(double intake, double leg, double degrees, double opening)
    {
        double height = Math.Sqrt((leg * leg) - (intake * intake / 4));
        double top = height + 600 - leg;
        Panel panel = Panel.Named(PanelName.Of("cloth"))
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, Line(0, top, 300, top))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Line(300, top, 300, 0))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, Line(300, 0, 0, 0))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, Line(0, 0, 0, top))
            .Make()
            .TakeInDart(EdgeName.Waist.Middle, Length.FromMillimeters(intake), Length.FromMillimeters(height));
        Dart dart = panel.FindDart(EdgeName.Waist.Dart(1));
        Assert.Equal(degrees, dart.Angle.Degrees, 1e-4);

        Panel flared = panel.TurnDartIntoFlare(dart.Name, panel.FootOn(EdgeName.Hem, dart.Apex), Ratio.FromPercent(100));

        CircularArc arc = Assert.Single(flared.FindEdge(EdgeName.Hem).Stretches[0].Segments, segment => segment.Kind == PathSegmentKind.Arc).AsArc();
        Assert.Equal(opening, arc.Start.DistanceTo(arc.End).Millimeters, 1e-3);
        Assert.Equal(dart.Apex.Y.Millimeters, arc.Radius.Millimeters, 1e-9);

        // The cloth outside the wedge is as much as before; what is added is the sector below the apex.
        double sector = arc.Radius.Millimeters * arc.Radius.Millimeters * degrees * Math.PI / 360;
        Assert.Equal(Area(panel) + sector, Area(flared), 0.02 * sector / 100);
    }

    [Fact]
    public void ALine_EveryWomanOfAnsur_PassesEveryCheck()
    {
        int advised = 0;
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            Block skirt = SkirtBlock.For(body).Draft().ALine();
            Assert.True(skirt.Report.Passed, body + "\n" + skirt.Report);
            advised += skirt.Report.Advice.Any() ? 1 : 0;
        }

        Assert.InRange(advised, 0, 1986);
    }

    [Property(MaxTest = 400)]
    public Property ALine_AnyBodyAndAmount_KeepsWaistAndSeamsAndALevelHem() => Prop.ForAll(Case, c =>
    {
        Block skirt;
        SkirtBlock block;
        try
        {
            block = c.Asked.Apply(SkirtBlock.For(c.Body)).Draft();
            skirt = block.ALine(Ratio.FromDecimalFractions(c.Share), c.Side is { } mm ? Length.FromMillimeters(mm) : null);
        }
        catch (ConstructionException e)
        {
            return (e.Step is not null).Label(e.Message);
        }

        Panel back = skirt.FindPanel(PanelName.Back);
        Panel front = skirt.FindPanel(PanelName.Front);
        double target = c.Body[BodyMeasurement.WaistGirth].Millimeters + c.Asked.WaistEase;
        double waist = Sewn.WaistMm(skirt);
        double sides = Sewn.LengthMm(back.FindEdge(EdgeName.SideSeam)) - Sewn.LengthMm(front.FindEdge(EdgeName.SideSeam));
        double joined = HemCorner(back) + HemCorner(front);
        double sharpest = Math.Max(Sharpest(back), Sharpest(front));
        return (skirt.Report.Passed && Math.Abs(waist - target) < 0.02 && Math.Abs(sides) < 0.02 && Math.Abs(joined - 180) < 0.2 && sharpest < 1)
            .Label($"waist {waist} of {target}, sides {sides}, joined {joined}, sharpest {sharpest}\n{skirt.Report}");
    });

    // Level: wherever one stands on the hem, the nearest point of the hip line is as far away. The hip line of an opened panel is where each part of it was turned to: the points of the
    // block's hip line, turned with their part, lie at that distance from the hem; so does the side where it leaves the hip.
    [Property(MaxTest = 200)]
    public Property ALine_AnyBody_SideAndCentreHangAsFarBelowTheHip() => Prop.ForAll(Case, c =>
    {
        if (!TryMake(c.Body, c.Asked, out SkirtBlock block, out Block skirt))
        {
            return true;
        }

        double down = -block.Trued.Find("CF hem").Position.Y.Millimeters + block.Trued.Find("CF lower hip").Position.Y.Millimeters;
        return skirt.Panels.All(panel =>
        {
            (double X, double Y)[] hem = Sewn.Points(panel.FindEdge(EdgeName.Hem).Stretches[0]);
            Point2D hip = panel.Notches.Single(notch => notch.Edge == EdgeName.SideSeam).Position;
            double nearest = hem.Min(p => Math.Sqrt(Math.Pow(p.X - hip.X.Millimeters, 2) + Math.Pow(p.Y - hip.Y.Millimeters, 2)));
            return Math.Abs(nearest - down) < 0.01;
        });
    });

    [Fact]
    public void ALine_ShareOfNothingAndNoFlare_LeavesEveryLineWhereItWas()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();

        Block same = block.ALine(Ratio.Zero, Length.Zero);

        foreach (Panel panel in block.Panels)
        {
            (double X, double Y)[] was = [.. panel.Edges.SelectMany(Sewn.Stretches).SelectMany(points => points)];
            (double X, double Y)[] now = [.. same.FindPanel(panel.Name).Edges.SelectMany(Sewn.Stretches).SelectMany(points => points)];
            Assert.All(was.Zip(now), pair => Assert.True(Math.Abs(pair.First.X - pair.Second.X) + Math.Abs(pair.First.Y - pair.Second.Y) < 0.3, $"{pair.First} {pair.Second}"));
        }
    }

    [Fact]
    public void ALine_OfASkirtThatComesInBelowTheHip_IsRefusedWithItsReason()
    {
        Block pegged = SkirtBlock.For(Bodies.Example).Fitted().Draft();

        ConstructionException e = Assert.Throws<ConstructionException>(() => pegged.ALine());

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
        Assert.Contains("Draft the block straight", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void From_AnALine_MakesPiecesThatPass()
    {
        PieceSet pieces = SkirtPattern.From(SkirtBlock.For(Bodies.Example).Draft().ALine());

        Assert.Equal(
            ["front: cut 1 of main cloth on the fold", "back: cut 2 of main cloth, as a pair", "waistband: cut 1 of main cloth", "waistband: cut 1 of interfacing"],
            pieces.CutList.Select(row => row.ToString()));
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    private static bool TryMake(BodyMeasurements body, SkirtAsked asked, out SkirtBlock block, out Block skirt)
    {
        try
        {
            block = asked.Apply(SkirtBlock.For(body)).Draft();
            skirt = block.ALine();
            return true;
        }
        catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal) || SkirtRefused.IsDesign(refusal))
        {
            block = null!;
            skirt = null!;
            return false;
        }
    }

    private static double HemCorner(Panel panel) => Sewn.CornerDegrees(panel.FindEdge(EdgeName.SideSeam).Stretches[0], panel.FindEdge(EdgeName.Hem).Stretches[0]);

    private static double Sharpest(Panel panel) => Sewn.SharpestTurnDegrees(Sewn.Points(panel.FindEdge(EdgeName.Hem).Stretches[0]));

    private static double Area(Panel panel) => Sewn.AreaMm2(Sewn.Points(panel.SeamOutline()));

    private static CurvePath Line(double x0, double y0, double x1, double y1)
        => CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(x0, y0), Point2D.FromMillimeters(x1, y1)));
}
