using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

public class TabulatedShapingTests
{
    // An invented table of the wardrobe room's.
    private static readonly TabulatedShaping Table = ShapingTable.In(LengthUnit.Inch).Named("wardrobe room")
        .Row(difference: "6", backWider: "3/8", frontDart: "3/4", backDart: "1", frontDrop: "3/4")
        .Row(difference: "8", backWider: "1/2", frontDart: "1", backDart: "1 1/4", frontDrop: "1")
        .Row(difference: "12", backWider: "3/4", frontDart: "1 1/2", backDart: "2", frontDrop: "1 1/4");

    private static ShapingQuery Body(double differenceInches) => ShapingQuery.For(Length.FromInches(30), Length.FromInches(30 + differenceInches));

    [Theory]
    [InlineData(ShapingLookup.Nearest, 6.9, 6.0)]
    [InlineData(ShapingLookup.Nearest, 7.0, 8.0)]
    [InlineData(ShapingLookup.Nearest, 9.9, 8.0)]
    [InlineData(ShapingLookup.Nearest, 10.0, 12.0)]
    [InlineData(ShapingLookup.AtOrAbove, 6.0, 6.0)]
    [InlineData(ShapingLookup.AtOrAbove, 6.1, 8.0)]
    [InlineData(ShapingLookup.AtOrAbove, 8.0, 8.0)]
    [InlineData(ShapingLookup.AtOrAbove, 8.1, 12.0)]
    [InlineData(ShapingLookup.AtOrAbove, 12.0, 12.0)]
    public void Read_ByOneRow_ServesTheRuleOfTheTable(ShapingLookup lookup, double difference, double row)
    {
        ShapingReading reading = Table.ReadBy(lookup).Read(Body(difference));

        Assert.Equal(row, reading.Rows.Single().Difference.Inches, 9);
        Assert.Equal(reading.Rows.Single().FrontDart.Millimeters, reading.FrontDartIntake.Value.Millimeters, 12);
        Assert.False(reading.IsClamped);
    }

    // Worked by hand: 9 stands a quarter of the way from 8 to 12.
    [Fact]
    public void Read_Interpolated_IsInProportionBetweenTheRows()
    {
        ShapingReading reading = Table.ReadBy(ShapingLookup.Interpolated).Read(Body(9));

        Assert.Equal(0.5625, reading.BackWider.Value.Inches, 9);
        Assert.Equal(1.125, reading.FrontDartIntake.Value.Inches, 9);
        Assert.Equal(1.4375, reading.BackDartIntake.Value.Inches, 9);
        Assert.Equal(1.0625, reading.FrontDrop.Value.Inches, 9);
        Assert.Equal("wardrobe room: between row 8 and row 12, interpolated for waist-hip difference 9 in", reading.Describe(TapeStep.Eighth));
    }

    [Fact]
    public void Describe_SaysWhichRowServedAndWhy()
    {
        Assert.Equal("wardrobe room: row 8 for waist-hip difference 8 in", Table.Read(Body(8)).Describe(TapeStep.Eighth));
        Assert.Equal("wardrobe room: row 8, nearest to waist-hip difference 8 1/4 in", Table.Read(Body(8.25)).Describe(TapeStep.Eighth));
        Assert.Equal("wardrobe room: row 12, at or above waist-hip difference 8 1/4 in", Table.ReadBy(ShapingLookup.AtOrAbove).Read(Body(8.25)).Describe(TapeStep.Eighth));
        Assert.Equal("wardrobe room: row ~20.3, nearest to waist-hip difference 21.0 cm", Table.Read(Body(21 / 2.54)).Describe(TapeStep.Millimeter));
    }

