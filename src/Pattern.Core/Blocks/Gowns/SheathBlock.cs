using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>A sheath block: back and front from shoulder to hem without a seam at the waist, which double-pointed darts and the side seams bring in. Immutable.</summary>
/// <remarks>A double dart wider than 1 1/4 in (3.2 cm) does not lie flat: what is more comes in at the side, and where that is too much the body is refused, since it wants seams down the
/// front and the back.</remarks>
/// <example><code>
/// BodyMeasurements viola = BodyMeasurements.In(LengthUnit.Centimeter)
///     .With(BodyMeasurement.BustGirth, "88").With(BodyMeasurement.WaistGirth, "70").With(BodyMeasurement.HipGirth, "94");
/// SheathBlock sheath = SheathBlock.For(viola).Draft();
/// sheath.Report.ThrowIfFailed();
/// </code></example>
public sealed class SheathBlock : Block
{
    internal SheathBlock(BlockRecord record, Panel[] panels)
        : base(record, panels)
    {
    }

    /// <summary>The sleeve as its own block; null where there is none.</summary>
    public SleeveBlock? Sleeve => ((SheathDraft)Record.Own!).Sleeve;

    /// <summary>Begins a sheath for a body. Needs its bust girth and waist girth; what else was not measured is assumed, and the report says so.</summary>
    [Pure]
    public static SheathBlockBuilder For(BodyMeasurements body) => new(BuiltInMethods.Sheath.For(Guard.NotNull(body, nameof(body))));

    private protected override Block Remade(Panel[] panels) => new SheathBlock(Record, panels);
}
