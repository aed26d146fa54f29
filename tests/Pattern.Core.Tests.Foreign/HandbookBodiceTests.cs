using System;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Samples.Methods;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Foreign;

/// <summary>A handbook's bodice with public members only, coordinate by coordinate: recalled from W. Aldrich, Metric Pattern Cutting for Women's Wear; every coordinate recomputed from the
/// recalled formulas, apart from this library.</summary>
public class HandbookBodiceTests
{
    private static readonly BodyMeasurements Body = BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.BustGirth, "88")
        .With(BodyMeasurement.WaistGirth, "68")
        .With(BodyMeasurement.BackNeckPointToWaist, "41")
        .With(BodyMeasurement.ScyeDepthLength, "21")
        .With(BodyMeasurement.AcrossBackWidth, "34.4")
        .With(BodyMeasurement.AcrossFrontWidth, "32.4")
        .With(BodyMeasurement.ShoulderLength, "12.25")
        .With(BodyMeasurement.NeckBaseGirth, "37");

    private static readonly Block Hand = new HandbookBodice().For(Body).With(HandbookBodice.Truing, "by hand").Draft();

    // Centimetres, x from the centre back, y down from the level of the side neck point; to a hundredth of a millimetre.
    [Theory]
    [InlineData("P1", 0, 1.5)]
    [InlineData("P2", 0, 23)]
    [InlineData("P5", 0, 42.5)]
    [InlineData("P3", 49, 23)]
    [InlineData("P9", 7.2, 0)]
    [InlineData("P11", 19.470, 5)]
    [InlineData("P14", 17.7, 23)]
    [InlineData("P16", 17.7, 14)]
    [InlineData("P20", 42.3, 0)]
    [InlineData("P21", 49, 7.2)]
    [InlineData("P22", 29.3, 23)]
    [InlineData("bust point", 39.15, 25.5)]
    [InlineData("P27", 35.3, 0)]
    [InlineData("P30", 24.917, 6.5)]
    [InlineData("P31", 29.3, 17.733)]
    [InlineData("P32", 23.5, 23)]
    public void Draft_WorkedExample_EveryPointIsWhereTheFormulasPutIt(string landmark, double x, double y)
    {
        Point2D found = Hand.Drafted.Find(landmark).Position;
        Assert.Equal(x, found.X.Centimeters, 0.001);
        Assert.Equal(y, -found.Y.Centimeters, 0.001);
    }

    // As chord-length cubic splines through their points, square to the shoulder and level at the side: 21.386 and 21.181 cm.
    [Fact]
    public void Draft_WorkedExample_ArmholesAreAsLong()
    {
        Assert.Equal(21.386, Hand.FindPanel(PanelName.Back).FindEdge(EdgeName.Armhole).SewnLength.Centimeters, 0.01);
        Assert.Equal(21.181, Hand.FindPanel(PanelName.Front).FindEdge(EdgeName.Armhole).SewnLength.Centimeters, 0.01);
    }

    // The faults of the draft itself: dart legs 25.694 and 25.789 cm, side seams 19.602 and 19.558 cm.
    [Fact]
    public void Draft_ByHand_TheChecksFindBothItsFaults()
    {
        Assert.False(Hand.Report.Passed);
        Finding[] faults = [.. Hand.Report.Failures];
        Assert.Contains(faults, fault => fault.Check.StartsWith("bust dart", StringComparison.Ordinal) && Near(fault, 25.789, 25.694));
        Assert.Contains(faults, fault => fault.Check.StartsWith("side seam", StringComparison.Ordinal) && Near(fault, 19.602, 19.558));
        Assert.Equal(2, faults.Length);
    }

    [Fact]
    public void Draft_Trued_BothFitAndTheShoulderKeepsItsLength()
    {
        Block trued = new HandbookBodice().For(Body).Draft();
        Assert.True(trued.Report.Passed, trued.Report.ToString());
        Panel front = trued.FindPanel(PanelName.Front);
        Assert.Equal(25.694, front.FindEdge(EdgeName.Of("outer dart leg")).SewnLength.Centimeters, 0.001);
        Assert.Equal(19.602, front.FindEdge(EdgeName.SideSeam).SewnLength.Centimeters, 0.001);
        Assert.Equal(12.25, front.FindEdge(EdgeName.Shoulder).SewnLength.Centimeters, 0.0001);
    }

    private static bool Near(Finding fault, double measuredCm, double targetCm)
        => Math.Abs(((Length)fault.Measured).Centimeters - measuredCm) < 0.002 && Math.Abs(((Length)fault.Target).Centimeters - targetCm) < 0.002;
}
