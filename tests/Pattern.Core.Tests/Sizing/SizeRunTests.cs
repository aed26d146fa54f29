using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Sizing;
using Pattern.Core.Styling;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Styling;
using UnitsNet;

namespace Pattern.Core.Tests.Sizing;

public class SizeRunTests
{
    private static readonly SizeRun Skirts = SizeRun.Of(SizeTable.En13402Women.Between("2", "7"), BuiltInMethods.Skirt);

    private static readonly SizeNest Nest = Skirts.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Hem));

    private static readonly BlockDesign ALine = BuiltInDesigns.All.Single(design => design.Name == "a-line");

    private static double WidthMm(IEnumerable<Panel> panels) => panels.Sum(panel => panel.SeamOutline().Bounds.Width.Millimeters);

    private static double OffMm(Panel one, Panel other)
    {
        Point2D[] points = one.SeamOutline().Flatten(Length.FromMillimeters(0.05));
        CurvePath outline = other.SeamOutline();
        return points.Max(point => outline.ClosestTo(point).Distance.Millimeters);
    }

    /// <summary>Both panels are widest at the hip and straight below it: half the body's hip and ease. The table's step is 4 cm.</summary>
    [Fact]
    public void Of_TheHip_GrowsByExactlyTheTablesStep()
    {
        double[] widths = [.. Skirts.Sizes.Select(size => 2 * WidthMm(size.Block.Panels))];

        Assert.All(widths.Skip(1).Zip(widths, (large, small) => large - small), step => Assert.Equal(40, step, 1e-6));
        Assert.All(Skirts.Sizes, size => Assert.True(size.Block.Report.Passed));
    }

    /// <summary>A quarter of the step at the side of each panel, at waist level and hem alike: common practice, no source.</summary>
    [Fact]
    public void Rules_OfTheSide_AreAQuarterOfTheStep()
    {
        GradeRule[] sides = [.. Nest.Rules.Rules.Where(rule => rule.Point is "where side meets hem" or "where hem meets side")];

        Assert.Equal(2, sides.Length);
        Assert.All(sides.SelectMany(rule => rule.Moves), move =>
        {
            Assert.Equal(10, Math.Abs(move.X.Millimeters), 1e-6);
            Assert.Equal(0, move.Y.Millimeters, 1e-6);
        });
        Assert.Equal(0, Nest.Rules.Rules.First(rule => rule.Point is "where centre meets hem" or "where hem meets centre").Moves[0].Length.Millimeters, 1e-9);
    }

    /// <summary>Each size 5 mm longer than the one before: no line crosses another.</summary>
    [Fact]
    public void StackedOn_SizesThatGrowInLength_HoldsEveryCheck()
    {
        SizeRun longer = SizeRun.Of(SizeTable.En13402Women.Between("2", "7"), body => SkirtBlock.For(body)
            .WithLength(Length.FromMillimeters(600) + ((body[BodyMeasurement.HipGirth] - Length.FromCentimeters(88)) * (5.0 / 40))).Draft());

        SizeNest nest = longer.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Hem));

        Assert.True(nest.Report.Passed, nest.Report.ToString());
        Assert.Empty(nest.Report.Advice);
    }

    /// <summary>Sizes of one length share the waist at the centre; where their darts shift, the waists cross by a hair. It is told, and nothing else crosses.</summary>
    [Fact]
    public void StackedOn_SizesOfOneLength_TellsWhichWaistsCross()
    {
        Assert.True(Nest.Report.Passed);
        Assert.NotEmpty(Nest.Report.Advice);
        Assert.All(Nest.Report.Advice, finding => Assert.StartsWith("waist of sizes", finding.Check));
    }

    /// <summary>A side seam that is narrower at the waist and wider at the hem than the next size crosses it once.</summary>
    [Fact]
    public void StackedOn_SidesThatCross_AreFound()
    {
        SizeRun flared = SizeRun.Of(SizeTable.En13402Women.Between("3", "5"), body => body.Name == "size 3" ? Cloth(170, 260) : body.Name == "size 4" ? Cloth(180, 240) : Cloth(175, 270));

        SizeNest nest = flared.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Waist));

        Assert.Equal(["side of sizes 3 and 4 crossing 1", "side of sizes 4 and 5 crossing 1"], nest.Report.Advice.Select(finding => finding.Check + " " + ((Scalar)finding.Measured).Amount));

        // The waist corner goes out and back, the hem corner in and out.
        Assert.Equal(["corners that turn back after size 4 2"], nest.Report.Failures.Select(finding => finding.Check + " " + ((Scalar)finding.Measured).Amount));
    }

    private static Block Cloth(double waistMm, double hemMm) => DraftingMethod.Of("trial cloth", "1", draft => draft.Add(Panel.Named(PanelName.Front)
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, Straight(0, 600, 0, 0))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, Straight(0, 0, hemMm, 0))
        .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Straight(hemMm, 0, waistMm, 600))
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, Straight(waistMm, 600, 0, 600))
        .Make())).For(Bodies.Example).Draft();

    private static CurvePath Straight(double x0, double y0, double x1, double y1)
        => CurvePath.FromLine(LineSegment.Between(Point2D.FromMillimeters(x0, y0), Point2D.FromMillimeters(x1, y1)));

    /// <summary>Up and back again is where it began, on any panel: of the run, a design of it, or one that the sizes were never drafted with.</summary>
    // Smooth lines stay smooth: looked at by the directions of the drawn parts, on skirt, A-line and bodice.
    [Fact]
    public void Grade_AnyPanel_HasNoCornerThatItHadNot()
    {
        SizeNest bodices = SizeRun.Of(SizeTable.En13402Women.Between("3", "6"), BuiltInMethods.Bodice).StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Waist));
        (SizeNest Nest, Panel Panel)[] cases =
        [
            .. Skirts.Find("4").Panels.Select(panel => (Nest, panel)),
            .. Skirts.Find("4").With(ALine).Panels.Where(panel => panel.Name == PanelName.Front || panel.Name == PanelName.Back).Select(panel => (Nest, panel)),
            .. bodices.PanelsOf("4").Select(panel => (bodices, panel)),
        ];
        foreach ((SizeNest nest, Panel panel) in cases)
        {
            foreach (string to in new[] { "3", "5", "6" })
            {
                Panel graded = nest.Rules.Grade(panel, "4", to);
                foreach (PanelEdge edge in panel.Edges)
                {
                    double was = DartTurnTests.SharpestCornerDegrees(edge);
                    double now = DartTurnTests.SharpestCornerDegrees(graded.FindEdge(edge.Name));
                    Assert.True(now <= was + 0.01, $"{panel.Name} {edge.Name} from 4 to {to}: {was:0.00}, then {now:0.00} degrees");
                }
            }
        }
    }

    [Fact]
    public void Grade_ThereAndBack_IsWhereItBegan()
    {
        Block four = Skirts.Find("4");
        Panel[] panels =
        [
            .. four.Panels,
            .. four.With(ALine).Panels.Where(panel => panel.Name == PanelName.Front || panel.Name == PanelName.Back),
            four.FindPanel(PanelName.Front).TurnDartIntoGathers(EdgeName.Waist.Dart(1)),
            SkirtBlock.For(Bodies.Example).Draft().FindPanel(PanelName.Front),
        ];
        foreach (Panel panel in panels)
        {
            foreach (string to in new[] { "5", "7", "3", "2" })
            {
                Panel back = Nest.Rules.Grade(Nest.Rules.Grade(panel, "4", to), to, "4");
                Assert.InRange(OffMm(panel, back), 0, 0.01);
                Assert.InRange(OffMm(back, panel), 0, 0.01);
                Assert.All(panel.Notches.Zip(back.Notches, (one, other) => one.Position.DistanceTo(other.Position).Millimeters), off => Assert.InRange(off, 0, 0.01));
            }
        }
    }

    /// <summary>Where every point is graded as drafted, no edge lies by more than what a cutter lets pass, 1/16 in (common practice, no source), and the graded seams walk within it.</summary>
    [Fact]
    public void AgainstDrafted_TheSkirt_LiesWithinWhatACutterLetsPass()
    {
        IReadOnlyList<Finding> edges = Nest.Rules.AgainstDrafted("4");

        Assert.Equal(5 * Skirts.Find("4").Panels.Sum(panel => panel.Edges.Count), edges.Count);
        Assert.All(edges, edge => Assert.True(edge.PassedByHand, edge.ToString()));

        Panel[] graded = [.. Skirts.Find("4").Panels.Select(panel => Nest.Rules.Grade(panel, "4", "7"))];
        Assert.All(Skirts.Find("4").Seams.Check(graded).Findings, finding => Assert.True(finding.PassedByHand, finding.ToString()));
        Assert.Equal(120, 2 * (WidthMm(graded) - WidthMm(Skirts.Find("4").Panels)), 1e-6);
    }

    /// <summary>Corners and dart points of the graded panel stand where the larger size was drafted.</summary>
    [Fact]
    public void Grade_TheSizeOfTheRun_HasThePointsOfTheNext()
    {
        foreach (Panel drafted in Nest.PanelsOf("5"))
        {
            Panel graded = Nest.Rules.Grade(Nest.PanelsOf("4").Single(panel => panel.Name == drafted.Name), "4", "5");
            Assert.All(graded.Edges.Zip(drafted.Edges, (one, other) => one.Start.DistanceTo(other.Start).Millimeters), off => Assert.Equal(0, off, 1e-9));
            Assert.All(graded.Darts.Zip(drafted.Darts, (one, other) => one.Apex.DistanceTo(other.Apex).Millimeters), off => Assert.Equal(0, off, 1e-9));
        }
    }

    [Fact]
    public void StackedOn_ALine_LaysItOnItself()
    {
        SizeNest nest = Skirts.StackedOn(StackPlace.Along(EdgeName.SideSeam));
        foreach (PanelName name in new[] { PanelName.Front, PanelName.Back })
        {
            PanelEdge[] sides = [.. nest.Rules.Sizes.Select(size => nest.PanelsOf(size).Single(panel => panel.Name == name).FindEdge(EdgeName.SideSeam))];
            Assert.All(sides, side => Assert.Equal(0, side.Start.DistanceTo(sides[0].Start).Millimeters, 1e-9));
            Assert.All(sides, side => Assert.Equal(0, Math.Abs((side.End - side.Start).AngleTo(sides[0].End - sides[0].Start).Radians), 1e-9));
        }
    }

    [Fact]
    public void Draw_TellsSizesApartInBlackAndWhite_AndNamesThemAtTheirEnds()
    {
        Drawing drawing = Nest.Draw();

        Assert.True(drawing.TryFindLayer(LayerName.SeamLines, out DrawingLayer? seams));
        string[] patterns = [.. seams!.Marks.Cast<PathMark>().Select(mark => mark.Role).Distinct().Select(role => role.Weight + ":" + string.Join("-", role.Dashes))];
        Assert.Equal(6, patterns.Distinct().Count());
        Assert.True(drawing.TryFindLayer(LayerName.Names, out DrawingLayer? names));
        string[] words = [.. names!.Marks.OfType<TextMark>().Select(mark => mark.Text)];
        Assert.All(Nest.Rules.Sizes, size => Assert.Equal(4, words.Count(word => word == size)));
        Assert.Contains("size-line-2", drawing.ToDxf());
        Assert.StartsWith("<", drawing.ToSvg().TrimStart());
    }

    /// <summary>Every size is a block of its own in a pattern file (ASTM D6673, from memory).</summary>
    [Fact]
    public void ToDxf_TheRun_HasABlockForEachPieceAndSize()
    {
        string file = Skirts.ToPieces(SkirtPattern.From).ToDxf(new DxfOptions { SampleSize = "4" });

        Assert.Contains("SAMPLE SIZE: 4", file);
        Assert.All(Skirts.Sizes, size => Assert.Contains("Size: " + size.Name + "\r\n", file));
    }

    [Fact]
    public void ToCsv_HasARowForEachPoint()
    {
        string[] lines = Nest.Rules.ToCsv().Split('\n', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(Nest.Rules.Rules.Count + 1, lines.Length);
        Assert.All(lines, line => Assert.Equal(2 + (2 * 5), line.Split(',').Length - (line.Contains('"') ? 1 : 0)));
    }

    [Fact]
    public void Runs_ThatCannotBe_AreRefusedWithTheSize()
    {
        SizeTable table = SizeTable.En13402Women.Between("3", "4");
        ConstructionException refused = Assert.Throws<ConstructionException>(() => SizeRun.Of(table, body => SkirtBlock.For(body.Without(BodyMeasurement.HipGirth)).Draft()));
        Assert.Equal(DiagnosticCode.SizeRefused, refused.Code);
        Assert.Contains("hip girth", refused.Message);

        SizeRun other = SizeRun.Of(table, body => body.Name == "size 3" ? SkirtBlock.For(Bodies.Inches("39", "40")).Draft() : SkirtBlock.For(Bodies.Inches("28", "40")).Draft());
        Assert.Equal(DiagnosticCode.SizesMadeOtherwise, Assert.Throws<ConstructionException>(() => other.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.Hem))).Code);
        Assert.Equal(DiagnosticCode.StackPlaceMissing, Assert.Throws<ConstructionException>(() => Skirts.StackedOn(StackPlace.Corner(EdgeName.Centre, EdgeName.SideSeam))).Code);
        Panel front = Skirts.Find("4").FindPanel(PanelName.Front);
        Assert.Equal(DiagnosticCode.SizeUnknown, Assert.Throws<ConstructionException>(() => Nest.Rules.Grade(front, "4", "9")).Code);
        Assert.Equal(DiagnosticCode.GradePanelMirrored, Assert.Throws<ConstructionException>(() => Nest.Rules.Grade(front.Transformed(Transform2D.Mirror(Line.From(Point2D.Origin, Direction.Up))), "4", "5")).Code);
    }
}
