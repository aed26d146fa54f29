using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>A waist without a band: faced by the top of the skirt, traced with its darts closed.</summary>
internal sealed class FacedWaistDesign() : BlockDesign(FacedName, "1", Depth)
{
    internal const string FacedName = "faced waist";

    /// <summary>5 to 6 cm by usage, so that it does not roll out: 2 in (5 cm).</summary>
    internal static readonly MethodSetting<Length> Depth = MethodSetting.OfLength("facing depth", Length.FromInches(2), Length.FromInches(1), Length.FromInches(5)).InMetric(Length.FromCentimeters(5)).Printed();

    internal static readonly EdgeName Faced = EdgeName.Of("facing top");
    internal static readonly EdgeName Free = EdgeName.Of("free edge");

    internal static PanelName FacingOf(PanelName panel) => PanelName.Of(panel.Text + " facing");

    /// <summary>Whether a panel is a facing of a waist.</summary>
    internal static bool IsFacing(Panel panel) => panel.TryFindEdge(Faced, out _);

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        WorkedLength depth = work.Take(Depth);
        Panel[] tops = SkirtTops.Of(work);
        double highest = tops.Max(panel => panel.SeamOutline().Bounds.TopMm);
        var seams = new List<Seam>(work.Seams.Seams);
        seams.AddRange(SkirtTops.SeamsOfParts(work, FacingOf, tops, "facing").Where(seam => !seam.IsToMirrorImage));
        (PanelName, int)[] targets = [.. tops.Select(panel => (panel.Name, work.TimesOf(panel.Name)))];
        foreach (Panel top in tops)
        {
            Panel strip = new EdgeStrip(top, EdgeName.Waist, depth.ValueMm, closesAll: true, "cutting a facing").Strip(FacingOf(top.Name), Free);
            Panel facing = SkirtTops.Above(highest, Renamed(work, top, strip));
            work.Add(facing, work.TimesOf(top.Name));
            SkirtTops.Replace(work, AsSeam(top));
            seams.Add(Seam.Between(EdgeOf.Panel(facing.Name, Faced), EdgeOf.Panel(top.Name, EdgeName.Waist)).Running(SeamRun.SameWay).Named(top.Name.Text + " facing seam"));
            work.Sheet.Note("Fold the {0} darts closed, and trace the top of it as a facing, as deep everywhere: {1}.", top.Name.Text, depth);
        }

        work.Sheet.Note("Interface the facings, sew their side seams, and sew them to the waist with stay tape in the seam. Understitch, and catch the free edge to the seam allowances.");
        work.Sheet.Because("Without a band nothing else keeps the waist from stretching, and the facing from rolling out.");
        work.Sew(SeamPlan.Of([.. seams]));
        SkirtStock.KeepLines(work);
        double waistMm = stock.WaistMm;
        work.Check(SkirtPromises.Waist, list => SkirtPromises.ClosedWaist(list, targets, waistMm));
    }

    // A centre that is sewn to its mirror image on the skirt is turned in on the facing, and sewn to the tape of the zip; one that lies on the fold does so here.
    private static Panel Renamed(DesignDraft work, Panel top, Panel strip) => new(
        strip.Name,
        [.. strip.EdgesRaw.Select(edge => edge.Name == EdgeName.Waist ? new PanelEdge(Faced, EdgeRole.Seam, edge.StretchesRaw[0])
            : edge.Name == Free ? new PanelEdge(Free, EdgeRole.Opening, edge.StretchesRaw[0])
            : edge.Role == EdgeRole.Centre && work.Seams.SeamsOf(EdgeOf.Panel(top.Name, edge.Name)).Any() ? new PanelEdge(edge.Name, EdgeRole.Seam, edge.StretchesRaw[0])
            : edge)],
        strip.Features with { Notches = [] });

    private static Panel AsSeam(Panel top) => new(
        top.Name,
        [.. top.EdgesRaw.Select(edge => edge.Name == EdgeName.Waist ? new PanelEdge(edge.Name, EdgeRole.Seam, edge.StretchesRaw, [.. edge.DartsRaw.Select(dart => dart.Shape)]) : edge)],
        top.Features);
}
