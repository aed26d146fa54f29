using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Measurement;

namespace Pattern.Core.Tests.Output;

public class StepsTextTests
{
    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    private static readonly TapeStep[] Tapes = [TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.Millimeter, TapeStep.HalfMillimeter];

    [Fact]
    public void PrintedSum_OfFalseAndTrueSums_TellsThemApart()
    {
        Assert.False(PrintedSum.AddsUp("1/2 of 7/8 = 3/8 in"));
        Assert.False(PrintedSum.AddsUp("1/2 of hip girth 101.0 + 1/2 of hip ease 2.5 = ~51.8 cm"));
        Assert.True(PrintedSum.AddsUp("1/2 of hip girth 101.00 + 1/2 of hip ease 2.50 = 51.75 cm"));
        Assert.True(PrintedSum.AddsUp("1/2 of (box width 20 3/8 - back wider by 1/2) = 9 15/16 in"));
        Assert.True(PrintedSum.AddsUp("(1/4 of a 8, at most 1 1/4) + b 2 = 3 1/4 in"));
        Assert.True(PrintedSum.AddsUp("b 2 - a 8 = -6 in"));
        Assert.Null(PrintedSum.AddsUp("hip girth ~101.0 cm"));
    }

    // common practice, no source: half of 7/8 is 7/16.
    [Fact]
    public void Describe_HalfOfSevenEighths_IsSevenSixteenths()
        => Assert.Equal("1/2 of 7/8 = 7/16 in", WorkedLength.Given(Tape.Inches("7/8")).Half().Describe(TapeStep.Eighth));

    [Fact]
    public void Describe_WhatNoMarkMakesTrue_IsTheResultAlone()
        => Assert.Equal("~3 3/8 in", WorkedLength.Given(Tape.Inches("10")).DividedBy(3).Describe(TapeStep.Eighth));

    [Fact]
    public void Describe_LessThanTheStep_IsNotRoundedAwayWhereAFinerMarkShowsIt()
        => Assert.Equal("~1/16 in", WorkedLength.Given(UnitsNet.Length.FromMillimeters(1.2)).Describe(TapeStep.Quarter));

    [Property]
    public Property Steps_OfAnyBody_PrintOnlySumsThatAreTrue() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue - 1).ToArbitrary(),
        number =>
        {
            SkirtBlock block;
            try
            {
                block = RandomDrafts.Of(number).Draft();
            }
            catch (ConstructionException)
            {
                return true.Label("refused");
            }

            IEnumerable<string> printed =
                from tape in Tapes
                from working in block.Steps.SelectMany(step => step.Workings)
                select working.Describe(tape);
            string wrong = printed.FirstOrDefault(text => PrintedSum.AddsUp(text) == false) ?? string.Empty;
            return (wrong.Length == 0).Label(wrong);
        });

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToStepsText_AnySkirt_SpeaksInTheReadersUnitAndMovesNothingByNothing(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);

        string inches = block.ToStepsText(TapeStep.Eighth);
        string centimetres = block.ToStepsText(TapeStep.Millimeter);

        Assert.DoesNotMatch(new Regex(@"\d (mm|cm)\b"), inches);
        Assert.DoesNotMatch(new Regex(@"\d in\b"), centimetres.Replace("1 mm", string.Empty));
        Assert.DoesNotMatch(new Regex(@"\bby ~?0(\.0+)? (in|cm)"), inches + centimetres);
        Assert.Single(Regex.Matches(inches, "after ~"));
        Assert.DoesNotMatch(new Regex(@"-0(\.0+)? "), inches + centimetres);
    }

    [Fact]
    public void ToStepsText_DartsOtherThanTheTable_SaysWhy()
    {
        // By hand: waist 26, hip 38 with 1 in of ease; a table that gives the back 5/8 in, the front too little to sew; what is over 1 1/2 in at the side goes to the dart.
        string text = SkirtBlock.For(Bodies.Inches("26", "38"))
            .ShapedBy(ShapingTable.In(UnitsNet.Units.LengthUnit.Inch).Outside(ShapingOutside.Clamp).Row("12", "0", "1/4", "5/8", "0"))
            .Draft().ToStepsText(TapeStep.Eighth);

        // Quarter hip 9 3/4, quarter waist 6 1/2: 3 1/4 in to take in.
        Assert.Contains("The back side seam would take in back hip width 9 3/4 - quarter waist 6 1/2 - back dart intake 5/8 = 2 5/8 in, at most 1 1/2 in: 1 1/8 in goes to the darts, back dart intake 5/8 + 1 1/8 = 1 3/4 in.", text);
        Assert.Contains("The front side seam would take in front hip width 9 3/4 - quarter waist 6 1/2 = 3 1/4 in, at most 1 1/2 in: the darts take the rest, 1 3/4 in.", text);
    }

    [Fact]
    public void ToStepsText_EveryDart_SaysWhichWayItIsPressed()
    {
        SkirtBlock block = DrawnSkirts.Draft("two darts");

        Assert.Equal(
            block.Back.Darts.Count() + block.Front.Darts.Count(),
            block.Steps.Count(step => step.Template.Contains("Press the dart toward the centre", StringComparison.Ordinal)));
    }

    [Fact]
    public void ToStepsText_HipCurve_HasGuidePointsOfTheCurveDrawn()
    {
        SkirtBlock block = DrawnSkirts.Draft("default");
        Step step = block.Steps.First(one => one.Drew.Any(line => line.Name.Text == "back side seam"));
        CurvePath curve = step.Drew.Single().Path;

        // Halfway up, found by halving the curve until the height is met, and not by crossing lines.
        double height = (curve.Start.Y.Millimeters + curve.End.Y.Millimeters) / 2;
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = curve.SegmentsRaw[0].CubicRaw.PointAtRaw(middle).Y.Millimeters < height ? (middle, high) : (low, middle);
        }

        double inMm = curve.Start.X.Millimeters - curve.SegmentsRaw[0].CubicRaw.PointAtRaw(low).X.Millimeters;
        string figure = WorkedLength.Given(UnitsNet.Length.FromMillimeters(Math.Round(inMm))).Describe(TapeStep.Millimeter);
        Assert.Matches(new Regex("halfway ~?" + Regex.Escape(figure) + " to the left"), block.ToStepsText(TapeStep.Millimeter));
    }
}
