using System;
using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Tests.Conventions;

public class MessageRuleTests
{
    [Fact]
    public void Exceptions_OfTheLibraries_AreWordedInTheRegistry() => Rule.Holds(MessageRule.Violations(Compiler.Libraries));

    [Fact]
    public void Codes_AreAllGivenSomewhere()
    {
        HashSet<string> given = Compiler.Libraries.SyntaxTrees
            .Where(tree => !tree.FilePath.StartsWith("src/Pattern.Core/Diagnostics/MessageRegistry", StringComparison.Ordinal))
            .SelectMany(tree => tree.GetRoot().DescendantNodes().OfType<MemberAccessExpressionSyntax>())
            .Where(access => access.Expression.ToString() == nameof(DiagnosticCode))
            .Select(access => access.Name.Identifier.Text)
            .ToHashSet();

        Rule.Holds(Enum.GetNames<DiagnosticCode>().Except(given).Select(name => name + " is given nowhere"));
    }

    [Theory]
    [InlineData("throw new System.ArgumentException(MessageRegistry.Format(1), nameof(M));")]
    [InlineData("string text = MessageRegistry.Format(1); throw new System.FormatException(text);")]
    [InlineData("throw new System.FormatException(Worded());")]
    [InlineData("if (Find(out string? fault)) throw new System.FormatException(fault);")]
    [InlineData("if (Maybe() is { } fault) throw new System.FormatException(fault);")]
    public void Rule_OnMessagesOfTheRegistry_LeavesThemAlone(string body) => Rule.Holds(MessageRule.Violations(Code(body)));

    [Theory]
    [InlineData("throw new System.ArgumentException(\"No.\", nameof(M));")]
    [InlineData("throw new System.InvalidOperationException();")]
    [InlineData("throw new System.ArgumentNullException(nameof(M));")]
    [InlineData("string text = 1 > 2 ? MessageRegistry.Format(1) : \"No.\"; throw new System.FormatException(text);")]
    [InlineData("string text = MessageRegistry.Format(1); text = \"No.\"; throw new System.FormatException(text);")]
    [InlineData("throw new System.FormatException(Own());")]
    [InlineData("throw new System.FormatException($\"{MessageRegistry.Format(1)}\");")]
    [InlineData("throw new System.FormatException(message: \"No.\", innerException: null);")]
    public void Rule_OnMessagesOfTheirOwn_FindsThem(string body) => Assert.Single(MessageRule.Violations(Code(body)));

    private static CSharpCompilation Code(string body)
    {
        CSharpCompilation code = Compiler.Compile(
            [
                ("Code.cs", $$"""
                internal static class MessageRegistry { internal static string Format(int code) => code.ToString(); }
                internal class Code
                {
                    internal static void M() { {{body}} }
                    private static string Worded() => MessageRegistry.Format(1);
                    private static string Own() { return "No."; }
                    private static string? Maybe() { if (1 > 2) { return null; } return MessageRegistry.Format(1); }
                    private static bool Find(out string? fault) { fault = null; if (1 < 2) { fault = Worded(); } return true; }
                }
                """),
            ],
            Compiler.Platform);
        Assert.Empty(Compiler.Errors(code));
        return code;
    }
}
