using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
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
        int landmarks = drawing.Marks<TextMark>(LayerName.Landmarks).Count();
        return collisions.Length == 0 && missing.Length == 0 && landmarks == block.Trued.Landmarks.Count
            ? true
            : throw new InvalidOperationException($"{landmarks} of {block.Trued.Landmarks.Count} named; missing: {string.Join(", ", missing)}; {string.Join("; ", collisions)}");
    });

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

    private static IEnumerable<string> MissingNames(Drawing drawing)
    {
        string[] words = [.. drawing.Marks<TextMark>().Select(label => label.Text)];
        string[] needed = ["BACK", "FRONT", "centre back", "centre front", "side seam", "side seam", "hem", "hem", "waist level", "yoke line", "upper hip line", "lower hip line"];
        return needed.GroupBy(name => name).Where(name => words.Count(word => name.Key.Split('|').Any(start => word.StartsWith(start))) < name.Count()).Select(name => name.Key);
    }
}
