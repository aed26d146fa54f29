using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>The figures that a cutter takes for a sleeve where nobody says others: round ones on the tape that the body was measured with.</summary>
/// <remarks>Least upper arm ease 2 in: Threads, "Set-in sleeve solutions", 2021-09-27; 3 in: a lesson of an older draft. The others: common practice, no source.</remarks>
internal sealed class SleeveCustoms
{
    private const double Inch = 25.4;

    private static readonly SleeveCustoms CloseInches = new(2 * Inch, 1 * Inch, 2 * Inch, isMetric: false);
    private static readonly SleeveCustoms CloseCentimetres = new(50, 25, 50, isMetric: true);
    private static readonly SleeveCustoms EasyInches = new(3 * Inch, 0.375 * Inch, 3 * Inch, isMetric: false);
    private static readonly SleeveCustoms EasyCentimetres = new(80, 10, 80, isMetric: true);

    private SleeveCustoms(double widthEaseMm, double capEaseMm, double wristEaseMm, bool isMetric)
    {
        WidthEaseMm = widthEaseMm;
        CapEaseMm = capEaseMm;
        WristEaseMm = wristEaseMm;
        LeastWidthEaseMm = isMetric ? 50 : 2 * Inch;
        LeastElbowEaseMm = isMetric ? 30 : 1.25 * Inch;
        ElbowDartMm = isMetric ? 20 : 0.75 * Inch;
        ElbowEaseMm = isMetric ? 10 : 0.375 * Inch;
        TwoPieceEaseMm = isMetric ? 5 : 0.1875 * Inch;
        ClearMm = isMetric ? 50 : 2 * Inch;
        LeastSeamMm = isMetric ? 25 : Inch;
    }

    internal double WidthEaseMm { get; }

    internal double CapEaseMm { get; }

    internal double WristEaseMm { get; }

    /// <summary>Less than this at the upper arm binds.</summary>
    internal double LeastWidthEaseMm { get; }

    internal double LeastElbowEaseMm { get; }

    internal double ElbowDartMm { get; }

    internal double ElbowEaseMm { get; }

    /// <summary>What the back seam of an upper sleeve is longer by.</summary>
    internal double TwoPieceEaseMm { get; }

    /// <summary>What a sleeve has to reach beyond the elbow to have one.</summary>
    internal double ClearMm { get; }

    /// <summary>The shortest underarm seam.</summary>
    internal double LeastSeamMm { get; }

    internal static SleeveCustoms Of(LengthUnit unit, SleeveFit fit) => Tape.IsMetric(unit, nameof(unit))
        ? fit == SleeveFit.Close ? CloseCentimetres : EasyCentimetres
        : fit == SleeveFit.Close ? CloseInches : EasyInches;
}
