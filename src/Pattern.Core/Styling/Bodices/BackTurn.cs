using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What turning and easing the dart of the back have in common.</summary>
internal static class BackTurn
{
    internal static Dart DartOf(DesignDraft work, BodiceStock stock)
    {
        Dart[] darts = [.. stock.Back.Darts.Where(dart => dart.Name.Edge != EdgeName.Waist)];
        return darts.Length switch
        {
            1 => darts[0],
            0 => throw work.Refusal("Its back has no shoulder dart: it is eased. Draft the block with one."),
            _ => throw work.Refusal("Its shoulder dart is turned in part already. Begin with the block, and turn it once."),
        };
    }

    internal static Panel Turned(DesignDraft work, Panel back, Dart dart, EdgePlace to, double share)
    {
        try
        {
            return back.TransferPartOfDart(dart.Name, to, Ratio.FromDecimalFractions(share));
        }
        catch (ConstructionException refusal)
        {
            throw work.Refusal("The dart cannot be turned to that place: the way from its point there leaves the panel or crosses another dart, or it stands there already. Choose another place along the edge. " + refusal.Message);
        }
    }

    internal static Dart OpenedOn(Panel back, EdgePlace to, Point2D apex)
    {
        PanelEdge edge = back.FindEdge(to.Edge);
        return edge.Darts.Where(dart => dart.Apex.DistanceMm(apex) <= CheckList.ToleranceMm).OrderBy(dart => Math.Abs(edge.SewnPositionMm(dart.Number - 1) - to.ResolveMm(back))).First();
    }

    /// <summary>Puts the back in its place and promises what holds of it.</summary>
    internal static void Finish(DesignDraft work, BodiceStock stock, Panel back, SeamPlan seams)
    {
        work.Replace(new TurnedPanel(back, back, stock.DraftedBack));
        stock.PromiseAsDrafted(work);
        work.Sew(seams);
        BodiceStock.KeepLines(work);
    }
}
