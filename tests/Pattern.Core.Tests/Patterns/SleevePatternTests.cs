using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Output;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Patterns;

public class SleevePatternTests
{
    private static SleeveBlockBuilder Sleeve => SleeveBlock.For(Armholes.Handbook, Armholes.Worked);

    public static TheoryData<string> Names => ["straight", "dart", "eased", "two pieces", "short"];

    [Theory]
    [MemberData(nameof(Names))]
    public void From_AnySleeve_MakesPiecesThatPass(string name)
    {
        SleeveBlock sleeve = Draft(name);

        PieceSet pieces = SleevePattern.From(sleeve);

        pieces.Report.ThrowIfFailed();
        Assert.Equal(sleeve.Panels.Select(panel => panel.Name), pieces.Pieces.Select(piece => piece.Name));
        Assert.All(pieces.CutList, row => Assert.Equal(2, row.Count));
        Assert.NotEmpty(pieces.Pieces.ToDxf());
        Assert.NotEmpty(pieces.Draw().ToSvg());
    }

    // Turned up along the wrist, the allowance lies on the sleeve: the cut line there is the mirror image of the seams beside it.
    [Fact]
    public void From_ATaperingSleeve_MirrorsTheTurnUp()
    {
        PatternPiece piece = SleevePattern.From(Draft("straight")).Pieces[0];
        PieceEdge wrist = piece.Edges.Single(edge => edge.Name == EdgeName.Wrist);

        Assert.Equal(30, wrist.Allowance.Millimeters, 1e-9);
        Assert.True(piece.CutLine.Bounds.Bottom < wrist.SeamLine.Bounds.Bottom - Length.FromMillimeters(29.9));

        // 30 mm below the wrist, 210 wide and leaning 7.876 degrees on either side, it is as wide as 30 mm above it, allowances of 12 mm beside the seams included.
        double lean = System.Math.PI * 7.876452 / 180;
        double expected = 210 + (2 * 30 * System.Math.Tan(lean)) + (2 * 12 / System.Math.Cos(lean));
        double[] ends = [.. piece.CutLine.IntersectionsWith(Pattern.Core.Geometry.Line.Horizontal(Pattern.Core.Geometry.Point2D.At(Length.Zero, wrist.SeamLine.Bounds.Bottom - Length.FromMillimeters(29.99)))).Points.Select(hit => hit.Point.X.Millimeters)];
        Assert.Equal(expected, ends.Max() - ends.Min(), 0.05);
    }

    [Fact]
    public void From_ASkirt_IsRefused()
        => Assert.Equal(DiagnosticCode.NotThisGarment, Assert.Throws<ConstructionException>(() => SleevePattern.From(SkirtBlock.For(Bodies.Example).Draft())).Code);

    private static SleeveBlock Draft(string name) => name switch
    {
        "dart" => Sleeve.WithElbowDart().Draft(),
        "eased" => Sleeve.WithElbowEase().Draft(),
        "two pieces" => Sleeve.InTwoPieces().Draft(),
        "short" => Sleeve.WithLength(SleeveLength.Short).Draft(),
        _ => Sleeve.Draft(),
    };
}
