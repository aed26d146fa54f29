using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>What pockets at the side of a skirt have in common.</summary>
internal static class SkirtPockets
{
    /// <summary>Back, front and the seam between their sides.</summary>
    /// <exception cref="Diagnostics.ConstructionException">There is no whole side seam, or there is a pocket in it.</exception>
    internal static (Panel Back, Panel Front, Seam Side) Sides(DesignDraft work)
    {
        if (work.Panels.Any(SeamPocketsDesign.IsPocket))
        {
            throw work.Refusal("It has pockets at the side already.");
        }

        if (work.Source.Designs.Any(design => design.Name == ZipDesign.ZipName && design.Settings[0].Text == ZipDesign.Side))
        {
            throw work.Refusal("The zip stands in the side seam, and the hand would meet it. Put the zip into the centre back.");
        }

        if (work.Panels.Any(panel => panel.TryFindEdge(WrapDesign.FrontEdge, out _)))
        {
            throw work.Refusal("It wraps, and pockets in fronts that lie over each other are not drawn. Leave the pockets out.");
        }

        if (work.Panels.Any(panel => panel.TryFindEdge(HipYokeDesign.Seam, out _)))
        {
            throw work.Refusal("It has a yoke, and its seam would run through the opening or the bag, four layers thick where the hand goes in. Leave the yoke out, or the pockets.");
        }

        EdgeOf back = EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam);
        EdgeOf front = EdgeOf.Panel(PanelName.Front, EdgeName.SideSeam);
        Seam? seam = work.Seams.Seams.FirstOrDefault(one => (one.First == back && one.Second == front) || (one.First == front && one.Second == back));
        bool isWhole = seam is not null && new[] { PanelName.Back, PanelName.Front }.All(name => work.FindPanel(name).TryFindEdge(EdgeName.Waist, out _) && work.FindPanel(name).TryFindEdge(EdgeName.Centre, out _)
            && work.Source.FindPanelAsCut(name).EdgesRaw == work.FindPanel(name).EdgesRaw && work.FindPanel(name).FindEdge(EdgeName.SideSeam).StretchesRaw.Length == 1);
        return isWhole && seam!.Walk([.. work.Panels]).Run == SeamRun.SameWay
            ? (work.FindPanel(PanelName.Back), work.FindPanel(PanelName.Front), seam)
            : throw work.Refusal("It has no side seam that runs from the waist down between back and front as they are cut. Pockets go into a block, an A-line, a flared skirt or a pencil.");
    }

    /// <summary>Refuses an opening that no hand passes.</summary>
    internal static void RefuseSmall(DesignDraft work, double openingMm)
    {
        if (openingMm < SeamPocketsDesign.LeastOpeningMm)
        {
            throw work.Refusal(FormattableString.Invariant($"The opening would be {openingMm:0} mm long, and a hand does not pass through less than {SeamPocketsDesign.LeastOpeningMm:0} mm; 150 to 170 mm are usual. Make it longer."));
        }
    }

    /// <summary>A panel with its side notched at both ends of an opening.</summary>
    internal static Panel WithNotches(Panel panel, params double[] atMm)
    {
        CurvePath side = panel.FindEdge(EdgeName.SideSeam).StretchesRaw[0];
        return panel.WithMoreNotches([.. atMm.Select(mm => new Notch(EdgeName.SideSeam, side.PointAtMm(mm), mm, 1))]);
    }

    /// <summary>The plan with a side seam sewn above and below an opening only.</summary>
    internal static SeamPlan Opened(SeamPlan plan, Seam side, double fromMm, double toMm)
    {
        SeamMark from = SeamMark.At(SkirtStock.Mm(fromMm));
        SeamMark to = SeamMark.At(SkirtStock.Mm(toMm));
        Seam Part(string name, SeamMark start, SeamMark end) => Seam.Between(side.First, side.Second).Running(SeamRun.SameWay).OverFirst(start, end).OverSecond(start, end).Named(name);
        return SeamPlan.Of([.. plan.Seams.SelectMany(seam => seam != side ? [seam] : new[] { Part(side.Name + " above the pocket", SeamMark.Start, from), Part(side.Name + " below the pocket", to, SeamMark.End) })]);
    }
}
