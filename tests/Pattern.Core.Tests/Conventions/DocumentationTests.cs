using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;

namespace Pattern.Core.Tests.Conventions;

/// <summary>All code that a reader is shown compiles, and all links lead somewhere.</summary>
public class DocumentationTests
{
    private static readonly string[] Languages = ["csharp", "bash", "text", "csv", "xml", "json"];

    /// <summary>What a fragment may take for granted: the platform's everyday namespaces, the quantities, the floors that exist, and the packages beside the core.</summary>
    private static readonly string Usings = string.Concat(
        new[] { "System", "System.Collections.Generic", "System.IO", "System.Linq", "System.Threading", "UnitsNet", "UnitsNet.Units" }
            .Concat(PublicApi.Types.Select(type => type.Namespace!).Distinct())
            .Select(space => $"using {space};\n"));

    /// <summary>What the examples of doc comments may take for granted as well. A local of the same name hides it.</summary>
    private const string Surroundings = """

        internal static class Surroundings
        {
            internal static BodyMeasurements body => BodyMeasurements.In(LengthUnit.Inch)
                .With(BodyMeasurement.WaistGirth, "29 1/2").With(BodyMeasurement.HipGirth, "39 3/4");

            internal static SkirtBlock block => SkirtBlock.For(body).Draft();

            internal static CurvePath waist => block.Front.FindEdge(EdgeName.Waist).Closed();

            internal static CurvePath side => block.Front.FindEdge(EdgeName.SideSeam).Closed();

            internal static CurvePath hem => block.Front.FindEdge(EdgeName.Hem).Closed();

            internal static CurvePath centre => block.Front.FindEdge(EdgeName.Centre).Closed();

            internal static LineSegment grain => block.Front.Grainline;

            internal static Armhole armhole => Armhole.Of(side, side);
        }
        """;

    public static TheoryData<string> Pages => new(MarkdownPage.Paths);

    public static TheoryData<string> Examples => new(ExampleCode().Select(example => example.Name));

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_EveryScriptOnIt_Compiles(string path)
        => Rule.Holds(MarkdownPage.Read(path).Scripts(Usings).SelectMany(script => Errors(script.Path, script.Text)));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_OfADocComment_Compiles(string name)
    {
        string code = ExampleCode().First(example => example.Name == name).Code;

        Rule.Holds(Errors(name, $"{Usings}using static Surroundings;\n#line 1 \"{name}\"\n{code}\n{Surroundings}"));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_EveryBlock_SaysItsLanguage(string path)
        => Rule.Holds(MarkdownPage.Read(path).Blocks.Where(block => !Languages.Contains(block.Language)).Select(block => $"{path}({block.Line - 1}): \"{block.Language}\""));

    [Theory]
    [MemberData(nameof(Pages))]
    public void Page_EveryLink_LeadsToAFile(string path)
    {
        string folder = Path.Combine(Repository.Root, Path.GetDirectoryName(path)!);

        Rule.Holds(MarkdownPage.Read(path).LocalTargets.Where(target => !Path.Exists(Path.Combine(folder, target))).Select(target => $"{path} links to {target}"));
    }

    [Fact]
    public void Docs_EveryPage_IsListedInTheIndex()
    {
        IEnumerable<string> pages = MarkdownPage.Paths.Where(path => path.StartsWith("docs/", StringComparison.Ordinal) && path != "docs/README.md").Select(path => path["docs/".Length..]);

        Rule.Holds(pages.Except(MarkdownPage.Read("docs/README.md").LocalTargets));
    }

    [Fact]
    public void Readme_ShowsAScriptThatStandsOnItsOwn()
    {
        MarkdownPage readme = MarkdownPage.Read("README.md");

        (string path, string text) = readme.Scripts(usings: string.Empty)[0];

        Rule.Holds(Errors(path, text));
    }

    // The tests themselves, tested.
    [Fact]
    public void Scripts_OfAPage_GoOnFromBlockToBlock()
    {
        var page = new MarkdownPage("p.md", "```csharp\nusing System;\nint a = 1;\n```\ntext\n  ```csharp\n  Console.WriteLine(a);\n  ```\n```text\nnot code\n```\n```csharp\nusing System;\nint a = 2;\n```\n## Next\n```csharp\nint a = 3;\n```");

        IReadOnlyList<(string Path, string Text)> scripts = page.Scripts(string.Empty);

        Assert.Equal(3, scripts.Count);
        Rule.Holds(scripts.SelectMany(script => Errors(script.Path, script.Text)));
    }

    [Theory]
    [InlineData("```csharp\nint a = b;\n```", "p.md(2,9): error CS0103")]
    [InlineData("```csharp\nvar block = SkirtBlock.ForNobody();\n```", "p.md(2,")]
    [InlineData("text\n```csharp\nusing System;\nint a = 1;\n```\n```csharp\nint a = 2;\n```", "p.md(7,5): error CS0128")]
    public void Scripts_ThatDoNotCompile_AreFoundWithTheirLine(string text, string expected)
        => Assert.Contains(new MarkdownPage("p.md", text).Scripts(Usings).SelectMany(script => Errors(script.Path, script.Text)), error => error.StartsWith(expected, StringComparison.Ordinal));

    [Fact]
    public void LocalTargets_OfAPage_LeaveOutTheWebAndCode()
    {
        var page = new MarkdownPage("p.md", "[a](b.md#c) ![d](e/f.svg) [g](https://www.w3.org/) <img src=\"h.png\">\n```text\n[i](j.md)\n```\n");

        Assert.Equal(["b.md", "e/f.svg", "h.png"], page.LocalTargets);
    }

    private static IReadOnlyList<string> Errors(string path, string text)
        => Compiler.Errors(Compiler.Compile([(path, text)], Compiler.Platform.Concat(Compiler.Dependencies).Concat(Compiler.BuiltLibraries), OutputKind.ConsoleApplication));

    private static IEnumerable<(string Name, string Code)> ExampleCode()
    {
        foreach (ISymbol symbol in Compiler.Libraries.GetSymbolsWithName(_ => true, SymbolFilter.TypeAndMember).OrderBy(symbol => symbol.ToDisplayString(), StringComparer.Ordinal))
        {
            string comment = symbol.GetDocumentationCommentXml() ?? string.Empty;
            string[] codes = comment.Length == 0 ? [] : XElement.Parse($"<all>{comment}</all>").Descendants("example").Descendants("code").Select(code => code.Value).ToArray();
            for (int i = 0; i < codes.Length; i++)
            {
                yield return ($"{symbol.ToDisplayString()} example {i + 1}", codes[i]);
            }
        }
    }
}
