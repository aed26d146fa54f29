using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Samples.Methods;
using Pattern.Core.Sizing;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Foreign;

/// <summary>The methods of the samples, with public members only: their check values, and what they do to many bodies.</summary>
public class TaughtMethodsTests
{
    /// <summary>Every how many women of the survey one is drafted for here; the pages of the methods have the figures of all.</summary>
    private const int Every = 20;

    public static TheoryData<string> Methods => new(TaughtMethods.All.Select(method => method.Name));

    private static Block Draft(string method, string waist, string hip, LengthUnit unit = LengthUnit.Centimeter) => TaughtMethods.Catalogue.Find(method)
        .For(BodyMeasurements.In(unit).With(BodyMeasurement.WaistGirth, waist).With(BodyMeasurement.HipGirth, hip))
        .Draft();

    private static Point2D At(Block block, string landmark) => block.Drafted.Find(landmark).Position;

    private static double Across(Block block, string from, string to) => Math.Round(Math.Abs((At(block, to).X - At(block, from).X).Centimeters), 6);

    private static double Up(Block block, string from, string to) => Math.Round((At(block, to).Y - At(block, from).Y).Centimeters, 6);

    // EN 13402-3. The gored skirt declines the three largest classes: with W waist, H hip in cm, its side gores widen where H/2 - 2.8 is no less than 7/12 W.
    [Theory]
    [MemberData(nameof(Methods))]
    public void Draft_EveryClassOfTheStandard_PassesOrIsDeclinedWithItsReason(string method)
    {
        using StreamReader classes = File.OpenText(Path.Combine("Data", "en13402-3-women.csv"));

        Trial[] trials = [.. BodyColumns.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "waist_cm").With(BodyMeasurement.HipGirth, "hip_cm").Read(classes).Select(row => Trial.Of(row, TaughtMethods.Catalogue.Find(method)))];

