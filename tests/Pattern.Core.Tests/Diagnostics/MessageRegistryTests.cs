using System;
using System.Linq;
using System.Text.RegularExpressions;
using Pattern.Core.Diagnostics;

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

    [Fact]
    public void Codes_AreExactlyTheNamedOnes() =>
        Assert.Equal(Enum.GetValues<DiagnosticCode>().OrderBy(c => c), MessageRegistry.Codes.OrderBy(c => c));
}
