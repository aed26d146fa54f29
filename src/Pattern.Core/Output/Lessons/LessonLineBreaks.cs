using System.Collections.Generic;
using System.Text;

namespace Pattern.Core.Output;

/// <summary>Breaks words into lines of a width, whatever usual type they are set in.</summary>
internal static class LessonLineBreaks
{
    /// <summary>The lines; none is wider than it may be, and none is empty unless all is. A word that is wider alone is broken where it has to be.</summary>
    internal static List<string> Of(string words, double sizeMm, TextWeight weight, double widthMm)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (string word in LessonText.Joined(LessonText.OneLine(words)).Split(' '))
        {
            if (word.Length == 0)
            {
                continue;
            }

            if (line.Length > 0 && TextMark.WidthOfMm(line + " " + word, sizeMm, weight) <= widthMm)
            {
                line.Append(' ').Append(word);
                continue;
            }

            Flush(lines, line);
            line.Append(word);
            while (BreakOff(line, sizeMm, weight, widthMm) is { } first)
            {
                lines.Add(first);
            }
        }

        Flush(lines, line);
        return lines;
    }

    /// <summary>As many characters as there is room for, and dots where some are missing.</summary>
    internal static string Shortened(string words, double sizeMm, TextWeight weight, double widthMm)
    {
        const string Dots = "...";
        string line = LessonText.Joined(LessonText.OneLine(words));
        if (TextMark.WidthOfMm(line, sizeMm, weight) <= widthMm)
        {
            return line;
        }

        var rest = new StringBuilder(line);
        return (BreakOff(rest, sizeMm, weight, widthMm - TextMark.WidthOfMm(Dots, sizeMm, weight)) ?? string.Empty) + Dots;
    }

    private static void Flush(List<string> lines, StringBuilder line)
    {
        if (line.Length > 0)
        {
            lines.Add(line.ToString());
            line.Clear();
        }
    }

    // The first part of a word that is too wide; null where the rest fits. At least one character goes on each line, so that it ends.
    private static string? BreakOff(StringBuilder word, double sizeMm, TextWeight weight, double widthMm)
    {
        double usedMm = 0;
        for (int i = 0; i < word.Length;)
        {
            int next = char.IsHighSurrogate(word[i]) && i + 1 < word.Length && char.IsLowSurrogate(word[i + 1]) ? 2 : 1;
            usedMm += TextMark.WidthOfMm(word.ToString(i, next), sizeMm, weight);
            if (usedMm > widthMm && i > 0)
            {
                string first = word.ToString(0, i);
                word.Remove(0, i);
                return first;
            }

            i += next;
        }

        return null;
    }
}
