using System;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>One row of a shaping table: how a skirt is shaped for one difference between hip and waist.</summary>
public sealed class ShapingRow
{
    // Wider than any skirt is shaped; a row beyond it was written in another unit.
    internal const double MostDifferenceMm = 2_000.0;
    internal const double MostFigureMm = 500.0;

    /// <summary>Makes a row.</summary>
    /// <param name="difference">Hip girth less waist girth that it is for; within 2 m either side of nothing.</param>
    /// <param name="backWider">How much wider the back is than the front at the hip; within 50 cm, negative where the front is wider.</param>
    /// <param name="frontDart">Whole dart intake of one front panel; nothing to 50 cm.</param>
    /// <param name="backDart">Whole dart intake of one back panel; nothing to 50 cm.</param>
    /// <param name="frontDrop">How far the waist drops at centre front; within 50 cm, negative where it rises.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public ShapingRow(Length difference, Length backWider, Length frontDart, Length backDart, Length frontDrop)
        : this(
            Guard.Millimetres(difference, -MostDifferenceMm, MostDifferenceMm, nameof(difference)),
            Guard.Millimetres(backWider, -MostFigureMm, MostFigureMm, nameof(backWider)),
            Guard.Millimetres(frontDart, 0.0, MostFigureMm, nameof(frontDart)),
            Guard.Millimetres(backDart, 0.0, MostFigureMm, nameof(backDart)),
            Guard.Millimetres(frontDrop, -MostFigureMm, MostFigureMm, nameof(frontDrop)))
    {
    }

    private ShapingRow(double differenceMm, double backWiderMm, double frontDartMm, double backDartMm, double frontDropMm)
    {
        DifferenceMm = differenceMm;
        BackWiderMm = backWiderMm;
        FrontDartMm = frontDartMm;
        BackDartMm = backDartMm;
        FrontDropMm = frontDropMm;
    }

    /// <summary>Hip girth less waist girth that the row is for.</summary>
    public Length Difference => Length.FromMillimeters(DifferenceMm);

    /// <summary>How much wider the back is than the front at the hip.</summary>
    public Length BackWider => Length.FromMillimeters(BackWiderMm);

    /// <summary>Whole dart intake of one front panel.</summary>
    public Length FrontDart => Length.FromMillimeters(FrontDartMm);

    /// <summary>Whole dart intake of one back panel.</summary>
    public Length BackDart => Length.FromMillimeters(BackDartMm);

    /// <summary>How far the waist drops at centre front.</summary>
    public Length FrontDrop => Length.FromMillimeters(FrontDropMm);

    internal double DifferenceMm { get; }

    internal double BackWiderMm { get; }

    internal double FrontDartMm { get; }

    internal double BackDartMm { get; }

    internal double FrontDropMm { get; }

    internal static ShapingRow FromMm(double[] figuresMm) => new(figuresMm[0], figuresMm[1], figuresMm[2], figuresMm[3], figuresMm[4]);

    internal double[] ToMm() => [DifferenceMm, BackWiderMm, FrontDartMm, BackDartMm, FrontDropMm];

    /// <summary>The row that stands between two, in proportion to its difference.</summary>
    internal static ShapingRow Between(ShapingRow below, ShapingRow above, double differenceMm)
    {
        double t = (differenceMm - below.DifferenceMm) / (above.DifferenceMm - below.DifferenceMm);
        return new ShapingRow(
            differenceMm,
            Mix(below.BackWiderMm, above.BackWiderMm, t),
            Mix(below.FrontDartMm, above.FrontDartMm, t),
            Mix(below.BackDartMm, above.BackDartMm, t),
            Mix(below.FrontDropMm, above.FrontDropMm, t));
    }

    // Exact at both ends, and never past them.
    private static double Mix(double from, double to, double t)
    {
        double mixed = from * (1.0 - t) + to * t;
        return Math.Min(Math.Max(mixed, Math.Min(from, to)), Math.Max(from, to));
    }

    /// <summary>The figures in millimetres.</summary>
    public override string ToString()
        => FormattableString.Invariant($"difference {DifferenceMm:0.##} mm: back wider {BackWiderMm:0.##}, front dart {FrontDartMm:0.##}, back dart {BackDartMm:0.##}, front drop {FrontDropMm:0.##}");
}
