using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Blocks;

/// <summary>Drafting methods by name: what a reader of pattern files drafts again with. Immutable.</summary>
/// <example><code>
/// MethodCatalogue methods = MethodCatalogue.BuiltIn.With(DraftingMethod.Of("half apron", "1", draft => { }));
/// </code></example>
public sealed class MethodCatalogue
{
    private readonly DraftingMethod[] _methods;

    private MethodCatalogue(DraftingMethod[] methods) => _methods = methods;

    /// <summary>The methods that the library brings.</summary>
    public static MethodCatalogue BuiltIn { get; } = new([.. BuiltInMethods.All]);

    /// <summary>A catalogue without methods.</summary>
    public static MethodCatalogue Empty { get; } = new([]);

    /// <summary>The methods, in the order in which they were added.</summary>
    public IReadOnlyList<DraftingMethod> Methods => _methods;

    /// <summary>Adds a method.</summary>
    /// <exception cref="ArgumentException">There is one of that name already.</exception>
    [Pure]
    public MethodCatalogue With(DraftingMethod method) => _methods.Any(one => one.Name == Guard.NotNull(method, nameof(method)).Name)
        ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MethodNamedTwice, method.Name), nameof(method))
        : new MethodCatalogue([.. _methods, Guard.NotNull(method, nameof(method))]);

    /// <summary>Looks for the method of that name.</summary>
    /// <returns>Whether it is in the catalogue.</returns>
    public bool TryFind(string name, out DraftingMethod? method)
    {
        method = _methods.FirstOrDefault(one => one.Name == name);
        return method is not null;
    }

    /// <summary>Returns the method of that name.</summary>
    /// <exception cref="ConstructionException">It is not in the catalogue.</exception>
    [Pure]
    public DraftingMethod Find(string name) => TryFind(name, out DraftingMethod? method)
        ? method!
        : throw new ConstructionException(DiagnosticCode.MethodUnknown, name, _methods.Length == 0 ? "none" : string.Join(", ", _methods.Select(one => one.Name)));
}
