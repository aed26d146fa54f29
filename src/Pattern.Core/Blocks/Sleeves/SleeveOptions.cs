namespace Pattern.Core.Blocks;

/// <summary>Everything that a sleeve is drafted with besides the body, in millimetres. The builder's methods document each; what is null the method decides.</summary>
internal sealed record SleeveOptions : IMethodValues
{
    internal static SleeveOptions Usual { get; } = new();

    internal Armhole? Armhole { get; init; }

    internal SleeveFit Fit { get; init; } = SleeveFit.Close;

    internal SleeveLength Length { get; init; } = SleeveLength.Long;

    internal double? LengthMm { get; init; }

    internal double? WidthEaseMm { get; init; }

    internal double? CapEaseMm { get; init; }

    internal double FrontShare { get; init; } = 0.45;

    internal double? CapHeightMm { get; init; }

    internal double? WristEaseMm { get; init; }

    internal ElbowShaping Elbow { get; init; } = ElbowShaping.Straight;

    internal double? ElbowMm { get; init; }

    SettingValue IMethodValues.At(int index) => SleeveSettings.ValueOf(this, index);
}
