using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Pleats, all around or in one part, from the waist or from a yoke: of equal width at the hip, lapped further toward the top by what hip and top differ, stitched down so far.</summary>
/// <remarks>The panels are drawn as they are sewn, with the pleats folded: the lapping is a dart in each pleat. The pieces are cut from the flat cloth. Closed forms, found: knife pleats take
/// N (p + 2u) of cloth, box pleats N (p + 4u), for N pleats of the visible width p and the depth u.</remarks>
internal sealed class PleatsDesign : BlockDesign
{
    internal const string AllAround = "all around";
    internal const string FrontOnly = "front";
    internal const string BackOnly = "back";

    /// <summary>Where nobody says, as many as are about 2 in (5 cm) wide at the hip, the same number in each quarter.</summary>
    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("pleats", null, 1, 120);

    /// <summary>As deep as they can be: a knife pleat as deep as it is wide, a box pleat half as deep, so that its folds meet underneath. Both take three times the hip.</summary>
    internal static readonly MethodSetting<Ratio> Depth = MethodSetting.OfShare("depth of the deepest", Ratio.FromPercent(100), Ratio.FromPercent(20), Ratio.FromPercent(100));

    /// <summary>All around by usage.</summary>
    internal static readonly MethodSetting<string> Part = MethodSetting.OfChoice("pleated part", AllAround, AllAround, FrontOnly, BackOnly);

    /// <summary>Where nobody says, to the hip: the pleats open where the body is widest.</summary>
    internal static readonly MethodSetting<Length> Stitched = MethodSetting.OfLength("stitched down from the waist", null, Length.FromInches(1), Length.FromInches(16));

    private const double LeastStitchedMm = 20;

    private readonly PleatKind _kind;

    internal PleatsDesign(PleatKind kind)
        : base(kind switch { PleatKind.Box => "box pleats", PleatKind.Inverted => "inverted pleats", _ => "knife pleats" }, "2", Count, Depth, Part, Stitched)
        => _kind = kind;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtTops.RefuseLowered(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        if (work.Seams.Seams.Any(seam => seam.First.EdgeName == HipYokeDesign.Seam && seam.EaseMm > YokeCut.MostEaseMm + CheckList.ToleranceMm))
        {
            throw work.Refusal("It is gathered to its yoke, and pleats take up the cloth instead. Make the yoke plain.");
        }

        if (quarters.Any(quarter => quarter.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw is not [{ Kind: PathSegmentKind.Line }]))
        {
            throw work.Refusal("It flares, and pleats hang straight. Begin with the block as drafted, or with a yoke of it.");
        }

        bool isYoked = SkirtStock.TopOf(quarters[0]).Name != EdgeName.Waist;
        string part = work.Take(Part);
        Panel[] chosen = [.. quarters.Where(quarter => part == AllAround || quarter.Name == (part == FrontOnly ? PanelName.Front : PanelName.Back))];

        // All around from the waist, back and front have the same pleats; where the waist is the larger one the cloth hangs from that.
        bool isWhole = part == AllAround && !isYoked;
        double girth = Math.Max(stock.HipMm, stock.WaistMm);
        double[] widths = [.. chosen.Select(quarter => isWhole ? girth / 4 : Math.Max(SkirtFlare.HipWidthMm(quarter), SkirtStock.TopOf(quarter).SewnLengthMm()))];
        double share = work.Take(Depth).DecimalFractions;
        TakeEase(work, chosen);
        var pleated = new List<PleatedQuarter>();
        for (int i = 0; i < chosen.Length; i++)
        {
            Panel quarter = chosen[i];
            var plan = new PleatPlan(_kind, CountIn(work, stock, widths[i], chosen.Length), widths[i], share);
            var one = new PleatedQuarter(quarter, TargetOf(work, stock, quarter, isWhole), plan, work.Refusal);
            work.Replace(one.Sewn);
            work.CutAs(one.AsCut, [.. one.Folds.Select(fold => (Drafting.LineName.Of(fold.Name, Drafting.ConstructionRole.Guide), fold.Path))]);
            foreach ((string name, CurvePath path) in one.Lines)
            {
                work.Show(name, path);
            }

            pleated.Add(one);
        }

        SkirtStock.KeepLines(work);
        Tell(work, part, pleated);
        Promise(work, stock, quarters, pleated, isYoked);
    }

