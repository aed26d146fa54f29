using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>A gown block with a seam at the level waist: bodice, skirt and sleeve, half of it, without seam allowance. Immutable.</summary>
/// <remarks>The skirt is drafted to the bodice: its waist measures the same, and each of its darts meets the one above it, which point at the bust and so rule. Panels <c>back</c>,
/// <c>front</c>, <c>skirt back</c>, <c>skirt front</c> and, where it has sleeves, <c>sleeve</c>.</remarks>
/// <example><code>
/// BodyMeasurements viola = BodyMeasurements.In(LengthUnit.Centimeter)
///     .With(BodyMeasurement.BustGirth, "88").With(BodyMeasurement.WaistGirth, "68").With(BodyMeasurement.HipGirth, "94");
/// GownBlock gown = GownBlock.For(viola).WithSkirtLength(Length.FromCentimeters(60)).Draft();
/// gown.Report.ThrowIfFailed();
/// </code></example>
public sealed class GownBlock : Block
{
    private readonly GownDraft _gown;

    internal GownBlock(BlockRecord record, Panel[] panels)
        : base(record, panels)
        => _gown = (GownDraft)record.Own!;

    /// <summary>The panel of the skirt behind.</summary>
    public static PanelName SkirtBack => GownNames.SkirtBack;

    /// <summary>The panel of the skirt in front.</summary>
    public static PanelName SkirtFront => GownNames.SkirtFront;

    /// <summary>The skirt as its own block, with the steps that it is drafted by.</summary>
    public SkirtBlock Skirt => _gown.Skirt;

    /// <summary>The sleeve as its own block, with the steps that it is drafted by; null where there is none.</summary>
    public SleeveBlock? Sleeve => _gown.Sleeve;

    /// <summary>Begins a gown for a body. Needs its bust girth and waist girth; what else was not measured is assumed, and the report says so.</summary>
    [Pure]
    public static GownBlockBuilder For(BodyMeasurements body) => new(BuiltInMethods.Gown.For(Guard.NotNull(body, nameof(body))));

    /// <inheritdoc cref="Block.WithPanel"/>
    [Pure]
    public new GownBlock WithPanel(Panel panel) => (GownBlock)base.WithPanel(panel);

    /// <inheritdoc cref="Block.WithPanels"/>
    [Pure]
    public new GownBlock WithPanels(IEnumerable<Panel> panels) => (GownBlock)base.WithPanels(panels);

    private protected override Block Remade(Panel[] panels) => new GownBlock(Record, panels);
}
