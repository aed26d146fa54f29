using System;
using System.Globalization;
using System.Text;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Measurement;

public class TapeParseTests
{
    // Common practice, no source: the forms in which drafters write a length. Values by the definition of the inch, 25.4 mm.
    public static TheoryData<string, double> Forms => new()
    {
        { "4 5/8", 117.475 },
        { "4-5/8", 117.475 },
        { "4 5/8 in", 117.475 },
        { "4 5/8in", 117.475 },
        { "4 5/8 in.", 117.475 },
        { "4 5/8 inches", 117.475 },
        { "1 inch", 25.4 },
        { "4 5/8 IN", 117.475 },
        { "4⅝\"", 117.475 },
        { "4 ⅝\u201D", 117.475 },
        { "4⅝\u2033", 117.475 },
        { "4-⅝", 117.475 },
        { "4.625", 117.475 },
        { ".5", 12.7 },
        { "0.5", 12.7 },
        { "11.75 cm", 117.5 },
        { "11.75cm", 117.5 },
        { "11.75 CM", 117.5 },
        { "117 mm", 117.0 },
        { "1.2 m", 1200.0 },
        { "1/2 cm", 5.0 },
        { "  4 5/8  ", 117.475 },
        { "\u00A04\u00A05/8\u202Fin\u2009", 117.475 },
        { "\t4  5 / 8", 117.475 },
        { "4 5\u20448", 117.475 },
        { "4 5 \u2044 8", 117.475 },
        { "4 5\u22158", 117.475 },
        { "4\u2075\u2044\u2088", 117.475 },
        { "4 \u2075/8", 117.475 },
        { "4\u215F\u2088", 104.775 },
        { "4 \u215F8", 104.775 },
        { "\u00B3\u2044\u2081\u2086", 4.7625 },
        { "63/64", 25.4 * 63 / 64 },
        { "4 10/16", 117.475 },
        { "5/4", 31.75 },
        { "100/16", 158.75 },
        { "4 0/8", 101.6 },
        { "007", 177.8 },
        { "0", 0.0 },
        { "-4 5/8", -117.475 },
        { "-4-5/8", -117.475 },
        { "\u22124⅝\u2033", -117.475 },
        { "-0", 0.0 },
        { "4.62500000000000000000000000000000000", 117.475 },
        { "39370 in", 999998.0 },
        { "1000 m", 1000000.0 },
    };

    public static TheoryData<char, int, int> OneCharacterFractions => new()
    {
        { '¼', 1, 4 }, { '½', 1, 2 }, { '¾', 3, 4 }, { '⅐', 1, 7 }, { '⅑', 1, 9 }, { '⅒', 1, 10 }, { '⅓', 1, 3 }, { '⅔', 2, 3 }, { '⅕', 1, 5 }, { '⅖', 2, 5 },
        { '⅗', 3, 5 }, { '⅘', 4, 5 }, { '⅙', 1, 6 }, { '⅚', 5, 6 }, { '⅛', 1, 8 }, { '⅜', 3, 8 }, { '⅝', 5, 8 }, { '⅞', 7, 8 }, { '↉', 0, 3 },
    };

