using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>What stands on a step sheet, in the language and for the use that was asked for; no file format.</summary>
internal sealed partial class StepSheetContent
{
    private readonly StepSheet _sheet;
    private readonly Block _block;
    private readonly TapeStep _tape;
    private readonly Phrasebook _book;
    private readonly HashSet<string> _asked = [];
    private readonly TapeFigures _figures;
    private readonly NamedFigures _named;
    private readonly HashSet<string> _told = [];
    private readonly List<LessonPart> _parts = [];

    private StepSheetContent(StepSheet sheet)
    {
        _sheet = sheet;
        _block = sheet.Block;
        _tape = sheet.Tape;
        _book = sheet.Phrases.Recording(_asked);
        _figures = new TapeFigures(_tape, TapeStyle.Plain);
        _named = new NamedFigures(Step.FineEnough(_tape)) { LeavesBlank = LeavesBlank, PrintsFormulas = sheet.IsForm, Book = _book };
    }

    private bool LeavesBlank => _sheet.IsExercise || _sheet.IsForm;

    private bool HasRounding => !LeavesBlank && _block.Steps.Count > 0 && _block.TruingChanges.Count > 0;

    private bool HasAdvice => !_sheet.IsForm && _block.Report.Advice.Any();

    /// <summary>The sheet, ready to be written.</summary>
    internal static LessonPage Of(StepSheet sheet) => new StepSheetContent(sheet).Compose();

    /// <summary>Every phrase that the sheet asks its language for, in English.</summary>
    internal static IReadOnlyCollection<string> PhrasesOf(StepSheet sheet)
    {
        var content = new StepSheetContent(sheet);
        content.Compose();
        return content._asked;
    }

    private LessonPage Compose()
    {
        (string kind, string intro) = Use();
        string heading = Upper(_book.Say(_block.Method.Name)) + string.Concat(_block.Designs.Select(design => ", " + _book.Say(design.Name)));
        string? name = _sheet.IsForm ? null : _block.Body.Name;
        string title = name is null ? heading : _book.Say("{block} for {name}", ("block", heading), ("name", name));
        Add(LessonTitle.Of(heading, name, _book));
        Paragraph(intro);
        if (_sheet.IsForm)
        {
            Paragraph(_book.Say(
                "The steps and pictures are those of one body: {measurements}. For another body a method may take other steps: where yours differs much, have the block drafted for it.",
                ("measurements", _book.List(BlockRows.Measurements(_block, _figures).Select(row => _book.Say("{setting} {value}", ("setting", _book.Say(row.Label)), ("value", row.Value)))))));
        }

        if (LeavesBlank)
        {
            Add(new LessonFields([_book.Say("Name"), _book.Say("Date")]));
        }

        int contents = _parts.Count;
        AddGiven();
        AddWorkings();
        AddSteps();
        AddFinished(title);
        AddChecks();
        AddRounding();
        AddAdvice();
        AddWords();
        AddCautions();
        _parts.Insert(contents, Contents());
        return new LessonPage(_book.Say("{kind}: {title}", ("kind", kind), ("title", title)), _book, _parts);
    }

    private (string Kind, string Intro) Use()
        => _sheet.IsForm ? (_book.Say("Form to fill in"), _book.Say("Form to fill in: measure, write your own figures into the empty column, work out the others from them, and then draw."))
        : _sheet.IsExercise ? (_book.Say("Exercise sheet"), _book.Say("Exercise sheet: work out each figure, write it down, then draw. The answer key is the step sheet of the same block."))
        : (_book.Say("Step sheet"), _book.Say(
            "Step sheet. A figure after ~ is rounded: to {fine} where a line is measured or a curve guided, elsewhere to {coarse} or finer. All others are exact.",
            ("fine", FindingLines.FinestOf(_tape).ToString()),
            ("coarse", _tape.ToString())));

    private LessonContents Contents()
    {
        var entries = new List<(string Id, string Words)> { ("given", _book.Say("Measurements")) };
        if (_block.Steps.Count > 0)
        {
            entries.Add((IdOf(_block.Steps[0]), _book.Say("Steps 1 to {last}", ("last", Number(_block.Steps.Count)))));
            entries.AddRange(_block.Steps.Where(step => step.Number % 10 == 0).Select(step => (IdOf(step), _book.Say("Step {number}", ("number", Number(step.Number))))));
        }

        foreach (LessonHeading heading in _parts.OfType<LessonHeading>().Concat(_parts.OfType<LessonBox>().SelectMany(box => box.Parts).OfType<LessonHeading>()))
        {
            if (heading.Id is "finished" or "checks" or "words" or "advice" or "cautions")
            {
                entries.Add((heading.Id, heading.Words));
            }
            else if (heading.Id == "rounding")
            {
                entries.Add((heading.Id, _book.Say("What rounding does")));
            }
        }

        return new LessonContents(_book.Say("Contents:"), entries);
    }

