using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;

namespace Pattern.Core.Blocks;

/// <summary>Writes how something came about.</summary>
internal static class OriginText
{
    internal const int DeepestIndent = 40;

    private static readonly (OriginKind Kind, string Words)[] EndKinds =
    [
        (OriginKind.Measurement, "Measured"),
        (OriginKind.Setting, "Settings"),
        (OriginKind.TableEntry, "From a table"),
        (OriginKind.Constant, "Constants"),
    ];

    internal static string Of(Explanation explanation, TapeStep tape)
    {
        var text = new StringBuilder(4096);
        text.Append("How it came about: ").Append(explanation.Root.Describe(tape)).Append('\n');
        foreach ((string words, string ends) in Ends(explanation, tape))
        {
            text.Append(words).Append(": ").Append(ends).Append('\n');
        }

        text.Append("\nThe steps that matter\n");
        foreach (Step step in explanation.Steps)
        {
            text.Append(step.Number.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append(". ").Append(OneLine(step.Describe(tape))).Append('\n');
            if (step.Reason is { } reason)
            {
                text.Append("     ").Append(OneLine(reason)).Append('\n');
            }
        }

        text.Append("\nFrom what it is made\n");
        foreach ((int depth, string line) in Tree(explanation.Root, tape))
        {
            text.Append(' ', 2 * Math.Min(depth, DeepestIndent)).Append(line).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What the chain ends in, by kind.</summary>
    internal static IEnumerable<(string Kind, string Ends)> Ends(Explanation explanation, TapeStep tape) => EndKinds
        .Select(kind => (kind.Words, string.Join("; ", explanation.Ends.Where(end => end.Kind == kind.Kind).Select(end => OneLine(end.Describe(tape))))))
        .Where(kind => kind.Item2.Length > 0);

    /// <summary>The tree, line by line. What stands in it a second time is not opened again.</summary>
    internal static IEnumerable<(int Depth, string Line)> Tree(Origin root, TapeStep tape)
    {
        var told = new HashSet<Origin>();
        var open = new Stack<(Origin Origin, int Depth)>();
        open.Push((root, 0));
        while (open.Count > 0)
        {
            (Origin origin, int depth) = open.Pop();
            bool isNew = told.Add(origin);
            yield return (depth, Line(origin, tape) + (isNew || origin.From.Count == 0 ? string.Empty : ": see above"));
            for (int i = origin.From.Count - 1; isNew && i >= 0; i--)
            {
                // A change speaks of much that stands above already: only what is new is worth a line.
                if (origin.Kind != OriginKind.Change || !told.Contains(origin.From[i]))
                {
                    open.Push((origin.From[i], depth + 1));
                }
            }
        }
    }

    private static string Line(Origin origin, TapeStep tape)
    {
        string step = origin.Step is { } done ? ", step " + done.Number.ToString(CultureInfo.InvariantCulture) : string.Empty;
        string name = origin.Name.Length == 0 ? string.Empty : OneLine(origin.Name);
        string figure = origin.ValueMm is { } mm ? WorkedLength.GivenMm(null, mm).Describe(tape) : string.Empty;
        switch (origin.Kind)
        {
            case OriginKind.Measurement:
                return name + " " + figure + ", measured on the body";
            case OriginKind.Setting:
                return name + " " + figure + ", a setting";
            case OriginKind.TableEntry:
                return name + " " + figure + ", from the table";
            case OriginKind.Constant:
                return origin.Describe(tape) + ", of the method itself";
            case OriginKind.Working:
                string working = origin.Working is { } length && length.Operands.Count > 0 ? OneLine(length.Describe(tape)) : figure;
                return name.Length == 0 ? working : name + ": " + working;
            case OriginKind.Taken:
                return (name.Length == 0 ? "length" : name) + " " + figure + ", taken from the draft";
            case OriginKind.Change:
                return origin.Name + step;
            default:
                return origin.Describe(tape) + step;
        }
    }

    private static string OneLine(string words) => string.Join(" ", words.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
