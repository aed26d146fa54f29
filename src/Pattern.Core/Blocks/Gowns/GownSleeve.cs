using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The sleeve of a gown, set into the armhole of its bodice.</summary>
internal static class GownSleeve
{
    /// <summary>How far panels lie apart on the drawing.</summary>
    internal const double BetweenMm = 100;

    /// <summary>Drafts the sleeve and adds its panel, to the right of the others.</summary>
    /// <returns>Null where the gown has none.</returns>
    internal static SleeveBlock? Add(BlockDraft draft, BodyMeasurements body, Panel back, Panel front)
    {
        if (draft.Take(GownSettings.Sleeves) == GownSettings.None)
        {
            return null;
        }

        SleeveBlockBuilder builder = SleeveBlock.For(Armhole.Of(front, back), body);
        builder = draft.IsGiven(GownSettings.CapEase) ? builder.WithCapEase(draft.Take(GownSettings.CapEase).Value) : builder;
        SleeveBlock drafted = builder.Draft();
        Panel sleeve = drafted.FindPanel(SleeveBlock.SleevePanel);
        BoundingBox box = sleeve.SeamOutline().Bounds;
        var move = new Vector2D(front.SeamOutline().Bounds.RightMm + BetweenMm - box.LeftMm, back.SeamOutline().Bounds.TopMm - box.TopMm);
        draft.Add(Plain(sleeve, SleeveBlock.SleevePanel, move), 2);
        draft.Sheet.Note("Draft a sleeve to the armhole of the bodice by the steps of its own.");
        return drafted;
    }

    /// <summary>A plan with the seams of the sleeve, and those into the armhole of that bodice.</summary>
    internal static SeamPlan With(SeamPlan plan, SleeveBlock? sleeve, BodiceDraft bodice) => sleeve is null
        ? plan
        : sleeve.Seams.Seams.Concat(sleeve.SeamsInto(bodice.TruedFront!, bodice.TruedBack!).Seams).Aggregate(plan, (all, seam) => all.With(seam));

    /// <summary>A panel moved, without the landmarks of its own sheet, which have the names of those of the gown's.</summary>
    internal static Panel Plain(Panel panel, PanelName name, in Vector2D move)
        => new Panel(name, panel.EdgesRaw, panel.Features with { Landmarks = [] }).Transformed(Transform2D.Translation(move));
}
