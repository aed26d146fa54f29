using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

public class BodiceBlockTests
{
    private static readonly BodiceBlock Usual = BodiceBlock.For(BodiceBodies.Handbook).Draft();

    // W. Aldrich, Metric Pattern Cutting for Women's Wear, from memory: the chart's figures at bust 88.
    [Theory]
    [InlineData("back neck point to waist", 410)]
    [InlineData("scye depth length", 210)]
    [InlineData("across back width", 344)]
    [InlineData("across front width", 324)]
    [InlineData("shoulder length", 122.5)]
    [InlineData("neck base girth", 370)]
    [InlineData("side neck point to bust point", 257)]
    public void Draft_OfTheHandbooksBody_AssumesWhatItsChartSays(string term, double expectedMm)
        => Assert.Equal(expectedMm, ((Length)Assumed(Usual, term).Measured).Millimeters, 6);

    // Least squares over the survey, in centimetres: value = a + b bust + c stature. What is assumed changes as it does; see the data of the survey.
    [Theory]
    [InlineData("back neck point to waist", 0.116, 0.168)]
    [InlineData("across back width", 0.221, 0.042)]
    [InlineData("shoulder length", 0.003, 0.062)]
    [InlineData("neck base girth", 0.140, 0.079)]
    public void Draft_OfAnotherBody_AssumesWithTheSlopesOfTheSurvey(string term, double perBust, double perStature)
    {
        (double[] slopes, double[] bust, double[] stature, double[] value) = Regressed(term);
        Assert.Equal(slopes[0], perBust, 0.002);
        Assert.Equal(slopes[1], perStature, 0.002);
        Assert.Equal(1986, value.Length + bust.Length - stature.Length);

        BodyMeasurements larger = BodiceBodies.Centimetres(98, 78).With(BodyMeasurement.Stature, Length.FromCentimeters(164));
        BodyMeasurements taller = BodiceBodies.Centimetres(88, 68).With(BodyMeasurement.Stature, Length.FromCentimeters(174));
        double usual = AssumedCm(Usual, term);
        Assert.Equal(10 * perBust, AssumedCm(BodiceBlock.For(larger).Draft(), term) - usual, 6);
        Assert.Equal(10 * perStature, AssumedCm(BodiceBlock.For(taller).Draft(), term) - usual, 6);
    }

    [Fact]
    public void Draft_WhatWasMeasured_WinsAndIsNotAssumed()
    {
        BodyMeasurements body = BodiceBodies.Handbook
            .With(BodyMeasurement.BackNeckPointToWaist, "39")
            .With(BodyMeasurement.ShoulderLength, "13")
            .With(BodyMeasurement.NeckBaseGirth, "36");
        BodiceBlock block = BodiceBlock.For(body).Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.DoesNotContain(block.Report.Advice, advice => advice.Check is "assumed back neck point to waist" or "assumed shoulder length" or "assumed neck base girth");
        Assert.Equal(390, block.Back.FindEdge(EdgeName.Centre).SewnLength.Millimeters, 6);
        Assert.Equal(130, BodiceSewn.ClosedMm(block.Front, EdgeName.Shoulder), 3);
        Assert.Equal(360, 2 * (BodiceSewn.ClosedMm(block.Back, EdgeName.Neckline) + BodiceSewn.ClosedMm(block.Front, EdgeName.Neckline)), 2);
    }

    [Fact]
    public void Draft_Anybody_HasPanelsAndEdgesInTheirOrder()
    {
        Assert.True(Usual.Report.Passed, Usual.Report.ToString());
        Assert.Equal(["back", "front"], Usual.Panels.Select(panel => panel.Name.Text));
        foreach (Panel panel in Usual.Panels)
        {
            Assert.Equal(["neckline", "shoulder", "armhole", "side", "waist", "centre"], panel.Edges.Select(edge => edge.Name.Text));
        }
    }

    // From memory: 0.46 to 0.50 of the bust girth is usual for the armhole; balance 0 to 25 mm, common practice, no source.
    [Fact]
    public void Draft_OfTheHandbooksBody_HasAUsualArmholeAndBalance()
    {
        Assert.InRange(Usual.ArmholeLength / Length.FromCentimeters(88), 0.46, 0.50);
        Assert.InRange(Usual.Balance.Millimeters, 0, 25);
    }

    [Fact]
    public void Draft_EveryDartOfTheFront_PointsAtTheBustPointAndEndsBeforeIt()
    {
        Dart[] darts = [.. Usual.Front.Edges.SelectMany(edge => edge.Darts)];
        Assert.Equal(2, darts.Length);
        foreach (Dart dart in darts)
        {
            Vector2D toPoint = Usual.BustPoint - dart.MiddleOfIntake;
            Vector2D toApex = dart.Apex - dart.MiddleOfIntake;
            double offDeg = Math.Abs(Heading(toApex) - Heading(toPoint));
            Assert.InRange(offDeg, 0, 1);
            Assert.InRange(dart.Apex.DistanceTo(Usual.BustPoint).Millimeters, 13, 40);
        }
    }

