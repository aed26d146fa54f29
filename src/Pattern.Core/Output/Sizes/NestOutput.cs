using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Sizing;

namespace Pattern.Core.Output;

/// <summary>Nests of sizes as drawings.</summary>
public static class NestOutput
{
    /// <summary>Draws all sizes of each panel on their common place, at full size: seam lines and darts of each size in a dash pattern of its own, named at their ends and in a key.</summary>
    /// <remarks>Sizes are told apart in black and white. After 24 sizes the patterns begin anew. Panels stand side by side; the grain is that of the first size.</remarks>
    /// <param name="nest">The nest.</param>
    [Pure]
    public static Drawing Draw(this SizeNest nest) => new NestSheet(Guard.NotNull(nest, nameof(nest))).Draw();
}
