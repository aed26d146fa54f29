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
        ["Diagnostics", "Measurement", "Geometry", "Panels", "Drafting", "Blocks", "Styling", "Pieces", "Patterns", "Sizing", "Output"];

    internal static IReadOnlyList<string> Violations(IEnumerable<AssemblyReference> references)
        => references.Where(reference => Breaks(reference.FromNamespace, reference.ToNamespace)).Select(reference => reference.ToString()).ToArray();

    /// <summary>What the compiler leaves no trace of: constants, <c>nameof</c>, using directives, links in doc comments.</summary>
    internal static IReadOnlyList<string> Violations(Compilation compilation)
    {
        var found = new List<string>();
        Dictionary<int, HashSet<string>> declared = compilation.SyntaxTrees.Select(tree => tree.GetRoot())
            .GroupBy(root => FloorOf(NamespaceOf(root)))
            .ToDictionary(floor => floor.Key, floor => floor.SelectMany(DeclaredNames).ToHashSet(StringComparer.Ordinal));
        foreach (SyntaxTree tree in compilation.SyntaxTrees)
        {
            SemanticModel model = Compiler.Model(compilation, tree);
            SyntaxNode root = tree.GetRoot();
            string from = NamespaceOf(root);
            int floor = FloorOf(from);
            HashSet<string> above = floor < 0 ? [] : [.. declared.Where(names => names.Key > floor).SelectMany(names => names.Value)];
            foreach (SimpleNameSyntax name in root.DescendantNodes(descendIntoTrivia: true).OfType<SimpleNameSyntax>())
            {
                // What no floor after this one declares under that name needs no look at its meaning.
                if (!above.Contains(name.Identifier.ValueText))
                {
                    continue;
                }

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

    private static string NamespaceOf(SyntaxNode root) => root.DescendantNodes().OfType<BaseNamespaceDeclarationSyntax>().FirstOrDefault()?.Name.ToString() ?? string.Empty;

    // Types, members, enum members, record parameters; and the floor itself.
    private static IEnumerable<string> DeclaredNames(SyntaxNode root) => NamespaceOf(root).Split('.').TakeLast(1).Concat(root.DescendantNodes().SelectMany(node => node switch
    {
        BaseTypeDeclarationSyntax type => [type.Identifier.ValueText, Short(type.Identifier.ValueText)],
        DelegateDeclarationSyntax type => [type.Identifier.ValueText],
        MethodDeclarationSyntax method => [method.Identifier.ValueText],
        PropertyDeclarationSyntax property => [property.Identifier.ValueText],
        EventDeclarationSyntax raised => [raised.Identifier.ValueText],
        VariableDeclaratorSyntax field => [field.Identifier.ValueText],
        EnumMemberDeclarationSyntax value => [value.Identifier.ValueText],
        ParameterSyntax parameter => [parameter.Identifier.ValueText],
        _ => (string[])[],
    }));

    // [Mark] means MarkAttribute.
    private static string Short(string name) => name.EndsWith("Attribute", StringComparison.Ordinal) ? name[..^"Attribute".Length] : name;

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
