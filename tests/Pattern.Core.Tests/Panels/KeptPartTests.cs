using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;
using static Pattern.Core.Tests.Panels.SamplePanels;

namespace Pattern.Core.Tests.Panels;

/// <summary>Which part of a panel stays where it is while another turns, and that the grain keeps to it.</summary>
public class KeptPartTests
{
    private static readonly Ratio All = Ratio.FromPercent(100);

    /// <summary>Every verb that opens or closes a wedge, on a skirt's panel, at any place.</summary>
    private static Gen<(Panel Before, Func<Panel> After)> Verbs { get; } =
        from body in Gen.Elements(Bodies.Ansur.AsEnumerable())
        from asked in Bodies.Options
        from back in Gen.Elements(false, true)
        from verb in Gen.Choose(0, 5)
        from edge in Gen.Elements(EdgeName.SideSeam, EdgeName.Hem)
        from share in Bodies.Range(0.1, 0.9)
        let block = asked.Apply(SkirtBlock.For(body)).Draft()
        let panel = back ? block.Back : block.Front
        where panel.Darts.Any()
        let at = edge.At(Ratio.FromDecimalFractions(share))
        let dart = panel.Darts.First().Name
        select (panel, (Func<Panel>)(() => verb switch
        {
            0 => panel.TransferDart(dart, at),
            1 => panel.TransferPartOfDart(dart, at, Ratio.FromDecimalFractions(share)),
            2 => panel.TurnDartIntoFlare(dart, at, Ratio.FromDecimalFractions(share)),
            3 => panel.SplitDart(dart, 2, Mm(15)),
            4 => panel.OpenDart(EdgeName.Hem.Middle, EdgeName.Waist.At(Mm(20)), Mm(40)),
            _ => panel.SwingDart(dart, Angle.FromDegrees((20 * share) - 10)),
        }));

    // The angle of the dart turns the side, not the centre line that is laid on the fold.
    [Fact]
    public void TurnDartIntoFlare_OfAFront_LeavesTheCentreOnTheGrain()
    {
        Panel front = SkirtBlock.For(Bodies.Example).Draft().Front;

        Panel flared = front.TurnDartIntoFlare(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle, All);
        PatternPiece piece = PatternPiece.From(flared).WithAllowance(Mm(12)).CutOnFold(EdgeName.Centre);

        Assert.Equal(front.FindEdge(EdgeName.Centre).Start, flared.FindEdge(EdgeName.Centre).Start);
        Assert.Equal(0, AcrossDegrees(piece.Grainline.Direction, piece.FoldLine!.Value.Direction), 9);
        Assert.True(piece.Report.Passed, piece.Report.ToString());
    }

    // 3 degrees between them are what the report must find: the panel is drawn so.
    [Fact]
    public void Report_OfAPieceWhoseGrainLeansFromItsFold_SaysByHowMuch()
    {
        Point2D low = At(50, 50);
        Panel panel = Panel.Named(PanelName.Front)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.From(At(0, 300)).LineTo(At(200, 300)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.From(At(200, 300)).LineTo(At(200, 0)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.From(At(200, 0)).LineTo(At(0, 0)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.From(At(0, 0)).LineTo(At(0, 300)))
            .WithGrainline(LineSegment.Between(low, low + (Direction.FromAngle(Angle.FromDegrees(87)) * Mm(150))))
            .Make();
        PatternPiece piece = PatternPiece.From(panel).CutOnFold(EdgeName.Centre);

        foreach (PatternPiece one in new[] { piece, piece.Unfolded() })
        {
            Finding finding = Assert.Single(one.Report.Failures);
            Assert.Equal("grain along the fold", finding.Check);
            Assert.Contains("3.000", finding.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TransferDart_KeepingTheSide_TurnsTheCentre()
    {
        Panel front = SkirtBlock.For(Bodies.Example).Draft().Front;

        Panel moved = front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle, keep: EdgeName.SideSeam);

        Assert.Equal(front.FindEdge(EdgeName.SideSeam).Start, moved.FindEdge(EdgeName.SideSeam).Start);
        Assert.Equal(
            front.FindDart(EdgeName.Waist.Dart(1)).Angle.Degrees,
            AcrossDegrees(moved.FindEdge(EdgeName.Centre).Stretches[0].StartDirection, front.FindEdge(EdgeName.Centre).Stretches[0].StartDirection),
            9);
        Assert.Equal(0, AcrossDegrees(moved.Grainline.Direction, front.Grainline.Direction), 9);
    }

    [Fact]
    public void TransferDart_KeepingAnEdgeThatIsCut_IsRefusedWithThoseThatCanBeKept()
    {
        Panel front = SkirtBlock.For(Bodies.Example).Draft().Front;

        var refusal = Assert.Throws<ConstructionException>(() => front.TransferDart(EdgeName.Waist.Dart(1), EdgeName.Hem.Middle, keep: EdgeName.Hem));

        Assert.Equal(DiagnosticCode.KeptEdgeCut, refusal.Code);
        Assert.Contains("side, centre", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("hem", refusal.Landmark);
    }

    [Property(MaxTest = 300)]
    public Property AnyVerb_OnAnySkirt_LeavesTheCentreLineAndItsGrain() => Prop.ForAll(Verbs.ToArbitrary(), t =>
    {
        Panel after;
        try
        {
            after = t.After();
        }
        catch (ConstructionException refusal) when (Refusals.HasNoWay(refusal))
        {
            // What is refused is for other tests.
            return;
        }

        Assert.Equal(t.Before.FindEdge(EdgeName.Centre).Start, after.FindEdge(EdgeName.Centre).Start);
        Assert.Equal(t.Before.FindEdge(EdgeName.Centre).End, after.FindEdge(EdgeName.Centre).End);
        Assert.Equal(0, AcrossDegrees(after.Grainline.Direction, t.Before.Grainline.Direction), 9);
        Assert.True(t.Before.SeamOutline().ContainmentOf(t.Before.Grainline.Start) != Containment.Inside
            || after.SeamOutline().ContainmentOf(after.Grainline.Start) == Containment.Inside);
    });

    // Degrees between two lines, whichever way they run.
    private static double AcrossDegrees(Direction one, Direction other)
    {
        double degrees = Math.Abs(one.AngleTo(other).Degrees);
        return Math.Min(degrees, 180 - degrees);
    }
}
