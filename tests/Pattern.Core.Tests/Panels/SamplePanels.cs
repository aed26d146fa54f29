using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Panels;

/// <summary>Panels whose coordinates are known, in millimetres, y up.</summary>
internal static class SamplePanels
{
    internal static Length Mm(double value) => Length.FromMillimeters(value);

    internal static Point2D At(double x, double y) => Point2D.FromMillimeters(x, y);

    /// <summary>A plain rectangle: waist on top, the centre to the left, so the outline runs clockwise.</summary>
    internal static Panel Rectangle(double width, double height) => Panel.Named(PanelName.Of("sample"))
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, Line(At(0, height), At(width, height)))
        .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Line(At(width, height), At(width, 0)))
        .WithEdge(EdgeName.Hem, EdgeRole.Hem, Line(At(width, 0), At(0, 0)))
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, Line(At(0, 0), At(0, height)))
        .WithGrainline(LineSegment.Between(At(5, height * 0.2), At(5, height * 0.8)))
        .Make();

    /// <summary>A simple bodice-like front at full scale: neckline and armhole curved, all else straight. Bust point at (95, 190).</summary>
    internal static Panel Bodice() => Panel.Named(PanelName.Front)
        .WithEdge(EdgeName.Waist, EdgeRole.Opening, Line(At(0, 0), At(190, 12)))
        .WithEdge(EdgeName.Underarm, EdgeRole.Seam, Line(At(190, 12), At(245, 215)))
        .WithEdge(EdgeName.Armhole, EdgeRole.Seam, CurvePath.From(At(245, 215)).CurveTo(At(195, 225), At(178, 270), At(188, 370)))
        .WithEdge(EdgeName.Shoulder, EdgeRole.Seam, Line(At(188, 370), At(72, 412)))
        .WithEdge(EdgeName.Neckline, EdgeRole.Opening, CurvePath.From(At(72, 412)).CurveTo(At(66, 372), At(40, 338), At(0, 336)))
        .WithEdge(EdgeName.Centre, EdgeRole.Centre, Line(At(0, 336), At(0, 0)))
        .WithGrainline(LineSegment.Between(At(20, 60), At(20, 260)))
        .WithLandmark(LandmarkName.Of("bust point"), At(95, 190))
        .WithNotch(EdgeName.Underarm, Mm(60))
        .WithNotch(EdgeName.Armhole, Mm(90))
        .Make();

    /// <summary>The bodice with its bust dart at the waist, apex on the bust point.</summary>
    internal static Panel BodiceWithBustDart(double intake = 45)
    {
        // The dart stands square to the waist: its middle is the foot of the perpendicular from the bust point.
        Point2D foot = Line2D(At(0, 0), At(190, 12)).FootOf(At(95, 190));
        return Bodice().TakeInDart(EdgeName.Waist.At(At(0, 0).DistanceTo(foot)), Mm(intake), foot.DistanceTo(At(95, 190)));
    }

    private static Line Line2D(Point2D from, Point2D to) => Core.Geometry.Line.Through(from, to);

    private static CurvePath Line(Point2D from, Point2D to) => CurvePath.From(from).LineTo(to);
}
