using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Writes a step sheet as one HTML page.</summary>
internal sealed class StepSheetPage
{
    // As deep as a working is printed.
    private const int DeepestWorking = 100;

    private readonly StepSheet _sheet;
    private readonly Block _block;
    private readonly TapeStep _tape;
    private readonly TapeFigures _figures;
    private readonly NamedFigures _named;
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);
    private readonly StringBuilder _text = new(64 * 1024);

    internal StepSheetPage(StepSheet sheet)
    {
        _sheet = sheet;
        _block = sheet.Block;
        _tape = sheet.Tape;
        _figures = new TapeFigures(_tape, TapeStyle.Plain);
        _named = new NamedFigures(Step.FineEnough(_tape)) { LeavesBlank = sheet.IsExercise };
    }

    private bool HasRounding => !_sheet.IsExercise && _block.Steps.Count > 0 && _block.TruingChanges.Count > 0;

    internal string Write()
    {
        string kind = _sheet.IsExercise ? "Exercise sheet" : "Step sheet";
        _text.Append("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
            .Escaped(kind + ": " + _block.Title).Append("</title>\n<style>\n").Append(StepSheetStyle.Text.Replace("\r\n", "\n")).Append("\n</style>\n</head>\n<body>\n<main>\n<h1>").Escaped(_block.Heading);
        if (_block.Body.Name is { } name)
        {
            // Kept apart, so that a name that runs from right to left turns nothing else around.
            _text.Append(" for <bdi>").Escaped(name).Append("</bdi>");
        }

        _text.Append("</h1>\n");
        Paragraph(_sheet.IsExercise
            ? "Exercise sheet: work out each figure, write it down, then draw. The answer key is the step sheet of the same block."
            : "Step sheet. A figure after ~ is the nearest mark of the tape; all others are exact.");
        if (_sheet.IsExercise)
        {
            _text.Append("<p class=\"fill\"><span>Name</span><span>Date</span></p>\n");
        }

        WriteContents();
        WriteGiven();
        WriteWorkings();
        WriteSteps();
        WriteFinished();
        WriteChecks();
        WriteRounding();
        WriteAdvice();
        WriteCautions();
        return _text.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private void WriteContents()
    {
        _text.Append("<nav aria-label=\"Contents\"><strong>Contents:</strong>");
        Link("given", "Measurements");
        if (_block.Steps.Count > 0)
        {
            Link(IdOf(_block.Steps[0]), "Steps 1 to " + Number(_block.Steps.Count));
            foreach (Step step in _block.Steps.Where(step => step.Number % 10 == 0))
            {
                Link(IdOf(step), "Step " + Number(step.Number));
            }
        }

        Link("finished", "Finished block");
        Link("checks", "Check your drawing");
        if (HasRounding)
        {
            Link("rounding", "What rounding does");
        }

        if (_block.Report.Advice.Any())
        {
            Link("advice", "Advice");
        }

        Link("cautions", "Cautions");
        _text.Append("</nav>\n");

        void Link(string id, string words) => _text.Append(" <a href=\"#").Append(id).Append("\">").Escaped(words).Append("</a>");
    }

    private void WriteGiven()
    {
        Heading("given", "Measurements");
        OpenTable();
        foreach ((string label, string value) in BlockRows.Measurements(_block, _figures).Concat(BlockRows.Settings(_block, _figures)))
        {
            _told.Add(label);
            Row(label, value);
        }

        if (_sheet.IsExercise)
        {
            WriteConstants();
        }

        CloseTable();
        foreach (string remark in _block.Remarks)
        {
            Paragraph(remark);
        }

        foreach (KeyValuePair<string, TableReading> reading in _block.Method.Readings)
        {
            Heading(null, Upper(reading.Key) + ": " + reading.Value.Describe(_tape));
            OpenTable();
            foreach (WorkedLength length in reading.Value.Figures)
            {
                WorkedLength figure = BlockRows.Said(length);
                _named.WorkOut(figure, Row);
                if (figure.First is null)
                {
                    _named.Add(figure, Step.FineEnough(_tape));
                    Row(figure.Name ?? string.Empty, WorkedLength.Given(figure.Value).Describe(_tape));
                }
            }

            CloseTable();
        }
    }

    // What the method gives and nobody could work out: the key has it in its sentences.
    private void WriteConstants()
    {
        var seen = new HashSet<WorkedLength>();
        foreach (WorkedLength figure in _block.Method.Readings.SelectMany(reading => reading.Value.Figures))
        {
            _told.Add(BlockRows.Said(figure).Name ?? string.Empty);
        }

        foreach (WorkedLength length in _block.Steps.SelectMany(step => step.Workings))
        {
            Walk(length, 0);
        }

        void Walk(WorkedLength length, int depth)
        {
            if (depth > DeepestWorking || !seen.Add(length))
            {
                return;
            }

            if (length is { Operation: WorkedOperation.Given, Name: { } name } && _told.Add(name))
            {
                Row(name, _figures.Of(length.ValueMm));
            }

            foreach (WorkedLength operand in length.Operands)
            {
                Walk(operand, depth + 1);
            }
        }
    }

    // What steps lay off or work with under a name: worked out once, and cited by name and figure from there on.
    private void WriteWorkings()
    {
        bool any = false;
        foreach (WorkedLength length in _block.Steps.SelectMany(step => step.Workings))
        {
            _named.WorkOut(length, (name, working) =>
            {
                if (!any)
                {
                    Heading("workings", "Figures worked out before the steps");
                    OpenTable();
                    any = true;
                }

                Row(name, working);
            });
        }

        if (any)
        {
            CloseTable();
        }
    }

    private void WriteSteps()
    {
        if (_block.Steps.Count == 0)
        {
            Heading("steps", "Steps");
            Paragraph("This block was read from a file, which keeps no steps. Draft it again for a sheet with steps.");
            return;
        }

        var pictures = new StepPictures(_block);
        Heading("steps", "Steps");
        Paragraph("In each picture the new lines are heavy and the earlier ones thin. A full dot is a point that the step marks, a ring one that it goes out from.");
        pictures.WriteLines(_text);
        foreach (Step step in _block.Steps)
        {
            foreach (DesignDescription design in _block.Designs.Where(design => design.FirstStep == step.Number))
            {
                Heading(null, Upper(design.Name));
            }

            _text.Append("<section class=\"step\" id=\"").Append(IdOf(step)).Append("\">\n");
            pictures.Write(_text, step);
            _text.Append("<div>\n<h3>Step ").Append(Number(step.Number)).Append("</h3>\n");
            Paragraph(step.Describe(_tape, _named));
            WriteFigures(step);
            if (StepGuides.Of(step, _tape) is { } guides)
            {
                Paragraph(_sheet.IsExercise ? "The answer key has guide points." : guides);
            }

            if (_sheet.ShowsReasons && step.Reason is { } reason)
            {
                Paragraph("Why: " + reason, "why");
            }

            _text.Append("</div>\n</section>\n");
        }
    }

    // In large type: what the tape is held to. What a step only speaks of, and what a hand draft happens to measure before it is trued, is not laid off.
    private void WriteFigures(Step step)
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
            string figure = (_sheet.IsExercise ? WorkedText.Blank : WorkedText.Figure(length.ValueMm, mark)) + TapeText.UnitSuffix(mark, TapeStyle.Plain);
            _text.Append("<p class=\"measure\">");
            if (length.Name is { } name)
            {
                _text.Append("<small>").Escaped(name).Append("</small> ");
            }

            Words(figure);
            _text.Append("</p>\n");
        }
    }

    private void WriteFinished()
    {
        Heading("finished", "Finished block");
        SmallPicture picture = SmallPicture.Of(_block);
        _text.Append("<div class=\"finished\">\n");
        picture.WriteTo(_text, _block.Title + ", finished: " + string.Join(", ", _block.Panels.Select(panel => panel.Name.Text)) + ".", picture.WidthMm, picture.HeightMm);
        _text.Append("</div>\n");
        Paragraph("Small pictures: never cut from them.");
    }

    private void WriteChecks()
    {
        Heading("checks", "Check your drawing");
        Paragraph(_block.Report.Passed ? "Measure these along the seam lines, darts closed." : _block.Report.Verdict() + " Do not cut from this block.");
        OpenTable("What", "Should be", "Yours");
        foreach (Finding finding in _block.Report.Findings.Where(finding => finding is { Advice: null, Kind: FindingKind.Length, Relation: FindingRelation.Equal } && finding.RawTarget != 0))
        {
            Row(finding.Check + ", " + finding.Place, _sheet.IsExercise ? WorkedText.Blank : FindingLines.Fine(finding.RawTarget, _tape), WorkedText.Blank);
        }

        CloseTable();
    }

    // A sheet that rounds each instruction owes its reader this: the errors do not simply add up.
    private void WriteRounding()
    {
        if (!HasRounding)
        {
            return;
        }

        Heading("rounding", "What rounding every distance to " + _tape + " does to the hand draft, all together");
        OpenTable("What", "Not rounded", "Off the tape", "Target");
        foreach (Finding effect in _block.ReadOffTape(_tape))
        {
            Row(effect.Check + ", " + effect.Place, FindingLines.Fine(effect.RawBefore, _tape), FindingLines.Fine(effect.RawMeasured, _tape), FindingLines.Fine(effect.RawTarget, _tape));
        }

        CloseTable();
    }

    private void WriteAdvice()
    {
        if (_block.Report.Advice.Any())
        {
            Heading("advice", "Advice");
            foreach (Finding finding in _block.Report.Advice)
            {
                Paragraph(finding.Check + ", " + finding.Place + ": " + finding.Advice);
            }
        }
    }

    private void WriteCautions()
    {
        _text.Append("<section class=\"cautions\">\n");
        Heading("cautions", "Cautions");
        foreach (string caution in Cautions.OfCutting)
        {
            Paragraph(caution);
        }

        _text.Append("</section>\n");
    }

    private void Heading(string? id, string words)
    {
        _text.Append("<h2").Append(id is null ? string.Empty : " id=\"" + id + "\"").Append('>');
        Words(words);
        _text.Append("</h2>\n");
    }

    private void Paragraph(string words, string? kind = null)
    {
        _text.Append("<p").Append(kind is null ? string.Empty : " class=\"" + kind + "\"").Append('>');
        Words(words);
        _text.Append("</p>\n");
    }

    private void OpenTable(params string[] columns)
    {
        _text.Append("<table>\n");
        if (columns.Length > 0)
        {
            _text.Append("<thead><tr>");
            foreach (string column in columns)
            {
                _text.Append("<th scope=\"col\">").Escaped(column).Append("</th>");
            }

            _text.Append("</tr></thead>\n");
        }

        _text.Append("<tbody>\n");
    }

    private void CloseTable() => _text.Append("</tbody>\n</table>\n");

    private void Row(string label, string value) => Row(label, [value]);

    private void Row(string label, params string[] values)
    {
        _text.Append("<tr><th scope=\"row\">").Escaped(label).Append("</th>");
        foreach (string value in values)
        {
            _text.Append("<td>");
            Words(value);
            _text.Append("</td>");
        }

        _text.Append("</tr>\n");
    }

    // A blank is a line to write on; a screen reader says that it is one.
    private void Words(string words)
    {
        words = Joined(words);
        for (int at; (at = words.IndexOf(WorkedText.Blank, StringComparison.Ordinal)) >= 0; words = words.Substring(at + WorkedText.Blank.Length))
        {
            _text.Escaped(words.Substring(0, at)).Append("<span class=\"blank\"><span class=\"hidden\">blank</span></span>");
        }

        _text.Escaped(words);
    }

    // No line ends between a number and its fraction: 20 1/2 is not 20.
    private static string Joined(string words)
    {
        var text = new StringBuilder(words);
        for (int i = 1; i + 1 < text.Length; i++)
        {
            if (text[i] == ' ' && char.IsDigit(text[i - 1]) && char.IsDigit(text[i + 1]))
            {
                text[i] = TapeText.NoBreakSpace;
            }
        }

        return text.ToString();
    }

    private static string IdOf(Step step) => "step-" + Number(step.Number);

    private static string Upper(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words.Substring(1);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
