using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Drafts the close-fitting bodice: by hand on the sheet, then trued.</summary>
internal sealed class BodiceMethod() : DraftingMethod("bodice block", "1", BodiceSettings.All)
{
    protected override void Draft(BlockDraft draft)
    {
        BodiceDraft hand = BodiceDraft.Draw(draft);
        draft.Own = hand;
        draft.Remark("Half of the bodice: back to the left, front to the right.");
        BodiceTruing.True(hand, draft);
        Promise(draft, hand, SeamsOf(hand));
    }

    /// <summary>How back and front of the bodice are sewn to each other.</summary>
    internal static SeamPlan SeamsOf(BodiceDraft hand) => SeamPlan.Of(
        BodiceNames.SideSeam,
        Seam.Between(BodiceNames.BackShoulder, BodiceNames.FrontShoulder).Named("shoulder seam").WithEase(hand.ShoulderEase.Value));

    /// <summary>Promises what holds of a bodice, whatever else is drafted with it.</summary>
    internal static void Promise(BlockDraft draft, BodiceDraft hand, SeamPlan seams)
    {
        var checks = new BodiceChecks(hand);
        draft.Check("waist", checks.CheckWaist);
        draft.Check("neckline", checks.CheckNeckline);
        draft.Check("armhole", checks.CheckArmhole);
        draft.Check("widths", checks.CheckWidths);
        draft.Seams(seams);
        draft.Check("darts", BodiceChecks.CheckDarts);
        draft.Check("outline", BodiceChecks.CheckOutline);
        draft.Check("advice", list => BodiceAdvice.Give(list, hand));
    }

    internal override Block Make(BlockRecord record, Panel[] panels) => new BodiceBlock(record, panels);
}
