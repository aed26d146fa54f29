using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattern.Core.Tests.Conventions;

public class SourceFileTests
{
    /// <summary>What no file may hold. Put together from parts, so that this file does not hold it either.</summary>
    private static readonly (string Pattern, string Reason)[] Unwanted =
    [
        ($@"(?<![\w.~$}}/])/(wor{""}k|tm{""}p|hom{""}e|roo{""}t|Use{""}rs)/", "a path of one machine"),
        ($@"\b[A-Z]:\\(Use{""}rs|te{""}mp|sr{""}c)\b", "a path of one machine"),
        ($@"https?://[^\s""'<>)]*(nu{""}get|npm{""}js|pyp{""}i|deb{""}ian|crat{""}es\.io|mav{""}en|golan{""}g)", "the host of a package registry"),
        ($@"\bapi\.nu{""}get\b|\bnu{""}get\.or{""}g\b|\bnpm{""}js\.(or{""}g|co{""}m)\b|\bpyp{""}i\.or{""}g\b|\bdeb{""}ian\.or{""}g\b", "the host of a package registry"),
        ($@"(?i)\b(clau{""}de|anthro{""}pic|chat{""}gpt|open{""}ai|copi{""}lot|sub{""}agent|lang{""}uage model|work{""}tree|trans{""}cript)\b", "talks about how the project is made"),
        ($@"\b(TO{""}DO|FIX{""}ME|HA{""}CK|XX{""}X)\b", "unfinished work belongs in an issue"),
        ($@"\[(Fact|Theory|Property)[^\]]*\bSk{""}ip\s*=", "a skipped test proves nothing"),
    ];

    private static readonly string[] Text =
        [".cs", ".csproj", ".props", ".targets", ".sln", ".md", ".txt", ".csv", ".json", ".xml", ".config", ".yml", ".yaml", ".sh", ".svg", ".ipynb", ".editorconfig", ".gitignore", ".gitattributes", ""];

    [Fact]
    public void Sources_AnyFile_HoldOnePublicTypeNamedAsTheFile()
        => Rule.Holds(Compiler.Libraries.SyntaxTrees.SelectMany(MisplacedTypes));

    [Fact]
    public void Files_AnyText_HoldNothingUnwanted()
    {
        IReadOnlyList<string> files = Repository.Files();
        Assert.Contains("tests/Pattern.Core.Tests/Conventions/SourceFileTests.cs", files);

        Rule.Holds(files.Where(path => Text.Contains(Path.GetExtension(path))).SelectMany(path => UnwantedIn(path, Repository.Read(path))));
    }

    [Theory]
    [InlineData("src/A/B.cs", "public class B { public class Inner { } } internal class Other { }", 0)]
    [InlineData("src/A/B.Parts.cs", "public partial class B { }", 0)]
    [InlineData("src/A/B.cs", "public class B { } public enum C { One }", 1)]
    [InlineData("src/A/B.cs", "namespace N { public struct C { } }", 1)]
    [InlineData("src/A/B.cs", "public delegate void C();", 1)]
    public void MisplacedTypes_InAFile_AreFound(string path, string text, int expected)
        => Assert.Equal(expected, MisplacedTypes(CSharpSyntaxTree.ParseText(text, Compiler.Parsing, path)).Count());

    [Theory]
    [InlineData("see /wor", "k/main/x")]
    [InlineData("\"/tm", "p/x\"")]
    [InlineData("https://api.nu", "get.or" + "g/v3")]
    [InlineData("// TO", "DO: later")]
    [InlineData("[Fact(Sk", "ip = \"slow\")]")]
    public void UnwantedIn_AText_IsFound(string one, string two) => Assert.NotEmpty(UnwantedIn("a", one + two));

    [Theory]
    [InlineData("docs/work/plan.md and https://www.w3.org/2000/svg and $out/tmp/x")]
    [InlineData("a dart is a hack of cloth; the todo list")]
    public void UnwantedIn_AnHonestText_IsNothing(string text) => Assert.Empty(UnwantedIn("a", text));

    private static IEnumerable<string> MisplacedTypes(SyntaxTree tree)
    {
        string name = Path.GetFileName(tree.FilePath).Split('.')[0];
        return tree.GetRoot().DescendantNodes(node => node is CompilationUnitSyntax or BaseNamespaceDeclarationSyntax)
            .OfType<MemberDeclarationSyntax>()
            .Where(member => member.Modifiers.Any(SyntaxKind.PublicKeyword))
            .Select(member => (member as BaseTypeDeclarationSyntax)?.Identifier.Text ?? (member as DelegateDeclarationSyntax)?.Identifier.Text)
            .Where(type => type is not null && type != name)
            .Select(type => $"{tree.FilePath} holds the public type {type}");
    }

    private static IEnumerable<string> UnwantedIn(string path, string text) =>
        from rule in Unwanted
        from Match match in Regex.Matches(text, rule.Pattern)
        select $"{path}({text.Take(match.Index).Count(c => c == '\n') + 1}): \"{match.Value}\": {rule.Reason}";
}
