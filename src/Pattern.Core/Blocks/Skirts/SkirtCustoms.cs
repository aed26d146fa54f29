using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>The figures that a cutter takes where nobody says others: round ones on the tape that the body was measured with.</summary>
/// <remarks>Common practice, no source. Both sets stand side by side in the documentation.</remarks>
internal sealed class SkirtCustoms
{
    private const double Inch = 25.4;

    private static readonly SkirtCustoms OfInches = new(
        new SkirtLevels { Yoke = UnitsNet.Length.FromInches(5), UpperHip = UnitsNet.Length.FromInches(8), LowerHip = UnitsNet.Length.FromInches(10) },
        SkirtFit.Usual,
        frontDartMm: 5 * Inch,
        backDartMm: 6 * Inch);

    private static readonly SkirtCustoms OfCentimetres = new(
        new SkirtLevels { Yoke = UnitsNet.Length.FromCentimeters(12.5), UpperHip = UnitsNet.Length.FromCentimeters(20), LowerHip = UnitsNet.Length.FromCentimeters(25) },
        SkirtFit.UsualMetric,
        frontDartMm: 125,
        backDartMm: 150);

    private SkirtCustoms(SkirtLevels levels, SkirtFit fit, double frontDartMm, double backDartMm)
    {
        bool isMetric = fit == SkirtFit.UsualMetric;
        IsMetric = isMetric;
        Levels = levels;
        Fit = fit;
        FrontDart = WorkedLength.GivenMm("front dart length", frontDartMm);
        BackDart = WorkedLength.GivenMm("back dart length", backDartMm);
        Shortening = WorkedLength.GivenMm("shorter by", isMetric ? 20 : 0.75 * Inch);
        SideLift = WorkedLength.GivenMm("side lift", isMetric ? 12 : 0.5 * Inch);
        CentreBackLift = WorkedLength.GivenMm("CB lift", isMetric ? 6 : 0.25 * Inch);
        LoweredBackMm = isMetric ? 10 : 0.375 * Inch;
        MostCentreLiftMm = isMetric ? 25 : Inch;
        TwoBackDartsMm = isMetric ? 280 : 11 * Inch;
        LargestDartMm = isMetric ? 32 : 1.25 * Inch;
        SmallestDartMm = isMetric ? 10 : 0.375 * Inch;
        ShortestDartMm = isMetric ? 75 : 3 * Inch;
        NearSeamMm = isMetric ? 25 : Inch;
        TapeMarkMm = isMetric ? 1 : Inch / 16;
    }

    internal bool IsMetric { get; }

    /// <summary>All three levels, given.</summary>
    internal SkirtLevels Levels { get; }

    internal SkirtFit Fit { get; }

    internal WorkedLength FrontDart { get; }

    internal WorkedLength BackDart { get; }

    internal WorkedLength Shortening { get; }

    internal WorkedLength SideLift { get; }

    internal WorkedLength CentreBackLift { get; }

    /// <summary>How far the waistline of many handbooks lies below the waist level at the centre back.</summary>
    internal double LoweredBackMm { get; }

    /// <summary>How far the centre rises at most where the skirt widens upward.</summary>
    internal double MostCentreLiftMm { get; }

    /// <summary>A quarter waist above this takes two back darts.</summary>
    internal double TwoBackDartsMm { get; }

    internal double LargestDartMm { get; }

    internal double SmallestDartMm { get; }

    /// <summary>The shortest dart of the usual range.</summary>
    internal double ShortestDartMm { get; }

    /// <summary>An apex nearer to a seam than this shows beside it.</summary>
    internal double NearSeamMm { get; }

    /// <summary>The finest mark that a choice of the draft's own is rounded to.</summary>
    internal double TapeMarkMm { get; }

    internal static SkirtCustoms Of(LengthUnit unit) => Tape.IsMetric(unit, nameof(unit)) ? OfCentimetres : OfInches;
}
