using System;
using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattern.Core.Tests.Conventions;

/// <summary>The order in which a garment travels: a floor uses itself and those before it.</summary>
internal static class FloorRule
{
    internal const string Library = "Pattern.Core";

    internal static readonly string[] Floors =
        ["Diagnostics", "Measurement", "Geometry", "Panels", "Drafting", "Blocks", "Styling", "Pieces", "Sizing", "Output"];

    internal static IReadOnlyList<string> Violations(IEnumerable<AssemblyReference> references)
        => references.Where(reference => Breaks(reference.FromNamespace, reference.ToNamespace)).Select(reference => reference.ToString()).ToArray();

    /// <summary>What the compiler leaves no trace of: constants, <c>nameof</c>, using directives, links in doc comments.</summary>
    internal static IReadOnlyList<string> Violations(Compilation compilation)
    {
        var found = new List<string>();
        foreach (SyntaxTree tree in compilation.SyntaxTrees)
        {
            SemanticModel model = compilation.GetSemanticModel(tree);
            SyntaxNode root = tree.GetRoot();
            string from = root.DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>().FirstOrDefault()?.Name.ToString() ?? string.Empty;
            foreach (SimpleNameSyntax name in root.DescendantNodes(descendIntoTrivia: true).OfType<SimpleNameSyntax>())
            {
                SymbolInfo meaning = model.GetSymbolInfo(name);
                foreach (ISymbol symbol in meaning.Symbol is { } one ? [one] : meaning.CandidateSymbols)
                {
                    string to = (symbol as INamespaceSymbol ?? symbol.ContainingNamespace)?.ToDisplayString() ?? string.Empty;
                    if (Breaks(from, to))
                    {
                        found.Add($"{tree.FilePath}({name.GetLocation().GetLineSpan().StartLinePosition.Line + 1}): {from} names {to}: {name}");
                    }
                }
            }
        }

        return found;
    }

    /// <summary>Whether a namespace may not use another.</summary>
    private static bool Breaks(string from, string to)
    {
        int fromFloor = FloorOf(from);
        int toFloor = FloorOf(to);
        return fromFloor >= 0 && toFloor > fromFloor;
    }

    /// <summary>The place of a namespace's floor in the order, or -1 where it is none of the library's.</summary>
    private static int FloorOf(string space)
        => space.StartsWith(Library + ".", StringComparison.Ordinal) ? Array.IndexOf(Floors, space[(Library.Length + 1)..].Split('.')[0]) : -1;
}
