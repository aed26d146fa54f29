using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Tests.Foreign;

/// <summary>A half apron, written as a class: a rectangle over the front of the body, its lower corner rounded off, half of it drawn.</summary>
internal sealed class HalfApron() : DraftingMethod("half apron", "1", Depth, Cover, Ties)
{
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("depth", Tape.Inches("20"), Tape.Inches("8"), Tape.Inches("40")).Printed();
    internal static readonly MethodSetting<Length> Cover = MethodSetting.OfLength("beyond the middle", Tape.Inches("2"), Length.Zero, Tape.Inches("6"));
    internal static readonly MethodSetting<string> Ties = MethodSetting.OfChoice("ties", "long", "long", "short");

    internal static readonly PanelName Apron = PanelName.Of("apron");

    protected override void Draft(BlockDraft draft)
    {
        DraftingSheet sheet = draft.Sheet;
        WorkedLength width = (draft.Take(BodyMeasurement.WaistGirth).Quarter() + draft.Take(Cover)).Named("half width");
        WorkedLength depth = draft.Take(Depth);
        WorkedLength corner = WorkedLength.Given("corner", Tape.Inches("3"));

        Landmark top = sheet.Mark("centre top", Point2D.Origin);
        Landmark bottom = sheet.SquareDown(top, depth, "centre bottom", LineName.Of("centre line", ConstructionRole.Frame));
        Landmark side = sheet.SquareAcross(top, Across.Right, width, "side top", LineName.Of("waist level", ConstructionRole.Level));
        Landmark low = sheet.SquareDown(side, depth - corner, "side bottom");
        Landmark near = sheet.SquareAcross(bottom, Across.Right, width - corner, "corner bottom");
        draft.Remark("Half of the apron: the centre front lies on the fold.");

        CubicBezier round = CubicBezier.Between(low.Position, Direction.Down, near.Position, Direction.Left);
        draft.Add(Panel.Named(Apron)
            .WithEdge(EdgeName.Waist, EdgeRole.Opening, CurvePath.FromLine(LineSegment.Between(top.Position, side.Position)))
            .WithEdge(EdgeName.SideSeam, EdgeRole.Hem, CurvePath.FromLine(LineSegment.Between(side.Position, low.Position)))
            .WithEdge(EdgeName.Hem, EdgeRole.Hem, CurvePath.FromSegments([PathSegment.FromCubic(round), PathSegment.FromLine(LineSegment.Between(near.Position, bottom.Position))]))
            .WithEdge(EdgeName.Centre, EdgeRole.Centre, CurvePath.FromLine(LineSegment.Between(bottom.Position, top.Position)))
            .WithLandmark("side top", side.Position)
            .Make());

        draft.Aim("half width", "apron", side.Position.DistanceTo(top.Position), width.Value, list => list.FindPanel(Apron).FindEdge(EdgeName.Waist).SewnLength);
        draft.Check(list =>
        {
            Panel panel = list.FindPanel(Apron);
            list.Length("waist edge", "apron", panel.FindEdge(EdgeName.Waist).SewnLength, width.Value);
            list.LengthAtLeast("centre depth", "apron", panel.FindEdge(EdgeName.Centre).SewnLength, depth.Value);
            list.Angle("corner at side", "apron", panel.FindEdge(EdgeName.Waist).Stretches[0].EndDirection.AngleTo(panel.FindEdge(EdgeName.SideSeam).Stretches[0].StartDirection), Angle.FromDegrees(-90));
            list.CountAtMost("darts", "apron", panel.FindEdge(EdgeName.Waist).Darts.Count, 0);
            if (depth.Value > Tape.Inches("30"))
            {
                list.Advise(Advice.Of("A long apron catches on stairs.", "Make it end above the knee."), "depth", "apron", depth.Value, FindingRelation.AtMost, Tape.Inches("30"));
            }
        });
        draft.Alternative("longer apron", builder => builder.With(Depth, Tape.Inches("24")), EdgeName.Hem);
    }
}
