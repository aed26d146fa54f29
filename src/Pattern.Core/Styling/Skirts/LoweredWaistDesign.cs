using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The waist lowered along the panels: what lies above the new line is cut off, and the darts are carried on below it.</summary>
internal sealed class LoweredWaistDesign() : BlockDesign(LoweredName, "1", By)
{
    internal const string LoweredName = "lowered waist";

    /// <summary>1 in (2.5 cm) by usage: below the narrowest part, still above the hip bones.</summary>
    internal static readonly MethodSetting<Length> By = MethodSetting.OfLength("lowered by", Length.FromInches(1), Length.FromInches(0.25), Length.FromInches(5)).InMetric(Length.FromCentimeters(2.5)).Printed();

    // Shorter than this a dart cannot be stitched to a point; common practice, no source.
    private const double LeastDartMm = 25;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        WorkedLength by = work.Take(By);
        Panel[] tops = SkirtTops.WithoutYoke(work);
        var lowered = new List<(Panel Panel, int Times)>();
        double target = 0;
        foreach (Panel top in tops)
        {
            var strip = new EdgeStrip(top, EdgeName.Waist, by.ValueMm, closesAll: false, "lowering a waist");
            double shortest = strip.ShortestDartMm;
            if (shortest < LeastDartMm)
            {
                throw work.Refusal(FormattableString.Invariant(
                    $"On the {top.Name} {shortest:0} mm of a dart would be left below the new waist, and {LeastDartMm:0} mm is the least that can be stitched to a point. Lower it by {Math.Max(0, by.ValueMm - (LeastDartMm - shortest)):0} mm, or by {by.ValueMm + shortest + 2:0} mm, where that dart is gone."));
            }

            Panel below = strip.Below();
            SkirtTops.Replace(work, below);
            lowered.Add((below, work.TimesOf(top.Name)));
            target += work.TimesOf(top.Name) * strip.LineMm;
            Tell(work, top, by, below);
        }

        work.Sheet.Note("The closed waist now measures {0}.", WorkedLength.GivenMm(null, target));
        work.Sheet.Because("That is what the block measures all around at this level, with its darts closed.");
        SkirtStock.KeepLines(work);
        Promise(work, stock, by.ValueMm, target, lowered);
    }

    private static void Tell(DesignDraft work, Panel top, WorkedLength by, Panel below)
    {
        string name = top.Name.Text;
        EdgeName waist = EdgeName.Waist;
        work.Sheet.Note("On the {0}, measure down from the waistline along {1} and {2}: {3}.", name, top.WordFor(waist, Toward.Start), top.WordFor(waist, Toward.End), by);
        if (top.FindEdge(waist).Darts.Count == 0)
        {
            work.Sheet.Note("Draw the new {0} waistline from the one to the other, parallel to the old one and square to both seams, and cut along it.", name);
            return;
        }

        work.Sheet.Note("Fold the {0} darts closed, draw the new waistline from the one to the other, parallel to the old one and square to both seams, and cut along it through the folds.", name);
        work.Sheet.Because("Unfolded, both legs of each dart end on the new line and are equally long, and no corner is left when it is sewn.");
        int gone = top.FindEdge(waist).Darts.Count - below.FindEdge(waist).Darts.Count;
        if (gone > 0)
        {
            work.Sheet.Note(gone == 1 ? "{0} dart of the {1} ends above the new line and is not sewn any more: leave it open when the line is drawn." : "{0} darts of the {1} end above the new line and are not sewn any more: leave them open when the line is drawn.", gone, name);
        }

        for (int i = 0; i < below.FindEdge(waist).Darts.Count; i++)
        {
            Dart dart = below.FindEdge(waist).Darts[i];
            work.Sheet.Note("Dart {0} of the {1} goes on below: {2}, {3}.", i + 1, name, WorkedLength.GivenMm("intake", dart.IntakeMm), WorkedLength.GivenMm("length", dart.LengthMm));
        }
    }

    private static void Promise(DesignDraft work, SkirtStock stock, double byMm, double targetMm, List<(Panel Panel, int Times)> lowered)
    {
        (PanelName, int)[] tops = [.. lowered.Select(one => (one.Panel.Name, one.Times))];
        (PanelName Name, int Darts)[] darts = [.. lowered.Select(one => (one.Panel.Name, one.Panel.FindEdge(EdgeName.Waist).Darts.Count))];
        double naturalMm = stock.WaistMm;
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, targetMm));
        if (darts.Any(one => one.Darts > 0))
        {
            work.Check(SkirtPromises.Darts, list => Array.ForEach(darts, one => SkirtPromises.DartsCanBeSewn(list, list.FindPanel(one.Name), one.Darts)));
        }
        else
        {
            work.Release(SkirtPromises.Darts, "They end above the new waist.");
        }

        work.Remark(FormattableString.Invariant($"The waist lies {byMm:0.#} mm lower than the waist of the body, and measures {targetMm:0.#} mm closed where the natural waist has {naturalMm:0.#} mm."));
    }
}
