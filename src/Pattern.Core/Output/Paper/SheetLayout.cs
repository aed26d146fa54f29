using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>On what paper a drawing is printed: one sheet of its own size, a roll, or many small sheets to be joined. Immutable.</summary>
/// <remarks>A layout only moves the drawing, and may turn it by a quarter; it never scales. It knows no file format: whoever writes one draws the sheets that
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

    /// <summary>Lays the drawing out.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <returns>The sheets, in the order in which they are printed.</returns>
    /// <exception cref="ArgumentException">The drawing does not fit on this paper; the message says by how much.</exception>
    [Pure]
    public abstract IReadOnlyList<PrintSheet> Arrange(Drawing drawing);
}
