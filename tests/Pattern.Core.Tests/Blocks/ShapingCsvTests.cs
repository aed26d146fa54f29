using System;
using System.Linq;
using Pattern.Core.Blocks;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Blocks;

public class ShapingCsvTests
{
    // An invented table of the wardrobe room's.
    private const string Plain = """
        # name: Wardrobe Room
        # unit: in
        # lookup: interpolated
        # outside: clamp
        difference,back_wider,front_dart,back_dart,front_drop
        6,3/8,3/4,1,3/4
        8,1/2,1,1 1/4,1
        """;

    private const string Header = "difference,back_wider,front_dart,back_dart,front_drop\n";

    [Fact]
    public void FromCsv_ReadsDirectivesAndFractions()
    {
        TabulatedShaping table = ShapingTable.FromCsv(Plain);

        Assert.Equal("Wardrobe Room", table.Name);
        Assert.Equal(LengthUnit.Inch, table.Unit);
        Assert.Equal(ShapingLookup.Interpolated, table.Lookup);
        Assert.Equal(ShapingOutside.Clamp, table.OutsideRule);
        Assert.Equal([6.0, 8.0], table.Rows.Select(row => Math.Round(row.Difference.Inches, 9)));
        Assert.Equal(1.25, table.Rows[1].BackDart.Inches, 12);
    }

    [Fact]
    public void FromCsv_OnlyTheUnit_TakesTheDocumentedDefaults()
    {
        TabulatedShaping table = ShapingTable.FromCsv("# unit: cm\n" + Header + "20,1.2,2.5,3,2.5");

        Assert.Equal("shaping table", table.Name);
        Assert.Equal(ShapingLookup.Nearest, table.Lookup);
        Assert.Equal(ShapingOutside.Refuse, table.OutsideRule);
        Assert.Equal(200, table.Rows[0].Difference.Millimeters, 12);
    }

    [Fact]
    public void FromCsv_Options_HoldWhereTheTextDoesNotSay()
    {
        var options = new ShapingCsvOptions { Unit = LengthUnit.Centimeter, Lookup = ShapingLookup.AtOrAbove, Outside = ShapingOutside.Clamp, Name = "given" };

        TabulatedShaping silent = ShapingTable.FromCsv(Header + "20,1.2,2.5,3,2.5", options);
        TabulatedShaping outspoken = ShapingTable.FromCsv(Plain, options);

        Assert.Equal((LengthUnit.Centimeter, ShapingLookup.AtOrAbove, ShapingOutside.Clamp, "given"), (silent.Unit, silent.Lookup, silent.OutsideRule, silent.Name));
        Assert.Equal((LengthUnit.Inch, ShapingLookup.Interpolated, "Wardrobe Room"), (outspoken.Unit, outspoken.Lookup, outspoken.Name));
    }

    [Theory]
    [InlineData("\uFEFF# unit: in\r\n\r\n# a remark\r\n## see: the folder\r\ndifference,back_wider,front_dart,back_dart,front_drop\r\n 8 , 1/2 , 1 , 1 1/4 , 1 \r\n")]
    [InlineData("#UNIT: IN\rFront_Drop,back_dart,front_dart,back_wider,Difference\r1,1 1/4,1,1/2,8")]
    [InlineData("# unit: in\ndifference,back_wider,front_dart,back_dart,front_drop\n8\",1/2 in,\"1\",\"1 1/4\"\"\",1\u2033")]
    [InlineData("# unit: cm\ndifference,back_wider,front_dart,back_dart,front_drop\n8 in,12.7 mm,2.54,3.175,1\"")]
    public void FromCsv_OtherWaysToWriteIt_AreTheSameTable(string text)
    {
        ShapingRow row = ShapingTable.FromCsv(text).Rows.Single();

        Assert.Equal(8, row.Difference.Inches, 9);
        Assert.Equal(0.5, row.BackWider.Inches, 9);
        Assert.Equal(1, row.FrontDart.Inches, 9);
        Assert.Equal(1.25, row.BackDart.Inches, 9);
        Assert.Equal(1, row.FrontDrop.Inches, 9);
    }

