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

    private static string[] StretchNames(int notches) => notches == 1
        ? ["shoulder to notch", "notch to underarm"]
        : [.. Enumerable.Range(0, notches + 1).Select(i => FormattableString.Invariant($"stretch {i + 1} from the shoulder"))];
}
