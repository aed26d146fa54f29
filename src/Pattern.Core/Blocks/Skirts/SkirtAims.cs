using System;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What the hand draft of a skirt aims at, and how it is measured on the trued panels.</summary>
internal static class SkirtAims
{
    private const string WholeBlock = "block";
    private const string ClosedWaist = "closed waist";
    private const string SideLength = "side seam, upper hip to waist";
    private const string DartLegs = "dart legs, longer less shorter";

    internal static void Aim(BlockDraft draft, SkirtDraft hand)
    {
        SkirtQuarter back = hand.Back;
        SkirtQuarter front = hand.Front;
        double quarter = hand.WaistTargetMm / 4;
        double side = hand.SideTargetMm;
        draft.AimMm(ClosedWaist, WholeBlock, 2 * (back.HandClosedWaistMm + front.HandClosedWaistMm), hand.WaistTargetMm, static list => 2 * (Sewn(list, PanelName.Back) + Sewn(list, PanelName.Front)));
        draft.AimMm(ClosedWaist, PanelName.Back.Text, back.HandClosedWaistMm, quarter, static list => Sewn(list, PanelName.Back));
        draft.AimMm(ClosedWaist, PanelName.Front.Text, front.HandClosedWaistMm, quarter, static list => Sewn(list, PanelName.Front));
        draft.AimMm("hip width", WholeBlock, hand.HandHipMm, hand.HipTargetMm, static list => 2 * (HipWidth(list, PanelName.Back, SkirtNames.CentreBackLowerHip) + HipWidth(list, PanelName.Front, SkirtNames.CentreFrontLowerHip)));
        draft.AimMm("side seam, upper hip to waist, back less front", WholeBlock, back.HandSideLengthMm - front.HandSideLengthMm, 0, static list => Side(list, PanelName.Back) - Side(list, PanelName.Front));
        draft.AimMm(SideLength, PanelName.Back.Text, back.HandSideLengthMm, side, static list => Side(list, PanelName.Back));
        draft.AimMm(SideLength, PanelName.Front.Text, front.HandSideLengthMm, side, static list => Side(list, PanelName.Front));
        draft.AimMm(DartLegs, PanelName.Back.Text, back.HandLegDifferenceMm, 0, static list => Legs(list, PanelName.Back));
        draft.AimMm(DartLegs, PanelName.Front.Text, front.HandLegDifferenceMm, 0, static list => Legs(list, PanelName.Front));
    }

    private static double Sewn(CheckList list, PanelName panel) => list.FindPanel(panel).FindEdge(EdgeName.Waist).SewnLengthMm();

    // The first segment of a side seam runs from the waist to where it leaves the upright line: the upper hip, or the lower one where the waist is larger than the hip.
    private static double Side(CheckList list, PanelName panel) => list.FindPanel(panel).FindEdge(EdgeName.SideSeam).Stretches[0].SegmentsRaw[0].LengthMm();

    // Between the two ends of the panel's own lower hip line.
    private static double HipWidth(CheckList list, PanelName name, LandmarkName centre)
    {
        double from = double.NaN;
        double to = double.NaN;
        foreach (Landmark landmark in list.FindPanel(name).Landmarks)
        {
            from = landmark.Name.Equals(centre) ? landmark.Position.XMm : from;
            to = landmark.Name.Equals(SkirtNames.SideLowerHip) ? landmark.Position.XMm : to;
        }

        return Math.Abs(to - from);
    }

    private static double Legs(CheckList list, PanelName panel)
    {
        double largest = 0;
        foreach (Dart dart in list.FindPanel(panel).FindEdge(EdgeName.Waist).Darts)
        {
            largest = Math.Max(largest, Math.Abs(dart.LegLengthMm(Toward.Start) - dart.LegLengthMm(Toward.End)));
        }

        return largest;
    }
}
