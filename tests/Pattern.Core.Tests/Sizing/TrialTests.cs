using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Sizing;
using Pattern.Core.Tests.Blocks;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Sizing;

public class TrialTests
{
    private static readonly BodyRow Example = BodyRow.Of(1, Bodies.Example);

    // 1,986 real women; the navel is their waist. See the data's own page.
    private static IEnumerable<BodyRow> Survey(TextReader text) => BodyColumns.In(LengthUnit.Millimeter)
        .With(BodyMeasurement.WaistGirth, "waistcircumference")
        .With(BodyMeasurement.HipGirth, "buttockcircumference")
        .Read(text);

    [Fact]
    public void Of_ABodyThatIsDrafted_Passes()
    {
        Trial trial = Trial.Of(Example, BuiltInMethods.Skirt);

        Assert.Equal(TrialOutcome.Passed, trial.Outcome);
        Assert.NotNull(trial.Block);
        Assert.Null(trial.Code);
        Assert.Null(trial.Reason);
    }

    [Fact]
    public void Of_ABodyThatIsDeclined_IsRefusedWithItsReason()
    {
        Trial trial = Trial.Of(Example, body => SkirtBlock.For(body.Without(BodyMeasurement.HipGirth)).Draft());

        Assert.Equal((TrialOutcome.Refused, DiagnosticCode.BodyMeasurementMissing), (trial.Outcome, trial.Code));
        Assert.Null(trial.Block);
        Assert.StartsWith("PC1105", trial.Reason);
    }

    [Fact]
    public void Of_ABlockWhoseCheckFails_Fails()
    {
        Trial trial = Trial.Of(Example, body =>
        {
            Block block = SkirtBlock.For(body).Draft();
            return block.WithPanel(block.Panels[0].TurnDartIntoGathers(EdgeName.Waist.Dart(1)));
        });

        Assert.Equal((TrialOutcome.Failed, DiagnosticCode.ChecksFailed), (trial.Outcome, trial.Code));
        Assert.NotNull(trial.Block);
    }

    [Fact]
    public void Of_AMethodThatBreaks_FailsAndNeverStopsTheRest()
    {
        Trial trial = Trial.Of(Example, _ => throw new InvalidOperationException("hm"));

        Assert.Equal((TrialOutcome.Failed, DiagnosticCode.MethodBroke), (trial.Outcome, trial.Code));
        Assert.Contains("InvalidOperationException: hm", trial.Reason);
    }

    [Fact]
    public void Of_ACallerWhoCancels_ComesThrough()
        => Assert.Throws<OperationCanceledException>(() => Trial.Of(Example, _ => throw new OperationCanceledException()));

    [Fact]
    public void Of_ABadRow_AsksNoDraft()
    {
        BodyRow bad = BodyColumns.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "w").Read(new StringReader("w\nnone")).Single();

        Trial trial = Trial.Of(bad, _ => throw new InvalidOperationException());

