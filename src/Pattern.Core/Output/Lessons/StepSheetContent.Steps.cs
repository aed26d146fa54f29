using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <content>What the steps start from, and the steps.</content>
internal sealed partial class StepSheetContent
{
    // As deep as a working is printed.
    private const int DeepestWorking = 100;

    private string BlankInUnit => WorkedText.Blank + TapeText.UnitSuffix(_tape, TapeStyle.Plain);

    private void AddGiven()
    {
        Heading("given", "Measurements");
        var rows = new List<IReadOnlyList<string>>();
        List<WorkedLength> constants = LeavesBlank ? Constants() : [];
        foreach ((string label, string value) in BlockRows.Measurements(_block, _figures))
        {
            _told.Add(label);
            rows.Add(_sheet.IsForm ? [_book.Say(label), _book.Say("measured on the body"), BlankInUnit] : [_book.Say(label), value]);
        }

        // A setting of nothing stands in no formula: whoever wants another has the block drafted with it.
        HashSet<string> lengths = [.. _block.Method.PrintedSettings.Where(setting => setting is { Kind: SettingKind.Length, IsGiven: true, Raw: not 0 }).Select(setting => setting.Name)];
        foreach ((string label, string value) in BlockRows.Settings(_block, _figures, _book))
        {
            // Steps may say "skirt length" of what is set as the length: a reader is asked for it once, as the steps say it.
            if (!_told.Add(label) || constants.Exists(figure => figure.Name!.EndsWith(" " + label, StringComparison.Ordinal) && _figures.Of(figure.ValueMm) == value))
            {
                continue;
            }

            rows.Add(!_sheet.IsForm ? [_book.Say(label), value] : lengths.Contains(label) ? [_book.Say(label), Chosen(value), BlankInUnit] : [_book.Say(label), _book.Say("as drafted here"), value]);
        }

        foreach (WorkedLength figure in constants.Where(figure => _told.Add(figure.Name!)))
        {
            string value = _figures.Of(figure.ValueMm);
            rows.Add(_sheet.IsForm ? [_book.Say(figure.Name!), Chosen(value), BlankInUnit] : [_book.Say(figure.Name!), value]);
        }

        Table(_sheet.IsForm ? ["What", "Where it comes from", "Yours"] : [], rows);
        foreach (string remark in _block.Remarks)
        {
            Paragraph(_book.Say(remark));
        }

        foreach (KeyValuePair<string, TableReading> reading in _block.Method.Readings)
        {
            AddReading(reading.Key, reading.Value);
        }
    }

    private string Chosen(string value) => _book.Say("here {value}, or as you choose", ("value", value));

    private void AddReading(string purpose, TableReading reading)
    {
        string heading = Upper(_book.Say(purpose));
        Add(new LessonHeading(null, _sheet.IsForm ? heading : heading + ": " + reading.Describe(_tape, _book)));
        var rows = new List<IReadOnlyList<string>>();
        foreach (WorkedLength length in reading.Figures)
        {
            WorkedLength figure = BlockRows.Said(length);
            _named.WorkOut(figure, (name, working) => rows.Add(_sheet.IsForm ? [name, working, BlankInUnit] : [name, working]));
            if (figure.First is null)
            {
                _named.Add(figure, Step.FineEnough(_tape));
                string name = _book.Say(figure.Name ?? string.Empty);
                rows.Add(_sheet.IsForm
                    ? [name, _book.Say("from the table, for your own figures"), BlankInUnit]
                    : [name, WorkedLength.Given(figure.Value).Describe(_tape)]);
            }
        }

        Table(_sheet.IsForm ? ["What", "How to work it out", "Yours"] : [], rows);
    }

    // What the method gives and nobody could work out: the key has it in its sentences.
    private List<WorkedLength> Constants()
    {
        var found = new List<WorkedLength>();
        var seen = new HashSet<WorkedLength>();
        foreach (WorkedLength figure in _block.Method.Readings.SelectMany(reading => reading.Value.Figures))
        {
            _told.Add(BlockRows.Said(figure).Name ?? string.Empty);
        }

        foreach (WorkedLength length in _block.Steps.SelectMany(step => step.Workings))
        {
            Walk(length, 0);
        }

        return found;

        void Walk(WorkedLength length, int depth)
        {
            if (depth > DeepestWorking || !seen.Add(length))
            {
                return;
            }

            if (length is { Operation: WorkedOperation.Given, Name: not null })
            {
                found.Add(length);
            }

            foreach (WorkedLength operand in length.Operands)
            {
                Walk(operand, depth + 1);
            }
        }
    }