    // Text, code, the character it went wrong at.
    public static TheoryData<string, string, int> Refused => new()
    {
        { "11,75", "PC1005", 3 },
        { "11,75 cm", "PC1005", 3 },
        { "1,234.5", "PC1005", 2 },
        { "11, 75", "PC1008", 3 },
        { "1.234.5", "PC1005", 6 },
        { "1 2", "PC1005", 3 },
        { "1 000", "PC1005", 3 },
        { "4-5", "PC1005", 3 },
        { "45/8", "PC1005", 1 },
        { "11/8 in", "PC1005", 1 },
        { " 115/16", "PC1005", 2 },
        { "4.5 5/8", "PC1005", 5 },
        { "4.5⅝", "PC1005", 4 },
        { "4.5-5/8", "PC1005", 4 },
        { "4.5/8", "PC1005", 4 },
        { "1/0", "PC1006", 1 },
        { "3 1/0", "PC1006", 3 },
        { "4 9/8", "PC1006", 3 },
        { "4 8/8", "PC1006", 3 },
        { "4\u00B2", "PC1006", 2 },
        { "1/99999", "PC1006", 3 },
        { "1/", "PC1004", 3 },
        { "/2", "PC1004", 1 },
        { "4-", "PC1004", 3 },
        { "4- 5/8", "PC1004", 3 },
        { "--4", "PC1004", 2 },
        { "- 4", "PC1004", 2 },
        { "+4", "PC1004", 1 },
        { "in", "PC1004", 1 },
        { "\u20134", "PC1004", 1 },
        { ".", "PC1004", 2 },
        { "NaN", "PC1004", 1 },
        { "Infinity", "PC1004", 1 },
        { "-\u221E", "PC1004", 2 },
        { "\u0664", "PC1004", 1 },
        { "\uFF14", "PC1004", 1 },
        { "(4)", "PC1004", 1 },
        { "1e3", "PC1007", 2 },
        { "0x10", "PC1007", 2 },
        { "5 ft", "PC1007", 3 },
        { "5'4\"", "PC1007", 2 },
        { "5 yd", "PC1007", 3 },
        { "4 pt", "PC1007", 3 },
        { "4 \u0130N", "PC1007", 3 },
        { "4 centimetr", "PC1007", 3 },
        { "3 in 4 cm", "PC1008", 6 },
        { "3 in 4", "PC1008", 6 },
        { "3\"\"", "PC1008", 3 },
        { "4 5/8/", "PC1008", 6 },
        { "1/2/3", "PC1008", 4 },
        { "½½", "PC1008", 2 },
        { "½ 1/2", "PC1008", 3 },
        { "4 - 5/8", "PC1008", 3 },
        { "4.", "PC1008", 2 },
        { "5 cm.", "PC1008", 5 },
        { "4\u200B", "PC1008", 2 },
        { "4 \uD83D\uDCCF", "PC1008", 3 },
        { "1001 m", "PC1009", 1 },
        { "-39371", "PC1009", 2 },
        { "99999999999", "PC1009", 1 },
        { "9999999.5 m", "PC1009", 1 },
    };

    [Theory]
    [MemberData(nameof(Forms))]
    public void Inches_EveryFormOfTheTrade_IsRead(string text, double millimetres)
    {
        Assert.Equal(millimetres, Tape.Inches(text).Millimeters, 1e-9);
        Assert.True(Tape.TryParse(text, LengthUnit.Inch, out Length length));
        Assert.Equal(millimetres, length.Millimeters, 1e-9);
    }

    [Theory]
    [MemberData(nameof(OneCharacterFractions))]
    public void Inches_OneCharacterFraction_HasItsUnicodeValue(char sign, int numerator, int denominator)
    {
        Assert.Equal((double)numerator / denominator, Tape.Inches(sign.ToString()).Inches, 1e-15);
        Assert.Equal(7 + (double)numerator / denominator, Tape.Inches("7" + sign).Inches, 1e-14);

        // The Unicode character database decomposes the sign into its digits around a fraction slash.
        string decomposed = sign.ToString().Normalize(NormalizationForm.FormKD);
        Assert.Equal(FormattableString.Invariant($"{numerator}\u2044{denominator}"), decomposed);
        Assert.Equal((double)numerator / denominator, Tape.Inches("7 " + decomposed).Inches - 7, 1e-14);
    }

