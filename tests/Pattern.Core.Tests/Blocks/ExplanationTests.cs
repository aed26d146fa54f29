using System;
using System.Linq;
using System.Xml.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Panels;

namespace Pattern.Core.Tests.Blocks;

public class ExplanationTests
{
    private static readonly Arbitrary<(BodyMeasurements Body, SkirtAsked Asked)> Case = (from body in Bodies.Any from asked in Bodies.Options select (body, asked)).ToArbitrary();

    // Truing left no line of the front waist as it was drawn, so that no dart stood on one: the nearest is the one.
    [Theory]
    [InlineData(1110.51, 1429.54, 107.73948, 14.157, 1003.64504, 15.843975, -16.12252, 59.652105)]
    [InlineData(410, 644.37, 24.14304, 35.32636, 471.13826, 15.08295, -8.23276, 29.88519)]
    public void ExplainDart_OnAWaistThatTruingDrewAnew_FindsTheDartAsDrawn(double waist, double hip, double hipEase, double waistEase, double length, double sideLift, double backLift, double largest)
    {
        SkirtBlock block = new SkirtAsked(hipEase, waistEase, length, sideLift, backLift, Waistline.Shaped, largest, 25.4, 0, 0).Apply(SkirtBlock.For(Bodies.Millimetres(waist, hip))).Draft();

        foreach (Panel panel in block.Panels)
        {
            foreach (Dart dart in panel.FindEdge(EdgeName.Waist).Darts)
            {
                Explanation why = block.ExplainDart(panel.Name, dart.Name);
                ChainRule.Holds(why);
                Assert.Contains(panel.Name.Text, why.ToString(), StringComparison.Ordinal);
            }
        }
    }

    // Whatever the body and the options: every chain ends in what was put in, comes back to nothing, and has no more links than the draft has things.
    [Property(MaxTest = 60)]
    public Property EveryChain_OfAnyBodyAndOptions_EndsInWhatWasPutIn() => Prop.ForAll(Case, c =>
    {
        SkirtBlock block;
        try
        {
            block = c.Asked.Apply(SkirtBlock.For(c.Body)).Draft();
        }
        catch (ConstructionException e) when (SkirtRefused.IsDraft(e))
        {
            return true;
        }

        foreach (Explanation why in block.Panels.SelectMany(panel => panel.Edges.Select(edge => block.ExplainEdge(panel.Name, edge.Name)))
            .Concat(block.Drafted.Landmarks.Select(landmark => block.ExplainLandmark(landmark.Name)))
            .Concat(block.Figures.Select(figure => block.ExplainFigure(figure.Name!)))
            .Concat(block.Panels.SelectMany(panel => panel.FindEdge(EdgeName.Waist).Darts.Select(dart => block.ExplainDart(panel.Name, dart.Name)))))
        {
            ChainRule.Holds(why);
        }

        return true;
    });

    [Fact]
    public void Picture_HasTheStepsThatMatterAndNoOthers()
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example).Draft();
        Explanation why = block.ExplainEdge(PanelName.Back, EdgeName.Waist);

        var svg = XDocument.Parse(why.ToSvg());
        string[] names = [.. svg.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value)];

        Assert.All(names, name => Assert.Contains(why.Steps.SelectMany(step => step.Marked.Select(mark => $"{mark.Name} ({step.Number})")), marked => marked == name));
        Assert.Contains(names, name => name.StartsWith("back side waist (", StringComparison.Ordinal));
        Assert.DoesNotContain(names, name => name.Contains("yoke", StringComparison.Ordinal));
        Assert.Equal(why.Steps.Sum(step => step.Drew.Count()), svg.Descendants().Count(element => (string?)element.Attribute("class") == "drawn"));
        Assert.Equal(block.Back.FindEdge(EdgeName.Waist).Stretches.Count, svg.Descendants().Count(element => (string?)element.Attribute("class") == "asked"));
    }

    [Fact]
    public void Page_IsWellFormedAndTheSameInEachRun()
    {
        BodyMeasurements body = Bodies.Example.Named("<b>\u202Eeman & \"co\"");
        string page = SkirtBlock.For(body).Draft().ExplainLandmark("front side waist").ToHtml(TapeStep.Sixteenth);

        Assert.Equal(page, SkirtBlock.For(body).Draft().ExplainLandmark("front side waist").ToHtml(TapeStep.Sixteenth));
        Assert.Equal("html", XDocument.Parse(page.Replace("<!DOCTYPE html>\n", string.Empty, StringComparison.Ordinal)).Root!.Name.LocalName);
        Assert.DoesNotContain("<b>", page, StringComparison.Ordinal);
        Assert.Contains("waist girth 32 in", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_ABlockOutOfAFile_IsRefused()
    {
        Block read = PatternDocument.FromJson(PatternDocument.Of(SkirtBlock.For(Bodies.Example).Draft()).ToJson()).Block!;

        Assert.Equal(DiagnosticCode.FigureUnknown, Assert.Throws<ConstructionException>(() => read.ExplainEdge(PanelName.Back, EdgeName.Waist)).Code);
        Assert.Equal(DiagnosticCode.FigureUnknown, Assert.Throws<ConstructionException>(() => read.ExplainLandmark("CB waist")).Code);
    }
}
