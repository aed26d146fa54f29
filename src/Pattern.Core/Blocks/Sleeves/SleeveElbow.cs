using System;
using System.Linq;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>Bends a sleeve forward at the elbow: cut along the elbow line up to the front seam, the lower sleeve swung, both seams drawn anew.</summary>
/// <remarks>Swinging is rigid, so it keeps the sewn length of every edge; drawing the seams anew in one sweep changes it by little, and the back seam makes that good at the wrist.</remarks>
internal static class SleeveElbow
{
    // Drawn again, the back seam is rounded and the dart reaches out to it: it comes out wider than the opening, by a share that hardly changes with the opening.
    private const int MostTries = 12;
    private const double SameMm = 1e-9;

    /// <summary>The panel with what the back seam is longer by as a dart.</summary>
    internal static Panel WithDart(SleeveDraft draft, Panel panel, DraftingSheet sheet)
    {
        double askedMm = draft.Options.ElbowMm ?? draft.Customs.ElbowDartMm;
        WorkedLength inward = WorkedLength.GivenMm("elbow dart to its apex", draft.ElbowWidthMm / 4);
        double openMm = askedMm;
        Panel trued = panel;
        double foundMm = 0;
        for (int i = 0; i < MostTries && Math.Abs(foundMm - askedMm) > SameMm; i++)
        {
            openMm *= i == 0 ? 1 : askedMm / foundMm;
            trued = Trued(
                panel.OpenDart(draft.BackElbow(panel), draft.FrontElbow(panel), Length.FromMillimeters(openMm), EdgeName.SleeveHead)
                    .WithDartLength(EdgeName.BackUnderarm.Dart(1), inward.Value),
                0);
            foundMm = trued.FindDart(EdgeName.BackUnderarm.Dart(1)).IntakeMm;
        }

        Swing(sheet, WorkedLength.DrawnMm(null, openMm));
        sheet.Note("Draw the elbow dart: its legs begin at both ends of the opening and meet midway between its edges, {0} in from there.", inward);
        sheet.Note(
            "Draw both underarm seams again, each in one smooth curve, the dart folded: the front one hollowed at the elbow, the back one rounded. The dart is then {1} wide. The front seam measures {0}; "
            + "make the back one as long at the wrist, the dart folded.",
            FrontSeam(trued),
            WorkedLength.GivenMm("elbow dart", askedMm));
        return WithElbowNotches(draft, trued, 0);
    }

    /// <summary>The panel with what the back seam is longer by to be eased in.</summary>
    internal static Panel Eased(SleeveDraft draft, Panel panel, DraftingSheet sheet)
    {
        WorkedLength ease = WorkedLength.GivenMm("elbow ease", draft.Options.ElbowMm ?? draft.Customs.ElbowEaseMm);
        Panel bent = panel.SlashAndSpread(draft.FrontElbow(panel), draft.BackElbow(panel), ease.Value, EdgeName.SleeveHead);
        Swing(sheet, ease);
        Panel trued = Trued(bent, ease.ValueMm);
        sheet.Note(
            "Draw both underarm seams again, each in one smooth curve: the front one hollowed at the elbow, the back one rounded. The front one then measures {0}; "
            + "make the back one longer than that by {1}, at the wrist. Ease that into the front seam between the notches.",
            FrontSeam(trued),
            ease);
        return WithElbowNotches(draft, trued, ease.ValueMm);
    }

    private static void Swing(DraftingSheet sheet, WorkedLength opening) => sheet.Note(
        "Cut along the elbow line from {0} up to {1}, but not through, and swing the lower sleeve forward about {1} until the cut stands {2} open.",
        SleeveNames.Elbow.Back,
        SleeveNames.Elbow.Front,
        opening);

    private static WorkedLength FrontSeam(Panel panel) => WorkedLength.DrawnMm(null, panel.FindEdge(EdgeName.FrontUnderarm).SewnLengthMm());

    private static Panel Trued(Panel bent, double easeMm)
    {
        Panel front = bent.TrueEdge(EdgeName.FrontUnderarm).Panel;
        return front.TrueEdge(EdgeName.BackUnderarm, new EdgeTruing
        {
            ClosedLength = Length.FromMillimeters(front.FindEdge(EdgeName.FrontUnderarm).SewnLengthMm() + easeMm),
            MovingEnd = EdgeEnd.Start,
            Move = EndMove.AlongEdge,
        }).Panel;
    }

    // Above and below the elbow; on the back as far from the underarm and from the wrist as on the front.
    private static Panel WithElbowNotches(SleeveDraft draft, Panel panel, double easeMm)
    {
        PanelEdge front = panel.FindEdge(EdgeName.FrontUnderarm);
        double frontMm = front.SewnLengthMm();
        double elbowMm = frontMm * draft.ElbowDepthMm / draft.HemDepthMm;
        double aboveMm = elbowMm - draft.Customs.ClearMm;
        double belowMm = elbowMm + draft.Customs.ClearMm;
        PanelEdge back = panel.FindEdge(EdgeName.BackUnderarm);
        Notch[] head = [.. panel.Notches.Where(notch => notch.Edge == EdgeName.SleeveHead)];
        return new Panel(panel.Name, panel.EdgesRaw, panel.Features with
        {
            Notches =
            [
                .. head,
                SleeveDraft.On(front, aboveMm, 1),
                SleeveDraft.On(front, belowMm, 1),
                SleeveDraft.On(back, frontMm - belowMm, 1),
                SleeveDraft.On(back, frontMm + easeMm - aboveMm, 1),
            ],
        });
    }
}
