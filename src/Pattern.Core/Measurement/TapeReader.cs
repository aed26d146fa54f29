using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Measurement;

/// <summary>Reads the text of a length, character by character, and says at which one it failed.</summary>
/// <remarks><code>
/// length   = [minus] number [unit]
/// number   = decimal | whole | fraction | whole join fraction
/// join     = spaces | "-" | nothing before a one-character fraction or raised digits
/// fraction = one-character fraction | ⅟ under | (digits | raised digits) stroke under
/// under    = digits | lowered digits
/// stroke   = "/" | ⁄ | ∕
/// </code>
/// Spaces, those that do not break included, may stand at both ends, before the unit and around a stroke.</remarks>
internal struct TapeReader
{
    private const int LongestText = 64;
    private const int LargestWhole = 9_999_999;

    // Finer than any tape; products with the largest whole number still fit a double exactly.
    private const int FinestPart = 9_999;
    private const int EchoedText = 40;
    private const string Digits = "0123456789";

    private readonly string _text;
    private readonly LengthUnit _unitOfBareNumbers;
    private int _at;

    // Where reading failed.
    private TapeReading? _failure;

    private TapeReader(string text, LengthUnit unitOfBareNumbers)
    {
        _text = text;
        _unitOfBareNumbers = unitOfBareNumbers;
        _at = 0;
        _failure = null;
    }

    private readonly bool AtEnd => _at >= _text.Length;

    private readonly char Here => AtEnd ? '\0' : _text[_at];

    internal static TapeReading Read(string text, LengthUnit unitOfBareNumbers) => new TapeReader(text, unitOfBareNumbers).Read();

    private TapeReading Read()
    {
        if (_text.Length > LongestText)
        {
            return new TapeReading(DiagnosticCode.LengthTextTooLong, _text.Substring(0, EchoedText) + "...", _text.Length, LongestText);
        }

        SkipSpaces();
        if (AtEnd)
        {
            return new TapeReading(DiagnosticCode.LengthTextEmpty);
        }

        bool negative = Here is '-' or TapeText.Minus;
        if (negative)
        {
            _at++;
        }

        int start = _at;
        if (!TryReadNumber(out decimal numerator, out int denominator))
        {
            return _failure!.Value;
        }

        if (!TryReadUnit(out LengthUnit unit))
        {
            return _failure!.Value;
        }

        double millimetres = Nearest(numerator * MillimetresOf(unit)) / denominator;
        if (millimetres > Tape.LongestMm)
        {
            _at = start;
            return Failure(DiagnosticCode.LengthTooLarge, Length.FromMillimeters(Tape.LongestMm));
        }

        double value = Nearest(numerator) / denominator;
        return negative && numerator != 0m
            ? new TapeReading(-value, unit, -millimetres, -numerator, denominator)
            : new TapeReading(value, unit, millimetres, numerator, denominator);
    }

    private bool TryReadNumber(out decimal numerator, out int denominator)
    {
        numerator = 0m;
        denominator = 1;
        if (IsFractionSign(Here))
        {
            return TryReadFraction(0, out numerator, out denominator);
        }

        int start = _at;
        if (Here == '.')
        {
            return TryReadDecimals(start, out numerator);
        }

        if (!TryReadDigits(Digits, LargestWhole, out int whole))
        {
            return false;
        }

        int end = _at;
        switch (Here)
        {
            case '.' when IsDigit(Peek(1)):
                return TryReadDecimals(start, out numerator);
            case ',' when IsDigit(Peek(1)):
                return Fails(DiagnosticCode.LengthAmbiguous, "a comma parts thousands for some and decimals for others. Write a point, or leave it out");
            case '-':
                _at++;
                return IsDigit(Here) || IsFractionSign(Here)
                    ? TryReadFraction(whole, out numerator, out denominator)
                    : Fails(DiagnosticCode.LengthNumberExpected, Found());
            default:
                break;
        }

        SkipSpaces();
        if (IsStroke(Here))
        {
            // No whole number: what was read stands above the stroke.
            _at = start;
            return TryReadFraction(0, out numerator, out denominator);
        }

        if (IsFractionSign(Here) || (_at > end && IsDigit(Here)))
        {
            return TryReadFraction(whole, out numerator, out denominator);
        }

        numerator = whole;
        return true;
    }

    private bool TryReadFraction(int whole, out decimal numerator, out int denominator)
    {
        int start = _at;
        denominator = 1;
        numerator = 0m;
        int over;
        if (VulgarFractions.TryRead(Here, out over, out denominator))
        {
            _at++;
        }
        else if (Here == VulgarFractions.OneOver)
        {
            over = 1;
            _at++;
            if (!TryReadDenominator(out denominator))
            {
                return false;
            }
        }
        else if (!TryReadStroked(whole, out over, out denominator))
        {
            return false;
        }

        if (denominator == 0)
        {
            _at = start;
            return Fails(DiagnosticCode.LengthFractionWrong, "nothing can be divided by 0");
        }

        if (over >= denominator && whole > 0)
        {
            _at = start;
            return Fails(DiagnosticCode.LengthFractionWrong, "after a whole number it must be less than one");
        }

        if (over >= denominator && SplitWhole(over, denominator) is string split)
        {
            // 45/8 is what is left of 4 5/8 when its space gets lost: an inch and more too long, and nobody would see it.
            _at = start;
            return Fails(DiagnosticCode.LengthAmbiguous, "it may be " + split + " without its space, or " + Fraction.Of(over, denominator) + ". Write it as a whole number and a fraction");
        }

        numerator = (decimal)whole * denominator + over;
        return true;
    }

