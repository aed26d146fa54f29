using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Everything that a skirt block is drafted with besides the body. The builder's methods document each.</summary>
internal sealed record SkirtOptions
{
    internal static SkirtOptions Default { get; } = new();

    internal ShapingTable Table { get; init; } = ShapingTable.Proportional;

    internal Length WaistEase { get; init; } = Length.Zero;

    internal Length HipEase { get; init; } = Length.FromInches(1);

    internal Length SkirtLength { get; init; } = Length.FromInches(24);

    internal SkirtLevels Levels { get; init; } = new();

    internal Length SideLift { get; init; } = Length.FromInches(0.5);

    internal Length CentreBackLift { get; init; } = Length.FromInches(0.25);

    internal Length? CentreFrontDrop { get; init; }

    internal DartPlan FrontDarts { get; init; } = new();

    internal DartPlan BackDarts { get; init; } = new();

    internal Length LargestDart { get; init; } = Length.FromInches(1.25);

    internal Length SmallestDart { get; init; } = Length.FromInches(0.375);

    internal Length LargestSideShaping { get; init; } = Length.FromInches(1.5);

    internal SkirtFit Fit { get; init; } = SkirtFit.Straight;

    internal Waistline Waistline { get; init; } = Waistline.Shaped;
}
