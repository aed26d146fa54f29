using System;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;

namespace Pattern.Core.Tests.Docs;

/// <summary>The handouts of a class, run as the teacher runs them.</summary>
public class ClassHandoutsTests
{
    private static readonly Lazy<SampleProgram> Sample = new(() => SampleProgram.Of("docs/samples/class-handouts.cs"));

    private const string Header = "name,waist,hip,length,waist to hip\n";

    private static (int ExitCode, string Printed, string Errors) Run(ScratchFolder folder, string cast, params string[] more)
        => Sample.Value.Run(["--cast", folder.Write("cast.csv", cast), "--out", Path.Combine(folder.Path, "out"), .. more]);

    // One good row and every bad one: the good one is served, each bad one stands in problems.csv with its row and column and on the summary page.
    [Fact]
    public void EveryBadRow_IsListedAndNeverStopsTheRest()
    {
        using var folder = new ScratchFolder();
        (string Row, string Column, string Why)[] bad =
        [
            ("Empty,,40,24,8", "waist", "is empty"),
            ("Word,wide,40,24,8", "waist", "no length"),
            ("Comma,\"31,5\",40,24,8", "waist", "two ways"),
            ("Far,320,40,24,8", "waist", "human bodies measure"),
            ("Negative,-30,40,24,8", "waist", "PC1205"),
            ("Long,30,40,900,8", "length", "PC1205"),
            ("High,30,40,24,200", "waist to hip", "PC1205"),
            ("Few,30,40", string.Empty, "3 cells"),
        ];

        (int exitCode, string printed, string errors) = Run(folder, Header + string.Concat(bad.Select(row => row.Row + "\n")) + "Ann,75 cm,100 cm,24,20.5 cm\n");

        Assert.Equal((0, string.Empty), (exitCode, errors));
        string[] problems = folder.Read("out", "problems.csv").TrimEnd('\n').Split('\n');
        Assert.Equal("row,column,reason", problems[0]);
        Assert.Equal(bad.Length, problems.Length - 1);
        string page = folder.Read("out", "summary.html");
        for (int i = 0; i < bad.Length; i++)
        {
            Assert.StartsWith($"{i + 1},{bad[i].Column},", problems[i + 1], StringComparison.Ordinal);
            Assert.Contains(bad[i].Why, problems[i + 1], StringComparison.Ordinal);
            Assert.Contains($"<h3>Row {i + 1}: ", page, StringComparison.Ordinal);
        }

        Assert.Equal(bad.Length, Regex.Count(page, "<strong>Not served.</strong>"));
        Assert.Contains("9 of 9: Ann, drafted", printed, StringComparison.Ordinal);
        Assert.Contains("1 of 9 served; 9 bodies: 1 passed, 0 failed, 0 refused, 8 bad rows", printed, StringComparison.Ordinal);
        Assert.Equal(["exercise.html", "skirt-a4.pdf", "skirt-pieces.svg", "skirt.svg", "step-sheet.html"], Files(folder, "009-Ann").Intersect(["exercise.html", "skirt-a4.pdf", "skirt-pieces.svg", "skirt.svg", "step-sheet.html"]));
        Assert.Equal("%PDF-", folder.Read("out", "009-Ann", "skirt-a4.pdf")[..5]);
    }

    [Theory]
    [InlineData(Header + "Empty,,40,24,8\n")]
    [InlineData(Header)]
    public void WhereNobodyIsServed_TheExitCodeIsOne(string cast)
    {
        using var folder = new ScratchFolder();

        (int exitCode, string printed, _) = Run(folder, cast);

        Assert.Equal(1, exitCode);
        Assert.Contains("0 of ", printed, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder.Path, "out", "summary.html")));
    }

    // A table that says no unit is in that of the command, as the cells of the cast are. A difference of 10 in: front dart 1 1/4, which is 3.175 cm.
    [Theory]
    [InlineData("", "in", "30,40,24")]
    [InlineData("# unit: in\n", "cm", "76.2,101.6,60")]
    [InlineData("# unit: in\n", "in", "30,40,24")]
    public void ATable_ShapesTheSkirts(string unit, string ofCommand, string person)
    {
        using var folder = new ScratchFolder();
        string table = folder.Write("table.csv", unit + "difference,back_wider,front_dart,back_dart,front_drop\n8,1/2,1,1 1/4,1\n10,5/8,1 1/4,1 1/2,1 1/8\n");

        (int exitCode, _, string errors) = Run(folder, "name,waist,hip,length\nAnn," + person + "\n", "--table", table, "--unit", ofCommand);

        Assert.Equal((0, string.Empty), (exitCode, errors));
        string sheet = folder.Read("out", "001-Ann", "step-sheet.html").Replace('\u00A0', ' ');
        Assert.Contains("row " + (ofCommand == "in" ? "10" : "25.4"), sheet, StringComparison.Ordinal);
        Assert.Contains(ofCommand == "in" ? "1 1/8" : "2.9", sheet, StringComparison.Ordinal);
    }

    // A table that has no row for a body: refused and told, the other is served.
    [Fact]
    public void ABodyOutsideTheTable_IsRefusedAndTold()
    {
        using var folder = new ScratchFolder();
        string table = folder.Write("table.csv", "difference,back_wider,front_dart,back_dart,front_drop\n8,1/2,1,1 1/4,1\n10,5/8,1 1/4,1 1/2,1 1/8\n");

        (int exitCode, string printed, _) = Run(folder, "name,waist,hip,length\nAnn,30,40,24\nBo,30,45,24\n", "--table", table);

        Assert.Equal(0, exitCode);
        Assert.Contains("1 of 2 served; 2 bodies: 1 passed, 0 failed, 1 refused", printed, StringComparison.Ordinal);
        Assert.StartsWith("2,,", folder.Read("out", "problems.csv").Split('\n')[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--unit", "furlong")]
    [InlineData("--tabel", "x")]
    [InlineData("--table", "nowhere.csv")]
    [InlineData("--table")]
    public void AWrongCommand_SaysWhyAndWritesNothing(params string[] more)
    {
        using var folder = new ScratchFolder();

        (int exitCode, _, string errors) = Run(folder, Header + "Ann,30,40,24,8\n", more);

        Assert.Equal(1, exitCode);
        Assert.NotEmpty(errors);
        Assert.False(Directory.Exists(Path.Combine(folder.Path, "out")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("name,waist,hip\nAnn,30,40\n")]
    [InlineData("name,waist,waist,hip,length\nAnn,30,30,40,24\n")]
    public void ACastListWithoutItsColumns_IsRefused(string cast)
    {
        using var folder = new ScratchFolder();

        (int exitCode, _, string errors) = Run(folder, cast);

        Assert.Equal(1, exitCode);
        Assert.StartsWith("PC12", errors, StringComparison.Ordinal);
    }

    // Names that no folder can have, two that are one name, one that is none: each its own folder, inside the one that was asked for.
    [Fact]
    public void NamesOfAnyKind_GetAFolderEach()
    {
        using var folder = new ScratchFolder();

        (int exitCode, _, _) = Run(folder, "name,waist,hip,length\n../..,30,40,24\nAnn,30,40,24\nann,30,40,24\n,30,40,24\n");

        Assert.Equal(0, exitCode);
        Assert.Equal(["001", "002-Ann", "003-ann", "004-row-4"], Directory.GetDirectories(Path.Combine(folder.Path, "out")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    private static string[] Files(ScratchFolder folder, string person) => [.. Directory.GetFiles(Path.Combine(folder.Path, "out", person)).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
