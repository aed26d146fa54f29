using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Every invariant of a skirt block, measured on its finished panels.</summary>
internal static class SkirtChecks
{
    private const double RightAngle = Math.PI / 2;

    internal static CheckReport Check(Panel back, Panel front, SkirtDraft draft, SkirtOptions options)
    {
        var list = new CheckList();
        PanelEdge backWaist = back.FindEdge(EdgeName.Waist);
        PanelEdge frontWaist = front.FindEdge(EdgeName.Waist);
        double hipMm = -options.Levels.LowerHipMm;

        list.Length("closed waist all around", "block", 2 * (backWaist.SewnLengthMm() + frontWaist.SewnLengthMm()), draft.WaistTargetMm);
        list.Length("closed waist", "back", backWaist.SewnLengthMm(), draft.WaistTargetMm / 4);
        list.Length("closed waist", "front", frontWaist.SewnLengthMm(), draft.WaistTargetMm / 4);
        list.Length("hip width all around", "block", 2 * (WidthAt(back, draft.Back, hipMm) + WidthAt(front, draft.Front, hipMm)), draft.HipTargetMm);
        list.Length("back wider than front at hip", "block", WidthAt(back, draft.Back, hipMm) - WidthAt(front, draft.Front, hipMm), draft.Reading.BackWider.ValueMm);

        SkirtSeams.Plan.Check(list, [back, front]);
        CheckCorners(list, back);
        CheckCorners(list, front);
        list.Angle("hem joined at side", "block", HemAtSide(back) + HemAtSide(front), Math.PI);
        CheckDarts(list, back, draft.Back, options);
        CheckDarts(list, front, draft.Front, options);
        CheckOutline(list, back, draft.Back);
        CheckOutline(list, front, draft.Front);
        return list.ToReport();
    }

    private static void CheckCorners(CheckList list, Panel panel)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        CurvePath side = panel.FindEdge(EdgeName.SideSeam).Stretches[0];
        CurvePath hem = panel.FindEdge(EdgeName.Hem).Stretches[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).Stretches[0];
        list.Angle("waist square to centre", place, CheckList.CornerRad(centre, waist.Stretches[0]), RightAngle);
        list.Angle("waist square to side", place, CheckList.CornerRad(waist.Stretches[waist.Stretches.Count - 1], side), RightAngle);
        list.Angle("hem square to centre", place, CheckList.CornerRad(hem, centre), RightAngle);
    }

    private static double HemAtSide(Panel panel)
        => CheckList.CornerRad(panel.FindEdge(EdgeName.SideSeam).Stretches[0], panel.FindEdge(EdgeName.Hem).Stretches[0]);

    private static void CheckDarts(CheckList list, Panel panel, SkirtQuarter quarter, SkirtOptions options)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        for (int i = 0; i < waist.Darts.Count; i++)
        {
            Dart dart = waist.Darts[i];
            string name = DartNames[i];
            list.Length(name + " intake", place, dart.IntakeMm, quarter.Wedges[i].IntakeMm);
            list.Length(name + " length", place, dart.LengthMm, quarter.Wedges[i].LengthMm);
            list.Length(name + " legs", place, dart.LegLengthMm(Toward.Centre), dart.LegLengthMm(Toward.Side));
            list.Angle(name + " closed without a corner", place, CheckList.CornerAcrossDartRad(waist, i), 0);
            list.Length(name + " cap folded onto the seam", place, CheckList.CapOffSeamMm(waist, i), 0);
            list.LengthAtMost(name + " apex no lower than hip line", place, -dart.Apex.YMm, options.Levels.LowerHipMm);
        }
    }

    private static void CheckOutline(CheckList list, Panel panel, SkirtQuarter quarter)
    {
        string place = panel.Name.Text;
        PanelEdge side = panel.FindEdge(EdgeName.SideSeam);
        double narrowest = Math.Min(
            quarter.Hand * (side.Start.XMm - quarter.CentreWaist.Position.XMm),
            Math.Min(
                quarter.Hand * (side.End.XMm - panel.FindEdge(EdgeName.Hem).End.XMm),
                WidthAt(panel, quarter, quarter.CentreLowerHip.Position.YMm)));
        list.LengthAtLeast("narrowest width at least", place, narrowest, 1);

        // Down one leg of every dart and up the other: simple only where darts lie inside the panel and apart from each other.
        CurvePath outline = panel.SeamOutline();
        list.Count("outline with darts crossing itself", place, outline.IsSimple() ? 0 : outline.SelfIntersections().Points.Count, 0);
    }

    /// <summary>From the centre edge to the side seam at a height, positive where the side lies on its own side.</summary>
    private static double WidthAt(Panel panel, SkirtQuarter quarter, double yMm)
        => quarter.Hand * (XAt(panel.FindEdge(EdgeName.SideSeam), yMm) - XAt(panel.FindEdge(EdgeName.Centre), yMm));

    private static double XAt(PanelEdge edge, double yMm)
    {
        foreach (PathSegment segment in edge.Stretches[0].SegmentsRaw)
        {
            Point2D start = segment.Start;
            Point2D end = segment.End;
            if (Math.Min(start.YMm, end.YMm) <= yMm && yMm <= Math.Max(start.YMm, end.YMm))
            {
                return segment.Kind == PathSegmentKind.Cubic && segment.CubicRaw.IntersectLine(Line.Horizontal(new Point2D(0, yMm)), out ParameterHits hits) > 0
                    ? segment.CubicRaw.PointAtRaw(hits[0]).XMm
                    : start.XMm + ((end.XMm - start.XMm) * (start.YMm == end.YMm ? 0 : (yMm - start.YMm) / (end.YMm - start.YMm)));
            }
        }

        return double.NaN;
    }

    private static readonly string[] DartNames = ["dart 1", "dart 2", "dart 3", "dart 4"];
}
