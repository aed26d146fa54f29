using System;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet.Units;

namespace Pattern.Core.Blocks;

/// <summary>Drafts the plain fitted skirt: by hand on the sheet, then trued.</summary>
internal sealed class SkirtMethod() : DraftingMethod("skirt block", "2", SkirtSettings.All)
{
    private static readonly EdgeName[] WaistOnly = [EdgeName.Waist];

    private static readonly AlternativePlan LevelWaistline = new("level waistline", builder => builder.With(SkirtSettings.Waistline, SkirtSettings.Level), WaistOnly);

    private static readonly AlternativePlan ShapedWaistline = new("shaped waistline", builder => builder.With(SkirtSettings.Waistline, SkirtSettings.Shaped), WaistOnly);

    internal const string HalfDrawn = "Half of the skirt: back to the left, front to the right.";

    private static readonly Action<CheckList> SeamsFit = list => SkirtSeams.Plan.Check(list, list.PanelsRaw);

    internal override IMethodValues UsualValuesIn(LengthUnit unit) => SkirtOptions.UsualIn(unit);

    internal static SkirtBlock Draft(BodyMeasurements body, SkirtOptions options) => (SkirtBlock)BuiltInMethods.Skirt.Draft(body, options);

    protected override void Draft(BlockDraft draft)
    {
        SkirtOptions options = SkirtSettings.OptionsOf(draft.Values);
        SkirtDraft hand = SkirtDraft.Draw(draft.Body, options, draft.Sheet);
        draft.Own = hand;
        draft.Read("shaping", hand.Reading);
        if (hand.Depths.Remark is { } levels)
        {
            draft.Remark(levels);
        }

        draft.Remark(HalfDrawn);
        draft.Alternative(options.Waistline == Waistline.Level ? ShapedWaistline : LevelWaistline);
        SkirtAims.Aim(draft, hand);
        SkirtTruing.True(hand, draft);
        var checks = new SkirtChecks(hand);
        draft.Check("waist", checks.CheckWaist);
        draft.Check("hip", checks.CheckHip);
        draft.Seams(SkirtSeams.Plan, SeamsFit);
        draft.Check("corners", checks.CheckCorners);
        draft.Check("hem", checks.CheckHem);
        draft.Check("darts", checks.CheckDarts);
        draft.Check("outline", checks.CheckOutline);
        draft.Check("advice", checks.Advise);
    }

    internal override Block Make(BlockRecord record, Panel[] panels) => new SkirtBlock(record, panels);
}
