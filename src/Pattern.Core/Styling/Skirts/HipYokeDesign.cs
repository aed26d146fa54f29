using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The hip yoke: cut along a line parallel to the shaped waist, or level, the darts closed inside it; below it the skirt is plain, or gathered to it.</summary>
internal sealed class HipYokeDesign() : BlockDesign("yoke", "2", Depth, Fullness, Runs)
{
    internal const string Parallel = "parallel to the waist";
    internal const string Level = "level";

    /// <summary>Where nobody says, 5 in (12.5 cm), the deepest by usage, so that as little as can be is left of the darts below; but all of them close inside it.</summary>
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("yoke depth", null, Length.FromInches(1), Length.FromInches(10));

    /// <summary>Plain by usage; 150 % for light gathers, 200 % the usual ones.</summary>
    internal static readonly MethodSetting<Ratio> Fullness = MethodSetting.OfShare("fullness below", Ratio.FromPercent(100), Ratio.FromPercent(100), Ratio.FromPercent(400));

    /// <summary>Parallel by usage: the eye compares it with the waist.</summary>
    internal static readonly MethodSetting<string> Runs = MethodSetting.OfChoice("yoke line", Parallel, Parallel, Level);

    internal static readonly EdgeName Seam = EdgeName.Of("yoke seam");

    private const double LeastBelowMm = 5;
    private const double MostLeanRad = 30 * Math.PI / 180;

    private static readonly Advice LeaningSide = Advice.Of(
        "What is left of the darts below the yoke makes the side seam lean so far that the top turns up in a hook to meet it square.", "Make the yoke deeper, so that less is left of them, or gather the skirt to it.");

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.Quarters(work);
        if (quarters.Any(quarter => SkirtStock.TopOf(quarter).Name != EdgeName.Waist))
        {
            throw work.Refusal("It has a yoke already. Make one yoke, as deep as both.");
        }

        if (quarters.Any(quarter => quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw.Length < 2))
        {
            throw work.Refusal("It has no hip curve: a circle hangs from the waist alone. Cut the yoke of the block, and flare what hangs below.");
        }

        double fullness = work.Take(Fullness).DecimalFractions;
        WorkedLength depth = DepthOf(work, stock, quarters);
        double? level = work.Take(Runs) == Level ? quarters[0].FindEdge(EdgeName.Centre).End.YMm - depth.ValueMm : null;
        double? sideDepth = level is { } at ? SideDepth(work, quarters, at) : null;
        var seams = new List<Seam>();
        var cuts = new List<YokeCut>();
        foreach (Panel quarter in quarters)
        {
            var cut = new YokeCut(quarter, level is { } down ? quarter.FindEdge(EdgeName.Centre).End.YMm - down : depth.ValueMm, sideDepth);
            cuts.Add(cut);
            Panel lower = cut.Lower(fullness);
            bool isBack = quarter.Name == PanelName.Back;
            work.Replace(quarter.Name, isBack ? [cut.Yoke, lower] : [lower, cut.Yoke]);
            seams.Add(Panels.Seam.Between(EdgeOf.Panel(lower.Name, Seam), EdgeOf.Panel(cut.Yoke.Name, Seam))
                .Named(quarter.Name.Text + " yoke seam")
                .WithEase(Length.FromMillimeters(cut.EaseMm(fullness))));
            Tell(work, quarter, depth, cut, fullness);
        }

