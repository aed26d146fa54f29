using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Output;
using UnitsNet;

namespace Pattern.Core.Tests.Output;

public class PaperSizeTests
{
    public static TheoryData<string, string, double, double> Table => ReadTable();

    [Theory]
    [MemberData(nameof(Table))]
    public void Find_EachSizeOfTheTable_MeasuresWhatItsStandardSays(string standard, string name, double widthMm, double heightMm)
    {
        PaperSize paper = PaperSize.Find(name);

        Assert.Equal(widthMm, paper.Width.Millimeters, 9);
        Assert.Equal(heightMm, paper.Height.Millimeters, 9);
        Assert.Equal(standard.StartsWith("architectural", StringComparison.Ordinal) ? "common practice" : standard, paper.Standard);
    }

    // ISO 216: the sides are as 1 to the root of 2 and A0 is a square metre; halving the longer side gives the next size, rounded down to millimetres.
    [Fact]
    public void SizesOfIso216_FollowItsRule()
    {
        PaperSize[] a = [PaperSize.A0, PaperSize.A1, PaperSize.A2, PaperSize.A3, PaperSize.A4, PaperSize.A5];
        PaperSize[] b = [PaperSize.B0, PaperSize.B1, PaperSize.B2, PaperSize.B3, PaperSize.B4];

        Assert.Equal(Math.Round(1000 * Math.Pow(2, -0.25)), a[0].Width.Millimeters);
        Assert.Equal(Math.Round(1000 * Math.Pow(2, 0.25)), a[0].Height.Millimeters);
        Assert.Equal(1000, b[0].Width.Millimeters);
        Assert.Equal(Math.Round(1000 * Math.Sqrt(2)), b[0].Height.Millimeters);
        foreach (PaperSize[] row in new[] { a, b })
        {
            for (int i = 1; i < row.Length; i++)
            {
                Assert.Equal(row[i - 1].Width.Millimeters, row[i].Height.Millimeters);
                Assert.Equal(Math.Floor(row[i - 1].Height.Millimeters / 2), row[i].Width.Millimeters);
            }
        }
    }

    // ANSI/ASME Y14.1: A is 8 1/2 in by 11 in, and each next size is twice the one before, side by side.
    [Fact]
    public void SizesOfAnsiY14_FollowItsRule()
    {
        PaperSize[] sizes = [PaperSize.Letter, PaperSize.Tabloid, PaperSize.AnsiC, PaperSize.AnsiD, PaperSize.AnsiE];

        Assert.Equal(8.5, sizes[0].Width.Inches, 12);
        Assert.Equal(11, sizes[0].Height.Inches, 12);
        for (int i = 1; i < sizes.Length; i++)
        {
            Assert.Equal(sizes[i - 1].Height.Inches, sizes[i].Width.Inches, 12);
            Assert.Equal(2 * sizes[i - 1].Width.Inches, sizes[i].Height.Inches, 12);
        }
    }

    [Fact]
    public void All_OfThem_StandUprightAndAreFoundByTheirNames()
    {
        foreach (PaperSize paper in PaperSize.All)
        {
            Assert.True(paper.Width < paper.Height);
            Assert.Same(paper, PaperSize.Find(paper.Name));
        }

        Assert.Equal(PaperSize.All.Count, PaperSize.All.Select(paper => paper.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Theory]
    [InlineData("letter", "Letter")]
    [InlineData("us-letter", "Letter")]
    [InlineData("ANSI A", "Letter")]
    [InlineData("ledger", "Tabloid")]
    [InlineData("a4", "A4")]
    [InlineData("arch_e1", "Arch E1")]
    [InlineData("LEGAL", "Legal")]
    public void Find_OtherSpellings_FindTheSize(string asked, string expected) => Assert.Equal(expected, PaperSize.Find(asked).Name);

    [Theory]
    [InlineData("")]
    [InlineData("A")]
    [InlineData("A44")]
    [InlineData("quarto")]
    public void Find_AnUnknownName_SaysWhatIsKnown(string asked)
    {
        Assert.False(PaperSize.TryFind(asked, out _));
        var error = Assert.Throws<ArgumentException>(() => PaperSize.Find(asked));
        Assert.StartsWith("PC7101: No paper is called \"" + asked + "\". Use one of A0, A1,", error.Message);
    }

    [Theory]
    [InlineData(0, 100)]
    [InlineData(100, -1)]
    [InlineData(9.9, 100)]
    [InlineData(100, 100_001)]
    public void Of_AnImpossibleSize_IsRefused(double widthMm, double heightMm)
        => Assert.Throws<ArgumentOutOfRangeException>(() => PaperSize.Of("card", Length.FromMillimeters(widthMm), Length.FromMillimeters(heightMm)));

    [Fact]
    public void Equals_ComparesNameAndMeasure()
    {
        PaperSize card = PaperSize.Of("card", Length.FromInches(5), Length.FromInches(8));

        Assert.Equal(card, PaperSize.Of("card", Length.FromMillimeters(127), Length.FromMillimeters(203.2)));
        Assert.NotEqual(card, card.Turned());
        Assert.Equal(card, card.Turned().Turned());
        Assert.Equal("card, 127 mm by 203.2 mm", card.ToString());
    }

    private static TheoryData<string, string, double, double> ReadTable()
    {
        var data = new TheoryData<string, string, double, double>();
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "Output", "paper-sizes.csv")).Skip(1))
        {
            string[] cells = line.Split(',');
            string standard = cells[0].Split(" (")[0];
            foreach (string name in Names(cells[1], standard))
            {
                data.Add(standard, name, double.Parse(cells[2], CultureInfo.InvariantCulture), double.Parse(cells[3], CultureInfo.InvariantCulture));
            }
        }

        return data;
    }

    // "B (Ledger/Tabloid)" of a standard that counts by letters has three names.
    private static IEnumerable<string> Names(string cell, string standard)
    {
        string[] parts = cell.Split([" (", ")", "/"], StringSplitOptions.RemoveEmptyEntries);
        return parts.Select((name, index) => index == 0 && standard.StartsWith("ANSI", StringComparison.Ordinal) ? "ANSI " + name : name);
    }
}
