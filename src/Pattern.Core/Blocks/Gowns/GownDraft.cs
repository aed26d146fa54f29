using System;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The gown drafted: the bodice on the sheet, the skirt below it from its own block, the sleeve beside it.</summary>
internal sealed class GownDraft
{
    private GownDraft(BodiceDraft bodice, SkirtBlock skirt)
    {
        Bodice = bodice;
        Skirt = skirt;
    }

    internal BodiceDraft Bodice { get; }

    internal SkirtBlock Skirt { get; }

    /// <summary>Null where it has none.</summary>
    internal SleeveBlock? Sleeve { get; private set; }

    internal static GownDraft Draw(BlockDraft draft)
    {
        BodiceDraft bodice = BodiceDraft.Draw(draft);
        (Panel back, Panel front) = BodiceTruing.True(bodice, draft);
        WorkedLength hip = TakeHip(draft, bodice.Body);
        BodyMeasurements body = WithHip(draft.Body, hip);
        SkirtOptions options = SkirtOptions.UsualIn(body.Unit) with
        {
            WaistEaseMm = bodice.WaistEase.ValueMm,
            HipEaseMm = draft.Take(GownSettings.SkirtEase).ValueMm,
            LengthMm = draft.Take(GownSettings.SkirtLength).ValueMm,
        };
        SkirtBlock skirt = GownSkirt.Under(draft, body, options, back, front);
        var gown = new GownDraft(bodice, skirt);
        gown.AddSkirt(draft);
        gown.Sleeve = GownSleeve.Add(draft, body, back, front);
        return gown;
    }

    internal static WorkedLength TakeHip(BlockDraft draft, BodiceMeasures body)
        => draft.TakeOrAssume(BodyMeasurement.HipGirth, body.Bust + body.Figure("2 3/8", 6), "a handbook's size chart, from memory");

    internal static BodyMeasurements WithHip(BodyMeasurements body, WorkedLength hip)
        => body.TryFind(BodyMeasurement.HipGirth, out _) ? body : body.With(BodyMeasurement.HipGirth, hip.Value);

    private void AddSkirt(BlockDraft draft)
    {
        double boxMm = Skirt.Front.FindEdge(EdgeName.Centre).Start.XMm;
        double frontMm = Math.Max(Bodice.CentreFrontWaist.Position.XMm, boxMm + GownSleeve.BetweenMm) - boxMm;
        draft.Add(Below(Skirt.Back, GownNames.SkirtBack, 0), 2);
        draft.Add(Below(Skirt.Front, GownNames.SkirtFront, frontMm), 2);

        DraftingSheet sheet = draft.Sheet;
        sheet.Note(
            "Draft a skirt block below the bodice by the steps of its own: {0}, {1}, {2}, with a level waistline, so that the waist of both is the same.",
            WorkedLength.Given("waist ease", Skirt.WaistEase),
            WorkedLength.Given("hip ease", Skirt.HipEase),
            WorkedLength.Given("length", Skirt.SkirtLength));
        SayDarts(sheet, Skirt.Back, "back");
        SayDarts(sheet, Skirt.Front, "front");
    }

    private static void SayDarts(DraftingSheet sheet, Panel panel, string side)
    {
        PanelEdge waist = panel.FindEdge(EdgeName.Waist);
        foreach (Dart dart in waist.Darts)
        {
            sheet.Note(
                "On the " + side + " of the skirt lay off the middle of dart {0} from the centre, measured level: {1}. Its intake is {2}.",
                dart.Number,
                WorkedLength.Drawn("place", Length.FromMillimeters(Math.Abs(dart.Apex.XMm - waist.Start.XMm))),
                WorkedLength.Drawn("intake", dart.Intake));
            sheet.Because("Sewn, it meets the dart of the bodice above it: the bodice rules, since its darts point at the bust.");
        }
    }

    private static Panel Below(Panel panel, PanelName name, double acrossMm) => GownSleeve.Plain(panel, name, new Vector2D(acrossMm, -GownSleeve.BetweenMm));
}