        Assert.Equal((TrialOutcome.BadRow, DiagnosticCode.LengthNumberExpected), (trial.Outcome, trial.Code));
    }

    // Counted by eye, not by the library.
    [Fact]
    public void Summary_CountsOutcomesReasonsAdviceAndEnds()
    {
        const string Cast = "who,waist,hip\nTitania,66,92\nQuince,104,106\nFlute,,90\nSnout,30,90\nBottom,102,110\nSnug,70\n";
        BodyColumns columns = BodyColumns.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "waist").With(BodyMeasurement.HipGirth, "hip").NamedBy("who");

        TrialSummary summary = TrialSummary.Of(columns.Read(new StringReader(Cast)).Select(row => Trial.Of(row, body => SkirtBlock.For(body.Name == "Quince" ? body.Without(BodyMeasurement.HipGirth) : body).Draft())));

        Assert.Equal((6, 2, 0, 1, 3), (summary.Total, summary.Count(TrialOutcome.Passed), summary.Count(TrialOutcome.Failed), summary.Count(TrialOutcome.Refused), summary.Count(TrialOutcome.BadRow)));
        Assert.Equal("6 bodies: 2 passed, 0 failed, 1 refused, 3 bad rows; 0 with advice", summary.ToString());
        Assert.Equal(
            [(DiagnosticCode.BodyCellsMiscounted, 6), (DiagnosticCode.BodyMeasurementUnitSwapped, 4), (DiagnosticCode.LengthTextEmpty, 3), (DiagnosticCode.BodyMeasurementMissing, 2)],
            summary.Reasons.Select(reason => (reason.Code!.Value, reason.FirstRow)).OrderByDescending(reason => reason.FirstRow));
        Assert.Equal(["waist girth", "hip girth", "waist-hip difference"], summary.Extremes.Select(extreme => extreme.What));
        TrialExtreme difference = summary.Extremes[2];
        Assert.Equal((5, 8.0, 1, 26.0), (difference.Least.Row.Number, Math.Round(difference.LeastValue.Centimeters, 9), difference.Most.Row.Number, Math.Round(difference.MostValue.Centimeters, 9)));
    }

    /// <summary>What comes after a few hundred reasons is counted together: a method whose reasons never end takes no room without end.</summary>
    [Fact]
    public void Summary_OfReasonsWithoutEnd_CountsTheLastTogether()
    {
        DraftingMethod advising = Advising();

        TrialSummary summary = TrialSummary.Of(Enumerable.Range(1, 400).Select(i => Trial.Of(BodyRow.Of(i, Bodies.Example.Named("n" + i)), advising)));

        Assert.Equal(201, summary.Advice.Count);
        Assert.Equal(200, summary.Advice[0].Count);
        Assert.Equal(400, summary.AdvisedCount);
    }

    // 1,986 women, none refused, none failed, one advised: the table of docs/skirt-block.md, found there by other tests.
    [Fact]
    public void Summary_OfTheSurvey_IsThatOfTheSkirtsOwnPage()
    {
        using var text = new StreamReader(Path.Combine("Data", "Measurement", "ansur2-women.csv"));

        TrialSummary summary = TrialSummary.Of(Survey(text).Select(row => Trial.Of(row, BuiltInMethods.Skirt)));

        Assert.Equal("1986 bodies: 1986 passed, 0 failed, 0 refused, 0 bad rows; 1 with advice", summary.ToString());

        // The data's own page: hip minus waist runs from -106 to 347 mm.
        Assert.Equal((-106.0, 347.0), (Math.Round(summary.Extremes[2].LeastValue.Millimeters, 6), Math.Round(summary.Extremes[2].MostValue.Millimeters, 6)));
    }

    [Fact]
    public void ToHtml_IsOnePageOnItsOwn_AndEscapesWhatOthersWrote()
    {
        BodyMeasurements hostile = Bodies.Example.Named("<script>alert(1)</script> \u05d0\u05d1 & \"co\"");
        TrialSummary summary = TrialSummary.Of([Trial.Of(BodyRow.Of(1, hostile), BuiltInMethods.Skirt), Trial.Of(BodyRow.Of(2, Bodies.Inches("45", "44")), BuiltInMethods.Skirt)]);

        string page = summary.ToHtml("Skirt <tried>", TapeStep.Eighth);

        Assert.StartsWith("<!DOCTYPE html>", page);
        Assert.DoesNotContain("<script", page);
        Assert.DoesNotContain("<tried>", page);
        Assert.DoesNotContain("url(", page);
        Assert.DoesNotContain("src=", page);
        Assert.Equal(6, page.Split("<figure>").Length - 1);
        System.Xml.Linq.XDocument.Parse(page[page.IndexOf("<main>", StringComparison.Ordinal)..(page.IndexOf("</main>", StringComparison.Ordinal) + 7)]);
        Assert.Equal(page, summary.ToHtml("Skirt <tried>", TapeStep.Eighth));
    }

    private static DraftingMethod Advising() => DraftingMethod.Of("advising", "1", draft =>
    {
        Block block = SkirtBlock.For(draft.Body).Draft();
        string name = draft.Body.Name!;
        foreach (Panel panel in block.Panels)
        {
            draft.Add(panel);
        }

        draft.Check(list => list.Advise(Advice.Of("Hm.", "Look."), name, "block", 2, FindingRelation.AtMost, 1));
    });
}
