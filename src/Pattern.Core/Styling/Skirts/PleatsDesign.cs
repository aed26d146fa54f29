using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Pleats all around: knife pleats or box pleats of equal width at the hip, lapped further toward the waist by what waist and hip differ, stitched down to the hip.</summary>
/// <remarks>The panels are drawn as they are sewn, with the pleats folded: the lapping between waist and hip is a dart in each pleat. The pieces are cut from the flat cloth. Closed forms, found: knife pleats take
/// N (p + 2u) of cloth, box pleats N (p + 4u), for N pleats of the visible width p and the depth u.</remarks>
internal sealed class PleatsDesign : BlockDesign
{
    /// <summary>Where nobody says, as many as are about 2 in (5 cm) wide at the hip, the same number in each quarter.</summary>
    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("pleats", null, 4, 120);

    /// <summary>As deep as they can be: a knife pleat as deep as it is wide, a box pleat half as deep, so that its folds meet underneath. Both take three times the hip.</summary>
    internal static readonly MethodSetting<Ratio> Depth = MethodSetting.OfShare("depth of the deepest", Ratio.FromPercent(100), Ratio.FromPercent(20), Ratio.FromPercent(100));

    private const double LeastShapingMm = 0.5;

    private readonly bool _isBox;

    internal PleatsDesign(bool isBox)
        : base(isBox ? "box pleats" : "knife pleats", "1", Count, Depth)
        => _isBox = isBox;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        SkirtTops.RefuseLowered(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        if (quarters.Any(quarter => quarter.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw is not [{ Kind: PathSegmentKind.Line }] || SkirtStock.TopOf(quarter).Name != EdgeName.Waist))
        {
            throw work.Refusal("It has a yoke or flares, and pleats hang straight from the waist. Begin with the block as drafted.");
        }

        // Where the waist is the larger one the cloth hangs from that.
        double girth = Math.Max(stock.HipMm, stock.WaistMm);
        int inQuarter = work.IsGiven(Count) ? InQuarter(work) : Math.Max(1, (int)Math.Round(girth / 4 / stock.Usually(2, 5)));
        double visible = girth / 4 / inQuarter;
        double depth = visible * work.Take(Depth).DecimalFractions * (_isBox ? 0.5 : 1);
        double lapping = ((girth - stock.WaistMm) / 4) / inQuarter;
        var sewn = new List<PleatedQuarter>();
        foreach (Panel quarter in quarters)
        {
            var pleated = new PleatedQuarter(quarter, stock, girth / 4, inQuarter, lapping >= LeastShapingMm ? lapping : 0, depth, _isBox);
            work.Replace(pleated.Sewn);
            work.CutAs(pleated.AsCut(), [.. pleated.Folds.Select(fold => (Drafting.LineName.Of(fold.Name, Drafting.ConstructionRole.Guide), fold.Path))]);
            foreach ((string name, CurvePath path) in pleated.Lines)
            {
                work.Show(name, path);
            }

            sewn.Add(pleated);
        }

        work.Sew(SeamPlan.Of(Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam", "waist to hip", "hip to hem"), SkirtSeams.CentreBack));
        SkirtStock.KeepLines(work);
        Tell(work, stock, girth, 4 * inQuarter, visible, depth, lapping);
        Promise(work, stock, girth, 4 * inQuarter, depth, sewn);
    }

    private static int InQuarter(DesignDraft work)
    {
        int count = work.Take(Count);
        return count % 4 == 0 ? count / 4 : throw work.Refusal(FormattableString.Invariant($"{count} pleats do not share out over four quarters. Take {4 * Math.Max(1, (count + 2) / 4)}."));
    }

    private void Tell(DesignDraft work, SkirtStock stock, double girth, int count, double visible, double depth, double lapping)
    {
        WorkedLength hip = WorkedLength.GivenMm("hip with ease", girth);
        WorkedLength width = hip.DividedBy(count).Named("visible width");
        WorkedLength deep = WorkedLength.GivenMm("depth", depth);
        work.Remark(FormattableString.Invariant($"{count} {Name} all around, drawn folded; the pieces are the flat cloth."));
        work.Sheet.Note("The darts of the block are not needed any more. Lay {0} {1}, at the hip: {2}; {3}.", count, Name, width, deep);
        work.Sheet.Note("They take this much cloth around: {0}.", (width + deep.Times(_isBox ? 4 : 2)).Times(count));
        work.Sheet.Because(_isBox ? "Each box takes its width and four times the depth of its folds." : "Each pleat takes its width and twice its depth.");
        if (lapping >= LeastShapingMm)
        {
            work.Sheet.Note("Between waist and hip lap each pleat further, by nothing at the hip and at the waist by {0}, and stitch it down so far.", (hip - WorkedLength.GivenMm("closed waist", stock.WaistMm)).DividedBy(count));
        }

        work.Sheet.Note(_isBox ? "Press each box with a fold to either side; seams fall on an inner fold." : "Press all pleats toward the centre; seams fall on an inner fold.");
        work.Sheet.Note("With the pleats folded, trim waist and hem in one smooth line each, and open them: so the cut edges are shaped.");
        _ = visible;
    }

    private void Promise(DesignDraft work, SkirtStock stock, double girth, int count, double depth, List<PleatedQuarter> sewn)
    {
        PanelName[] names = [PanelName.Back, PanelName.Front];
        int[] darts = [.. sewn.Select(quarter => SkirtStock.TopOf(quarter.Sewn).Darts.Count)];
        double cloth = sewn.Sum(quarter => 2 * quarter.AsCut().FindEdge(EdgeName.Hem).SewnLengthMm());
        double below = stock.LengthMm - stock.Levels.UpperHipMm;
        bool isBox = _isBox;
        (PanelName, int)[] tops = [.. names.Select(name => (name, 2))];
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Hip, list =>
        {
            double hip = 2 * names.Sum(name => SkirtFlare.HipWidthMm(list.FindPanel(name)));
            list.Length("hip width all around", SkirtPromises.Block, hip, girth);
            list.Length("cloth around", SkirtPromises.Block, cloth, girth + (count * depth * (isBox ? 4 : 2)));
            list.LengthAtMost("depth of a pleat, so that no three lie over each other", SkirtPromises.Block, depth, girth / count * (isBox ? 0.5 : 1));
        });
        work.Check(SkirtPromises.Corners, list => SkirtPromises.SquareTop(list, names));
        work.Check(SkirtPromises.Hem, list =>
        {
            foreach (PanelName name in names)
            {
                Panel panel = list.FindPanel(name);
                SkirtPromises.HemOfQuarter(list, panel);
                list.Length("side from hip to hem", name.Text, SkirtFlare.BelowHipMm(panel), below);
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
        work.Check(SkirtPromises.Outline, list => Array.ForEach(names, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
        work.Release(SkirtPromises.Advice, "It spoke of the darts of the block.");
    }
}
