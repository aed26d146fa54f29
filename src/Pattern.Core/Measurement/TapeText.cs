using System;
using System.Globalization;
using System.Text;

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
        string sign = Sign(marks < 0.0, style);
        marks = Math.Abs(marks);
        if (marks > long.MaxValue / 2)
        {
            // Longer than any length the public calls let through; a message about it must still be printable.
            return sign + (marks * step.SizeMm / (step.IsMetric ? 10.0 : Tape.MillimetresPerInch)).ToString("R", CultureInfo.InvariantCulture);
        }

        return sign + (step.IsMetric
            ? ((decimal)marks / (10 * step.Parts)).ToString("F" + step.CentimetreDecimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : Mixed((long)marks, step.Parts, style));
    }

    internal static string Sign(bool isNegative, TapeStyle style) => !isNegative ? string.Empty : style == TapeStyle.Plain ? "-" : Minus.ToString();

    /// <summary>A whole number and a reduced fraction; neither is negative.</summary>
    internal static string Mixed(long numerator, long denominator, TapeStyle style)
    {
        long whole = numerator / denominator;
        long rest = numerator % denominator;
        if (rest == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        long divisor = GreatestCommonDivisor(rest, denominator);
        rest /= divisor;
        denominator /= divisor;
        string fraction = style == TapeStyle.Plain
            ? rest.ToString(CultureInfo.InvariantCulture) + "/" + denominator.ToString(CultureInfo.InvariantCulture)
            : Typographic(rest, denominator);
        return whole == 0
            ? fraction
            : whole.ToString(CultureInfo.InvariantCulture) + (style == TapeStyle.Plain ? " " : string.Empty) + fraction;
    }

    internal static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    // One character where there is one. Else raised and lowered digits: plain ones after a whole number would join it.
    private static string Typographic(long numerator, long denominator)
    {
        char? single = VulgarFractions.Find(numerator, denominator);
        if (single is not null)
        {
            return single.Value.ToString();
        }

        var text = new StringBuilder();
        foreach (char digit in numerator.ToString(CultureInfo.InvariantCulture))
        {
            text.Append(VulgarFractions.Raised[digit - '0']);
        }

        text.Append(FractionSlash);
        foreach (char digit in denominator.ToString(CultureInfo.InvariantCulture))
        {
            text.Append(VulgarFractions.Lowered[digit - '0']);
        }

        return text.ToString();
    }
}
