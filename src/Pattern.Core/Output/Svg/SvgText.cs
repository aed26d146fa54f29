using System;
using System.Globalization;
using System.Text;

namespace Pattern.Core.Output;

/// <summary>Numbers and words as SVG takes them.</summary>
internal static class SvgText
{
    private const int Decimals = 4;
    private const long Whole = 10_000;

    // What no XML may hold, and what would end a line of text, is shown as the sign for "unreadable".
    private const char Unreadable = '\uFFFD';

    /// <summary>A number rounded to 0.0001, without exponent, trailing zeros or minus zero.</summary>
    internal static StringBuilder Number(this StringBuilder text, double value)
    {
        decimal scaled = Math.Round((decimal)value * Whole, MidpointRounding.AwayFromZero);
        long units = (long)scaled;
        if (units < 0)
        {
            text.Append('-');
            units = -units;
        }

        text.Append((units / Whole).ToString(CultureInfo.InvariantCulture));
        long rest = units % Whole;
        if (rest == 0)
        {
            return text;
        }

        string digits = rest.ToString(CultureInfo.InvariantCulture).PadLeft(Decimals, '0').TrimEnd('0');
        return text.Append('.').Append(digits);
    }

    /// <summary>Words as the content of an element or an attribute.</summary>
    internal static StringBuilder Escaped(this StringBuilder text, string words)
    {
        for (int i = 0; i < words.Length; i++)
        {
            char c = words[i];
            switch (c)
            {
                case '&':
                    text.Append("&amp;");
                    break;
                case '<':
                    text.Append("&lt;");
                    break;
                case '>':
                    text.Append("&gt;");
                    break;
                case '"':
                    text.Append("&quot;");
                    break;
                case '\t' or '\n' or '\r':
                    text.Append(' ');
                    break;
                default:
                    if (char.IsHighSurrogate(c) && i + 1 < words.Length && char.IsLowSurrogate(words[i + 1]))
                    {
                        text.Append(c).Append(words[++i]);
                    }
                    else
                    {
                        text.Append(c < ' ' || char.IsSurrogate(c) || c >= '\uFFFE' ? Unreadable : c);
                    }

                    break;
            }
        }

        return text;
    }
}
