using System;
using System.Linq;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What must hold where bodice and skirt meet, and below, measured on whatever panels the gown has.</summary>
internal sealed class GownChecks(GownDraft gown)
{
    // Hem of a straight skirt to the knee, all around: common practice, no source.
    private const double LeastHemMm = 950;

    private static readonly Advice NarrowHem = Advice.Of("A hem as narrow as this ties the stride.", "Leave a slit or vent up to 3 to 4 in (8 to 10 cm) above the knee, or flare the skirt.");

    internal void CheckJoin(CheckList list)
    {
        CheckJoin(list, PanelName.Back, GownNames.SkirtBack);
        CheckJoin(list, PanelName.Front, GownNames.SkirtFront);
        double hipMm = gown.Skirt.Body[Measurement.BodyMeasurement.HipGirth].Millimeters + gown.Skirt.HipEase.Millimeters;
        list.Length("hip width all around", "block", 2 * (WidthAtHipMm(list.FindPanel(GownNames.SkirtBack)) + WidthAtHipMm(list.FindPanel(GownNames.SkirtFront))), hipMm);
    }

    internal static void Advise(CheckList list)
    {
        double hemMm = 2 * (HemMm(list, GownNames.SkirtBack) + HemMm(list, GownNames.SkirtFront));
        if (hemMm < LeastHemMm)
        {
            list.Advise(NarrowHem, "hem", "block", Length.FromMillimeters(hemMm), FindingRelation.AtLeast, Length.FromMillimeters(LeastHemMm));
        }
    }

    // Stretch by stretch from the centre, so that every dart meets the one above it.
    private static void CheckJoin(CheckList list, PanelName bodice, PanelName skirt)
    {
        double[] above = GownSkirt.PlacesMm(list.FindPanel(bodice), isCentreFirst: false);
        double[] below = GownSkirt.PlacesMm(list.FindPanel(skirt), isCentreFirst: true);
        for (int i = 0; i < Math.Min(above.Length, below.Length) && above.Length == below.Length; i++)
        {
            list.Length("waist seam from the centre to dart " + (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), skirt.Text, below[i], above[i]);
        }

        list.Length("waist of the skirt", skirt.Text, list.FindPanel(skirt).FindEdge(EdgeName.Waist).SewnLengthMm(), list.FindPanel(bodice).FindEdge(EdgeName.Waist).SewnLengthMm());
    }

    private static double WidthAtHipMm(Panel panel)
        => Math.Abs(panel.Notches.First(notch => notch.Edge == EdgeName.SideSeam).Position.XMm - panel.FindEdge(EdgeName.Centre).Start.XMm);

    private static double HemMm(CheckList list, PanelName panel) => list.FindPanel(panel).FindEdge(EdgeName.Hem).SewnLengthMm();
}