        work.Sew(SeamPlan.Of(
        [
            Panels.Seam.Between(EdgeOf.Panel(YokeOf(PanelName.Back), EdgeName.SideSeam), EdgeOf.Panel(YokeOf(PanelName.Front), EdgeName.SideSeam)).Named("yoke side seam"),
            .. seams,
            Panels.Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam", "yoke to hip", "hip to hem"),
            .. work.Seams.SeamsOf(EdgeOf.Panel(PanelName.Back, EdgeName.Centre)).SelectMany(seam => new[] { Panels.Seam.ToMirrorImage(EdgeOf.Panel(YokeOf(PanelName.Back), EdgeName.Centre)).Named("yoke " + seam.Name), seam }),
        ]));
        Promise(work, stock, cuts, fullness);
    }

    internal static PanelName YokeOf(PanelName quarter) => PanelName.Of(quarter.Text + " yoke");

    private static WorkedLength DepthOf(DesignDraft work, SkirtStock stock, Panel[] quarters)
    {
        double[] darts = [.. quarters.SelectMany(quarter => SkirtStock.TopOf(quarter).Darts).Select(dart => dart.LengthMm)];
        double room = Math.Min(darts.Length == 0 ? double.PositiveInfinity : darts.Min() - LeastBelowMm, 0.9 * quarters.Min(quarter => quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw[0].LengthMm()));
        if (!work.IsGiven(Depth))
        {
            return WorkedLength.GivenMm("yoke depth", Math.Min(stock.Usually(5, 12.5), Math.Max(1, Math.Floor(room / stock.Usually(0.125, 0.5))) * stock.Usually(0.125, 0.5)));
        }

        WorkedLength depth = work.Take(Depth);
        return depth.ValueMm <= room
            ? depth
            : throw work.Refusal(FormattableString.Invariant($"A yoke {depth.ValueMm:0} mm deep would end below a dart or below the hip curve: up to {room:0} mm all darts close inside it. Make it less deep, or draft longer darts."));
    }

    // Back and front are sewn at the side, so what is level on both is so in the mean.
    private static double SideDepth(DesignDraft work, Panel[] quarters, double levelMm)
    {
        double mean = quarters.Average(quarter => YokeCut.SideDepthMm(quarter, levelMm));
        double room = quarters.Min(quarter => quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw[0].LengthMm()) - LeastBelowMm;
        return mean > LeastBelowMm && mean < room && quarters.All(quarter => quarter.FindEdge(EdgeName.Centre).End.YMm - levelMm > LeastBelowMm)
            ? mean
            : throw work.Refusal(FormattableString.Invariant($"A level line would meet the side {mean:0} mm below the waist; from {LeastBelowMm:0} to {room:0} mm it can. Let it run parallel to the waist, or choose another depth."));
    }

    private static void Tell(DesignDraft work, Panel quarter, WorkedLength depth, YokeCut cut, double fullness)
    {
        string name = quarter.Name.Text;
        work.Sheet.Note(
            work.Take(Runs) == Level
                ? "Fold the {0} darts closed, and draw the yoke line from the centre to the side, square to both, both at the level that lies {1} below the waist at the centre back. Cut along it."
                : "Fold the {0} darts closed, and draw the yoke line below the {0} waistline, parallel to it, {1} deep along centre and side too; bend its last 1 1/2 in until it is square to the side. Cut along it.",
            name,
            depth);
        work.Sheet.Note("Trace the {0} yoke with its darts closed: one piece without darts. Its lower edge measures {1}.", name, WorkedLength.GivenMm(null, cut.LineMm));
        if (fullness == 1 && cut.EaseMm(fullness) > 1)
        {
            work.Sheet.Note("Ease {0} of what is left of the darts of the {1} below the yoke into its seam.", WorkedLength.GivenMm(null, cut.EaseMm(fullness)), name);
        }

        if (cut.OffSideMm(fullness) > 1)
        {
            work.Sheet.Note("What is left of the darts below the yoke, {0}, comes off the {1} side seam at the top. Draw the seam again down to the hip, and the top square to it, as long as the yoke and its ease.", WorkedLength.GivenMm(null, cut.OffSideMm(fullness)), name);
        }

        if (fullness > 1)
        {
            work.Sheet.Note("Move the {0} centre out, parallel, until the top with what is left of the darts is longer than the yoke by {1}: it is gathered to the yoke.", name, WorkedLength.DrawnMm("yoke seam", cut.LineMm).Times(fullness - 1));
        }
    }

    private static void Promise(DesignDraft work, SkirtStock stock, List<YokeCut> cuts, double fullness)
    {
        PanelName[] lower = [PanelName.Back, PanelName.Front];
        PanelName[] yokes = [.. lower.Select(YokeOf)];
        double[] centres = [.. cuts.Select(cut => cut.DepthAtCentreMm)];
        double[] sides = [.. cuts.Select(cut => cut.DepthAtSideMm)];
        (PanelName, int)[] tops = [.. yokes.Select(name => (name, work.TimesOf(name)))];
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Corners, list =>
        {
            SkirtPromises.SquareTop(list, yokes);
            SkirtPromises.SquareTop(list, lower);
            for (int i = 0; i < yokes.Length; i++)
            {
                PanelName name = yokes[i];
                Panel yoke = list.FindPanel(name);
                list.Length("yoke depth at the side", name.Text, yoke.FindEdge(EdgeName.SideSeam).SewnLengthMm(), sides[i]);
                list.Length("yoke depth at the centre", name.Text, yoke.FindEdge(EdgeName.Centre).SewnLengthMm(), centres[i]);
                list.Angle("yoke seam square to side", name.Text, CheckList.CornerRad(yoke.FindEdge(EdgeName.SideSeam).StretchesRaw[0], yoke.FindEdge(Seam).StretchesRaw[0]), SkirtStock.SquareRad);
            }
        });
        work.Check(SkirtPromises.Darts, list => Array.ForEach(lower, name => SkirtPromises.DartsCanBeSewn(list, list.FindPanel(name), 0)));
        work.Check(SkirtPromises.Outline, list =>
        {
            Array.ForEach(yokes, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name)));
            Array.ForEach(lower, name => SkirtPromises.SimpleOutline(list, list.FindPanel(name)));
        });
        work.Check(SkirtPromises.Advice, list =>
        {
            foreach (PanelName name in lower)
            {
                CurvePath side = list.FindPanel(name).FindEdge(EdgeName.SideSeam).StretchesRaw[0];
                double lean = Math.Abs(side.StartDirection.TurnRadTo(side.SegmentsRaw[1].StartDirection));
                if (lean > MostLeanRad)
                {
                    list.Advise(LeaningSide, "lean of the side seam at the yoke", name.Text, SkirtStock.Rad(lean), FindingRelation.AtMost, SkirtStock.Rad(MostLeanRad));
                }
            }
        });
        if (fullness > 1)
        {
            double least = stock.HipMm + (2 * cuts.Sum(cut => Math.Max(0, cut.EaseMm(fullness) - cut.LeftOverMm)));
            work.Check(SkirtPromises.Hip, list => list.LengthAtLeast("hip width all around", SkirtPromises.Block, lower.Sum(name => 2 * SkirtFlare.HipWidthMm(list.FindPanel(name))), least, CheckList.ToleranceMm));
        }
    }
}
