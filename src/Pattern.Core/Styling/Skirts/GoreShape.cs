using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>Gores put together of their halves, and what all of them promise.</summary>
internal static class GoreShape
{
    private static readonly Transform2D OverMiddle = Transform2D.Mirror(Line.Vertical(Point2D.Origin));

    /// <summary>A gore whose middle lies upright over the origin; a notch at the hip in either seam.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="right">The half to the right of the middle, and the name of its seam.</param>
    /// <param name="left">The half to the left of it.</param>
    /// <param name="cuts">How many cuts make the notch of the right seam, and of the left one.</param>
    internal static Panel Whole(PanelName name, (Panel Half, EdgeName Seam) right, (Panel Half, EdgeName Seam) left, (int Right, int Left) cuts)
    {
        CurvePath Mirrored(EdgeName edge) => left.Half.FindEdge(edge).StretchesRaw[0].Transformed(OverMiddle).Reversed();
        CurvePath rightSeam = right.Half.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath leftSeam = Mirrored(EdgeName.SideSeam);
        return Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, Mirrored(EdgeName.Waist).Then(right.Half.FindEdge(EdgeName.Waist).StretchesRaw[0]))
            .WithEdge(right.Seam, EdgeRole.Seam, rightSeam)
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, right.Half.FindEdge(EdgeName.Hem).StretchesRaw[0].Then(Mirrored(EdgeName.Hem)))
            .WithEdge(left.Seam, EdgeRole.Seam, leftSeam)
            .WithNotch(right.Seam, SkirtStock.Mm(rightSeam.SegmentsRaw[0].LengthMm()), cuts.Right)
            .WithNotch(left.Seam, SkirtStock.Mm(leftSeam.LengthMm - LastOf(leftSeam)), cuts.Left)
            .WithGrainline(right.Half.Grainline)
            .Make();

        static double LastOf(CurvePath seam) => seam.SegmentsRaw[seam.SegmentsRaw.Length - 1].LengthMm();
    }

    /// <summary>Half of a gore that lies on the fold.</summary>
    internal static Panel OnFold(PanelName name, Panel half, EdgeName seam, int cuts)
    {
        CurvePath side = half.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath waist = half.FindEdge(EdgeName.Waist).StretchesRaw[0];
        double across = Math.Min(waist.End.XMm, side.SegmentsRaw[0].End.XMm) / 2;
        LineSegment middle = half.Grainline;
        return Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, waist)
            .WithEdge(seam, EdgeRole.Seam, side)
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, half.FindEdge(EdgeName.Hem).StretchesRaw[0])
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, half.FindEdge(EdgeName.Centre).StretchesRaw[0])
            .WithNotch(seam, SkirtStock.Mm(side.SegmentsRaw[0].LengthMm()), cuts)
            .WithGrainline(new LineSegment(new Point2D(across, middle.Start.YMm), new Point2D(across, middle.End.YMm)))
            .Make();
    }

    /// <summary>How wide a gore, or the half of one on the fold, is at the hip: between its notches, or from its notch square to its centre.</summary>
    internal static double HipMm(Panel gore) => gore.Notches.Count switch
    {
        2 => gore.Notches[0].Position.DistanceMm(gore.Notches[1].Position),
        1 => Math.Abs(gore.Notches[0].Position.XMm - gore.FindEdge(EdgeName.Centre).Start.XMm),
        _ => double.NaN,
    };

    /// <summary>The waist of a gore is square to its seams, and one smooth line.</summary>
    internal static void CheckCorners(CheckList list, Panel gore)
    {
        int waist = gore.IndexOf(EdgeName.Waist);
        CurvePath line = gore.EdgesRaw[waist].StretchesRaw[0];
        PanelEdge after = gore.EdgesRaw[(waist + 1) % gore.EdgesRaw.Length];
        PanelEdge before = gore.EdgesRaw[(waist + gore.EdgesRaw.Length - 1) % gore.EdgesRaw.Length];
        list.Angle($"waist square to {after.Name} seam", gore.Name.Text, CheckList.CornerRad(line, after.StretchesRaw[0]), SkirtStock.SquareRad);
        list.Angle($"waist square to {before.Name} seam", gore.Name.Text, CheckList.CornerRad(before.StretchesRaw[0], line), SkirtStock.SquareRad);
        list.Angle("waist without a corner", gore.Name.Text, SkirtPromises.SharpestCornerRad(line), 0);
    }
}