        Assert.Equal(12, trials.Length);
        int declined = method == "gored skirt" ? 3 : 0;
        Assert.All(trials.SkipLast(declined), trial => Assert.True(trial.Outcome == TrialOutcome.Passed, trial + "\n" + trial.Block?.Report));
        Assert.All(trials.TakeLast(declined), trial => Assert.Equal((TrialOutcome.Refused, DiagnosticCode.MethodDeclines), (trial.Outcome, trial.Code)));
    }

    // Real women, waist larger than hip among them: drafted right or declined with a reason, never wrong.
    [Theory]
    [MemberData(nameof(Methods))]
    public void Draft_WomenOfTheSurvey_PassesOrDeclines(string method)
    {
        using StreamReader survey = File.OpenText(Path.Combine("Data", "ansur2-women-girths.csv"));
        IEnumerable<BodyRow> rows = BodyColumns.In(LengthUnit.Millimeter).With(BodyMeasurement.WaistGirth, "waistcircumference").With(BodyMeasurement.HipGirth, "buttockcircumference").Read(survey);

        TrialSummary summary = TrialSummary.Of(rows.Where(row => row.Number % Every == 0 || IsWideWaisted(row)).Select(row => Trial.Of(row, TaughtMethods.Catalogue.Find(method))));

        Assert.Equal(0, summary.Count(TrialOutcome.Failed));
        Assert.True(summary.Count(TrialOutcome.Passed) > 10, summary.ToString());
    }

    private static bool IsWideWaisted(BodyRow row) => row.Body![BodyMeasurement.WaistGirth] > row.Body[BodyMeasurement.HipGirth];

    [Theory]
    [MemberData(nameof(Methods))]
    public void Draft_TwiceAndAsPictures_IsTheSame(string method)
    {
        string one = StepPictures.Of(Draft(method, "68", "94")).ToSvg();

        Assert.Equal(one, StepPictures.Of(Draft(method, "68", "94")).ToSvg());
        Assert.Equal(Draft(method, "68", "94").Draw().ToSvg(), Draft(method, "68", "94").Draw().ToSvg());
    }

    // W. Aldrich, Metric Pattern Cutting for Women's Wear, from memory: armhole 21.2 + 21.4, cap height a third of it, chords 21.2 and 21.4 + 1, from them by Pythagoras the underarm points; the points
    // set off the chords and the lengths of the curves recomputed apart by a chord-length spline, level at its ends. Centimetres.
    [Fact]
    public void HandbookSleeve_WorkedExample_IsDraftedAndItsCornerMended()
    {
        Block block = Draft("handbook sleeve", "68", "94");
        Panel sleeve = Assert.Single(block.Panels);

        Assert.Equal(-14.2, Up(block, "crown", "crown foot"));
        Assert.Equal(15.741664, Across(block, "crown", "front underarm"), 1e-5);
        Assert.Equal(17.323972, Across(block, "crown", "back underarm"), 1e-5);
        (string Name, double Across, double Down)[] points =
        [
            ("front quarter set off", 5.142416, 2.211959), ("front half set off", 7.941832, 7.021292), ("front three quarters set off", 10.883248, 11.673208),
            ("back quarter set off", 5.395993, 2.250702), ("back half set off", 9.087986, 6.580281), ("back three quarters set off", 12.495979, 11.256339),
        ];
        Assert.All(points, point =>
        {
            Assert.Equal(point.Across, Across(block, "crown", point.Name), 1e-5);
            Assert.Equal(-point.Down, Up(block, "crown", point.Name), 1e-5);
        });
        Assert.Equal(22.489302, block.Drafted.Lines.Single(line => line.Name.Text == "front head").Path.Length.Centimeters, 1e-3);
        Assert.Equal(23.290134, block.Drafted.Lines.Single(line => line.Name.Text == "back head").Path.Length.Centimeters, 1e-3);

        // What our checks say: 3.18 cm of ease that nobody asked for; and, mended by truing, the corner of twice 7.75 degrees that leaning seams leave under the arm.
        Assert.Equal(45.779436, sleeve.FindEdge(EdgeName.SleeveHead).SewnLength.Centimeters, 1e-3);
        Direction head = sleeve.FindEdge(EdgeName.SleeveHead).Stretches[0].StartDirection;
        Assert.Equal(Math.Atan2((33.065636 - 21) / 2, 58.5 - 14.2) * 180 / Math.PI, head.Angle.Degrees, 1e-4);
        Assert.True(block.Report.Passed);
    }

    // W. Aldrich, Metric Pattern Cutting for Women's Wear, tailored skirt block, waist 68, hip 94; from memory. Centimetres.
    [Fact]
    public void TailoredSkirt_WorkedExample_ToTheMillimetre()
    {
        Block block = Draft("tailored skirt", "68", "94");

        Assert.Equal(48.5, Across(block, "CB waist level", "CF waist level"));
        Assert.Equal(25, Across(block, "CB hip", "side hip"));
        Assert.Equal(23.5, Across(block, "CF hip", "side hip"));
        Assert.Equal(-20.6, Up(block, "CB waist level", "CB hip"));
        Assert.Equal(21.25, Across(block, "CB waist level", "back waist point"));
        Assert.Equal(19.25, Across(block, "CF waist level", "front waist point"));
        Assert.Equal(1.25, Up(block, "back waist point", "back side waist"));
        Assert.Equal(1.25, Up(block, "front waist point", "front side waist"));
        Assert.Equal([-14, -12.5, -10], new[] { "back dart 1", "back dart 2", "front dart 1" }.Select(dart => Up(block, dart + " centre", dart + " apex")));

        // Each quarter keeps quarter waist + 0.25; trued, all of it holds within a millimetre, the closed waist to a hundredth.
        Assert.All(block.Panels, panel => Assert.Equal(172.5, panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters, 0.01));
        Dart[] darts = [.. block.Panels.SelectMany(panel => panel.FindEdge(EdgeName.Waist).Darts)];
        Assert.All(darts.Zip([140.0, 125, 100]), pair => Assert.InRange(pair.First.Length.Millimeters, pair.Second - 1, pair.Second + 1));
        Assert.All(darts, dart => Assert.InRange(dart.Intake.Millimeters, 19, 21));
        Assert.All(block.Panels, panel => Assert.InRange(panel.FindEdge(EdgeName.Waist).End.Y.Millimeters, 11.5, 13.5));
    }

    // WikiEducator skirt handout, worked for waist 68, hip 94, hip depth 20, length 60. Centimetres.
    [Fact]
    public void HandoutSkirt_WorkedExample_IsDraftedAndAdvisedAtTheSide()
    {
        Block block = Draft("handout skirt", "68", "94");

        Assert.Equal(49.5, Across(block, "CB waist level", "CF waist level"));
        Assert.Equal(25.5, Across(block, "CB hip", "side hip"));
        Assert.Equal(24, Across(block, "CF hip", "side hip"));
        Assert.Equal(20.2, Across(block, "CB waist level", "back waist point"));
        Assert.Equal(19, Across(block, "CF waist level", "front waist point"));
        Assert.Equal(5.3, Across(block, "back waist point", "side hip"));
        Assert.Equal(5, Across(block, "front waist point", "side hip"));
        Assert.Equal(11.1, Across(block, "CB waist level", "back dart 1 centre"));
        Assert.Equal(10.5, Across(block, "CF waist level", "front dart 1 centre"));
        Assert.Equal([-12, -10], new[] { "back dart 1", "front dart 1" }.Select(dart => Up(block, dart + " centre", dart + " apex")));
        Assert.Equal(352, block.Panels.Sum(panel => panel.FindEdge(EdgeName.Waist).SewnLength.Millimeters), 0.02);

        // Far above the 3.8 cap of the library's own law: said, not refused.
        Assert.True(block.Report.Passed);
        Assert.Equal(["back", "front"], block.Report.Advice.Select(advice => advice.Place));
    }

    // The drafting rules at waist 32, hip 40, hip ease 1: common practice, no source. Inches. The invented table has the same row at a difference of 8.
    [Theory]
    [InlineData("proportional skirt")]
    [InlineData("skirt by table")]
    public void ShapedSkirt_WorkedExample(string method)
    {
        Block block = Draft(method, "32", "40", LengthUnit.Inch);

        Assert.Equal(20.5 * 2.54, Across(block, "CB waist level", "CF waist level"), 1e-6);
        Assert.Equal(10.5 * 2.54, Across(block, "CB hip", "side hip"), 1e-6);
        Assert.Equal(9.25 * 2.54, Across(block, "CB waist level", "back waist point"), 1e-6);
        Assert.Equal(9 * 2.54, Across(block, "CF waist level", "front waist point"), 1e-6);
        Assert.Equal(-2.54, Up(block, "CF waist level", "CF waist"), 1e-6);
        Assert.Equal(0.25 * 2.54, Up(block, "CB waist level", "CB waist"), 1e-6);
        Assert.All(block.Panels, panel => Assert.Equal(8, panel.FindEdge(EdgeName.Waist).SewnLength.Inches, 1e-3));
        Assert.All(block.Panels, panel => Assert.Single(panel.FindEdge(EdgeName.Waist).Darts));
    }

    // A table of the caller's own reaches the draft: a difference of 8 with all of it in the front dart.
    [Fact]
    public void SkirtByTable_AnotherTable_DraftsAnotherSkirt()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "32").With(BodyMeasurement.HipGirth, "40");

        Block block = ShapedSkirt.ByTable.For(body).With(ShapedSkirt.Rows, "# unit: cm\ndifference,back_wider,front_dart,back_dart,front_drop\n20.32,0,3,2.5,2\n").Draft();

        Assert.Equal((20.5 / 2) * 2.54, Across(block, "CB hip", "side hip"), 1e-6);
        Assert.Equal((8 * 2.54) + 3, Across(block, "CF waist level", "front waist point"), 1e-6);
        Assert.Equal((8 * 2.54) + 2.5, Across(block, "CB waist level", "back waist point"), 1e-6);
        Assert.True(block.Report.Passed);
    }

    // Text-book on Domestic Art, about 1911: half waist 12 in is 1 1/2, 2 2/3 three times, 2 1/2; at the hip 2 1/4, and the back twice its waist: 5, where the page prints 5 1/4. Found.
    // The side gores take the balance: the page has about 1.5 times their waist. Hip 38 1/2 with no ease makes that (19 1/4 - 2 1/4 - 5) / 3 = 4.
    [Fact]
    public void GoredSkirt_WorkedExample()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "24").With(BodyMeasurement.HipGirth, "38 1/2");

        Block block = new GoredSkirt().For(body).With(GoredSkirt.HipEase, Length.Zero).Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal([1.5, 8 / 3.0, 8 / 3.0, 8 / 3.0, 2.5], block.Panels.Select(panel => panel.FindEdge(EdgeName.Waist).SewnLength.Inches), Near);
        Assert.Equal([2.25, 4, 4, 4, 5], block.Drafted.Lines.Where(line => line.Name.Text.EndsWith("hip line", StringComparison.Ordinal)).Select(line => line.Path.Length.Inches), Near);

        // A ring: the hem of a gore is its waist, widened by as much for each inch down as between waist and hip.
        Assert.Equal([1.5 + (36 * 0.75 / 6), (8 / 3.0) + (36 * 4 / 3.0 / 6)], block.Panels.Take(2).Select(panel => panel.FindEdge(EdgeName.Hem).SewnLength.Inches), Near);
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-6;

    // Clothing for Women, 1916: hip 40, sweep 90: A to B 14.375, A to C 4.5, C to D 7.1875; six gores: front and back 3 1/3 at the hip and 6 2/3 at the bottom, side gores 6 2/3 at the hip. Found.
    [Fact]
    public void CircularFoundation_WorkedExample()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "28").With(BodyMeasurement.HipGirth, "40");

        Block block = new CircularFoundation().For(body).With(CircularFoundation.Sweep, Tape.Inches("90")).Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(14.375 * 2.54, Across(block, "A", "B"), 1e-6);
        Assert.Equal(-4.5 * 2.54, Up(block, "A", "C"), 1e-6);
        Assert.Equal(7.1875 * 2.54, Across(block, "C", "D"), 1e-6);
        CurvePath hip = block.Drafted.Lines.Single(line => line.Name.Text == "hip line").Path;
        CurvePath bottom = block.Drafted.Lines.Single(line => line.Name.Text == "bottom line").Path;
        Assert.Equal([20, 45], new[] { hip, bottom }.Select(line => line.Length.Inches), Near);
        Assert.Equal([10 / 3.0, 10, 50 / 3.0], new[] { "front gore hip", "side gore hip", "back gore hip" }.Select(name => hip.LengthTo(hip.ClosestTo(At(block, name))).Inches), Near);
        Assert.Equal([20 / 3.0, 45 - (20 / 3.0)], new[] { "front gore bottom", "back gore bottom" }.Select(name => bottom.LengthTo(bottom.ClosestTo(At(block, name))).Inches), Near);
    }

    // The same source: waist taken in at the seams, so that it is the waist girth; all seams walk; at hip 40 the panels are 3 1/3 and 6 2/3 wide at the hip. Each edge is laid off along the waistline from
    // where the line of its gore crosses it: front gore 1/4, side gore beside the back 7/8 (the middle of 3/4 to 1), where there is so much to take in.
    [Theory]
    [InlineData("six", "centre")]
    [InlineData("seven", "back seam")]
    public void CircularFoundation_CutIntoGores_FitsTheWaistAndWalks(string gores, string backEdge)
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "27").With(BodyMeasurement.HipGirth, "40");

        Block block = new CircularFoundation().For(body).With(CircularFoundation.Gores, gores).With(CircularFoundation.Sweep, Tape.Inches("72")).Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(["front", "front side gore", "back side gore", "back"], block.Panels.Select(panel => panel.Name.Text));
        Assert.Equal(27, block.Panels.Sum(panel => 2 * panel.FindEdge(EdgeName.Waist).SewnLength.Inches), 1e-3);
        foreach ((Panel one, Panel next) in block.Panels.Zip(block.Panels.Skip(1)))
        {
            Assert.Equal(one.FindEdge(EdgeName.Of("seam toward back")).SewnLength.Millimeters, next.FindEdge(EdgeName.Of("seam toward front")).SewnLength.Millimeters, 1e-6);
        }

        Assert.Equal(backEdge, block.FindPanel(PanelName.Back).Edges[1].Name.Text);
        Assert.All(block.Panels, panel => Assert.Equal(2, block.TimesOf(panel.Name)));
        CurvePath waistline = block.Drafted.Lines.Single(line => line.Name.Text == "waistline").Path;
        double Laid(string from, string to) => Math.Abs((waistline.LengthTo(waistline.ClosestTo(At(block, to))) - waistline.LengthTo(waistline.ClosestTo(At(block, from)))).Inches);
        Assert.Equal([0.25, 0.5, 0.875, 0.25], new[] { ("front gore waist", "front gore front edge"), ("front gore waist", "front gore back edge"), ("back gore waist", "back gore front edge"), ("back gore waist", "back gore back edge") }.Select(pair => Laid(pair.Item1, pair.Item2)), Near);
        double front = Laid("side gore waist", "side gore front edge");
        double back = Laid("side gore waist", "side gore back edge");
        Assert.Equal((2 * waistline.Length.Inches) - 27, 2 * (0.25 + 0.5 + 0.875 + 0.25 + front + back), 1e-3);
        Assert.True(front > back && back > 0, front + " " + back);
        Assert.Empty(block.Report.Advice);
    }

    // A name stands in its own gore, though the box of a slanted one reaches over its neighbour.
    [Fact]
    public void CircularFoundation_NamesOfGores_StandInThem()
    {
        Block block = new CircularFoundation().For(BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4")).Draft();

        TextMark[] texts = [.. block.Draw().Layers.SelectMany(layer => layer.Marks).OfType<TextMark>()];

        foreach (Panel panel in block.Panels)
        {
            TextMark name = Assert.Single(texts, text => text.Text == panel.Name.Text.ToUpperInvariant());
            Assert.Equal(Containment.Inside, panel.SeamOutline().ContainmentOf(name.Bounds.Centre));
        }
    }

    // The Practical Designer, 1911, child size 10: waist 25 1/2, hip 34, lengths front 20, side 20 1/2, back 21, hip depth a third of half the breast (15): 5. Found.
    [Fact]
    public void OnePieceSkirt_WorkedExample()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "25 1/2").With(BodyMeasurement.HipGirth, "34");

        Block block = new OnePieceSkirt().For(body)
            .With(OnePieceSkirt.HipDepth, Tape.Inches("5"))
            .With(OnePieceSkirt.FrontLength, Tape.Inches("20"))
            .With(OnePieceSkirt.SideLength, Tape.Inches("20 1/2"))
            .With(OnePieceSkirt.BackLength, Tape.Inches("21"))
            .Draft();

        Assert.True(block.Report.Passed, block.Report.ToString());
        Assert.Equal(12.75 * 2.54, Across(block, "A", "C"), 1e-6);
        Assert.Equal(3 * 2.54, Up(block, "C", "D"), 1e-6);
        Assert.Equal(0.75, At(block, "H").DistanceTo(At(block, "middle of the waist")).Inches, 1e-6);
        Assert.Equal(17, At(block, "front hip").DistanceTo(At(block, "back hip")).Inches, 1e-6);
        Assert.Equal([5, 5], new[] { ("A", "front hip"), ("D", "back hip") }.Select(pair => At(block, pair.Item1).DistanceTo(At(block, pair.Item2)).Inches), Near);
        Assert.Equal([20, 20.5, 21], new[] { ("A", "front hem"), ("H", "side hem"), ("D", "J") }.Select(pair => At(block, pair.Item1).DistanceTo(At(block, pair.Item2)).Inches), Near);
    }

    // A body that needs no darts has none: a waist as large as the hip.
    [Fact]
    public void ProportionalSkirt_WaistAsLargeAsTheHip_HasNoDarts()
    {
        Block block = Draft("proportional skirt", "42", "42", LengthUnit.Inch);

        Assert.True(block.Report.Passed);
        Assert.All(block.Panels, panel => Assert.Empty(panel.FindEdge(EdgeName.Waist).Darts));
    }
}
