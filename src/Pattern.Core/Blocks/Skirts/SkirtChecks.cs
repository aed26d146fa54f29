using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Every invariant of a skirt block, measured on whatever panels it has: those of the draft, or changed ones.</summary>
internal sealed class SkirtChecks(SkirtDraft draft)
{
    private const double RightAngle = Math.PI / 2;

    internal void CheckWaist(CheckList list)
    {
        double backWaist = list.FindPanel(PanelName.Back).FindEdge(EdgeName.Waist).SewnLengthMm();
        double frontWaist = list.FindPanel(PanelName.Front).FindEdge(EdgeName.Waist).SewnLengthMm();
        list.Length("closed waist all around", "block", 2 * (backWaist + frontWaist), draft.WaistTargetMm);
        list.Length("closed waist", "back", backWaist, draft.WaistTargetMm / 4);
        list.Length("closed waist", "front", frontWaist, draft.WaistTargetMm / 4);
    }

    internal void CheckHip(CheckList list)
    {
        double hipMm = -draft.Depths.LowerHip.ValueMm;
        double back = WidthAt(list.FindPanel(PanelName.Back), draft.Back, hipMm);
        double front = WidthAt(list.FindPanel(PanelName.Front), draft.Front, hipMm);
        list.Length("hip width all around", "block", 2 * (back + front), draft.HipTargetMm);
        double widerMm = draft.Reading.BackWider.ValueMm;
        if (widerMm >= 0)
        {
            list.Length("back wider than front at hip", "block", back - front, widerMm);
        }
        else
        {
            list.Length("front wider than back at hip", "block", front - back, -widerMm);
        }
    }

    internal void CheckCorners(CheckList list)
    {
        CheckCorners(list, list.FindPanel(PanelName.Back));
        CheckCorners(list, list.FindPanel(PanelName.Front));
    }

    internal void CheckHem(CheckList list) => CheckHem(list, list.FindPanel(PanelName.Back), list.FindPanel(PanelName.Front));

    internal void CheckDarts(CheckList list)
    {
        CheckDarts(list, list.FindPanel(PanelName.Back), draft.Back, draft.Depths.LowerHip.ValueMm);
        CheckDarts(list, list.FindPanel(PanelName.Front), draft.Front, draft.Depths.LowerHip.ValueMm);
    }

    internal void CheckOutline(CheckList list)
    {
        CheckOutline(list, list.FindPanel(PanelName.Back), draft.Back);
        CheckOutline(list, list.FindPanel(PanelName.Front), draft.Front);
    }

    internal void Advise(CheckList list)
    {
        SkirtAdvice.Give(list, list.FindPanel(PanelName.Back), draft.Back, draft);
        SkirtAdvice.Give(list, list.FindPanel(PanelName.Front), draft.Front, draft);
    }

