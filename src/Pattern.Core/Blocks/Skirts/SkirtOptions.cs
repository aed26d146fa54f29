using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Everything that a skirt block is drafted with besides the body, in millimetres. The builder's methods document each.</summary>
internal sealed record SkirtOptions : IMethodValues
{
    private const double Inch = 25.4;

    /// <summary>As usual, off an inch tape.</summary>
    internal static SkirtOptions Default { get; } = new();

    /// <summary>As usual, off a centimetre tape.</summary>
    internal static SkirtOptions Metric { get; } = new()
    {
        HipEaseMm = 25,
        LengthMm = 600,
        LargestDartMm = SkirtCustoms.Of(LengthUnit.Centimeter).LargestDartMm,
        SmallestDartMm = SkirtCustoms.Of(LengthUnit.Centimeter).SmallestDartMm,
        LargestSideShapingMm = 38,
    };

    internal static SkirtOptions UsualIn(LengthUnit unit) => SkirtCustoms.Of(unit).IsMetric ? Metric : Default;

    internal ShapingTable Table { get; init; } = ShapingTable.Proportional;

    internal double WaistEaseMm { get; init; }

    internal double HipEaseMm { get; init; } = 1 * Inch;

    internal double LengthMm { get; init; } = 24 * Inch;

    internal SkirtLevels Levels { get; init; } = new();

    internal double? SideLiftMm { get; init; }

    internal double? CentreBackLiftMm { get; init; }

    internal double? CentreFrontDropMm { get; init; }

    internal DartPlan FrontDarts { get; init; } = new();

    internal DartPlan BackDarts { get; init; } = new();

    /// <summary>From the centre to the middle of each dart of the back, darts open, where they have to meet those of another panel; null for the usual places.</summary>
    internal double[]? BackDartPlacesMm { get; init; }

    /// <inheritdoc cref="BackDartPlacesMm"/>
    internal double[]? FrontDartPlacesMm { get; init; }

    internal double LargestDartMm { get; init; } = 1.25 * Inch;

    internal double SmallestDartMm { get; init; } = 0.375 * Inch;

    internal double LargestSideShapingMm { get; init; } = 1.5 * Inch;

    internal SkirtFit Fit { get; init; } = SkirtFit.Straight;

    internal Waistline Waistline { get; init; } = Waistline.Shaped;

    SettingValue IMethodValues.At(int index) => SkirtSettings.ValueOf(this, index);
}
