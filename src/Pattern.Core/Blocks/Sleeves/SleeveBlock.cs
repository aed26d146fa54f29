using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>A sleeve that is set into an armhole: one sleeve, without seam allowance. Immutable.</summary>
/// <remarks>Front and back of its head are as long as front and back of the armhole with the ease asked for; below the first notches nothing is eased. Square to its seams at the
/// underarm, level at the crown. The back underarm point is the origin; back to the left, y up.</remarks>
/// <example><code>
/// SleeveBlock sleeve = SleeveBlock.For(armhole, body).WithFit(SleeveFit.Close).WithCapEase(Tape.Inches("1")).Draft();
/// Length height = sleeve.CapHeight;
/// </code></example>
public sealed class SleeveBlock : Block
{
    private readonly SleeveDraft _hand;

    internal SleeveBlock(BlockRecord record, Panel[] panels)
        : base(record, panels)
        => _hand = (SleeveDraft)record.Own!;

    /// <summary>The panel of a sleeve in one piece.</summary>
    public static PanelName SleevePanel => SleeveNames.Sleeve;

    /// <summary>The upper panel of a sleeve in two pieces.</summary>
    public static PanelName TopPanel => SleeveInTwo.Top;

    /// <summary>The under panel of a sleeve in two pieces.</summary>
    public static PanelName UnderPanel => SleeveInTwo.Under;

    /// <summary>The seam of a sleeve in two pieces that lies in front of the arm, on both its panels.</summary>
    public static EdgeName FrontSeam => SleeveInTwo.FrontSeam;

    /// <summary>The seam of a sleeve in two pieces that lies behind the arm, on both its panels.</summary>
    public static EdgeName BackSeam => SleeveInTwo.BackSeam;

    /// <summary>The armhole that it is set into.</summary>
    public Armhole Armhole => _hand.Armhole;

    /// <summary>From the underarm line up to the crown.</summary>
    public Length CapHeight => Length.FromMillimeters(_hand.CapHeightMm);

    /// <summary>How wide the sleeve is at the underarm line.</summary>
    public Length Width => Length.FromMillimeters(_hand.WidthMm);

    /// <summary>How much longer the front of the head is than the front armhole.</summary>
    public Length FrontEase => Length.FromMillimeters(_hand.FrontEaseMm);

    /// <summary>How much longer the back of the head is than the back armhole.</summary>
    public Length BackEase => Length.FromMillimeters(_hand.BackEaseMm);

    /// <summary>From the crown down to the lower edge.</summary>
    public Length SleeveLength => Length.FromMillimeters(_hand.CapHeightMm + _hand.HemDepthMm);

    /// <summary>Begins a sleeve for an armhole and the arm of a body.</summary>
    /// <param name="armhole">The armhole.</param>
    /// <param name="body">Its upper-arm girth, wrist girth and outer arm length count; what was not measured is assumed from bust girth and stature, and the report says so.</param>
    [Pure]
    public static SleeveBlockBuilder For(Armhole armhole, BodyMeasurements body)
        => new(Guard.NotNull(body, nameof(body)), SleeveOptions.Usual with { Armhole = Guard.NotNull(armhole, nameof(armhole)) });

    /// <summary>Begins a sleeve for the armhole of a block with the panels <c>front</c> and <c>back</c>, and the body that it was drafted for.</summary>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">It has no such panels, or they have no armhole.</exception>
    [Pure]
    public static SleeveBlockBuilder For(Block block) => For(Armhole.Of(block), block.Body);

    /// <summary>How the sleeve is set in: its head sewn to both armholes, the crown to the shoulder, with its ease between there and the first notches.</summary>
    /// <remarks>Walk it on the panels of this sleeve and on panels whose armholes carry the notches; <see cref="Armhole.Notched"/> puts them there.</remarks>
    /// <param name="front">The panel that carries the front armhole.</param>
    /// <param name="back">The panel that carries the back armhole.</param>
    /// <exception cref="ConstructionException">A panel has no armhole, or none that begins at its side seam or ends at its shoulder.</exception>
    [Pure]
    public SeamPlan SeamsInto(Panel front, Panel back) => SleeveSetting.Of(_hand, Guard.NotNull(front, nameof(front)), Guard.NotNull(back, nameof(back)));

    /// <inheritdoc cref="Block.WithPanel"/>
    [Pure]
    public new SleeveBlock WithPanel(Panel panel) => (SleeveBlock)base.WithPanel(panel);

    /// <inheritdoc cref="Block.WithPanels"/>
    [Pure]
    public new SleeveBlock WithPanels(IEnumerable<Panel> panels) => (SleeveBlock)base.WithPanels(panels);

    /// <summary>Returns a builder that says everything as this sleeve was drafted, to change something and draft again.</summary>
    [Pure]
    public new SleeveBlockBuilder ToBuilder() => new(Body, _hand.Options);

    private protected override Block Remade(Panel[] panels) => new SleeveBlock(Record, panels);
}
