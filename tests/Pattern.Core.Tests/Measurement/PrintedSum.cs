using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using System.Text.RegularExpressions;

namespace Pattern.Core.Tests.Measurement;

/// <summary>Reads a printed working as a person with pencil and paper would, in fractions, and says whether its two sides agree.</summary>
/// <remarks>Knows nothing of the library: <c>1/2 of (box width 20 3/8 - back wider by 1/2) = 9 15/16 in</c>.</remarks>
internal sealed class PrintedSum
{
    private readonly string _text;
    private int _at;

    private PrintedSum(string text) => _text = text;

    /// <summary>The sums that a line of a sheet prints, each from the first word of its working to the unit of its result.</summary>
    internal static IEnumerable<string> In(string line, string equals = " = ")
    {
        foreach (Match end in Regex.Matches(line, equals + @"(?<figure>-?~?-?\d[\d /.]*(?:mm|cm|in))\b"))
        {
            string before = line[..end.Index];

            // A working begins after a colon, after the spaces of a table, after "take in" or a comma that begins no limit, and at the unit of the figure before.
            Match begin = Regex.Matches(before, @": |  +|would take in |, (?!at most|at least|rounded)| (?:in|cm)[,:] ").LastOrDefault() ?? Match.Empty;
            yield return before[(begin.Index + begin.Length)..] + equals + end.Groups["figure"].Value;
        }
    }

    /// <summary>By how much a result that is said to be rounded misses its working, in the unit that is printed.</summary>
    internal static double Misses(string rounded)
    {
        string[] sides = rounded.Split(", rounded: ");
        Ratio off = new PrintedSum(sides[0]).Whole() + (new PrintedSum(sides[1][..sides[1].LastIndexOf(' ')]).Whole() * new Ratio(-1, 1));
        return Math.Abs((double)off.Above / (double)off.Below);
    }

    /// <summary>Null where the text has no sum to check.</summary>
    internal static bool? AddsUp(string text)
    {
        int equals = text.LastIndexOf(" = ", StringComparison.Ordinal);
        if (equals < 0)
        {
            return null;
        }

        string result = text[(equals + 3)..];
        result = result[..result.LastIndexOf(' ')];
        return new PrintedSum(text[..equals]).Whole().Equals(new PrintedSum(result).Whole());
    }

    private Ratio Whole()
    {
        Ratio value = Limit();
        return _at == _text.Length ? value : throw new FormatException($"\"{_text}\" is not understood from \"{_text[_at..]}\".");
    }

    private Ratio Limit()
    {
        Ratio value = Terms();
        while (true)
        {
            if (Take(", at most "))
            {
                value = Ratio.Least(value, Terms());
            }
            else if (Take(", at least "))
            {
                Ratio other = Terms();
                value = Ratio.Least(value, other).Equals(value) ? other : value;
            }
            else
            {
                return value;
            }
        }
    }

    private Ratio Terms()
    {
        Ratio value = Part();
        while (true)
        {
            if (Take(" + "))
            {
                value += Part();
            }
            else if (Take(" - "))
            {
                value += Part() * new Ratio(-1, 1);
            }
            else
            {
                return value;
            }
        }
    }

    private Ratio Part()
    {
        if (Take("("))
        {
            Ratio inner = Limit();
            return Take(")") ? inner : throw new FormatException($"\"{_text}\" misses a bracket.");
        }

        while (_at < _text.Length && !IsFigure(_at))
        {
            _at++;
        }

        Ratio figure = Figure();
        return Take(" of ") || Take(" \u00D7 ") ? figure * Part() : figure;
    }

    // A name may end in a number of its own: "dart 1 5/8" cannot be told from "1 5/8", and no name of the library does.
    private bool IsFigure(int at)
        => (at == 0 || _text[at - 1] is ' ' or '(') && (char.IsDigit(_text[at]) || (_text[at] is '~' or '-' && at + 1 < _text.Length && (char.IsDigit(_text[at + 1]) || _text[at + 1] == '-')));

    private Ratio Figure()
    {
        Take("~");
        bool isNegative = Take("-");
        Ratio value = Number();
        int before = _at;
        if (value.IsWhole && Take(" ") && _at < _text.Length && char.IsDigit(_text[_at]))
        {
            value += Number();
        }
        else
        {
            _at = before;
        }

        return isNegative ? value * new Ratio(-1, 1) : value;
    }

    private Ratio Number()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsDigit(_text[_at]) || _text[_at] is '/' or '.'))
        {
            _at++;
        }

        string figure = _text[start.._at];
        if (figure.Split('/') is [string above, string below])
        {
            return new Ratio(Whole(above), Whole(below));
        }

        string[] parts = figure.Split('.');
        return parts.Length == 1 ? new Ratio(Whole(figure), 1) : new Ratio(Whole(parts[0] + parts[1]), BigInteger.Pow(10, parts[1].Length));
    }

    private static BigInteger Whole(string digits) => BigInteger.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private bool Take(string words)
    {
        if (string.CompareOrdinal(_text, _at, words, 0, words.Length) != 0)
        {
            return false;
        }

        _at += words.Length;
        return true;
    }

    private readonly record struct Ratio(BigInteger Above, BigInteger Below)
    {
        internal bool IsWhole => Above % Below == 0;

        public bool Equals(Ratio other) => Above * other.Below == other.Above * Below;

        public override int GetHashCode() => 0;

        internal static Ratio Least(Ratio a, Ratio b) => a.Above * b.Below <= b.Above * a.Below ? a : b;

        public static Ratio operator +(Ratio a, Ratio b) => new((a.Above * b.Below) + (b.Above * a.Below), a.Below * b.Below);

        public static Ratio operator *(Ratio a, Ratio b) => new(a.Above * b.Above, a.Below * b.Below);
    }
}
