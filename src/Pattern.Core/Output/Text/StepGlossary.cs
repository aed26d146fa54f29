using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;

namespace Pattern.Core.Output;

/// <summary>What a reader of steps wants to have at hand: the figures that somebody chose, and what the words mean.</summary>
internal static class StepGlossary
{
    // Trade words, in our own words: common practice, no source.
    private static readonly (string Word, string Meaning)[] Words =
    [
        ("apex", "the point in which a dart ends"),
        ("dart top", "where a leg of a dart meets the edge that the dart stands on"),
        ("ease", "what the garment measures more than the body"),
        ("guide points", "points that a curve runs through, so that a flexible rule finds it"),
        ("intake", "how wide a dart is at its edge: what folding it takes away"),
        ("level", "square to the centre line; a level is a line that runs so"),
        ("proportional law", "shaping worked out from the girths alone, for want of a table"),
        ("quarter waist", "a quarter of the finished waist, darts folded"),
        ("shaped", "of a waistline: low at the centre front and raised over the hip bone, not level"),
        ("shaping", "what a seam or dart takes in"),
        ("suppression", "all that a panel has to lose from its widest level to its narrowest: darts and seam together"),
    ];

    /// <summary>Each figure that a step lays off or works with and that is neither measured nor worked out.</summary>
    internal static void WriteFigures(StringBuilder text, Block block, TapeStep tape)
    {
        HashSet<string> known = [.. BlockRows.Settings(block, new TapeFigures(tape, TapeStyle.Plain)).Select(row => row.Label)];
        var seen = new HashSet<WorkedLength>();
        bool any = false;
        foreach (WorkedLength figure in block.Steps.SelectMany(step => step.Workings).SelectMany(working => Chosen(working, seen)))
        {
            if (!known.Add(figure.Name!) || block.Method.Readings.SelectMany(reading => reading.Value.Figures).Any(read => read.Name == figure.Name))
            {
                continue;
            }

            if (!any)
            {
                StepsOutput.Heading(text, "Chosen figures");
                any = true;
            }

            StepsOutput.Row(text, figure.Name!, WorkedLength.Given(figure.Value).Describe(tape));
        }
    }

    /// <summary>The words of the text so far that need explaining.</summary>
    internal static void WriteWords(StringBuilder text)
    {
        string written = text.ToString();
        bool any = false;
        foreach ((string word, string meaning) in FoundIn(written))
        {
            if (!any)
            {
                StepsOutput.Heading(text, "Words");
                any = true;
            }

            StepsOutput.Row(text, word, meaning);
        }
    }

    /// <summary>The words of a text that need explaining.</summary>
    internal static IEnumerable<(string Word, string Meaning)> FoundIn(string text) => Words.Where(one => text.IndexOf(one.Word, StringComparison.OrdinalIgnoreCase) >= 0);

    // In the order in which they are printed. A working may be used again and again in others: each is looked at once.
    private static List<WorkedLength> Chosen(WorkedLength working, HashSet<WorkedLength> seen)
    {
        var chosen = new List<WorkedLength>();
        var open = new Stack<WorkedLength>();
        open.Push(working);
        while (open.Count > 0)
        {
            WorkedLength length = open.Pop();
            if (!seen.Add(length))
            {
                continue;
            }

            if (length is { Operation: WorkedOperation.Given, Name: not null })
            {
                chosen.Add(length);
            }

            if (length.Second is { } second)
            {
                open.Push(second);
            }

            if (length.First is { } first)
            {
                open.Push(first);
            }
        }

        return chosen;
    }
}