    [Theory]
    [InlineData(3, "wardrobe room: first row 6, clamped for waist-hip difference 3 in", 0.75)]
    [InlineData(-2, "wardrobe room: first row 6, clamped for waist-hip difference -2 in", 0.75)]
    [InlineData(14, "wardrobe room: last row 12, clamped for waist-hip difference 14 in", 1.5)]
    public void Read_OutsideAClampedTable_TakesTheEndRowAndSaysSo(double difference, string served, double frontDart)
    {
        foreach (ShapingLookup lookup in new[] { ShapingLookup.Nearest, ShapingLookup.AtOrAbove, ShapingLookup.Interpolated })
        {
            ShapingReading reading = Table.ReadBy(lookup).Outside(ShapingOutside.Clamp).Read(Body(difference));

            Assert.True(reading.IsClamped);
            Assert.Equal(served, reading.Describe(TapeStep.Eighth));
            Assert.Equal(frontDart, reading.FrontDartIntake.Value.Inches, 9);
        }
    }

    [Theory]
    [InlineData(3, 6)]
    [InlineData(14, 12)]
    public void Read_OutsideARefusingTable_IsRefusedWithItsEnds(double difference, double end)
    {
        var error = Assert.Throws<ConstructionException>(() => Table.Read(Body(difference)));

        Assert.Equal(DiagnosticCode.ShapingOutsideTable, error.Code);
        Assert.Equal(difference, error.Measured!.Value.Inches, 9);
        Assert.Equal(end, error.Allowed!.Value.Inches, 9);
        Assert.Contains("\"wardrobe room\" covers 152.4 mm (6.0 in) to 304.8 mm (12.0 in)", error.Message);
    }

    [Fact]
    public void Read_TableWithoutRows_IsRefused()
        => Assert.Equal(DiagnosticCode.ShapingTableEmpty, Assert.Throws<ConstructionException>(() => ShapingTable.In(LengthUnit.Inch).Read(Body(8))).Code);

    // 1,016 mm - 812.8 mm is 203.2000...1 in doubles: the row of 203.2 must serve all the same, at every pair of girths.
    [Property]
    public bool Read_AtOrAboveOnARow_ServesThatRow(ushort waistSteps)
    {
        Length waist = Length.FromInches(20 + waistSteps / 1000.0);
        ShapingReading reading = Table.ReadBy(ShapingLookup.AtOrAbove).Read(ShapingQuery.For(waist, Length.FromInches(waist.Inches + 8)));
        return Math.Abs(reading.Rows.Single().Difference.Inches - 8) < 1e-9;
    }

    [Property]
    public bool Read_Interpolated_StaysBetweenItsRowsAndRises(ushort one, ushort other)
    {
        (double small, double large) = one <= other ? (one, other) : ((double)other, one);
        TabulatedShaping table = Table.ReadBy(ShapingLookup.Interpolated);
        ShapingReading less = table.Read(Body(6 + 6 * small / ushort.MaxValue));
        ShapingReading more = table.Read(Body(6 + 6 * large / ushort.MaxValue));

        bool between = less.Rows[0].BackDart <= less.BackDartIntake.Value && less.BackDartIntake.Value <= less.Rows[less.Rows.Count - 1].BackDart;
        return between && less.BackDartIntake.Value <= more.BackDartIntake.Value && less.FrontDrop.Value <= more.FrontDrop.Value;
    }

    // 0.7 times itself in two parts is not always itself in doubles; a figure that both rows share must come out as it went in.
    [Property]
    public bool Read_InterpolatedBetweenEqualFigures_IsThatFigure(ushort figure, ushort place)
    {
        Length same = Length.FromMillimeters(figure / 700.0);
        ShapingReading reading = ShapingTable.In(LengthUnit.Inch).ReadBy(ShapingLookup.Interpolated)
            .Row(Length.FromInches(6), same, same, same, same)
            .Row(Length.FromInches(12), same, same, same, same)
            .Read(Body(6 + 6.0 * place / ushort.MaxValue));
        return reading.BackWider.ValueMm == same.Millimeters && reading.FrontDrop.ValueMm == same.Millimeters;
    }

