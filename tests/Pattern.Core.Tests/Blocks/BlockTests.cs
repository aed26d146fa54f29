using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Blocks;

public class BlockTests
{
    private static SkirtBlock Skirt => SkirtBlock.For(Bodies.Inches("29 1/2", "39 3/4")).Draft();

    // A waist girth of 30 in asks 190.5 mm of each quarter. Its front apex swings 20 mm, the waist is trued: a part of a millimetre is lost, which no seam of the plan knows.
    [Fact]
    public void WithPanel_ThatShortensTheWaist_IsAFailedFinding()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("30", "40")).Draft();
        Dart dart = block.Front.FindEdge(EdgeName.Waist).Darts[0];
        Angle swing = Angle.FromRadians(-Math.Atan2(20, dart.Length.Millimeters));
        Panel swung = block.Front.SwingDart(EdgeName.Waist.Dart(1), swing).TrueEdge(EdgeName.Waist).Panel;
        Assert.Equal(190.5, block.Front.FindEdge(EdgeName.Waist).SewnLength.Millimeters, 1e-6);
        Assert.InRange(swung.FindEdge(EdgeName.Waist).SewnLength.Millimeters, 189, 190.4);
        Assert.True(block.Seams.Check(block.Back, swung).Passed);

        CheckReport report = block.WithPanel(swung).Report;

        Assert.Contains(report.Failures, finding => finding is { Check: "closed waist", Place: "front" });
        Assert.Contains(report.Failures, finding => finding is { Check: "closed waist all around", Place: "block" });
        Assert.True(block.Report.Passed);
    }

    [Fact]
    public void WithPanel_Unchanged_HasTheSameReport()
        => Assert.Equal(Skirt.Report.ToString(), Skirt.WithPanel(Skirt.Front).Report.ToString());

    [Fact]
    public void WithPanel_DartMovedAway_SaysThatAPromiseIsBroken()
    {
        SkirtBlock block = Skirt;
        Panel moved = block.Front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.SideSeam.At(Ratio.FromPercent(30)));

        Assert.Contains(block.WithPanel(moved).Report.Failures, finding => finding is { Check: "waist darts", Place: "front" });
    }

    [Fact]
    public void WithPanel_OfAnotherName_IsRefused()
    {
        ConstructionException e = Assert.Throws<ConstructionException>(() => Skirt.WithPanel(Samples.Square(PanelName.Of("pocket"))));

        Assert.Equal(DiagnosticCode.PanelMissing, e.Code);
    }

    // What was promised of an edge that is gone cannot be measured; that is a failure, not a crash.
    [Fact]
    public void WithPanel_WithoutTheEdgesOfThePromise_Fails()
        => Assert.Contains(Skirt.WithPanel(Samples.Square(PanelName.Front)).Report.Failures, finding => finding.Check.StartsWith("promise that cannot be measured", StringComparison.Ordinal));

    [Fact]
    public void Drafted_AndTrued_AreNeverMixed()
    {
        SkirtBlock block = Skirt;
        LandmarkName apex = LandmarkName.Of("front dart 1 apex");

        Assert.Equal(block.FindPanel(PanelName.Front).FindDart(EdgeName.Waist.Dart(1)).Apex, block.Trued.Find(apex).Position);
        Assert.NotEqual(block.Drafted.Find(apex).Position, block.Trued.Find(apex).Position);

        // The hand squares down from the middle of the dart; truing may move its apex off that line.
        Point2D middle = block.Drafted.Find(LandmarkName.Of("front dart 1 centre")).Position;
        Assert.Equal(middle.X, block.Drafted.Find(apex).Position.X);
        BlockLine guide = block.Trued.Lines.Single(line => line.Name.Text.StartsWith("front dart", StringComparison.Ordinal) && line.Role == ConstructionRole.Guide);
        Assert.Equal(block.Trued.Find(apex).Position, guide.Path.End);
        Assert.DoesNotContain(block.Trued.Lines, line => line.Role == ConstructionRole.HandDrawn);
        Assert.Contains(block.Drafted.Lines, line => line.Role == ConstructionRole.HandDrawn);
    }

    [Fact]
    public void Alternatives_OfASkirt_AreTheOtherWaistlineAndDraftedWhenAsked()
    {
        SkirtBlock block = Skirt;

        var level = (SkirtBlock)block.FindAlternative("level waistline").Draft();

        Assert.Equal(Waistline.Level, level.Waistline);
        Assert.Equal(["shaped waistline"], level.Alternatives.Select(one => one.Name));
        Assert.Equal(DiagnosticCode.AlternativeUnknown, Assert.Throws<ConstructionException>(() => block.FindAlternative("low waistline")).Code);
    }

    [Fact]
    public void BuiltInSkirt_BySettings_IsTheSkirtOfTheTypedBuilder()
    {
        SkirtBlock typed = SkirtBlock.For(Bodies.Example).WithHipEase(Tape.Inches("2")).WithWaistline(Waistline.Level).WithFrontDarts(new DartPlan { Count = 2 }).Fitted(SkirtFit.Usual).Draft();
        DraftingMethod method = MethodCatalogue.BuiltIn.Find("skirt block");
        MethodSetting<T> Of<T>(string name) => (MethodSetting<T>)method.Settings.Single(setting => setting.Name == name);

        Block named = method.For(Bodies.Example)
            .With(Of<Length>("hip ease"), Tape.Inches("2"))
            .With(Of<string>("waistline"), "level")
            .With(Of<int>("front dart count"), 2)
            .With(Of<Length>("side hem in"), Tape.Inches("1"))
            .With(Of<Length>("centre back hem in"), Tape.Inches("1"))
            .With(Of<Length>("centre back waist in"), Tape.Inches("1/2"))
            .Draft();

        Assert.IsType<SkirtBlock>(named);
        Assert.Equal(typed.Panels.SelectMany(Corners), named.Panels.SelectMany(Corners));
        Assert.Equal(typed.Method.Settings.Select(value => value.ToString()), named.Method.Settings.Select(value => value.ToString()));
        Assert.Equal(typed.Panels.SelectMany(Corners), typed.ToBuilder().Draft().Panels.SelectMany(Corners));
        Assert.Equal(typed.Panels.SelectMany(Corners), ((Block)typed).ToBuilder().Draft().Panels.SelectMany(Corners));
    }

    [Theory]
    [InlineData("hip ease", 600)]
    [InlineData("length", 10)]
    public void With_ValueOutOfRange_IsRefusedNamingTheSetting(string name, double mm)
    {
        var setting = (MethodSetting<Length>)BuiltInMethods.Skirt.Settings.Single(one => one.Name == name);

        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => BuiltInMethods.Skirt.For(Bodies.Example).With(setting, Length.FromMillimeters(mm)));

        Assert.StartsWith("PC0002: " + name, e.Message);
    }

    // Every default of the typed builder lies within what the setting allows, or the method could not have been made.
    [Fact]
    public void Settings_OfTheSkirt_AreNamedOnceAndUsual()
    {
        Assert.Equal(BuiltInMethods.Skirt.Settings.Count, BuiltInMethods.Skirt.Settings.Select(setting => setting.Name).Distinct().Count());
        Assert.Equal(["waist ease", "hip ease", "length", "waistline"], SkirtBlock.For(Bodies.Example).Draft().Method.PrintedSettings.Select(setting => setting.Name));
        Assert.Contains(SkirtBlock.For(Bodies.Example).WithSideLift(Tape.Inches("3/8")).Draft().Method.PrintedSettings, setting => setting.Name == "side lift");
    }

    [Fact]
    public void Sheet_AfterItsDraft_TakesNothingMore()
    {
        BlockDraft? kept = null;
        DraftingMethod method = DraftingMethod.Of("kept draft", "1", draft =>
        {
            kept = draft;
            draft.Add(Samples.Square(PanelName.Front));
        });

        Block block = method.For(Bodies.Example).Draft();

        Assert.Equal(DiagnosticCode.DraftDone, Assert.Throws<ConstructionException>(() => kept!.Add(Samples.Square(PanelName.Back))).Code);
        Assert.Equal(DiagnosticCode.DraftDone, Assert.Throws<ConstructionException>(() => kept!.Sheet.Mark(LandmarkName.Of("late"), Point2D.Origin)).Code);
        Assert.Equal(DiagnosticCode.DraftDone, Assert.Throws<ConstructionException>(() => kept!.Check(_ => { })).Code);
        Assert.Empty(block.Steps);
    }

    [Fact]
    public void Draft_WithoutOrWithTwicePanels_IsRefused()
    {
        Assert.Equal(DiagnosticCode.DraftWithoutPanels, Refused(_ => { }));
        Assert.Equal(DiagnosticCode.PanelDraftedTwice, Refused(draft =>
        {
            draft.Add(Samples.Square(PanelName.Front));
            draft.Add(Samples.Square(PanelName.Front));
        }));
        Assert.Equal(DiagnosticCode.SettingUnknown, Refused(draft => draft.Take(MethodSetting.OfLength("depth", null, Length.Zero, Tape.Inches("9")))));
        MethodSetting<int> pleats = MethodSetting.OfCount("pleats", null, 0, 9);
        Assert.Equal(DiagnosticCode.SettingNotGiven, Refused(draft => draft.Take(pleats), pleats));
    }

    [Fact]
    public void Catalogue_FindsByName_AndTakesANameOnce()
    {
        DraftingMethod method = DraftingMethod.Of("half apron", "1", _ => { });
        MethodCatalogue catalogue = MethodCatalogue.BuiltIn.With(method);

        Assert.Same(method, catalogue.Find("half apron"));
        Assert.Same(BuiltInMethods.Skirt, catalogue.Find("skirt block"));
        Assert.StartsWith("PC4110", Assert.Throws<ArgumentException>(() => catalogue.With(method)).Message);
        Assert.Equal(DiagnosticCode.MethodUnknown, Assert.Throws<ConstructionException>(() => MethodCatalogue.BuiltIn.Find("half apron")).Code);
    }

    // A cutter accepts 1/16 in walking a seam (common practice, no source): the hand draft in sixteenths of an inch of a body in whole inches is that good.
    [Fact]
    public void ReadOffTape_FineTape_ChangesLittleAndCoarseTapeMore()
    {
        SkirtBlock block = Skirt;
        double Worst(TapeStep tape) => block.ReadOffTape(tape).Max(finding => Math.Abs(finding.RawMeasured - finding.RawBefore));

        Assert.Equal(block.TruingChanges.Select(change => change.RawBefore), block.ReadOffTape(TapeStep.Half).Select(effect => effect.RawBefore));
        Assert.True(Worst(TapeStep.SixtyFourth) < Worst(TapeStep.Half));
        Assert.True(Worst(TapeStep.Half) > 1);
    }

    private static DiagnosticCode Refused(Action<BlockDraft> draft, params MethodSetting[] settings)
        => Assert.Throws<ConstructionException>(() => DraftingMethod.Of("refused", "1", draft, settings).For(Bodies.Example).Draft()).Code;

    private static System.Collections.Generic.IEnumerable<Point2D> Corners(Panel panel) => panel.Edges.SelectMany(edge => new[] { edge.Start, edge.End });

    private static class Samples
    {
        internal static Panel Square(PanelName name)
        {
            Point2D[] corners = [Point2D.FromMillimeters(0, 0), Point2D.FromMillimeters(100, 0), Point2D.FromMillimeters(100, 100), Point2D.FromMillimeters(0, 100)];
            PanelBuilder panel = Panel.Named(name);
            for (int i = 0; i < 4; i++)
            {
                panel = panel.WithEdge(EdgeName.Of("edge " + (char)('a' + i)), EdgeRole.Seam, CurvePath.FromLine(LineSegment.Between(corners[i], corners[(i + 1) % 4])));
            }

            return panel.Make();
        }
    }
}
