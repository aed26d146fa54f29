using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Samples.Methods;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Foreign;

/// <summary>How something came about, asked of methods of somebody else and of the library's own, with public members only.</summary>
public class ExplanationTests
{
    private static readonly BodyMeasurements Body = BodyMeasurements.In(LengthUnit.Inch).With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4");

    private static IEnumerable<DraftingMethod> All => TaughtMethods.All.Append(BuiltInMethods.Skirt);

    public static TheoryData<string> Methods => new(All.Select(method => method.Name));

    private static DraftingMethod Find(string name) => All.First(method => method.Name == name);

    // A setting of nothing is left out of the arithmetic that it would be added to, so it stands in no chain.
    // Drafted again with one measurement or one setting a little more: what then lies elsewhere was made of it, so its chain must end in it, or in a table that was read by it.
    [Theory]
    [MemberData(nameof(Methods))]
    public void Ends_HoldWhateverMovesTheLandmark(string method)
    {
        BlockBuilder builder = Find(method).For(Body);
        Block block = builder.Draft();
        IEnumerable<(string Name, Func<BlockBuilder> Changed)> measurements = new[] { BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth }
            .Select(measurement => (measurement.Term, (Func<BlockBuilder>)(() => builder.For(Body.With(measurement, Body[measurement] + Length.FromMillimeters(1))))));
        IEnumerable<(string Name, Func<BlockBuilder> Changed)> settings = builder.Method.Settings.OfType<MethodSetting<Length>>().Where(setting => setting.Usual is { IsGiven: true, Quantity: Length { Value: not 0 } })
            .Select(setting => (setting.Name, (Func<BlockBuilder>)(() => builder.With(setting, (Length)setting.Usual.Quantity! + Length.FromMillimeters(1)))));
        int moved = 0;
        foreach ((string name, Func<BlockBuilder> changed) in measurements.Concat(settings))
        {
            Block other = changed().Draft();
            if (!other.Steps.Select(step => step.Template).SequenceEqual(block.Steps.Select(step => step.Template)))
            {
                continue;
            }

            foreach (Landmark landmark in block.Drafted.Landmarks)
            {
                if (other.Drafted.Find(landmark.Name).Position.DistanceTo(landmark.Position) > Length.FromMillimeters(1e-6))
                {
                    moved++;
                    IReadOnlyList<Origin> ends = block.ExplainLandmark(landmark.Name).Ends;
                    Assert.True(
                        ends.Any(end => end.Name.EndsWith(name, StringComparison.Ordinal) && end.Kind is OriginKind.Measurement or OriginKind.Setting) || ends.Any(end => end.Kind == OriginKind.TableEntry),
                        $"{landmark.Name} moves with {name}; its chain ends in {string.Join(", ", ends)}");
                }
            }
        }

        Assert.True(moved > 5, method + ": " + moved);
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void EveryChain_EndsInWhatWasPutIn(string method)
    {
        Block block = Find(method).For(Body).Draft();
        foreach (Explanation why in Everything(block))
        {
            ChainRule.Holds(why);
            Assert.NotEmpty(why.Steps);
            Assert.Equal(why.Steps.Select(step => step.Number).Order(), why.Steps.Select(step => step.Number));
        }
    }

    // Half of hip 39 3/4 and half of ease 1: common practice, no source.
    [Fact]
    public void ExplainFigure_BoxWidth_EndsInHipAndEase()
    {
        Explanation why = BuiltInMethods.Skirt.For(Body).Draft().ExplainFigure("box width");

        Assert.Equal(["Measurement hip girth 39 3/4 in", "Setting hip ease 1 in"], why.Ends.Select(end => end.Kind + " " + end));
        Assert.Equal(20.375, why.Root.Value!.Value.Inches, 1e-9);
        Assert.Empty(why.Steps);
    }

    // The waist of a quarter is made to be a quarter of the waist girth, whatever the hand drew.
    [Fact]
    public void ExplainEdge_TruedWaist_LeadsToWhatItWasTruedTo()
    {
        Explanation why = BuiltInMethods.Skirt.For(Body).Draft().ExplainEdge(PanelName.Back, EdgeName.Waist);

        Origin[] changes = [.. why.Root.From.Where(origin => origin.Kind == OriginKind.Change)];
        Assert.Contains(changes.SelectMany(change => change.From).SelectMany(origin => origin.From), origin => origin.Name == "quarter waist");
        Assert.Contains(why.Root.From, origin => origin is { Kind: OriginKind.Line, Name: "back waistline" });
        Assert.Equal(2, why.Root.From.Count(origin => origin.Kind == OriginKind.Dart));
        Assert.Contains("Draw the back waistline again", string.Join(" ", changes.Select(change => change.Step!.Describe(TapeStep.Eighth))));
    }

    [Fact]
    public void ExplainDart_GoesBackToItsIntake()
    {
        Explanation why = BuiltInMethods.Skirt.For(Body).Draft().ExplainDart(PanelName.Front, EdgeName.Waist.Dart(1));

        Assert.Contains(why.Root.From, origin => origin.Name == "front dart intake" && origin.Kind == OriginKind.Working);
        Assert.Contains(why.Ends, end => end is { Kind: OriginKind.Measurement, Name: "waist girth" });
    }

    [Fact]
    public void ExplainEdge_FromATable_EndsInItsEntries()
    {
        Explanation why = ShapedSkirt.ByTable.For(Body).Draft().ExplainEdge(PanelName.Front, EdgeName.Waist);

        Assert.Contains(why.Ends, end => end is { Kind: OriginKind.TableEntry, Name: "front dart intake" });
    }

    [Fact]
    public void ExplainEdge_OfADesign_NamesItsSteps()
    {
        Block flared = BuiltInMethods.Skirt.For(Body).Draft().With(BuiltInDesigns());

        Explanation why = flared.ExplainEdge(PanelName.Back, EdgeName.Hem);

        Assert.Contains(why.Root.From, origin => origin.Kind == OriginKind.Change && origin.Step!.Number >= flared.Designs[0].FirstStep);
        Assert.All(Everything(flared), ChainRule.Holds);
    }

    private static BlockDesign BuiltInDesigns() => Pattern.Core.Styling.BuiltInDesigns.All.First(design => design.Name == "a-line");

    // Somebody else's sheet under the same names: the length was taken from a line that is itself drawn with it there.
    [Fact]
    public void LengthFromAnotherSheetUnderTheSameName_LeadsNowhereTwice()
    {
        var other = new DraftingSheet();
        Landmark start = other.Mark("start", Point2D.Origin);
        DraftedLine line = other.Join(start, other.SquareDown(start, WorkedLength.Given("ten", Tape.Inches("10")), "end"), "line");
        WorkedLength taken = other.Measure(line, "taken");
        Block block = Strip(sheet =>
        {
            Landmark here = sheet.Mark("start", Point2D.Origin);
            Landmark end = sheet.SquareDown(here, taken, "end", "line");
            return (here, sheet.SquareAcross(end, Across.Right, taken, "right"));
        });

        ChainRule.Holds(block.ExplainLandmark("end"));
        ChainRule.Holds(block.ExplainLine("line"));
    }

    // As deep as no method is, and with the same length twice at every level: two to the power of that many ways down.
    [Theory]
    [InlineData(500)]
    [InlineData(10_000)]
    public void WorkingOfManySums_IsExplained(int sums)
    {
        WorkedLength deep = WorkedLength.Given("thread", Length.FromMillimeters(1e-3));
        for (int i = 0; i < sums; i++)
        {
            deep = (deep + deep).Half();
        }

        Block block = Strip(sheet =>
        {
            Landmark here = sheet.Mark("start", Point2D.Origin);
            return (here, sheet.SquareAcross(here, Across.Right, deep + WorkedLength.Given("more", Tape.Inches("10")), "right"));
        });
        Explanation why = block.ExplainLandmark("right");

        ChainRule.Holds(why);
        Assert.Equal(3, why.Ends.Count);
        if (sums < 1000)
        {
            Assert.InRange(why.Describe(TapeStep.Eighth).Length, sums, 1000 * sums);
        }
    }

    private static Block Strip(Func<DraftingSheet, (Landmark Left, Landmark Right)> draw) => DraftingMethod.Of("strip", "1", draft =>
    {
        (Landmark left, Landmark right) = draw(draft.Sheet);
        Landmark low = draft.Sheet.SquareDown(left, WorkedLength.Given("depth", Tape.Inches("30")), "low");
        draft.Add(draft.Sheet.Trace(PanelOutline.Of(PanelName.Of("strip"), left)
            .Straight(EdgeName.Of("top"), EdgeRole.Hem, right)
            .Straight(EdgeName.Of("slant"), EdgeRole.Hem, low)
            .Straight(EdgeName.Of("side"), EdgeRole.Hem, left)));
    }).For(Body).Draft();

    [Fact]
    public void WhatIsNotThere_IsRefusedWithWhatIs()
    {
        Block block = BuiltInMethods.Skirt.For(Body).Draft();

        Assert.Contains("box width", Assert.Throws<Diagnostics.ConstructionException>(() => block.ExplainFigure("box")).Message);
        Assert.Contains("back waistline", Assert.Throws<Diagnostics.ConstructionException>(() => block.ExplainLine("waistline")).Message);
        Assert.Throws<Diagnostics.ConstructionException>(() => block.ExplainLandmark("nowhere"));
        Assert.Throws<Diagnostics.ConstructionException>(() => block.ExplainEdge(PanelName.Back, EdgeName.Neckline));
        Assert.Throws<ArgumentException>(() => block.ExplainFigure(" "));
    }

    private static IEnumerable<Explanation> Everything(Block block) =>
    [
        .. block.Drafted.Landmarks.Select(landmark => block.ExplainLandmark(landmark.Name)),
        .. block.Drafted.Lines.Where(line => block.Steps.Any(step => step.Drew.Any(drawn => drawn.Name.Text == line.Name.Text))).Select(line => block.ExplainLine(line.Name)),
        .. block.Panels.SelectMany(panel => panel.Edges.Select(edge => block.ExplainEdge(panel.Name, edge.Name))),
    ];
}
