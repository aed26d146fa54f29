using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Blocks;

public class SheathBlockTests
{
    private static readonly BodyMeasurements Viola = BodiceBodies.Handbook.With(BodyMeasurement.HipGirth, "94");

    private static readonly SheathBlock Usual = SheathBlock.For(Viola).Draft();

    [Fact]
    public void Draft_Anybody_HasBackAndFrontFromShoulderToHem()
    {
        Assert.True(Usual.Report.Passed, Usual.Report.ToString());
        Assert.Equal(["back", "front", "sleeve"], Usual.Panels.Select(panel => panel.Name.Text));
        Assert.Equal(["neckline", "shoulder", "armhole", "side", "hem", "centre"], Usual.FindPanel(PanelName.Back).Edges.Select(edge => edge.Name.Text));
    }

    // Trade facts: a double dart wider than 1 1/4 in does not lie flat.
    [Fact]
    public void Draft_DoubleDarts_ArePointedAtBothEndsAndNoWiderThanLiesFlat()
    {
        foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
        {
            InsideDart dart = Assert.Single(Usual.FindPanel(name).InsideDarts);
            Assert.InRange(dart.Intake.Millimeters, 10, 35);
            Assert.True(dart.FirstApex.Y.Millimeters > 100 && dart.SecondApex.Y.Millimeters < -100);
            Assert.Equal(0, dart.Left.Y.Millimeters, 6);
        }
    }

    // The bug of the first drawing: darts inside a panel were left out of it.
    [Fact]
    public void Draw_DartsInsideAPanel_AreDrawn()
    {
        InsideDart dart = Usual.FindPanel(PanelName.Front).InsideDarts[0];
        PathMark[] legs = [.. Usual.Draw().Layers.SelectMany(layer => layer.Marks).OfType<PathMark>().Where(mark => mark.Role == LineRole.DartLeg)];
        Assert.Contains(legs, leg => leg.Path.Start.DistanceTo(dart.FirstApex).Millimeters < 1e-6 || leg.Path.End.DistanceTo(dart.FirstApex).Millimeters < 1e-6);
        Assert.Contains(legs, leg => leg.Path.Start.DistanceTo(dart.SecondApex).Millimeters < 1e-6 || leg.Path.End.DistanceTo(dart.SecondApex).Millimeters < 1e-6);
    }

    [Fact]
    public void Draft_AnHourglass_IsRefusedForItWantsSeams()
        => Assert.Equal(
            DiagnosticCode.MethodDeclines,
            Assert.Throws<ConstructionException>(() => SheathBlock.For(BodiceBodies.Centimetres(94, 60).With(BodyMeasurement.HipGirth, "100")).Draft()).Code);

    [Property(MaxTest = 40)]
    public Property Draft_AnyBody_IsSewnTogetherAsAsked() => Prop.ForAll(BodiceBodies.Any.ToArbitrary(), body =>
    {
        SheathBlock sheath;
        try
        {
            sheath = SheathBlock.For(body).WithoutSleeves().Draft();
        }
        catch (ConstructionException e)
        {
            return e.Message.StartsWith("PC", StringComparison.Ordinal).Label(e.Message);
        }

        Panel back = sheath.FindPanel(PanelName.Back);
        Panel front = sheath.FindPanel(PanelName.Front);
        double sides = BodiceSewn.ClosedMm(back, EdgeName.SideSeam) - BodiceSewn.ClosedMm(front, EdgeName.SideSeam);
        double hem = 2 * (BodiceSewn.ClosedMm(back, EdgeName.Hem) + BodiceSewn.ClosedMm(front, EdgeName.Hem));
        double hip = (body.TryFind(BodyMeasurement.HipGirth, out Length measured) ? measured.Millimeters : body[BodyMeasurement.BustGirth].Millimeters + 60) + 25;
        return sheath.Report.Passed.Label(sheath.Report.ToString())
            .And((Math.Abs(sides) < 0.02).Label($"sides off by {sides}"))
            .And((Math.Abs(hem - hip) < 0.01).Label($"{hem} for {hip}"));
    });
}
