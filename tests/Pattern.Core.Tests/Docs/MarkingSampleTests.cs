using System;
using System.IO;

namespace Pattern.Core.Tests.Docs;

public class MarkingSampleTests
{
    private static readonly Lazy<SampleProgram> Sample = new(() => SampleProgram.Of("docs/samples/marking.cs"));

    // Half of hip 100 cm and half of ease 2.5 cm is 51.25; a quarter of waist 74 is 18.5: common practice, no source.
    [Fact]
    public void ATableOfOnesOwn_IsMarked()
    {
        using var folder = new ScratchFolder();
        string figures = folder.Write("drawn.csv", "figure,value\nbox width,51.3\nback waist,19\nnothing such,1\n");

        (int exitCode, string printed, string errors) = Sample.Value.Run("--waist", "74", "--hip", "100", "--figures", figures, "--tape", "1mm", "--out", Path.Combine(folder.Path, "out"));

        Assert.Equal((0, string.Empty), (exitCode, errors));
        Assert.Contains("1 right, 0 within rounding, 1 wrong, 1 not marked", printed, StringComparison.Ordinal);
        Assert.Contains("expected 18.5 cm", printed, StringComparison.Ordinal);
        Assert.Contains("Row 3, line 4, column 1 (figure)", folder.Read("out", "marking.csv"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--figures", "nowhere.csv")]
    [InlineData("--waist", "30 in", "--hip", "40 in", "--figures", "nowhere.csv")]
    [InlineData("--tape", "1/7")]
    [InlineData("--hip")]
    public void AWrongCommand_SaysWhy(params string[] arguments)
    {
        (int exitCode, _, string errors) = Sample.Value.Run(arguments);

        Assert.Equal(1, exitCode);
        Assert.NotEmpty(errors);
    }
}
