using System;
using System.Globalization;
using System.Text;

namespace Pattern.Core.Measurement;

/// <summary>A ratio of two whole numbers, reduced: the one arithmetic of fractions under <see cref="TapeFraction"/>, the text of lengths and their workings.</summary>
/// <remarks>Exact, or <see cref="Unknown"/>: what does not fit becomes unknown and stays so through any sum, as NaN would. The default value is nothing. Every value
/// has one form only.</remarks>
internal readonly struct Fraction : IEquatable<Fraction>, IComparable<Fraction>
{
    /// <summary>The largest number above or below the stroke: sums of two products of such still fit a decimal exactly.</summary>
    internal const long Most = 100_000_000_000_000;

    private readonly long _numerator;

    // Less one, so that the default value is nothing over one; unknown is over nothing.
    private readonly long _denominatorLessOne;

    private Fraction(long numerator, long denominator)
    {
        _numerator = numerator;
        _denominatorLessOne = denominator - 1;
    }

    internal static Fraction Unknown => new(0, 0);

    internal bool IsKnown => Denominator != 0;

    internal long Numerator => _numerator;

    internal long Denominator => _denominatorLessOne + 1;

    /// <summary>Reduces a ratio; decimals above the stroke are made whole first.</summary>
    internal static Fraction Of(decimal numerator, decimal denominator)
    {
        while (numerator != decimal.Truncate(numerator))
        {
            if (denominator > Most)
            {
                return Unknown;
            }

            numerator *= 10m;
            denominator *= 10m;
        }

        (decimal divisor, decimal rest) = (denominator, Math.Abs(numerator) % denominator);
        while (rest != 0m)
        {
            (divisor, rest) = (rest, divisor % rest);
        }

        numerator /= divisor;
        denominator /= divisor;
        return denominator <= Most && Math.Abs(numerator) <= Most ? new Fraction((long)numerator, (long)denominator) : Unknown;
    }

    /// <summary>A number as its shortest decimals say it, over so many parts.</summary>
    internal static Fraction Of(double number, int parts) => Math.Abs(number) <= Most ? Of((decimal)number, parts) : Unknown;

    /// <inheritdoc/>
    public int CompareTo(Fraction other) => ((decimal)_numerator * other.Denominator).CompareTo((decimal)other._numerator * Denominator);

    /// <summary>Whether both are the same number; what is unknown equals nothing, so ask <see cref="IsKnown"/> of one of them.</summary>
    public bool Equals(Fraction other) => _numerator == other._numerator && _denominatorLessOne == other._denominatorLessOne;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Fraction other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_numerator.GetHashCode() * 397) ^ _denominatorLessOne.GetHashCode());

    /// <inheritdoc/>
    public override string ToString() => ToString(TapeStyle.Plain);

    /// <summary>A whole number and a fraction: <c>-4 5/8</c> or <c>−4⅝</c>.</summary>
    internal string ToString(TapeStyle style)
    {
        long whole = Math.Abs(_numerator) / Denominator;
        long rest = Math.Abs(_numerator) % Denominator;
        string sign = TapeText.Sign(_numerator < 0, style);
        if (rest == 0)
        {
            return sign + Digits(whole);
        }

        string fraction = style == TapeStyle.Plain ? Digits(rest) + "/" + Digits(Denominator) : Typographic(rest, Denominator);
        return sign + (whole == 0 ? fraction : Digits(whole) + (style == TapeStyle.Plain ? " " : string.Empty) + fraction);
    }

    private static string Digits(long number) => number.ToString(CultureInfo.InvariantCulture);

    // One character where there is one. Else raised and lowered digits: plain ones after a whole number would join it.
    private static string Typographic(long numerator, long denominator)
    {
        if (VulgarFractions.Find(numerator, denominator) is { } single)
        {
            return single.ToString();
        }

        var text = new StringBuilder();
        foreach (char digit in Digits(numerator))
        {
            text.Append(VulgarFractions.Raised[digit - '0']);
        }

        text.Append(TapeText.FractionSlash);
        foreach (char digit in Digits(denominator))
        {
            text.Append(VulgarFractions.Lowered[digit - '0']);
        }

        return text.ToString();
    }

    public static Fraction operator +(Fraction left, Fraction right) => left.IsKnown && right.IsKnown
        ? Of((decimal)left._numerator * right.Denominator + (decimal)right._numerator * left.Denominator, (decimal)left.Denominator * right.Denominator)
        : Unknown;

    public static Fraction operator -(Fraction left, Fraction right) => left + -right;

    public static Fraction operator -(Fraction value) => new(-value._numerator, value.Denominator);

    public static Fraction operator *(Fraction left, Fraction right) => left.IsKnown && right.IsKnown
        ? Of((decimal)left._numerator * right._numerator, (decimal)left.Denominator * right.Denominator)
        : Unknown;

    /// <summary>Equal parts of it; one part or more.</summary>
    public static Fraction operator /(Fraction value, int parts) => value.IsKnown ? Of(value._numerator, (decimal)value.Denominator * parts) : Unknown;
}
