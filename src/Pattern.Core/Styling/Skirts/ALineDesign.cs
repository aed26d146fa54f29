using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The A-line: a share of each waist dart closed into flare, the side seams swung out by half as much, the hem level.</summary>
/// <remarks>Common practice, no source, unless said otherwise: a dart of intake w and length l that is closed opens a hem L below the waist by 2 (L - l) sin(a / 2), where sin(a / 2) = w / 2l.</remarks>
internal sealed class ALineDesign() : BlockDesign("a-line", "1", Share, SideFlare, HipGain)
{
    /// <summary>All of each dart by usage: what is left of a dart is hardly worth sewing.</summary>
    internal static readonly MethodSetting<Ratio> Share = MethodSetting.OfShare("share of each dart", Ratio.FromPercent(100), Ratio.Zero, Ratio.FromPercent(100));

    /// <summary>Where nobody says, half of what one panel opens by, so that the flare is even around the hem.</summary>
    internal static readonly MethodSetting<Length> SideFlare = MethodSetting.OfLength("side flare", null, Length.Zero, Length.FromInches(8));

    /// <summary>A dart that ends above the hip widens the hip as well; up to 1 cm in a quarter is let be.</summary>
    internal static readonly MethodSetting<Length> HipGain = MethodSetting.OfLength("most gain at the hip", Length.FromInches(0.375), Length.Zero, Length.FromInches(4)).InMetric(Length.FromCentimeters(1));

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        double share = work.Take(Share).DecimalFractions;
        double mostGainMm = work.Take(HipGain).Value.Millimeters;
        Panel[] quarters = SkirtStock.StraightQuarters(work);

        var closed = new List<Panel>();
        var openings = new List<double>();
        foreach (Panel quarter in quarters)
        {
            Panel ready = Ready(work, quarter, share, mostGainMm);
            var opened = new List<(DartName Dart, double OpeningMm)>();
            closed.Add(SkirtFlare.CloseDarts(ready, share, opened));
            Tell(work, ready, share, opened);
            openings.Add(opened.Sum(one => one.OpeningMm));
        }

        WorkedLength sideFlare = work.IsGiven(SideFlare)
            ? work.Take(SideFlare)
            : openings.Sum() > 0
                ? (WorkedLength.DrawnMm("back opening", openings[0]) + WorkedLength.DrawnMm("front opening", openings[1])).Quarter().Named("side flare")
                : WorkedLength.GivenMm("side flare", stock.Usually(1.5, 4));
        foreach (Panel panel in closed)
        {
            work.Replace(SkirtFlare.SwingSide(panel, sideFlare.ValueMm));
        }

        TellSides(work, sideFlare);
        SkirtStock.KeepLines(work);
        new FlaredQuarters(work, stock, quarters, share, mostGainMm).Promise(work);
    }

    // With all of a dart closed its apex may be brought nearer to the hip first, so that the hip gains no more than it should; one that ends below the hip is brought up to it.
    private static Panel Ready(DesignDraft work, Panel quarter, double share, double mostGainMm)
    {
        double hipMm = SkirtFlare.FootOf(quarter).YMm;
        EdgeName top = SkirtStock.TopOf(quarter).Name;
        Dart[] darts = [.. quarter.FindEdge(top).Darts];
        if (share < 1)
        {
            return darts.All(dart => share == 0 || dart.Apex.YMm >= hipMm)
                ? quarter
                : throw work.Refusal("A dart ends below the hip: closing a share of it would narrow the hip. Close all of it, or draft a shorter dart.");
        }

        double toward = 0;
        if (Gain(1e-12) > mostGainMm)
        {
            double none = 0;
            toward = 1;
            for (int i = 0; i < 60; i++)
            {
                double middle = (none + toward) / 2;
                (none, toward) = Gain(middle) > mostGainMm ? (middle, toward) : (none, middle);
            }
        }

        for (int i = 0; i < darts.Length; i++)
        {
            double length = LengthAt(darts[i], toward);
            if (Math.Abs(length - darts[i].LengthMm) > CheckList.ToleranceMm)
            {
                quarter = quarter.WithDartLength(top.Dart(i + 1), Length.FromMillimeters(length));
                work.Sheet.Note(
                    length > darts[i].LengthMm ? "Lengthen {0} dart {1} from {2} to {3}." : "Shorten {0} dart {1} from {2} to {3}.",
                    quarter.Name.Text, i + 1, WorkedLength.GivenMm(null, darts[i].LengthMm), WorkedLength.GivenMm(null, length));
                work.Sheet.Because("A dart that ends far above the hip would widen the hip as it closes; one that ends below would narrow it.");
            }
        }

        return quarter;

        double LengthAt(Dart dart, double part)
        {
            double toHip = dart.Apex.YMm - hipMm;
            return dart.LengthMm + (toHip < 0 ? toHip : part * toHip);
        }

        double Gain(double part) => darts.Sum(dart =>
        {
            double length = LengthAt(dart, part);
            return Math.Max(0, dart.Apex.YMm - hipMm - (length - dart.LengthMm)) * 2 * Math.Atan(dart.IntakeMm / 2 / length);
        });
    }

    internal static void Tell(DesignDraft work, Panel quarter, double share, List<(DartName Dart, double OpeningMm)> opened)
    {
        foreach ((DartName dart, double openingMm) in opened)
        {
            work.Sheet.Note("Cut the {0} from the hem up to the apex of dart {1}, square to the hem.", quarter.Name.Text, dart.Number);
            WorkedLength opening = WorkedLength.GivenMm(null, openingMm);
            if (share == 1)
            {
                work.Sheet.Note("Fold {0} dart {1} closed. The cut opens at the hem by {2}, measured along the hem; put paper beneath it.", quarter.Name.Text, dart.Number, opening);
            }
            else
            {
                string part = (share * 100).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " %";
                work.Sheet.Note("Fold {0} of {1} dart {2} away. The cut opens at the hem by {3}, measured along the hem; put paper beneath it.", part, quarter.Name.Text, dart.Number, opening);
            }

            work.Sheet.Note("Draw the hem across the opening as an arc about the apex of {0} dart {1}.", quarter.Name.Text, dart.Number);
            work.Sheet.Because("So it hangs level: every place of it is as far below the hip as before.");
        }
    }

    internal static void TellSides(DesignDraft work, WorkedLength sideFlare)
    {
        if (sideFlare.ValueMm > 0)
        {
            work.Sheet.Note("On back and front, swing the side seam below the hip out about the level of the hip until its hem stands further out: {0}.", sideFlare);
            work.Sheet.Because("It keeps its length, so the side hem rises by itself, and its hem is an arc, square to the seam.");
        }

        work.Sheet.Note("Draw each waistline again over the closed darts, one smooth curve, square to centre and side and as long as before. Draw the hip curve again: it runs into the side seam without a corner.");
    }
}