    // Closed form: opened about the bust point, the underarm rises by what the front is longer, so the angle is that between both ways from the bust point to it.
    [Fact]
    public void Draft_BustDart_TakesUpWhatTheFrontIsLongerThanTheBack()
    {
        Point2D Find(string name) => Usual.Drafted.Landmarks.Single(landmark => landmark.Name.Text == name).Position;
        Point2D point = Find("bust point");
        double folded = Math.Atan2((Find("front underarm folded").Y - point.Y).Millimeters, (point.X - Find("front underarm folded").X).Millimeters);
        double open = Math.Atan2((Find("front underarm").Y - point.Y).Millimeters, (point.X - Find("front underarm").X).Millimeters);
        double leg = point.DistanceTo(Find("lower bust dart leg")).Millimeters;
        double intake = Find("upper bust dart leg").DistanceTo(Find("lower bust dart leg")).Millimeters;

        Assert.Equal(2 * leg * Math.Sin((open - folded) / 2), intake, 6);
        Assert.Equal(leg, point.DistanceTo(Find("upper bust dart leg")).Millimeters, 6);
    }

    [Fact]
    public void Draft_WithTheBackShoulderEased_HasNoShoulderDartAndIsLongerThere()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).WithBackShoulder(BackShoulder.Eased).Draft();
        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Empty(block.Back.FindEdge(EdgeName.Shoulder).Darts);
        double eased = BodiceSewn.ClosedMm(block.Back, EdgeName.Shoulder) - BodiceSewn.ClosedMm(block.Front, EdgeName.Shoulder);
        Assert.InRange(eased, 5, 10);       // common practice, no source
    }

    [Fact]
    public void Draft_WithMoreEase_IsLargerByIt()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Handbook).WithBustEase(Length.FromCentimeters(12)).WithWaistEase(Length.FromCentimeters(6)).Draft();
        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(740, 2 * (BodiceSewn.ClosedMm(block.Back, EdgeName.Waist) + BodiceSewn.ClosedMm(block.Front, EdgeName.Waist)), 2);
        double wider = (block.Back.FindEdge(EdgeName.Armhole).End.X - Usual.Back.FindEdge(EdgeName.Armhole).End.X).Millimeters;
        Assert.Equal((120 - 75) / 4.0, wider, 6);
    }

    [Fact]
    public void Draft_AnHourglass_HasTwoDartsWhereOneWouldBeTooWide()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Centimetres(92, 62)).Draft();
        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(2, block.Front.FindEdge(EdgeName.Waist).Darts.Count);
    }

    [Fact]
    public void Draft_AWaistLargerThanTheBust_HasNoWaistDartsAndSaysThatTheSideGoesOut()
    {
        BodiceBlock block = BodiceBlock.For(BodiceBodies.Centimetres(100, 108)).Draft();
        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.All(block.Panels, panel => Assert.Empty(panel.FindEdge(EdgeName.Waist).Darts));
        Assert.Contains(block.Report.Advice, advice => advice.Check == "side seam at the waist goes out by");
    }

    [Theory]
    [InlineData("scye depth length", "32", "armhole line lies too near to the waist")]
    [InlineData("across back width", "46", "armhole too narrow", "17")]
    [InlineData("shoulder length", "7", "shoulder is too short")]
    [InlineData("shoulder length", "19", "shoulder is too long")]
    [InlineData("bust point to bust point width", "48", "bust point would lie beyond the side seam")]
    [InlineData("side neck point to waist", "60", "longer than its bust dart can take up")]
    public void Draft_ABodyThatDoesNotFitTogether_IsRefusedWithWhatToLookAt(string term, string value, string reason, string shoulder = "12.25")
    {
        Assert.True(BodyMeasurement.TryFind(term, out BodyMeasurement? key));
        ConstructionException refusal = Assert.Throws<ConstructionException>(() => BodiceBlock.For(BodiceBodies.Handbook.With(BodyMeasurement.ShoulderLength, shoulder).With(key, value)).Draft());
        Assert.Equal(DiagnosticCode.MethodDeclines, refusal.Code);
        Assert.Contains(reason, refusal.Message, StringComparison.Ordinal);
        Assert.NotNull(refusal.Measured);
        Assert.NotNull(refusal.Allowed);
    }

    [Fact]
    public void Draft_WithoutBust_SaysWhatIsMissing()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "27");
        Assert.Equal(DiagnosticCode.BodyMeasurementMissing, Assert.Throws<ConstructionException>(() => BodiceBlock.For(body).Draft()).Code);
    }

    private static double Heading(Vector2D way) => Math.Atan2(way.Y.Millimeters, way.X.Millimeters) * 180 / Math.PI;

    private static Finding Assumed(Block block, string term) => block.Report.Advice.Single(advice => advice.Check == "assumed " + term);

    private static double AssumedCm(Block block, string term) => ((Length)Assumed(block, term).Measured).Centimeters;

    // By the normal equations of two variables and a constant.
    private static (double[] Slopes, double[] Bust, double[] Stature, double[] Value) Regressed(string term)
    {
        Assert.True(BodyMeasurement.TryFind(term, out BodyMeasurement? key));
        double[] bust = [.. BodiceBodies.Ansur.Select(body => body[BodyMeasurement.BustGirth].Centimeters)];
        double[] stature = [.. BodiceBodies.Ansur.Select(body => body[BodyMeasurement.Stature].Centimeters)];
        double[] value = [.. BodiceBodies.Ansur.Select(body => body[key].Centimeters)];
        double Cross(double[] a, double[] b) => a.Zip(b, (x, y) => (x - a.Average()) * (y - b.Average())).Sum();
        (double bb, double ss, double bs, double bv, double sv) = (Cross(bust, bust), Cross(stature, stature), Cross(bust, stature), Cross(bust, value), Cross(stature, value));
        double determinant = (bb * ss) - (bs * bs);
        return ([((bv * ss) - (sv * bs)) / determinant, ((sv * bb) - (bv * bs)) / determinant], bust, stature, value);
    }
}
