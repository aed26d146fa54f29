using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

public class SkirtBlockDrawingTests
{
    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    // The inch is 25.4 mm exactly (international yard and pound agreement of 1959).
    [Fact]
    public void Draw_TestSquares_AreFiveCentimetresAndTwoInches()
    {
        PathMark[] squares = [.. DrawnSkirts.Drawn("default").Marks<PathMark>(LayerName.TestSquares).Where(mark => mark.Path.IsClosed)];

        Assert.Equal(2, squares.Length);
        foreach ((PathMark square, double side) in squares.Zip(new[] { 50.0, 50.8 }))
        {
            Assert.Equal(side, square.Bounds.Width.Millimeters, 1e-9);
            Assert.Equal(side, square.Bounds.Height.Millimeters, 1e-9);
            Assert.Equal(4 * side, square.Path.Length.Millimeters, 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_EverythingLiesOnTheSheet(string skirt)
    {
        Drawing drawing = DrawnSkirts.Drawn(skirt);

        Assert.All(drawing.Marks<DrawingMark>(), mark =>
        {
            Assert.True(drawing.Bounds.Contains(mark.Bounds.LowerLeft));
            Assert.True(drawing.Bounds.Contains(mark.Bounds.UpperRight));
        });
    }

    // common practice, no source: one notch for a front, two for a back.
    [Fact]
    public void Draw_Notches_OneInTheFrontTwoInTheBackInsideTheirPanels()
    {
        SkirtBlock block = DrawnSkirts.Draft("default");
        PathMark[] notches = [.. block.Draw().Marks<PathMark>(LayerName.Notches)];
        double side = block.Back.FindEdge(EdgeName.SideSeam).End.X.Millimeters;

        Assert.Equal(2, notches.Count(notch => notch.Bounds.Centre.X.Millimeters < side));
        Assert.Equal(1, notches.Count(notch => notch.Bounds.Centre.X.Millimeters > side));
        Assert.All(notches, notch => Assert.Equal(side, notch.Path.Start.X.Millimeters, 1e-9));
    }

    [Theory]
    [InlineData("default", Waistline.Level)]
    [InlineData("level", Waistline.Shaped)]
    [InlineData("two darts", Waistline.Level)]
    public void Draw_AlternativeAskedFor_IsTheWaistOfTheBlockDraftedThatWay(string skirt, Waistline other)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        SkirtBlock drafted = block.ToBuilder().WithWaistline(other).Draft();
        double expected = drafted.Back.FindEdge(EdgeName.Waist).SewnLength.Millimeters + drafted.Front.FindEdge(EdgeName.Waist).SewnLength.Millimeters;

        PathMark[] lines = [.. block.Draw(new DrawingOptions { Alternatives = [block.Alternatives[0].Name] }).Marks<PathMark>(LayerName.Alternatives).Where(mark => mark.Role == LineRole.Alternative)];

        Assert.Equal(expected, lines.Sum(line => line.Path.Length.Millimeters), 1e-6);
        Assert.All(lines, line => Assert.Null(line.Facts));
    }

    // Whoever did not ask for it gets no second waistline, and pays for no second draft.
    [Fact]
    public void Draw_NoAlternativeAskedFor_DrawsNone() => Assert.False(DrawnSkirts.Draft("default").Draw().TryFindLayer(LayerName.Alternatives, out _));

    // A waist of 44 in on a hip of 42 in: both sides lean outward, so the panels as drafted lie over each other.
    [Fact]
    public void Draw_PanelsThatOverlap_StandApart()
    {
        SkirtBlock block = DrawnSkirts.Draft("waist larger than hip");
        Assert.True(block.Back.SeamOutline().Bounds.Right > block.Front.SeamOutline().Bounds.Left);

        PathMark[] seams = [.. block.Draw().Marks<PathMark>(LayerName.SeamLines)];

        double back = seams.Where(seam => seam.Facts!.Panel == PanelName.Back).Max(seam => seam.Bounds.Right.Millimeters);
        double front = seams.Where(seam => seam.Facts!.Panel == PanelName.Front).Min(seam => seam.Bounds.Left.Millimeters);
        Assert.True(front > back + 20, $"{front} {back}");
        Assert.Equal(block.Front.SeamOutline().Length.Millimeters, seams.Where(seam => seam.Facts!.Panel == PanelName.Front).Sum(seam => seam.Path.Length.Millimeters), 1e-6);
    }

    // The guide of the side is square to the waist level; it belongs to one of the panels and goes with it as a whole.
    [Fact]
    public void Draw_PanelsThatOverlap_StraightLinesKeepTheirDirections()
    {
        SkirtBlock block = DrawnSkirts.Draft("waist larger than hip");
        BlockLine[] straight = [.. block.Drafted.Lines.Where(line => line.Path.Segments.Count == 1 && line.Path.Segments[0].Kind == PathSegmentKind.Line)];
        PathMark[] drawn = [.. block.Draw().Layers.Where(layer => layer.Name == LayerName.Construction || layer.Name == LayerName.Levels).SelectMany(layer => layer.Marks).OfType<PathMark>().Where(mark => mark.Path.Segments.Count == 1 && mark.Path.Segments[0].Kind == PathSegmentKind.Line)];

        Assert.Equal(straight.Length, drawn.Length);
        Assert.Equal(
            straight.Select(line => Math.Round(line.Path.StartDirection.Angle.Degrees, 6)).Order(),
            drawn.Select(mark => Math.Round(mark.Path.StartDirection.Angle.Degrees, 6)).Order());
    }

    // common practice, no source: a small arrow across each dart says which way it is pressed, since its cap is cut for it. Towards the centre here.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_EachDart_HasAnArrowTowardsTheCentre(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        PathMark[] arrows = [.. block.Draw().Marks<PathMark>(LayerName.Darts).Where(mark => mark.Role == LineRole.PressArrow)];

        Assert.Equal(block.Back.Darts.Count() + block.Front.Darts.Count(), arrows.Length);
        Assert.All(arrows, arrow =>
        {
            Assert.Equal(ArrowEnds.End, arrow.Arrows);
            Assert.InRange(arrow.Path.Length.Millimeters, 10, 20);
            double middle = arrow.Path.PointAtLength(arrow.Path.Length / 2).X.Millimeters;
            Dart nearest = block.Back.Darts.Concat(block.Front.Darts).OrderBy(dart => Math.Abs(dart.MiddleOfIntake.X.Millimeters - middle)).First();
            bool isBack = block.Back.Darts.Contains(nearest);
            Assert.True(isBack ? arrow.Path.End.X < arrow.Path.Start.X : arrow.Path.End.X > arrow.Path.Start.X, $"{arrow.Path.Start} {arrow.Path.End}");
        });
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_FoldLines_RunFromApexToTheCornerOfTheCapAndHalveTheDart(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        PathMark[] folds = [.. block.Draw().Marks<PathMark>(LayerName.Darts).Where(mark => mark.Role == LineRole.Fold)];
        Dart[] darts = [.. block.Back.Darts.Concat(block.Front.Darts)];

        Assert.Equal(darts.Length, folds.Length);
        foreach ((PathMark fold, Dart dart) in folds.Zip(darts))
        {
            Assert.Equal(dart.Apex, fold.Path.Start);
            Direction along = dart.Apex.DirectionTo(fold.Path.End);
            Assert.Equal(0, (dart.Apex.DirectionTo(dart.StartLeg).AngleTo(along) - along.AngleTo(dart.Apex.DirectionTo(dart.EndLeg))).Degrees, 1e-6);
        }
    }

    [Fact]
    public void Draw_ConstructionLines_AllDrawnQuietly()
    {
        SkirtBlock block = DrawnSkirts.Draft("fitted");
        Drawing drawing = block.Draw();
        PathMark[] quiet = [.. drawing.Marks<PathMark>(LayerName.Construction).Concat(drawing.Marks<PathMark>(LayerName.Levels))];

        Assert.All(block.Drafted.Lines, line => Assert.Contains(quiet, mark => ReferenceEquals(mark.Path, line.Path)));
        Assert.Equal(block.Drafted.Lines.Count, quiet.Length);
        Assert.All(quiet, mark => Assert.True(mark.Role.Weight < LineRole.Seam.Weight / 3));
        Assert.Equal(4, block.Drafted.Lines.Count(line => line.Role == ConstructionRole.Level));
    }

    [Fact]
    public void Draw_Grainlines_AreUprightWithArrowsAtBothEnds()
    {
        PathMark[] grain = [.. DrawnSkirts.Drawn("fitted").Marks<PathMark>(LayerName.Grainlines)];

        Assert.Equal(2, grain.Length);
        Assert.All(grain, line =>
        {
            Assert.Equal(ArrowEnds.Both, line.Arrows);
            Assert.Equal([line.Path.Start, line.Path.End], line.ArrowHeads().Select(head => head.Start));
            Assert.Equal(line.Path.Start.X.Millimeters, line.Path.End.X.Millimeters, 1e-9);
        });
    }

    [Theory]
    [InlineData("for Rosalind")]
    [InlineData("32\u2033")]
    [InlineData("40\u2033")]
    [InlineData("24\u2033")]
    [InlineData("1 of 1\u00BC\u2033, 6\u2033 long")]
    [InlineData("1 of 1\u2033, 5\u2033 long")]
    [InlineData("Full size, scale 1:1.")]
    [InlineData("proportional law for waist-hip difference 8 in")]
    public void Draw_TitleBlock_SaysWhatItWasMadeFrom(string words)
        => Assert.Contains(words, DrawnSkirts.Drawn("default").Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text));

    [Fact]
    public void Draw_TitleBlock_PrintsMeasurementsFinerThanTheUsualMarkWhereTheyLieThere()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Inches("31 29/64", "40 1/16")).Draft();

