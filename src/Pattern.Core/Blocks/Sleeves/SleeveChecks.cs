using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Every invariant of a sleeve, measured on whatever panels it has: those of the draft, or changed ones.</summary>
internal sealed class SleeveChecks(SleeveDraft draft, Panel drafted)
{
    private const double RightAngle = Math.PI / 2;

    private static readonly string[] BackNotches = Names("back notch", " from the underarm");
    private static readonly string[] FrontNotches = Names("front notch", " from the underarm");

    private readonly double _lowerMm = drafted.FindEdge(draft.LowerEdge).SewnLengthMm();
    private readonly int _elbowDarts = drafted.FindEdge(EdgeName.BackUnderarm).DartsRaw.Length;
    private readonly double _intakeMm = drafted.FindEdge(EdgeName.BackUnderarm).DartsRaw is [{ } dart] ? dart.IntakeMm : 0;
    private readonly ArmholeHalf _front = draft.Armhole.FrontHalf;
    private readonly ArmholeHalf _back = draft.Armhole.BackHalf;

    internal void CheckHead(CheckList list)
    {
        string place = SleeveNames.Sleeve.Text;
        if (!SleeveHead.TryMeasure(list, _back.Notches.Length, _front.Notches.Length, out SleeveHead head))
        {
            int found = WalkSide.NotchesOf(list.FindPanel(SleeveNames.Sleeve), EdgeName.SleeveHead).Length;
            list.Count("notches on the sleeve head", place, found, _back.Notches.Length + 1 + _front.Notches.Length);
            return;
        }

        list.Length("sleeve head less armhole", place, head.FrontMm + head.BackMm - draft.Armhole.LengthMm, draft.FrontEaseMm + draft.BackEaseMm);
        list.Length("front head less front armhole", place, head.FrontMm - _front.LengthMm, draft.FrontEaseMm);
        list.Length("back head less back armhole", place, head.BackMm - _back.LengthMm, draft.BackEaseMm);
        CheckNotches(list, _back, head.BackNotchesMm, draft.BackEaseMm, BackNotches);
        CheckNotches(list, _front, head.FrontNotchesMm, draft.FrontEaseMm, FrontNotches);
    }

    internal void CheckWidth(CheckList list)
    {
        PanelEdge head = list.FindPanel(SleeveNames.Sleeve).FindEdge(EdgeName.SleeveHead);
        double widthMm = head.Start.DistanceMm(head.End);
        list.Length("width at the underarm", SleeveNames.Sleeve.Text, widthMm, draft.WidthMm);
        list.LengthAtLeast("width at least that of the arm", SleeveNames.Sleeve.Text, widthMm, draft.Arm.UpperArm.ValueMm);
    }

    // Square to both seams: with the seams sewn, the line under the arm has no corner. Level at the crown: nor has the head at the shoulder.
    internal void CheckCorners(CheckList list)
    {
        string place = SleeveNames.Sleeve.Text;
        Panel sleeve = list.FindPanel(SleeveNames.Sleeve);
        CurvePath head = sleeve.FindEdge(EdgeName.SleeveHead).StretchesRaw[0];
        double backRad = CheckList.CornerRad(Last(sleeve.FindEdge(EdgeName.BackUnderarm)), head);
        double frontRad = CheckList.CornerRad(Last(sleeve.FindEdge(EdgeName.SleeveHead)), sleeve.FindEdge(EdgeName.FrontUnderarm).StretchesRaw[0]);
        list.Angle("head square to back underarm", place, backRad, RightAngle);
        list.Angle("head square to front underarm", place, frontRad, RightAngle);
        list.Angle("head joined under the arm", place, backRad + frontRad, Math.PI);
        double corner = 0;
        for (int i = 1; i < head.SegmentsRaw.Length; i++)
        {
            corner = Math.Max(corner, Math.Abs(head.SegmentsRaw[i - 1].EndDirection.TurnRadTo(head.SegmentsRaw[i].StartDirection)));
        }

        list.Angle("head without a corner", place, corner, 0);
    }

    internal void CheckLowerEdge(CheckList list)
    {
        Panel sleeve = list.FindPanel(SleeveNames.Sleeve);
        PanelEdge lower = sleeve.FindEdge(draft.LowerEdge);
        list.Length(draft.ReachesWrist ? "wrist width" : "hem width", SleeveNames.Sleeve.Text, lower.SewnLengthMm(), _lowerMm);
        list.Length(draft.ReachesWrist ? "wrist straight" : "hem straight", SleeveNames.Sleeve.Text, lower.SewnLengthMm() - lower.Start.DistanceMm(lower.End), 0);
    }

    internal void CheckElbow(CheckList list)
    {
        PanelEdge back = list.FindPanel(SleeveNames.Sleeve).FindEdge(EdgeName.BackUnderarm);
        string place = SleeveNames.Sleeve.Text;
        if (back.DartsRaw.Length != _elbowDarts)
        {
            list.Count("elbow darts", place, back.DartsRaw.Length, _elbowDarts);
        }
        else if (_elbowDarts == 1)
        {
            Dart dart = back.DartsRaw[0];
            list.Length("elbow dart intake", place, dart.IntakeMm, _intakeMm);
            list.Length("elbow dart legs", place, dart.LegLengthMm(Toward.Start), dart.LegLengthMm(Toward.End));
            list.Angle("elbow dart closed without a corner", place, CheckList.CornerAcrossDartRad(back, 0), 0);
            list.Length("elbow dart cap folded onto the seam", place, CheckList.CapOffSeamMm(back, 0), 0);
        }
    }

    internal void CheckOutline(CheckList list)
    {
        foreach (Panel panel in list.PanelsRaw)
        {
            list.Count("outline crossing itself", panel.Name.Text, panel.HasSimpleOutline() ? 0 : panel.SeamOutline().SelfIntersections().Points.Count, 0);
        }
    }

    private static CurvePath Last(PanelEdge edge) => edge.StretchesRaw[edge.StretchesRaw.Length - 1];

    private static void CheckNotches(CheckList list, ArmholeHalf half, double[] measuredMm, double easeMm, string[] names)
    {
        for (int i = 0; i < measuredMm.Length; i++)
        {
            list.Length(i < names.Length ? names[i] : names[names.Length - 1], SleeveNames.Sleeve.Text, measuredMm[i], half.OnHeadMm(half.Notches[i].FromSideMm, easeMm));
        }
    }

    private static string[] Names(string before, string after)
        => [before + after, before + " 2" + after, before + " 3" + after, before + " further" + after];
}
