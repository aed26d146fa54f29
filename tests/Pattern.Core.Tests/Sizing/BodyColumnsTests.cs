using System;
using System.IO;
using System.Linq;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Sizing;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Sizing;

public class BodyColumnsTests
{
    private static readonly BodyColumns Columns = BodyColumns.In(LengthUnit.Centimeter).With(BodyMeasurement.WaistGirth, "Waist").With(BodyMeasurement.HipGirth, "Hip").NamedBy("Who");

    private static BodyRow[] Read(string text) => [.. Columns.Read(new StringReader(text))];

    [Fact]
    public void Read_TakesTheColumnsByTheirNames_AndUnitsFromTheCells()
    {
        BodyRow[] rows = Read("\uFEFFnotes,Hip, who ,WAIST\r\n\r\n\"said \"\"hm\"\", twice\",100,Quince,29 1/2 in\r\n,40\",\"\",\"740 mm\"\r\n");

        Assert.Equal([1, 2], rows.Select(row => row.Number));
        Assert.Equal([3, 4], rows.Select(row => row.Line));
        Assert.Equal("Quince", rows[0].Body!.Name);
        Assert.Equal(29.5, rows[0].Body![BodyMeasurement.WaistGirth].Inches, 1e-9);
        Assert.Equal(100, rows[0].Body![BodyMeasurement.HipGirth].Centimeters, 1e-9);
        Assert.Null(rows[1].Body!.Name);
        Assert.Equal(74, rows[1].Body![BodyMeasurement.WaistGirth].Centimeters, 1e-9);
        Assert.Equal(40, rows[1].Body![BodyMeasurement.HipGirth].Inches, 1e-9);
    }

    // Each bad row between two good ones: it is told with its place, and the good ones are read.
    [Theory]
    [InlineData("a,,100", DiagnosticCode.LengthTextEmpty, "Waist")]
    [InlineData("a,wide,100", DiagnosticCode.LengthNumberExpected, "Waist")]
    [InlineData("a,NaN,100", DiagnosticCode.LengthNumberExpected, "Waist")]
    [InlineData("a,1e2,100", DiagnosticCode.LengthUnitUnknown, "Waist")]
    [InlineData("a,70,\"98,5\"", DiagnosticCode.LengthAmbiguous, "Hip")]
    [InlineData("a,70,98,5", DiagnosticCode.BodyCellsMiscounted, null)]
    [InlineData("a,70", DiagnosticCode.BodyCellsMiscounted, null)]
    [InlineData("a,0,100", DiagnosticCode.BodyMeasurementNotPositive, "Waist")]
    [InlineData("a,-70,100", DiagnosticCode.BodyMeasurementNotPositive, "Waist")]
    [InlineData("a,28,100", DiagnosticCode.BodyMeasurementUnitSwapped, "Waist")]
    [InlineData("a,70,9 in", DiagnosticCode.BodyMeasurementImplausible, "Hip")]
    [InlineData("a,70,3000", DiagnosticCode.BodyMeasurementImplausible, "Hip")]
    [InlineData("\"a,70,100", DiagnosticCode.BodyQuoteOpen, null)]
    public void Read_ABadRow_IsToldAndNeverStopsTheRest(string bad, DiagnosticCode code, string? column)
    {
        BodyRow[] rows = Read("Who,Waist,Hip\nTitania,66,92\n" + bad + "\nMoth,70,98\n");

        Assert.Equal([1, 2, 3], rows.Select(row => row.Number));
        Assert.Equal((null, code, column), (rows[1].Body, rows[1].Code, rows[1].Column));
        Assert.Contains("Row 2, line 3", rows[1].Problem);
        Assert.Equal(["Titania", "Moth"], new[] { rows[0], rows[2] }.Select(row => row.Body!.Name));
    }

    [Fact]
    public void Read_AQuotedCell_RunsOverLines()
    {
        BodyRow[] rows = Read("Who,Waist,Hip\n\"Peter\nQuince\",70,98\nMoth,66,92");

        Assert.Equal(["Peter\nQuince", "Moth"], rows.Select(row => row.Body!.Name));
        Assert.Equal([2, 4], rows.Select(row => row.Line));
    }

