using System;
using System.Globalization;
using System.Linq;
using UnitsNet.Units;
using Xunit.Abstractions;

namespace Pattern.Core.Layout.Tests;

/// <summary>The open test sets, within 15 % of the best known length: in the gate by few moves, in .ci/long by ten seconds each.</summary>
public class OpenSetTests(ITestOutputHelper output)
{
    // Many times fewer moves than ten seconds make.
    private const int FewMoves = 1500;

    [Theory]
    [InlineData("shirts")]
    [InlineData("trousers")]
    [InlineData("marques")]
    public void LayOn_OpenSet_IsValidAndWithin15PercentOfTheBestKnown(string name)
    {
        var set = OpenSet.Named(name);
        LayEffort effort = Environment.GetEnvironmentVariable("PATTERN_LONG_SECONDS") is { Length: > 0 } seconds
            ? new LayEffort { MostMoves = 1_000_000_000, TimeLimit = TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)) }
            : new LayEffort { MostMoves = FewMoves };

        ClothLay lay = set.Pieces.LayOn(set.Cloth, effort);

        double length = lay.Length.Centimeters;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {length:0.000}, {100 * ((length / set.BestKnown) - 1):0.0} % over the best known {set.BestKnown:0.000}, after {lay.Moves} moves"));
        Assert.Empty(LayCheck.Faults(set.Text, lay.ToCsv(LengthUnit.Centimeter), set.Width, length, set.Rotations));
        Assert.InRange(length, lay.LowerBound.Centimeters, 1.15 * set.BestKnown);
        Assert.Equal(set.TotalArea / (set.Width * length), lay.Efficiency.DecimalFractions, 9);
    }

    // What is published of each set, against what was read.
    [Theory]
    [InlineData("shirts")]
    [InlineData("trousers")]
    [InlineData("marques")]
    public void FromCsv_OpenSet_HasItsCountAndArea(string name)
    {
        var set = OpenSet.Named(name);

        Assert.Equal(set.Count, set.Pieces.Sum(piece => piece.Count));
        Assert.Equal(set.TotalArea, set.Pieces.Sum(piece => piece.Count * Math.Abs(piece.CutLine.SignedArea.SquareCentimeters)), 6);
    }

    [Fact]
    public void LayOn_SameSeedAndMoves_GivesTheSameBytes()
    {
        var set = OpenSet.Named("marques");
        string Lay(int seed) => set.Pieces.LayOn(set.Cloth, new LayEffort { MostMoves = 400, Seed = seed }).ToCsv(LengthUnit.Centimeter);

        Assert.Equal(Lay(1), Lay(1));
        Assert.NotEqual(Lay(1), Lay(2));
    }

    [Fact]
    public void Faults_OfABrokenLay_AreFound()
    {
        const string Pieces = "piece,quantity,vertex,x,y\na,2,1,0,0\na,2,2,2,0\na,2,3,2,2\na,2,4,0,2";
        string[] Judge(params string[] rows) => [.. LayCheck.Faults(Pieces, "piece,copy,x,y,rotation_deg\n" + string.Join("\n", rows), 2, 4, [0, 180])];

        Assert.Empty(Judge("a,1,0,0,0", "a,2,4,2,180"));
        Assert.Contains("overlap", Assert.Single(Judge("a,1,0,0,0", "a,2,1.9,0,0")), StringComparison.Ordinal);
        Assert.Contains("off the cloth", Assert.Single(Judge("a,1,0,0,0", "a,2,2.1,0,0")), StringComparison.Ordinal);
        Assert.Contains("turned 90", Assert.Single(Judge("a,1,0,0,0", "a,2,4,0,90")), StringComparison.Ordinal);
        Assert.Contains("copies 1", Assert.Single(Judge("a,1,0,0,0")), StringComparison.Ordinal);
    }
}
