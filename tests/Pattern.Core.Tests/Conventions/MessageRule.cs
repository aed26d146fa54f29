using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattern.Core.Tests.Conventions;

/// <summary>Follows the message of every exception that is made back to where it was worded: that has to be the registry.</summary>
internal sealed class MessageRule
{
    private const string New = ".ctor";

    private readonly Compilation _compilation;
    private readonly HashSet<ISymbol> _followed = new(SymbolEqualityComparer.Default);

    private readonly ILookup<string, AssignmentExpressionSyntax> _assignments;
    private readonly ILookup<string, ExpressionSyntax> _calls;

    private MessageRule(Compilation compilation)
    {
        _compilation = compilation;
        ExpressionSyntax[] all = [.. compilation.SyntaxTrees.SelectMany(tree => tree.GetRoot().DescendantNodes().OfType<ExpressionSyntax>())];
        _assignments = all.OfType<AssignmentExpressionSyntax>().ToLookup(assignment => LastName(assignment.Left) ?? string.Empty);
        _calls = all.Where(node => node is InvocationExpressionSyntax or BaseObjectCreationExpressionSyntax)
            .ToLookup(call => call is InvocationExpressionSyntax invoked ? LastName(invoked.Expression) ?? string.Empty : New);
    }

    internal static IReadOnlyList<string> Violations(Compilation compilation)
    {
        var rule = new MessageRule(compilation);
        return compilation.SyntaxTrees.SelectMany(tree => tree.GetRoot().DescendantNodes().OfType<BaseObjectCreationExpressionSyntax>())
            .Where(made => !rule.IsFromRegistry(made))
            .Select(made => $"{made.SyntaxTree.FilePath}({made.GetLocation().GetLineSpan().StartLinePosition.Line + 1}): {made}")
            .ToArray();
    }

    private bool IsFromRegistry(BaseObjectCreationExpressionSyntax made)
    {
        if (Model(made).GetSymbolInfo(made).Symbol is not IMethodSymbol constructor || !IsException(constructor.ContainingType))
        {
            return true;
        }

        // Our own exceptions ask the registry themselves: they take a code.
        if (constructor.Parameters.Any(parameter => parameter.Type.Name == "DiagnosticCode"))
        {
            return true;
        }

        ArgumentSyntax? message = made.ArgumentList?.Arguments
            .Where((argument, place) => (argument.NameColon?.Name.Identifier.Text ?? constructor.Parameters[place].Name) == "message")
            .FirstOrDefault();
        _followed.Clear();
        return message is not null && IsFromRegistry(message.Expression);
    }

    private bool IsFromRegistry(ExpressionSyntax expression) => expression switch
    {
        ParenthesizedExpressionSyntax inner => IsFromRegistry(inner.Expression),
        PostfixUnaryExpressionSyntax forgiven => IsFromRegistry(forgiven.Operand),
        ConditionalExpressionSyntax choice => IsFromRegistry(choice.WhenTrue) && IsFromRegistry(choice.WhenFalse),
        BinaryExpressionSyntax { RawKind: (int)SyntaxKind.CoalesceExpression } either => IsFromRegistry(either.Left) && IsFromRegistry(either.Right),
        SwitchExpressionSyntax choice => choice.Arms.All(arm => IsFromRegistry(arm.Expression)),
        ThrowExpressionSyntax => true,
        LiteralExpressionSyntax literal => literal.IsKind(SyntaxKind.NullLiteralExpression) || literal.IsKind(SyntaxKind.DefaultLiteralExpression),
        _ => Model(expression).GetSymbolInfo(expression).Symbol is { } symbol && IsFromRegistry(symbol),
    };

    private bool IsFromRegistry(ISymbol symbol)
    {
        if (symbol is IMethodSymbol { Name: "Format", ContainingType.Name: "MessageRegistry" } || !_followed.Add(symbol))
        {
            return true;
        }

        ExpressionSyntax[] values = symbol switch
        {
            IMethodSymbol method => method.DeclaringSyntaxReferences.SelectMany(place => Returned(place.GetSyntax())).ToArray(),
            IParameterSymbol { RefKind: not RefKind.Out } parameter => Declared(parameter).Concat(Passed(parameter)).ToArray(),
            _ => Declared(symbol).Concat(Assigned(symbol)).ToArray(),
        };

        // Where no value can be found, nothing is proved.
        return values.Length > 0 && values.All(IsFromRegistry);
    }

