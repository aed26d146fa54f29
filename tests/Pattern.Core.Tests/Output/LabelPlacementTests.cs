using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Tests.Blocks;

namespace Pattern.Core.Tests.Output;

public class LabelPlacementTests
{
    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NoLabelMeetsALineAPointOrAnotherLabel(string skirt) => Assert.Empty(LabelBoxes.Collisions(DrawnSkirts.Drawn(skirt)));

    [Fact]
    public void Draw_FailedChecks_OnlyTheWarningCrossesLines() => Assert.Empty(LabelBoxes.Collisions(DrawnSkirts.Failed().Without(LayerName.Warning)));

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_EveryLandmarkOfTheStepsIsNamedOnTheSheet(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        Drawing drawing = block.Draw();
        string[] named = [.. drawing.Marks<TextMark>(LayerName.Landmarks).Select(label => label.Text)];

        Assert.All(block.Steps.SelectMany(step => step.Landmarks), landmark => Assert.Contains(landmark.Text, named));
        Assert.Equal(block.Trued.Landmarks.Count, drawing.Marks<PointMark>(LayerName.Landmarks).Count());
    }

    // A name that stands far off must be tied to its point; one that is not tied must stand beside it.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NamesOfLandmarksStandBesideThemOrAreTiedToThem(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        Drawing drawing = block.Draw();
        PathMark[] leaders = [.. drawing.Marks<PathMark>(LayerName.Landmarks).Where(mark => mark.Role == LineRole.Leader)];

        // Where they are drawn, which is elsewhere where panels had to be drawn apart.
        Landmark[] landmarks = [.. block.Trued.Landmarks.Zip(drawing.Marks<PointMark>(LayerName.Landmarks), (landmark, mark) => landmark.At(mark.Position))];
        foreach (Landmark landmark in landmarks)
        {
            TextMark label = drawing.Marks<TextMark>(LayerName.Landmarks).Single(text => text.Text == landmark.Name.Text);
            double away = LabelBoxes.Corners(label).Min(corner => corner.DistanceTo(landmark.Position).Millimeters);
            bool isTied = leaders.Any(leader => leader.Path.Start.DistanceTo(landmark.Position).Millimeters < 2);
            bool isBeside = away < Math.Max(label.Width.Millimeters, 5) && LabelBoxes.Grown(label, 3, landmark.Position);
            bool isNearest = landmarks.All(other => other.Position.DistanceTo(landmark.Position).Millimeters < 1.5 || LabelBoxes.Distance(label, other.Position) > LabelBoxes.Distance(label, landmark.Position));
            isBeside &= isNearest;
            Assert.True(isBeside || isTied, $"{landmark.Name} is {away:0.0} mm from its point");
        }
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NamesPanelsEdgesAndLevels(string skirt) => Assert.Empty(MissingNames(DrawnSkirts.Drawn(skirt)));

    // Real bodies and hostile ones, any options: wherever a block can be drafted, its names find room.
    [Property(MaxTest = 40)]
    public Property Draw_AnyBody_NoCollision() => Prop.ForAll(Arb.From(from body in Bodies.Any from asked in Bodies.Options select (body, asked)), given =>
    {
        SkirtBlock block;
        try
        {
            block = given.asked.Apply(SkirtBlock.For(given.body)).Draft();
        }
        catch (Core.Diagnostics.ConstructionException)
        {
            // A refusal is the business of the block's own tests; there is nothing to draw.
            return true;
        }

        Drawing drawing = block.Draw();
        string[] collisions = [.. LabelBoxes.Collisions(drawing.Without(LayerName.Warning))];
        string[] missing = [.. MissingNames(drawing)];
        string[] leftOut = [.. LeftOut(drawing)];
        int landmarks = drawing.Marks<TextMark>(LayerName.Landmarks).Count() + leftOut.Length;
        return leftOut.Intersect(["back side waist", "front side waist", "CB waist", "CF waist", "side hem"]).Any() ? throw new InvalidOperationException("left out: " + string.Join(", ", leftOut)) : collisions.Length == 0 && missing.Length == 0 && landmarks == block.Trued.Landmarks.Count
            ? true
            : throw new InvalidOperationException($"{landmarks} of {block.Trued.Landmarks.Count} named; missing: {string.Join(", ", missing)}; {string.Join("; ", collisions)}");
    });

