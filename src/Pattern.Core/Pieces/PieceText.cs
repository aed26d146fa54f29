using System;
using System.Collections.Generic;
using System.Globalization;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Pieces;

/// <summary>Text that is printed on a piece.</summary>
internal static class PieceText
{
    /// <summary>As much as stands on one line.</summary>
    internal const int Line = 60;

    /// <summary>One line of visible text, as a caller passed it.</summary>
    internal static string Checked(string? text, string parameter, int longest = Line)
    {
        string line = Guard.Name(text, parameter).Trim();
        for (int i = 0; i < line.Length; i++)
        {
            bool pairs = char.IsHighSurrogate(line[i]) && i + 1 < line.Length && char.IsLowSurrogate(line[i + 1]);
            UnicodeCategory category = CharUnicodeInfo.GetUnicodeCategory(line, i);
            bool isPlain = category is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate);
            if (!isPlain)
            {
                throw new ArgumentException(
                    MessageRegistry.Format(DiagnosticCode.TextNotPrintable, parameter, i + 1, "U+" + ((int)line[i]).ToString("X4", CultureInfo.InvariantCulture)), parameter);
            }

            i += pairs ? 1 : 0;
        }

        return line.Length <= longest
            ? line
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.TextTooLong, parameter, line.Length, longest), parameter);
    }

    /// <summary>A text in lines: broken after a comma where there is one, else at a blank, else where the line is full.</summary>
    internal static IEnumerable<string> Lines(string text)
    {
        while (text.Length > Line)
        {
            int comma = text.LastIndexOf(", ", Line - 1, StringComparison.Ordinal);
            int blank = text.LastIndexOf(' ', Line);
            int end = comma > 0 ? comma + 1 : blank > 0 ? blank : char.IsHighSurrogate(text[Line - 1]) ? Line - 1 : Line;
            yield return text.Substring(0, end).TrimEnd();
            text = text.Substring(end).TrimStart();
        }

        yield return text;
    }
}
