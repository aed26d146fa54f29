using System;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>The words and signs for units that the text of a length may end in.</summary>
internal static class TapeUnits
{
    private const string InchSigns = "\"\u201D\u2033";

    // One foot mark is many a hand's inch mark, and tapes are not marked in feet: asked back instead of guessed.
    private const string FootSigns = "'\u2019\u2032";

    /// <summary>The word or sign that starts at a place; null where neither a letter nor a sign of a unit stands there.</summary>
    internal static string? WordAt(string text, int at)
    {
        if (InchSigns.IndexOf(text[at]) >= 0 || FootSigns.IndexOf(text[at]) >= 0)
        {
            return text.Substring(at, 1);
        }

        int end = at;
        while (end < text.Length && char.IsLetter(text[end]))
        {
            end++;
        }

        if (end == at)
        {
            return null;
        }

        // in. with its point: the one abbreviation that is commonly written so.
        bool abbreviated = end < text.Length && text[end] == '.' && string.Equals(text.Substring(at, end - at), "in", StringComparison.OrdinalIgnoreCase);
        return text.Substring(at, end - at + (abbreviated ? 1 : 0));
    }

    internal static bool TryRead(string word, out LengthUnit unit)
    {
        LengthUnit? found = InchSigns.Contains(word) ? LengthUnit.Inch : word.ToLowerInvariant() switch
        {
            "in" or "in." or "inch" or "inches" => LengthUnit.Inch,
            "cm" => LengthUnit.Centimeter,
            "mm" => LengthUnit.Millimeter,
            "m" => LengthUnit.Meter,
            _ => null,
        };
        unit = found ?? LengthUnit.Millimeter;
        return found is not null;
    }

    internal static string WhyNot(string word) => FootSigns.Contains(word) || word.ToLowerInvariant() is "ft" or "foot" or "feet"
        ? word + " (feet are not read: write the inches of the tape, 64 in for 5 ft 4)"
        : word;
}
