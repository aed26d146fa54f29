using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>A bodice block: close-fitting, to the waist, half of it, without seam allowance. Immutable.</summary>
/// <remarks>Bust girth and waist girth are needed; every other measurement is taken where it was measured, else assumed by a law that the report names, with the advice to measure it.
/// x runs from the centre back to the centre front, y up from the waist. Every dart of the front is sewn to a point that stands off the bust point; the bust point itself, about which its
/// darts turn, is kept as <see cref="BustPoint"/>.</remarks>
/// <example><code>
/// BodyMeasurements viola = BodyMeasurements.In(LengthUnit.Centimeter)
///     .With(BodyMeasurement.BustGirth, "88").With(BodyMeasurement.WaistGirth, "68").With(BodyMeasurement.BackNeckPointToWaist, "41");
/// BodiceBlock bodice = BodiceBlock.For(viola).Draft();
/// bodice.Report.ThrowIfFailed();
/// </code></example>
public sealed class BodiceBlock : Block
{
    private readonly BodiceDraft _hand;

    internal BodiceBlock(BlockRecord record, Panel[] panels)
        : base(record, panels)
        => _hand = (BodiceDraft)record.Own!;

    /// <summary>The back panel, from the centre back to the side seam.</summary>
    public Panel Back => FindPanel(PanelName.Back);

    /// <summary>The front panel, from the side seam to the centre front.</summary>
    public Panel Front => FindPanel(PanelName.Front);

    /// <summary>The fullest point of the bust, about which the darts of the front turn; they are sewn to points that stand off it.</summary>
    public Point2D BustPoint => _hand.BustPoint.Position;

    /// <summary>What the block measures more than the body around the bust.</summary>
    public Length BustEase => _hand.BustEase.Value;

    /// <summary>What the block measures more than the body around the waist.</summary>
    public Length WaistEase => _hand.WaistEase.Value;

    /// <summary>From the shoulder seam round the arm, back and front together, along the seam line.</summary>
    public Length ArmholeLength => Back.FindEdge(EdgeName.Armhole).SewnLength + Front.FindEdge(EdgeName.Armhole).SewnLength;

    /// <summary>How much longer the front is than the back, from the side neck point to the waist.</summary>
    public Length Balance => Length.FromMillimeters(BodiceChecks.BalanceMm(new CheckList(PanelsRaw)));

    /// <summary>Begins a bodice block for a body. Needs its bust girth and waist girth.</summary>
    [Pure]
    public static BodiceBlockBuilder For(BodyMeasurements body) => new(BuiltInMethods.Bodice.For(Guard.NotNull(body, nameof(body))));

    /// <inheritdoc cref="Block.WithPanel"/>
    [Pure]
    public new BodiceBlock WithPanel(Panel panel) => (BodiceBlock)base.WithPanel(panel);

    /// <inheritdoc cref="Block.WithPanels"/>
    [Pure]
    public new BodiceBlock WithPanels(IEnumerable<Panel> panels) => (BodiceBlock)base.WithPanels(panels);

    private protected override Block Remade(Panel[] panels) => new BodiceBlock(Record, panels);
}