        string[] words = [.. block.Draw().Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text)];

        Assert.Contains("31\u00B2\u2079\u2044\u2086\u2084\u2033", words);
        Assert.Contains("40\u00B9\u2044\u2081\u2086\u2033", words);
    }

    [Fact]
    public void Draw_Tape_ChoosesTheUnitOfTheSheet()
    {
        Drawing drawing = DrawnSkirts.Draft("default").Draw(new DrawingOptions { Tape = TapeStep.Millimeter });

        Assert.Contains("lower hip line, 25.4\u00A0cm", drawing.Marks<TextMark>(LayerName.Levels).Select(mark => mark.Text));
    }

    [Fact]
    public void Draw_NoDateGiven_PrintsNone()
    {
        SkirtBlock block = DrawnSkirts.Draft("default");

        Assert.DoesNotContain(block.Draw().Marks<TextMark>(), mark => mark.Text.Contains("20" + "26"));
        Assert.Contains(block.Draw(new DrawingOptions { Date = new DateTime(2026, 3, 1) }).Marks<TextMark>(), mark => mark.Text == "2026-03-01");
    }

    [Fact]
    public void Draw_FailedChecks_ShoutsAcrossTheSheet()
    {
        Drawing drawing = DrawnSkirts.Failed();

        Assert.Equal(2, drawing.Marks<TextMark>(LayerName.Warning).Count(mark => mark.Text == "DO NOT CUT" && mark.Size > Length.FromMillimeters(40)));
        Assert.Contains(drawing.Marks<TextMark>(LayerName.TitleBlock), mark => mark.Text.StartsWith("DO NOT CUT: 1 of ") && mark.Size > Length.FromMillimeters(15));
        Assert.Contains(drawing.Marks<TextMark>(LayerName.TitleBlock), mark => mark.Text.StartsWith("FAILED closed waist, front"));
        Assert.Contains("DO NOT CUT", drawing.Description);
        Assert.Equal(LayerName.Warning, drawing.Layers[0].Name);
    }

    [Fact]
    public void Draw_PassedChecks_HasNoWarning() => Assert.False(DrawnSkirts.Drawn("default").TryFindLayer(LayerName.Warning, out _));

    // In black and white, roles that run side by side still differ by weight or dash.
    [Fact]
    public void LineRoles_OnOneSheet_DifferInWeightOrDash()
    {
        LineRole[] roles = [LineRole.Seam, LineRole.DartLeg, LineRole.Fold, LineRole.Alternative, LineRole.Level, LineRole.Frame, LineRole.Construction, LineRole.HandDrawn, LineRole.Grain];

        Assert.Equal(roles.Length, roles.Select(role => (role.Weight.Millimeters, string.Join(" ", role.Dashes))).Distinct().Count());
        Assert.All(roles, role => Assert.True(role == LineRole.Seam || role.Weight < LineRole.Seam.Weight));
    }
}
