using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>How pieces are drawn.</summary>
public sealed record PieceDrawingOptions
{
    /// <summary>The tape that allowances are printed for, and its finest usual mark; a value between two marks is printed finer.</summary>
    /// <value>Default: millimetres.</value>
    public TapeStep Tape { get; init; } = TapeStep.Millimeter;

    /// <summary>The widest that the sheet may be, margins included: pieces that find no room beside others stand below them. A piece that is wider makes the
    /// sheet wider.</summary>
    /// <value>400 mm to 10 m. Default 36 in (914 mm), the usual roll of a plotter or copy shop.</value>
    public Length SheetWidth
    {
        get => Length.FromMillimeters(SheetWidthMm);
        init => SheetWidthMm = Guard.Millimetres(value, 400, 10_000, nameof(SheetWidth));
    }

    /// <summary>All of it, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant($"{Tape}, sheet up to {SheetWidthMm:0.##} mm wide");

    internal double SheetWidthMm { get; private init; } = 36 * 25.4;
}
