using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using Pattern.Core.Patterns;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Patterns;

public class BodicePatternTests
{
    private static readonly BodiceBlock Block = BodiceBlock.For(BodiceBodies.Handbook).Draft();

    [Fact]
    public void From_ABodice_HasFrontOnTheFoldTwoBacksAndFacings()
    {
        PieceSet pieces = BodicePattern.From(Block);
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
        Assert.Equal(
            ["front", "back", "front neckline facing", "back neckline facing", "front armhole facing", "back armhole facing"],
            pieces.Pieces.Select(piece => piece.Name.Text));
        Assert.NotNull(pieces.Find(PanelName.Front).FoldLine);
        Assert.NotNull(pieces.Find(PanelName.Of("front neckline facing")).FoldLine);
        Assert.Null(pieces.Find(PanelName.Back).FoldLine);
        Assert.Equal([1, 2, 1, 2, 2, 2], pieces.Pieces.Select(piece => piece.Cuts.Single(cut => cut.Cloth == ClothName.Main).Count));
        Assert.Equal(25, pieces.Find(PanelName.Back).FindEdge(EdgeName.Centre).Allowance.Millimeters, 6);
    }

    // A facing is sewn to its neckline along the whole seam line, so it is as long.
    [Fact]
    public void From_ABodice_FacingsAreAsLongAsTheirEdges()
    {
        PieceSet pieces = BodicePattern.From(Block);
        foreach (Panel panel in Block.Panels)
        {
            foreach (EdgeName edge in new[] { EdgeName.Neckline, EdgeName.Armhole })
            {
                Panel facing = pieces.Find(PanelName.Of($"{panel.Name} {edge} facing")).Panel;
                PanelEdge sewn = facing.FindEdge(edge);
                Assert.Equal(BodiceSewn.ClosedMm(panel, edge), sewn.SewnLength.Millimeters, 2);
            }
        }
    }

    [Fact]
    public void From_ForASewnInSleeve_LeavesTheArmholeUnfaced()
    {
        PieceSet pieces = BodicePattern.From(Block, new BodicePatternOptions { Armhole = ArmholeFinish.SewnIn, SeamAllowance = Length.FromCentimeters(1.5) });
        Assert.DoesNotContain(pieces.Pieces, piece => piece.Name.Text.Contains("armhole", System.StringComparison.Ordinal));
        Assert.Equal(15, pieces.Find(PanelName.Front).FindEdge(EdgeName.SideSeam).Allowance.Millimeters, 6);
    }

    [Fact]
    public void From_WithALabel_LeavesRoomForItOnEveryPiece()
    {
        PieceLabel label = PieceLabel.For("Bodice").ForWhom("Viola").WithMeasurements(Block.Body, Pattern.Core.Measurement.TapeStep.Millimeter);
        PieceSet pieces = BodicePattern.From(Block, new BodicePatternOptions { Label = label });
        Assert.True(pieces.Report.Passed, pieces.Report.ToString());
    }

    [Fact]
    public void From_ASkirt_IsRefused()
        => Assert.Equal(DiagnosticCode.NotThisGarment, Assert.Throws<ConstructionException>(() => BodicePattern.From(SkirtBlock.For(Bodies.Example).Draft())).Code);
}
