using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Sizing;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Sizing;

public class TapeEffectsTests
{
    private const double InchMm = 25.4;

    private static IEnumerable<Trial> Skirts(int every) => Bodies.Ansur.Where((_, i) => i % every == 0).Select((body, i) => Trial.Of(BodyRow.Of(i + 1, body), BuiltInMethods.Skirt));

    // A method that lays off one distance: the effect of a tape is what the nearest mark is off by, a closed form.
    private static DraftingMethod OneDistance() => DraftingMethod.Of("strip", "1", draft =>
    {
        WorkedLength girth = draft.Take(BodyMeasurement.WaistGirth);
        Landmark left = draft.Sheet.Mark("left", Point2D.Origin);
        Landmark right = draft.Sheet.SquareAcross(left, Across.Right, girth, "right");
        draft.Add(Panel.Named(PanelName.Of("strip"))
            .WithEdge(EdgeName.Of("top"), EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(left.Position, right.Position)))
            .WithEdge(EdgeName.Of("bow"), EdgeRole.Hem, CurvePath.FromArc(CircularArc.Through(right.Position, Point2D.At(girth.Value / 2, -girth.Value / 4), left.Position)))
            .Make());
        draft.Aim("strip", "block", left.Position.DistanceTo(right.Position), girth.Value, _ => girth.Value);
    });

    // 30 1/3 in: the nearest eighth is 30 3/8, 1/24 off; the nearest sixty-fourth 30 21/64, 1/192 off. 31 in is on every mark. Of three the usual one is the middle one.
    [Fact]
    public void Of_OneDistance_IsOffByTheNearestMark()
    {
        Trial[] trials = [.. new[] { 30 + (1 / 3.0), 31, 30 + (1 / 16.0) }.Select((waist, i) => Trial.Of(BodyRow.Of(i + 1, BodyMeasurements.In(UnitsNet.Units.LengthUnit.Inch).With(BodyMeasurement.WaistGirth, Length.FromInches(waist))), OneDistance()))];

        TapeEffect eighths = TapeEffects.Of(trials, TapeStep.Eighth).Effects.Single();
        TapeEffect sixtyFourths = TapeEffects.Of(trials, TapeStep.SixtyFourth).Effects.Single();

        Assert.Equal((3, 3), (eighths.Count, eighths.WorstTrial.Row.Number));
        Assert.Equal(InchMm / 16, eighths.Worst.Millimeters, 1e-9);
        Assert.Equal(InchMm / 24, eighths.Usual.Millimeters, 0.01);
        Assert.Equal(InchMm / 192, sixtyFourths.Worst.Millimeters, 1e-9);
        Assert.Equal(0, sixtyFourths.Usual.Millimeters, 0.01);
    }

    // 30 1/3 in is 1/24 off in eighths (1.06 mm), 1/48 in sixteenths (0.53 mm), 1/96 in thirty-seconds (0.26 mm), and 1/12 in quarters and 1/6 in halves.
    [Theory]
    [InlineData(0.6, 16, true)]
    [InlineData(1.1, 8, true)]
    [InlineData(0.1, 64, false)]
    [InlineData(10, 2, true)]
    public void TryFindCoarsestTape_StaysWithinTheTolerance(double toleranceMm, int parts, bool found)
    {
        Block strip = OneDistance().For(BodyMeasurements.In(UnitsNet.Units.LengthUnit.Inch).With(BodyMeasurement.WaistGirth, Length.FromInches(30 + (1 / 3.0)))).Draft();

        Assert.Equal(found, strip.TryFindCoarsestTape(Length.FromMillimeters(toleranceMm), out TapeStep tape));
        Assert.Equal("1/" + parts + " in", tape.ToString());
    }

    // Each of n distances is off by half a mark at the most; the whole waist takes each twice, once for either half of the body, and once more where it is laid off on both panels.
    [Property(MaxTest = 150)]
    public Property ClosedWaist_AtSixtyFourths_IsNeverWorseThanAtEighthsBeyondItsBound() => Prop.ForAll(Gen.Elements(Bodies.Ansur.AsEnumerable()).ToArbitrary(), body =>
    {
        Block block = SkirtBlock.For(body).Draft();
        double boundMm = 4 * block.Steps.Sum(step => step.Workings.Count()) * InchMm / 128;
        double eighths = ClosedWaist(block, TapeStep.Eighth);
        double sixtyFourths = ClosedWaist(block, TapeStep.SixtyFourth);

        return (sixtyFourths <= eighths + boundMm && sixtyFourths <= boundMm).Label($"{block.Body}: {sixtyFourths} at 1/64, {eighths} at 1/8, bound {boundMm}");
    });

    private static double ClosedWaist(Block block, TapeStep tape) => block.ReadOffTape(tape).Where(effect => effect.Check == "closed waist" && effect.Place == "block").Max(effect => Math.Abs(effect.RawMeasured - effect.RawBefore));

    [Fact]
    public void OverThePopulation_AFinerTapeIsBetter_UsuallyAndAtWorst()
    {
        Trial[] skirts = [.. Skirts(20)];
        TapeEffects[] ladder = [.. new[] { TapeStep.SixtyFourth, TapeStep.Sixteenth, TapeStep.Eighth, TapeStep.Quarter }.Select(tape => TapeEffects.Of(skirts, tape))];

        foreach ((TapeEffects finer, TapeEffects coarser) in ladder.Zip(ladder.Skip(1)))
        {
            TapeEffect[] waists = [.. new[] { finer, coarser }.Select(effects => effects.Effects.First(effect => effect.What == "closed waist" && effect.Place == "block"))];
            Assert.True(waists[0].Worst < waists[1].Worst, waists[0] + " | " + waists[1]);
            Assert.True(waists[0].Usual < waists[1].Usual, waists[0] + " | " + waists[1]);
            Assert.True(waists[0].Usual <= waists[0].Worst);
        }
    }
}