    private static void CheckCorners(CheckList list, Panel panel)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        CurvePath side = panel.FindEdge(EdgeName.SideSeam).Stretches[0];
        CurvePath centre = panel.FindEdge(EdgeName.Centre).Stretches[0];
        list.Angle("waist square to centre", place, CheckList.CornerRad(centre, waist.Stretches[0]), RightAngle);
        list.Angle("waist square to side", place, CheckList.CornerRad(waist.Stretches[waist.Stretches.Count - 1], side), RightAngle);
    }

    // A level hem turns up flat. Where its seams lean in it cannot be square to them as well: each corner is off by the angle at which its seam meets the hem, and that is
    // the tolerance of what is joined there.
    private static void CheckHem(CheckList list, Panel back, Panel front)
    {
        foreach (Panel panel in new[] { back, front })
        {
            CurvePath hem = panel.FindEdge(EdgeName.Hem).Stretches[0];
            CurvePath centre = panel.FindEdge(EdgeName.Centre).Stretches[0];
            BoundingBox box = hem.Bounds;
            double leanRad = Lean(centre.StartDirection.Reversed);
            list.Length("hem from level", panel.Name.Text, box.TopMm - box.BottomMm, 0);
            list.Angle(Leaning("hem square to centre", leanRad), panel.Name.Text, CheckList.CornerRad(hem, centre), RightAngle, leanRad + CheckList.ToleranceRad);
        }

        CurvePath backSide = back.FindEdge(EdgeName.SideSeam).Stretches[0];
        CurvePath frontSide = front.FindEdge(EdgeName.SideSeam).Stretches[0];
        double joinedRad = CheckList.CornerRad(backSide, back.FindEdge(EdgeName.Hem).Stretches[0]) + CheckList.CornerRad(frontSide, front.FindEdge(EdgeName.Hem).Stretches[0]);
        double leansRad = Lean(backSide.EndDirection) + Lean(frontSide.EndDirection);
        list.Angle(Leaning("hem joined at side", leansRad), "block", joinedRad, Math.PI, leansRad + CheckList.ToleranceRad);
    }

    private static double Lean(Direction down) => Math.Abs(Direction.Down.TurnRadTo(down));

    private static string Leaning(string check, double leanRad) => leanRad > CheckList.ToleranceRad ? check + " but for the lean of its seams" : check;

    private static void CheckDarts(CheckList list, Panel panel, SkirtQuarter quarter, double lowerHipMm)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        if (waist.Darts.Count != quarter.Wedges.Length)
        {
            // Moved to another edge, split or closed: what was promised of each does not hold of others.
            list.Count("waist darts", place, waist.Darts.Count, quarter.Wedges.Length);
            return;
        }

        for (int i = 0; i < waist.Darts.Count; i++)
        {
            Dart dart = waist.Darts[i];
            DartCheckNames name = DartCheckNames.Of[i];
            list.Length(name.Intake, place, dart.IntakeMm, quarter.Wedges[i].IntakeMm);
            list.Length(name.Length, place, dart.LengthMm, quarter.Wedges[i].LengthMm);
            list.Length(name.Legs, place, dart.LegLengthMm(Toward.Start), dart.LegLengthMm(Toward.End));
            list.Angle(name.Corner, place, CheckList.CornerAcrossDartRad(waist, i), 0);
            list.Length(name.Cap, place, CheckList.CapOffSeamMm(waist, i), 0);
            list.LengthAtMost(name.Apex, place, -dart.Apex.YMm, lowerHipMm);
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
        list.Count("outline with darts crossing itself", place, panel.HasSimpleOutline() ? 0 : panel.SeamOutline().SelfIntersections().Points.Count, 0);
    }

    /// <summary>From the centre edge to the side seam at a height, positive where the side lies on its own side.</summary>
    private static double WidthAt(Panel panel, SkirtQuarter quarter, double yMm)
        => quarter.Hand * (XAt(panel.FindEdge(EdgeName.SideSeam), yMm) - XAt(panel.FindEdge(EdgeName.Centre), yMm));

    internal static double XAt(PanelEdge edge, double yMm)
    {
        Line level = Line.Horizontal(new Point2D(0, yMm));
        foreach (PathSegment segment in edge.Stretches[0].SegmentsRaw)
        {
            CurveIntersections hits = segment.IntersectionsWith(level);
            if (hits.Count > 0)
            {
                return hits[0].Point.XMm;
            }
        }

        return double.NaN;
    }

    /// <summary>What the checks of one dart are called; made once, not for every draft.</summary>
    private sealed class DartCheckNames
    {
        private DartCheckNames(int number)
        {
            string dart = "dart " + number.ToString(System.Globalization.CultureInfo.InvariantCulture);
            Intake = dart + " intake";
            Length = dart + " length";
            Legs = dart + " legs";
            Corner = dart + " closed without a corner";
            Cap = dart + " cap folded onto the seam";
            Apex = dart + " apex no lower than hip line";
        }

        internal static DartCheckNames[] Of { get; } = [new(1), new(2), new(3), new(DartPlan.MostDarts)];

        internal string Intake { get; }

        internal string Length { get; }

        internal string Legs { get; }

        internal string Corner { get; }

        internal string Cap { get; }

        internal string Apex { get; }
    }
}
