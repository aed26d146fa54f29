using System;
using System.Globalization;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Docs;

/// <summary>Holds docs/tape-language.md to its word.</summary>
public class TapeLanguageTests
{
    private static readonly DocPage Page = DocPage.Load("tape-language.md");

    [Fact]
    public void Code_OnThePage_IsCompiledHere() => Page.AssertCodeIsCompiledIn("Docs", "TapeLanguageTests.cs");

    [Fact]
    public void Forms_InTheFirstTable_AreReadAsItSays() => Assert.All(
        Page.Table("written"),
        row => Assert.Equal(Tape.Parse(row[1], LengthUnit.Meter).Millimeters, Tape.Inches(row[0]).Millimeters, 1e-9));

    [Fact]
    public void Refusals_InTheSecondTable_AreRefusedAsItSays()
    {
        var refused = DocPage.Load("tape-language.md").Table("written | code | at character");
        Assert.Equal(13, refused.Count);
        Assert.All(refused, row =>
        {
            string message = Assert.Throws<FormatException>(() => Tape.Inches(row[0])).Message;
            Assert.StartsWith(row[1], message);
            Assert.Contains("at character " + row[2], message);
        });
    }

    [Fact]
    public void Prints_InTheThirdTable_AreAsItSays() => Assert.All(Page.Table("length"), row =>
    {
        Length length = Tape.Parse(row[0], LengthUnit.Meter);
        TapeStep step = (TapeStep)typeof(TapeStep).GetProperty(row[1])!.GetValue(null)!;
        Assert.Equal(row[2], Tape.Format(length, step));
        Assert.Equal(row[3], Tape.Format(length, step, TapeStyle.Typographic).Replace('\u00A0', ' '));
    });

    [Fact]
    public void Examples_OfReading_AreRight()
    {
        Length ease = Tape.Inches("1 1/2");
        Length hip = Tape.Inches("101 cm");
        Length lift = Tape.Parse("-6", LengthUnit.Millimeter);

        Assert.Equal((38.1, 1010.0, -6.0), (Round(ease), Round(hip), Round(lift)));
    }

    [Fact]
    public void Examples_OfPrinting_Run()
    {
        Length length = Length.FromMillimeters(117.475);
        _ = Tape.Format(length, TapeStep.Eighth);
        _ = Tape.Format(length, TapeStep.Sixteenth, TapeStyle.Typographic);
        _ = Tape.FormatNumber(length, TapeStep.Millimeter);
        _ = Tape.Round(length, TapeStep.Eighth, TapeRounding.Up);
        string half =
            TapeFraction.Parse("9 1/4").Half().ToString();

        Assert.Equal(Comment("Half()"), half);
    }

    [Fact]
    public void Examples_OfWorking_PrintWhatTheyPromise()
    {
        WorkedLength hip = WorkedLength.Measured("hip girth", Tape.Inches("39 3/4"));
        WorkedLength ease = WorkedLength.Given("hip ease", Tape.Inches("1"));
        WorkedLength box = (hip.Half() + ease.Half()).Named("box width");
        string inches =
            box.Describe(TapeStep.Eighth);
        string metric =
            box.Describe(TapeStep.Millimeter);

        Assert.Equal(Comment("box.Describe(TapeStep.Eighth)"), inches);
        Assert.Equal(Comment("box.Describe(TapeStep.Millimeter)"), metric);
    }

    [Fact]
    public void Examples_OfMeasuring_AreRight()
    {
        BodyMeasurements body = BodyMeasurements.In(LengthUnit.Inch).Named("Rosalind")
            .With(BodyMeasurement.WaistGirth, "29 1/2")
            .With(BodyMeasurement.HipGirth, "39 3/4");

        Assert.Equal("Rosalind: waist girth 29 1/2 in, hip girth 39 3/4 in", body.ToString());
        Assert.Contains("Did you mean 74 cm?", Assert.Throws<ArgumentOutOfRangeException>(() => body.With(BodyMeasurement.WaistGirth, "74")).Message);
    }

    private static double Round(Length length) => Math.Round(length.Millimeters, 9);

    private static string Comment(string statement)
    {
        foreach (string block in Page.Blocks("csharp"))
        {
            foreach (string line in block.Split('\n'))
            {
                if (line.Contains(statement) && line.IndexOf("   // ", StringComparison.Ordinal) is int at and > 0)
                {
                    return line.Substring(at + 6);
                }
            }
        }

        throw new InvalidOperationException(string.Format(CultureInfo.InvariantCulture, "No comment beside {0}.", statement));
    }
}