    // Common practice, no source: words of one line of type are parted by more than the space within a phrase, or they are read as one.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void Draw_AnySkirt_NamesOnOneRowAreApart(string skirt)
    {
        TextMark[] names = [.. DrawnSkirts.Drawn(skirt).Marks<TextMark>(LayerName.Landmarks).Concat(DrawnSkirts.Drawn(skirt).Marks<TextMark>(LayerName.Levels))];
        foreach ((TextMark one, TextMark other) in names.SelectMany((one, i) => names.Skip(i + 1).Select(other => (one, other))))
        {
            bool isOneRow = Math.Abs(one.Anchor.Y.Millimeters - other.Anchor.Y.Millimeters) < one.Size.Millimeters / 2;
            double between = Math.Max(
                LabelBoxes.Corners(other).Min(corner => corner.X.Millimeters) - LabelBoxes.Corners(one).Max(corner => corner.X.Millimeters),
                LabelBoxes.Corners(one).Min(corner => corner.X.Millimeters) - LabelBoxes.Corners(other).Max(corner => corner.X.Millimeters));
            Assert.True(!isOneRow || between > 0.8 * Math.Min(one.Size.Millimeters, other.Size.Millimeters), $"{one.Text} and {other.Text} are {between:0.0} mm apart");
        }
    }

    // Common practice, no source: a word that ends at a dart leg is read as if it named the dart.
    [Theory]
    [InlineData("24", "34")]
    [InlineData("26", "37")]
    [InlineData("29 1/2", "39 3/4")]
    [InlineData("22", "40")]
    [InlineData("52", "60")]
    public void Draw_DartsAtTheYoke_NamesOfLevelsKeepOffTheirLegs(string waist, string hip)
    {
        Drawing drawing = DrawnSkirts.Inches(waist, hip).Draft().Draw();
        PathMark[] legs = [.. drawing.Marks<PathMark>(LayerName.Darts).Where(mark => mark.Role == LineRole.DartLeg)];
        foreach (TextMark name in drawing.Marks<TextMark>(LayerName.Levels))
        {
            double left = LabelBoxes.Corners(name).Min(corner => corner.X.Millimeters) - 3.5;
            double right = LabelBoxes.Corners(name).Max(corner => corner.X.Millimeters) + 3.5;
            double bottom = LabelBoxes.Corners(name).Min(corner => corner.Y.Millimeters);
            double top = LabelBoxes.Corners(name).Max(corner => corner.Y.Millimeters);
            Assert.All(legs, leg => Assert.DoesNotContain(leg.Path.PointsAtEqualLengths(400), point =>
                point.X.Millimeters > left && point.X.Millimeters < right && point.Y.Millimeters > bottom && point.Y.Millimeters < top));
        }
    }

    // 10 mm lie between the two panels, far less than any of the six names needs.
    [Theory]
    [InlineData("44", "44")]
    [InlineData("40", "43")]
    public void Draw_SeamsCloseTogether_NamesOfBackAndFrontStandOnTheirOwnSides(string waist, string hip)
    {
        Drawing drawing = DrawnSkirts.Inches(waist, hip).Fitted(SkirtFit.Usual).Draft().Draw();
        TextMark Name(string text) => drawing.Marks<TextMark>(LayerName.Landmarks).Single(mark => mark.Text == text);

        foreach (string place in new[] { "side waist", "waist point" })
        {
            double end = LabelBoxes.Corners(Name("back " + place)).Max(corner => corner.X.Millimeters);
            double start = LabelBoxes.Corners(Name("front " + place)).Min(corner => corner.X.Millimeters);
            Assert.True(end < start, $"{place}: the back's name ends at {end:0.0}, the front's begins at {start:0.0}");
        }
    }

