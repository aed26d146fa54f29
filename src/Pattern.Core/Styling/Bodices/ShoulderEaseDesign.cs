using System;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The dart over the shoulder blade left out: a share of it is eased into the armhole, the rest into the shoulder seam.</summary>
internal sealed class ShoulderEaseDesign() : BlockDesign("shoulder dart eased", "1", InArmhole)
{
    // A drafting brief of the trade: 0.5 to 1 cm of shoulder is eased instead of a dart (common practice, no source).
    private const double MostInShoulderMm = 10;

    // Common practice, no source: a woven armhole takes no more than 6 mm without a pucker.
    private const double MostInArmholeMm = 6;

    /// <summary>A quarter by usage: so neither place has to take more than it can.</summary>
    internal static readonly MethodSetting<Ratio> InArmhole = MethodSetting.OfShare("share in the armhole", Ratio.FromPercent(25), Ratio.Zero, Ratio.FromPercent(100)).Printed();

    protected override void Style(DesignDraft work)
    {
        BodiceStock stock = BodiceStock.Of(work);
        double share = work.Take(InArmhole).DecimalFractions;
        Dart dart = BackTurn.DartOf(work, stock);
        if (dart.Name.Edge != EdgeName.Shoulder)
        {
            throw work.Refusal("Its shoulder dart is turned already. Begin with the block as drafted.");
        }

        Panel back = stock.Back;
        double armholeMm = back.FindEdge(EdgeName.Armhole).SewnLengthMm();
        double shoulderMm = back.FindEdge(EdgeName.Shoulder).SewnLengthMm();
        if (share > 0)
        {
            // Cut square to the armhole, it opens along it: elsewhere the two sides would be shifted against each other.
            EdgePlace place = back.FootOn(EdgeName.Armhole, dart.Apex);
            back = BackTurn.Turned(work, back, dart, place, share);
            back = back.TurnDartIntoGathers(BackTurn.OpenedOn(back, place, dart.Apex).Name);
        }

        if (share < 1)
        {
            back = InOneLine(back.TurnDartIntoGathers(back.FindEdge(EdgeName.Shoulder).Darts[0].Name));
        }

        double inArmholeMm = back.FindEdge(EdgeName.Armhole).SewnLengthMm() - armholeMm;
        double inShoulderMm = back.FindEdge(EdgeName.Shoulder).SewnLengthMm() - shoulderMm;
        Refuse(work, "armhole", inArmholeMm, MostInArmholeMm);
        Refuse(work, "shoulder", inShoulderMm, MostInShoulderMm);

        if (share > 0)
        {
            work.Sheet.Note("On the back, cut from the point of the shoulder dart square to the armhole, and fold {0} of the dart away: the cut opens. Draw the armhole across it.", (share * 100).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " %");
            work.Sheet.Note("The back armhole is longer by that, and is eased when the sleeve or the facing is sewn in: {0}.", WorkedLength.GivenMm("armhole ease", inArmholeMm));
        }

        if (share < 1)
        {
            work.Sheet.Note("Leave the shoulder dart unsewn, and draw the back shoulder across it in one line. It is longer than the front one by {0}, which is eased in.", WorkedLength.GivenMm("shoulder ease", inShoulderMm));
        }

        work.Sheet.Because("Cloth can be shrunk over the shoulder blade by that much, and no dart shows.");
        work.Remark(FormattableString.Invariant($"Eased over the shoulder blade: {inShoulderMm:0.#} mm in the shoulder, {inArmholeMm:0.#} mm in the armhole."));
        SeamPlan seams = work.Source.Seams.Without(BodiceNames.BackShoulder).With(Seam.Between(BodiceNames.BackShoulder, BodiceNames.FrontShoulder).Named("shoulder seam").WithEase(
            Length.FromMillimeters(back.FindEdge(EdgeName.Shoulder).SewnLengthMm() - stock.Front.FindEdge(EdgeName.Shoulder).SewnLengthMm())));
        BackTurn.Finish(work, stock, back, seams);
    }

    // Filled across the mouth of the dart, the shoulder bends there alone; drawn in one line it bends evenly, as it is eased.
    private static Panel InOneLine(Panel back)
    {
        PanelEdge shoulder = back.FindEdge(EdgeName.Shoulder);
        CurvePath line = shoulder.StretchesRaw[0];
        PanelEdge[] edges = [.. back.EdgesRaw];
        edges[back.IndexOf(EdgeName.Shoulder)] = new PanelEdge(EdgeName.Shoulder, shoulder.Role, CurvePath.FromCubic(CubicBezier.Between(line.Start, line.StartDirection, line.End, line.EndDirection)));
        return back.WithEdges(edges, back.Features, "drawing a shoulder in one line");
    }

    private static void Refuse(DesignDraft work, string edge, double easeMm, double mostMm)
    {
        if (easeMm > mostMm)
        {
            throw work.Refusal(FormattableString.Invariant($"The {edge} would have to be eased by {easeMm:0.#} mm, and {mostMm:0.#} mm is the most that cloth takes there. Put another share of the dart into the armhole, or keep the dart."));
        }
    }
}