    [Fact]
    public void Inches_AnyOtherCharacterWithAFractionValue_IsRefusedOrRight()
    {
        for (int code = 0; code <= char.MaxValue; code++)
        {
            char sign = (char)code;
            bool isRead = Tape.TryParse(sign.ToString(), LengthUnit.Inch, out Length length);
            if (isRead)
            {
                Assert.Equal(CharUnicodeInfo.GetNumericValue(sign), length.Inches, 1e-15);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Parse_WhatIsNoLengthOrTwo_NamesTextCodeAndCharacter(string text, string code, int character)
    {
        var error = Assert.Throws<FormatException>(() => Tape.Inches(text));

        Assert.StartsWith(code, error.Message);
        Assert.Contains("\"" + text + "\"", error.Message);
        Assert.Contains(FormattableString.Invariant($"at character {character}"), error.Message);
        Assert.False(Tape.TryParse(text, LengthUnit.Inch, out Length length));
        Assert.Equal(0.0, length.Millimeters);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\u00A0")]
    public void Parse_Nothing_SaysSo(string text)
        => Assert.StartsWith("PC1002", Assert.Throws<FormatException>(() => Tape.Inches(text)).Message);

    [Fact]
    public void Parse_AbsurdlyLongText_IsNotEchoedWhole()
    {
        var error = Assert.Throws<FormatException>(() => Tape.Inches(new string('4', 1_000_000)));

        Assert.StartsWith("PC1003", error.Message);
        Assert.True(error.Message.Length < 300);
    }

    [Fact]
    public void Parse_LostSpace_ShowsBothReadings()
        => Assert.Contains("it may be 4 5/8 without its space, or 5 5/8", Assert.Throws<FormatException>(() => Tape.Inches("45/8")).Message);

    // A minus zero would print its sign in hosts that format numbers themselves.
    [Theory]
    [InlineData("-0")]
    [InlineData("\u22120/8 cm")]
    public void Parse_NothingWithASign_IsPlainNothing(string text) => Assert.False(double.IsNegative((double)Tape.Inches(text).Value));

    [Fact]
    public void TryParse_Null_IsNoLength() => Assert.False(Tape.TryParse(null, LengthUnit.Inch, out _));

    [Theory]
    [InlineData(LengthUnit.Inch, 25.4)]
    [InlineData(LengthUnit.Foot, 304.8)]
    [InlineData(LengthUnit.Yard, 914.4)]
    [InlineData(LengthUnit.Millimeter, 1.0)]
    [InlineData(LengthUnit.Centimeter, 10.0)]
    [InlineData(LengthUnit.Meter, 1000.0)]
    public void Parse_BareNumber_TakesTheUnitOfTheCaller(LengthUnit unit, double millimetres)
    {
        Assert.Equal(1.5 * millimetres, Tape.Parse("1 1/2", unit).Millimeters, 1e-9);
        Assert.Equal(unit, Tape.Parse("1 1/2", unit).Unit);
        Assert.Equal(38.1, Tape.Parse("1 1/2 in", unit).Millimeters, 1e-9);
    }

    [Fact]
    public void Centimeters_BareNumber_IsInCentimetres() => Assert.Equal(117.5, Tape.Centimeters("11.75").Millimeters, 1e-9);

    [Fact]
    public void Parse_BadCall_IsTheCallersMistake()
    {
        Assert.Throws<ArgumentNullException>(() => Tape.Inches(null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.Parse("1", LengthUnit.LightYear));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.TryParse("1", (LengthUnit)9999, out _));
    }

    [Theory]
    [MemberData(nameof(Cultures.Awkward), MemberType = typeof(Cultures))]
    public void Parse_UnderAnyCulture_IsTheSame(string culture) => Cultures.Under(culture, () =>
    {
        foreach (object[] form in Forms)
        {
            Assert.Equal((double)form[1], Tape.Inches((string)form[0]).Millimeters, 1e-9);
        }

        foreach (object[] refused in Refused)
        {
            string message = Assert.Throws<FormatException>(() => Tape.Inches((string)refused[0])).Message;
            Assert.StartsWith((string)refused[1], message);
            Assert.Contains("at character " + ((int)refused[2]).ToString(CultureInfo.InvariantCulture), message);
        }
    });
}
