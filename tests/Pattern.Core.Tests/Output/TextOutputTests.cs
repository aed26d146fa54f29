using System;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Measurement;

namespace Pattern.Core.Tests.Output;

public class TextOutputTests
{
    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    [Fact]
    public void ToCsv_EachKindOfFinding_HasItsColumns()
    {
        var report = new CheckReport(
        [
            new Finding("closed waist all around", "block", FindingKind.Length, FindingRelation.Equal, 812.8, 812.8, 0.01),
            new Finding("waist square to side", "back", FindingKind.Angle, FindingRelation.Equal, Math.PI / 2, Math.PI / 2, Math.PI / 18000),
            new Finding("seam line crossings", "front", FindingKind.Count, FindingRelation.Equal, 1, 0, 0),
            new Finding("hem, \"side\"", "front", FindingKind.Length, FindingRelation.Equal, -1e-9, 0, 0.01),
        ]);

        Assert.Equal(
            "check,panel,measured_mm,target_mm,tolerance_mm,ok\n"
            + "closed_waist_all_around,block,812.800000,812.800000,0.010000,true\n"
            + "waist_square_to_side_deg,back,90.000000,90.000000,0.010000,true\n"
            + "seam_line_crossings_count,front,1.000000,0.000000,0.000000,false\n"
            + "\"hem,_\"\"side\"\"\",front,0.000000,0.000000,0.010000,true\n",
            report.ToCsv());
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToCsv_AnySkirt_OneRowPerFinding(string skirt)
    {
        CheckReport report = DrawnSkirts.Draft(skirt).Report;

        string[] rows = report.ToCsv().Split('\n');

        Assert.Equal(report.Findings.Count + 2, rows.Length);
        Assert.Equal(string.Empty, rows[^1]);
        Assert.All(rows.Skip(1).SkipLast(1), row => Assert.Matches(@"^[a-z0-9_]+,(back|front|block)(,-?\d+\.\d{6}){3},(true|false|advice)$", row));
        Assert.Equal(report.Passed, !rows.Any(row => row.EndsWith(",false")));
    }

    [Fact]
    public void ToStepsText_AnySkirt_SaysEverythingInOrder()
    {
        SkirtBlock block = DrawnSkirts.Draft("default");

        string text = block.ToStepsText(TapeStep.Eighth);

        string[] parts = ["Skirt block for Rosalind", "Measurements", "waist girth", "Shaping: proportional law", "Steps", "What rounding every distance to 1/8 in", "What truing changed", "Checks", block.Report.Verdict()];
        int from = 0;
        foreach (string part in parts)
        {
            from = text.IndexOf(part, from, StringComparison.Ordinal);
            Assert.True(from >= 0, part);
        }

        // Numbered from 1 without a gap, as a reader counts.
        int[] numbers = [.. Regex.Matches(text[text.IndexOf("\nSteps", StringComparison.Ordinal)..], @"(?m)^ {0,2}(\d+)\. ").Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
        Assert.Equal(Enumerable.Range(1, block.Steps.Count), numbers);

        // A length with a name is worked out once, before the steps. Every sum on the sheet is one that pencil and paper agree with.
        string[] named = [.. block.Steps.SelectMany(step => step.Workings).Where(working => working.Operands.Count > 0 && working.Name is not null).Select(working => working.Name!).Distinct()];
        string[] sums = [.. text.Split('\n').SelectMany(line => PrintedSum.In(line))];
        Assert.All(named, name => Assert.Single(Regex.Matches(text, $"(?m)^{name}  .*(?: = |, rounded: |, from unrounded figures: )")));
        Assert.True(sums.Length > named.Length);
        Assert.All(sums, sum => Assert.True(PrintedSum.AddsUp(sum), sum));
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("\n", text);
    }

    // common practice, no source: half of 9 1/4 is 4 5/8, and the sheet must say so.
    [Fact]
    public void ToStepsText_DartCentre_ShowsTheHalving()
        => Assert.Contains("1/2 of (quarter waist 8 + back dart intake 1 1/4) = 4 5/8 in", DrawnSkirts.Draft("default").ToStepsText(TapeStep.Eighth));

    [Fact]
    public void ToStepsText_NameOverSeveralLines_StaysOnOne()
    {
        string text = SkirtBlock.For(Bodies.Example.Named("Peter\r\nQuince")).Draft().ToStepsText();

        Assert.StartsWith("Skirt block for Peter Quince\n============================\n", text);
    }

    [Fact]
    public void ToStepsText_MetricBody_SpeaksInCentimetres()
    {
        string text = DrawnSkirts.Draft("child").ToStepsText();

        Assert.Contains("waist girth                54.0 cm", text);
        Assert.DoesNotMatch(new Regex(@"\d in\b"), text);
    }

    [Fact]
    public void ToStepsText_HundredthsOfMillimetres_HaveNoMinusZero()
        => Assert.DoesNotContain("-0.00 mm", string.Concat(DrawnSkirts.All.Select(skirt => DrawnSkirts.Draft(skirt).ToStepsText())), StringComparison.Ordinal);
}
