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
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

public class StepsTextTests
{
    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    private static readonly TapeStep[] Tapes = [TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.Millimeter, TapeStep.HalfMillimeter];

    // A stranger who drew from the sheet found a back of 32.1 and a front of 31.2 beside a box of 63.25.
    [Theory]
    [InlineData("102.5", "110")]
    [InlineData("96.5", "124")]
    [InlineData("72", "98")]
    [InlineData("68.3", "94.9")]
    public void ToStepsText_InCentimetres_BackAndFrontAddUpToTheBox(string waist, string hip)
    {
        string text = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, waist).With(BodyMeasurement.HipGirth, hip)).Draft().ToStepsText(TapeStep.Millimeter);

        Assert.Equal(Said("box width"), Said("back hip width") + Said("front hip width"));

        decimal Said(string name) => decimal.Parse(Regex.Match(text, $@"(?m)^{name}  .*?(?<figure>\d+\.\d+) cm$").Groups["figure"].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void ToStepsText_OfASecondDart_ShowsTheWorkingOfItsPlace()
    {
        string text = SkirtBlock.For(Bodies.Inches("26", "36 1/2")).Draft().ToStepsText(TapeStep.Eighth);

        string[] places = [.. text.Split('\n').Where(line => line.Contains("dart 2 centre on the", StringComparison.Ordinal))];
        Assert.Equal(2, places.Length);
        Assert.All(places, place => Assert.Contains("2 \u00D7 1/3 of quarter waist 6 1/2 + 1 1/2 \u00D7 each ", place));
    }

    [Fact]
    public void ToStepsText_InCentimetres_HasNoTrailingZeros()
    {
        string text = SkirtBlock.For(BodyMeasurements.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "72").With(BodyMeasurement.HipGirth, "98")).Draft().ToStepsText(TapeStep.Millimeter);

        Assert.DoesNotMatch(@"\d\.\d+0 cm", text);
        Assert.Matches(@"\d\.0 cm", text);
    }

    // A folded dart makes a cone of the paper, and a waist moved at the side leaves the side seam behind.
    [Fact]
    public void ToStepsText_OfTruing_SaysHowADartIsFoldedFlatAndWhichLineFollows()
    {
        string text = SkirtBlock.For(Bodies.Example).Draft().ToStepsText(TapeStep.Eighth);

        Assert.Contains("crease the leg nearer to CB waist, lay it on the other leg", text);
        Assert.Contains("draw that end again, and the line that ends there as well, as long as before.", text);
        Assert.Contains("A figure after ~ is rounded: to 1/32 in where a line is measured or a curve guided, elsewhere to 1/8 in or finer. All others are exact.", text);
    }

    // Waist 42, hip 40: a sixteenth of 2 in, by which the front is the wider.
    [Fact]
    public void ToStepsText_OfAWaistWiderThanTheHip_SaysThatTheFrontIsWider()
    {
        string text = SkirtBlock.For(Bodies.Inches("42", "40")).Draft().ToStepsText(TapeStep.Eighth);

        Assert.Contains("front wider than back      1/16 of waist over hip 2 = 1/8 in", text);
        Assert.Contains("front wider than back at hip, block: 1/8 in, target 1/8 in", text);
        Assert.DoesNotContain("-1/8", text);
    }

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
            catch (ConstructionException refusal) when (SkirtRefused.IsDraft(refusal))
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
        Assert.Contains("The back side seam would take in back hip width 9 3/4 - quarter waist 6 1/2 - back dart intake 5/8 = 2 5/8 in, more than the largest side shaping 1 1/2 in: the rest goes to the darts, back dart intake 5/8 + rest 1 1/8 = 1 3/4 in.", text);
        Assert.Contains("The front side seam would take in front hip width 9 3/4 - quarter waist 6 1/2 = 3 1/4 in, more than the largest side shaping 1 1/2 in: the darts take the rest 1 3/4 in.", text);
    }

    [Fact]
    public void ToStepsText_EveryDart_SaysWhichWayItIsPressed()
    {
        SkirtBlock block = DrawnSkirts.Draft("two darts");

        Assert.Equal(
            block.Back.Darts.Count() + block.Front.Darts.Count(),
            block.Steps.Count(step => Regex.IsMatch(step.Describe(TapeStep.Eighth), "^Fold (back|front) dart [0-9] on its new legs, toward C[BF] waist")));
    }

    // Who was not there needs what was chosen before it is used, what the words mean, and what to do with the drawing.
    [Fact]
    public void ToStepsText_ForSomebodyWhoWasNotThere_ListsWhatWasChosenAndExplainsItsWords()
    {
        string text = SkirtBlock.For(Bodies.Inches("29 1/2", "39 3/4")).WithLength(Tape.Inches("26")).Draft().ToStepsText(TapeStep.Eighth);

        string before = text[..text.IndexOf("\nSteps\n", StringComparison.Ordinal)];
        string after = text[before.Length..];
        Assert.All(
            new[] { "yoke depth +5", "upper hip depth +8", "lower hip depth +10", "CB lift +1/4", "side lift +1/2", "back dart length +6", "front dart length +5", "shorter by +3/4", "largest side shaping +1 1/2" },
            row => Assert.Matches("\n" + row + " in\n", before));
        Assert.All(new[] { "suppression", "ease", "intake", "shaping", "proportional law", "shaped" }, word => Assert.Matches("\n" + word + "  +[a-z]", after));
        Assert.Contains("Trace off the back as a piece of its own", after, StringComparison.Ordinal);
        Assert.Contains("seam allowance and hem are not included", after, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(after, "Nothing to draw here"));
    }

    // Every length of every method is drawn by somebody who has these lines and nothing else.
    [Theory]
    [MemberData(nameof(ManyBodies))]
    public void ToStepsText_ManyBodies_PrintsNoLineWhoseFiguresDoNotAddUp(string body)
    {
        SkirtBlock block = BodyOf(body);
        foreach (TapeStep tape in Tapes)
        {
            string[] lines = block.ToStepsText(tape).Split('\n');
            string[] sums = [.. lines.SelectMany(line => PrintedSum.In(line))];

            Assert.NotEmpty(sums);
            Assert.All(sums, sum => Assert.True(PrintedSum.AddsUp(sum), sum));

            // What is said to be rounded is no farther off than half a mark.
            string[] rounded = [.. lines.SelectMany(line => PrintedSum.In(line, ", rounded: "))];
            Assert.All(rounded, sum => Assert.True(PrintedSum.Misses(sum) <= ((tape.Unit == UnitsNet.Units.LengthUnit.Inch ? tape.Size.Inches : tape.Size.Centimeters) / 2) + 1e-9, sum));
        }
    }

    [Fact]
    public void PrintedSumIn_LinesOfASheet_FindsEachSum()
    {
        Assert.Equal(
            ["back hip width 9 3/4 - quarter waist 6 1/2 = 3 1/4 in", "back dart intake 5/8 + 1 1/8 = 1 3/4 in"],
            PrintedSum.In(" 16. The back side seam would take in back hip width 9 3/4 - quarter waist 6 1/2 = 3 1/4 in, at most 1 1/2 in: what is over goes to the darts, back dart intake 5/8 + 1 1/8 = 1 3/4 in."));
        Assert.Equal(["1/8 of waist-hip difference 8, at most 1 1/4 = 1 in"], PrintedSum.In("centre front drop       1/8 of waist-hip difference 8, at most 1 1/4 = 1 in"));
        Assert.Equal(["1/2 of (a 17.0 + b ~3.2) = ~10.1 cm"], PrintedSum.In(" 33. From CF measure across: 1/2 of (a 17.0 + b ~3.2) = ~10.1 cm. Mark X."));
    }

    // A figure that a reader works with stands before it, and is the same wherever it stands.
    [Theory]
    [MemberData(nameof(ManyBodies))]
    public void ToStepsText_ManyBodies_NamesEachFigureBeforeItIsUsedAndOnceOnly(string body)
    {
        SkirtBlock block = BodyOf(body);
        foreach (TapeStep tape in Tapes)
        {
            var figures = new Dictionary<string, string>();
            foreach (string line in block.ToStepsText(tape).Split('\n')
                .TakeWhile(line => !line.StartsWith("What rounding", StringComparison.Ordinal)).Where(line => !line.StartsWith("Shaping: ", StringComparison.Ordinal)))
            {
                foreach (Match use in Regex.Matches(line, @"(?<name>(back|front) hip width|box width|quarter waist|waist-hip difference|back wider than front|(back|front) (dart intake|darts|suppression)|each (back|front) dart|centre front (rise|drop)) (?<figure>-?~?\d+( \d+/\d+|/\d+|\.\d+)?)"))
                {
                    Assert.True(figures.TryGetValue(use.Groups["name"].Value, out string? known), line);
                    Assert.True(known == use.Groups["figure"].Value, $"{known}: {line}");
                }

                if (Regex.Match(line, @"^(?<name>[a-zA-Z-][^:=]*?)  +(.*( = |, rounded: |, from unrounded figures: ))?(?<figure>-?~?\d[\d /.]*) (in|cm)$") is { Success: true } row)
                {
                    figures.TryAdd(row.Groups["name"].Value, row.Groups["figure"].Value);
                }
            }

            Assert.Contains("quarter waist", figures.Keys);
        }
    }

    // A sixteenth of an inch is what cutters accept when they walk a seam by hand: common practice, no source.
    [Theory]
    [MemberData(nameof(ManyBodies))]
    public void ToStepsText_ManyBodies_GuidePointsDrawEachCurveWithinASixteenth(string body)
    {
        SkirtBlock block = BodyOf(body);
        int curves = 0;
        foreach (TapeStep tape in new[] { TapeStep.Eighth, TapeStep.Millimeter })
        {
            foreach (Step step in block.Steps)
            {
                if (step.Drew.FirstOrDefault()?.Path is { } drawn && step.Template.StartsWith("Draw", StringComparison.Ordinal))
                {
                    curves++;
                    AssertDrawn(drawn, step, tape);
                }
                else if (step.Redrew?.HipCurve is { } hip)
                {
                    curves++;
                    AssertDrawn(hip, step, tape);
                }
                else if (step.Redrew?.Edge is { } edge)
                {
                    string text = StepGuides.Of(step, tape) ?? string.Empty;
                    double[] middles = [.. Regex.Matches(text, @"at its middle (?<off>nothing|~?[\d /.]+ (in|cm) (above|below))").Select(match => OffOf(match.Groups["off"].Value))];
                    Assert.True(edge.Darts.Count == 0 || middles.Length == edge.Stretches.Count, text);
                    if (edge.Darts.Count == 0)
                    {
                        curves++;
                        AssertDrawn(edge.Stretches[0], step, tape);
                    }

                    for (int i = 0; i < middles.Length; i++)
                    {
                        curves++;
                        CurvePath part = edge.Stretches[i];
                        AssertNear(part, middles[i], $"{text} part {i}");
                    }
                }
            }
        }

        Assert.True(curves >= 12, $"{curves}");
    }

    public static TheoryData<string> ManyBodies => new(
        from body in new[] { "24,34 in", "26,37 in", "29.5,39.75 in", "32,40 in", "36,42 in", "40,43 in", "44,44 in", "48,46 in", "52,60 in", "22,40 in", "21,23 in", "64,92 cm", "78,104 cm", "110,124 cm", "67.3,93.1 cm" }
        from variant in new[] { "usual", "fitted", "level", "2,2", "1,3" }
        where body != "44,44 in" || variant is not ("2,2" or "1,3")
        where body != "48,46 in" || variant is not ("2,2" or "1,3")
        select body + " " + variant);

    private static SkirtBlock BodyOf(string text)
    {
        string[] words = text.Split(' ', ',');
        UnitsNet.Units.LengthUnit unit = words[2] == "in" ? UnitsNet.Units.LengthUnit.Inch : UnitsNet.Units.LengthUnit.Centimeter;
        SkirtBlockBuilder skirt = SkirtBlock.For(BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, words[0]).With(BodyMeasurement.HipGirth, words[1]));
        skirt = words[3] switch
        {
            "fitted" => skirt.Fitted(),
            "level" => skirt.WithWaistline(Waistline.Level),
            "usual" => skirt,
            _ => skirt.WithFrontDarts(new DartPlan { Count = words[3][0] - '0' }).WithBackDarts(new DartPlan { Count = words[4][0] - '0' }),
        };
        return skirt.Draft();
    }

    private static double OffOf(string text)
    {
        if (text == "nothing")
        {
            return 0;
        }

        string[] words = text.TrimStart('~').Split(' ');
        string figure = string.Join(' ', words[..^2]);
        UnitsNet.Length length = Tape.Parse(figure, words[^2] == "in" ? UnitsNet.Units.LengthUnit.Inch : UnitsNet.Units.LengthUnit.Centimeter);
        return length.Millimeters * (words[^1] is "above" or "right" ? 1 : -1);
    }

    // The part is held against a parabola through its ends and its middle.
    private static void AssertNear(CurvePath part, double middle, string text)
    {
        Vector2D chord = part.End - part.Start;
        var up = new Vector2D(-chord.Y.Millimeters / chord.Length.Millimeters * Math.Sign(chord.X.Millimeters), Math.Abs(chord.X.Millimeters) / chord.Length.Millimeters);
        for (int i = 1; i < 40; i++)
        {
            Vector2D way = part.PointAtMm(part.LengthMm * i / 40) - part.Start;
            double along = way.DotMm2(chord) / chord.DotMm2(chord);
            double off = (up.XMm * way.XMm) + (up.YMm * way.YMm);
            double drawn = 4 * middle * along * (1 - along);
            Assert.True(Math.Abs(off - drawn) <= 25.4 / 16, $"{text}: off by {off - drawn} mm at {along}");
        }
    }

    // A flexible rule through the ends and the guide points, along the line where the step says that it leaves so.
    private static void AssertDrawn(CurvePath curve, Step step, TapeStep tape)
    {
        string text = StepGuides.Of(step, tape) ?? string.Empty;
        bool isUpright = step.Template.Contains("hip curve", StringComparison.Ordinal);
        Vector2D chord = isUpright ? new Vector2D(0, (curve.End - curve.Start).YMm) : curve.End - curve.Start;
        double length = chord.LengthMm;
        double hand = chord.XMm < 0 || (isUpright && chord.YMm > 0) ? -1 : 1;
        double Off(Vector2D way) => hand * ((chord.XMm * way.YMm) - (chord.YMm * way.XMm)) / length * (isUpright && chord.YMm > 0 ? -1 : 1);
        List<double> along = [0];
        List<double> off = [0];
        foreach (Match guide in Regex.Matches(text, @"(?<along>[\d /.]+ (in|cm)) (up|down|along), (?<off>nothing|~?[\d /.]+ (in|cm) (above|below|to the right|to the left))"))
        {
            along.Add(Tape.Parse(guide.Groups["along"].Value.Trim(), UnitsNet.Units.LengthUnit.Inch).Millimeters);
            off.Add(OffOf(guide.Groups["off"].Value.Replace("to the ", string.Empty)));
        }

        along.Add(length);
        off.Add(isUpright ? (curve.End - curve.Start).XMm : 0);
        var rule = isUpright
            ? MathNet.Numerics.Interpolation.CubicSpline.InterpolateBoundaries(
                along, off, MathNet.Numerics.Interpolation.SplineBoundaryCondition.FirstDerivative, 0, MathNet.Numerics.Interpolation.SplineBoundaryCondition.Natural, 0)
            : MathNet.Numerics.Interpolation.CubicSpline.InterpolateNatural(along, off);
        for (int i = 1; i < 40; i++)
        {
            Vector2D way = curve.PointAtMm(curve.LengthMm * i / 40) - curve.Start;
            double real = isUpright ? way.XMm : Off(way);
            double at = isUpright ? Math.Abs(way.YMm) : way.DotMm2(chord) / length;
            Assert.True(Math.Abs(rule.Interpolate(at) - real) <= 25.4 / 16, $"{step.Describe(tape)} {text}: {rule.Interpolate(at)} for {real} mm at {at}");
        }
    }
}
