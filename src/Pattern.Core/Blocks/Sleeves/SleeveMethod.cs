using System;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Drafts a sleeve to be set into an armhole.</summary>
internal sealed class SleeveMethod() : DraftingMethod("sleeve block", "1", SleeveSettings.All)
{
    private static readonly Seam Underarm
        = Seam.Between(EdgeOf.Panel(SleeveNames.Sleeve, EdgeName.BackUnderarm), EdgeOf.Panel(SleeveNames.Sleeve, EdgeName.FrontUnderarm)).Named("underarm seam");

    private static readonly SeamPlan Plan = SeamPlan.Of(Underarm);

    private static readonly Action<CheckList> SeamsFit = list => Plan.Check(list, list.PanelsRaw);

    internal override IMethodValues UsualValuesIn(LengthUnit unit) => SleeveOptions.Usual;

    internal static SleeveBlock Draft(BodyMeasurements body, SleeveOptions options) => (SleeveBlock)BuiltInMethods.Sleeve.Draft(body, options);

    protected override void Draft(BlockDraft draft)
    {
        SleeveDraft hand = SleeveDraft.Draw(draft, SleeveSettings.OptionsOf(draft.Values));
        draft.Own = hand;
        draft.Remark(hand.IsInTwo
            ? "The right sleeve, both parts from outside: the front of the top sleeve to the right, that of the under sleeve to the left."
            : "The right sleeve from outside: back to the left, front to the right.");
        Panel[] panels = Shaped(draft, hand, hand.ToPanel());
        foreach (Panel panel in panels)
        {
            draft.Add(panel, 2);
        }

        var checks = new SleeveChecks(hand, panels);
        double handMm = ArmMeasures.HandMm(draft.Body, hand.Arm.Wrist);
        draft.Check("head", checks.CheckHead);
        draft.Check("width", checks.CheckWidth);
        Sew(draft, hand);
        draft.Check("corners", checks.CheckCorners);
        draft.Check("hem", checks.CheckLowerEdge);
        draft.Check("elbow", checks.CheckElbow);
        draft.Check("outline", checks.CheckOutline);
        draft.Check("advice", list => SleeveAdvice.Give(list, hand, handMm));
    }

    private static Panel[] Shaped(BlockDraft draft, SleeveDraft hand, Panel straight)
    {
        if (hand.Options.Elbow == ElbowShaping.Straight)
        {
            return [straight];
        }

        if (!hand.HasElbow)
        {
            throw draft.Refusal(
                "A sleeve that ends above the elbow, or just below it, is not shaped there. Make it longer, or leave the elbow straight.",
                Length.FromMillimeters(hand.HemDepthMm),
                Length.FromMillimeters(hand.ElbowDepthMm + hand.Customs.ClearMm));
        }

        if (hand.IsInTwo)
        {
            (Panel top, Panel under) = SleeveInTwo.Cut(hand, draft, straight);
            return [top, under];
        }

        Panel bent = hand.Options.Elbow == ElbowShaping.Dart ? SleeveElbow.WithDart(hand, straight, draft.Sheet) : SleeveElbow.Eased(hand, straight, draft.Sheet);
        draft.Trued(SleeveNames.FrontWrist, bent.FindEdge(hand.LowerEdge).Start);
        draft.Trued(SleeveNames.BackWrist, bent.FindEdge(hand.LowerEdge).End);
        return [bent];
    }

    private static void Sew(BlockDraft draft, SleeveDraft hand)
    {
        if (hand.Options.Elbow == ElbowShaping.Eased)
        {
            Length ease = Length.FromMillimeters(hand.Options.ElbowMm ?? hand.Customs.ElbowEaseMm);
            draft.Seams(SeamPlan.Of(Underarm.WithEaseBetween(ease, SeamMark.Notch(1), SeamMark.Notch(2))));
        }
        else if (hand.IsInTwo)
        {
            draft.Seams(SleeveInTwo.Plan(Length.FromMillimeters(hand.Options.ElbowMm ?? hand.Customs.TwoPieceEaseMm)));
        }
        else
        {
            draft.Seams(Plan, SeamsFit);
        }
    }

    internal override Block Make(BlockRecord record, Panel[] panels) => new SleeveBlock(record, panels);
}
