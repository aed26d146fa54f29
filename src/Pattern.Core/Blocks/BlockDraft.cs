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
/// <remarks>Changes while it is drafted on; the block that comes of it never does. Once the method is done nothing can be added. Not for use from several threads at once.</remarks>
public sealed class BlockDraft
{
    private readonly DraftingMethod _method;
    private readonly List<Panel> _panels = new(4);
    private BlockRecord? _record;

    internal BlockDraft(DraftingMethod method, BodyMeasurements body, IMethodValues values, DraftingSheet sheet)
    {
        _method = method;
        Body = body;
        Values = values;
        Sheet = sheet;
        _record = new BlockRecord(body) { Method = method, Values = values, Steps = sheet.Steps, Landmarks = sheet.Landmarks, SheetLines = sheet.Lines };
    }

    /// <summary>The body that the block is to fit.</summary>
    public BodyMeasurements Body { get; }

    /// <summary>The sheet that the block is drafted on.</summary>
    public DraftingSheet Sheet { get; }

    internal IMethodValues Values { get; }

    /// <summary>What is to be kept for the method's own kind of block.</summary>
    internal object? Own
    {
        set => Open.Own = value;
    }

    private BlockRecord Open => _record ?? throw new ConstructionException(DiagnosticCode.DraftDone, _method.Name);

    /// <summary>Takes a measurement of the body.</summary>
    /// <exception cref="ConstructionException">It was not measured.</exception>
    [Pure]
    public WorkedLength Take(BodyMeasurement measurement)
    {
        Guard.NotNull(measurement, nameof(measurement));
        return WorkedLength.MeasuredMm(measurement.Term, Body.RequireMm(measurement, _method.Name));
    }

    /// <summary>Takes the value of a length.</summary>
    /// <exception cref="ConstructionException">The method has no such setting, or nobody gave it a value.</exception>
    [Pure]
    public WorkedLength Take(MethodSetting<Length> setting) => WorkedLength.GivenMm(Guard.NotNull(setting, nameof(setting)).Name, Given(setting).Raw);

    /// <summary>Takes the value of an angle.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public Angle Take(MethodSetting<Angle> setting) => Angle.FromRadians(Given(setting).Raw);

    /// <summary>Takes a number of things.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public int Take(MethodSetting<int> setting) => (int)Given(setting).Raw;

    /// <summary>Takes a choice or a text.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public string Take(MethodSetting<string> setting) => Given(setting).Text!;

    /// <summary>Whether a setting has a value; where it has none, the method decides.</summary>
    /// <exception cref="ConstructionException">The method has no such setting.</exception>
    public bool IsGiven(MethodSetting setting) => Value(setting).IsGiven;

    /// <summary>Says what a table or a law answered, so that the block prints it.</summary>
    /// <param name="purpose">What it was read for, in lower case words, such as <c>shaping</c>.</param>
    /// <param name="reading">The answer.</param>
    public void Read(string purpose, TableReading reading)
        => Open.Readings.Add(new KeyValuePair<string, TableReading>(Guard.Identifier(purpose, nameof(purpose)), Guard.NotNull(reading, nameof(reading))));

    /// <summary>Says something that every sheet of the block prints, such as which half is drawn.</summary>
    /// <param name="sentence">One sentence.</param>
    public void Remark(string sentence) => Open.Remarks.Add(Guard.Name(sentence, nameof(sentence)));

    /// <summary>Names a measure that the hand draft and the finished panels should both have, so that the block can say what truing changed and what a tape would do.</summary>
    /// <remarks>To promise that the panels have it, use <see cref="Check"/>.</remarks>
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

    /// <summary>Adds a finished panel.</summary>
    /// <exception cref="ConstructionException">There is a panel of that name already.</exception>
    public void Add(Panel panel)
    {
        Guard.NotNull(panel, nameof(panel));
        _ = Open;
        if (_panels.Exists(drafted => drafted.Name == panel.Name))
        {
            throw new ConstructionException(DiagnosticCode.PanelDraftedTwice, _method.Name, panel.Name) { Landmark = panel.Name.Text };
        }

        _panels.Add(panel);
    }

    /// <summary>Says what is sewn to what, and promises that it fits.</summary>
    public void Seams(SeamPlan plan)
    {
        Open.Seams = Guard.NotNull(plan, nameof(plan));
        Open.Promises.Add(list => plan.Check(list, list.PanelsRaw));
    }

    /// <summary>Promises something of the panels. It is measured when the draft is done, and again whenever panels of the block were changed.</summary>
    /// <param name="promise">Measures the panels of the list, not those that it knows from the draft, and adds what it finds.</param>
    public void Check(Action<CheckList> promise) => Open.Promises.Add(Guard.NotNull(promise, nameof(promise)));

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
        Open.Promises.Add(promise);
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

        BlockRecord record = Open;
        _record = null;
        Sheet.Finish();
        return (record, _panels.ToArray());
    }

    /// <summary>What the draft aimed at so far, whether or not it can be ended.</summary>
    internal List<BlockAim> AimsSoFar => Open.Aims;

    private SettingValue Given(MethodSetting setting)
    {
        SettingValue value = Value(setting);
        return value.IsGiven ? value : throw new ConstructionException(DiagnosticCode.SettingNotGiven, setting.Name, _method.Name) { Step = "taking a setting" };
    }

    private SettingValue Value(MethodSetting setting) => Values.At(_method.IndexOf(Guard.NotNull(setting, nameof(setting))));
}
