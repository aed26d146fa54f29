using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using UnitsNet;
using static Pattern.Core.Tests.Pieces.SamplePieces;

namespace Pattern.Core.Tests.Panels;

public class PanelBuilderGrainTests
{
    // An apron whose armhole bends in above the middle of its box: the usual grain must not leave the cloth.
    [Fact]
    public void Make_OutlineBendsIn_GrainLiesInside()
    {
        Panel apron = Panel.Named(PanelName.Of("apron"))
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromLine(LineSegment.Between(At(0, 850), At(130, 850))))
            .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.FromCubic(CubicBezier.FromPoints(At(130, 850), At(145, 700), At(200, 580), At(330, 560))))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.FromLine(LineSegment.Between(At(330, 560), At(400, 0))))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(At(400, 0), At(0, 0))))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(LineSegment.Between(At(0, 0), At(0, 850))))
            .Make();

        Assert.Equal(Containment.Inside, apron.SeamOutline().ContainmentOf(apron.Grainline.Start));
        Assert.Equal(Containment.Inside, apron.SeamOutline().ContainmentOf(apron.Grainline.End));
        Assert.True(PatternPiece.From(apron).WithAllowance(Length.FromMillimeters(10)).Report.Passed);
    }

    [Fact]
    public void Make_EdgeOrGrainWithoutLength_IsRefused()
    {
        PanelBuilder three = Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, CurvePath.FromLine(LineSegment.Between(At(0, 0), At(100, 0))))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.FromLine(LineSegment.Between(At(100, 0), At(100, 100))))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(At(100, 100), At(0, 0))));

        Refused(() => three.WithGrainline(LineSegment.Between(At(50, 10), At(50, 10))).Make());
        Refused(() => three.WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(LineSegment.Between(At(0, 0), At(0, 0)))).Make());
    }

    // Every segment crosses nearly every other one: the first crossing is enough to refuse it.
    [Fact]
    public void Make_AStarOfAThousandPoints_IsRefusedAtItsFirstCrossing()
    {
        const int points = 999;
        Point2D Tip(int i) => At(500 * Math.Cos(2 * Math.PI * 499 * i / points), 500 * Math.Sin(2 * Math.PI * 499 * i / points));
        CurvePath Run(int from, int to)
        {
            CurvePath path = CurvePath.From(Tip(from)).LineTo(Tip(from + 1));
            for (int i = from + 2; i <= to; i++)
            {
                path = path.LineTo(Tip(i % points));
            }

            return path;
        }

        var refusal = Assert.Throws<ConstructionException>(() => Panel.Named(PanelName.Back)
            .WithEdge(EdgeName.Waist, EdgeRole.Seam, Run(0, 500))
            .WithEdge(EdgeName.Hem, EdgeRole.Seam, Run(500, 999))
            .Make());

        Assert.Equal(DiagnosticCode.OutlineWouldCross, refusal.Code);
    }

    private static void Refused(Action make) => Assert.Equal(DiagnosticCode.LineWithoutLength, Assert.Throws<ConstructionException>(make).Code);
}
