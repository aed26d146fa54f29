using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Docs;

/// <summary>Holds docs/shaping-tables.md to its word.</summary>
public class ShapingTablesTests
{
    private static readonly DocPage Page = DocPage.Load("shaping-tables.md");

    [Fact]
    public void Code_OnThePage_IsCompiledHere() => Page.AssertCodeIsCompiledIn("Docs", "ShapingTablesTests.cs");

    [Fact]
    public void Example_BuiltAndRead_IsTheSameTableAndReading()
    {
        ShapingTable table = ShapingTable.In(LengthUnit.Inch).Named("wardrobe room")
            .Row(difference: "8", backWider: "1/2", frontDart: "1", backDart: "1 1/4", frontDrop: "1")
            .Row(difference: "10", backWider: "5/8", frontDart: "1 1/4", backDart: "1 1/2", frontDrop: "1 1/4")
            .ReadBy(ShapingLookup.Interpolated)
            .Outside(ShapingOutside.Clamp);
        ShapingReading reading = table.Read(ShapingQuery.For(waistGirth: Tape.Inches("31"), hipGirth: Tape.Inches("40")));
        string served =
            reading.Describe(TapeStep.Eighth);

        string text = Page.Blocks("text").Single();
        Assert.Contains("// " + served, string.Join("\n", Page.Blocks("csharp")));
        Assert.Equal(((TabulatedShaping)table).ToCsv(), string.Join("\n", text.Split('\n').Where(line => !line.StartsWith("##", StringComparison.Ordinal))));
        Assert.Equal(served, ShapingTable.FromCsv(text).Read(reading.Query).Describe(TapeStep.Eighth));
    }

    [Fact]
    public void Columns_InTheFirstTable_AreThoseOfTheFile()
        => Assert.Equal(ShapingTable.FromCsv(Page.Blocks("text").Single()).ToCsv().Split('\n')[4], string.Join(",", Page.Table("figure").Select(row => row[1])));

    [Fact]
    public void Lookups_InTheTable_AreReadByTheirWord() => Assert.All(Page.Table("rule"), row =>
    {
        string text = "# unit: in\n# lookup: " + row[1] + "\ndifference,back_wider,front_dart,back_dart,front_drop\n8,1/2,1,1 1/4,1";
        Assert.Equal(row[0].Split('`', ' ')[0], ShapingTable.FromCsv(text).Lookup.ToString());
    });
}
