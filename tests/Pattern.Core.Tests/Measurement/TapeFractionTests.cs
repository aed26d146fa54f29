using System;
using System.Numerics;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Tests.Measurement;

public class TapeFractionTests
{
    // Common practice, no source: half of 9 1/4 is 4 5/8, and the sheet must say so.
    [Fact]
    public void Half_OfNineAndAQuarter_IsFourAndFiveEighths()
    {
        TapeFraction half = TapeFraction.Parse("9 1/4").Half();

        Assert.Equal((4, 5, 8), (half.Whole, half.Numerator, half.Denominator));
        Assert.Equal("4 5/8", half.ToString());
        Assert.Equal("4⅝", half.ToString(TapeStyle.Typographic));
        Assert.Equal(TapeFraction.FromParts(37, 8), half);
    }

    [Theory]
    [InlineData("4 10/16", "4 5/8")]
    [InlineData("4.625", "4 5/8")]
    [InlineData("⅓", "1/3")]
    [InlineData("-3/16", "-3/16")]
    [InlineData("0.1", "1/10")]
    [InlineData("7", "7")]
    [InlineData("-0", "0")]
    [InlineData("1.50000000000000", "1 1/2")]
    public void Parse_IsExactAndReduced(string text, string reduced) => Assert.Equal(reduced, TapeFraction.Parse(text).ToString());

    [Fact]
    public void Negative_KeepsItsPartsWithoutTheSign()
    {
        TapeFraction value = TapeFraction.FromParts(-37, 8);

        Assert.Equal((-1, 4, 5, 8), (value.Sign, value.Whole, value.Numerator, value.Denominator));
        Assert.Equal("-4 5/8", value.ToString());
        Assert.Equal("−4⅝", value.ToString(TapeStyle.Typographic));
    }

    [Fact]
    public void Default_IsNothing()
    {
        Assert.Equal(TapeFraction.Zero, TapeFraction.FromParts(0, 64));
        Assert.Equal((0, 0, 0, 1), (TapeFraction.Zero.Sign, TapeFraction.Zero.Whole, TapeFraction.Zero.Numerator, TapeFraction.Zero.Denominator));
        Assert.Equal("0", TapeFraction.Zero.ToString());
        Assert.Equal(0.0, TapeFraction.Zero.ToLength().Inches);
    }

    [Fact]
    public void FromLength_ReadsTheTapeAtItsStep()
    {
        Length length = Length.FromInches(9.06);

        Assert.Equal("9 1/16", TapeFraction.FromLength(length, TapeStep.Sixteenth).ToString());
        Assert.Equal("9 1/8", TapeFraction.FromLength(length, TapeStep.Eighth, TapeRounding.Up).ToString());
        Assert.Equal("9", TapeFraction.FromLength(length, TapeStep.Eighth, TapeRounding.Down).ToString());
        Assert.Throws<ArgumentException>(() => TapeFraction.FromLength(length, TapeStep.Millimeter));
    }

    [Fact]
    public void Parse_MetricOrTooFine_IsRefused()
    {
        Assert.StartsWith("PC1011", Assert.Throws<FormatException>(() => TapeFraction.Parse("4 cm")).Message);
        Assert.StartsWith("PC1005", Assert.Throws<FormatException>(() => TapeFraction.Parse("1 2")).Message);
        Assert.StartsWith("PC1010", Assert.Throws<OverflowException>(() => TapeFraction.Parse("0.12345678901234567")).Message);
        Assert.Throws<ArgumentNullException>(() => TapeFraction.Parse(null!));
    }

    // 1/1024 and 1/2048 written out, by long division.
    [Fact]
    public void Parse_OfTenDecimals_IsExactAndOfElevenRefused()
    {
        Assert.Equal(TapeFraction.FromParts(1, 1024), TapeFraction.Parse("0.0009765625"));
        Assert.StartsWith("PC1010", Assert.Throws<OverflowException>(() => TapeFraction.Parse("0.00048828125")).Message);
    }

    [Fact]
    public void Arithmetic_BeyondItsRoom_ThrowsInsteadOfLosingAnything()
    {
        TapeFraction finest = TapeFraction.FromParts(1, 1_000_000_000);
        TapeFraction largest = TapeFraction.FromParts(39_370, 1);

        Assert.Throws<OverflowException>(() => finest.Half());
        Assert.Throws<OverflowException>(() => largest + largest);
        Assert.Throws<OverflowException>(() => largest.Times(int.MinValue));
        Assert.Throws<OverflowException>(() => TapeFraction.FromParts(long.MinValue, 1));
        Assert.Throws<OverflowException>(() => TapeFraction.FromParts(1, long.MaxValue));
        Assert.Throws<OverflowException>(() => finest + TapeFraction.FromParts(1, 999_999_937));
        Assert.Throws<ArgumentOutOfRangeException>(() => TapeFraction.FromParts(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => finest.DividedBy(0));
        Assert.True(finest > TapeFraction.Zero && finest < largest && -largest < -finest);
    }

    [Property]
    public bool TwoHalvesAndFourQuarters_AreTheWhole(int parts)
    {
        TapeFraction whole = TapeFraction.FromParts(parts % 2_000_000, 64);
        return whole.Half() + whole.Half() == whole && whole.Quarter().Times(4) == whole && whole.DividedBy(3).Times(3) == whole;
    }

    // Against arithmetic of unlimited size.
    [Property]
    public bool SumsAndOrder_AgreeWithBigIntegers(int one, ushort under, int other, ushort otherUnder)
    {
        (long a, long b, long c, long d) = (one % 1_000_000, 1L + under % 30_000, other % 1_000_000, 1L + otherUnder % 30_000);
        if (Math.Abs(a) / b + Math.Abs(c) / d > 39_000)
        {
            return true;
        }

        TapeFraction left = TapeFraction.FromParts(a, b);
        TapeFraction right = TapeFraction.FromParts(c, d);
        return IsRatio(left + right, (BigInteger)a * d + (BigInteger)c * b, (BigInteger)b * d)
            && IsRatio(left - right, (BigInteger)a * d - (BigInteger)c * b, (BigInteger)b * d)
            && left.CompareTo(right) == ((BigInteger)a * d).CompareTo((BigInteger)c * b)
            && (left == right) == ((BigInteger)a * d == (BigInteger)c * b)
            && (left != right || left.GetHashCode() == right.GetHashCode());
    }

    [Property]
    public bool Parse_OfItsOwnText_RestoresIt(int parts, byte power, bool typographic)
    {
        TapeFraction value = TapeFraction.FromParts(parts % 1_000_000, 1 << (power % 12));
        string text = value.ToString(typographic ? TapeStyle.Typographic : TapeStyle.Plain);
        return TapeFraction.Parse(text) == value && TapeFraction.FromLength(value.ToLength(), TapeStep.SixtyFourth).CompareTo(value) == 0 == (64 % value.Denominator == 0);
    }

    private static bool IsRatio(TapeFraction value, BigInteger numerator, BigInteger denominator)
        => value.Sign * (value.Whole * value.Denominator + value.Numerator) * denominator == numerator * value.Denominator
            && BigInteger.GreatestCommonDivisor(value.Numerator, value.Denominator) == 1;
}
