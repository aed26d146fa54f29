using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;
using Names = Pattern.Core.Blocks.BodiceNames;

namespace Pattern.Core.Blocks;

/// <summary>Trues the hand draft by what must hold of a bodice.</summary>
internal static class BodiceTruing
{
    private const double PencilMm = 0.25;
    private const string BackWaist = "back waist";
    private const string FrontWaist = "front waist";
    private const string BackShoulder = "back shoulder";
    private const string Neckline = "neckline";

    // Stated once: the first body lays it out, the others use that again.
    private static readonly TruingPlan Plan = TruingPlan.Empty
        .MayMove(
            Movable.OneSweep(Names.BackWaist, turning: Angle.FromDegrees(25)),
            Movable.OneSweep(Names.FrontWaist, turning: Angle.FromDegrees(25)),
            Movable.Corner(Names.BackWaist.AtStart, within: Length.FromCentimeters(4)),
            Movable.Corner(Names.FrontWaist.AtStart, within: Length.FromCentimeters(4)),
            Movable.OneSweep(Names.FrontSide, turning: Angle.FromDegrees(25)),
            Movable.OneSweep(Names.BackShoulder, turning: Angle.FromDegrees(15)),
            Movable.Corner(Names.BackShoulder.AtEnd, within: Length.FromCentimeters(2)),
            Movable.Corner(Names.FrontNeckline.AtStart, within: Length.FromCentimeters(4)).Along(Geometry.Direction.Up),
            Movable.OneSweep(Names.BackNeckline, turning: Angle.FromDegrees(20)),
            Movable.OneSweep(Names.FrontNeckline, turning: Angle.FromDegrees(20)),
            Movable.Handles(Names.BackArmhole, within: Length.FromCentimeters(4)),
            Movable.Handles(Names.FrontArmhole, within: Length.FromCentimeters(4)))
        .MustHold(
            Condition.SewnLength(WorkedLength.Given(BackWaist, Length.Zero), Names.BackWaist).Named(BackWaist),
            Condition.SewnLength(WorkedLength.Given(FrontWaist, Length.Zero), Names.FrontWaist).Named(FrontWaist),
            Condition.SewnLength(WorkedLength.Given(BackShoulder, Length.Zero), Names.BackShoulder).Named(BackShoulder),
            Condition.SewnLength(WorkedLength.Given(Neckline, Length.Zero), Names.BackNeckline, Names.FrontNeckline).Named(Neckline),
            Condition.Sewn(Names.SideSeam),
            Condition.Square(Names.BackWaist.AtEnd),
            Condition.Square(Names.FrontWaist.AtEnd),
            Condition.Square(Names.BackNeckline.AtStart),
            Condition.Square(Names.FrontNeckline.AtStart),
            Condition.SmoothOverSeam(Names.BackWaist.AtStart, Names.FrontWaist.AtStart).Named("waist over the side seam"),
            Condition.SmoothOverSeam(Names.BackNeckline.AtEnd, Names.FrontNeckline.AtEnd).Named("neckline over the shoulder"),
            Condition.SmoothOverSeam(Names.BackArmhole.AtStart, Names.FrontArmhole.AtStart).Named("armhole over the shoulder"),
            Condition.SmoothOverSeam(Names.BackArmhole.AtEnd, Names.FrontArmhole.AtEnd).Named("armhole over the side seam"));

    /// <summary>Trues, adds the panels to the draft, and returns them.</summary>
    internal static (Panel Back, Panel Front) True(BodiceDraft hand, BlockDraft draft)
    {
        (Panel back, Panel front) = Trued(hand, draft);
        draft.Add(back, 2);
        draft.Add(front, 2);
        foreach ((PanelName panel, DraftedDart drafted) in hand.WaistDarts)
        {
            Mark(draft, (panel == PanelName.Back ? back : front).FindEdge(EdgeName.Waist), drafted);
        }

        return (back, front);
    }

    /// <summary>Trues the panels, for a garment that makes something else of them.</summary>
    internal static (Panel Back, Panel Front) Trued(BodiceDraft hand, BlockDraft draft)
    {
        BodiceMeasures body = hand.Body;
        TruingOutcome trued = Plan
            .Asking(BackWaist, hand.QuarterWaist)
            .Asking(FrontWaist, hand.QuarterWaist)
            .Asking(BackShoulder, hand.HasShoulderDart ? body.Shoulder : body.Shoulder + hand.ShoulderEase)
            .Asking(Neckline, body.Neck.Half())
            .True(hand.Back, Pointing(hand));
        foreach (TruingNote note in trued.Notes)
        {
            // What is less than a pencil's line is nothing to do.
            if (note.Workings.Any(length => Math.Abs(length.ValueMm) >= PencilMm))
            {
                draft.Sheet.Note(note);
            }
        }

        Panel back = trued.Find(PanelName.Back);
        Panel front = trued.Find(PanelName.Front);
        RefuseWideDarts(draft, back);
        RefuseWideDarts(draft, front);
        (hand.TruedBack, hand.TruedFront) = (back, front);
        Mark(draft, back.FindEdge(EdgeName.Shoulder), hand.ShoulderDart);
        Mark(draft, front.FindEdge(EdgeName.SideSeam), hand.BustDart);
        return (back, front);
    }

    // Traced, a dart stands square to its legs, and those lie on a waistline that slants: it would point beside the bust point by a millimetre or more.
    private static Panel Pointing(BodiceDraft hand)
    {
        DraftedDart? drafted = hand.WaistDarts.Where(one => one.Panel == PanelName.Front).Select(one => one.Dart).FirstOrDefault();
        if (drafted is null)
        {
            return hand.Front;
        }

        Dart first = hand.Front.FindEdge(EdgeName.Waist).Darts.OrderBy(dart => dart.Apex.DistanceMm(drafted.Apex.Position)).First();
        return hand.Front.WithDartAlong(first.Name, drafted.Middle.Position, drafted.Apex.Position);
    }

    // A dart that cannot be folded onto its own seam line is refused here, not when somebody draws it.
    private static void RefuseWideDarts(BlockDraft draft, Panel panel)
    {
        foreach (Dart dart in panel.Edges.SelectMany(edge => edge.Darts))
        {
            try
            {
                _ = dart.Cap;
            }
            catch (ConstructionException refusal)
            {
                throw draft.Refusal(
                    $"The {panel.Name} {dart.Name} is too wide to be folded onto its seam line: look at the lengths of front and back, and at bust and waist.",
                    dart.Intake,
                    refusal.Allowed ?? Length.Zero);
            }
        }
    }

    private static void Mark(BlockDraft draft, PanelEdge edge, DraftedDart? drafted)
    {
        if (drafted is not null)
        {
            Dart dart = edge.Darts.OrderBy(one => one.Apex.DistanceMm(drafted.Apex.Position)).First();
            draft.Trued(drafted.Middle.Name, dart.MiddleOfIntake);
            draft.Trued(drafted.Apex.Name, dart.Apex);
        }
    }
}
