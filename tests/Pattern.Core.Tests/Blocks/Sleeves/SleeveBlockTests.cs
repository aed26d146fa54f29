using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;
using static Pattern.Core.Tests.Blocks.Armholes;

namespace Pattern.Core.Tests.Blocks;

public class SleeveBlockTests
{
    // The armhole of the handbook's block, recomputed by a chord-length spline from its points: 21.181 cm in front, 21.386 cm behind (from memory).
    [Fact]
    public void Armhole_OfTheHandbooksPanels_IsAsLongAsItsSplines()
    {
        Assert.Equal(211.814, Handbook.FrontLength.Millimeters, 0.05);
        Assert.Equal(213.86, Handbook.BackLength.Millimeters, 0.05);
        Assert.Equal([75.0], Handbook.FrontNotches.Select(notch => notch.Millimeters));
        Assert.Equal([85.0], Handbook.BackNotches.Select(notch => notch.Millimeters));
    }

    // The handbook's cap over it, 33.4 wide and eased 45 to 55 by 2.5 cm, is 13.507 high with its crown 16.151 from the front underarm point, level there; ours rises from the underarm by
    // what the seams lean, and is higher by little.
    [Fact]
    public void Draft_TheHandbooksBody_IsItsSleeve()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).Draft();

        sleeve.Report.ThrowIfFailed();
        Assert.Empty(sleeve.Report.Advice);
        Assert.Equal(334, sleeve.Width.Millimeters, 1e-9);
        Assert.Equal(135.07, sleeve.CapHeight.Millimeters, 2.5);
        Assert.Equal(161.5, 334 - Crown(sleeve).XMm, 1.5);
        Assert.Equal(585, sleeve.SleeveLength.Millimeters, 1e-9);
        Assert.Equal(210, sleeve.FindPanel(SleeveBlock.SleevePanel).FindEdge(EdgeName.Wrist).SewnLength.Millimeters, 1e-9);
    }

    [Fact]
    public void Draft_AnySleeve_HasTheEdgesOfOne()
    {
        Panel sleeve = SleeveBlock.For(Handbook, Worked).Draft().FindPanel(SleeveBlock.SleevePanel);

        Assert.Equal(["sleeve head", "front underarm", "wrist", "back underarm"], sleeve.Edges.Select(edge => edge.Name.Text));
        Assert.Equal(["hem"], SleeveBlock.For(Handbook, Worked).WithLength(SleeveLength.Short).Draft().Panels[0].Edges.Where(edge => edge.Role == EdgeRole.Hem).Select(edge => edge.Name.Text));
        Assert.Equal([2, 1, 1], sleeve.Notches.Where(notch => notch.Edge == EdgeName.SleeveHead).Select(notch => notch.Count));
    }

    // What joins head and armhole, walked on the panels themselves by the seam plan: no ease below the notches, 11.25 and 13.75 mm above.
    [Fact]
    public void SeamsInto_ThePanelsOfTheArmhole_Walk()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).Draft();
        Panel front = sleeve.Armhole.Notched(FrontPanel(88));
        Panel back = sleeve.Armhole.Notched(BackPanel(88));
        Panel[] all = [sleeve.FindPanel(SleeveBlock.SleevePanel), front, back];

        CheckReport report = sleeve.SeamsInto(front, back).Check(all);
        IReadOnlyList<SeamWalk> walks = sleeve.SeamsInto(front, back).Walk(all);

        report.ThrowIfFailed();
        Assert.Equal(["shoulder to notch", "notch to underarm"], walks[0].Stretches.Select(stretch => stretch.Name));
        Assert.Equal(["notch to underarm", "shoulder to notch"], walks[1].Stretches.Select(stretch => stretch.Name));
        Assert.Equal([11.25, 0], walks[0].Stretches.Select(stretch => stretch.EaseFound.Millimeters), new Near(1e-6));
        Assert.Equal([0, 13.75], walks[1].Stretches.Select(stretch => stretch.EaseFound.Millimeters), new Near(1e-6));
    }

    // With both sewn, the line under the arm is one: the head turned about the underarm point until its seams lie on each other.
    [Fact]
    public void Draft_UnderarmClosed_HasNoCorner()
    {
        Panel sleeve = SleeveBlock.For(Handbook, Worked).Draft().FindPanel(SleeveBlock.SleevePanel);
        CurvePath head = sleeve.FindEdge(EdgeName.SleeveHead).Stretches[0];
        CurvePath frontSeam = sleeve.FindEdge(EdgeName.FrontUnderarm).Stretches[0];
        CurvePath backSeam = sleeve.FindEdge(EdgeName.BackUnderarm).Stretches[0];

        Angle turn = Angle.FromRadians(frontSeam.StartDirection.TurnRadTo(backSeam.EndDirection.Reversed));
        Direction arriving = head.EndDirection.Transformed(Transform2D.Rotation(head.End, turn));

        Assert.Equal(0, arriving.TurnRadTo(head.StartDirection), 1e-9);
    }

    [Theory]
    [InlineData(SleeveLength.Short)]
    [InlineData(SleeveLength.ThreeQuarter)]
    [InlineData(SleeveLength.Long)]
    public void WithLength_AnyOfThree_LiesOnTheSeamsOfTheLongOne(SleeveLength length)
    {
        Panel whole = SleeveBlock.For(Handbook, Worked).Draft().Panels[0];
        SleeveBlock cut = SleeveBlock.For(Handbook, Worked).WithLength(length).Draft();

        cut.Report.ThrowIfFailed();
        Assert.Equal(whole.FindEdge(EdgeName.SleeveHead).Stretches[0].Segments, cut.Panels[0].FindEdge(EdgeName.SleeveHead).Stretches[0].Segments);
        Assert.InRange(whole.FindEdge(EdgeName.FrontUnderarm).Stretches[0].ClosestTo(cut.Panels[0].FindEdge(EdgeName.FrontUnderarm).End).Distance.Millimeters, 0, 1e-6);
        Assert.InRange(whole.FindEdge(EdgeName.BackUnderarm).Stretches[0].ClosestTo(cut.Panels[0].FindEdge(EdgeName.BackUnderarm).Start).Distance.Millimeters, 0, 1e-6);
    }

    [Theory]
    [InlineData(250, 250, "hem")]
    [InlineData(585, 585, "wrist")]
    [InlineData(620, 620, "wrist")]
    public void WithLength_InFigures_EndsThere(double askedMm, double foundMm, string edge)
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithLength(Mm(askedMm)).Draft();

        sleeve.Report.ThrowIfFailed();
        Assert.Equal(foundMm, sleeve.SleeveLength.Millimeters, 1e-9);
        Assert.Contains(sleeve.Panels[0].Edges, one => one.Name.Text == edge);
    }

    [Fact]
    public void WithFit_Easy_IsWiderAndLower()
    {
        SleeveBlock close = SleeveBlock.For(Handbook, Worked).Draft();
        SleeveBlock easy = SleeveBlock.For(Handbook, Worked).WithFit(SleeveFit.Easy).Draft();

        easy.Report.ThrowIfFailed();
        Assert.True(easy.Width > close.Width);
        Assert.True(easy.CapHeight < close.CapHeight);
        Assert.Equal(10, (easy.FrontEase + easy.BackEase).Millimeters, 1e-9);
    }

    [Fact]
    public void WithCapHeight_AThirdOfTheArmhole_FindsTheWidth()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithCapHeight(Mm(425.67 / 3)).Draft();

        sleeve.Report.ThrowIfFailed();
        Assert.Equal(425.67 / 3, sleeve.CapHeight.Millimeters, 1e-9);
        Assert.InRange(sleeve.Width.Millimeters, 320, 334);
    }

    [Fact]
    public void WithArmhole_AnotherOne_ChangesTheSleeve()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithElbowDart().Draft();
        Armhole deeper = Armhole.Of(FrontPanel(92), BackPanel(92));

        SleeveBlock changed = sleeve.ToBuilder().WithArmhole(deeper).Draft();
        SleeveBlock back = changed.ToBuilder().WithArmhole(Handbook).Draft();

        changed.Report.ThrowIfFailed();
        Assert.Equal((deeper.FrontLength + deeper.BackLength).Millimeters + 25, changed.Panels[0].FindEdge(EdgeName.SleeveHead).SewnLength.Millimeters, 1e-6);
        Assert.Equal(sleeve.Panels[0].SeamOutline().Segments, back.Panels[0].SeamOutline().Segments);
    }

    // An elbow dart of 2 to 2.5 cm is usual (common practice, no source); with it folded the seams are equal and smooth.
    [Theory]
    [InlineData(15)]
    [InlineData(20)]
    [InlineData(25)]
    public void WithElbowDart_AnyIntake_BendsTheSleeveForwardAndWalks(double intakeMm)
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithElbowDart(Mm(intakeMm)).Draft();
        Panel panel = sleeve.Panels[0];
        Dart dart = Assert.Single(panel.Darts);

        sleeve.Report.ThrowIfFailed();
        Assert.Equal(intakeMm, dart.Intake.Millimeters, 1e-6);
        Assert.Equal(panel.FindEdge(EdgeName.FrontUnderarm).SewnLength.Millimeters, panel.FindEdge(EdgeName.BackUnderarm).SewnLength.Millimeters, 1e-6);
        Assert.True(panel.FindEdge(EdgeName.Wrist).Start.XMm > 272 + (intakeMm / 2), "bent forward: the front wrist stands before where it stood, 272 mm from the back underarm");
        Assert.Equal(SleeveBlock.For(Handbook, Worked).Draft().Panels[0].FindEdge(EdgeName.SleeveHead).Stretches[0].Segments, panel.FindEdge(EdgeName.SleeveHead).Stretches[0].Segments);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    public void WithElbowEase_AnyEase_IsEasedBetweenTheNotchesOnly(double easeMm)
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithElbowEase(Mm(easeMm)).Draft();

        sleeve.Report.ThrowIfFailed();
        SeamWalk walk = sleeve.Seams.Walk([.. sleeve.Panels])[0];
        Assert.Equal([0, easeMm, 0], walk.Stretches.Select(stretch => stretch.EaseFound.Millimeters), new Near(1e-6));
    }

    // Seams at the first notches, so that no ease lies below them; the under sleeve about two fifths of the width (common practice, no source: 60 to 40).
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(8)]
    public void InTwoPieces_AnyEase_HasSeamsThatWalk(double easeMm)
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).InTwoPieces(Mm(easeMm)).Draft();
        Panel top = sleeve.FindPanel(SleeveBlock.TopPanel);
        Panel under = sleeve.FindPanel(SleeveBlock.UnderPanel);

        sleeve.Report.ThrowIfFailed();
        IReadOnlyList<SeamWalk> walks = sleeve.Seams.Walk(top, under);
        Assert.All(walks[0].Stretches, stretch => Assert.Equal(0, stretch.EaseFound.Millimeters, 1e-6));
        Assert.Equal([0, easeMm, 0], walks[1].Stretches.Select(stretch => stretch.EaseFound.Millimeters), new Near(1e-6));
        Assert.Equal(425.67 + 25, (top.FindEdge(EdgeName.SleeveHead).SewnLength + under.FindEdge(EdgeName.SleeveHead).SewnLength).Millimeters, 0.01);
        Assert.All(from panel in sleeve.Panels from edge in new[] { SleeveBlock.FrontSeam, SleeveBlock.BackSeam } select panel.FindEdge(edge), seam => Assert.Single(seam.Stretches[0].Segments));
        Assert.Equal(160, under.FindEdge(EdgeName.SleeveHead).SewnLength.Millimeters, 1e-6);
        Assert.InRange(under.FindEdge(EdgeName.Wrist).SewnLength / (top.FindEdge(EdgeName.Wrist).SewnLength + under.FindEdge(EdgeName.Wrist).SewnLength), 0.35, 0.45);
        Assert.Equal(210, (top.FindEdge(EdgeName.Wrist).SewnLength + under.FindEdge(EdgeName.Wrist).SewnLength).Millimeters, 1.5);
    }

    [Fact]
    public void SeamsInto_OfASleeveInTwo_Walk()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).InTwoPieces().Draft();
        Panel front = sleeve.Armhole.Notched(FrontPanel(88));
        Panel back = sleeve.Armhole.Notched(BackPanel(88));

        CheckReport report = sleeve.SeamsInto(front, back).Check([.. sleeve.Panels, front, back]);

        report.ThrowIfFailed();
        Assert.Equal(4, sleeve.SeamsInto(front, back).Seams.Count);
    }

    [Fact]
    public void WithElbowDart_OnAShortSleeve_IsRefused()
    {
        var refusal = Assert.Throws<ConstructionException>(() => SleeveBlock.For(Handbook, Worked).WithLength(SleeveLength.Short).WithElbowDart().Draft());

        Assert.Equal(DiagnosticCode.MethodDeclines, refusal.Code);
    }

    [Fact]
    public void Draft_WithoutAnArmhole_SaysWhatIsMissing()
        => Assert.Equal(DiagnosticCode.ArmholeMissing, Assert.Throws<ConstructionException>(() => BuiltInMethods.Sleeve.For(Worked).Draft()).Code);

    [Theory]
    [InlineData(160, true)]
    [InlineData(0, false)]
    public void Draft_AnArmThatNoCapFits_SaysHowWideItMayBe(double easeMm, bool isTooWide)
    {
        Armhole armhole = isTooWide ? Handbook : Armhole.Of(FrontPanel(140), BackPanel(140));
        SleeveBlockBuilder builder = SleeveBlock.For(armhole, Worked).WithUpperArmEase(Mm(easeMm));

        var refusal = Assert.Throws<ConstructionException>(() => builder.Draft());

        Assert.Equal(DiagnosticCode.MethodDeclines, refusal.Code);
        Length allowed = (Length)refusal.Allowed!;
        Assert.Equal(284 + easeMm, ((Length)refusal.Measured!).Millimeters, 1e-9);
        Assert.Equal(isTooWide, allowed < (Length)refusal.Measured!);
        Length within = allowed + Mm(isTooWide ? -0.1 : 0.1) - Mm(284);
        builder.WithUpperArmEase(within).Draft().Report.ThrowIfFailed();
    }

    // B 88, S 164: upper arm 28.77, wrist 15.27 (regressions of the survey, worked apart); the arm 58.0.
    [Fact]
    public void Draft_OnlyTheBustMeasured_AssumesTheArmAndSaysSo()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Centimeter).With(BodyMeasurement.BustGirth, "88");

        SleeveBlock sleeve = SleeveBlock.For(Handbook, body).Draft();

        sleeve.Report.ThrowIfFailed();
        Assert.Equal(287.7 + 50, sleeve.Width.Millimeters, 0.3);
        Assert.Equal(152.7 + 50, sleeve.Panels[0].FindEdge(EdgeName.Wrist).SewnLength.Millimeters, 0.3);
        Assert.Equal(580, sleeve.SleeveLength.Millimeters, 0.5);
        Assert.Equal(["assumed stature", "assumed upper-arm girth", "assumed wrist girth", "assumed outer arm length"], sleeve.Report.Advice.Select(advice => advice.Check).Take(4));
    }

    [Fact]
    public void Draft_NeitherArmNorBustMeasured_AsksForTheArm()
    {
        var refusal = Assert.Throws<ConstructionException>(() => SleeveBlock.For(Handbook, BodyMeasurements.In(LengthUnit.Centimeter)).Draft());

        Assert.Equal(DiagnosticCode.BodyMeasurementMissing, refusal.Code);
        Assert.Contains("upper-arm girth", refusal.Message, StringComparison.Ordinal);
    }

    // The library's own bodice: its armhole, closed over whatever darts it has, and a sleeve that walks round it.
    [Theory]
    [InlineData("88", "68", SleeveFit.Close)]
    [InlineData("88", "68", SleeveFit.Easy)]
    [InlineData("104", "86", SleeveFit.Close)]
    [InlineData("120", "110", SleeveFit.Close)]
    public void For_ABodice_IsSetIntoItsArmhole(string bust, string waist, SleeveFit fit)
    {
        BodiceBlock bodice = BodiceBlock.For(BodyMeasurements.In(LengthUnit.Centimeter).With(BodyMeasurement.BustGirth, bust).With(BodyMeasurement.WaistGirth, waist)).Draft();

        SleeveBlock sleeve = SleeveBlock.For(bodice).WithFit(fit).Draft();

        sleeve.Report.ThrowIfFailed();
        Panel front = sleeve.Armhole.Notched(bodice.Front);
        Panel back = sleeve.Armhole.Notched(bodice.Back);
        sleeve.SeamsInto(front, back).Check(sleeve.FindPanel(SleeveBlock.SleevePanel), front, back).ThrowIfFailed();
        Assert.Equal(bodice.ArmholeLength.Millimeters + (sleeve.FrontEase + sleeve.BackEase).Millimeters, sleeve.Panels[0].FindEdge(EdgeName.SleeveHead).SewnLength.Millimeters, 1e-6);
    }

    // Off a tape in half millimetres and in sixteenths, all roundings together: a cutter lets 1/16 in pass.
    [Fact]
    public void ReadOffTape_Sixteenths_StaysWithinWhatACutterAccepts()
        => Assert.All(SleeveBlock.For(Handbook, Worked).Draft().ReadOffTape(TapeStep.Sixteenth), finding => Assert.InRange(Math.Abs(((Length)finding.Difference).Millimeters), 0, 25.4 / 16));

    [Fact]
    public void Document_WithASleeve_ComesBackAndIsDraftedAgain()
    {
        SleeveBlock sleeve = SleeveBlock.For(Handbook, Worked).WithElbowDart(Mm(22)).WithLength(Mm(600)).Draft();

        PatternDocument read = PatternDocument.FromJson(PatternDocument.Of(sleeve).ToJson());
        SleeveBlock again = SleeveBlockBuilder.From(read.Block!.ToBuilder()).Draft();

        Assert.Equal(sleeve.Panels[0].SeamOutline().Segments, again.Panels[0].SeamOutline().Segments);
        Assert.Equal(sleeve.Armhole.Front.Segments, again.Armhole.Front.Segments);
        Assert.Equal(sleeve.Armhole.BackNotches, again.Armhole.BackNotches);
    }

    [Theory]
    [InlineData("front", "line 1", "front and 2 numbers")]
    [InlineData("front 0 0", "line 1", "one open line")]
    [InlineData("front 0 0\nline 0 200\nnotch 70 1", "line 4", "back and 2 numbers")]
    [InlineData("front 0 0\nline 1e9 0", "line 2", "line and 2 numbers")]
    [InlineData("front 0 0\nline NaN 0", "line 2", "line and 2 numbers")]
    [InlineData("front 0 0\nwave 1 2", "line 2", "line, curve, arc, notch")]
    [InlineData("front 0 0\nline 0 5\nnotch 2 1\nback 0 0", "line", "40 to 1000")]
    [InlineData("front 0 0\nline 0 200\nnotch 300 1\nback 0 0", "line", "notches in order")]
    [InlineData("front 0 0\nline 0 200\nnotch 30 9\nback 0 0", "line 3", "1 to 3 cuts")]
    [InlineData("front 0 0\nline 0 200\nback 0 0", "line", "a notch")]
    [InlineData("front 0 0\narc 0 0 -1 0 1", "line 2", "an arc")]
    [InlineData("front 0 0\nline 0 200\nnotch 70 1\nback 0 0\nline 0 200\nnotch 70 2\nback 0 0", "line 7", "the end")]
    public void Armhole_InATextThatIsNone_IsRefusedWithItsLine(string text, string where, string expected)
    {
        var setting = (MethodSetting<string>)BuiltInMethods.Sleeve.Settings[0];

        FormatException refusal = Assert.Throws<FormatException>(() => BuiltInMethods.Sleeve.For(Worked).With(setting, text));

        Assert.Contains(where, refusal.Message, StringComparison.Ordinal);
        Assert.Contains(expected, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Armhole_OfPanelsThatHaveNoSideNorShoulderBesideIt_IsRefused()
    {
        Panel odd = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.From(Point2D.Origin).LineTo(Point2D.FromMillimeters(0, 200)))
            .WithEdge(EdgeName.Of("over"), EdgeRole.Seam, CurvePath.From(Point2D.FromMillimeters(0, 200)).LineTo(Point2D.FromMillimeters(100, 100)))
            .WithEdge(EdgeName.Of("under"), EdgeRole.Seam, CurvePath.From(Point2D.FromMillimeters(100, 100)).LineTo(Point2D.Origin))
            .Make();

        Assert.Equal(DiagnosticCode.ArmholeBetweenOthers, Assert.Throws<ConstructionException>(() => Armhole.Of(odd, BackPanel(88))).Code);
        Assert.Throws<ArgumentException>(() => Handbook.Notched(FrontPanel(100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Armhole.Of(CurvePath.From(Point2D.Origin).LineTo(Point2D.FromMillimeters(0, 20)), Handbook.Back));
        Assert.Throws<ArgumentException>(() => Armhole.Of(FrontPanel(88).SeamOutline(), Handbook.Back));
    }

    private static Point2D Crown(SleeveBlock sleeve) => sleeve.FindPanel(SleeveBlock.SleevePanel).Landmarks.Single(landmark => landmark.Name.Text == "crown").Position;

    private sealed class Near(double within) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= within;

        public int GetHashCode(double obj) => 0;
    }
}
