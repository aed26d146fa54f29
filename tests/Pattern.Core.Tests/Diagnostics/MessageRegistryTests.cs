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

    [Fact]
    public void Codes_AreExactlyTheNamedOnes() =>
        Assert.Equal(Enum.GetValues<DiagnosticCode>().OrderBy(c => c), MessageRegistry.Codes.OrderBy(c => c));
}
