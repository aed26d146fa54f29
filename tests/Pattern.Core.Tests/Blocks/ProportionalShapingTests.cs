using System.Collections.Generic;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet;

namespace Pattern.Core.Tests.Blocks;

public class ProportionalShapingTests
{
    private static ShapingReading Read(string waist, string hip, string hipEase, string waistEase = "0") => ShapingTable.Proportional.Read(
        ShapingQuery.For(Tape.Inches(waist), Tape.Inches(hip)).WithHipEase(Tape.Inches(hipEase)).WithWaistEase(Tape.Inches(waistEase)));

    // Common practice, no source: at a difference of 8 in the back is 1/2 wider, darts take 1 and 1 1/4, centre front drops 1.
    [Fact]
    public void Read_DifferenceOfEightInches_AgreesWithCommonPractice()
    {
        ShapingReading reading = Read("32", "40", "1");

        Assert.Equal(0.5, reading.BackWider.Value.Inches, 12);
        Assert.Equal(1.0, reading.FrontDartIntake.Value.Inches, 12);
        Assert.Equal(1.25, reading.BackDartIntake.Value.Inches, 12);
        Assert.Equal(1.0, reading.FrontDrop.Value.Inches, 12);
        Assert.Equal("proportional law for waist-hip difference 8 in", reading.Describe(TapeStep.Eighth));
        Assert.False(reading.IsClamped);
        Assert.Empty(reading.Rows);
    }

    [Fact]
    public void Read_ShowsItsWorking()
    {
        ShapingReading reading = Read("32", "40", "1", "1/2");

        Assert.Equal("1/16 of waist-hip difference 8 = 1/2 in", reading.BackWider.Describe(TapeStep.Eighth));
        Assert.Equal("1/2 of (front hip width 10 - quarter waist 8 1/8) = 15/16 in", reading.FrontDartIntake.Describe(TapeStep.Sixteenth));
        Assert.Equal("1/2 of (back hip width 10 1/2 - quarter waist 8 1/8) = 1 3/16 in", reading.BackDartIntake.Describe(TapeStep.Sixteenth));
        Assert.Equal("1/8 of waist-hip difference 8, at most 1 1/4 = 1 in", reading.FrontDrop.Describe(TapeStep.Eighth));
    }

    // Closed form of the law in section 2 of the trade's rules, worked by hand: D = 16, box = 20 1/2, back wider by 1.
    [Fact]
    public void Read_LargeDifference_CapsTheDropOnly()
    {
        ShapingReading reading = Read("24", "40", "1");

        Assert.Equal(31.75, reading.FrontDrop.Value.Millimeters, 12);
        Assert.Equal(1.0, reading.BackWider.Value.Inches, 12);
        Assert.Equal((9.75 - 6.0) / 2, reading.FrontDartIntake.Value.Inches, 12);
        Assert.Equal((10.75 - 6.0) / 2, reading.BackDartIntake.Value.Inches, 12);
    }

    [Theory]
    [InlineData("40", "40", 0.0)]
    [InlineData("42", "40", -0.125)]
    public void Read_WaistAsLargeAsTheHip_HasNoDartsAndNoDrop(string waist, string hip, double backWiderInches)
    {
        ShapingReading reading = Read(waist, hip, "4");

        Assert.Equal(backWiderInches, reading.BackWider.Value.Inches, 12);
        Assert.Equal(0.0, reading.FrontDartIntake.Value.Inches);
        Assert.Equal(0.0, reading.BackDartIntake.Value.Inches);
        Assert.Equal(0.0, reading.FrontDrop.Value.Inches);
        Assert.EndsWith("no darts, the waist is as large as the hip", reading.Describe(TapeStep.Eighth));
    }

    // Ease enough to turn the suppression round: intakes stop at nothing and say so.
    [Fact]
    public void Read_MoreWaistEaseThanSuppression_HasNoNegativeDart()
    {
        ShapingReading reading = Read("38", "40", "0", "4");

        Assert.Equal(0.0, reading.FrontDartIntake.Value.Inches);
        Assert.EndsWith(", at least 0 = 0 in", reading.FrontDartIntake.Describe(TapeStep.Eighth));
    }

    // The difference of girths that no double holds exactly must not lose the law its round figures.
    [Property]
    public bool Read_BodyScaled_ScalesTheReadingBelowTheCap(byte waistStep, byte differenceStep, byte scaleStep)
    {
        double waistMm = 500 + waistStep * 2.1;
        double differenceMm = differenceStep * 0.9;
        double scale = 0.5 + scaleStep / 512.0;
        ShapingReading plain = Query(waistMm, differenceMm, 1.0);
        ShapingReading scaled = Query(waistMm, differenceMm, scale);

        bool Same(WorkedLength one, WorkedLength other) => System.Math.Abs(one.Value.Millimeters * scale - other.Value.Millimeters) < 1e-9;
        return Same(plain.BackWider, scaled.BackWider) && Same(plain.FrontDartIntake, scaled.FrontDartIntake) && Same(plain.BackDartIntake, scaled.BackDartIntake)
            && Same(plain.FrontDrop, scaled.FrontDrop);
    }

    [Property]
    public bool Read_LargerDifference_NeverTakesInLess(byte waistStep, ushort one, ushort other)
    {
        double waistMm = 500 + waistStep * 3.0;
        (ushort small, ushort large) = one <= other ? (one, other) : (other, one);
        ShapingReading less = Query(waistMm, small * 0.006, 1.0);
        ShapingReading more = Query(waistMm, large * 0.006, 1.0);
        return less.FrontDartIntake.Value.Millimeters <= more.FrontDartIntake.Value.Millimeters + 1e-9
            && less.BackDartIntake.Value.Millimeters <= more.BackDartIntake.Value.Millimeters + 1e-9
            && less.FrontDrop.Value.Millimeters <= more.FrontDrop.Value.Millimeters + 1e-9
            && less.BackWider.Value.Millimeters <= more.BackWider.Value.Millimeters + 1e-9;
    }

    private static ShapingReading Query(double waistMm, double differenceMm, double scale) => ShapingTable.Proportional.Read(
        ShapingQuery.For(Length.FromMillimeters(waistMm * scale), Length.FromMillimeters((waistMm + differenceMm) * scale)).WithHipEase(Length.FromMillimeters(25.4 * scale)));

    public static IEnumerable<object[]> BadGirths =>
    [
        [Length.Zero],
        [Length.FromMillimeters(-700)],
        [Length.FromMeters(11)],
    ];

    [Theory]
    [MemberData(nameof(BadGirths))]
    public void For_GirthOutOfRange_IsRefused(Length girth)
    {
        Assert.Throws<System.ArgumentOutOfRangeException>(() => ShapingQuery.For(girth, Length.FromInches(40)));
        Assert.Throws<System.ArgumentOutOfRangeException>(() => ShapingQuery.For(Length.FromInches(32), girth));
    }
}
