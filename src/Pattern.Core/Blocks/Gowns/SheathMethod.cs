using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>Drafts a sheath: back and front from shoulder to hem without a seam at the waist, with double-pointed darts.</summary>
internal sealed class SheathMethod() : DraftingMethod("sheath block", "1", GownSettings.All)
{
    protected override void Draft(BlockDraft draft)
    {
        SheathDraft sheath = SheathDraft.Draw(draft);
        draft.Own = sheath;
        draft.Remark("Half of the sheath: back to the left, front to the right.");
        draft.Check("girths", new SheathChecks(sheath).CheckGirths);
        var checks = new BodiceChecks(sheath.Bodice);
        draft.Check("neckline", checks.CheckNeckline);
        draft.Check("armhole", checks.CheckArmhole);
        draft.Check("widths", checks.CheckWidths);
        SeamPlan seams = SeamPlan.Of(
            Seam.Between(BodiceNames.BackSide, BodiceNames.FrontSide).Named("side seam", "underarm to hip", "hip to hem"),
            Seam.Between(BodiceNames.BackShoulder, BodiceNames.FrontShoulder).Named("shoulder seam").WithEase(sheath.Bodice.ShoulderEase.Value));
        draft.Seams(GownSleeve.With(seams, sheath.Sleeve, sheath.Bodice));
        draft.Check("darts", BodiceChecks.CheckDarts);
        draft.Check("outline", BodiceChecks.CheckOutline);
        draft.Check("advice", list => BodiceAdvice.Give(list, sheath.Bodice));
    }

    internal override Block Make(BlockRecord record, Panel[] panels) => new SheathBlock(record, panels);
}
