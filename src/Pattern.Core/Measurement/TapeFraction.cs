using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>Inches as a drafter counts them: a whole number and a reduced fraction, exactly. Half of 9 1/4 is 4 5/8.</summary>
/// <remarks>Holds up to a kilometre either way, in parts down to a billionth of an inch; what does not fit throws instead of losing anything. The default value is
/// nothing. Equality and order are by value; every value has one form only.</remarks>
public readonly struct TapeFraction : IEquatable<TapeFraction>, IComparable<TapeFraction>
{
    private const long FinestParts = 1_000_000_000;
    private const long LargestInches = 39_370;
    private const decimal FinestDecimal = 1e-10m;

    private readonly Fraction _inches;

    private TapeFraction(Fraction inches) => _inches = inches.IsKnown && inches.Denominator <= FinestParts && Math.Abs(inches.Numerator) <= LargestInches * inches.Denominator
        ? inches
        : throw Overflow();

    /// <summary>Nothing.</summary>
    public static TapeFraction Zero => default;

    /// <summary>-1 below nothing, 0 for nothing, 1 above.</summary>
    public int Sign => Math.Sign(_inches.Numerator);

    /// <summary>The whole inches, without the sign: 4 in 4 5/8.</summary>
    public long Whole => Math.Abs(_inches.Numerator) / Denominator;

    /// <summary>What stands above the stroke, without the sign: 5 in 4 5/8; 0 in a whole number. Less than the <see cref="Denominator"/>.</summary>
    public long Numerator => Math.Abs(_inches.Numerator) % Denominator;

    /// <summary>What stands below the stroke: 8 in 4 5/8; 1 in a whole number.</summary>
    public long Denominator => _inches.Denominator;

    /// <summary>Makes a fraction, and reduces it: 10/16 becomes 5/8.</summary>
    /// <param name="numerator">How many parts; either sign.</param>
    /// <param name="denominator">Parts of an inch; one or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no parts.</exception>
    /// <exception cref="OverflowException">It is too fine or too large.</exception>
    [Pure]
    public static TapeFraction FromParts(long numerator, long denominator) => denominator >= 1
        ? new TapeFraction(Fraction.Of(numerator, denominator))
        : throw new ArgumentOutOfRangeException(
            nameof(denominator), MessageRegistry.Format(DiagnosticCode.CountOutOfRange, nameof(denominator), denominator, 1, FinestParts));

    /// <summary>Reads a length off the tape.</summary>
    /// <param name="length">Up to a kilometre, either sign.</param>
    /// <param name="step">The finest mark, in inches.</param>
    /// <param name="rounding">Which of two marks a length between them goes to; the nearest, unless said otherwise.</param>
    /// <exception cref="ArgumentException">The step is metric.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is longer than a kilometre, or the rounding has no name.</exception>
    [Pure]
    public static TapeFraction FromLength(Length length, TapeStep step, TapeRounding rounding = TapeRounding.Nearest)
    {
        double lengthMm = Guard.Millimetres(length, -Tape.LongestMm, Tape.LongestMm, nameof(length));
        return step.IsMetric
            ? throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.FractionNotMetric, step), nameof(step))
            : new TapeFraction(Fraction.Of(Tape.MarksOf(lengthMm, step, rounding), step.Parts));
    }

    /// <summary>Reads inches exactly as they are written, with all forms that <see cref="Tape"/> reads.</summary>
    /// <param name="text">For example <c>4 5/8</c> or <c>4.625 in</c>.</param>
    /// <exception cref="ArgumentNullException">No text.</exception>
    /// <exception cref="FormatException">The text is no length, could be read in two ways, or is metric.</exception>
    /// <exception cref="OverflowException">It has more than ten decimals, or is finer than a billionth of an inch.</exception>
    [Pure]
    public static TapeFraction Parse(string text)
    {
        TapeReading reading = TapeReader.Read(Guard.NotNull(text, nameof(text)), LengthUnit.Inch);
        if (!reading.IsLength)
        {
            throw new FormatException(reading.Message);
        }

        if (reading.Unit != LengthUnit.Inch)
        {
            throw new FormatException(MessageRegistry.Format(DiagnosticCode.FractionNotMetric, text));
        }

        return reading.Numerator % FinestDecimal == 0m ? new TapeFraction(Fraction.Of(reading.Numerator, reading.Denominator)) : throw Overflow();
    }

    /// <summary>Half of it, exactly.</summary>
    /// <exception cref="OverflowException">It is too fine.</exception>
    [Pure]
    public TapeFraction Half() => DividedBy(2);

    /// <summary>A quarter of it, exactly.</summary>
    /// <exception cref="OverflowException">It is too fine.</exception>
    [Pure]
    public TapeFraction Quarter() => DividedBy(4);

    /// <summary>It, divided into equal parts, exactly.</summary>
    /// <param name="parts">One or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no parts.</exception>
    /// <exception cref="OverflowException">It is too fine.</exception>
    [Pure]
    public TapeFraction DividedBy(int parts) => new(_inches / Guard.InRange(parts, 1, int.MaxValue, nameof(parts)));

    /// <summary>It, so many times, exactly.</summary>
    /// <param name="times">Either sign.</param>
    /// <exception cref="OverflowException">It is too large.</exception>
    [Pure]
    public TapeFraction Times(int times) => new(_inches * Fraction.Of(times, 1m));

    /// <summary>The same length in inches.</summary>
    [Pure]
    public Length ToLength() => Length.FromInches((double)_inches.Numerator / Denominator);

    /// <inheritdoc/>
    public int CompareTo(TapeFraction other) => _inches.CompareTo(other._inches);

    /// <inheritdoc/>
    public bool Equals(TapeFraction other) => _inches.Equals(other._inches);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TapeFraction other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _inches.GetHashCode();

    /// <summary>The inches in plain style, without the unit: <c>4 5/8</c>.</summary>
    public override string ToString() => ToString(TapeStyle.Plain);

    /// <summary>The inches without the unit: <c>-4 5/8</c> or <c>−4⅝</c>.</summary>
    /// <param name="style">Plain or typographic.</param>
    [Pure]
    public string ToString(TapeStyle style) => _inches.ToString(style);

    private static OverflowException Overflow() => new(MessageRegistry.Format(DiagnosticCode.FractionOverflow, FinestParts, LargestInches));

    /// <summary>One after the other, exactly.</summary>
    /// <exception cref="OverflowException">The sum is too fine or too large.</exception>
    public static TapeFraction operator +(TapeFraction left, TapeFraction right) => new(left._inches + right._inches);

    /// <summary>What the first has more than the second, exactly.</summary>
    /// <exception cref="OverflowException">The difference is too fine or too large.</exception>
    public static TapeFraction operator -(TapeFraction left, TapeFraction right) => new(left._inches - right._inches);

    /// <summary>The same the other way.</summary>
    public static TapeFraction operator -(TapeFraction value) => new(-value._inches);

    /// <summary>Whether both are the same length.</summary>
    public static bool operator ==(TapeFraction left, TapeFraction right) => left.Equals(right);

    /// <summary>Whether they differ.</summary>
    public static bool operator !=(TapeFraction left, TapeFraction right) => !left.Equals(right);

    /// <summary>Whether the first is shorter.</summary>
    public static bool operator <(TapeFraction left, TapeFraction right) => left.CompareTo(right) < 0;

    /// <summary>Whether the first is longer.</summary>
    public static bool operator >(TapeFraction left, TapeFraction right) => left.CompareTo(right) > 0;

    /// <summary>Whether the first is no longer.</summary>
    public static bool operator <=(TapeFraction left, TapeFraction right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the first is no shorter.</summary>
    public static bool operator >=(TapeFraction left, TapeFraction right) => left.CompareTo(right) >= 0;
}
