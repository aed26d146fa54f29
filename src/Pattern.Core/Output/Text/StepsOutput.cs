using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Output;

/// <summary>Blocks as a sheet of steps to draft by.</summary>
public static class StepsOutput
{
    private const int LabelWidth = 27;

    /// <summary>The whole draft in words: measurements, settings, what tables said, every step with its working, what rounding to the tape and truing do, and the proof.</summary>
    /// <param name="block">The block.</param>
    /// <param name="tape">The finest mark of the tape that the steps are read off. A figure that it cannot show exactly carries a <c>~</c>.</param>
    [Pure]
    public static string ToStepsText(this Block block, TapeStep tape)
    {
        Guard.NotNull(block, nameof(block));
        var text = new StringBuilder(8 * 1024);
        string title = OneLine(block.Title);
        Line(text, title);
        Line(text, new string('=', title.Length));
        Line(text, FormattableString.Invariant(
            $"A figure after ~ is rounded: to {FindingLines.FinestOf(tape)} where a line is measured or a curve guided, elsewhere to {tape} or finer. All others are exact."));
        var named = new NamedFigures(Step.FineEnough(tape));
        WriteMeasurements(text, block, tape);
        StepGlossary.WriteFigures(text, block, tape);
        WriteReadings(text, block, tape, named);
        WriteWorkings(text, block, named);
        WriteSteps(text, block, tape, named);
        WriteEnd(text, block, tape);
        StepGlossary.WriteWords(text);
        if (block.TruingChanges.Count > 0)
        {
            WriteTape(text, block, tape);
            WriteTruing(text, block, tape);
        }

        FindingLines.Write(text, block.Report, tape);
        return text.ToString();
    }

    /// <summary>The whole draft in words, read off the tape that suits the unit of the body measurements.</summary>
    /// <param name="block">The block.</param>
    [Pure]
    public static string ToStepsText(this Block block) => block.ToStepsText(TapeStep.For(Guard.NotNull(block, nameof(block)).Body.Unit));

    /// <summary>Writes the whole draft in words to a file, as a whole or not at all.</summary>
    /// <param name="block">The block.</param>
    /// <param name="path">The file; an older one is replaced at the very end, and stays as it was where anything goes wrong.</param>
    /// <param name="tape">The finest mark of the tape that the steps are read off.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    public static void SaveSteps(this Block block, string path, TapeStep tape)
    {
        Guard.Name(path, nameof(path));
        WholeFiles.Write(path, block.ToStepsText(tape));
    }

    private static void WriteMeasurements(StringBuilder text, Block block, TapeStep tape)
    {
        var figures = new TapeFigures(tape, TapeStyle.Plain);
        Heading(text, "Measurements");
        foreach ((string label, string value) in BlockRows.Measurements(block, figures).Concat(BlockRows.Settings(block, figures)))
        {
            Row(text, label, OneLine(value));
        }

        foreach (string remark in block.Remarks)
        {
            Line(text, OneLine(remark));
        }
    }

    // Each figure after those that it is worked from.
    private static void WriteReadings(StringBuilder text, Block block, TapeStep tape, NamedFigures named)
    {
        foreach (KeyValuePair<string, TableReading> reading in block.Method.Readings)
        {
            Heading(text, char.ToUpperInvariant(reading.Key[0]) + reading.Key.Substring(1) + ": " + OneLine(reading.Value.Describe(tape)));
            foreach (WorkedLength length in reading.Value.Figures)
            {
                WorkedLength figure = BlockRows.Said(length);
                named.WorkOut(figure, (name, working) => Row(text, name, working));
                if (figure.First is null)
                {
                    named.Add(figure, Step.FineEnough(tape));
                    Row(text, figure.Name ?? string.Empty, WorkedLength.Given(figure.Value).Describe(tape));
                }
            }
        }
    }

    // What steps lay off or work with under a name: worked out once, and cited by name and figure from there on.
    private static void WriteWorkings(StringBuilder text, Block block, NamedFigures named)
    {
        bool any = false;
        foreach (Step step in block.Steps)
        {
            foreach (WorkedLength length in step.Workings)
            {
                named.WorkOut(length, (name, working) =>
                {
                    if (!any)
                    {
                        Heading(text, "Figures worked out before the steps");
                        any = true;
                    }

                    Row(text, name, working);
                });
            }
        }
    }

    private static void WriteSteps(StringBuilder text, Block block, TapeStep tape, NamedFigures named)
    {
        if (block.Steps.Count == 0)
        {
            return;
        }

        Heading(text, "Steps");
        foreach (Step step in block.Steps)
        {
            foreach (DesignDescription design in block.Designs.Where(design => design.FirstStep == step.Number))
            {
                Heading(text, char.ToUpperInvariant(design.Name[0]) + design.Name.Substring(1));
            }

            Line(text, FormattableString.Invariant($"{step.Number,3}. {step.Describe(tape, named)}"));
            if (StepGuides.Of(step, tape) is { } guides)
            {
                Line(text, "     " + guides);
            }

            if (step.Reason is { } reason)
            {
                Line(text, "     " + OneLine(reason));
            }
        }
    }

    private static void WriteEnd(StringBuilder text, Block block, TapeStep tape)
    {
        Heading(text, "When all is drawn");
        foreach (string sentence in BlockEnding.Of(block, tape, Phrasebook.English, leavesBlank: false))
        {
            Line(text, sentence);
        }
    }

    private static void WriteTape(StringBuilder text, Block block, TapeStep tape)
    {
        Heading(text, FormattableString.Invariant($"What rounding every distance to {tape} does to the hand draft, all together"));
        Line(text, "Of the hand draft, before its lines are moved and drawn again: nothing to measure on the finished draft.");
        foreach (Finding effect in block.ReadOffTape(tape))
        {
            Line(text, FormattableString.Invariant(
                $"{effect.Check}, {effect.Place}: not rounded {Fine(effect.RawBefore, tape)}, off the tape {Fine(effect.RawMeasured, tape)}, target {Fine(effect.RawTarget, tape)}"));
        }
    }

    private static void WriteTruing(StringBuilder text, Block block, TapeStep tape)
    {
        Heading(text, "What truing changed");
        bool any = false;
        foreach (Finding change in block.TruingChanges)
        {
            string before = Fine(change.RawBefore, tape);
            string now = Fine(change.RawMeasured, tape);
            if (before != now)
            {
                any = true;
                Line(text, FormattableString.Invariant($"{change.Check}, {change.Place}: by hand {before}, trued {now}, target {Fine(change.RawTarget, tape)}"));
            }
        }

        if (!any)
        {
            Line(text, "Nothing that a tape shows.");
        }
    }

    private static string Fine(double lengthMm, TapeStep tape) => FindingLines.Fine(lengthMm, tape);

    internal static void Heading(StringBuilder text, string words)
    {
        Line(text, string.Empty);
        Line(text, words);
        Line(text, new string('-', words.Length));
    }

    internal static void Row(StringBuilder text, string label, string value) => Line(text, label.PadRight(LabelWidth - 2) + "  " + value);

    internal static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');

    // A name of a body or a table may hold anything.
    private static string OneLine(string words) => string.Join(" ", words.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
