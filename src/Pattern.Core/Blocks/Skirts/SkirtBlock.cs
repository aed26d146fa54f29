using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>A skirt block: the plain fitted skirt of one body, half of it, without seam allowance. Immutable.</summary>
/// <remarks>Drafted by its steps on a sheet, then trued exactly: with the darts closed the waistline is one smooth curve of the asked
/// length, square to centre and side, and the side seams match. x runs from the centre back to the centre front, y up from the waist level.</remarks>
/// <example><code>
/// SkirtBlock block = SkirtBlock.For(body).WithHipEase(Tape.Inches("1")).WithLength(Tape.Inches("26")).Draft();
/// block.Report.ThrowIfFailed();
/// </code></example>
public sealed class SkirtBlock : Block
{
    private readonly SkirtDraft _hand;

    internal SkirtBlock(BlockRecord record, Panel[] panels)
        : base(record, panels)
        => _hand = (SkirtDraft)record.Own!;

    /// <summary>The back panel, from the centre back to the side seam.</summary>
    public Panel Back => FindPanel(PanelName.Back);

    /// <summary>The front panel, from the side seam to the centre front.</summary>
    public Panel Front => FindPanel(PanelName.Front);

    /// <summary>What the shaping table said for this body, and which row served.</summary>
    public ShapingReading Shaping => _hand.Reading;

    /// <summary>The waistline that the seam line follows.</summary>
    public Waistline Waistline => Options.Waistline;

    /// <summary>What the block measures more than the body around the waist.</summary>
    public Length WaistEase => Length.FromMillimeters(Options.WaistEaseMm);

    /// <summary>What the block measures more than the body around the hip.</summary>
    public Length HipEase => Length.FromMillimeters(Options.HipEaseMm);

    /// <summary>From the waist level to the hem, straight down.</summary>
    public Length SkirtLength => Length.FromMillimeters(Options.LengthMm);

    /// <summary>The levels below the waist, all given.</summary>
    public SkirtLevels Levels => _hand.Depths.Levels;

    /// <summary>How far hem and centre back come in; at the centre back waist no more than there was to take in.</summary>
    public SkirtFit Fit => _hand.Fit;

    /// <summary>Begins a skirt block for a body. Needs its waist girth and hip girth.</summary>
    [Pure]
    public static SkirtBlockBuilder For(BodyMeasurements body) => new(Guard.NotNull(body, nameof(body)), SkirtOptions.UsualIn(body.Unit));

    /// <inheritdoc cref="Block.WithPanel"/>
    [Pure]
    public new SkirtBlock WithPanel(Panel panel) => (SkirtBlock)base.WithPanel(panel);

    /// <inheritdoc cref="Block.WithPanels"/>
    [Pure]
    public new SkirtBlock WithPanels(IEnumerable<Panel> panels) => (SkirtBlock)base.WithPanels(panels);

    /// <summary>Returns a builder that says everything as this block was drafted, to change something and draft again.</summary>
    [Pure]
    public new SkirtBlockBuilder ToBuilder() => new(Body, Options);

    internal SkirtOptions Options => _hand.Options;

    private protected override Block Remade(Panel[] panels) => new SkirtBlock(Record, panels);
}
