using System;
using System.Collections.Generic;
using Pattern.Core.Measurement;

namespace Pattern.Core.Tests.Measurement;

public class PhrasebookTests
{
    [Fact]
    public void Of_APlaceThatTheEnglishHasNot_IsRefusedWithThePlace()
    {
        var refusal = Assert.Throws<ArgumentException>(() => Phrasebook.Of("xx", new Dictionary<string, string> { ["Step {number}"] = "Pas {nummer}" }));

        Assert.Contains("{nummer}", refusal.Message);
        Assert.Contains("Step {number}", refusal.Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("e n")]
    [InlineData("\"en\"")]
    public void Of_ATagThatIsNone_IsRefused(string tag) => Assert.ThrowsAny<ArgumentException>(() => Phrasebook.Of(tag, new Dictionary<string, string>()));

    [Fact]
    public void Say_PlacesInAnotherOrder_AreFilledByTheirNames()
    {
        Phrasebook book = Phrasebook.Of("xx", new Dictionary<string, string> { ["From {0} to {1}."] = "{1} <- {0}, {1}" });

        Assert.Equal("B <- A, B", book.Say("From {0} to {1}.", ("0", "A"), ("1", "B")));
    }

    [Fact]
    public void Say_WhatTheBookDoesNotKnow_IsEnglish()
    {
        Phrasebook book = Phrasebook.Of("xx", new Dictionary<string, string> { ["hem"] = "zoom" });

        Assert.Equal("zoom", book.Say("hem"));
        Assert.Equal("waist", book.Say("waist"));
        Assert.Equal("Step 3", book.Say("Step {number}", ("number", "3")));
    }

    // Three forms for one, two and many, as in Slovene or Arabic: the book looks at the number itself.
    [Theory]
    [InlineData("1", "one part")]
    [InlineData("2", "a pair of parts")]
    [InlineData("5", "5 parts")]
    public void Say_AFormForEachNumber_IsChosenByTheBook(string count, string expected)
    {
        Phrasebook book = Phrasebook.Of("xx", phrase => phrase.English != "{count} parts" ? null : phrase["count"] switch { "1" => "one part", "2" => "a pair of parts", _ => "{count} parts" });

        Assert.Equal(expected, book.Say("{count} parts", ("count", count)));
        Assert.Null(new Phrase("x", [])["count"]);
    }

    [Fact]
    public void Say_AStrangePlaceOfABookThatChooses_IsRefused()
    {
        Phrasebook book = Phrasebook.Of("xx", _ => "{nowhere}");

        Assert.Contains("{nowhere}", Assert.Throws<FormatException>(() => book.Say("Step {number}", ("number", "3"))).Message);
    }

    // A value is what somebody else wrote: braces in it are letters.
    [Theory]
    [InlineData("{0}")]
    [InlineData("{1} { }")]
    [InlineData("}{")]
    public void Say_BracesInAValue_StayAsTheyAre(string name) => Assert.Equal("Mark " + name + ".", Phrasebook.English.Say("Mark {0}.", ("0", name)));
}
