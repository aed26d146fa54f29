using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>One thing that was done to the draft, with the arithmetic behind it and what it drew. The block is built by its steps.</summary>
/// <remarks>Immutable. The sheet records it: a verb its own, <see cref="DraftingSheet.Note(string, StepWord[])"/> a sentence of your own.</remarks>
public sealed class Step
{
    private readonly DraftingSheet _sheet;
    private readonly StepWord[] _words;

    // How many landmarks and lines stood on the sheet when the step was done; with those of the step before, what it drew.
    private readonly ushort _landmarks;
    private readonly ushort _lines;

    /// <summary>Trusted: the template has a place <c>{0}</c> for each word; no text is formed until it is asked for.</summary>
    internal Step(DraftingSheet sheet, int number, string template, StepWord[] words, string? reason, int landmarks, int lines)
    {
        _sheet = sheet;
        Number = number;
        Template = template;
        _words = words;
        Reason = reason;
        _landmarks = (ushort)landmarks;
        _lines = (ushort)lines;
    }

    /// <summary>The place of the step in drafting order, from 1.</summary>
    public int Number { get; }

    /// <summary>The sentence without its words: <c>Square down from {0}: {1}. Mark {2}.</c> The same for every body, so it can stand for its translations.</summary>
    public string Template { get; }

    /// <summary>What fills the places of the template, in order.</summary>
    public IReadOnlyList<StepWord> Words => _words;

    /// <summary>Why the step is done, a sentence; null where nobody said.</summary>
    public string? Reason { get; }

    /// <summary>The lengths measured off in this step, each with its working.</summary>
    public IEnumerable<WorkedLength> Workings
    {
        get
        {
            foreach (StepWord word in _words)
            {
                if (word.Length is { } length)
                {
                    yield return length;
                }
            }
        }
    }

    /// <summary>The landmarks that the step speaks of, in order.</summary>
    public IEnumerable<LandmarkName> Landmarks
    {
        get
        {
            foreach (StepWord word in _words)
            {
                if (word.Landmark is { } name)
                {
                    yield return name;
                }
            }
        }
    }

    /// <summary>The landmarks that the step marked, in order; often none or one.</summary>
    public IEnumerable<Landmark> Marked
    {
        get
        {
            for (int i = Number == 1 ? 0 : _sheet.Steps[Number - 2]._landmarks; i < _landmarks; i++)
            {
                yield return _sheet.Landmarks[i];
            }
        }
    }

    /// <summary>The lines that the step drew, in order; often none or one.</summary>
    public IEnumerable<DraftedLine> Drew
    {
        get
        {
            for (int i = Number == 1 ? 0 : _sheet.Steps[Number - 2]._lines; i < _lines; i++)
            {
                yield return _sheet.Lines[i];
            }
        }
    }

    /// <summary>The step as one would say it at the table, lengths read off the tape.</summary>
    /// <param name="tapeStep">How finely the tape is read, and in which unit.</param>
    /// <remarks>A step that speaks of a dart reads a tape in inches no more coarsely than in sixteenths: darts are narrow.</remarks>
    public string Describe(TapeStep tapeStep) => Describe(tapeStep, null);

    /// <summary>The lengths that its numbers were worked out from off the sheet, as far as the method says.</summary>
    internal IEnumerable<WorkedLength> WorkedFrom => _sheet.WorkedFromOf(Number);

    /// <summary>Whether the step only lays the tape along what is drawn.</summary>
    internal bool IsTaking => DraftingSheet.IsTaking(Template);

    /// <summary>The panel that the step traces off the sheet, or null.</summary>
    internal string? Traces => Template.StartsWith(DraftingSheet.TracesPanel, StringComparison.Ordinal) ? _words[0].ToString() : null;

    /// <summary>The dart whose legs the step draws, or null.</summary>
    internal (LandmarkName Middle, WorkedLength Intake)? DartLegs
        => DraftingSheet.IsOfLegs(Template) && _words[0].Landmark is { } middle && _words[1].Length is { } intake ? (middle, intake) : null;

    /// <summary>The curve that truing drew again in this step, or null.</summary>
    internal RedrawnCurve? Redrew { get; private init; }

    /// <summary>The step in a text that has printed figures under their names.</summary>
    internal string Describe(TapeStep tapeStep, NamedFigures? figures)
    {
        tapeStep = ReadOn(tapeStep);
        var places = new (string Name, string Value)[_words.Length];
        foreach (int word in InOrder())
        {
            places[word] = places[word].Name is null ? (word.ToString(CultureInfo.InvariantCulture), _words[word].Describe(tapeStep, figures)) : places[word];
        }

        return (figures?.Book ?? Phrasebook.English).Say(Template, places);
    }

    // As they stand in the sentence: a figure that is said twice is worked out where it is said first.
    private IEnumerable<int> InOrder()
    {
        for (int open = Template.IndexOf('{'); open >= 0; open = Template.IndexOf('{', open + 1))
        {
            int close = Template.IndexOf('}', open);
            yield return int.Parse(Template.Substring(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture);
        }
    }

    /// <summary>How many landmarks stood on the sheet when the step was done.</summary>
    internal int MarkedSoFar => _landmarks;

    /// <summary>The mark that the lengths of this step are read to: no coarser than a sixteenth where it speaks of a dart.</summary>
    internal TapeStep ReadOn(TapeStep tapeStep) => SpeaksOfDart() ? FineEnough(tapeStep) : tapeStep;

    internal Landmark Find(LandmarkName name) => _sheet.Find(name);

    internal DraftedLine FindLine(LineName name) => _sheet.FindLine(name);

    internal static TapeStep FineEnough(TapeStep step) => step.IsMetric || step.Parts >= TapeStep.Sixteenth.Parts ? step : TapeStep.Sixteenth;

    private bool SpeaksOfDart()
    {
        foreach (LandmarkName name in Landmarks)
        {
            foreach (Landmark landmark in _sheet.Landmarks)
            {
                if (landmark.Kind is LandmarkKind.DartApex or LandmarkKind.DartMiddle && landmark.Name.Equals(name))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Number and description, read in sixteenths of an inch.</summary>
    public override string ToString() => Number.ToString(CultureInfo.InvariantCulture) + ". " + Describe(TapeStep.Sixteenth);

    internal Step Because(string reason) => new(_sheet, Number, Template, _words, reason, _landmarks, _lines) { Redrew = Redrew };

    internal Step Redrawing(RedrawnCurve curve) => new(_sheet, Number, Template, _words, Reason, _landmarks, _lines) { Redrew = curve };
}
