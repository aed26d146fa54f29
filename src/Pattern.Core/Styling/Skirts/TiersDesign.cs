using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Tiers: the block down to the hip, and strips below it, each gathered to the one above and deeper than it.</summary>
internal sealed class TiersDesign() : BlockDesign("tiers", "1", Count, Fullness, First)
{
    /// <summary>Three by usage, the fitted one counted.</summary>
    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("tiers", 3, 2, 8).Printed();

    /// <summary>1.5 for light gathers, 2 for the usual ones, up to 3 in sheer cloth; tiers multiply, so the light ones by usage.</summary>
    internal static readonly MethodSetting<Ratio> Fullness = MethodSetting.OfShare("fullness of a tier", Ratio.FromPercent(150), Ratio.FromPercent(110), Ratio.FromPercent(300)).Printed();

    /// <summary>Where nobody says, down to the hip: waist and hip fit as in the block, and the hip passes.</summary>
    internal static readonly MethodSetting<Length> First = MethodSetting.OfLength("first tier", null, Length.FromInches(4), Length.FromInches(20));

    internal static readonly EdgeName Lower = EdgeName.Of("lower edge");
    internal static readonly EdgeName Gathered = EdgeName.Of("gathered edge");

    private const double GapMm = 40;

    // Common practice, no source: depths of tiers grow as 1 : 1.3 : 1.6 and so on.
    private const double GrowsBy = 0.3;

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        if (quarters.Any(quarter => quarter.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw is not [{ Kind: PathSegmentKind.Line }] || SkirtStock.TopOf(quarter).Name != EdgeName.Waist))
        {
            throw work.Refusal("It has a yoke or flares, and tiers hang from the block as drafted. Begin with that.");
        }

        int count = work.Take(Count);
        double fullness = work.Take(Fullness).DecimalFractions;
        double hipMm = -quarters.Min(quarter => SkirtFlare.FootOf(quarter).YMm);
        double firstMm = work.IsGiven(First) ? work.Take(First).ValueMm : hipMm;
        double lowestMm = quarters.SelectMany(quarter => SkirtStock.TopOf(quarter).Darts).Select(dart => -dart.Apex.YMm).Append(hipMm).Max();
        double[] depths = Depths(stock.LengthMm - firstMm, count - 1);
        if (firstMm < lowestMm - CheckList.ToleranceMm || depths.Any(depth => depth < GapMm))
        {
            throw work.Refusal(FormattableString.Invariant(
                $"The first tier would be {firstMm:0} mm deep and {count - 1} more share {stock.LengthMm - firstMm:0} mm. It reaches at least to hip and dart ends, {lowestMm:0} mm, and no tier is less than {GapMm:0} mm deep. Take fewer tiers, or a longer skirt."));
        }

        var seams = new List<Seam>();
        var names = new List<PanelName[]>();
        foreach (Panel quarter in quarters)
        {
            Panel first = Cut(quarter, firstMm);
            work.Replace(first);
            names.Add(AddTiers(work, quarter, first, depths, fullness, firstMm, seams));
        }

