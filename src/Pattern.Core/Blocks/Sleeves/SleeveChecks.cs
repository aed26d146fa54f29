using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Every invariant of a sleeve, measured on whatever panels it has: those of the draft, or changed ones.</summary>
internal sealed class SleeveChecks(SleeveDraft draft, Panel[] drafted)
{
    private const double RightAngle = Math.PI / 2;

    private static readonly string[] BackNotches = Names("back notch", " from the underarm");
    private static readonly string[] FrontNotches = Names("front notch", " from the underarm");

    private readonly double[] _lowerMm = Array.ConvertAll(drafted, panel => panel.FindEdge(draft.LowerEdge).SewnLengthMm());
    private readonly Dart? _elbowDart = drafted[0].TryFindEdge(EdgeName.BackUnderarm, out PanelEdge? back) && back!.DartsRaw.Length == 1 ? back.DartsRaw[0] : null;
    private readonly ArmholeHalf _front = draft.Armhole.FrontHalf;
    private readonly ArmholeHalf _back = draft.Armhole.BackHalf;

    internal void CheckHead(CheckList list)
    {
        string place = draft.IsInTwo ? "block" : SleeveNames.Sleeve.Text;
        if (!SleeveHead.TryMeasure(list, draft.IsInTwo, _back.Notches.Length, _front.Notches.Length, out SleeveHead head))
        {
            int found = 0;
            foreach (Panel panel in list.PanelsRaw)
            {
                found += WalkSide.NotchesOf(panel, EdgeName.SleeveHead).Length;
            }

            // Cut in two, two seams stand for notches, and one marks the underarm.
            list.Count("notches on the sleeve head", place, found, _back.Notches.Length + _front.Notches.Length + (draft.IsInTwo ? 0 : 1));
            return;
        }

        list.Length("sleeve head less armhole", place, head.FrontMm + head.BackMm - draft.Armhole.LengthMm, draft.FrontEaseMm + draft.BackEaseMm);
        list.Length("front head less front armhole", place, head.FrontMm - _front.LengthMm, draft.FrontEaseMm);
        list.Length("back head less back armhole", place, head.BackMm - _back.LengthMm, draft.BackEaseMm);
        CheckNotches(list, place, _back, head.BackNotchesMm, draft.BackEaseMm, BackNotches);
        CheckNotches(list, place, _front, head.FrontNotchesMm, draft.FrontEaseMm, FrontNotches);
    }

    internal void CheckWidth(CheckList list)
    {
        // Cut in two, what lay on the underarm line is on two panels.
        if (!draft.IsInTwo)
        {
            PanelEdge head = list.FindPanel(SleeveNames.Sleeve).FindEdge(EdgeName.SleeveHead);
            list.Length("width at the underarm", SleeveNames.Sleeve.Text, head.Start.DistanceMm(head.End), draft.WidthMm);
        }

        list.LengthAtLeast("width at least that of the arm", "block", draft.WidthMm, draft.Arm.UpperArm.ValueMm);
    }

    // Square to both seams: with the seams sewn, the line under the arm has no corner. Level at the crown: nor has the head at the shoulder.
    internal void CheckCorners(CheckList list)
    {
        if (draft.IsInTwo)
        {
            Panel top = list.FindPanel(SleeveInTwo.Top);
            Panel under = list.FindPanel(SleeveInTwo.Under);
            list.Angle("head joined over the back seam", "block", CornerRad(top, SleeveInTwo.BackSeam, EdgeName.SleeveHead) + CornerRad(under, EdgeName.SleeveHead, SleeveInTwo.BackSeam), Math.PI);
            list.Angle("head joined over the front seam", "block", CornerRad(top, EdgeName.SleeveHead, SleeveInTwo.FrontSeam) + CornerRad(under, SleeveInTwo.FrontSeam, EdgeName.SleeveHead), Math.PI);
            CheckSmooth(list, top);
            CheckSmooth(list, under);
            return;
        }

        string place = SleeveNames.Sleeve.Text;
        Panel sleeve = list.FindPanel(SleeveNames.Sleeve);
        double backRad = CornerRad(sleeve, EdgeName.BackUnderarm, EdgeName.SleeveHead);
        double frontRad = CornerRad(sleeve, EdgeName.SleeveHead, EdgeName.FrontUnderarm);
        list.Angle("head square to back underarm", place, backRad, RightAngle);
        list.Angle("head square to front underarm", place, frontRad, RightAngle);
        list.Angle("head joined under the arm", place, backRad + frontRad, Math.PI);
        CheckSmooth(list, sleeve);
    }

    internal void CheckLowerEdge(CheckList list)
    {
        for (int i = 0; i < drafted.Length; i++)
        {
            PanelEdge lower = list.FindPanel(drafted[i].Name).FindEdge(draft.LowerEdge);
            list.Length(draft.ReachesWrist ? "wrist width" : "hem width", drafted[i].Name.Text, lower.SewnLengthMm(), _lowerMm[i]);
        }

        if (!draft.IsInTwo)
        {
            PanelEdge lower = list.FindPanel(SleeveNames.Sleeve).FindEdge(draft.LowerEdge);
            list.Length(draft.ReachesWrist ? "wrist straight" : "hem straight", SleeveNames.Sleeve.Text, lower.SewnLengthMm() - lower.Start.DistanceMm(lower.End), 0);
        }
    }

    internal void CheckElbow(CheckList list)
    {
        if (draft.IsInTwo)
        {
            return;
        }

        PanelEdge back = list.FindPanel(SleeveNames.Sleeve).FindEdge(EdgeName.BackUnderarm);
        string place = SleeveNames.Sleeve.Text;
        int darts = _elbowDart is null ? 0 : 1;
        if (back.DartsRaw.Length != darts)
        {
            list.Count("elbow darts", place, back.DartsRaw.Length, darts);
        }
        else if (_elbowDart is { } drawn)
        {
            Dart dart = back.DartsRaw[0];
            list.Length("elbow dart intake", place, dart.IntakeMm, drawn.IntakeMm);
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

    private static double CornerRad(Panel panel, EdgeName arriving, EdgeName leaving)
    {
        CurvePath[] stretches = panel.FindEdge(arriving).StretchesRaw;
        return CheckList.CornerRad(stretches[stretches.Length - 1], panel.FindEdge(leaving).StretchesRaw[0]);
    }

    private static void CheckSmooth(CheckList list, Panel panel)
    {
        PathSegment[] head = panel.FindEdge(EdgeName.SleeveHead).StretchesRaw[0].SegmentsRaw;
        double corner = 0;
        for (int i = 1; i < head.Length; i++)
        {
            corner = Math.Max(corner, Math.Abs(head[i - 1].EndDirection.TurnRadTo(head[i].StartDirection)));
        }

        list.Angle("head without a corner", panel.Name.Text, corner, 0);
    }

    private static void CheckNotches(CheckList list, string place, ArmholeHalf half, double[] measuredMm, double easeMm, string[] names)
    {
        for (int i = 0; i < measuredMm.Length; i++)
        {
            list.Length(i < names.Length ? names[i] : names[names.Length - 1], place, measuredMm[i], half.OnHeadMm(half.Notches[i].FromSideMm, easeMm));
        }
    }

    private static string[] Names(string before, string after)
        => [before + after, before + " 2" + after, before + " 3" + after, before + " further" + after];
}
