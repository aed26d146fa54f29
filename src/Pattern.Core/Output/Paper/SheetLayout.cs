using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>On what paper a drawing is printed: one sheet of its own size, a roll, many small sheets to be joined, or a small scale for an exercise book. Immutable.</summary>
/// <remarks>A layout only moves the drawing, and may turn it by a quarter; only <see cref="ReducedOn"/> scales. It knows no file format: whoever writes one draws the sheets that
/// <see cref="Arrange"/> returns.</remarks>
/// <example><code>
/// SheetLayout home = SheetLayout.TiledOn(PaperSize.A4).WithOverlap(Length.FromMillimeters(15));
/// SheetLayout copyShop = SheetLayout.OnRoll(Length.FromInches(36));
/// int count = home.Arrange(block.Draw()).Count;
/// </code></example>
public abstract class SheetLayout
{
    private protected SheetLayout()
    {
    }

    /// <summary>One sheet, as large as the drawing says it is.</summary>
    public static SheetLayout SingleSheet { get; } = new SingleSheetLayout();

    /// <summary>One sheet cut from a roll, as wide as the roll and as long as the drawing needs.</summary>
    /// <param name="width">The width of the roll: 100 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public static RollLayout OnRoll(Length width) => new(Guard.Millimetres(width, 100, 10_000, nameof(width)));

    /// <summary>Many sheets to be cut and joined, with margins, overlap and orientation at their defaults.</summary>
    /// <param name="paper">The sheets.</param>
    public static TiledLayout TiledOn(PaperSize paper) => TiledLayout.On(paper);

    /// <summary>One sheet with the drawing at a small scale, for an exercise book. The sheet says its scale, and that nothing is ever cut from it.</summary>
    /// <param name="paper">The sheet; the drawing takes it upright or lying, whichever it fits.</param>
    /// <param name="scale">How small.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">The scale is none of those.</exception>
    public static ReducedLayout ReducedOn(PaperSize paper, Reduction scale)
        => new(Guard.NotNull(paper, nameof(paper)), (Reduction)Guard.Choice((int)scale, 3, nameof(scale)), Measurement.Phrasebook.English);

    /// <summary>Lays the drawing out.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <returns>The sheets, in the order in which they are printed.</returns>
    /// <exception cref="ArgumentException">The drawing does not fit on this paper; the message says by how much.</exception>
    [Pure]
    public abstract IReadOnlyList<PrintSheet> Arrange(Drawing drawing);
}