        seams.Insert(0, Seam.Between(EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam), EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam)).Named("side seam"));
        seams.Insert(1, SkirtSeams.CentreBack);
        for (int i = 0; i < depths.Length; i++)
        {
            seams.Add(Seam.Between(EdgeOf.Panel(names[0][i], EdgeName.SideSeam), EdgeOf.Panel(names[1][i], EdgeName.SideSeam)).Named(FormattableString.Invariant($"side seam of tier {i + 2}")));
        }

        work.Sew(SeamPlan.Of([.. seams]));
        Tell(work, firstMm, depths, fullness);
        Promise(work, stock, names, depths, firstMm);
    }

    private static double[] Depths(double leftMm, int count)
    {
        double[] parts = [.. Enumerable.Range(1, count).Select(i => 1 + (GrowsBy * i))];
        return [.. parts.Select(part => leftMm * part / parts.Sum())];
    }

    // Level, below the hip curve: side and centre hang straight there.
    private static Panel Cut(Panel quarter, double firstMm)
    {
        CurvePath side = quarter.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        CurvePath centre = quarter.FindEdge(EdgeName.Centre).StretchesRaw[0];
        double belowSide = side.End.YMm + firstMm;
        double belowCentre = centre.Start.YMm + firstMm;
        CurvePath newSide = side.SubPathMm(0, side.LengthMm + belowSide);
        CurvePath newCentre = centre.SubPathMm(-belowCentre, centre.LengthMm);
        PanelEdge[] edges =
        [
            SkirtStock.TopOf(quarter),
            new PanelEdge(EdgeName.SideSeam, EdgeRole.Seam, newSide),
            new PanelEdge(Lower, EdgeRole.Seam, CurvePath.FromLine(new LineSegment(newSide.End, newCentre.Start))),
            new PanelEdge(EdgeName.Centre, EdgeRole.Centre, newCentre),
        ];
        return PanelBuilder.Finish(
            quarter.Name,
            edges,
            edges.SelectMany(edge => edge.Stretches).SelectMany(stretch => stretch.Segments),
            [.. quarter.Notches.Where(notch => notch.FromStartMm < newSide.LengthMm - CheckList.ToleranceMm)],
            [.. quarter.Landmarks.Where(landmark => landmark.Position.YMm > -firstMm)],
            new LineSegment(
                new Point2D(quarter.Grainline.Start.XMm, Math.Max(newSide.Start.YMm, newCentre.End.YMm) - (0.75 * firstMm)),
                new Point2D(quarter.Grainline.Start.XMm, (-0.95 * firstMm))));
    }

    private static PanelName[] AddTiers(DesignDraft work, Panel quarter, Panel first, double[] depths, double fullness, double firstMm, List<Seam> seams)
    {
        double hand = SkirtStock.TopOf(quarter).StretchesRaw[0].StartDirection.X > 0 ? 1 : -1;
        double centre = first.FindEdge(EdgeName.Centre).Start.XMm;
        double width = first.FindEdge(Lower).SewnLengthMm();
        double top = -firstMm;
        EdgeOf above = EdgeOf.Panel(first.Name, Lower);
        var names = new PanelName[depths.Length];
        for (int i = 0; i < depths.Length; i++)
        {
            bool isLast = i == depths.Length - 1;
            double ease = width * (fullness - 1);
            width *= fullness;
            top -= GapMm;
            double bottom = top - depths[i];
            double side = centre + (hand * width);
            names[i] = PanelName.Of(FormattableString.Invariant($"{quarter.Name} tier {i + 2}"));
            EdgeName lower = isLast ? EdgeName.Hem : Lower;
            Panel tier = Panel.Named(names[i])
                .WithEdge(Gathered, EdgeRole.Seam, Line(centre, top, side, top))
                .WithEdge(EdgeName.SideSeam, EdgeRole.Seam, Line(side, top, side, bottom))
                .WithEdge(lower, isLast ? EdgeRole.Hem : EdgeRole.Seam, Line(side, bottom, centre, bottom))
                .WithEdge(EdgeName.Centre, EdgeRole.Centre, Line(centre, bottom, centre, top))
                .Make();
            work.Add(tier, 2);
            seams.Add(Seam.Between(EdgeOf.Panel(tier.Name, Gathered), above).Running(SeamRun.Opposite).Named(tier.Name.Text + " seam").WithEase(Length.FromMillimeters(ease)));
            above = EdgeOf.Panel(tier.Name, lower);
            top = bottom;
        }

        return names;
    }

    private static CurvePath Line(double x0, double y0, double x1, double y1) => CurvePath.FromLine(new LineSegment(new Point2D(x0, y0), new Point2D(x1, y1)));

    private static void Tell(DesignDraft work, double firstMm, double[] depths, double fullness)
    {
        work.Remark("Half of the skirt, tier by tier: backs to the left, fronts to the right.");
        work.Sheet.Note("Cut back and front level, {0} below the waist level: the first tier.", WorkedLength.GivenMm(null, firstMm));
        for (int i = 0; i < depths.Length; i++)
        {
            work.Sheet.Note("Tier {0}: a strip {1} deep, as long as the lower edge above it times {2}; gather it to that.", i + 2, WorkedLength.GivenMm(null, depths[i]), fullness.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture));
        }

        work.Sheet.Because("Tiers grow deeper downward as 1 : 1.3 : 1.6, so that they seem equal.");
    }

    private static void Promise(DesignDraft work, SkirtStock stock, List<PanelName[]> names, double[] depths, double firstMm)
    {
        PanelName[] tops = [PanelName.Back, PanelName.Front];
        work.Check(SkirtPromises.Hip, list => list.Length("hip width all around", SkirtPromises.Block, 2 * tops.Sum(name => list.FindPanel(name).FindEdge(Lower).SewnLengthMm()), stock.HipMm));
        work.Check(SkirtPromises.Hem, list =>
        {
            for (int half = 0; half < names.Count; half++)
            {
                double deep = firstMm;
                foreach (PanelName name in names[half])
                {
                    Panel tier = list.FindPanel(name);
                    double side = tier.FindEdge(EdgeName.SideSeam).SewnLengthMm();
                    list.Length("side less centre of a tier", name.Text, side - tier.FindEdge(EdgeName.Centre).SewnLengthMm(), 0);
                    deep += side;
                }

                list.Length("length of all tiers", tops[half].Text, deep, stock.LengthMm);
                SkirtPromises.HemOfQuarter(list, list.FindPanel(names[half][depths.Length - 1]));
            }

            SkirtPromises.HemJoined(list, list.FindPanel(names[0][depths.Length - 1]), list.FindPanel(names[1][depths.Length - 1]), EdgeName.SideSeam);
        });
        work.Check(SkirtPromises.Outline, list =>
        {
            foreach (Panel panel in list.Panels)
            {
                SkirtPromises.SimpleOutline(list, panel);
            }
        });
    }
}
