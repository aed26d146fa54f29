using System;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Measurement;

public class TapeFormatTests
{
    private static readonly TapeStep[] InchSteps =
        [TapeStep.Half, TapeStep.Quarter, TapeStep.Eighth, TapeStep.Sixteenth, TapeStep.ThirtySecond, TapeStep.SixtyFourth];

    private static readonly TapeStep[] MetricSteps =
        [TapeStep.Millimeter, TapeStep.HalfMillimeter, TapeStep.TenthMillimeter, TapeStep.HundredthMillimeter];

    // Common practice, no source: reduced fractions, never 4 10/16.
    [Theory]
    [InlineData(4.625, "4 5/8 in", "4⅝″")]
    [InlineData(4.0, "4 in", "4″")]
    [InlineData(0.5, "1/2 in", "½″")]
    [InlineData(0.1875, "3/16 in", "³⁄₁₆″")]
    [InlineData(10.328125, "10 21/64 in", "10²¹⁄₆₄″")]
    [InlineData(-4.625, "-4 5/8 in", "−4⅝″")]
    [InlineData(-0.125, "-1/8 in", "−⅛″")]
    [InlineData(0.0, "0 in", "0″")]
    [InlineData(-0.001, "0 in", "0″")]
    [InlineData(0.999, "1 in", "1″")]
    [InlineData(39_370.0, "39370 in", "39370″")]
    public void Format_InSixtyFourths_ReducesTheFraction(double inches, string plain, string typographic)
    {
        Assert.Equal(plain, Tape.Format(Length.FromInches(inches), TapeStep.SixtyFourth));
        Assert.Equal(typographic, Tape.Format(Length.FromInches(inches), TapeStep.SixtyFourth, TapeStyle.Typographic));
        Assert.Equal(plain.Replace(" in", string.Empty), Tape.FormatNumber(Length.FromInches(inches), TapeStep.SixtyFourth));
    }

    [Fact]
    public void Format_InMetric_HasTheDecimalsOfTheStep()
    {
        Length length = Length.FromMillimeters(515.2349);

        Assert.Equal("51.5 cm", Tape.Format(length, TapeStep.Millimeter));
        Assert.Equal("51.50 cm", Tape.Format(length, TapeStep.HalfMillimeter));
        Assert.Equal("51.52 cm", Tape.Format(length, TapeStep.TenthMillimeter));
        Assert.Equal("51.523 cm", Tape.Format(length, TapeStep.HundredthMillimeter));
        Assert.Equal("51.55 cm", Tape.Format(Length.FromMillimeters(515.4), TapeStep.HalfMillimeter));
        Assert.Equal("−51.5\u00A0cm", Tape.Format(-length, TapeStep.Millimeter, TapeStyle.Typographic));
        Assert.Equal("-51.5", Tape.FormatNumber(-length, TapeStep.Millimeter));
        Assert.Equal("0.0 cm", Tape.Format(Length.FromMillimeters(-0.1), TapeStep.Millimeter));
    }

    [Theory]
    [InlineData(TapeRounding.Nearest, 9.0625, 9.125)]
    [InlineData(TapeRounding.Nearest, 9.06, 9.0)]
    [InlineData(TapeRounding.Nearest, -9.0625, -9.125)]
    [InlineData(TapeRounding.Up, 9.0001, 9.125)]
    [InlineData(TapeRounding.Up, -9.0625, -9.0)]
    [InlineData(TapeRounding.Down, 9.1249, 9.0)]
    [InlineData(TapeRounding.Down, -9.0625, -9.125)]
    [InlineData(TapeRounding.Up, 9.125, 9.125)]
    [InlineData(TapeRounding.Down, 9.125, 9.125)]
    public void Round_ToEighths_GoesWhereAsked(TapeRounding rounding, double inches, double expected)
        => Assert.Equal(expected, Tape.Round(Length.FromInches(inches), TapeStep.Eighth, rounding).Inches, 12);

    // Three times 0.1 in is 0.30000000000000004 in doubles, and ten times 1/10 of an inch must not become 1 1/8 when rounded up.
    [Fact]
    public void Round_ErrorOfTheArithmeticOnly_StaysOnItsMark()
    {
        double sum = 0;
        for (int i = 0; i < 10; i++)
        {
            sum += 0.1 * Tape.MillimetresPerInch;
        }

        Assert.Equal(1.0, Tape.Round(Length.FromMillimeters(sum), TapeStep.Eighth, TapeRounding.Up).Inches, 12);
        Assert.Equal(1.0, Tape.Round(Length.FromMillimeters(sum), TapeStep.Eighth, TapeRounding.Down).Inches, 12);
    }

    [Fact]
    public void Step_SaysItsSizeAndUnit()
    {
        Assert.Equal(1.0 / 32, TapeStep.ThirtySecond.Size.Inches, 15);
        Assert.Equal(0.5, TapeStep.HalfMillimeter.Size.Millimeters, 15);
        Assert.Equal(LengthUnit.Inch, TapeStep.Half.Unit);
        Assert.Equal(LengthUnit.Centimeter, TapeStep.Millimeter.Unit);
        Assert.Equal(TapeStep.Eighth, default);
        Assert.Equal(TapeStep.Eighth, TapeStep.For(LengthUnit.Inch));
        Assert.Equal(TapeStep.Millimeter, TapeStep.For(LengthUnit.Centimeter));
        Assert.NotEqual(TapeStep.Half, TapeStep.HalfMillimeter);
        Assert.Equal(("1/8 in", "0.5 mm"), (TapeStep.Eighth.ToString(), TapeStep.HalfMillimeter.ToString()));
    }

