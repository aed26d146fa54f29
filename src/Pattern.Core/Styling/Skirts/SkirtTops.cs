using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>The panels of a skirt that reach up to the waist, whatever design made them, and what finishes the waist.</summary>
internal static class SkirtTops
{
    /// <summary>What is done last: it follows the shape that the skirt has then.</summary>
    private static readonly string[] Finishes = [ContourBandDesign.BandName, FacedWaistDesign.FacedName, SeamPocketsDesign.PocketsName, SlantedPocketsDesign.PocketsName, ZipDesign.ZipName, LinedDesign.LinedName];

    /// <summary>The top of a contour band, once it is cut off: what lies at the waist of the body.</summary>
    internal static EdgeName Top { get; } = EdgeName.Of("top");

    /// <summary>All panels with a waist that is sewn as it is drawn, in their order from centre back to centre front.</summary>
    /// <exception cref="Diagnostics.ConstructionException">A panel is cut otherwise than it is sewn, or its waist goes on in an overlap.</exception>
    internal static Panel[] Of(DesignDraft work)
    {
        Panel[] tops = [.. work.Panels.Where(panel => panel.TryFindEdge(EdgeName.Waist, out _))];
        if (tops.Any(panel => panel.TryFindEdge(WrapDesign.OverlapWaist, out _)))
        {
            throw work.Refusal("It wraps, and its waist goes on in the overlap of the fronts. Make this design of the block first and wrap it then, or finish it with the straight waistband.");
        }

        return tops.All(panel => work.Source.FindPanelAsCut(panel.Name).EdgesRaw == panel.EdgesRaw)
            ? tops
            : throw work.Refusal("Its pieces are cut otherwise than they are sewn, as for pleats or a waist on the bias. Finish it with the straight waistband.");
    }

    /// <summary>The panels at the waist, none of them a yoke: that has the depth that was asked for.</summary>
    /// <exception cref="Diagnostics.ConstructionException">There is a yoke, or they are not sewn as they are cut.</exception>
    internal static Panel[] WithoutYoke(DesignDraft work)
    {
        Panel[] tops = Of(work);
        return tops.All(panel => !panel.TryFindEdge(HipYokeDesign.Seam, out _))
            ? tops
            : throw work.Refusal("It has a yoke, whose depth would not be what was asked for any more. Lower the waist first and cut the yoke then; a yoke needs no band, and a facing finishes its top.");
    }

    /// <summary>Puts a changed panel in its place; where it was folded, it still is.</summary>
    internal static void Replace(DesignDraft work, Panel panel)
    {
        (Drafting.LineName, CurvePath)[] folds = [.. work.Source.FindFolds(panel.Name).Select(fold => (fold.Name, fold.Path))];
        work.Replace(panel);
        if (folds.Length > 0)
        {
            work.CutAs(panel, folds);
        }
    }

    /// <summary>A piece of the waist, drawn clear above the skirt.</summary>
    internal static Panel Above(double highestMm, Panel panel)
    {
        const double ApartMm = 30;
        return panel.Transformed(Transform2D.Translation(new Vector2D(0, highestMm + ApartMm - panel.SeamOutline().Bounds.BottomMm)));
    }

    /// <summary>What the closed waist measures all around: at the top of a contour band, where there is one.</summary>
    internal static double ClosedWaistMm(IReadOnlyList<Panel> panels, Func<PanelName, int> timesOf)
    {
        EdgeName edge = panels.Any(ContourBandDesign.IsBand) ? Top : EdgeName.Waist;
        return panels.Where(panel => panel.TryFindEdge(edge, out _)).Sum(panel => timesOf(panel.Name) * panel.FindEdge(edge).SewnLengthMm());
    }

    /// <summary>The same measured on whatever panels a report has; one that was taken off another since, as the inner layer of a pocket, stands in the skirt twice.</summary>
    internal static Func<CheckList, double> ClosedWaistMm(DesignDraft work)
    {
        Dictionary<PanelName, int> times = work.Panels.ToDictionary(panel => panel.Name, panel => work.TimesOf(panel.Name));
        return list => ClosedWaistMm(list.PanelsRaw, name => times.TryGetValue(name, out int count) ? count : 2);
    }

    /// <summary>Whether the skirt is finished: nothing that changes the shape of the skirt comes after that.</summary>
    internal static bool IsFinished(Block block) => block.Designs.Any(design => Array.IndexOf(Finishes, design.Name) >= 0);

    /// <summary>Whether the waist lies lower than that of the body.</summary>
    internal static bool IsLowered(Block block) => block.Designs.Any(design => design.Name == LoweredWaistDesign.LoweredName);

    /// <summary>Refuses a design that draws its panels anew from the waist of the body.</summary>
    internal static void RefuseLowered(DesignDraft work)
    {
        if (IsLowered(work.Source))
        {
            throw work.Refusal("Its waist is lowered, and this design draws its panels anew from the natural waist. Leave the waist where it is, or draft a block for a body with the girth and the depths of that level.");
        }
    }

    /// <summary>The edges on either side of the waist of a panel that are sewn to each other as they are on the parts cut off it.</summary>
    internal static Seam[] SeamsOfParts(DesignDraft work, Func<PanelName, PanelName> part, Panel[] tops, string word)
    {
        EdgeOf[] beside = [.. tops.SelectMany(panel =>
        {
            int waist = panel.IndexOf(EdgeName.Waist);
            int count = panel.EdgesRaw.Length;
            return new[] { EdgeOf.Panel(panel.Name, panel.EdgesRaw[(waist + count - 1) % count].Name), EdgeOf.Panel(panel.Name, panel.EdgesRaw[(waist + 1) % count].Name) };
        })];
        EdgeOf Part(EdgeOf edge) => EdgeOf.Panel(part(edge.PanelName), edge.EdgeName);
        return [.. work.Seams.Seams
            .Where(seam => beside.Contains(seam.First) && beside.Contains(seam.Second))
            .Select(seam => (seam.IsToMirrorImage ? Seam.ToMirrorImage(Part(seam.First)) : Seam.Between(Part(seam.First), Part(seam.Second)).Running(seam.Run)).Named(word + " " + seam.Name))];
    }
}
