using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>How pieces are drawn.</summary>
public sealed record PieceDrawingOptions
{
    /// <summary>The tape that allowances are printed for, and its finest usual mark; a value between two marks is printed finer, or as rounded where no mark of
    /// the tape shows it.</summary>
    /// <value>Default: the tape of the first piece that remembers one, as all pieces of a block do; of pieces without, the tape on which the allowances lie: eighths of an
    /// inch where each is on a sixty-fourth, else millimetres.</value>
    public TapeStep? Tape { get; init; }

    /// <summary>The widest that the sheet may be, margins included: pieces that find no room beside others stand below them. A piece that is wider makes the
    /// sheet wider. Sheets that are joined take no notice of it: they lay the pieces out for the fewest sheets.</summary>
    /// <value>428 mm to 10 m: the title block takes so much. Default 36 in (914 mm), the usual roll of a plotter or copy shop.</value>
    public Length SheetWidth
    {
        get => Length.FromMillimeters(SheetWidthMm);
        init => SheetWidthMm = Guard.Millimetres(value, 428, 10_000, nameof(SheetWidth));
    }

    /// <summary>All of it, whatever the culture.</summary>
    public override string ToString() => FormattableString.Invariant($"{(Tape is { } tape ? tape.ToString() : "the tape of the pieces")}, sheet up to {SheetWidthMm:0.##} mm wide");

    internal double SheetWidthMm { get; private init; } = 36 * 25.4;
}
