using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattern.Core.Tests.Conventions;

/// <summary>Finds numbers and quantities in interpolated strings that are not given a culture.</summary>
internal static class InterpolatedNumbers
{
    internal static IEnumerable<string> In(Compilation compilation) =>
        from tree in compilation.SyntaxTrees
        let model = Compiler.Model(compilation, tree)
        from text in tree.GetRoot().DescendantNodes().OfType<InterpolatedStringExpressionSyntax>()
        where model.GetTypeInfo(text).ConvertedType?.Name is not ("FormattableString" or "IFormattable") && !IsGivenACulture(model, text)
        from place in text.Contents.OfType<InterpolationSyntax>()
        where DependsOnCulture(model.GetTypeInfo(place.Expression).Type)
        select $"{tree.FilePath}({place.GetLocation().GetLineSpan().StartLinePosition.Line + 1}): {place}";

    /// <summary>Whether the call that takes the text takes a culture as well, as <c>string.Create</c> and <c>StringBuilder.Append</c> can.</summary>
    private static bool IsGivenACulture(SemanticModel model, InterpolatedStringExpressionSyntax text)
        => text.Parent is ArgumentSyntax { Parent: ArgumentListSyntax list }
            && model.GetTypeInfo(text).ConvertedType?.Name.EndsWith("InterpolatedStringHandler", System.StringComparison.Ordinal) == true
            && list.Arguments.Any(argument => model.GetTypeInfo(argument.Expression).Type?.Name is "CultureInfo" or "IFormatProvider" or "NumberFormatInfo");

    // Whole numbers that count things are never negative here, so that no culture can write them in another way.
    private static bool DependsOnCulture(ITypeSymbol? type) => type switch
    {
        { SpecialType: SpecialType.System_Double or SpecialType.System_Single or SpecialType.System_Decimal or SpecialType.System_DateTime } => true,
        INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } nullable => DependsOnCulture(nullable.TypeArguments[0]),
        _ => type?.ContainingNamespace?.Name == "UnitsNet",
    };
}