    private static double EaseMm(DesignDraft work, Panel quarter)
        => work.Source.Seams.Seams.Where(seam => seam.First == EdgeOf.Panel(quarter.Name, HipYokeDesign.Seam)).Sum(seam => seam.EaseMm);

    // What a plain yoke had eased in the pleats take up.
    private static void TakeEase(DesignDraft work, Panel[] chosen)
    {
        if (chosen.Any(quarter => EaseMm(work, quarter) != 0))
        {
            work.Sew(SeamPlan.Of([.. work.Seams.Seams.Select(seam => seam.First.EdgeName == HipYokeDesign.Seam && chosen.Any(quarter => quarter.Name == seam.First.PanelName) ? seam.WithEase(Length.Zero) : seam)]));
        }
    }

    // Lines of a quarter from the number of all pleats.
    private int CountIn(DesignDraft work, SkirtStock stock, double widthMm, int quarters)
    {
        double usual = widthMm / stock.Usually(2, 5);
        if (!work.IsGiven(Count))
        {
            return Math.Max(1, (int)Math.Round(_kind == PleatKind.Box ? usual + 0.5 : usual));
        }

        // Two halves of each part: pleats of a quarter, a box over the centre counted for a half.
        int count = work.Take(Count);
        int parts = 2 * quarters;
        int odd = _kind == PleatKind.Box ? parts / 2 : 0;
        int lines = (count + odd) / parts;
        if (lines >= 1 && (lines * parts) - odd == count)
        {
            return lines;
        }

        int least = Math.Max(1, (count + odd) / parts);
        throw work.Refusal(FormattableString.Invariant($"{count} {Name} do not share out over {parts} quarters with the seams hidden under folds. Take {(least * parts) - odd} or {((least + 1) * parts) - odd}."));
    }

    private static PleatTarget TargetOf(DesignDraft work, SkirtStock stock, Panel quarter, bool isWhole)
    {
        double foot = SkirtFlare.FootOf(quarter).YMm;
        double top = quarter.FindEdge(EdgeName.Centre).End.YMm;
        double most = top - foot;
        double stitched = work.IsGiven(Stitched) ? work.Take(Stitched).ValueMm + top : most;
        if (stitched > most + CheckList.ToleranceMm || stitched < LeastStitchedMm)
        {
            throw work.Refusal(FormattableString.Invariant(
                $"Stitched down to {stitched - top:0} mm below the waist the pleats would open below the hip or right at their top; from {LeastStitchedMm - top:0} to {-foot:0} mm they can. Choose a level there."));
        }

        return isWhole
            ? new PleatTarget(stock.WaistMm / 4, -foot, stitched)
            : new PleatTarget(SkirtStock.TopOf(quarter).SewnLengthMm() - EaseMm(work, quarter), quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw[0].LengthMm(), stitched);
    }

