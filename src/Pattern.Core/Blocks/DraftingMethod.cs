using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>A way to draft a block from a body. The library's own are in <see cref="BuiltInMethods"/>; derive from this class, or call <see cref="Of"/>, for one of yours.</summary>
/// <remarks>Whatever a method drafts is a <see cref="Block"/>, and gets all that any block gets: drawing, steps, report, pieces, files. A method holds nothing that changes.</remarks>
/// <example><code>
/// MethodSetting&lt;Length&gt; length = MethodSetting.OfLength("length", usual: Tape.Inches("20"), least: Tape.Inches("5"), most: Tape.Inches("60"));
/// DraftingMethod square = DraftingMethod.Of("square cloth", "1", draft =>
/// {
///     WorkedLength side = draft.Take(length);
///     Landmark corner = draft.Sheet.Mark(LandmarkName.Of("corner"), Point2D.Origin);
///     Landmark right = draft.Sheet.SquareAcross(corner, Across.Right, side, LandmarkName.Of("right"));
///     Landmark below = draft.Sheet.SquareDown(right, side, LandmarkName.Of("below"));
///     Landmark left = draft.Sheet.SquareDown(corner, side, LandmarkName.Of("left"));
///     draft.Add(Panel.Named(PanelName.Of("cloth"))
///         .WithEdge(EdgeName.Of("top"), EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(corner.Position, right.Position)))
///         .WithEdge(EdgeName.Of("right"), EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(right.Position, below.Position)))
///         .WithEdge(EdgeName.Of("bottom"), EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(below.Position, left.Position)))
///         .WithEdge(EdgeName.Of("left"), EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(left.Position, corner.Position)))
///         .Make());
/// }, length);
/// Block cloth = square.For(body).With(length, Tape.Inches("24")).Draft();
/// </code></example>
public abstract class DraftingMethod : BlockProcedure
{
    // The base has no protected member of its own: what a block is made by is either of the two.
#pragma warning disable RS0022
    /// <summary>Describes a method.</summary>
    /// <param name="name">What its blocks are called: lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <param name="version">Another one whenever it drafts otherwise than before; not empty.</param>
    /// <param name="settings">What its user may choose.</param>
    /// <exception cref="ArgumentException">The name is unusable, or two settings have one name.</exception>
    protected DraftingMethod(string name, string version, params MethodSetting[] settings)
        : base(name, version, settings)
    {
    }
#pragma warning restore RS0022

    /// <summary>Makes a method out of a piece of a script.</summary>
    /// <param name="name">What its blocks are called.</param>
    /// <param name="version">Another one whenever it drafts otherwise than before.</param>
    /// <param name="draft">Drafts one block.</param>
    /// <param name="settings">What its user may choose.</param>
    /// <exception cref="ArgumentException">The name is unusable, or two settings have one name.</exception>
    [Pure]
    public static DraftingMethod Of(string name, string version, Action<BlockDraft> draft, params MethodSetting[] settings)
        => new ScriptedMethod(name, version, Guard.NotNull(draft, nameof(draft)), settings);

    /// <summary>Begins a block for a body, every setting as usual.</summary>
    [Pure]
    public BlockBuilder For(BodyMeasurements body) => new(this, Guard.NotNull(body, nameof(body)), UsualValuesIn(body.Unit));

    internal virtual IMethodValues UsualValuesIn(LengthUnit unit) => ListedValues.UsualOf(Settings, unit);

    /// <summary>Drafts one block: takes measures and settings, draws on the sheet, adds panels, promises what must hold of them.</summary>
    /// <exception cref="ConstructionException">This body cannot be drafted with these settings.</exception>
    protected abstract void Draft(BlockDraft draft);

    internal Block Draft(BodyMeasurements body, IMethodValues values)
    {
        var draft = new BlockDraft(this, body, values, new DraftingSheet());
        Draft(draft);
        (BlockRecord record, Panels.Panel[] panels) = draft.Finish();
        return Make(record, panels);
    }

    /// <summary>What the hand draft aims at when every distance is read off a tape.</summary>
    internal List<BlockAim> AimsOffTape(BodyMeasurements body, IMethodValues values, TapeStep tape, int expected)
    {
        var draft = new BlockDraft(this, body, values, new DraftingSheet(tape));
        try
        {
            Draft(draft);
        }
        catch (ConstructionException) when (draft.AimsSoFar.Count >= expected)
        {
            // The hand draft is complete; only truing refused it.
        }

        return draft.AimsSoFar;
    }

    /// <summary>The draft with every distance laid off to the nearest mark of a tape: the sheet as far as it was drawn, and the block where it came to one.</summary>
    internal (DraftingSheet Sheet, Block? Block) DraftOffTape(BodyMeasurements body, IMethodValues values, TapeStep tape)
    {
        var draft = new BlockDraft(this, body, values, new DraftingSheet(tape));
        try
        {
            Draft(draft);
            (BlockRecord record, Panels.Panel[] panels) = draft.Finish();
            return (draft.Sheet, Make(record, panels));
        }
        catch (ConstructionException)
        {
            return (draft.Sheet, null);
        }
    }

    internal virtual Block Make(BlockRecord record, Panels.Panel[] panels) => new(record, panels);

    private sealed class ScriptedMethod(string name, string version, Action<BlockDraft> draft, MethodSetting[] settings) : DraftingMethod(name, version, settings)
    {
        protected override void Draft(BlockDraft on) => draft(on);
    }
}
