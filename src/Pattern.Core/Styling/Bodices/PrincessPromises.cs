using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What holds of a bodice with princess seams, measured on whatever panels the list has.</summary>
internal sealed class PrincessPromises(EdgeName from, BodiceStock stock, DesignDraft work)
{
    private static readonly PanelName[] All = [PrincessDesign.CentreBack, PrincessDesign.SideBack, PrincessDesign.SideFront, PrincessDesign.CentreFront];

    internal void Promise(double backEaseMm, double frontEaseMm)
    {
        BodiceDraft hand = stock.Hand;
        bool isFromShoulder = from == EdgeName.Shoulder;
        double armholeMm = stock.Back.FindEdge(EdgeName.Armhole).SewnLengthMm() + stock.Front.FindEdge(EdgeName.Armhole).SewnLengthMm();
        PanelName tipBack = isFromShoulder ? PrincessDesign.SideBack : PrincessDesign.CentreBack;
        PanelName tipFront = isFromShoulder ? PrincessDesign.SideFront : PrincessDesign.CentreFront;
        EdgeName top = from;
        work.Check("waist", list =>
        {
            list.Length("closed waist all around", "block", 2 * SewnMm(list, EdgeName.Waist), 4 * hand.QuarterWaist.ValueMm);
            list.Angle("waist square to centre", "centre back", Corner(list, PrincessDesign.CentreBack, EdgeName.Waist, EdgeName.Centre), Math.PI / 2);
            list.Angle("waist square to centre", "centre front", Corner(list, PrincessDesign.CentreFront, EdgeName.Waist, EdgeName.Centre), Math.PI / 2);
            list.Angle("waist joined at the side", "block", Corner(list, PrincessDesign.SideBack, EdgeName.SideSeam, EdgeName.Waist) + Corner(list, PrincessDesign.SideFront, EdgeName.SideSeam, EdgeName.Waist), Math.PI);
            list.Angle("waist joined at the princess seam", "back", Corner(list, PrincessDesign.SideBack, EdgeName.Waist, PrincessDesign.Seam) + Corner(list, PrincessDesign.CentreBack, PrincessDesign.Seam, EdgeName.Waist), Math.PI);
            list.Angle("waist joined at the princess seam", "front", Corner(list, PrincessDesign.SideFront, EdgeName.Waist, PrincessDesign.Seam) + Corner(list, PrincessDesign.CentreFront, PrincessDesign.Seam, EdgeName.Waist), Math.PI);
        });
        work.Check("neckline", list =>
        {
            list.Length("neckline all around", "block", 2 * SewnMm(list, EdgeName.Neckline), hand.Body.Neck.ValueMm);
            list.Angle("neckline joined at the shoulder", "block", Corner(list, PrincessDesign.CentreBack, EdgeName.Neckline, EdgeName.Shoulder) + Corner(list, PrincessDesign.CentreFront, EdgeName.Neckline, EdgeName.Shoulder), Math.PI);
        });
        work.Check("armhole", list =>
        {
            list.Length("armhole", "block", SewnMm(list, EdgeName.Armhole), armholeMm);
            list.Angle("armhole joined at the shoulder", "block", Corner(list, tipBack, EdgeName.Shoulder, EdgeName.Armhole) + Corner(list, tipFront, EdgeName.Shoulder, EdgeName.Armhole), Math.PI);
            list.Angle("armhole joined at the side", "block", Corner(list, PrincessDesign.SideBack, EdgeName.Armhole, EdgeName.SideSeam) + Corner(list, PrincessDesign.SideFront, EdgeName.Armhole, EdgeName.SideSeam), Math.PI);
            list.Angle(top + " joined at the princess seam", "back", Corner(list, PrincessDesign.CentreBack, top, PrincessDesign.Seam) + Corner(list, PrincessDesign.SideBack, PrincessDesign.Seam, top), Math.PI);
            list.Angle(top + " joined at the princess seam", "front", Corner(list, PrincessDesign.CentreFront, top, PrincessDesign.Seam) + Corner(list, PrincessDesign.SideFront, PrincessDesign.Seam, top), Math.PI);
        });
        work.Release("widths", "Its panels are cut apart there.");
        work.Release("turned darts", "They are seams now.");
        var before = new CheckList([stock.DraftedBack, stock.DraftedFront]);
        work.Check("advice", list => BodiceAdvice.Give(before, list, hand));
        work.Sew(Seams(isFromShoulder, backEaseMm, frontEaseMm, hand.ShoulderEase.Value));
    }

    private static SeamPlan Seams(bool isFromShoulder, double backEaseMm, double frontEaseMm, Length shoulderEase)
    {
        SeamPlan plan = SeamPlan.Of(
            Seam.Between(Of(PrincessDesign.SideBack, EdgeName.SideSeam), Of(PrincessDesign.SideFront, EdgeName.SideSeam)).Named("side seam"),
            Princess(PrincessDesign.CentreBack, PrincessDesign.SideBack, "back princess seam", backEaseMm),
            Princess(PrincessDesign.CentreFront, PrincessDesign.SideFront, "front princess seam", frontEaseMm));
        return isFromShoulder
            ? plan.With(Seam.Between(Of(PrincessDesign.CentreBack, EdgeName.Shoulder), Of(PrincessDesign.CentreFront, EdgeName.Shoulder)).Named("inner shoulder seam"))
                .With(Seam.Between(Of(PrincessDesign.SideBack, EdgeName.Shoulder), Of(PrincessDesign.SideFront, EdgeName.Shoulder)).Named("outer shoulder seam"))
            : plan.With(Seam.Between(Of(PrincessDesign.CentreBack, EdgeName.Shoulder), Of(PrincessDesign.CentreFront, EdgeName.Shoulder)).Named("shoulder seam").WithEase(shoulderEase));
    }

    // The edge of the centre panel begins at the top.
    private static Seam Princess(PanelName centre, PanelName side, string name, double easeMm) => Seam
        .Between(Of(centre, PrincessDesign.Seam), Of(side, PrincessDesign.Seam))
        .Named(name, "top to notch", "notch to notch", "notch to waist")
        .WithEaseBetween(Length.FromMillimeters(easeMm), SeamMark.Notch(1), SeamMark.Notch(2));

    private static double SewnMm(CheckList list, EdgeName edge)
        => All.Sum(name => list.FindPanel(name).TryFindEdge(edge, out PanelEdge? found) ? found!.SewnLengthMm() : 0);

    private static double Corner(CheckList list, PanelName name, EdgeName arriving, EdgeName leaving)
    {
        Panel panel = list.FindPanel(name);
        PanelEdge before = panel.FindEdge(arriving);
        return CheckList.CornerRad(before.StretchesRaw[before.StretchesRaw.Length - 1], panel.FindEdge(leaving).StretchesRaw[0]);
    }

    private static EdgeOf Of(PanelName panel, EdgeName edge) => EdgeOf.Panel(panel, edge);
}