    [Fact]
    public void Draw_MorePointsThanRoom_NamesWhatIsCutAndSaysWhichNamesAreLeftOut()
    {
        Block block = new Crowd().For(Bodies.Example).Draft();

        Drawing drawing = block.Draw();

        string[] named = [.. drawing.Marks<TextMark>(LayerName.Landmarks).Select(mark => mark.Text)];
        string[] leftOut = [.. LeftOut(drawing)];
        Assert.NotEmpty(leftOut);
        Assert.Contains("guide 1 1", named);
        Assert.Superset(new HashSet<string> { "upper left", "upper right", "lower left", "lower right" }, new HashSet<string>(named));
        Assert.Equal(block.Trued.Landmarks.Select(landmark => landmark.Name.Text).Order(), named.Concat(leftOut).Order());
        Assert.Empty(LabelBoxes.Collisions(drawing));
    }

    // Found by the property above: on a body without a waist the five points of the side stand within 3 mm of each other, and one name found no room.
    [Theory]
    [InlineData(1255.57, 1260.81, 22.3338, 26.37008, 829.27214, 1.973675, -13.51564, 49.139295, 10, 25.4)]
    [InlineData(1316.82, 1281.23, 71.70684, 36.67144, 1092.43166, 2.44325, -11.5422, 48.84045, 10, 0)]
    public void Draw_PointsOfTheSideCrowded_EveryNameIsPlacedWithoutCollision(
        double waist, double hip, double hipEase, double waistEase, double length, double sideLift, double backLift, double largestDart, double sideHem, double backHem)
    {
        var asked = new SkirtAsked(hipEase, waistEase, length, sideLift, backLift, Waistline.Shaped, largestDart, sideHem, backHem, 0);
        SkirtBlock block = asked.Apply(SkirtBlock.For(Bodies.Millimetres(waist, hip))).Draft();

        Drawing drawing = block.Draw();

        Assert.Equal(block.Trued.Landmarks.Count, drawing.Marks<TextMark>(LayerName.Landmarks).Count());
        Assert.Empty(LabelBoxes.Collisions(drawing));
        Assert.Empty(MissingNames(drawing));
    }

    // From the words of the note, wherever its lines break.
    private static IEnumerable<string> LeftOut(Drawing drawing)
    {
        const string begin = "Marked without their names, for lack of room: ";
        string notes = string.Join(" ", drawing.Marks<TextMark>(LayerName.TitleBlock).Select(mark => mark.Text));
        int at = notes.IndexOf(begin, StringComparison.Ordinal);
        return at < 0 ? [] : notes.Substring(at + begin.Length, notes.IndexOf('.', at) - at - begin.Length).Split(", ");
    }

    /// <summary>A rectangle with more guides in its middle than can be named there.</summary>
    private sealed class Crowd() : DraftingMethod("crowd", "1")
    {
        protected override void Draft(BlockDraft draft)
        {
            const int rows = 12;
            (string Name, double X, double Y)[] corners = [("upper left", 0, 300), ("upper right", 200, 300), ("lower right", 200, 0), ("lower left", 0, 0)];
            for (int i = 0; i < rows * rows; i++)
            {
                draft.Sheet.Mark($"guide {i / rows + 1} {i % rows + 1}", Point2D.FromMillimeters(90 + (1.1 * (i % rows)), 150 - (1.1 * (i / rows))));
            }

            Landmark[] marks = [.. corners.Select(corner => draft.Sheet.Mark(corner.Name, Point2D.FromMillimeters(corner.X, corner.Y)))];
            CurvePath Side(int i) => CurvePath.FromLine(LineSegment.Between(marks[i].Position, marks[(i + 1) % 4].Position));
            draft.Add(Panel.Named(PanelName.Of("square"))
                .WithEdge(EdgeName.Waist, EdgeRole.Opening, Side(0))
                .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Side(1))
                .WithEdge(EdgeName.Hem, EdgeRole.Hem, Side(2))
                .WithEdge(EdgeName.Centre, EdgeRole.Centre, Side(3))
                .Make());
        }
    }

    private static IEnumerable<string> MissingNames(Drawing drawing)
    {
        string[] words = [.. drawing.Marks<TextMark>().Select(label => label.Text)];
        string[] needed = ["BACK", "FRONT", "centre back", "centre front", "side seam", "side seam", "hem", "hem", "waist level", "yoke line", "upper hip line", "lower hip line"];
        return needed.GroupBy(name => name).Where(name => words.Count(word => name.Key.Split('|').Any(start => word.StartsWith(start))) < name.Count()).Select(name => name.Key);
    }
}
