using System;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>The gown drafted: the bodice on the sheet, the skirt below it from its own block, the sleeve beside it.</summary>
internal sealed class GownDraft
{
    // Clear of each other on the drawing.
    private const double BetweenMm = 100;

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
        WorkedLength hip = draft.TakeOrAssume(
            BodyMeasurement.HipGirth, bodice.Body.Bust + bodice.Body.Figure("2 3/8", 6), "a handbook's size chart, from memory");
        BodyMeasurements body = draft.Body.TryFind(BodyMeasurement.HipGirth, out _) ? draft.Body : draft.Body.With(BodyMeasurement.HipGirth, hip.Value);
        SkirtOptions options = SkirtOptions.UsualIn(body.Unit) with
        {
            WaistEaseMm = bodice.WaistEase.ValueMm,
            HipEaseMm = draft.Take(GownSettings.SkirtEase).ValueMm,
            LengthMm = draft.Take(GownSettings.SkirtLength).ValueMm,
        };
        SkirtBlock skirt = GownSkirt.Under(draft, body, options, back, front);
        var gown = new GownDraft(bodice, skirt);
        gown.AddSkirt(draft);
        gown.AddSleeve(draft, body, back, front);
        return gown;
    }

    private void AddSkirt(BlockDraft draft)
    {
        double boxMm = Skirt.Front.FindEdge(EdgeName.Centre).Start.XMm;
        double frontMm = Math.Max(Bodice.CentreFrontWaist.Position.XMm, boxMm + BetweenMm) - boxMm;
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

    private void AddSleeve(BlockDraft draft, BodyMeasurements body, Panel back, Panel front)
    {
        if (draft.Take(GownSettings.Sleeves) == GownSettings.None)
        {
            return;
        }

        SleeveBlockBuilder builder = SleeveBlock.For(Armhole.Of(front, back), body);
        builder = draft.IsGiven(GownSettings.CapEase) ? builder.WithCapEase(draft.Take(GownSettings.CapEase).Value) : builder;
        Sleeve = builder.Draft();
        Panel sleeve = Sleeve.FindPanel(SleeveBlock.SleevePanel);
        BoundingBox box = sleeve.SeamOutline().Bounds;
        double rightMm = Math.Max(front.SeamOutline().Bounds.RightMm, front.FindEdge(EdgeName.Centre).Start.XMm);
        rightMm = Math.Max(rightMm, Bodice.CentreFrontWaist.Position.XMm);
        var move = new Vector2D(rightMm + BetweenMm - box.LeftMm, back.SeamOutline().Bounds.TopMm - box.TopMm);
        draft.Add(Plain(sleeve, SleeveBlock.SleevePanel, move), 2);
        draft.Sheet.Note("Draft a sleeve to the armhole of the bodice by the steps of its own.");
    }

    private static Panel Below(Panel panel, PanelName name, double acrossMm) => Plain(panel, name, new Vector2D(acrossMm, -BetweenMm));

    // Without the landmarks of its own sheet, which have the names of those here.
    private static Panel Plain(Panel panel, PanelName name, in Vector2D move)
        => new Panel(name, panel.EdgesRaw, panel.Features with { Landmarks = [] }).Transformed(Transform2D.Translation(move));
}
