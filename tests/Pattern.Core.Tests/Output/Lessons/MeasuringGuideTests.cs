using System;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Output;

public class MeasuringGuideTests
{
    [Fact]
    public void For_ABlock_AsksForWhatItsDraftWasWorkedOutFromOnly()
    {
        BodyMeasurements body = Bodies.Example.With(BodyMeasurement.BustGirth, "36").With(BodyMeasurement.WaistToHip, "8");

        MeasuringGuide guide = MeasuringGuide.For(SkirtBlock.For(body).Draft());

        Assert.Equal([BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth, BodyMeasurement.WaistToHip], guide.Measurements);
        Assert.Equal([BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth], MeasuringGuide.For(SkirtBlock.For(Bodies.Example).Draft()).Measurements);
        XDocument page = XDocument.Parse(guide.ToHtml());
        Assert.Equal(["Waist girth", "Hip girth", "Waist to hip"], page.Descendants().Where(one => one.Name.LocalName == "h3").Select(one => one.Value));
        Assert.DoesNotContain("bust", guide.ToHtml(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void For_ABlockOutOfAFile_AsksForAllThatItsBodyHas()
    {
        Block read = PatternDocument.FromJson(PatternDocument.Of(SkirtBlock.For(Bodies.Example).Draft()).ToJson()).Block;

        Assert.Equal([BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth], MeasuringGuide.For(read).Measurements);
    }

    // Every measurement that the library knows has its place: a sentence and a line on at least one of the two figures.
    [Fact]
    public void Of_EachKnownMeasurement_HasItsSentenceAndItsTape() => Assert.All(BodyMeasurement.All, measurement =>
    {
        XDocument page = XDocument.Parse(MeasuringGuide.Of(LengthUnit.Centimeter, measurement).ToHtml());

        Assert.Single(page.Descendants(), one => (string?)one.Attribute("class") == "step");
        Assert.NotEmpty(page.Descendants().Single(one => (string?)one.Attribute("class") == "tape").Elements());
        Assert.DoesNotContain("own: its author", page.Root!.Value);
        Assert.Contains("cm", page.Descendants().Single(one => (string?)one.Attribute("class") == "measure").Value);
    });

    // The tape of a girth lies level, at the height of what it goes around: on the figure the waist is above the hip, the hip above the knee.
    [Fact]
    public void Tapes_OfGirths_StandInTheOrderOfTheBody()
    {
        BodyMeasurement[] down =
        [
            BodyMeasurement.NeckGirth, BodyMeasurement.BustGirth, BodyMeasurement.UnderBustGirth, BodyMeasurement.WaistGirth, BodyMeasurement.TopHipGirth,
            BodyMeasurement.HipGirth, BodyMeasurement.ThighGirth, BodyMeasurement.KneeGirth, BodyMeasurement.CalfGirth, BodyMeasurement.AnkleGirth,
        ];

        double[] heights = [.. down.Select(girth => MeasuringPlace.Of(girth)!.Front.Single().Start.YMm)];

        Assert.Equal(heights.OrderDescending(), heights);
        Assert.All(down, girth =>
        {
            CurvePath ring = MeasuringPlace.Of(girth)!.Front.Single();
            Assert.Equal(ring.Start.YMm, ring.End.YMm, 1e-9);
        });
    }

    [Fact]
    public void Of_AMeasurementOfSomebodyElse_SaysWhoKnows()
    {
        BodyMeasurement head = BodyMeasurement.Define("<b>head girth</b>", MeasurementKind.Girth, Length.FromCentimeters(40), Length.FromCentimeters(70));

        XDocument page = XDocument.Parse(MeasuringGuide.Of(LengthUnit.Inch, head).ToHtml());

        Assert.Contains("its author says where the tape lies", page.Root!.Value);
        Assert.DoesNotContain(page.Descendants(), one => one.Name.LocalName == "b");
    }

    [Fact]
    public void WithPhrases_AnInventedLanguage_LeavesNoEnglishWord()
    {
        MeasuringGuide guide = MeasuringGuide.Of(LengthUnit.Inch, [.. BodyMeasurement.All]).WithPhrases(InventedLanguage.Book);
        XDocument page = XDocument.Parse(guide.ToHtml());

        IEnumerable<string> seen = page.Descendants().Where(one => one.Name.LocalName != "style").SelectMany(one => one.Nodes().OfType<XText>()).Select(text => text.Value);
        Assert.Empty(InventedLanguage.LeftOver(string.Join("\n", seen.Concat(page.Descendants().Attributes("aria-label").Select(label => label.Value)))));
        Assert.Equal(
            guide.ToHtml(),
            MeasuringGuide.Of(LengthUnit.Inch, [.. BodyMeasurement.All]).WithPhrases(Phrasebook.Of("x-invented", guide.ListPhrases().ToDictionary(phrase => phrase, InventedLanguage.Said))).ToHtml());
    }

    [Fact]
    public void ToMarkdown_EachMeasurement_HasItsPicture()
    {
        MarkdownPage page = MeasuringGuide.Of(LengthUnit.Inch, BodyMeasurement.WaistGirth, BodyMeasurement.HipGirth, BodyMeasurement.WaistGirth).ToMarkdown();

        Assert.Equal(["measure-01.svg", "measure-02.svg"], page.Pictures.Select(picture => picture.Key));
        Assert.Single(LessonSheets.Arrange(MeasuringGuide.Of(LengthUnit.Inch, BodyMeasurement.WaistGirth).ToLesson(), PaperSize.A4));
    }
}
