using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Output;
using Pattern.Core.Tests.Blocks;
using Pattern.Core.Tests.Measurement;

namespace Pattern.Core.Tests.Output;

public class StepSheetTests
{
    private static readonly SkirtBlock Example = SkirtBlock.For(Bodies.Example).WithLength(Tape.Inches("24")).WithHipEase(Tape.Inches("1")).Draft();

    public static TheoryData<string> Skirts => DrawnSkirts.Names;

    private static readonly string[] HostileNames =
    [
        "<script>alert(1)</script>",
        "\"Rosalind\" & 'Celia' </title></style>",
        "]]> <!-- {0} --",
        "\u05E8\u05D5\u05D6\u05DC\u05D9\u05E0\u05D3 \u202E dnilasoR",
        "\u0627\u0644\u0637\u0627\u0644\u0628\u0629",
        "\u2069\u2067x",
        "\u0001\uD800\uFFFF\u0000z",
        "\U0001F9F5 ______",
        new string('w', 4000),
        "a\r\nb\tc",
    ];

    // common practice, no source: waist 32, hip 40, length 24, hip ease 1, in inches; half the box 20 1/2, quarter hips 10 1/2 and 10, quarter waist 8 with darts of 1 1/4 and 1.
    [Theory]
    [InlineData("CF waist level", "20 1/2 in")]
    [InlineData("CB hem", "24 in")]
    [InlineData("CB yoke", "5 in")]
    [InlineData("CB upper hip", "8 in")]
    [InlineData("CB lower hip", "10 in")]
    [InlineData("side lower hip", "10 1/2 in")]
    [InlineData("back waist point", "9 1/4 in")]
    [InlineData("front waist point", "9 in")]
    [InlineData("CB waist", "1/4 in")]
    [InlineData("CF waist", "1 in")]
    [InlineData("front dart 1 apex", "5 in")]
    [InlineData("back dart 1 apex", "6 in")]
    public void ToHtml_OfTheCheckValues_StatesEachFigureInLargeTypeBesideTheStepThatMarksIt(string landmark, string expected)
    {
        Step step = Example.Steps.Single(one => one.Marked.Any(mark => mark.Name.Text == landmark));
        XElement section = StepsOf(Page(StepSheet.Of(Example)))[step.Number - 1];

        string[] figures = [.. section.Descendants().Where(one => (string?)one.Attribute("class") == "measure").Select(one => Plain(one.Nodes().OfType<XText>().Last().Value).Trim())];

        Assert.Contains(expected, figures);
        Assert.Contains(expected, Words(section));
    }

