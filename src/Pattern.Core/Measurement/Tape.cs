using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>Lengths as drafters write and read them: <c>4 5/8</c>, <c>4-5/8</c>, <c>4⅝"</c>, <c>11.75 cm</c>.</summary>
/// <remarks>The culture of the thread never matters: the decimal sign is a point, digits are 0 to 9. What could be read in two ways
/// is refused, with the character that it went wrong at, counted from 1.</remarks>
public static class Tape
{
    internal const double MillimetresPerInch = 25.4;

    // A kilometre: no tape, no bolt of cloth is longer, and whole 1/64 in still fit an int many times over.
    internal const double LongestMm = 1e6;

    // Double arithmetic on a kilometre of millimetres errs by 1e-10 at most; a millionth of a millimetre can't be cut.
    internal const double OnTheMarkMm = 1e-6;

    /// <summary>Reads a length; a bare number is in inches.</summary>
    /// <param name="text">For example <c>4 5/8</c>, <c>4⅝"</c> or <c>11.75 cm</c>. A leading minus or hyphen makes it negative.</param>
    /// <returns>The length, in the unit that it was written in.</returns>
    /// <exception cref="ArgumentNullException">No text.</exception>
    /// <exception cref="FormatException">The text is no length, or could be read in two ways.</exception>
    [Pure]
    public static Length Inches(string text) => Parse(text, LengthUnit.Inch);

    /// <summary>Reads a length; a bare number is in centimetres.</summary>
    /// <param name="text">For example <c>11.75</c>, <c>117 mm</c> or <c>4 5/8 in</c>. A leading minus or hyphen makes it negative.</param>
    /// <returns>The length, in the unit that it was written in.</returns>
    /// <exception cref="ArgumentNullException">No text.</exception>
    /// <exception cref="FormatException">The text is no length, or could be read in two ways.</exception>
    [Pure]
    public static Length Centimeters(string text) => Parse(text, LengthUnit.Centimeter);

    /// <summary>Reads a length.</summary>
    /// <param name="text">A whole number, a fraction, both, or a decimal number, with or without a unit.</param>
    /// <param name="unitOfBareNumbers">What a number without a unit is in: inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <returns>The length, in the unit that it was written in.</returns>
    /// <exception cref="ArgumentNullException">No text.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    /// <exception cref="FormatException">The text is no length, or could be read in two ways.</exception>
    [Pure]
    public static Length Parse(string text, LengthUnit unitOfBareNumbers)
    {
        TapeReading reading = TapeReader.Read(Guard.NotNull(text, nameof(text)), KnownUnit(unitOfBareNumbers, nameof(unitOfBareNumbers)));
        return reading.IsLength ? reading.ToLength() : throw new FormatException(reading.Message);
    }

    /// <summary>Reads a length, if the text is one.</summary>
    /// <param name="text">A whole number, a fraction, both, or a decimal number, with or without a unit. Null is no length.</param>
    /// <param name="unitOfBareNumbers">What a number without a unit is in: inch, foot, yard, millimetre, centimetre or metre.</param>
    /// <param name="length">The length, in the unit that it was written in; zero where the text is no length.</param>
    /// <returns>Whether the text could be read.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not one that cloth is measured in.</exception>
    public static bool TryParse(string? text, LengthUnit unitOfBareNumbers, out Length length)
    {
        TapeReading reading = TapeReader.Read(text ?? string.Empty, KnownUnit(unitOfBareNumbers, nameof(unitOfBareNumbers)));
        length = reading.IsLength ? reading.ToLength() : Length.Zero;
        return reading.IsLength;
    }

    /// <summary>Prints a length with its unit, to the nearest mark: <c>4 5/8 in</c>, <c>11.8 cm</c>.</summary>
    /// <remarks>Fractions are reduced: never <c>4 10/16</c>. A length that rounds to nothing is <c>0 in</c>, without a sign.</remarks>
    /// <param name="length">Up to a kilometre, either sign.</param>
    /// <param name="step">The tape and its finest mark.</param>
    /// <param name="style">Plain or typographic.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is longer than a kilometre, or the style has no name.</exception>
    [Pure]
    public static string Format(Length length, TapeStep step, TapeStyle style = TapeStyle.Plain)
        => TapeText.WithUnit(Guard.Millimetres(length, -LongestMm, LongestMm, nameof(length)), step, KnownStyle(style));

