namespace Pattern.Core.Blocks;

/// <summary>Everything that a skirt block is drafted with besides the body, in millimetres. The builder's methods document each.</summary>
internal sealed record SkirtOptions : IMethodValues
{
    private const double Inch = 25.4;

    internal static SkirtOptions Default { get; } = new();

    internal ShapingTable Table { get; init; } = ShapingTable.Proportional;

    internal double WaistEaseMm { get; init; }

    internal double HipEaseMm { get; init; } = 1 * Inch;

    internal double LengthMm { get; init; } = 24 * Inch;

    internal SkirtLevels Levels { get; init; } = new();

    internal double SideLiftMm { get; init; } = 0.5 * Inch;

    internal double CentreBackLiftMm { get; init; } = 0.25 * Inch;

    internal double? CentreFrontDropMm { get; init; }

    internal DartPlan FrontDarts { get; init; } = new();

    internal DartPlan BackDarts { get; init; } = new();

    internal double LargestDartMm { get; init; } = 1.25 * Inch;

    internal double SmallestDartMm { get; init; } = 0.375 * Inch;

    internal double LargestSideShapingMm { get; init; } = 1.5 * Inch;

    internal SkirtFit Fit { get; init; } = SkirtFit.Straight;

    internal Waistline Waistline { get; init; } = Waistline.Shaped;

    SettingValue IMethodValues.At(int index) => SkirtSettings.ValueOf(this, index);
}