    [Theory]
    [InlineData("", "PC1203")]
    [InlineData("\n  \n", "PC1203")]
    [InlineData("Who,Waist\nTitania,66", "PC1201")]
    [InlineData("Who;Waist;Hip\nTitania;66;92", "PC1201")]
    [InlineData("Who,Waist,Waist,Hip\nTitania,66,66,92", "PC1202")]
    [InlineData("Who,waist,WAIST,Hip\nTitania,66,66,92", "PC1202")]
    public void Read_ATableThatCannotBeRead_IsRefusedAtOnce(string text, string code)
        => Assert.StartsWith(code, Assert.Throws<FormatException>(() => Columns.Read(new StringReader(text))).Message);

    // Case counts where it alone tells two columns apart.
    [Fact]
    public void Read_ColumnsThatDifferInCaseOnly_AreToldApart()
        => Assert.Equal(70, Assert.Single(Read("Who,Waist,WAIST,Hip\na,70,80,98")).Body![BodyMeasurement.WaistGirth].Centimeters, 1e-9);

    [Fact]
    public void Read_WithoutRows_HasNone() => Assert.Empty(Read("Who,Waist,Hip\n"));

    /// <summary>A million bodies are read one by one: no more is taken from the stream than what was asked for and one buffer.</summary>
    [Fact]
    public void Read_TakesFromTheStream_WhatIsAskedFor()
    {
        var endless = new Endless("Who,Waist,Hip\n", "a,70,98\n");

        BodyRow[] rows = [.. Columns.Read(endless).Take(10_000)];

        Assert.All(rows, row => Assert.NotNull(row.Body));
        Assert.True(endless.Given <= 10_000 * 8 + 2 * 4096, $"{endless.Given} characters");
    }

    /// <summary>A line without end takes bounded room, and what follows is read; quotes that stay open cost at most their own lines again.</summary>
    [Fact]
    public void Read_HostileLines_TakeBoundedWork()
    {
        string text = "Who,Waist,Hip\n" + new string('9', 300_000) + "\nMoth,70,98\n" + string.Concat(Enumerable.Repeat("\"open,1,2\n", 2_001)) + "Snug,70,98\n";
        var counted = new Endless(text, null);

        BodyRow[] rows = [.. Columns.Read(counted)];

        Assert.Equal(DiagnosticCode.BodyRowTooLong, rows[0].Code);
        Assert.Equal("Moth", rows[1].Body!.Name);
        Assert.Equal("Snug", rows[^1].Body!.Name);

        // Two lines each make one row, whose quote the second closes; the last stays open, and the row after it is read all the same.
        Assert.Equal(1 + 1 + 1_000 + 1 + 1, rows.Length);
        Assert.Equal(DiagnosticCode.BodyQuoteOpen, rows[^2].Code);
        Assert.Equal(text.Length, counted.Given);
    }

    [Property]
    public bool Read_AnyText_EndsWithRowsInOrder(string[] lines)
    {
        string text = "Who,Waist,Hip\n" + string.Join("\n", lines ?? []);
        BodyRow[] rows = Read(text);
        return rows.Select((row, i) => row.Number == i + 1 && (row.Body is null) == (row.Problem is not null)).All(right => right)
            && rows.Zip(rows.Skip(1)).All(pair => pair.First.Line < pair.Second.Line);
    }

    private sealed class Endless(string head, string? again) : TextReader
    {
        private readonly StringBuilder _waiting = new(head);

        internal int Given { get; private set; }

        public override int Read(char[] buffer, int index, int count)
        {
            while (again is not null && _waiting.Length < count)
            {
                _waiting.Append(again);
            }

            int given = Math.Min(count, _waiting.Length);
            _waiting.CopyTo(0, buffer, index, given);
            _waiting.Remove(0, given);
            Given += given;
            return given;
        }
    }
}
