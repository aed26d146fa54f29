using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Blocks;

/// <summary>Drafting methods and designs by name: what a reader of pattern files drafts again with. Immutable.</summary>
/// <example><code>
/// MethodCatalogue methods = MethodCatalogue.BuiltIn.With(DraftingMethod.Of("half apron", "1", draft => { }));
/// </code></example>
public sealed class MethodCatalogue
{
    private readonly DraftingMethod[] _methods;

    private readonly BlockDesign[] _designs;

    private MethodCatalogue(DraftingMethod[] methods, BlockDesign[] designs)
    {
        _methods = methods;
        _designs = designs;
    }

    /// <summary>The methods that the library brings. Readers of files know its designs besides.</summary>
    public static MethodCatalogue BuiltIn { get; } = new([.. BuiltInMethods.All], []);

    /// <summary>A catalogue without methods and designs.</summary>
    public static MethodCatalogue Empty { get; } = new([], []);

    /// <summary>The methods, in the order in which they were added.</summary>
    public IReadOnlyList<DraftingMethod> Methods => _methods;

    /// <summary>The designs, in the order in which they were added.</summary>
    public IReadOnlyList<BlockDesign> Designs => _designs;

    /// <summary>Adds a method.</summary>
    /// <exception cref="ArgumentException">There is one of that name already.</exception>
    [Pure]
    public MethodCatalogue With(DraftingMethod method) => _methods.Any(one => one.Name == Guard.NotNull(method, nameof(method)).Name)
        ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MethodNamedTwice, "method " + method.Name), nameof(method))
        : new MethodCatalogue([.. _methods, Guard.NotNull(method, nameof(method))], _designs);

    /// <summary>Adds a design.</summary>
    /// <exception cref="ArgumentException">There is one of that name already.</exception>
    [Pure]
    public MethodCatalogue With(BlockDesign design) => _designs.Any(one => one.Name == Guard.NotNull(design, nameof(design)).Name)
        ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.MethodNamedTwice, "design " + design.Name), nameof(design))
        : new MethodCatalogue(_methods, [.. _designs, Guard.NotNull(design, nameof(design))]);

    /// <summary>Looks for the method of that name.</summary>
    /// <returns>Whether it is in the catalogue.</returns>
    public bool TryFind(string name, out DraftingMethod? method)
    {
        method = _methods.FirstOrDefault(one => one.Name == name);
        return method is not null;
    }

    /// <summary>Looks for the design of that name.</summary>
    /// <returns>Whether it is in the catalogue.</returns>
    public bool TryFindDesign(string name, out BlockDesign? design)
    {
        design = _designs.FirstOrDefault(one => one.Name == name);
        return design is not null;
    }

    /// <summary>Returns the method of that name.</summary>
    /// <exception cref="ConstructionException">It is not in the catalogue.</exception>
    [Pure]
    public DraftingMethod Find(string name) => TryFind(name, out DraftingMethod? method)
        ? method!
        : throw new ConstructionException(DiagnosticCode.MethodUnknown, name, _methods.Length == 0 ? "none" : string.Join(", ", _methods.Select(one => one.Name)));

    /// <summary>The methods and designs, by name.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{_methods.Length} methods, {_designs.Length} designs");
}
