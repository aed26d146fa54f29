using System;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>What a cutter would look twice at, though it was drafted as asked for and every check holds. Common practice, no source.</summary>
internal static class SkirtAdvice
{
    private const int MostDarts = 2;
    private const double MostLeanRad = 25 * Math.PI / 180;
    private const double MostPegRad = 20 * Math.PI / 180;
    private const double MostTurnBackRad = Math.PI / 180;
    private const double MostHumpMm = 0.5;

    // Sums of parts of a tape may end a little off.
    private const double RoundingMm = 0.01;

    private static readonly Advice ManyDarts = Advice.Of("More than two darts in a quarter crowd each other and are hard to press.", "Give less to the darts and more to the side, or put a seam through them.");
    private static readonly Advice NarrowDart = Advice.Of("So narrow a dart is hardly worth sewing.", "Ask for fewer darts, or give its intake to the side seam.");
    private static readonly Advice WideDart = Advice.Of("So wide a dart pokes at its apex.", "Split it in two.");
    private static readonly Advice MuchSide = Advice.Of("So much shaping at the side makes a bump over the hip.", "Give more of it to the darts, or to the centre back.");
    private static readonly Advice LeaningSide = Advice.Of("The side seam leans so far at the waist that it stretches in sewing.", "Stay it with tape, and fit it in a toile; where it comes in, give more to the darts.");
    private static readonly Advice PeggedSeam = Advice.Of(
        "The seam comes in so steeply at the hem that the joined hem has a sharp corner there, and the turn-up flares to a point.",
        "Bring the hem in by less, make the skirt longer, or face the hem instead of turning it up.");

    private static readonly Advice ForcedTurn = Advice.Of(
        "With darts closed the waistline turns back on itself: its ends, square to centre and side, leave no even curve between them.",
        "Raise the end that it dips before, or lower the other.");

    private static readonly Advice NeedlessTurn = Advice.Of(
        "With darts closed the waistline turns back on itself, though its ends leave an even curve between them.",
        "Draw the waistline again in one sweep.");

    private static readonly Advice NearSeam = Advice.Of("The apex of a dart lies so near to a seam that it shows beside it.", "Move the dart away, shorten it, or ask for fewer darts.");

    internal static void Give(CheckList list, Panel panel, SkirtQuarter quarter, SkirtDraft draft)
    {
        string place = panel.Name.Text;
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        PanelEdge side = panel.FindEdge(EdgeName.SideSeam);
        SkirtCustoms customs = draft.Customs;
        if (waist.Darts.Count > MostDarts)
        {
            list.Advise(ManyDarts, "darts in a quarter", place, waist.Darts.Count, FindingRelation.AtMost, MostDarts);
        }

        for (int i = 0; i < waist.Darts.Count; i++)
        {
            AdviseOnDart(list, panel, waist.Darts[i], side, customs);
        }

        if (quarter.SideInMm > draft.Options.LargestSideShapingMm + RoundingMm)
        {
            list.Advise(MuchSide, "side shaping at the waist", place, Mm(quarter.SideInMm), FindingRelation.AtMost, Mm(draft.Options.LargestSideShapingMm));
        }

        double leanRad = Math.Abs(Direction.Down.TurnRadTo(side.Stretches[0].StartDirection));
        if (leanRad > MostLeanRad)
        {
            list.Advise(LeaningSide, "lean of the side seam at the waist", place, Rad(leanRad), FindingRelation.AtMost, Rad(MostLeanRad));
        }

        AdviseOnPeg(list, place, "side seam", side.Stretches[0].EndDirection);
        AdviseOnPeg(list, place, "centre seam", panel.FindEdge(EdgeName.Centre).Stretches[0].StartDirection.Reversed);
        AdviseOnTurns(list, place, waist);
    }

    // The hem is level: what a seam leans there, the corner is off from square.
    private static void AdviseOnPeg(CheckList list, string place, string seam, Direction down)
    {
        double leanRad = Math.Abs(Direction.Down.TurnRadTo(down));
        if (leanRad > MostPegRad)
        {
            list.Advise(PeggedSeam, "lean of the " + seam + " at the hem", place, Rad(leanRad), FindingRelation.AtMost, Rad(MostPegRad));
        }
    }

    private static void AdviseOnDart(CheckList list, Panel panel, Dart dart, PanelEdge side, SkirtCustoms customs)
    {
        string place = panel.Name.Text;
        double intakeMm = dart.IntakeMm;
        if (intakeMm < customs.SmallestDartMm - RoundingMm)
        {
            list.Advise(NarrowDart, "intake of a dart", place, Mm(intakeMm), FindingRelation.AtLeast, Mm(customs.SmallestDartMm));
        }

        if (intakeMm > customs.LargestDartMm + RoundingMm)
        {
            list.Advise(WideDart, "intake of a dart", place, Mm(intakeMm), FindingRelation.AtMost, Mm(customs.LargestDartMm));
        }

        double x = dart.Apex.XMm;
        double nearMm = Math.Min(
            Math.Abs(SkirtChecks.XAt(side, dart.Apex.YMm) - x),
            Math.Abs(SkirtChecks.XAt(panel.FindEdge(EdgeName.Centre), dart.Apex.YMm) - x));
        if (nearMm < customs.NearSeamMm - RoundingMm)
        {
            list.Advise(NearSeam, "apex from the nearest seam", place, Mm(nearMm), FindingRelation.AtLeast, Mm(customs.NearSeamMm));
        }
    }

    // Closing a dart turns what lies beyond it as a whole: how a stretch turns can be measured with darts open.
    private static void AdviseOnTurns(CheckList list, string place, PanelEdge waist)
    {
        var turns = default(CubicBezier.Turns);
        for (int i = 0; i < waist.Stretches.Count; i++)
        {
            foreach (PathSegment segment in waist.Stretches[i].SegmentsRaw)
            {
                segment.AsCubic().AddTurns(ref turns);
            }
        }

        if (turns.BackRad <= MostTurnBackRad && turns.BackMm <= MostHumpMm)
        {
            return;
        }

        CurvePath closed = waist.Closed();
        Advice advice = CubicBezier.CanSweep(closed.Start, closed.StartDirection, closed.End, closed.EndDirection) ? NeedlessTurn : ForcedTurn;
        if (turns.BackRad > MostTurnBackRad)
        {
            list.Advise(advice, "turn of the waistline against itself", place, Rad(turns.BackRad), FindingRelation.AtMost, Rad(MostTurnBackRad));
        }
        else
        {
            list.Advise(advice, "hump of the waistline against its turn", place, Mm(turns.BackMm), FindingRelation.AtMost, Mm(MostHumpMm));
        }
    }

    private static UnitsNet.Length Mm(double millimetres) => UnitsNet.Length.FromMillimeters(millimetres);

    private static UnitsNet.Angle Rad(double radians) => UnitsNet.Angle.FromRadians(radians);
}
