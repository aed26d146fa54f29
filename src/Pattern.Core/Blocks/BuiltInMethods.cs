using System.Collections.Generic;

namespace Pattern.Core.Blocks;

/// <summary>The drafting methods that the library brings.</summary>
public static class BuiltInMethods
{
    /// <summary>The plain fitted skirt. <see cref="SkirtBlock.For"/> says its settings by name.</summary>
    public static DraftingMethod Skirt { get; } = new SkirtMethod();

    /// <summary>The close-fitting bodice. <see cref="BodiceBlock.For"/> says its settings by name.</summary>
    public static DraftingMethod Bodice { get; } = new BodiceMethod();

    /// <summary>A sleeve that is set into an armhole. <see cref="SleeveBlock.For(Armhole, Measurement.BodyMeasurements)"/> says its settings by name.</summary>
    public static DraftingMethod Sleeve { get; } = new SleeveMethod();

    /// <summary>The gown with a seam at the waist: bodice, skirt and sleeve, joined. <see cref="GownBlock.For"/> says its settings by name.</summary>
    public static DraftingMethod Gown { get; } = new GownMethod();

    /// <summary>The sheath, without a seam at the waist. <see cref="SheathBlock.For"/> says its settings by name.</summary>
    public static DraftingMethod Sheath { get; } = new SheathMethod();

    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<DraftingMethod> All { get; } = [Bodice, Gown, Sheath, Skirt, Sleeve];
}