    [Fact]
    public void Verbs_ReturnANewTableAndLeaveTheOld()
    {
        TabulatedShaping bare = ShapingTable.In(LengthUnit.Centimeter);
        TabulatedShaping full = bare.Named("metric").Row("20", "1.2", "2.5", "3", "2.5").ReadBy(ShapingLookup.Interpolated).Outside(ShapingOutside.Clamp);

        Assert.Empty(bare.Rows);
        Assert.Equal("shaping table", bare.Name);
        Assert.Equal(ShapingLookup.Nearest, bare.Lookup);
        Assert.Equal(ShapingOutside.Refuse, bare.OutsideRule);
        Assert.Equal("metric", full.Name);
        Assert.Equal(200, full.Rows.Single().Difference.Millimeters, 12);
        Assert.Equal(ShapingLookup.Interpolated, full.Lookup);
        Assert.Equal(ShapingOutside.Clamp, full.OutsideRule);
    }

    [Fact]
    public void Row_FromLengthsOrText_IsTheSame()
    {
        TabulatedShaping table = ShapingTable.In(LengthUnit.Inch)
            .Row(Length.FromInches(6), Length.FromInches(0.375), Length.FromInches(0.75), Length.FromInches(1), Length.FromInches(0.75))
            .Row(new ShapingRow(Length.FromInches(8), Length.FromInches(0.5), Length.FromInches(1), Length.FromInches(1.25), Length.FromInches(1)));

        Assert.Equal(Table.Rows[0].BackWider.Millimeters, table.Rows[0].BackWider.Millimeters, 12);
        Assert.Equal(Table.Rows[1].BackDart.Millimeters, table.Rows[1].BackDart.Millimeters, 12);
    }

    [Theory]
    [InlineData("12", "1", "1", "1", "1", "PC5008", "row 4, column 1 (difference)")]
    [InlineData("10", "1", "1", "1", "1", "PC5007", "row 4, column 1 (difference)")]
    [InlineData("13", "1", "-1", "1", "1", "PC5005", "row 4, column 3 (front_dart)")]
    [InlineData("13", "1", "1", "-1/64", "1", "PC5005", "row 4, column 4 (back_dart)")]
    [InlineData("13", "1", "1", "1", "60 cm", "PC5006", "row 4, column 5 (front_drop)")]
    [InlineData("3 m", "1", "1", "1", "1", "PC5006", "row 4, column 1 (difference)")]
    public void Row_WrongFigure_NamesRowAndColumn(string difference, string backWider, string frontDart, string backDart, string frontDrop, string code, string place)
    {
        var error = Assert.Throws<ArgumentException>(() => Table.Row(difference, backWider, frontDart, backDart, frontDrop));

        Assert.StartsWith(code, error.Message);
        Assert.Contains(place, error.Message);
    }

    [Fact]
    public void Row_UnreadableFigure_NamesRowColumnAndCharacter()
    {
        var error = Assert.Throws<FormatException>(() => Table.Row("13", "1", "1,5", "1", "1"));

        Assert.StartsWith("PC5004", error.Message);
        Assert.Contains("row 4, column 3 (front_dart)", error.Message);
        Assert.Contains("at character 2", error.Message);
    }

    [Fact]
    public void Verbs_WithBadInput_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Table.Named(" "));
        Assert.Throws<ArgumentException>(() => Table.Named("two\nlines"));
        Assert.Throws<ArgumentOutOfRangeException>(() => Table.ReadBy((ShapingLookup)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => Table.Outside((ShapingOutside)9));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShapingTable.In(LengthUnit.LightYear));
        Assert.Throws<ArgumentNullException>(() => Table.Row("13", null!, "1", "1", "1"));
        Assert.Throws<ArgumentNullException>(() => Table.Read(null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ShapingRow(Length.Zero, Length.Zero, Length.FromInches(-1), Length.Zero, Length.Zero));
    }
}