    [Theory]
    [InlineData("# unit: in\n" + Header + "8,1/2,1,1 1/4,1\n6,1/2,1,1 1/4,1", "PC5007", "line 4, column 1 (difference)")]
    [InlineData("# unit: in\n" + Header + "8,1/2,1,1 1/4,1\n\n8.0,1/2,1,1 1/4,1", "PC5008", "line 5, column 1 (difference)")]
    [InlineData("# unit: in\n" + Header + "8,wide,1,1 1/4,1", "PC5004", "line 3, column 2 (back_wider)")]
    [InlineData("# unit: in\n" + Header + "8,,1,1 1/4,1", "PC5004", "line 3, column 2 (back_wider)")]
    [InlineData("# unit: in\n" + Header + "8,1/2,1,1/0,1", "PC5004", "line 3, column 4 (back_dart)")]
    [InlineData("# unit: in\n" + Header + "8,1/2,-1,1 1/4,1", "PC5005", "line 3, column 3 (front_dart)")]
    [InlineData("# unit: in\n" + Header + "800,1/2,1,1 1/4,1", "PC5006", "line 3, column 1 (difference)")]
    [InlineData("# unit: in\nback_wider,difference,front_dart,back_dart,front_drop\n1/2,8,1,1 1/4,1\n1/2,7,1,1 1/4,1", "PC5007", "line 4, column 2 (difference)")]
    [InlineData("# unit: in\n" + Header + "8,1/2,1,1 1/4", "PC5108", "4 figures on line 3")]
    [InlineData("# unit: in\n" + Header + "8,1/2,1,1 1/4,1,", "PC5108", "6 figures on line 3")]
    [InlineData("# unit: in\ndifference,back_wider,front_dart,back_dart\n8,1/2,1,1 1/4", "PC5107", "line 2: front_drop")]
    [InlineData("# unit: in\ndifference,back_wider,front_dart,back_dart,drop\n8,1/2,1,1 1/4,1", "PC5105", "line 2, column 5 (drop)")]
    [InlineData("# unit: in\ndifference;back_wider;front_dart;back_dart;front_drop\n8;1/2;1;1 1/4;1", "PC5105", "line 2, column 1")]
    [InlineData("# unit: in\ndifference,back_wider,front_dart,back_dart,front_drop,difference\n", "PC5106", "line 2, column 6 (difference)")]
    [InlineData("# unit: in\n8,1/2,1,1 1/4,1", "PC5105", "line 2, column 1 (8)")]
    [InlineData("# unit: in\n" + Header, "PC5002", "no rows")]
    [InlineData("", "PC5002", "no rows")]
    [InlineData("# colour: blue\n", "PC5101", "line 1: colour")]
    [InlineData("# unit: furlong\n", "PC5102", "line 1: unit is \"furlong\"")]
    [InlineData("\n# lookup: closest\n", "PC5102", "line 2: lookup is \"closest\"")]
    [InlineData("# outside: ignore\n", "PC5102", "line 1: outside is \"ignore\"")]
    [InlineData("# name:\n", "PC5102", "line 1: name")]
    [InlineData("# unit: in\n# unit: cm\n", "PC5103", "line 2: unit")]
    [InlineData(Header + "# unit: in\n8,1/2,1,1 1/4,1", "PC5104", "line 2: unit")]
    [InlineData(Header + "8,1/2,1,1 1/4,1", "PC5109", "line 2")]
    [InlineData("# unit: in\n" + Header + "8,\"1/2,1,1 1/4,1", "PC5110", "line 3, column 2")]
    public void FromCsv_WrongText_NamesCodeLineAndColumn(string text, string code, string place)
    {
        var error = Assert.Throws<FormatException>(() => ShapingTable.FromCsv(text));

        Assert.StartsWith(code, error.Message);
        Assert.Contains(place, error.Message);
    }