    // Digits, a stroke, digits; or the raised and lowered digits of a typesetter.
    private bool TryReadStroked(int whole, out int over, out int under)
    {
        int start = _at;
        under = 1;
        bool raised = IsRaised(Here);
        if (!TryReadDigits(raised ? VulgarFractions.Raised : Digits, FinestPart, out over))
        {
            return false;
        }

        SkipSpaces();
        if (!IsStroke(Here))
        {
            _at = start;
            if (raised)
            {
                return Fails(DiagnosticCode.LengthFractionWrong, "raised digits need a stroke and lowered digits after them");
            }

            string pair = whole.ToString(CultureInfo.InvariantCulture) + " and " + over.ToString(CultureInfo.InvariantCulture);
            return Fails(DiagnosticCode.LengthAmbiguous, "two numbers, " + pair + ", stand side by side. Write one number, or a fraction with its stroke");
        }

        _at++;
        SkipSpaces();
        return TryReadDenominator(out under);
    }

    private bool TryReadDenominator(out int under)
        => TryReadDigits(VulgarFractions.Lowered.IndexOf(Here) >= 0 ? VulgarFractions.Lowered : Digits, FinestPart, out under);

    private bool TryReadDecimals(int start, out decimal number)
    {
        number = 0m;
        _at++;
        if (!IsDigit(Here))
        {
            return Fails(DiagnosticCode.LengthNumberExpected, Found());
        }

        while (IsDigit(Here))
        {
            _at++;
        }

        number = decimal.Parse(_text.Substring(start, _at - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        int end = _at;
        if (Here == '.')
        {
            return Fails(DiagnosticCode.LengthAmbiguous, "a second point. Write one point, before the decimals");
        }

        SkipSpaces();
        if (IsFractionSign(Here) || IsStroke(Here) || (Here == '-' && IsDigit(Peek(1))) || (_at > end && IsDigit(Here)))
        {
            return Fails(DiagnosticCode.LengthAmbiguous, "a decimal number and a fraction. Write one of the two");
        }

        return true;
    }

    private bool TryReadDigits(string digits, int most, out int number)
    {
        int start = _at;
        number = 0;
        while (!AtEnd && digits.IndexOf(Here) is int digit and >= 0)
        {
            if (number > (most - digit) / 10)
            {
                _at = start;
                return most == FinestPart
                    ? Fails(DiagnosticCode.LengthFractionWrong, "no tape has more than 9999 parts")
                    : Fails(DiagnosticCode.LengthTooLarge, Length.FromMillimeters(Tape.LongestMm));
            }

            number = number * 10 + digit;
            _at++;
        }

        return _at > start || Fails(DiagnosticCode.LengthNumberExpected, Found());
    }

    private bool TryReadUnit(out LengthUnit unit)
    {
        unit = _unitOfBareNumbers;
        SkipSpaces();
        if (AtEnd)
        {
            return true;
        }

        int start = _at;
        string? word = TapeUnits.WordAt(_text, _at);
        if (word is null)
        {
            return Fails(DiagnosticCode.LengthTextGoesOn, Found());
        }

        if (!TapeUnits.TryRead(word, out unit))
        {
            return Fails(DiagnosticCode.LengthUnitUnknown, TapeUnits.WhyNot(word));
        }

        _at = start + word.Length;
        SkipSpaces();
        return AtEnd || Fails(DiagnosticCode.LengthTextGoesOn, Found());
    }

    // 4 5/8 for 45/8, where leaving out digits at the front makes a fraction less than one; null where nothing is left or it starts with 0.
    private static string? SplitWhole(int over, int denominator)
    {
        for (int power = 10; power <= over; power *= 10)
        {
            int rest = over % power;
            if (rest >= power / 10 && rest < denominator)
            {
                return (over / power).ToString(CultureInfo.InvariantCulture) + " " + rest.ToString(CultureInfo.InvariantCulture)
                    + "/" + denominator.ToString(CultureInfo.InvariantCulture);
            }
        }

        return null;
    }

    // The double next to it: the cast rounds twice where there are more than 15 digits, and would not read back what was printed.
    private static double Nearest(decimal exact) => double.Parse(exact.ToString(CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    private static decimal MillimetresOf(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => 25.4m,
        LengthUnit.Foot => 304.8m,
        LengthUnit.Yard => 914.4m,
        LengthUnit.Millimeter => 1m,
        LengthUnit.Centimeter => 10m,
        _ => 1000m,
    };

    private static bool IsDigit(char sign) => sign is >= '0' and <= '9';

    private static bool IsStroke(char sign) => sign is '/' or TapeText.FractionSlash or '\u2215';

    private static bool IsRaised(char sign) => VulgarFractions.Raised.IndexOf(sign) >= 0;

    private static bool IsFractionSign(char sign) => sign == VulgarFractions.OneOver || IsRaised(sign) || VulgarFractions.TryRead(sign, out _, out _);

    private readonly char Peek(int ahead) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private void SkipSpaces()
    {
        while (!AtEnd && char.IsWhiteSpace(Here))
        {
            _at++;
        }
    }

    // What can't be seen, or is half a character, by its number.
    private readonly string Found() => AtEnd ? "the end"
        : char.IsLetterOrDigit(Here) || char.IsPunctuation(Here) || char.IsSymbol(Here) ? "'" + Here + "'"
        : "U+" + ((int)Here).ToString("X4", CultureInfo.InvariantCulture);

    private bool Fails(DiagnosticCode code, object fact)
    {
        _failure = Failure(code, fact);
        return false;
    }

    private readonly TapeReading Failure(DiagnosticCode code, object fact) => new(code, _text, _at + 1, fact);
}
