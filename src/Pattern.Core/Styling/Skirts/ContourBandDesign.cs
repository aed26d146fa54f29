using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The contour band: the top of the skirt cut off with its darts closed, so that it curves as the body does.</summary>
internal sealed class ContourBandDesign() : BlockDesign(BandName, "1", Width)
{
    internal const string BandName = "contour band";

    /// <summary>1 1/2 in (4 cm) by usage: a wider one stands off at its top when one sits.</summary>
    internal static readonly MethodSetting<Length> Width = MethodSetting.OfLength("band width", Length.FromInches(1.5), Length.FromInches(0.75), Length.FromInches(5)).InMetric(Length.FromCentimeters(4)).Printed();

    internal static readonly EdgeName Seam = EdgeName.Of("band seam");

    private static readonly Advice UnevenBand = Advice.Of(
        "The seam beside the band bends so much that a line square to it is not as far from the top everywhere.", "Make the band narrower, or draw its lower edge again over the joined band.");

    private const double LeastDartMm = 25;

    // Square to a seam that bends, the line is nearer to the top between its ends, or further from it: no more than 1/8 in, or a twelfth of a wide band, is let be.
    private const double SlackMm = 25.4 / 8;
    private const double SlackShare = 1.0 / 12;
    private const int Samples = 24;

    internal static PanelName BandOf(PanelName panel) => PanelName.Of(panel.Text + " band");

    /// <summary>Whether a panel is one of the band.</summary>
    internal static bool IsBand(Panel panel) => panel.TryFindEdge(Seam, out _);

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        WorkedLength width = work.Take(Width);
        Panel[] tops = SkirtTops.WithoutYoke(work);
        var seams = new List<Seam>();
        var bands = new List<(PanelName Name, int Times)>();
        var darts = new List<(PanelName Name, int Count)>();
        seams.AddRange(work.Seams.Seams);
        seams.AddRange(SkirtTops.SeamsOfParts(work, BandOf, tops, "band"));
        double highest = tops.Max(panel => panel.SeamOutline().Bounds.TopMm);
        foreach (Panel top in tops)
        {
            var strip = new EdgeStrip(top, EdgeName.Waist, width.ValueMm, closesAll: false, "cutting a contour band");
            if (strip.DartsBelow < top.FindEdge(EdgeName.Waist).Darts.Count || strip.ShortestDartMm < LeastDartMm)
            {
                double shortest = top.FindEdge(EdgeName.Waist).Darts.Min(dart => dart.LengthMm);
                throw work.Refusal(FormattableString.Invariant(
                    $"The band would be {width.ValueMm:0} mm wide, and the shortest dart of the {top.Name} is {shortest:0} mm long: less than {LeastDartMm:0} mm of it would be left below. Make the band at most {Math.Max(0, shortest - LeastDartMm - 1):0} mm wide, or draft longer darts."));
            }

            Panel band = SkirtTops.Above(highest, Renamed(strip.Strip(BandOf(top.Name), Seam)));
            Panel below = AsSeam(strip.Below());
            SkirtTops.Replace(work, below);
            work.Add(band, work.TimesOf(top.Name));
            seams.Add(Panels.Seam.Between(EdgeOf.Panel(band.Name, Seam), EdgeOf.Panel(below.Name, EdgeName.Waist)).Named(top.Name.Text + " band seam"));
            bands.Add((band.Name, work.TimesOf(top.Name)));
            darts.Add((below.Name, below.FindEdge(EdgeName.Waist).Darts.Count));
            Tell(work, top, width, strip);
        }

