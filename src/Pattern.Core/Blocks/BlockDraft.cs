using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>One draft under way: what a method takes its measures from, the sheet that it draws on, and where it puts what it has made.</summary>
public sealed class BlockDraft : BlockWork
{
    private readonly DraftingMethod _method;
    private readonly List<Panel> _panels = new(4);
    private readonly List<int> _times = new(4);

    internal BlockDraft(DraftingMethod method, BodyMeasurements body, IMethodValues values, DraftingSheet sheet)
        : base(
            method.Name,
            method.SettingsRaw,
            values,
            new BlockRecord(body) { Method = method, Values = values, Sheet = sheet, Landmarks = sheet.Landmarks, SheetLines = sheet.Lines },
            sheet)
        => _method = method;

    /// <summary>What is to be kept for the method's own kind of block.</summary>
    internal object? Own
    {
        set => Open.Own = value;
    }

    /// <summary>Names a measure that the hand draft and the finished panels should both have, so that the block can say what truing changed and what a tape would do.</summary>
    /// <remarks>To promise that the panels have it, use <see cref="BlockWork.Check(string, Action{CheckList})"/>.</remarks>
    /// <param name="what">What is measured, in lower case words, such as <c>closed waist</c>.</param>
    /// <param name="place">The panel, or <c>block</c> where the measure spans several.</param>
    /// <param name="byHand">What the hand draft measures.</param>
    /// <param name="target">What it should be.</param>
    /// <param name="trued">Measures the panels of the list.</param>
    public void Aim(string what, string place, Length byHand, Length target, Func<CheckList, Length> trued)
    {
        Guard.NotNull(trued, nameof(trued));
        AimMm(Guard.Name(what, nameof(what)), Guard.Name(place, nameof(place)), Guard.Millimetres(byHand, nameof(byHand)), Guard.Millimetres(target, nameof(target)), list => trued(list).Millimeters);
    }

    /// <summary>Adds a finished panel that stands once in the garment.</summary>
    /// <exception cref="ConstructionException">There is a panel of that name already.</exception>
    public void Add(Panel panel) => Add(panel, 1);

    /// <summary>Adds a finished panel.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="times">How often it stands in the garment, its mirror images counted: 2 for one half of a front. 1 to 99.</param>
    /// <exception cref="ConstructionException">There is a panel of that name already.</exception>
    public void Add(Panel panel, int times)
    {
        Guard.NotNull(panel, nameof(panel));
        Guard.InRange(times, 1, 99, nameof(times));
        _ = Open;
        if (_panels.Exists(drafted => drafted.Name == panel.Name))
        {
            throw new ConstructionException(DiagnosticCode.PanelDraftedTwice, _method.Name, panel.Name) { Landmark = panel.Name.Text };
        }

        _panels.Add(panel);
        _times.Add(times);
    }

    /// <summary>A refusal with a reason of the method's own, to throw where it cannot draft this body: <c>throw draft.Refusal(...)</c>.</summary>
    /// <param name="reason">One sentence or two, such as <c>The side gores would narrow from waist to hip.</c></param>
    /// <param name="measured">What this body measures, or would be drawn with.</param>
    /// <param name="allowed">What the method allows there.</param>
    [Pure]
    public ConstructionException Refusal(string reason, Length measured, Length allowed)
        => new(DiagnosticCode.MethodDeclines, _method.Name, MessageRegistry.Whole(Guard.Name(reason, nameof(reason))), measured, allowed)
        {
            Step = FormattableString.Invariant($"step {Sheet.Steps.Count + 1}"),
            Measured = measured,
            Allowed = allowed,
        };

    /// <summary>Says what is sewn to what, and promises that it fits.</summary>
    public void Seams(SeamPlan plan)
    {
        Guard.NotNull(plan, nameof(plan));
        Seams(plan, list => plan.Check(list, list.PanelsRaw));
    }

    /// <summary>Says where truing left a landmark. It stands elsewhere as drawn by hand; both are kept. A landmark that a panel carries needs no saying.</summary>
    public void Trued(LandmarkName landmark, Point2D position) => Open.Moved.Add((Guard.NotNull(landmark, nameof(landmark)), position));

    /// <summary>Names another way in which the block could be drafted. It is drafted when somebody asks for it.</summary>
    /// <param name="name">Lower case words, such as <c>level waistline</c>.</param>
    /// <param name="change">What is set otherwise.</param>
    /// <param name="edges">The edges that a drawing shows of it; all where none is named.</param>
    public void Alternative(string name, Func<BlockBuilder, BlockBuilder> change, params EdgeName[] edges)
        => Open.Alternatives.Add(new AlternativePlan(Guard.Identifier(name, nameof(name)), Guard.NotNull(change, nameof(change)), [.. Guard.NotNull(edges, nameof(edges))]));

    /// <summary>With the promise made once for all drafts of the plan.</summary>
    internal void Seams(SeamPlan plan, Action<CheckList> promise)
    {
        Open.Seams = plan;
        Check(BlockRecord.SeamsPromise, promise);
    }

    internal void Alternative(AlternativePlan plan) => Open.Alternatives.Add(plan);

    internal void AimMm(string what, string place, double byHandMm, double targetMm, Func<CheckList, double> measure)
        => Open.Aims.Add(new BlockAim(what, place, byHandMm, targetMm, measure));

    /// <summary>Ends the draft; nothing can be added to it any more.</summary>
    internal (BlockRecord Record, Panel[] Panels) Finish()
    {
        if (_panels.Count == 0)
        {
            throw new ConstructionException(DiagnosticCode.DraftWithoutPanels, _method.Name);
        }

        BlockRecord record = Close();
        record.Times = [.. _times];
        return (record, _panels.ToArray());
    }

    /// <summary>What the draft aimed at so far, whether or not it can be ended.</summary>
    internal List<BlockAim> AimsSoFar => Open.Aims;

    /// <summary>What is drafted, and how far it is.</summary>
    public override string ToString()
        => FormattableString.Invariant($"draft of {_method}: {Sheet}");
}
