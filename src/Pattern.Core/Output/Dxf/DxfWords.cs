using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace Pattern.Core.Output;

/// <summary>Words for people as the format takes them: escaped, and in parts that are short enough.</summary>
internal static class DxfWords
{
    // The longest value of a text in release 12, escapes included (DXF reference; from memory).
    private const int Longest = 255;

    // How far a letter of the format's own font moves on, in heights: at most this (from memory).
    private const double WidestLetterEms = 1;

    /// <summary>The words in parts that the format can hold: cut after a blank where there is one in the second half, else between two characters.</summary>
    internal static IEnumerable<string> Split(string words)
    {
        while (Escaped(words).Length > Longest)
        {
            int most = 1;
            while (most < words.Length && Escaped(words.Substring(0, most + 1)).Length <= Longest)
            {
                most++;
            }

            most -= char.IsHighSurrogate(words[most - 1]) && most > 1 ? 1 : 0;
            int blank = words.LastIndexOf(' ', most - 1, most / 2);
            int end = blank < 0 ? most : blank + 1;
            yield return words.Substring(0, end).TrimEnd(' ');
            words = words.Substring(end);
        }

        yield return words;
    }

    /// <summary>How wide the longest of some lines is at the most, in heights of the type.</summary>
    internal static double WidestEms(IEnumerable<string> lines) => WidestLetterEms * Math.Max(1, lines.Max(line => line.Length));

    // The format's own escapes: \U+XXXX for what is not ASCII, a blank after a caret, which else begins a control code, and %%% for a
    // percent sign beside another one, which else begin the code of a symbol.
    internal static string Escaped(string words)
    {
        var text = new StringBuilder(words.Length);
        for (int i = 0; i < words.Length; i++)
        {
            char c = words[i];
            bool isPair = char.IsHighSurrogate(c) && i + 1 < words.Length && char.IsLowSurrogate(words[i + 1]);
            if (isPair)
            {
                Unicode(text, c);
                Unicode(text, words[++i]);
            }
            else if (c is '\t' or '\n' or '\r')
            {
                text.Append(' ');
            }
            else if (c < ' ' || char.IsSurrogate(c) || c is >= '\u007F' and < '\u00A0')
            {
                // What cannot be printed is shown as the sign for "unreadable".
                Unicode(text, '\uFFFD');
            }
            else if (c > '~' || c == '\\')
            {
                Unicode(text, c);
            }
            else if (c == '^')
            {
                text.Append("^ ");
            }
            else if (c == '%' && ((i > 0 && words[i - 1] == '%') || (i + 1 < words.Length && words[i + 1] == '%')))
            {
                text.Append("%%%");
            }
            else
            {
                text.Append(c);
            }
        }

        return text.ToString();
    }

    private static void Unicode(StringBuilder text, char c) => text.Append("\\U+").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
}