        work.Sheet.Note("Cut each band twice, once for the inside, and interface one of them.");
        work.Sheet.Because("A curved band stretches at its lower edge; the inner one faces it, and stay tape in the top seam holds the waist.");
        work.Sew(SeamPlan.Of([.. seams]));
        SkirtStock.KeepLines(work);
        Promise(work, stock, width.ValueMm, bands, darts);
    }

    // What was the waist of the body is the top of the band; what the band is sewn to is called the waist.
    private static Panel Renamed(Panel band) => new(
        band.Name,
        [.. band.EdgesRaw.Select(edge => edge.Name == EdgeName.Waist ? new PanelEdge(SkirtTops.Top, EdgeRole.Opening, edge.StretchesRaw[0]) : edge)],
        band.Features with { Notches = [.. band.Notches.Select(notch => notch.Edge == EdgeName.Waist ? new Notch(SkirtTops.Top, notch.Position, notch.FromStartMm, notch.Count) : notch)] });

    private static Panel AsSeam(Panel below) => new(
        below.Name,
        [.. below.EdgesRaw.Select(edge => edge.Name == EdgeName.Waist ? new PanelEdge(edge.Name, EdgeRole.Seam, edge.StretchesRaw, [.. edge.DartsRaw.Select(dart => dart.Shape)]) : edge)],
        below.Features);

    private static void Tell(DesignDraft work, Panel top, WorkedLength width, EdgeStrip strip)
    {
        string name = top.Name.Text;
        bool hasDarts = top.FindEdge(EdgeName.Waist).Darts.Count > 0;
        work.Sheet.Note(
            hasDarts
                ? "Fold the {0} darts closed, and draw the band line below the {0} waistline, parallel to it and square to the seams on either side: {1}. Cut along it."
                : "Draw the band line below the {0} waistline, parallel to it and square to the seams on either side: {1}. Cut along it.",
            name,
            width);
        work.Sheet.Note("Trace the {0} band: one curved piece without darts. Its lower edge measures {1}.", name, WorkedLength.GivenMm(null, strip.LineMm));
        if (hasDarts)
        {
            work.Sheet.Note("Open the {0} darts again below the line: their legs are equal, and shorter by the width of the band.", name);
        }
    }

    private static void Promise(DesignDraft work, SkirtStock stock, double widthMm, List<(PanelName Name, int Times)> bands, List<(PanelName Name, int Count)> darts)
    {
        double waistMm = stock.WaistMm;
        work.Check(SkirtPromises.Waist, list => list.Length("closed waist all around", SkirtPromises.Block, bands.Sum(band => band.Times * list.FindPanel(band.Name).FindEdge(SkirtTops.Top).SewnLengthMm()), waistMm));
        work.Check("band", list =>
        {
            foreach ((PanelName name, _) in bands)
            {
                (double least, double most) = Widths(list.FindPanel(name));
                double slack = Math.Max(SlackMm, SlackShare * widthMm);
                if (least < widthMm - slack)
                {
                    list.Advise(UnevenBand, "width of the band where it is narrowest", name.Text, SkirtStock.Mm(least), FindingRelation.AtLeast, SkirtStock.Mm(widthMm - slack));
                }

                if (most > widthMm + slack)
                {
                    list.Advise(UnevenBand, "width of the band where it is widest", name.Text, SkirtStock.Mm(most), FindingRelation.AtMost, SkirtStock.Mm(widthMm + slack));
                }

                SkirtPromises.SimpleOutline(list, list.FindPanel(name));
            }
        });
        if (darts.Any(one => one.Count > 0))
        {
            work.Check(SkirtPromises.Darts, list => darts.ForEach(one => SkirtPromises.DartsCanBeSewn(list, list.FindPanel(one.Name), one.Count)));
        }
    }

    // From places along the lower edge to the nearest of the upper one.
    private static (double Least, double Most) Widths(Panel band)
    {
        CurvePath top = band.FindEdge(SkirtTops.Top).StretchesRaw[0];
        CurvePath seam = band.FindEdge(Seam).StretchesRaw[0];
        double least = double.PositiveInfinity;
        double most = 0;
        for (int i = 0; i <= Samples; i++)
        {
            double wide = top.ClosestTo(seam.PointAtMm(seam.LengthMm * i / Samples)).DistanceMm;
            least = Math.Min(least, wide);
            most = Math.Max(most, wide);
        }

        return (least, most);
    }
}
