using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Styling;

public class BlockDesignTests
{
    private static readonly MethodSetting<Length> Stitched = MethodSetting.OfLength("stitched", Tape.Inches("2"), Tape.Inches("1"), Tape.Inches("4"));

    private static readonly BlockDesign Tucked = BlockDesign.Of(
        "tucked",
        "2",
        work =>
        {
            WorkedLength stitched = work.Take(Stitched);
            work.Replace(work.FindPanel(PanelName.Front).TurnDartIntoTuck(EdgeName.Waist.Dart(1), stitched.Value));
            work.Sheet.Note("Stitch the front dart for {0} only.", stitched);
        },
        Stitched);

    private static SkirtBlock Skirt => SkirtBlock.For(Bodies.Example).Draft();

    [Fact]
    public void With_ADesign_ListsItWithItsSettingsAndGoesOnWithTheSteps()
    {
        Block block = Skirt.ALine().With(Nothing);

        Assert.Equal(["a-line", "nothing"], block.Designs.Select(design => design.Name));
        Assert.Equal(Skirt.Steps.Count + 1, block.Designs[0].FirstStep);
        Assert.Equal(block.Steps.Select((_, i) => i + 1), block.Steps.Select(step => step.Number));
        Assert.Equal("Skirt block, a-line, nothing", block.Title);
    }

    [Fact]
    public void With_SettingsOfADesign_AreThoseOfItsDescription()
    {
        Block block = Skirt.With(Tucked.With(Stitched, Tape.Inches("3")));

        DesignDescription design = Assert.Single(block.Designs);
        Assert.Equal("tucked 2", design.ToString());
        Assert.Equal(Length.FromInches(3), Assert.IsType<Length>(Assert.Single(design.PrintedSettings).Quantity), new Near());
        Assert.Empty(Skirt.With(Tucked).Designs[0].PrintedSettings);
        Assert.Equal("Stitch the front dart for stitched 3 in only.", block.Steps[block.Steps.Count - 1].Describe(TapeStep.Sixteenth));
        Assert.Contains("stitched 3 in\n", block.ToStepsText(), StringComparison.Ordinal);
    }

    [Fact]
    public void With_ValueThatIsNotAllowed_IsRefused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => Tucked.With(Stitched, Tape.Inches("5")));

    [Fact]
    public void ToBuilder_OfADesign_MakesItAgainForAnotherBody()
    {
        BodyMeasurements other = Bodies.Inches("29 1/2", "39 3/4");

        Block again = Skirt.ALine(sideFlare: Tape.Inches("2")).ToBuilder().For(other).Draft();

        Block directly = SkirtBlock.For(other).Draft().ALine(sideFlare: Tape.Inches("2"));
        Assert.Equal(directly.Report.ToString(), again.Report.ToString());
        Assert.Equal(directly.Draw().ToSvg(), again.Draw().ToSvg());
        Assert.Empty(again.ToBuilder().WithoutDesigns().Draft().Designs);
    }

    [Fact]
    public void Alternatives_OfADesign_AreMadeWithIt()
    {
        Block level = Skirt.ALine().FindAlternative("level waistline").Draft();

        Assert.Equal("a-line", Assert.Single(level.Designs).Name);
        Assert.True(level.Report.Passed, level.Report.ToString());
    }

    // Whatever a design does not speak of stays promised: one that shortens the waist without a word fails.
    [Fact]
    public void With_DesignThatBreaksAPromise_Fails()
    {
        BlockDesign careless = BlockDesign.Of("careless", "1", work =>
        {
            work.Replace(work.FindPanel(PanelName.Front).TakeInDart(EdgeName.Waist.At(Tape.Inches("1")), Tape.Inches("1/4"), Tape.Inches("1")));
        });

        Block block = Skirt.With(careless);

        Assert.Contains(block.Report.Failures, finding => finding.Check == "closed waist all around");
    }

    [Fact]
    public void ALine_Promises_AreThoseOfTheBlockWithSomeOfThemMadeAnew()
    {
        Block block = Skirt.ALine();

        Assert.Equal(["hip", "hem", "darts", "outline", "advice"], block.Designs[0].PromisedAnew);
        foreach (string kept in new[] { "closed waist all around", "side seam waist to hip", "waist square to side", "hip width all around" })
        {
            Assert.Contains(block.Report.Findings, finding => finding.Check == kept);
        }
    }

    [Fact]
    public void Release_OfAPromise_IsSaidOnEverySheet()
    {
        Block block = Skirt.With(BlockDesign.Of("bare", "1", work => work.Release("advice", "Nobody asked.")));

        Assert.Contains("Not checked any more: advice. Nobody asked.", block.Remarks);
    }

    [Fact]
    public void TimesOf_AHalf_IsTwo()
    {
        Assert.Equal(2, Skirt.TimesOf(PanelName.Front));
        Assert.Contains("data-panel=\"front\" data-edge=\"hem\" data-times=\"2\"", Skirt.ALine().Draw().ToSvg(), StringComparison.Ordinal);
    }

    [Fact]
    public void SeamsToCsv_OfABlock_HasARowForEachSeam()
    {
        string[] lines = Skirt.ALine().SeamsToCsv().TrimEnd('\n').Split('\n');

        Assert.Equal("seam,panel_a,edge_a,length_a_mm,panel_b,edge_b,length_b_mm,ease_mm,ok", lines[0]);
        Assert.StartsWith("side seam,back,side,", lines[1], StringComparison.Ordinal);
        Assert.Matches("^centre back seam,back,centre,([0-9.]+),back,centre,\\1,0.000000,true$", lines[2]);
        Assert.EndsWith(",0.000000,true", lines[1], StringComparison.Ordinal);
        Assert.Equal(3, lines.Length);
    }

    [Fact]
    public void With_DesignOfASkirt_OnAnotherGarment_IsRefused()
    {
        Block cloth = DraftingMethod.Of("cloth", "1", draft => draft.Add(Skirt.Front)).For(Bodies.Example).Draft();

        ConstructionException e = Assert.Throws<ConstructionException>(() => cloth.ALine());

        Assert.Equal(DiagnosticCode.DesignRefused, e.Code);
    }

    private static BlockDesign Nothing { get; } = BlockDesign.Of("nothing", "1", work => work.Sheet.Note("Leave it as it is."));

    private sealed class Near : System.Collections.Generic.IEqualityComparer<Length>
    {
        public bool Equals(Length x, Length y) => Math.Abs((x - y).Millimeters) < 1e-9;

        public int GetHashCode(Length obj) => 0;
    }
}