    // common practice, no source: half the intakes of 1 and 1 1/4 in; the waist closes to 32, the hip to 40 and 1 of ease.
    [Fact]
    public void ToHtml_OfTheCheckValues_StatesTheHalfIntakesAndWhatTheDrawingMustMeasure()
    {
        XDocument page = Page(StepSheet.Of(Example));
        string[] halves = [.. StepsOf(page).Select(Words).Where(words => words.Contains("Mark the two tops of the dart", StringComparison.Ordinal))];

        Assert.Equal(2, halves.Length);
        Assert.Contains(halves, words => words.Contains("1/2 in", StringComparison.Ordinal));
        Assert.Contains(halves, words => words.Contains("5/8 in", StringComparison.Ordinal));
        Assert.Equal("32 in", Row(page, "closed waist all around, block")[0]);
        Assert.Equal("41 in", Row(page, "hip width all around, block")[0]);
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToHtml_AnyBlock_HasEachStepOnceWithItsPictureAndItsSentence(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        XDocument page = Page(StepSheet.Of(block, TapeStep.Eighth));
        XElement[] sections = StepsOf(page);
        string[] ids = [.. page.Descendants().Select(one => (string?)one.Attribute("id")).OfType<string>()];

        Assert.Equal(block.Steps.Count, sections.Length);
        Assert.Equal(ids.Length, ids.Distinct().Count());
        foreach ((Step step, XElement section) in block.Steps.Zip(sections))
        {
            Assert.Equal("step-" + step.Number.ToString(CultureInfo.InvariantCulture), (string?)section.Attribute("id"));
            string picture = (string)section.Elements().Single(one => one.Name.LocalName == "svg").Attribute("aria-label")!;
            Assert.All(step.Marked, mark => Assert.Contains(mark.Name.Text, picture));
            Assert.All(step.Drew, line => Assert.Contains(line.Name.Text, picture));
            Assert.Equal(step.Drew.Count(), Emphasised(section).Count(one => one.Name.LocalName == "use"));

            // A figure may be cited from above; what the step says around its figures stands in it.
            Assert.All(Regex.Split(step.Template, @"\{\d+\}").Where(part => part.Trim().Length > 2), part => Assert.Contains(part.Trim(), Words(section)));
        }

        // What is linked is there.
        Assert.All(
            page.Descendants().Where(one => one.Name.LocalName is "a" or "use").Select(one => ((string)one.Attribute("href")!)[1..]),
            target => Assert.Contains(target, ids));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToHtml_AnyPictureOfAStep_KeepsItsPointsAndNamesInside(string skirt)
    {
        foreach (XElement section in StepsOf(Page(StepSheet.Of(DrawnSkirts.Draft(skirt)))))
        {
            XElement picture = section.Elements().Single(one => one.Name.LocalName == "svg");
            double[] view = [.. ((string)picture.Attribute("viewBox")!).Split(' ').Select(Figure)];
            foreach (XElement point in picture.Descendants().Where(one => one.Name.LocalName == "circle"))
            {
                Assert.InRange(Figure((string)point.Attribute("cx")!), 0, view[2]);
                Assert.InRange(Figure((string)point.Attribute("cy")!), 0, view[3]);
            }

            foreach (XElement name in picture.Descendants().Where(one => one.Name.LocalName == "text"))
            {
                // Half of the size for a letter: Liberation Sans is a little wider in the mean of English text, so a letter's room is left at each end.
                double width = 0.5 * Figure((string)name.Attribute("font-size")!) * (name.Value.Length - 2);
                double x = Figure((string)name.Attribute("x")!);
                double left = (string)name.Attribute("text-anchor")! switch { "start" => x, "end" => x - width, _ => x - (width / 2) };
                Assert.InRange(left, 0, view[2] - width);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void AsExercise_AnyBlock_ShowsNoFigureInItsSteps(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        foreach (TapeStep tape in new[] { TapeStep.Eighth, TapeStep.Millimeter })
        {
            StepSheet key = StepSheet.Of(block, tape);
            XElement[] blanks = StepsOf(Page(key.AsExercise()));
            XElement[] full = StepsOf(Page(key));

            Assert.Equal(full.Length, blanks.Length);
            Assert.All(blanks, section => Assert.DoesNotMatch(@"~|\d\s*(in|cm)\b", Words(section)));

            // The same search finds the figures of the key, and wherever there is one, a blank stands in the exercise.
            Assert.Contains(full, section => Regex.IsMatch(Words(section), @"\d\s*(in|cm)\b"));
            Assert.All(block.Steps.Zip(blanks).Where(pair => pair.First.Workings.Any()), pair => Assert.Contains("blank", Words(pair.Second)));
        }
    }

    // Every name in a blank working is a measurement, a setting, an entry of the table, or worked out on the sheet itself.
    [Fact]
    public void AsExercise_TheExample_KeepsTheWorkingInWordsAndWhatItStartsFrom()
    {
        XDocument page = Page(StepSheet.Of(Example).AsExercise());
        string all = Words(page.Root!);

        Assert.Contains("1/2 of (hip girth + hip ease) = blank in", all);
        Assert.Equal(["40 in"], Row(page, "hip girth"));
        Assert.Equal(["1 in"], Row(page, "hip ease"));
        Assert.Equal(["24 in"], Row(page, "skirt length"));
        Assert.DoesNotContain(page.Descendants(), one => one.Name.LocalName == "th" && one.Value == "length");
        Assert.DoesNotContain("Guide points", all);
        Assert.DoesNotContain("20 1/2", all);
    }

    [Fact]
    public void ToHtml_AHostileName_IsTextAndNothingElse() => Assert.All(HostileNames, name =>
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example.Named(name)).Draft();
        foreach (StepSheet sheet in new[] { StepSheet.Of(block), StepSheet.Of(block).AsExercise() })
        {
            string html = sheet.ToHtml();
            XDocument page = XDocument.Parse(html);
            XElement heading = page.Descendants().Single(one => one.Name.LocalName == "h1");

            Assert.DoesNotContain(page.Descendants(), one => one.Name.LocalName is "script" or "img" or "link" or "iframe");
            Assert.DoesNotContain("http", Regex.Replace(html, @"http://www\.w3\.org/(2000/svg|1999/xhtml)", string.Empty));
            Assert.Equal(name.Length, heading.Elements().Single(one => one.Name.LocalName == "bdi").Value.Length);
            Assert.Equal("en", (string?)page.Root!.Attribute("lang"));
            Assert.Equal(block.Steps.Count, StepsOf(page).Length);
        }
    });

    [Fact]
    public void WithReasons_OnRequestOnly_ShowsEachReasonOnce()
    {
        string[] reasons = [.. Example.Steps.Select(step => step.Reason).OfType<string>()];

        Assert.NotEmpty(reasons);
        Assert.DoesNotContain(Page(StepSheet.Of(Example)).Descendants(), one => (string?)one.Attribute("class") == "why");
        Assert.Equal(
            reasons.Select(reason => "Why: " + reason),
            Page(StepSheet.Of(Example).WithReasons()).Descendants().Where(one => (string?)one.Attribute("class") == "why").Select(one => Plain(one.Value)));
    }

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToHtml_AnyBlock_PrintsNoLineWhoseFiguresDoNotAddUp(string skirt)
    {
        XDocument page = Page(StepSheet.Of(DrawnSkirts.Draft(skirt), TapeStep.Eighth));
        IEnumerable<string> lines = page.Descendants().Where(one => one.Name.LocalName is "p" or "td").Select(one => Plain(one.Value));

        string[] sums = [.. lines.SelectMany(line => PrintedSum.In(line))];

        Assert.NotEmpty(sums);
        Assert.All(sums, sum => Assert.NotEqual(false, PrintedSum.AddsUp(sum)));
    }

    // By hand: the back dart of the example is 1 1/4 in wide and 6 in long, the front one 1 in and 5 in; each leg of a level line is the hypotenuse of half the width and the length, a little off where the waistline slopes.
    [Fact]
    public void LegsOf_AStepThatPlacesADart_AreItsTwoLegs()
    {
        Step[] placed = [.. Example.Steps.Where(step => StepDarts.LegsOf(step).Count > 0)];

        Assert.Equal(2, placed.Length);
        foreach ((Step step, double intakeMm, double longMm) in placed.Zip([1.25 * 25.4, 25.4], [6 * 25.4, 5 * 25.4]))
        {
            CurvePath[] legs = [.. StepDarts.LegsOf(step)];
            Assert.Equal(2, legs.Length);
            Assert.Equal(legs[0].End, legs[1].End);
            Assert.Equal(intakeMm, Math.Abs(legs[0].Start.X.Millimeters - legs[1].Start.X.Millimeters), 1e-6);
            Assert.All(legs, leg => Assert.Equal(Math.Sqrt((intakeMm * intakeMm / 4) + (longMm * longMm)), leg.Length.Millimeters, 4.0));
            Assert.Contains("the two legs of the dart", (string)StepsOf(Page(StepSheet.Of(Example)))[step.Number - 1].Elements().First().Attribute("aria-label")!);
        }
    }

    // The invented language has no Latin letter.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void WithPhrases_AnInventedLanguage_LeavesNoEnglishWord(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        foreach (StepSheet sheet in new[] { StepSheet.Of(block).WithReasons(), StepSheet.Of(block).AsExercise(), StepSheet.Of(block).AsForm() })
        {
            StepSheet foreign = sheet.WithPhrases(InventedLanguage.Book);
            XDocument page = Page(foreign);
            IEnumerable<string> seen = page.Descendants().Where(one => one.Name.LocalName != "style" && one.Name.LocalName != "bdi").SelectMany(one => one.Nodes().OfType<XText>()).Select(text => text.Value);
            IEnumerable<string> heard = page.Descendants().Attributes("aria-label").Select(label => label.Value);

            string text = WithoutName(string.Join("\n", seen.Concat(heard)), block);
            Assert.Empty(InventedLanguage.LeftOver(text));
            Assert.Equal("x-invented", (string?)page.Root!.Attribute("lang"));

            string markdown = WithoutName(Regex.Replace(foreign.ToMarkdown().Text, @"\]\([a-z0-9-]+\.svg\)", "]"), block);
            Assert.Empty(InventedLanguage.LeftOver(markdown));

            // The same search finds the words of the English sheet.
            Assert.NotEmpty(InventedLanguage.LeftOver(Words(Page(sheet).Root!)));
        }
    }

    // A book that is made from the list covers the sheet, and says each phrase of it.
    [Fact]
    public void ListPhrases_OfASheet_IsWhatABookHasToKnow()
    {
        StepSheet sheet = StepSheet.Of(Example).WithReasons();
        IReadOnlyList<string> phrases = sheet.ListPhrases();

        Assert.Contains("Square down from {0}: {1}. Mark {2}.", phrases);
        Assert.Contains("hip girth", phrases);
        Assert.Equal(phrases.Distinct().Order(StringComparer.Ordinal), phrases);
        Phrasebook book = Phrasebook.Of("x-invented", phrases.ToDictionary(phrase => phrase, InventedLanguage.Said));
        Assert.Equal(sheet.WithPhrases(InventedLanguage.Book).ToHtml(), sheet.WithPhrases(book).ToHtml());
    }

    // common practice, no source: half the box is half of hip and ease; a quarter waist a quarter of the waist.
    [Fact]
    public void AsForm_TheExample_IsFormulasInWordsBesideAnEmptyColumn()
    {
        XDocument page = Page(StepSheet.Of(Example).AsForm());

        Assert.Equal(["measured on the body", "blank in"], Row(page, "hip girth"));
        Assert.Equal(["here 1 in, or as you choose", "blank in"], Row(page, "hip ease"));
        Assert.Equal(["1/2 of (hip girth + hip ease)", "blank in"], Row(page, "box width"));
        Assert.Equal(["hip girth - waist girth", "blank in"], Row(page, "waist-hip difference"));
        Assert.Equal(["1/8 of waist-hip difference, at most 1 1/4", "blank in"], Row(page, "centre front drop"));
        Assert.Contains("The steps and pictures are those of one body: waist girth 32 in, hip girth 40 in.", Words(page.Root!));
        Assert.DoesNotContain("Hippolyta", Words(Page(StepSheet.Of(SkirtBlock.For(Bodies.Example.Named("Hippolyta")).Draft()).AsForm()).Root!));
    }

    // What no formula gives is said to be none: it was taken from the draft, or truing found it.
    [Theory]
    [MemberData(nameof(Skirts))]
    public void AsForm_AnyBlock_SaysWhereAFigureIsNoFormula(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        XElement[] sections = StepsOf(Page(StepSheet.Of(block).AsForm()));

        Assert.All(sections, section => Assert.DoesNotMatch(@"~|\d\s*(in|cm)\b", Words(section)));
        foreach ((Step step, XElement section) in block.Steps.Zip(sections))
        {
            bool isDrawn = step.Workings.Any(length => length.Operation == WorkedOperation.Drawn);
            Assert.True(!isDrawn || Words(section).Contains("No formula gives this figure", StringComparison.Ordinal), step.ToString());
        }
    }

    [Fact]
    public void ToMarkdown_AHostileName_BeginsNoMarkAndNoTag() => Assert.All(HostileNames, name =>
    {
        SkirtBlock block = SkirtBlock.For(Bodies.Example.Named(name)).Draft();
        foreach (StepSheet sheet in new[] { StepSheet.Of(block), StepSheet.Of(block).AsExercise() })
        {
            MarkdownPage page = sheet.ToMarkdown();
            string[] lines = page.Text.Split('\n');

            // The title is one line; no bare sign of it has a meaning, and a mark that turns the direction ends with it.
            Assert.StartsWith("# Skirt block for \u2068", lines[0]);
            Assert.EndsWith("\u2069", lines[0]);
            Assert.DoesNotMatch(@"(?<!\\)[<>`*_\[\]|~]", lines[0][2..]);
            Assert.DoesNotMatch("[\u202A-\u202E\u2066\u2067]", page.Text);
            Assert.Equal(1, lines.Count(line => line.StartsWith("# ", StringComparison.Ordinal)));
            Assert.Equal(block.Steps.Count, lines.Count(line => line.StartsWith("### ", StringComparison.Ordinal)));
            Assert.Equal(page.Pictures.Select(picture => picture.Key), Regex.Matches(page.Text, @"\]\((?<file>[^)]+)\)").Select(link => link.Groups["file"].Value));
            Assert.All(page.Pictures, picture => XDocument.Parse(picture.Value.ToSvg()));
        }
    });

    [Theory]
    [MemberData(nameof(Skirts))]
    public void ToMarkdown_AnyBlock_SaysWhatThePageSays(string skirt)
    {
        SkirtBlock block = DrawnSkirts.Draft(skirt);
        StepSheet sheet = StepSheet.Of(block, TapeStep.Eighth).WithReasons();
        string markdown = Regex.Replace(sheet.ToMarkdown().Text, @"\\(.)", "$1");

        foreach (XElement words in StepsOf(Page(sheet)).SelectMany(section => section.Descendants().Where(one => one.Name.LocalName == "p" && !one.Elements().Any())))
        {
            Assert.Contains(words.Value, markdown);
        }
    }

    [Fact]
    public void Save_APage_WritesItWithItsPictures()
    {
        string folder = System.IO.Path.Combine(System.IO.Path.GetTempPath(), System.IO.Path.GetRandomFileName());
        try
        {
            StepSheet.Of(Example).ToMarkdown().Save(folder, "steps.md");
            Assert.True(System.IO.File.Exists(System.IO.Path.Combine(folder, "steps.md")));
            Assert.Equal(Example.Steps.Count + 1, System.IO.Directory.GetFiles(folder, "*.svg").Length);
        }
        finally
        {
            System.IO.Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void ToHtml_ABlockOutOfAFile_SaysThatItHasNoSteps()
    {
        Block read = PatternDocument.FromJson(PatternDocument.Of(Example).ToJson()).Block;

        string words = Words(Page(StepSheet.Of(read)).Root!);

        Assert.Contains("keeps no steps", words);
        Assert.Contains("40 in", words);
    }

    [Fact]
    public void ToHtml_AnotherCulture_IsTheSame()
    {
        string expected = StepSheet.Of(Example, TapeStep.Millimeter).ToHtml();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("ar-SA");
            Assert.Equal(expected, StepSheet.Of(Example, TapeStep.Millimeter).ToHtml());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static XDocument Page(StepSheet sheet) => XDocument.Parse(sheet.ToHtml());

    private static XElement[] StepsOf(XDocument page) => [.. page.Descendants().Where(one => (string?)one.Attribute("class") == "step")];

    private static IEnumerable<XElement> Emphasised(XElement section) => section.Descendants().Single(one => (string?)one.Attribute("class") == "new").Elements();

    private static string[] Row(XDocument page, string label) =>
        [.. page.Descendants().Single(one => one.Name.LocalName == "tr" && one.Elements().First().Value == label).Elements().Skip(1).Select(one => Plain(one.Value))];

    // What is read aloud or seen, pictures left out.
    private static string Words(XElement element)
        => Regex.Replace(string.Join(" ", element.DescendantNodes().OfType<XText>().Where(text => !text.Ancestors().Any(one => one.Name.LocalName is "svg" or "style")).Select(text => text.Value)), @"\s+", " ");

    // A number and its fraction are joined by a space at which no line ends.
    private static string Plain(string text) => text.Replace('\u00A0', ' ');

    private static string WithoutName(string text, SkirtBlock block) => block.Body.Name is { } name ? text.Replace(name, string.Empty, StringComparison.Ordinal) : text;

    private static double Figure(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