    private void AddFinished(string title)
    {
        Heading("finished", "Finished block");
        string words = _book.Say("{title}, finished: {panels}.", ("title", title), ("panels", _book.List(_block.Panels.Select(panel => _book.Say(panel.Name.Text)))));
        Add(new LessonFigure(StepPictures.Finished(_block, words), "finished"));
        Paragraph(_book.Say("Small pictures: never cut from them."));
        foreach (string sentence in BlockEnding.Of(_block, _tape, _book, LeavesBlank))
        {
            Paragraph(sentence);
        }
    }

    private void AddChecks()
    {
        Heading("checks", "Check your drawing");
        Paragraph(
            !_block.Report.Passed && !_sheet.IsForm
                ? _book.Say("DO NOT CUT: {failed} of {count} checks FAILED.", ("failed", Number(_block.Report.Failures.Count())), ("count", Number(_block.Report.CheckCount))) + " " + _book.Say("Do not cut from this block.")
            : _sheet.IsForm ? _book.Say("Write down what each should measure by your own figures, then measure it along the seam lines, darts closed.")
            : _book.Say("Measure these along the seam lines, darts closed."));
        Table(
            ["What", "Should be", "Yours"],
            _block.Report.Findings.Where(finding => finding is { Advice: null, Kind: FindingKind.Length, Relation: FindingRelation.Equal } && finding.RawTarget != 0)
                .Select(finding => (IReadOnlyList<string>)[Where(finding), LeavesBlank ? WorkedText.Blank : FindingLines.Fine(finding.RawTarget, _tape, _book), WorkedText.Blank]));
    }

    // A sheet that rounds each instruction owes its reader this: the errors do not simply add up.
    private void AddRounding()
    {
        if (!HasRounding)
        {
            return;
        }

        Add(new LessonHeading("rounding", _book.Say("What rounding every distance to {mark} does to the hand draft, all together", ("mark", _tape.ToString()))));
        Paragraph(_book.Say("Of the hand draft, before its lines are moved and drawn again: nothing to measure on the finished draft."));
        Table(
            ["What", "Not rounded", "Off the tape", "Target"],
            _block.ReadOffTape(_tape).Select(effect => (IReadOnlyList<string>)
                [Where(effect), FindingLines.Fine(effect.RawBefore, _tape, _book), FindingLines.Fine(effect.RawMeasured, _tape, _book), FindingLines.Fine(effect.RawTarget, _tape, _book)]));
    }

    private void AddAdvice()
    {
        if (!HasAdvice)
        {
            return;
        }

        Heading("advice", "Advice");
        foreach (Finding finding in _block.Report.Advice)
        {
            Paragraph(_book.Say("{what}: {reason} {remedy}", ("what", Where(finding)), ("reason", _book.Say(finding.Advice!.Reason)), ("remedy", _book.Say(finding.Advice.Remedy))));
        }
    }

    // Those that stand on this sheet.
    private void AddWords()
    {
        string asked = string.Join("\n", _asked);
        (string Word, string Meaning)[] words = [.. StepGlossary.FoundIn(asked)];
        if (words.Length > 0)
        {
            Heading("words", "Words");
            Table([], words.Select(word => (IReadOnlyList<string>)[_book.Say(word.Word), _book.Say(word.Meaning)]));
        }
    }

    private void AddCautions() => Add(new LessonBox(
        [new LessonHeading("cautions", _book.Say("Cautions")), .. Cautions.OfCutting.Select(caution => new LessonParagraph(_book.Say(caution)))]));

    private string Where(Finding finding) => _book.Say("{what}, {where}", ("what", _book.Say(finding.Check)), ("where", _book.Say(finding.Place)));

    private void Add(LessonPart part) => _parts.Add(part);

    private void Heading(string? id, string english) => Add(new LessonHeading(id, _book.Say(english)));

    private void Paragraph(string words) => Add(new LessonParagraph(words));

    private void Table(IEnumerable<string> columns, IEnumerable<IReadOnlyList<string>> rows) => Add(new LessonTable([.. columns.Select(_book.Say)], [.. rows]));

    private static string IdOf(Step step) => "step-" + Number(step.Number);

    private static string Upper(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words.Substring(1);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