    /// <summary>Prints a length without its unit, to the nearest mark: <c>4 5/8</c>, <c>11.8</c> (centimetres). For tables that name the unit once.</summary>
    /// <param name="length">Up to a kilometre, either sign.</param>
    /// <param name="step">The tape and its finest mark.</param>
    /// <param name="style">Plain or typographic.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is longer than a kilometre, or the style has no name.</exception>
    [Pure]
    public static string FormatNumber(Length length, TapeStep step, TapeStyle style = TapeStyle.Plain)
        => TapeText.Number(Guard.Millimetres(length, -LongestMm, LongestMm, nameof(length)), step, KnownStyle(style));

    /// <summary>Moves a length to a mark of the tape.</summary>
    /// <param name="length">Up to a kilometre, either sign.</param>
    /// <param name="step">The tape and its finest mark.</param>
    /// <param name="rounding">Which of two marks it goes to.</param>
    /// <returns>A length on a mark, in the unit of the step; within half a step of the length where it went to the nearest mark, else within one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is longer than a kilometre, or the rounding has no name.</exception>
    [Pure]
    public static Length Round(Length length, TapeStep step, TapeRounding rounding)
    {
        double marks = MarksOf(Guard.Millimetres(length, -LongestMm, LongestMm, nameof(length)), step, rounding);
        return step.IsMetric ? Length.FromCentimeters(marks / (10.0 * step.Parts)) : Length.FromInches(marks / step.Parts);
    }

    /// <summary>Whole steps that make up a length, rounded as asked.</summary>
    internal static double MarksOf(double lengthMm, TapeStep step, TapeRounding rounding)
    {
        double stepMm = step.SizeMm;
        double marks = lengthMm / stepMm;
        double nearHalf = Math.Round(2.0 * marks, MidpointRounding.AwayFromZero) / 2.0;
        if (Math.Abs(marks - nearHalf) * stepMm <= OnTheMarkMm)
        {
            marks = nearHalf;
        }

        // Adding zero turns the minus zero that rounding a small negative leaves into zero.
        return 0.0 + rounding switch
        {
            TapeRounding.Nearest => Math.Round(marks, MidpointRounding.AwayFromZero),
            TapeRounding.Up => Math.Ceiling(marks),
            TapeRounding.Down => Math.Floor(marks),
            _ => throw new ArgumentOutOfRangeException(nameof(rounding), MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(rounding), rounding)),
        };
    }

    /// <summary>Whether a length lies on a mark, within a millionth of a millimetre.</summary>
    internal static bool IsOnMark(double lengthMm, TapeStep step)
        => Math.Abs(MarksOf(lengthMm, step, TapeRounding.Nearest) * step.SizeMm - lengthMm) <= OnTheMarkMm;

    internal static bool IsMetric(LengthUnit unit, string parameter) => KnownUnit(unit, parameter) is LengthUnit.Millimeter or LengthUnit.Centimeter or LengthUnit.Meter;

    internal static LengthUnit KnownUnit(LengthUnit unit, string parameter) => unit switch
    {
        LengthUnit.Inch or LengthUnit.Foot or LengthUnit.Yard or LengthUnit.Millimeter or LengthUnit.Centimeter or LengthUnit.Meter => unit,
        _ => throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.ClothUnitUnknown, parameter, unit)),
    };

    private static TapeStyle KnownStyle(TapeStyle style) => style is TapeStyle.Plain or TapeStyle.Typographic
        ? style
        : throw new ArgumentOutOfRangeException(nameof(style), MessageRegistry.Format(DiagnosticCode.ChoiceUnknown, nameof(style), style));
}
