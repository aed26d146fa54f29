using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The hip yoke: cut along a line parallel to the shaped waist, the darts closed inside it; below it the skirt is plain, or gathered to it.</summary>
internal sealed class HipYokeDesign() : BlockDesign("yoke", "1", Depth, Fullness)
{
    /// <summary>Where nobody says, 4 in (10 cm), but no more than three quarters of the shortest dart, so that all of them close inside it.</summary>
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("yoke depth", null, Length.FromInches(1), Length.FromInches(10));

    /// <summary>Plain by usage; 150 % for light gathers, 200 % the usual ones.</summary>
    internal static readonly MethodSetting<Ratio> Fullness = MethodSetting.OfShare("fullness below", Ratio.FromPercent(100), Ratio.FromPercent(100), Ratio.FromPercent(400));

    internal static readonly EdgeName Seam = EdgeName.Of("yoke seam");

    private const double LeastBelowMm = 5;
    private const double MostLeanRad = 40 * Math.PI / 180;

    private static readonly Advice LeaningSide = Advice.Of(
        "What is left of the darts below the yoke makes the side seam lean so far that it stretches in sewing.", "Make the yoke deeper, so that less is left of them, or gather the skirt to it.");

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.Quarters(work);
        if (quarters.Any(quarter => SkirtStock.TopOf(quarter).Name != EdgeName.Waist))
        {
            throw work.Refusal("It has a yoke already. Make one yoke, as deep as both.");
        }

        double fullness = work.Take(Fullness).DecimalFractions;
        WorkedLength depth = DepthOf(work, stock, quarters);
        var seams = new List<Seam>();
        var added = new List<double>();
        foreach (Panel quarter in quarters)
        {
            var cut = new YokeCut(quarter, depth.ValueMm);
            Panel lower = cut.Lower(fullness);
            bool isBack = quarter.Name == PanelName.Back;
            work.Replace(quarter.Name, isBack ? [cut.Yoke, lower] : [lower, cut.Yoke]);
            added.Add(cut.LineMm * (fullness - 1));
            seams.Add(Panels.Seam.Between(EdgeOf.Panel(lower.Name, Seam), EdgeOf.Panel(cut.Yoke.Name, Seam))
                .Named(quarter.Name.Text + " yoke seam")
                .WithEase(Length.FromMillimeters(added[added.Count - 1])));
            Tell(work, quarter, depth, cut, fullness);
        }

        work.Sew(SeamPlan.Of(
        [
            Panels.Seam.Between(EdgeOf.Panel(YokeOf(PanelName.Back), EdgeName.SideSeam), EdgeOf.Panel(YokeOf(PanelName.Front), EdgeName.SideSeam)).Named("yoke side seam"),
            .. seams,
            Panels.Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam", "yoke to hip", "hip to hem"),
            .. work.Seams.SeamsOf(EdgeOf.Panel(PanelName.Back, EdgeName.Centre)).SelectMany(seam => new[] { Panels.Seam.ToMirrorImage(EdgeOf.Panel(YokeOf(PanelName.Back), EdgeName.Centre)).Named("yoke " + seam.Name), seam }),
        ]));
        Promise(work, stock, depth.ValueMm, fullness, added);
    }

    internal static PanelName YokeOf(PanelName quarter) => PanelName.Of(quarter.Text + " yoke");

    private static WorkedLength DepthOf(DesignDraft work, SkirtStock stock, Panel[] quarters)
    {
        double[] darts = [.. quarters.SelectMany(quarter => SkirtStock.TopOf(quarter).Darts).Select(dart => dart.LengthMm)];
        double room = Math.Min(darts.Length == 0 ? double.PositiveInfinity : darts.Min() - LeastBelowMm, 0.9 * quarters.Min(quarter => quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0].SegmentsRaw[0].LengthMm()));
        if (!work.IsGiven(Depth))
        {
            return WorkedLength.GivenMm("yoke depth", Math.Min(stock.Usually(4, 10), Math.Max(1, Math.Floor(0.75 * room / stock.Usually(0.125, 0.5))) * stock.Usually(0.125, 0.5)));
        }

        WorkedLength depth = work.Take(Depth);
        return depth.ValueMm <= room
            ? depth
            : throw work.Refusal(FormattableString.Invariant($"A yoke {depth.ValueMm:0} mm deep would end below a dart or below the hip curve: up to {room:0} mm all darts close inside it. Make it less deep, or draft longer darts."));
    }

    private static void Tell(DesignDraft work, Panel quarter, WorkedLength depth, YokeCut cut, double fullness)
    {
        string name = quarter.Name.Text;
        work.Sheet.Note("Fold the {0} darts closed, and draw the yoke line below the {0} waistline, parallel to it and square to centre and side: {1}. Cut along it.", name, depth);
        work.Sheet.Note("Trace the {0} yoke with its darts closed: one piece without darts. Its lower edge measures {1}.", name, WorkedLength.GivenMm(null, cut.LineMm));
        if (cut.LeftOverMm > 1)
        {
            work.Sheet.Note("What is left of the darts below the yoke, {0}, comes off the {1} side seam at the top. Draw the seam again down to the hip, and the top square to it, as long as the yoke.", WorkedLength.GivenMm(null, cut.LeftOverMm), name);
        }

        if (fullness > 1)
        {
            work.Sheet.Note("Move the {0} centre out by {1}, parallel: the top is gathered to the yoke.", name, WorkedLength.DrawnMm("yoke seam", cut.LineMm).Times(fullness - 1));
        }
    }

    private static void Promise(DesignDraft work, SkirtStock stock, double depthMm, double fullness, List<double> added)
    {
        PanelName[] lower = [PanelName.Back, PanelName.Front];
        PanelName[] yokes = [.. lower.Select(YokeOf)];
        (PanelName, int)[] tops = [.. yokes.Select(name => (name, work.TimesOf(name)))];
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, tops, stock.WaistMm));
        work.Check(SkirtPromises.Corners, list =>
        {
            SkirtPromises.SquareTop(list, yokes);
            SkirtPromises.SquareTop(list, lower);
            foreach (PanelName name in yokes)
            {
                Panel yoke = list.FindPanel(name);
                list.Length("yoke depth at the side", name.Text, yoke.FindEdge(EdgeName.SideSeam).SewnLengthMm(), depthMm);
                list.Length("yoke depth at the centre", name.Text, yoke.FindEdge(EdgeName.Centre).SewnLengthMm(), depthMm);
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
            double added2 = 2 * added.Sum();
            double least = stock.HipMm + added2;
            work.Check(SkirtPromises.Hip, list => list.LengthAtLeast("hip width all around", SkirtPromises.Block, lower.Sum(name => 2 * SkirtFlare.HipWidthMm(list.FindPanel(name))), least, CheckList.ToleranceMm));
        }
    }
}
