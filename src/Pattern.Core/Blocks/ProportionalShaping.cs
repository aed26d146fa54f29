using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>The library's default shaping.</summary>
internal sealed class ProportionalShaping : ShapingTable
{
    private static readonly WorkedLength LargestDrop = WorkedLength.GivenMm("largest drop", 31.75);
    private static readonly WorkedLength Nothing = WorkedLength.GivenMm("nothing", 0);

    /// <inheritdoc/>
    public override ShapingReading Read(ShapingQuery query)
    {
        Guard.NotNull(query, nameof(query));
        WorkedLength backWider = query.Difference.DividedBy(16).Named("back wider than front");
        WorkedLength box = query.HipGirth.Half() + query.HipEase.Half();
        WorkedLength front = (box - backWider).Half();
        WorkedLength waist = (query.WaistGirth + query.WaistEase).Quarter();
        WorkedLength frontDart = (front - waist).Half().AtLeast(Nothing).Named("front dart intake");
        WorkedLength backDart = (front + backWider - waist).Half().AtLeast(Nothing).Named("back dart intake");
        WorkedLength drop = query.Difference.DividedBy(8).AtLeast(Nothing).AtMost(LargestDrop).Named("centre front drop");
        return new ShapingReading(backWider, frontDart, backDart, drop, "proportional law");
    }
}