    private void Tell(DesignDraft work, string part, List<PleatedQuarter> pleated)
    {
        int count = pleated.Sum(one => one.Plan.OfTwoQuarters);
        work.Remark(FormattableString.Invariant($"{count} {Name} {(part == AllAround ? AllAround : "in the " + part)}, drawn folded; the pieces are the flat cloth."));
        foreach (PleatedQuarter one in pleated)
        {
            PleatPlan plan = one.Plan;
            string name = one.Sewn.Name.Text;
            WorkedLength width = WorkedLength.GivenMm("visible width", plan.VisibleMm);
            WorkedLength deep = WorkedLength.GivenMm("depth", plan.DepthMm);
            work.Sheet.Note("The {0} needs no darts any more. Lay {1} {2} in it, at the hip: {3}; {4}.", name, plan.OfTwoQuarters, Name, width, deep);
            work.Sheet.Note("They take this much cloth across the {0}: {1}.", name, (width + deep.Times(_kind == PleatKind.Knife ? 2 : 4)).Times(plan.OfTwoQuarters));
            work.Sheet.Because(_kind == PleatKind.Knife ? "Each pleat takes its width and twice its depth." : "Each pleat takes its width and four times the depth of its folds.");
            if (one.LappingMm > 0)
            {
                work.Sheet.Note("From the hip up lap each pleat of the {0} further, by nothing where it opens and at the top by {1}, at the side by half of that, and stitch it down so far.", name, WorkedLength.GivenMm(null, one.LappingMm));
            }
        }

        work.Sheet.Note(_kind switch
        {
            PleatKind.Knife => "Press all pleats away from a box over the centre, twice as wide as a pleat, toward an inverted pleat at the side.",
            PleatKind.Box => "Press each box with a fold to either side; one lies over the centre.",
            _ => "Press the folds of each pleat to meet; one pleat lies over the centre.",
        });
        work.Sheet.Because("The side seam then lies in the middle of an underlay, where nobody sees it.");
        work.Sheet.Note("With the pleats folded, trim top and hem in one smooth line each, and open them: so the cut edges are shaped.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, Panel[] quarters, List<PleatedQuarter> pleated, bool isYoked)
    {
        PanelName[] names = [.. quarters.Select(quarter => quarter.Name)];
        int[] darts = [.. names.Select(name => SkirtStock.TopOf(work.FindPanel(name)).Darts.Count)];
        double[] below = [.. quarters.Select(SkirtFlare.BelowHipMm)];
        double girth = 2 * names.Sum(name => SkirtFlare.HipWidthMm(work.FindPanel(name)));
        if (!isYoked)
        {
            (PanelName, int)[] tops = [.. names.Select(name => (name, 2))];
            work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
            work.Check(SkirtPromises.Corners, list => SkirtPromises.SquareTop(list, names));
        }

        work.Check(SkirtPromises.Hip, list =>
        {
            double hip = 2 * names.Sum(name => SkirtFlare.HipWidthMm(list.FindPanel(name)));
            list.Length("hip width all around", SkirtPromises.Block, hip, girth);
            list.LengthAtLeast("hip width and what the body needs", SkirtPromises.Block, hip, stock.HipMm, CheckList.ToleranceMm);
            foreach (PleatedQuarter one in pleated)
            {
                PleatPlan plan = one.Plan;
                string place = one.Sewn.Name.Text;
                double cloth = 2 * one.AsCut.FindEdge(EdgeName.Hem).SewnLengthMm();
                list.Length("cloth across", place, cloth, (2 * plan.WidthMm) + (plan.OfTwoQuarters * plan.DepthMm * (plan.Kind == PleatKind.Knife ? 2 : 4)));
                list.LengthAtMost("depth of a pleat, so that no three lie over each other", place, plan.DepthMm, plan.DeepestMm);
            }
        });
        work.Check(SkirtPromises.Hem, list =>
        {
            for (int i = 0; i < names.Length; i++)
            {
                Panel panel = list.FindPanel(names[i]);
                SkirtPromises.HemOfQuarter(list, panel);
                list.Length("side from hip to hem", names[i].Text, SkirtFlare.BelowHipMm(panel), below[i]);
            }

            SkirtPromises.HemJoined(list, list.FindPanel(names[0]), list.FindPanel(names[1]), EdgeName.SideSeam);
        });
        work.Check(SkirtPromises.Darts, list =>
        {
            for (int i = 0; i < names.Length; i++)
            {
                SkirtPromises.DartsCanBeSewn(list, list.FindPanel(names[i]), darts[i]);
            }
        });
        PanelName[] all = [.. work.Panels.Select(panel => panel.Name)];
        work.Check(SkirtPromises.Outline, list => Array.ForEach(all, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
        work.Release(SkirtPromises.Advice, "It spoke of the darts of the block.");
    }
}
