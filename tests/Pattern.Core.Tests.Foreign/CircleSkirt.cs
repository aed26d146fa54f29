using System;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Foreign;

/// <summary>A full circle, written as a script: two quarters, front and back, each the fourth part of a ring. Radius of the waist: girth / (2 pi), the circumference of a circle.</summary>
internal static class CircleSkirt
{
    internal static readonly MethodSetting<Length> HemDepth = MethodSetting.OfLength("length", Tape.Inches("22"), Tape.Inches("5"), Tape.Inches("50")).Printed();

    internal static DraftingMethod Method { get; } = DraftingMethod.Of("full circle", "1", Draft, HemDepth);

    private static void Draft(BlockDraft draft)
    {
        WorkedLength girth = draft.Take(BodyMeasurement.WaistGirth);
        WorkedLength radius = girth.Times(1 / (2 * Math.PI)).Named("waist radius");
        WorkedLength length = draft.Take(HemDepth);
        Panel back = Quarter(draft.Sheet, PanelName.Back, "CB", Across.Right, Point2D.Origin, radius, length);
        Panel front = Quarter(draft.Sheet, PanelName.Front, "CF", Across.Left, Point2D.FromMillimeters(2500, 0), radius, length);
        draft.Add(back);
        draft.Add(front);
        draft.Remark("Half of the garment: a quarter of the circle for back and front.");
        draft.Check(list =>
        {
            foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
            {
                Panel panel = list.FindPanel(name);
                list.Length("waist", name.Text, panel.FindEdge(EdgeName.Waist).SewnLength, girth.Value / 4);
                list.Length("hem", name.Text, panel.FindEdge(EdgeName.Hem).SewnLength, (radius.Value + length.Value) * (Math.PI / 2));
            }
        });
        draft.Seams(SeamPlan.Of(Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam")));
    }

    private static Panel Quarter(DraftingSheet sheet, PanelName name, string centre, Across toward, Point2D middle, WorkedLength radius, WorkedLength length)
    {
        Landmark pivot = sheet.Mark(centre + " pivot", middle);
        Landmark waist = sheet.SquareDown(pivot, radius, centre + " waist");
        Landmark hem = sheet.SquareDown(waist, length, centre + " hem", centre + " line");
        Landmark side = sheet.SquareAcross(pivot, toward, radius, centre + " side waist");
        Landmark low = sheet.SquareAcross(side, toward, length, centre + " side hem", centre + " side line");
        Angle quarter = Angle.FromDegrees(toward == Across.Right ? 90 : -90);
        return Panel.Named(name)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromArc(CircularArc.Around(pivot.Position, waist.Position, quarter)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, CurvePath.FromLine(LineSegment.Between(side.Position, low.Position)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromArc(CircularArc.Around(pivot.Position, low.Position, -quarter)))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(LineSegment.Between(hem.Position, waist.Position)))
            .Make();
    }
}
