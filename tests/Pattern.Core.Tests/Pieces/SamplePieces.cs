using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;
using Pattern.Core.Tests.Blocks;
using UnitsNet;

namespace Pattern.Core.Tests.Pieces;

/// <summary>Panels and pieces whose lines can be worked out by hand.</summary>
internal static class SamplePieces
{
    internal static SkirtBlock Skirt { get; } = SkirtBlock.For(Bodies.Example).Draft();

    /// <summary>100 mm wide, 200 mm tall, the centre on the left, run clockwise as a skirt back is.</summary>
    internal static Panel Rectangle { get; } = Quad((0, 200), (100, 200), (100, 0), (0, 0));

    /// <summary>Whether it is the cut line that is refused, and for one of the reasons that there are.</summary>
    internal static bool IsOfACutLine(ConstructionException refusal) => refusal.Code
        is DiagnosticCode.SeamLineCrosses or DiagnosticCode.EdgeVanishes or DiagnosticCode.CutLineCrosses or DiagnosticCode.CutLineTooNear;

    internal static Length Mm(double mm) => Length.FromMillimeters(mm);

    internal static Point2D At(double x, double y) => Point2D.FromMillimeters(x, y);

    /// <summary>Four straight edges: waist from the first to the second corner, side, hem, centre.</summary>
    internal static Panel Quad((double X, double Y) a, (double X, double Y) b, (double X, double Y) c, (double X, double Y) d)
    {
        Point2D[] corners = [At(a.X, a.Y), At(b.X, b.Y), At(c.X, c.Y), At(d.X, d.Y)];
        EdgeName[] names = [EdgeName.Waist, EdgeName.SideSeam, EdgeName.Hem, EdgeName.Centre];
        EdgeRole[] roles = [EdgeRole.Opening, EdgeRole.Seam, EdgeRole.Hem, EdgeRole.Centre];
        PanelBuilder panel = Panel.Named(PanelName.Back);
        for (int i = 0; i < 4; i++)
        {
            panel = panel.WithEdge(names[i], roles[i], CurvePath.FromLine(LineSegment.Between(corners[i], corners[(i + 1) % 4])));
        }

        return panel.Make();
    }

    internal static PatternPiece WithTradeAllowances(Panel panel) => PatternPiece.From(panel)
        .WithAllowance(Length.FromInches(0.5))
        .WithAllowance(EdgeName.Hem, Length.FromInches(1.5))
        .WithCorner(EdgeName.Hem, EdgeName.SideSeam, Corner.Mirrored)
        .WithCorner(EdgeName.Hem, EdgeName.Centre, Corner.Mirrored);
}
