using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What a cutter would look twice at in a bodice, though it was drafted as asked for and every check holds. Common practice, no source, unless one is named.</summary>
internal static class BodiceAdvice
{
    // Of the bust girth: the 0.46 to 0.50 that is usual for the middle sizes (from memory) with a margin, since arms grow less than busts.
    private const double LeastArmholeShare = 0.42;
    private const double MostArmholeShare = 0.52;
    private const double MostBalanceMm = 25;
    private const double WideWaistDartMm = 57;
    private const double WideBustDartMm = 75;
    private const double HardlyNarrowerMm = 5;
    private const double RoundingMm = 0.01;

    private static readonly Advice ShortFront = Advice.Of("The front is shorter than the back from side neck to waist, and would ride up.", "Measure side neck point to waist over the bust.");
    private static readonly Advice LongFront = Advice.Of("The front is much longer than the back from side neck to waist.", "Measure both lengths again; for a full bust it may be right.");
    private static readonly Advice SmallArmhole = Advice.Of("The armhole is small for the bust.", "Measure the scye depth, or lower the armhole.");
    private static readonly Advice LargeArmhole = Advice.Of("The armhole is large for the bust, and ties the arm down.", "Measure the scye depth and the widths across back and front.");
    private static readonly Advice WideDart = Advice.Of("So wide a dart pokes at its point.", "Split it, or shape the waist by panel seams.");
    private static readonly Advice WideBust = Advice.Of("So wide a bust dart pokes at its point.", "Turn a part of it into another seam.");
    private static readonly Advice NarrowShoulders = Advice.Of(
        "The body is wider there than its shoulders are long: the armhole goes straight down from the shoulder point, and the bodice is narrower than the width that was taken.",
        "Measure the width with the arms hanging and the shoulder length again, or make the shoulder longer.");

    private static readonly Advice SideOut = Advice.Of("The side seam goes out below the armhole: the waist is larger than the bust allows for.", "Fit it in a toile; a seam down the front shapes it better.");

    internal static void Give(CheckList list, BodiceDraft hand) => Give(list, hand, list);

    /// <summary>With what is measured straight across and down taken from the panels as they were before their darts were turned.</summary>
    internal static void Give(CheckList list, BodiceDraft hand, CheckList drafted)
    {
        GiveOnArmhole(list, hand, BodiceChecks.ArmholeMm(list), drafted);
        GiveOnDarts(list, [list.FindPanel(PanelName.Back), list.FindPanel(PanelName.Front)]);
        GiveOnFit(list, hand, drafted);
    }

    /// <summary>For panels that have been cut apart: what is measured straight across, down and around is taken from those before.</summary>
    internal static void Give(CheckList drafted, CheckList list, BodiceDraft hand)
    {
        GiveOnArmhole(list, hand, BodiceChecks.ArmholeMm(drafted), drafted);
        GiveOnDarts(list, [.. list.Panels]);
        GiveOnFit(list, hand, drafted);
    }

    private static void GiveOnArmhole(CheckList list, BodiceDraft hand, double armholeMm, CheckList drafted)
    {
        Length bust = hand.Body.Bust.Value;
        Length armhole = Mm(armholeMm);
        if (armhole < bust * LeastArmholeShare)
        {
            list.Advise(SmallArmhole, "armhole", "block", armhole, FindingRelation.AtLeast, bust * LeastArmholeShare);
        }

        if (armhole > bust * MostArmholeShare)
        {
            list.Advise(LargeArmhole, "armhole", "block", armhole, FindingRelation.AtMost, bust * MostArmholeShare);
        }

        double balanceMm = BodiceChecks.BalanceMm(drafted);
        if (balanceMm < 0)
        {
            list.Advise(ShortFront, "balance", "block", Mm(balanceMm), FindingRelation.AtLeast, Length.Zero);
        }

        if (balanceMm > MostBalanceMm + RoundingMm)
        {
            list.Advise(LongFront, "balance", "block", Mm(balanceMm), FindingRelation.AtMost, Mm(MostBalanceMm));
        }
    }

    private static void GiveOnDarts(CheckList list, Panel[] panels)
    {
        foreach (Panel panel in panels)
        {
            foreach (PanelEdge edge in panel.Edges)
            {
                double mostMm = edge.Name == EdgeName.Waist ? WideWaistDartMm : WideBustDartMm;
                foreach (Dart dart in edge.Darts)
                {
                    if (dart.IntakeMm > mostMm + RoundingMm)
                    {
                        list.Advise(edge.Name == EdgeName.Waist ? WideDart : WideBust, dart.Name + " intake", panel.Name.Text, dart.Intake, FindingRelation.AtMost, Mm(mostMm));
                    }
                }
            }
        }
    }

    private static void GiveOnFit(CheckList list, BodiceDraft hand, CheckList drafted)
    {
        AdviseOnWidth(list, drafted, "half across the back at its narrowest", PanelName.Back, hand.Body.AcrossBack);
        AdviseOnWidth(list, drafted, "half across the front at its narrowest", PanelName.Front, hand.Body.AcrossFront);
        if (hand.FrontShaping.SideIn.ValueMm < -RoundingMm)
        {
            list.Advise(SideOut, "side seam at the waist goes out by", "front", hand.FrontShaping.SideIn.Value * -1, FindingRelation.AtMost, Length.Zero);
        }
    }

    private static void AdviseOnWidth(CheckList list, CheckList drafted, string check, PanelName panel, WorkedLength body)
    {
        double drawnMm = BodiceChecks.NarrowestMm(drafted.FindPanel(panel));
        if (drawnMm < (body.ValueMm / 2) - HardlyNarrowerMm)
        {
            list.Advise(NarrowShoulders, check, panel.Text, Mm(drawnMm), FindingRelation.AtLeast, body.Value / 2);
        }
    }

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);
}
