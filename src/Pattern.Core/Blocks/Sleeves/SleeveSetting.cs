using System;
using System.Linq;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>How a sleeve is set in: the seams between its head and an armhole.</summary>
internal static class SleeveSetting
{
    internal static SeamPlan Of(SleeveDraft draft, Panel front, Panel back)
    {
        // The armhole is asked for its notches, so that a panel without any is refused here and not found wanting later.
        _ = Armhole.Of(front, back);
        if (draft.IsInTwo)
        {
            return InTwo(draft, front, back);
        }

        int crown = draft.Armhole.BackHalf.Notches.Length + 1;
        SeamMark atCrown = SeamMark.Notch(crown);
        EdgeOf head = EdgeOf.Panel(SleeveNames.Sleeve, EdgeName.SleeveHead);
        Seam ahead = Seam.Between(head, EdgeOf.Panel(front.Name, EdgeName.Armhole))
            .OverFirst(atCrown, SeamMark.End)
            .WithEaseBetween(Length.FromMillimeters(draft.FrontEaseMm), atCrown, SeamMark.Notch(crown + draft.Armhole.FrontHalf.Notches.Length))
            .Named("front armhole", StretchNames(draft.Armhole.FrontHalf.Notches.Length));
        Seam behind = Seam.Between(head, EdgeOf.Panel(back.Name, EdgeName.Armhole))
            .OverFirst(SeamMark.Start, atCrown)
            .WithEaseBetween(Length.FromMillimeters(draft.BackEaseMm), SeamMark.Notch(1), atCrown)
            .Named("back armhole", [.. StretchNames(draft.Armhole.BackHalf.Notches.Length).Reverse()]);
        return SeamPlan.Of(ahead, behind);
    }

    // The seams of the sleeve meet the armhole at its first notches: below them the under sleeve, without ease, its notch at the side seam; above them the top sleeve.
    private static SeamPlan InTwo(SleeveDraft draft, Panel front, Panel back)
    {
        EdgeOf top = EdgeOf.Panel(SleeveInTwo.Top, EdgeName.SleeveHead);
        EdgeOf under = EdgeOf.Panel(SleeveInTwo.Under, EdgeName.SleeveHead);
        SeamMark crown = SeamMark.Notch(draft.Armhole.BackHalf.Notches.Length);
        (SeamMark frontFrom, SeamMark frontNotch, SeamMark frontTo) = Marks(front, draft.Armhole.FrontHalf.Notches.Length);
        (SeamMark backFrom, SeamMark backNotch, SeamMark backTo) = Marks(back, draft.Armhole.BackHalf.Notches.Length);
        return SeamPlan.Of(
            Over(Seam.Between(top, EdgeOf.Panel(front.Name, EdgeName.Armhole)).OverFirst(crown, SeamMark.End), frontNotch, frontTo).WithEase(Length.FromMillimeters(draft.FrontEaseMm)).Named("front armhole of the top sleeve"),
            Over(Seam.Between(top, EdgeOf.Panel(back.Name, EdgeName.Armhole)).OverFirst(SeamMark.Start, crown), backNotch, backTo).WithEase(Length.FromMillimeters(draft.BackEaseMm)).Named("back armhole of the top sleeve"),
            Over(Seam.Between(under, EdgeOf.Panel(front.Name, EdgeName.Armhole)).OverFirst(SeamMark.Start, SeamMark.Notch(1)), frontFrom, frontNotch).Named("front armhole of the under sleeve"),
            Over(Seam.Between(under, EdgeOf.Panel(back.Name, EdgeName.Armhole)).OverFirst(SeamMark.Notch(1), SeamMark.End), backFrom, backNotch).Named("back armhole of the under sleeve"));
    }

    // Marks are said in the order of the edge, whichever way it was drawn.
    private static Seam Over(Seam seam, SeamMark one, SeamMark other) => one == SeamMark.End || other == SeamMark.Start ? seam.OverSecond(other, one) : seam.OverSecond(one, other);

    // The side seam, the first notch above it, and the shoulder.
    private static (SeamMark Side, SeamMark First, SeamMark Shoulder) Marks(Panel panel, int notches) => Armhole.BeginsAtSide(panel)
        ? (SeamMark.Start, SeamMark.Notch(1), SeamMark.End)
        : (SeamMark.End, SeamMark.Notch(notches), SeamMark.Start);

    private static string[] StretchNames(int notches) => notches == 1
        ? ["shoulder to notch", "notch to underarm"]
        : [.. Enumerable.Range(0, notches + 1).Select(i => FormattableString.Invariant($"stretch {i + 1} from the shoulder"))];
}
