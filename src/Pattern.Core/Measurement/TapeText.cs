using System;
using System.Globalization;

namespace Pattern.Core.Measurement;

/// <summary>Lengths as text.</summary>
internal static class TapeText
{
    internal const char Minus = '\u2212';
    internal const char DoublePrime = '\u2033';
    internal const char FractionSlash = '\u2044';
    internal const char NoBreakSpace = '\u00A0';

    internal static string WithUnit(double lengthMm, TapeStep step, TapeStyle style) => Number(lengthMm, step, style) + UnitSuffix(step, style);

    internal static string UnitSuffix(TapeStep step, TapeStyle style) => (step.IsMetric, style) switch
    {
        (false, TapeStyle.Plain) => " in",
        (false, _) => DoublePrime.ToString(),
        (true, TapeStyle.Plain) => " cm",
        (true, _) => NoBreakSpace + "cm",
    };

    internal static string Number(double lengthMm, TapeStep step, TapeStyle style)
    {
        double marks = Tape.MarksOf(lengthMm, step, TapeRounding.Nearest);
        if (Math.Abs(marks) > Fraction.Most)
        {
            // Longer than any length the public calls let through; a message about it must still be printable.
            return Sign(marks < 0.0, style) + (Math.Abs(marks) * step.SizeMm / (step.IsMetric ? 10.0 : Tape.MillimetresPerInch)).ToString("R", CultureInfo.InvariantCulture);
        }

        return step.IsMetric
            ? Sign(marks < 0.0, style)
                + (Math.Abs((decimal)marks) / (10 * step.Parts)).ToString("F" + step.CentimetreDecimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : Fraction.Of(marks, step.Parts).ToString(style);
    }

    /// <summary>The number as a drafter says it, whatever mark it was read to: 1.2 cm, and not 1.20.</summary>
    internal static string Said(double lengthMm, TapeStep step, TapeStyle style)
    {
        string number = Number(lengthMm, step, style);
        int point = number.IndexOf('.');
        int end = number.Length;
        while (step.IsMetric && point >= 0 && end > point + 2 && number[end - 1] == '0')
        {
            end--;
        }

        return number.Substring(0, end);
    }

    internal static string Sign(bool isNegative, TapeStyle style) => !isNegative ? string.Empty : style == TapeStyle.Plain ? "-" : Minus.ToString();
}
