using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Drafts a gown with a seam at the waist: the bodice, a skirt whose waist and darts meet it, and a sleeve set into its armhole.</summary>
internal sealed class GownMethod() : DraftingMethod("gown block", "1", GownSettings.All)
{
    protected override void Draft(BlockDraft draft)
    {
        GownDraft gown = GownDraft.Draw(draft);
        draft.Own = gown;
        draft.Remark("Half of the gown: back to the left, front to the right, the skirt below the bodice.");
        BodiceMethod.Promise(draft, gown.Bodice, SeamsOf(gown));
        var checks = new GownChecks(gown);
        draft.Check("join", checks.CheckJoin);
        draft.Check("walking room", GownChecks.Advise);
    }

    internal override Block Make(BlockRecord record, Panel[] panels) => new GownBlock(record, panels);

    private static SeamPlan SeamsOf(GownDraft gown) => GownSleeve.With(
        BodiceMethod.SeamsOf(gown.Bodice).With(GownNames.BackWaistSeam).With(GownNames.FrontWaistSeam).With(GownNames.SkirtSide), gown.Sleeve, gown.Bodice);
}
