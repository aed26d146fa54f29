using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Threading;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
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
public sealed class SkirtBlock
{
    private readonly SkirtOptions _options;
    private readonly DraftingSheet _sheet;
    private readonly TruingChange[] _changes;
    private readonly Landmark[] _moved;

    // As trued; filled when first asked for.
    private Landmark[]? _landmarks;

    private SkirtBlock(BodyMeasurements body, SkirtOptions options)
    {
        Body = body;
        _options = options;
        _sheet = new DraftingSheet();
        SkirtDraft draft = SkirtDraft.Draw(body, options, _sheet);
        SkirtTruing trued = SkirtTruing.True(draft);
        Back = trued.Back;
        Front = trued.Front;
        Shaping = draft.Reading;
        _changes = trued.Changes;
        _moved = trued.Moved;
        Report = SkirtChecks.Check(Back, Front, draft, options);
    }

    /// <summary>The body that the block fits.</summary>
    public BodyMeasurements Body { get; }

    /// <summary>The back panel, from the centre back to the side seam.</summary>
    public Panel Back { get; }

    /// <summary>The front panel, from the side seam to the centre front.</summary>
    public Panel Front { get; }

    /// <summary>What the shaping table said for this body, and which row served.</summary>
    public ShapingReading Shaping { get; }

    /// <summary>The steps that built the block, in drafting order.</summary>
    public IReadOnlyList<Step> Steps => _sheet.Steps;

    /// <summary>The named points of the draft, in drafting order. Those that truing moved stand where it put them.</summary>
    public IReadOnlyList<Landmark> Landmarks => Volatile.Read(ref _landmarks) ?? (_landmarks = Trued());

    /// <summary>The lines drawn on the way, in drafting order, as drawn by hand before truing.</summary>
    public IReadOnlyList<DraftedLine> ConstructionLines => _sheet.Lines;

    /// <summary>What the hand draft would have been off by, and what truing made of it.</summary>
    public IReadOnlyList<TruingChange> TruingChanges => _changes;

    /// <summary>The proof: every check with what was measured.</summary>
    public CheckReport Report { get; }

    /// <summary>What is sewn to what: the back side seam to the front side seam, without ease, from waist to hip and from hip to hem.</summary>
    /// <remarks>Hold it against the panels after changing them: <c>block.Seams.Check(back, front)</c>.</remarks>
    public SeamPlan Seams => SkirtSeams.Plan;

    /// <summary>The waistline that the seam line follows.</summary>
    public Waistline Waistline => _options.Waistline;

    /// <summary>What the block measures more than the body around the waist.</summary>
    public Length WaistEase => Length.FromMillimeters(_options.WaistEaseMm);

    /// <summary>What the block measures more than the body around the hip.</summary>
    public Length HipEase => Length.FromMillimeters(_options.HipEaseMm);

    /// <summary>From the waist level to the hem, straight down.</summary>
    public Length SkirtLength => Length.FromMillimeters(_options.LengthMm);

    /// <summary>The levels below the waist.</summary>
    public SkirtLevels Levels => _options.Levels;

    /// <summary>How far hem and centre back come in.</summary>
    public SkirtFit Fit => _options.Fit;

    /// <summary>Begins a skirt block for a body. Needs its waist girth and hip girth.</summary>
    [Pure]
    public static SkirtBlockBuilder For(BodyMeasurements body) => new(Guard.NotNull(body, nameof(body)), SkirtOptions.Default);

    /// <summary>Returns a builder that says everything as this block was drafted, to change something and draft again.</summary>
    [Pure]
    public SkirtBlockBuilder ToBuilder() => new(Body, _options);

    /// <summary>Drafts by hand once more with every distance read off a tape, and says what all that rounding does together.</summary>
    /// <remarks>A sheet of steps that rounds each instruction owes its reader this: the errors do not simply add up.</remarks>
    /// <param name="tape">The finest mark that distances are laid off to.</param>
    [Pure]
    public IReadOnlyList<TapeEffect> ReadOffTape(TapeStep tape)
    {
        SkirtDraft exact = SkirtDraft.Draw(Body, _options, new DraftingSheet());
        SkirtDraft rounded = SkirtDraft.Draw(Body, _options, new DraftingSheet(tape));
        double Waist(SkirtDraft draft) => 2 * (draft.Back.HandClosedWaistMm + draft.Front.HandClosedWaistMm);
        double Hip(SkirtDraft draft) => 2 * draft.Sheet.Find(SkirtNames.CentreFrontLowerHip).Position.XMm;
        double Sides(SkirtDraft draft) => draft.Back.HandSideLengthMm - draft.Front.HandSideLengthMm;
        return
        [
            new TapeEffect("closed waist", "block", Waist(exact), Waist(rounded), exact.WaistTargetMm),
            new TapeEffect("hip width", "block", Hip(exact), Hip(rounded), exact.HipTargetMm),
            new TapeEffect("side seam, back less front", "block", Sides(exact), Sides(rounded), 0),
        ];
    }

    internal SkirtOptions Options => _options;

    private Landmark[] Trued()
    {
        Landmark[] trued = [.. _sheet.Landmarks];
        foreach (Landmark moved in _moved)
        {
            trued[moved.Index] = moved;
        }

        return trued;
    }

    internal static SkirtBlock Draft(BodyMeasurements body, SkirtOptions options) => new(body, options);
}
