using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What must hold of a bodice, measured on whatever panels it has.</summary>
internal sealed class BodiceChecks(BodiceDraft hand)
{
    internal void CheckWaist(CheckList list)
    {
        double back = list.FindPanel(PanelName.Back).FindEdge(EdgeName.Waist).SewnLengthMm();
        double front = list.FindPanel(PanelName.Front).FindEdge(EdgeName.Waist).SewnLengthMm();
        list.Length("closed waist all around", "block", 2 * (back + front), 4 * hand.QuarterWaist.ValueMm);
        list.Length("closed waist", "back", back, hand.QuarterWaist.ValueMm);
        list.Length("closed waist", "front", front, hand.QuarterWaist.ValueMm);
        CheckSquare(list, "waist square to centre", EdgeName.Waist, EdgeName.Centre);
        list.Angle("waist joined at the side", "block", Joined(list, EdgeName.SideSeam, EdgeName.Waist), Math.PI);
    }

    internal void CheckNeckline(CheckList list)
    {
        double back = list.FindPanel(PanelName.Back).FindEdge(EdgeName.Neckline).SewnLengthMm();
        double front = list.FindPanel(PanelName.Front).FindEdge(EdgeName.Neckline).SewnLengthMm();
        list.Length("neckline all around", "block", 2 * (back + front), hand.Body.Neck.ValueMm);
        CheckSquare(list, "neckline square to centre", EdgeName.Centre, EdgeName.Neckline);
        list.Angle("neckline joined at the shoulder", "block", Joined(list, EdgeName.Neckline, EdgeName.Shoulder), Math.PI);
    }

    internal void CheckArmhole(CheckList list)
    {
        list.Angle("armhole joined at the shoulder", "block", Joined(list, EdgeName.Shoulder, EdgeName.Armhole), Math.PI);
        list.Angle("armhole joined at the side", "block", Joined(list, EdgeName.Armhole, EdgeName.SideSeam), Math.PI);
    }

    internal void CheckWidths(CheckList list)
    {
        CheckHalfBack(list);
        CheckAcrossBack(list);
        CheckAcrossFront(list);
    }

    internal void CheckHalfBack(CheckList list)
    {
        Panel back = list.FindPanel(PanelName.Back);
        list.Length("half back at the armhole line", "back", back.FindEdge(EdgeName.Armhole).End.XMm - back.FindEdge(EdgeName.Centre).End.XMm, hand.BackWidth.ValueMm);
    }

    internal void CheckAcrossBack(CheckList list)
        => list.Length("half across the back", "back", AcrossMm(list.FindPanel(PanelName.Back), hand.BackTouch), hand.AcrossBack.ValueMm);

    internal void CheckAcrossFront(CheckList list)
        => list.Length("half across the front", "front", AcrossMm(list.FindPanel(PanelName.Front), hand.FrontTouch), hand.AcrossFront.ValueMm);

    internal static void CheckDarts(CheckList list)
    {
        foreach (Panel panel in list.Panels)
        {
            string place = panel.Name.Text;
            foreach (PanelEdge edge in panel.Edges)
            {
                for (int i = 0; i < edge.Darts.Count; i++)
                {
                    Dart dart = edge.Darts[i];
                    string name = dart.Name.ToString();
                    list.Length(name + " legs", place, dart.LegLengthMm(Toward.Start), dart.LegLengthMm(Toward.End));
                    list.Angle(name + " closed without a corner", place, CheckList.CornerAcrossDartRad(edge, i), 0);
                    list.Length(name + " cap folded onto the seam", place, CheckList.CapOffSeamMm(edge, i), 0);
                }
            }
        }
    }

    internal static void CheckOutline(CheckList list)
    {
        foreach (Panel panel in list.Panels)
        {
            list.Count("outline with darts crossing itself", panel.Name.Text, panel.HasSimpleOutline() ? 0 : panel.SeamOutline().SelfIntersections().Points.Count, 0);
        }
    }

    /// <summary>The length of both armholes of one side, back and front.</summary>
    internal static double ArmholeMm(CheckList list) => list.FindPanel(PanelName.Back).FindEdge(EdgeName.Armhole).SewnLengthMm()
        + list.FindPanel(PanelName.Front).FindEdge(EdgeName.Armhole).SewnLengthMm();

    /// <summary>From the side neck point down to the waist, front less back.</summary>
    internal static double BalanceMm(CheckList list) => SideNeckMm(list.FindPanel(PanelName.Front)) - SideNeckMm(list.FindPanel(PanelName.Back));

    // The waist lies at 0, where it is no edge of the panel.
    private static double SideNeckMm(Panel panel) => panel.FindEdge(EdgeName.Neckline).End.YMm - (panel.TryFindEdge(EdgeName.Waist, out PanelEdge? waist) ? waist!.End.YMm : 0);

    // Level from the centre line to where the armhole is drawn through.
    private static double AcrossMm(Panel panel, in Point2D touch)
        => Math.Abs(panel.FindEdge(EdgeName.Armhole).Stretches[0].ClosestTo(touch).Point.XMm - panel.FindEdge(EdgeName.Centre).Start.XMm);

    /// <summary>From the centre line to where the armhole comes nearest to it.</summary>
    internal static double NarrowestMm(Panel panel)
    {
        double centre = panel.FindEdge(EdgeName.Centre).Start.XMm;
        BoundingBox box = panel.FindEdge(EdgeName.Armhole).Stretches[0].Bounds;
        return Math.Min(Math.Abs(box.LeftMm - centre), Math.Abs(box.RightMm - centre));
    }

    private static void CheckSquare(CheckList list, string check, EdgeName arriving, EdgeName leaving)
    {
        foreach (PanelName name in new[] { PanelName.Back, PanelName.Front })
        {
            list.Angle(check, name.Text, CornerRad(list.FindPanel(name), arriving, leaving), Math.PI / 2);
        }
    }

    private static double Joined(CheckList list, EdgeName arriving, EdgeName leaving)
        => CornerRad(list.FindPanel(PanelName.Back), arriving, leaving) + CornerRad(list.FindPanel(PanelName.Front), arriving, leaving);

    private static double CornerRad(Panel panel, EdgeName arriving, EdgeName leaving)
    {
        PanelEdge before = panel.FindEdge(arriving);
        return CheckList.CornerRad(before.Stretches[before.Stretches.Count - 1], panel.FindEdge(leaving).Stretches[0]);
    }
}
