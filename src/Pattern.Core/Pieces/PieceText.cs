using System;
using System.Globalization;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Pieces;

/// <summary>Text that is printed on a piece.</summary>
internal static class PieceText
{
    private const int Longest = 60;

    /// <summary>One line of visible text, as a caller passed it.</summary>
    internal static string Checked(string? text, string parameter)
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

        return line.Length <= Longest
            ? line
            : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.TextTooLong, parameter, line.Length, Longest), parameter);
    }
}
