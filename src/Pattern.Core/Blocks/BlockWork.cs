using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Work on a block: the draft of a method, or a design that changes what was drafted. Both take measures and settings, go on step by step on a sheet, and promise what holds.</summary>
/// <remarks>Changes while it is worked on; the block that comes of it never does. Once the work is done nothing can be added. Not for use from several threads at once.</remarks>
public abstract partial class BlockWork
{
    private readonly string _by;
    private readonly SettingList _settings;
    private List<string>? _promisedAnew;
    private BlockRecord? _record;

    private protected BlockWork(string by, SettingList settings, IMethodValues values, BlockRecord record, DraftingSheet sheet)
    {
        _by = by;
        _settings = settings;
        Values = values;
        _record = record;
        Sheet = sheet;
    }

    /// <summary>The body that the block is to fit.</summary>
    public BodyMeasurements Body => Open.Body;

    /// <summary>The sheet that is drawn on, and that keeps the steps.</summary>
    public DraftingSheet Sheet { get; }

    internal IMethodValues Values { get; }

    /// <summary>Who works: the name of the method or the design.</summary>
    internal string By => _by;

    private protected string[] PromisedAnew => [.. _promisedAnew ?? []];

    private protected BlockRecord Open => _record ?? throw new ConstructionException(DiagnosticCode.DraftDone, _by);

    /// <summary>Takes a measurement of the body.</summary>
    /// <exception cref="ConstructionException">It was not measured.</exception>
    [Pure]
    public WorkedLength Take(BodyMeasurement measurement)
    {
        Guard.NotNull(measurement, nameof(measurement));
        return WorkedLength.MeasuredMm(measurement.Term, Body.RequireMm(measurement, _by));
    }

    /// <summary>Takes the value of a length.</summary>
    /// <exception cref="ConstructionException">There is no such setting, or nobody gave it a value.</exception>
    [Pure]
    public WorkedLength Take(MethodSetting<Length> setting) => WorkedLength.GivenMm(Guard.NotNull(setting, nameof(setting)).Name, Given(setting).Raw, LengthSource.Setting);

    /// <summary>Takes the value of an angle.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public Angle Take(MethodSetting<Angle> setting) => Angle.FromRadians(Given(setting).Raw);

    /// <summary>Takes a share.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public Ratio Take(MethodSetting<Ratio> setting) => Ratio.FromDecimalFractions(Given(setting).Raw);

    /// <summary>Takes a number of things.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public int Take(MethodSetting<int> setting) => (int)Given(setting).Raw;

    /// <summary>Takes a choice or a text.</summary>
    /// <inheritdoc cref="Take(MethodSetting{Length})"/>
    public string Take(MethodSetting<string> setting) => Given(setting).Text!;

    /// <summary>Whether a setting has a value; where it has none, the method or the design decides.</summary>
    /// <exception cref="ConstructionException">There is no such setting.</exception>
    public bool IsGiven(MethodSetting setting) => Value(setting).IsGiven;

    /// <summary>Says what a table or a law answered, so that the block prints it.</summary>
    /// <param name="purpose">What it was read for, in lower case words, such as <c>shaping</c>.</param>
    /// <param name="reading">The answer.</param>
    public void Read(string purpose, TableReading reading)
        => Open.Readings.Add(new KeyValuePair<string, TableReading>(Guard.Identifier(purpose, nameof(purpose)), Guard.NotNull(reading, nameof(reading))));

    /// <summary>Says something that every sheet of the block prints, such as which half is drawn.</summary>
    /// <param name="sentence">One sentence.</param>
    public void Remark(string sentence) => Open.Remarks.Add(Guard.Name(sentence, nameof(sentence)));

    /// <summary>Promises something of the panels, under a name. It is measured when the work is done, and again whenever panels of the block were changed.</summary>
    /// <remarks>A promise takes the place of the one that has its name already: a design that changes what was promised says so by promising it anew.</remarks>
    /// <param name="promise">What it is about, in lower case words, such as <c>hem</c>.</param>
    /// <param name="measure">Measures the panels of the list, not those that it knows from the work, and adds what it finds.</param>
    public void Check(string promise, Action<CheckList> measure)
    {
        var made = new BlockPromise(Guard.Identifier(promise, nameof(promise)), Guard.NotNull(measure, nameof(measure)));
        List<BlockPromise> promises = Open.Promises;
        int same = promises.FindIndex(other => other.Name == promise);
        if (same < 0)
        {
            promises.Add(made);
        }
        else
        {
            promises[same] = made;
            _promisedAnew ??= [];
            if (!_promisedAnew.Contains(promise))
            {
                _promisedAnew.Add(promise);
            }
        }
    }

    /// <summary>Promises something of the panels that no design will promise anew.</summary>
    /// <inheritdoc cref="Check(string, Action{CheckList})"/>
    public void Check(Action<CheckList> measure) => Open.Promises.Add(new BlockPromise(string.Empty, Guard.NotNull(measure, nameof(measure))));

    private protected BlockRecord Close()
    {
        BlockRecord record = Open;
        _record = null;
        Sheet.Finish();
        return record;
    }

    private SettingValue Given(MethodSetting setting)
    {
        SettingValue value = Value(setting);
        return value.IsGiven ? value : throw new ConstructionException(DiagnosticCode.SettingNotGiven, setting.Name, _by) { Step = "taking a setting" };
    }

    private SettingValue Value(MethodSetting setting) => Values.At(_settings.IndexOf(Guard.NotNull(setting, nameof(setting))));
}
