using System;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Pattern.Core.Diagnostics;
using Pattern.Core.Tests.Conventions;

namespace Pattern.Core.Tests.Diagnostics;

public class MessageRegistryTests
{
    public static TheoryData<DiagnosticCode> AllCodes => new((DiagnosticCode[])Enum.GetValues(typeof(DiagnosticCode)));

    [Theory]
    [MemberData(nameof(AllCodes))]
    public void Format_EveryCode_FillsEveryPlace(DiagnosticCode code)
    {
        string template = MessageRegistry.TemplateOf(code);
        int places = Regex.Matches(template, @"\{(\d+)").Select(m => int.Parse(m.Groups[1].Value) + 1).DefaultIfEmpty(0).Max();
        string[] facts = Enumerable.Range(0, places).Select(i => $"<fact {i}>").ToArray();

        string text = MessageRegistry.Format(code, facts);

        Assert.StartsWith($"PC{(int)code:0000}: ", text);
        Assert.All(facts, fact => Assert.Contains(fact, text));
        Assert.EndsWith(".", text);
    }

    // Texts come from files and callers; a message is read by people, and logged.
    [Theory]
    [MemberData(nameof(AllCodes))]
    public void Format_LongTexts_RepeatsNoMoreThan200CharactersOfThem(DiagnosticCode code)
    {
        string template = MessageRegistry.TemplateOf(code);
        string[] facts = ["\u2660\u2660", new string('\u2660', 5_000), string.Concat(Enumerable.Repeat("\U0001F0A1", 300)), new string('\u2660', 100_000), "\u2660", "\u2660"];

        // What a template says twice is the name of an edge, which is short.
        for (int i = 0; i < facts.Length; i++)
        {
            facts[i] = Regex.Count(template, @"\{" + i) > 1 ? "edge" : facts[i];
        }

        string text = MessageRegistry.Format(code, facts);

        Assert.InRange(text.Count(c => c == '\u2660' || char.IsSurrogate(c)), 0, 200);
        Assert.InRange(text.Length, 0, template.Length + 250);
        Assert.DoesNotContain('\uFFFD', System.Text.Encoding.UTF8.GetString(System.Text.Encoding.UTF8.GetBytes(text)));
    }

    // As they are declared: the order of the numbers, so that the next free one is seen at the end of its family.
    [Fact]
    public void Codes_StandInTheOrderOfTheirNumbersInBothFiles()
    {
        DiagnosticCode[] declared = [.. typeof(DiagnosticCode).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (DiagnosticCode)field.GetValue(null)!)];

        Assert.Equal(declared.OrderBy(code => (int)code), declared);
        Assert.Equal(declared, MessageRegistry.Codes);
    }

    [Fact]
    public void Codes_OfAFamily_CountFromItsFirstWithoutAHole()
        => Assert.All(Enum.GetValues<DiagnosticCode>().GroupBy(code => (int)code / 100), family => Assert.Equal(Enumerable.Range((family.Key * 100) + 1, family.Count()), family.Select(code => (int)code)));

    // A heading is a comment of its own, such as "// 21xx: darts.", above the first code of the family; the list in the summary has the same words.
    [Fact]
    public void Codes_OfAFamily_StandUnderItsHeading()
    {
        string[] families = [.. Enum.GetValues<DiagnosticCode>().GroupBy(code => (int)code / 100).Select(family => $"{family.Key:00}xx: {family.First()}")];
        string source = Repository.Read("src/Pattern.Core/Diagnostics/DiagnosticCode.cs");
        string messages = Repository.Read("src/Pattern.Core/Diagnostics/MessageRegistry.cs");

        string[] heads = [.. Regex.Matches(source, @"^    // (\d\dxx): ([^\n]+)\.\s+(?:///[^\n]*\s+)+(\w+) = ", RegexOptions.Multiline).Select(match => match.Groups[1].Value + ": " + match.Groups[3].Value)];
        string[] messageHeads = [.. Regex.Matches(messages, @"^        // (\d\dxx): ([^\n]+)\.\s+\[DiagnosticCode\.(\w+)\]", RegexOptions.Multiline).Select(match => match.Groups[1].Value + ": " + match.Groups[3].Value)];
        string[] words = [.. Regex.Matches(source, @"^    // (\d\dxx: [^\n]+)\.\s*$", RegexOptions.Multiline).Select(match => match.Groups[1].Value)];
        string[] messageWords = [.. Regex.Matches(messages, @"^        // (\d\dxx: [^\n]+)\.\s*$", RegexOptions.Multiline).Select(match => match.Groups[1].Value)];
        string[] listed = [.. Regex.Matches(source, @"<description>(\d\dxx: [^<]+)</description>").Select(match => match.Groups[1].Value)];

        Assert.Equal(families, heads);
        Assert.Equal(families, messageHeads);
        Assert.Equal(words, listed);
        Assert.Equal(words, messageWords);
    }

    [Fact]
    public void Codes_AreExactlyTheNamedOnes() =>
        Assert.Equal(Enum.GetValues<DiagnosticCode>().OrderBy(c => c), MessageRegistry.Codes.OrderBy(c => c));
}