    private static IEnumerable<ExpressionSyntax> Returned(SyntaxNode body) => body
        .DescendantNodes(node => node == body || node is not (LocalFunctionStatementSyntax or AnonymousFunctionExpressionSyntax))
        .Select(node => node switch
        {
            ReturnStatementSyntax { Expression: { } value } => value,
            ArrowExpressionClauseSyntax arrow when arrow.Parent == body => arrow.Expression,
            _ => null,
        })
        .OfType<ExpressionSyntax>();

    /// <summary>The value that the declaration itself gives: an initializer, an expression body, a pattern that names what it matched, an out argument.</summary>
    private IEnumerable<ExpressionSyntax> Declared(ISymbol symbol)
    {
        foreach (SyntaxNode node in symbol.DeclaringSyntaxReferences.Select(place => place.GetSyntax()))
        {
            ExpressionSyntax? value = node switch
            {
                VariableDeclaratorSyntax { Initializer.Value: { } given } => given,
                PropertyDeclarationSyntax { ExpressionBody.Expression: { } body } => body,
                PropertyDeclarationSyntax { Initializer.Value: { } given } => given,
                SingleVariableDesignationSyntax => node.Ancestors().OfType<IsPatternExpressionSyntax>().FirstOrDefault()?.Expression,
                _ => null,
            };
            if (value is not null)
            {
                yield return value;
            }

            // out var fault: what the called method assigns to that parameter.
            if (node.Parent is DeclarationExpressionSyntax { Parent: ArgumentSyntax { Parent: ArgumentListSyntax list } argument } && value is null
                && Model(node).GetSymbolInfo(list.Parent!).Symbol is IMethodSymbol called)
            {
                foreach (ExpressionSyntax assigned in Assigned(called.Parameters[list.Arguments.IndexOf(argument)]))
                {
                    yield return assigned;
                }
            }
        }
    }

    private IEnumerable<ExpressionSyntax> Assigned(ISymbol symbol) => _assignments[symbol.Name]
        .Where(assignment => Is(assignment.Left, symbol))
        .Select(assignment => assignment.Right);

    private IEnumerable<ExpressionSyntax> Passed(IParameterSymbol parameter)
    {
        foreach (ExpressionSyntax call in _calls[parameter.ContainingSymbol is IMethodSymbol { MethodKind: MethodKind.Constructor } ? New : parameter.ContainingSymbol.Name])
        {
            ArgumentListSyntax? list = (call as InvocationExpressionSyntax)?.ArgumentList ?? (call as BaseObjectCreationExpressionSyntax)?.ArgumentList;
            if (list is null || !SymbolEqualityComparer.Default.Equals(Model(call).GetSymbolInfo(call).Symbol?.OriginalDefinition, parameter.ContainingSymbol))
            {
                continue;
            }

            for (int i = 0; i < list.Arguments.Count; i++)
            {
                if ((list.Arguments[i].NameColon?.Name.Identifier.Text == parameter.Name) || (list.Arguments[i].NameColon is null && i == parameter.Ordinal))
                {
                    yield return list.Arguments[i].Expression;
                }
            }
        }
    }

    private static string? LastName(ExpressionSyntax expression)
        => (expression as SimpleNameSyntax)?.Identifier.Text ?? (expression as MemberAccessExpressionSyntax)?.Name.Identifier.Text
            ?? (expression as MemberBindingExpressionSyntax)?.Name.Identifier.Text;

    private bool Is(ExpressionSyntax expression, ISymbol symbol)
        => SymbolEqualityComparer.Default.Equals(Model(expression).GetSymbolInfo(expression).Symbol, symbol);

    private SemanticModel Model(SyntaxNode node) => Compiler.Model(_compilation, node.SyntaxTree);

    private static bool IsException(ITypeSymbol? type)
        => type is not null && (type.ToDisplayString() == "System.Exception" || IsException(type.BaseType));
}
