using System;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What is known to be impossible from lengths alone, before it is drawn.</summary>
internal static class BodiceRefusals
{
    private const double LeastSideMm = 100;
    private const double LeastArmholeMm = 60;
    private const double LeastPartMm = 20;
    private const double LeastShoulderMm = 80;
    private const double MostShoulderMm = 180;
    private const double MostSideInMm = 40;
    private const double MostSideOutMm = 30;
    private const double MostBustDartRad = 40 * Math.PI / 180;
    private const double BustPointInsideMm = 20;

    internal static void Refuse(BlockDraft draft, BodiceDraft bodice)
    {
        BodiceMeasures body = bodice.Body;
        Length sideLength = body.BackLength.Value - bodice.ArmholeDepth.Value;
        if (sideLength.Millimeters < LeastSideMm)
        {
            throw draft.Refusal("The armhole line lies too near to the waist for a side seam: look at scye depth and back length.", sideLength, Mm(LeastSideMm));
        }

        Length armhole = bodice.Box.Value - bodice.AcrossBack.Value - bodice.AcrossFront.Value;
        if (armhole.Millimeters < LeastArmholeMm)
        {
            throw draft.Refusal("Back and front leave the armhole too narrow: look at the widths across back and front, or give more bust ease.", armhole, Mm(LeastArmholeMm));
        }

        Length part = Mm(Math.Min(bodice.BackWidth.ValueMm - bodice.AcrossBack.ValueMm, bodice.FrontWidth.ValueMm - bodice.AcrossFront.ValueMm));
        if (part.Millimeters < LeastPartMm)
        {
            throw draft.Refusal("The side seam would lie too near to the back or the front of the armhole: look at the widths across both, and at how much wider the front is.", part, Mm(LeastPartMm));
        }

        if (body.Shoulder.ValueMm < LeastShoulderMm)
        {
            throw draft.Refusal("The shoulder is too short for this draft.", body.Shoulder.Value, Mm(LeastShoulderMm));
        }

        if (body.Shoulder.ValueMm > MostShoulderMm)
        {
            throw draft.Refusal("The shoulder is too long for this draft.", body.Shoulder.Value, Mm(MostShoulderMm));
        }

        Length fromSide = bodice.FrontWidth.Value - body.BustPointWidth.Value / 2;
        if (fromSide.Millimeters < BustPointInsideMm)
        {
            throw draft.Refusal("The bust point would lie beyond the side seam: look at the width from bust point to bust point.", fromSide, Mm(BustPointInsideMm));
        }
    }

    internal static void RefuseSide(BlockDraft draft, BodiceShaping shaping)
    {
        double mm = shaping.SideIn.ValueMm;
        if (mm > MostSideInMm)
        {
            throw draft.Refusal("The side seam would come in too far at the waist: more than its darts can help.", shaping.SideIn.Value, Mm(MostSideInMm));
        }

        if (mm < -MostSideOutMm)
        {
            throw draft.Refusal("The side seam would go out too far at the waist: the waist is larger than this draft can reach from the bust.", Mm(-mm), Mm(MostSideOutMm));
        }
    }

    /// <summary>Refuses a bust dart that would be no dart any more.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="bustPoint">What the dart turns about.</param>
    /// <param name="folded">The underarm with the dart folded.</param>
    /// <param name="lineMm">The height of the armhole line that opening the dart lifts it to.</param>
    internal static void RefuseWideBustDart(BlockDraft draft, in Point2D bustPoint, in Point2D folded, double lineMm)
    {
        double reachMm = bustPoint.DistanceMm(folded);
        double foldedRad = Math.Asin(Math.Max(-1, Math.Min(1, (folded.YMm - bustPoint.YMm) / reachMm)));
        double mostMm = (reachMm * Math.Sin(Math.Min(foldedRad + MostBustDartRad, Math.PI / 2))) + bustPoint.YMm - folded.YMm;
        double riseMm = lineMm - folded.YMm;
        if (riseMm > mostMm)
        {
            throw draft.Refusal("The front is longer than its bust dart can take up: look at the length from side neck to waist over the bust.", Mm(riseMm), Mm(mostMm));
        }
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
