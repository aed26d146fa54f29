using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;

namespace Pattern.Core.Samples.Methods;

/// <summary>The methods of this folder, by name.</summary>
public static class TaughtMethods
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<DraftingMethod> All { get; } = [ShapedSkirt.Proportional, ShapedSkirt.ByTable, new TailoredSkirt(), new HandoutSkirt(), new GoredSkirt(), new OnePieceSkirt(), new CircularFoundation(), new HandbookSleeve()];

    /// <summary>The library's own, these, and the bodice of a handbook, which needs more measurements than the others.</summary>
    public static MethodCatalogue Catalogue { get; } = All.Append(new HandbookBodice()).Aggregate(MethodCatalogue.BuiltIn, (catalogue, method) => catalogue.With(method));
}