    [Fact]
    public void Format_BadCall_IsTheCallersMistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.Format(Length.FromMeters(1001), TapeStep.Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.Format(Length.Zero, TapeStep.Eighth, (TapeStyle)7));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.Round(Length.Zero, TapeStep.Eighth, (TapeRounding)7));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tape.Round(Length.FromMeters(-1001), TapeStep.Eighth, TapeRounding.Up));
    }

    [Theory]
    [MemberData(nameof(Cultures.Awkward), MemberType = typeof(Cultures))]
    public void Format_UnderAnyCulture_IsTheSame(string culture) => Cultures.Under(culture, () =>
    {
        Assert.Equal("-4 5/8 in", Tape.Format(Length.FromInches(-4.625), TapeStep.Eighth));
        Assert.Equal("−4⅝″", Tape.Format(Length.FromInches(-4.625), TapeStep.Eighth, TapeStyle.Typographic));
        Assert.Equal("-51.52 cm", Tape.Format(Length.FromMillimeters(-515.2), TapeStep.TenthMillimeter));
        Assert.Equal("1/2 of hip -51.6 = -25.8 cm", WorkedLength.Given("hip", Length.FromMillimeters(-516)).Half().Describe(TapeStep.Millimeter));

        // Half of 51.5 is no whole millimetre, and "1/2 of 51.5 = 25.8" would be false: a sum is said to the half millimetre that makes it true.
        Assert.Equal("1/2 of hip -51.5 = -25.75 cm", WorkedLength.Given("hip", Length.FromMillimeters(-515)).Half().Describe(TapeStep.Millimeter));
    });

    // Every mark of 1/64 up to 400 in and back, whatever the step of the text: exhaustive, because it is cheap.
    [Fact]
    public void Format_EveryMarkUpToFourHundredInches_ReadsBackToTheSameTextAndNumber()
    {
        for (int marks = -25_600; marks <= 25_600; marks++)
        {
            Length length = Length.FromInches(marks / 64.0);
            Length throughMillimetres = Length.FromMillimeters(length.Millimeters);
            string text = Tape.Format(throughMillimetres, TapeStep.SixtyFourth);
            Length back = Tape.Parse(text, LengthUnit.Millimeter);

            Assert.Equal(marks / 64.0, back.Inches);
            Assert.Equal(text, Tape.Format(back, TapeStep.SixtyFourth));
            Assert.Equal(marks / 64.0, Tape.Inches(Tape.Format(length, TapeStep.SixtyFourth, TapeStyle.Typographic)).Inches);
        }
    }

    [Property]
    public bool Format_MarkOfAnyStep_ReadsBack(int marks, byte choice, bool typographic)
    {
        TapeStep step = StepOf(choice);
        Length length = Length.FromMillimeters(marks % 1_000_000 * step.Size.Millimeters);
        string text = Tape.Format(length, step, typographic ? TapeStyle.Typographic : TapeStyle.Plain);

        return Math.Abs(Tape.Parse(text, LengthUnit.Meter).Millimeters - length.Millimeters) <= 1e-9 * Math.Max(1, Math.Abs(length.Millimeters));
    }

    [Property]
    public bool Round_AnyLength_GoesTheWayItSays(int thousandths, byte choice)
    {
        TapeStep step = StepOf(choice);
        double value = thousandths % 10_000_000 / 1000.0;
        Length length = Length.FromMillimeters(value);
        double up = Tape.Round(length, step, TapeRounding.Up).Millimeters;
        double down = Tape.Round(length, step, TapeRounding.Down).Millimeters;
        double nearest = Tape.Round(length, step, TapeRounding.Nearest).Millimeters;
        double size = step.Size.Millimeters;
        const double slack = 1.001e-6;

        return up >= value - slack && up < value + size && down <= value + slack && down > value - size
            && Math.Abs(nearest - value) <= size / 2 + slack && (Math.Abs(nearest - up) < slack || Math.Abs(nearest - down) < slack);
    }

    // Any text at all: either it is refused, or what was read prints and reads back.
    [Property(MaxTest = 2000)]
    public bool TryParse_AnyText_NeverThrows(string? text)
        => !Tape.TryParse(text, LengthUnit.Inch, out Length length) || Math.Abs(length.Meters) <= 1000;

    [Property(MaxTest = 5000)]
    public bool TryParse_TextOfTapeCharacters_NeverThrowsAndIsBounded(byte[] choices)
    {
        const string alphabet = "0123456789 /-.,½⅝¼⅟⁄³₈\"incm\u2212\u00A0'";
        string text = string.Concat(Array.ConvertAll(choices ?? [], choice => alphabet[choice % alphabet.Length]));

        return !Tape.TryParse(text, LengthUnit.Centimeter, out Length length) || Math.Abs(length.Meters) <= 1000;
    }

    private static TapeStep StepOf(byte choice)
        => choice % 2 == 0 ? InchSteps[choice / 2 % InchSteps.Length] : MetricSteps[choice / 2 % MetricSteps.Length];
}