    [Fact]
    public void FromCsv_BadCall_IsTheCallersMistake()
    {
        Assert.Throws<ArgumentNullException>(() => ShapingTable.FromCsv(null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShapingTable.FromCsv(Plain, new ShapingCsvOptions { Unit = LengthUnit.Mile }));
    }

    [Fact]
    public void ToCsv_WritesTheTextThatItWasReadFrom()
        => Assert.Equal(Plain.Replace("\r", string.Empty) + "\n", ShapingTable.FromCsv(Plain).ToCsv());

    [Property]
    public bool ToCsv_ReadBack_IsTheSameTableToTheLastBit(ushort difference, short wider, ushort dart, byte unitChoice)
    {
        LengthUnit unit = new[] { LengthUnit.Inch, LengthUnit.Foot, LengthUnit.Yard, LengthUnit.Millimeter, LengthUnit.Centimeter, LengthUnit.Meter }[unitChoice % 6];
        TabulatedShaping table = ShapingTable.In(unit).Named("any: name, \"quoted\"")
            .Row(Length.FromMillimeters(-1 / 3.0), Length.FromMillimeters(wider / 97.0), Length.FromInches(dart / 6400.0), Length.Zero, Length.FromMillimeters(1e-7))
            .Row(Length.FromMillimeters(1 + difference / 77.0), Length.FromInches(1 / 3.0), Length.FromMillimeters(dart / 333.0), Length.FromInches(0.25), Length.Zero);

        TabulatedShaping back = ShapingTable.FromCsv(table.ToCsv());

        return back.Name == table.Name && back.Unit == table.Unit
            && back.Rows.Zip(table.Rows, (one, other) => one.ToMm().SequenceEqual(other.ToMm())).All(same => same);
    }

    [Fact]
    public void FromCsv_MoreThanAnyTable_IsRefusedBeforeItCostsAnything()
    {
        string rows = string.Concat(Enumerable.Range(0, 1001).Select(i => FormattableString.Invariant($"{i / 100.0},0,1,1,0\n")));

        Assert.Contains("PC5111", Assert.Throws<FormatException>(() => ShapingTable.FromCsv("# unit: cm\n" + Header + rows)).Message);
        Assert.Contains("PC5111", Assert.Throws<FormatException>(() => ShapingTable.FromCsv(new string('#', (1024 * 1024) + 1))).Message);
        Assert.Contains("PC5102", Assert.Throws<FormatException>(() => ShapingTable.FromCsv("# name: " + new string('n', 101) + "\n# unit: cm\n" + Header + "20,1,2,3,2")).Message);
        Assert.Contains("PC5111", Assert.Throws<ArgumentException>(() => ShapingTable.FromCsv(Plain).Named(new string('n', 101))).Message);
        Assert.Equal(1000, ShapingTable.FromCsv("# unit: cm\n" + Header + rows.Substring(0, rows.TrimEnd('\n').LastIndexOf('\n'))).Rows.Count);
    }

    // What stands in a text that cannot be read may be as long as its author likes; the message that says so is read by people.
    [Theory]
    [InlineData("# unit: {0}\n")]
    [InlineData("# {0}: in\n")]
    [InlineData("# lookup: {0}\n")]
    [InlineData("difference,{0}\n")]
    [InlineData("# unit: in\n" + Header + "{0},1,1,1,1\n")]
    [InlineData("# unit: in\n" + Header + "1 {0},1,1,1,1\n")]
    public void FromCsv_LongText_IsNotRepeatedWhole(string text)
    {
        string message = Assert.Throws<FormatException>(() => ShapingTable.FromCsv(text.Replace("{0}", new string('x', 100_000), StringComparison.Ordinal))).Message;

        Assert.InRange(message.Count(c => c == 'x'), 1, 200);
    }
}
