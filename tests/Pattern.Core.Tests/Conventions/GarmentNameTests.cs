using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Pattern.Core.Tests.Conventions;

/// <summary>A second garment costs one folder: whatever is made of blocks, panels and pieces knows no garment.</summary>
public class GarmentNameTests
{
    // As words inside an identifier or a text, in any case.
    private static readonly Regex Garment = new("(?i)skirt|bodice|sleeve|trouser|pants|apron|blouse|jacket|waistcoat|shirt|dress(?!ed)|gown|(?<!s)cape(?!d)");

    /// <summary>Where a garment is named, and why.</summary>
    private static readonly (string Path, string Reason)[] Allowed =
    [
        (@"^src/Pattern\.Core/(Blocks|Patterns)/[A-Z]\w+/", "how a garment is drafted, and which pieces are cut from it"),
        (@"^src/Pattern\.Core/Styling/", "designs of a garment"),
        (@"^src/Pattern\.Core/Blocks/BuiltInMethods\.cs$", "the list of methods"),
        (@"^src/Pattern\.Core/Panels/(Edge|Panel)Name\.cs$", "trade words"),
        (@"^src/Pattern\.Core/Diagnostics/(DiagnosticCode|MessageRegistry)\.cs$", "the registry of codes"),
    ];

    [Fact]
    public void Sources_OutsideTheRoomOfAGarment_NameNone()
        => Rule.Holds(Compiler.Libraries.SyntaxTrees.Where(tree => !Allowed.Any(allowed => Regex.IsMatch(tree.FilePath, allowed.Path))).SelectMany(Named));

    [Theory]
    [InlineData("class SkirtSheet { }", 1)]
    [InlineData("class A { const string B = \"Skirt block\"; }", 1)]
    [InlineData("class A { string B(int c) => $\"the sleeve of {c}\"; }", 1)]
    [InlineData("/// <summary>Of a skirt.</summary>\nclass A { string Address = \"the escape of a landscape\"; }", 0)]
    public void Named_InACode_IsFound(string code, int expected)
        => Assert.Equal(expected, Named(CSharpSyntaxTree.ParseText(code, Compiler.Parsing, "a.cs")).Count());

    private static IEnumerable<string> Named(SyntaxTree tree) => tree.GetRoot().DescendantTokens()
        .Where(token => token.IsKind(SyntaxKind.IdentifierToken) || token.IsKind(SyntaxKind.StringLiteralToken) || token.IsKind(SyntaxKind.InterpolatedStringTextToken))
        .Where(token => Garment.IsMatch(token.ValueText.Replace("ddress", string.Empty, StringComparison.OrdinalIgnoreCase)))
        .Select(token => $"{tree.FilePath}({token.GetLocation().GetLineSpan().StartLinePosition.Line + 1}): {token.ValueText}");
}
