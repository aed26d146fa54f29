using System;
using System.Linq;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

/// <summary>What a skirt block does where nobody says otherwise, for bodies of every shape and tape. Every expected figure: common practice, no source.</summary>
public class SkirtCustomsTests
{
    private static BodyMeasurements Centimetres(double waist, double hip) => BodyMeasurements.In(LengthUnit.Centimeter)
        .With(BodyMeasurement.WaistGirth, Length.FromCentimeters(waist))
        .With(BodyMeasurement.HipGirth, Length.FromCentimeters(hip));

    private static Point2D At(SkirtBlock block, string name) => block.Drafted.Landmarks.Single(l => l.Name.Text == name).Position;

    private static string[] Advice(SkirtBlock block) => [.. block.Report.Findings.Where(finding => finding.Advice is not null).Select(finding => finding.Check + ", " + finding.Place)];

    // The front goes out (1358 - (1113 + 25) ) / 4 and more for the narrower back: it rises by the most that is usual, 1 in or 2.5 cm.
    [Fact]
    public void Draft_BellyLargerThanTheHip_FrontRisesAndTheSideIsNotLifted()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(1358, 1113)).Draft();

        Assert.Equal(25, At(block, "CF waist").Y.Millimeters, 1e-9);
        Assert.DoesNotContain(block.Drafted.Landmarks, landmark => landmark.Name.Text.EndsWith("side waist", StringComparison.Ordinal));
        Assert.True(block.Front.FindEdge(EdgeName.Waist).End.Y.Millimeters < At(block, "CF waist").Y.Millimeters - 15);
        Assert.True(block.Report.Passed, block.Report.ToString());
    }

    // 28.7 degrees where the seam began to go out at the upper hip.
    [Fact]
    public void Draft_BellyLargerThanTheHip_SideLeansLess()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(1358, 1113)).Draft();
        double lean = Math.Abs(block.Front.FindEdge(EdgeName.SideSeam).Stretches[0].StartDirection.AngleTo(Direction.Down).Degrees);

        Assert.InRange(lean, 15, 25);
    }

    // A parabola that comes in by 2 in over 8 leans by 2 * 2 / 8 at its end: 26.6 degrees; by 1 in over 14, 8.1.
    [Theory]
    [InlineData("18", "2", 26.6)]
    [InlineData("24", "1", 8.1)]
    public void Draft_StronglyPegged_AdvisesOnTheCornersOfTheHem(string length, string comesIn, double degrees)
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("32", "40")).WithLength(Tape.Inches(length)).Fitted(SkirtFit.Straight with { SideHem = Tape.Inches(comesIn) }).Draft();

        Finding[] pegged = [.. block.Report.Advice.Where(finding => finding.Check == "lean of the side seam at the hem")];
        Assert.Equal(degrees > 20 ? ["back", "front"] : [], pegged.Select(finding => finding.Place));
        Assert.All(pegged, finding => Assert.Equal(degrees, finding.RawMeasured * 180 / Math.PI, 1));
        Assert.True(block.Report.Passed);
    }

    // Outward by 1/4 in: 1 1/2 times that, 3/8 in.
    [Fact]
    public void Draft_WaistALittleLargerThanTheHip_FrontRisesByOnceAndAHalfWhatItGoesOut()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("48", "46")).Draft();
        double outInches = At(block, "side lower hip").X.Inches - At(block, "front waist point").X.Inches;

        Assert.True(outInches > 0.1);
        Assert.Equal(1.5 * outInches, At(block, "CF waist").Y.Inches, 1e-9);
        Assert.Contains(block.Steps, step => step.Describe(TapeStep.Sixteenth).Contains("1 1/2 \u00D7 (quarter waist 12 - front hip width"));
    }

    [Fact]
    public void WithCentreFrontDrop_Negative_Rises()
        => Assert.Equal(0.5, At(SkirtBlock.For(Bodies.Inches("44", "44")).WithCentreFrontDrop(Tape.Inches("-1/2")).Draft(), "CF waist").Y.Inches, 1e-9);

    // Quarter waist 226.25; the back quarter at the hip 226.5 + 6.25 of ease and a little more: 6.5 are left, where 12 are usual.
    [Fact]
    public void Fitted_NothingLeftToTake_TakesNoMoreThanThereIsAndSaysSo()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(905, 906)).Fitted().Draft();

        Assert.Equal(((906 + 25 + (1 / 8.0)) / 4) - (905 / 4.0), At(block, "CB waist in").X.Millimeters, 1e-9);
        Assert.Equal(At(block, "side lower hip").X.Millimeters, At(block, "back waist point").X.Millimeters, 1e-9);
        Assert.Contains(block.Steps, step => step.Reason is { } reason && reason.Contains("no more to take in"));
    }

    [Fact]
    public void Fitted_WaistLargerThanTheHip_LeavesTheCentreBackStraightAndSaysSo()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("48", "46")).Fitted().Draft();

        Assert.Equal(0, block.Back.FindEdge(EdgeName.Waist).Start.X.Millimeters, 1e-9);
        Assert.Contains(block.Steps, step => step.Describe(TapeStep.Eighth).Contains("Leave the centre back straight"));
    }

    [Theory]
    [InlineData(967, 1026, "intake of a dart, back")]
    [InlineData(957, 1444, "intake of a dart, back")]
    [InlineData(957, 1444, "side shaping at the waist, front", 0)]
    [InlineData(957, 1444, "lean of the side seam at the waist, back", 0)]
    [InlineData(957, 1444, "darts in a quarter, back", 3)]
    public void Draft_FixedDartCount_IsObeyedWithAdvice(double waist, double hip, string advice, int count = 2)
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Millimetres(waist, hip))
            .WithFrontDarts(new DartPlan { Count = count }).WithBackDarts(new DartPlan { Count = count }).Draft();

        Assert.Equal(count, block.Back.Darts.Count());
        Assert.Contains(advice, Advice(block));
        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.All(block.Report.Findings.Where(finding => finding.Advice is not null), finding => Assert.False(finding.Failed));
    }

    [Fact]
    public void Draft_UsualBody_NeedsNoAdvice() => Assert.Empty(Advice(SkirtBlock.For(Bodies.Example).Draft()));

    [Fact]
    public void Draft_ApexNearASeam_IsAdvised()
        => Assert.Contains("apex from the nearest seam, back", Advice(SkirtBlock.For(Bodies.Inches("16", "20 1/2")).WithBackDarts(new DartPlan { Count = 4, Shortening = Length.Zero }).Draft()));

    // Darts of 7/16 in are 3 1/2 in long, not 5 or 6.
    [Fact]
    public void Draft_NarrowDart_IsNoLongerThanEightTimesItsIntake()
    {
        foreach (BodyMeasurements body in Bodies.Ansur)
        {
            SkirtBlock block = SkirtBlock.For(body).Draft();
            Assert.All(block.Back.Darts.Concat(block.Front.Darts), dart => Assert.True(dart.Length.Millimeters <= Math.Max(75, 8 * dart.Intake.Millimeters) + 1e-6));
        }
    }

    // Quarter waist 11 1/4 in.
    [Fact]
    public void Draft_LargeWaist_HasTwoBackDarts()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("45", "52")).Draft();

        Assert.Equal(2, block.Back.Darts.Count());
        Assert.Single(block.Front.Darts);
    }

    [Fact]
    public void Levels_FromTheBody_WaistToHipFirstThenStature()
    {
        BodyMeasurements adult = Centimetres(70, 96).With(BodyMeasurement.Stature, Length.FromCentimeters(164));
        Assert.Equal(20.5, SkirtBlock.For(adult).Draft().Levels.UpperHip.Centimeters, 1e-9);
        Assert.Equal(25.625, SkirtBlock.For(adult).Draft().Levels.LowerHip.Centimeters, 1e-9);

        BodyMeasurements measured = adult.With(BodyMeasurement.WaistToHip, Length.FromCentimeters(19));
        Assert.Equal(19, SkirtBlock.For(measured).Draft().Levels.UpperHip.Centimeters, 1e-9);
        Assert.Contains(SkirtBlock.For(measured).Draft().Remarks, remark => remark.Contains("waist to hip"));

        SkirtBlock usual = SkirtBlock.For(Centimetres(70, 96)).Draft();
        Assert.Equal([12.5, 20, 25], new[] { usual.Levels.Yoke, usual.Levels.UpperHip, usual.Levels.LowerHip }.Select(depth => depth.Centimeters));
        Assert.Contains(usual.Remarks, remark => remark.Contains("usual figures"));
        Assert.Equal(18, SkirtBlock.For(measured).WithLevels(new SkirtLevels { UpperHip = Length.FromCentimeters(18) }).Draft().Levels.UpperHip.Centimeters, 1e-9);
    }

    // A child of 110 cm: waist to hip 13.75 cm, and darts that end well above it.
    [Fact]
    public void Draft_Child_DartsScaleWithTheLevels()
    {
        SkirtBlock block = SkirtBlock.For(Centimetres(51, 61).With(BodyMeasurement.Stature, Length.FromCentimeters(110))).WithLength(Length.FromCentimeters(35)).Draft();

        Assert.Equal(13.75, block.Levels.UpperHip.Centimeters, 1e-9);
        Assert.All(block.Back.Darts, dart => Assert.True(dart.Length.Centimeters <= 0.75 * 13.75));
        Assert.True(block.Report.Passed, block.Report.ToString());
    }

    [Fact]
    public void WithWaistline_LoweredBack_LowersTheBackAndLeavesTheFrontLevel()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).WithWaistline(Waistline.LoweredBack).Draft();

        Assert.Equal(-0.375, At(block, "CB waist").Y.Inches, 1e-9);
        Assert.Equal(0, block.Front.FindEdge(EdgeName.Waist).Start.Y.Inches, 1e-9);
        Assert.True(block.Report.Passed, block.Report.ToString());
    }

    [Fact]
    public void Fitted_BlendedAtTheYoke_LeavesTheCentreBackStraightUpToIt()
    {
        SkirtFit fit = SkirtFit.Usual with { CentreBackBlend = CentreBackBlend.Yoke };
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Fitted(fit).Draft();
        CurvePath centre = block.Back.FindEdge(EdgeName.Centre).Stretches[0];

        // The curve ends at the waist; it begins at the yoke, 5 in down.
        Assert.Equal(-5, centre.Segments[^1].Start.Y.Inches, 1e-9);
        Assert.Equal(0, centre.Segments[^1].Start.X.Inches, 1e-9);
        Assert.True(block.Report.Passed, block.Report.ToString());
    }

    // A body in centimetres with everything said as off an inch tape is the same draft.
    [Property(MaxTest = 60)]
    public Property Draft_EitherTape_DiffersByTheUsualFiguresOnly() => Prop.ForAll(Gen.Elements(Bodies.Ansur.AsEnumerable()).ToArbitrary(), body =>
    {
        BodyMeasurements inches = BodyMeasurements.In(LengthUnit.Inch)
            .With(BodyMeasurement.WaistGirth, body[BodyMeasurement.WaistGirth]).With(BodyMeasurement.HipGirth, body[BodyMeasurement.HipGirth]);
        SkirtBlock a = Said(SkirtBlock.For(inches)).Draft();
        SkirtBlock b = Said(SkirtBlock.For(body)).Draft();
        return a.Trued.Landmarks.Zip(b.Trued.Landmarks).All(pair => pair.First.Position.DistanceTo(pair.Second.Position).Millimeters < 1e-6);
    });

    // Every figure in a step is on a millimetre or half a millimetre, or says that it is not.
    [Property(MaxTest = 60)]
    public Property Steps_BodyInCentimetres_PrintNoFigureOffTheTape() => Prop.ForAll(
        (from body in Gen.Elements(Bodies.Ansur.AsEnumerable()) from isFitted in Gen.Elements(true, false) select (body, isFitted)).ToArbitrary(),
        c =>
        {
            SkirtBlock block = (c.isFitted ? SkirtBlock.For(c.body).Fitted() : SkirtBlock.For(c.body)).Draft();
            string[] off = [.. block.Steps.Select(step => step.Describe(TapeStep.Millimeter)).Where(text => Regex.IsMatch(text, @"(?<![~\d.])\d+\.(?:\d[0-46-9]|\d{3,})(?!\d)(?! \u00D7)"))];
            return (off.Length == 0).Label(string.Join("\n", off));
        });

    [Fact]
    public void For_BodyInCentimetres_UsesRoundFiguresOfThatTape()
    {
        SkirtBlock block = SkirtBlock.For(Centimetres(80, 100)).Draft();

        Assert.Equal(2.5, block.HipEase.Centimeters, 1e-9);
        Assert.Equal(60, block.SkirtLength.Centimeters, 1e-9);
        Assert.Equal(0.6, At(block, "CB waist").Y.Centimeters, 1e-9);
        Assert.Equal(12.5, block.Front.Darts.First().Length.Centimeters, 1e-9);
        Assert.Equal(15, block.Back.Darts.First().Length.Centimeters, 1e-9);
        Assert.Equal(2.5, SkirtBlock.For(Centimetres(80, 100)).Fitted().Draft().Fit.SideHem.Centimeters, 1e-9);
        Assert.Equal(1.2, SkirtBlock.For(Centimetres(80, 100)).Fitted().Draft().Fit.CentreBackWaist.Centimeters, 1e-9);
    }

    [Theory]
    [InlineData(80, 100, 164, 40, 180)]
    [InlineData(51, 61, 110, 40, 120)]
    public void From_BodyInCentimetres_CutsPiecesByThatTape(double waist, double hip, double stature, double hemMm, double zipMm)
    {
        SkirtBlock block = SkirtBlock.For(Centimetres(waist, hip).With(BodyMeasurement.Stature, Length.FromCentimeters(stature))).WithLength(Length.FromCentimeters(40)).Draft();
        PatternPiece back = SkirtPattern.From(block).Pieces.First(piece => piece.Name.Text == "back");

        Assert.Equal(hemMm, back.FindEdge(EdgeName.Hem).Allowance.Millimeters, 1e-9);
        Assert.Equal(12, back.FindEdge(EdgeName.SideSeam).Allowance.Millimeters, 1e-9);
        CurvePath centre = back.Panel.FindEdge(EdgeName.Centre).Stretches[0];
        Notch stop = back.Panel.Notches.First(notch => notch.Edge == EdgeName.Centre && notch.Count == 1);
        Assert.Equal(zipMm, (centre.Length - centre.LengthTo(centre.ClosestTo(stop.Position))).Millimeters, 1e-3);
    }

    private static SkirtBlockBuilder Said(SkirtBlockBuilder builder) => builder
        .ShapedBy(ShapingTable.In(LengthUnit.Inch).Row("0", "1/4", "1/2", "3/4", "1/2").Row("16", "1", "2", "2 1/2", "1").ReadBy(ShapingLookup.Interpolated).Outside(ShapingOutside.Clamp))
        .WithHipEase(Tape.Inches("1")).WithLength(Tape.Inches("24")).WithSideLift(Tape.Inches("1/2")).WithCentreBackLift(Tape.Inches("1/4"))
        .WithLargestDart(Tape.Inches("1 1/4")).WithSmallestDart(Tape.Inches("3/8")).WithLargestSideShaping(Tape.Inches("1 1/2"))
        .WithLevels(new SkirtLevels { Yoke = Tape.Inches("5"), UpperHip = Tape.Inches("8"), LowerHip = Tape.Inches("10") })
        .WithFrontDarts(new DartPlan { Count = 1, Length = Tape.Inches("5"), Shortening = Tape.Inches("3/4") })
        .WithBackDarts(new DartPlan { Count = 2, Length = Tape.Inches("6"), Shortening = Tape.Inches("3/4") });
}