    // What steps lay off or work with under a name: worked out once, and cited by name and figure from there on.
    private void AddWorkings()
    {
        var rows = new List<IReadOnlyList<string>>();
        foreach (WorkedLength length in _block.Steps.SelectMany(step => step.Workings))
        {
            _named.WorkOut(length, (name, working) => rows.Add(_sheet.IsForm ? [name, working, BlankInUnit] : [name, working]));
        }

        if (rows.Count > 0)
        {
            Heading("workings", "Figures worked out before the steps");
            Table(_sheet.IsForm ? ["What", "How to work it out", "Yours"] : [], rows);
        }
    }

    private void AddSteps()
    {
        Heading("steps", "Steps");
        if (_block.Steps.Count == 0)
        {
            Paragraph(_book.Say("This block was read from a file, which keeps no steps. Draft it again for a sheet with steps."));
            return;
        }

        var pictures = new StepPictures(_block, _book);
        Paragraph(_book.Say("In each picture the new lines are heavy and the earlier ones thin. A full dot is a point that the step marks, a ring one that it goes out from."));
        foreach (Step step in _block.Steps)
        {
            foreach (DesignDescription design in _block.Designs.Where(design => design.FirstStep == step.Number))
            {
                Add(new LessonHeading(null, Upper(_book.Say(design.Name))));
            }

            var words = new List<LessonParagraph> { new(step.Describe(_tape, _named)) };
            AddFigures(step, words);
            if (StepGuides.Of(step, _tape, _book) is { } guides)
            {
                words.Add(new(LeavesBlank ? _book.Say(_sheet.IsForm ? "Draw it by eye: guide points belong to one body." : "The answer key has guide points.") : guides));
            }

            if (_sheet.IsForm && step.Workings.Any(IsNoFormula))
            {
                words.Add(new(_book.Say("No formula gives this figure: it was found on the draft of one body. Find yours on your own draft; it may even lie to the other side.")));
            }
            else if (_sheet.IsForm && step.Workings.Any(length => length is { Operation: WorkedOperation.Drawn, Name: not null }))
            {
                words.Add(new(_book.Say("No formula gives this figure: measure it on your own draft.")));
            }

            if (_sheet.ShowsReasons && step.Reason is { } reason)
            {
                words.Add(new(_book.Say("Why: {reason}", ("reason", _book.Say(reason))), LessonTone.Reason));
            }

            Add(new LessonEntry(IdOf(step), _book.Say("Step {number}", ("number", Number(step.Number))), pictures.Of(step), "step-" + Number(step.Number).PadLeft(2, '0'), words));
        }
    }

    private static bool IsNoFormula(WorkedLength length) => length is { Name: null, Operation: WorkedOperation.Drawn or WorkedOperation.Given };

    // In large type: what the tape is held to. What a step only speaks of, and what a hand draft happens to measure before it is trued, is not laid off.
    private void AddFigures(Step step, List<LessonParagraph> words)
    {
        bool draws = step.Marked.Any() || step.Drew.Any();
        bool speaks = !draws && !step.Landmarks.Any();
        foreach (WorkedLength length in step.Workings)
        {
            if (speaks || (!draws && length is { Operation: WorkedOperation.Drawn, Name: not null }))
            {
                continue;
            }

            WorkedText.Describe(length, step.ReadOn(_tape), TapeStyle.Plain, _named, out TapeStep mark);
            string figure = (LeavesBlank ? WorkedText.Blank : WorkedText.Figure(length.ValueMm, mark)) + TapeText.UnitSuffix(mark, TapeStyle.Plain);
            words.Add(new(figure, LessonTone.Figure, length.Name is { } name ? _book.Say(name) : null));
        }
    }
}
