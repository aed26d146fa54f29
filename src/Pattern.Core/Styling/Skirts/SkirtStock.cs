using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What every design of a skirt starts from: the block's targets and levels, and the usual figures of the body's tape.</summary>
internal sealed class SkirtStock
{
    private readonly SkirtDraft _hand;

    private SkirtStock(SkirtDraft hand, double waistMm)
    {
        _hand = hand;
        WaistMm = waistMm;
    }

    /// <summary>What the closed waist measures all around: that of the body with its ease, or of the level that it was lowered to.</summary>
    internal double WaistMm { get; }

    /// <summary>What the hip measures all around, ease included.</summary>
    internal double HipMm => _hand.HipTargetMm;

    /// <summary>Straight down from the waist level.</summary>
    internal double LengthMm => _hand.Options.LengthMm;

    internal SkirtLevels Levels => _hand.Depths.Levels;

    internal bool IsMetric => _hand.Customs.IsMetric;

    /// <summary>Reads the block.</summary>
    /// <exception cref="Diagnostics.ConstructionException">It is no skirt.</exception>
    internal static SkirtStock Of(DesignDraft work) => SkirtTops.IsFinished(work.Source)
        ? throw work.Refusal("What is on it already is cut to the shape that it has: a band, a facing, pockets, a zip or a lining. Make this design first, and finish the skirt then.")
        : OfFinished(work);

    /// <summary>Reads the block for a design that changes its shape no more, whatever is on it.</summary>
    /// <exception cref="Diagnostics.ConstructionException">It is no skirt.</exception>
    internal static SkirtStock OfFinished(DesignDraft work)
    {
        SkirtDraft hand = work.Source.Record.Own as SkirtDraft
            ?? throw work.Refusal("It is a design of a skirt. Draft a skirt block with this library, and begin with that.");
        return new SkirtStock(hand, SkirtTops.IsLowered(work.Source) ? SkirtTops.ClosedWaistMm(work.Source.PanelsRaw, work.Source.TimesOf) : hand.WaistTargetMm);
    }

    /// <summary>The usual figure, round on the body's tape.</summary>
    internal double Usually(double inches, double centimetres) => IsMetric ? centimetres * 10 : inches * 25.4;

    /// <summary>Refuses a block that was designed already, for a design that draws all panels anew: what was designed would be lost without a word.</summary>
    internal static void RefuseDesigned(DesignDraft work)
    {
        if (work.Source.Designs.Count > 0)
        {
            throw work.Refusal("It draws its panels anew from the measures of the block, and what was designed so far would be lost. Begin with the block as drafted.");
        }
    }

    /// <summary>Back and front as a block has them: a top, a side, a hem and a centre each.</summary>
    /// <exception cref="Diagnostics.ConstructionException">Another design has cut one apart or drawn it anew.</exception>
    internal static Panel[] Quarters(DesignDraft work) => [Quarter(work, PanelName.Back), Quarter(work, PanelName.Front)];

    /// <summary>Back and front that hang straight, or flared, below the hip.</summary>
    /// <exception cref="Diagnostics.ConstructionException">They come in below the hip, or there are none.</exception>
    internal static Panel[] StraightQuarters(DesignDraft work)
    {
        Panel[] quarters = Quarters(work);
        return quarters.All(SkirtFlare.HangsStraight)
            ? quarters
            : throw work.Refusal("Its side or hem comes in below the hip, and this design needs a skirt that hangs straight or flares there. Draft the block straight: without a hem that comes in.");
    }

    /// <summary>The edge at the top of a quarter: its waist, or the seam to a yoke. It begins where the centre ends.</summary>
    internal static PanelEdge TopOf(Panel panel)
    {
        int centre = panel.IndexOf(EdgeName.Centre);
        return panel.EdgesRaw[(centre + 1) % panel.EdgesRaw.Length];
    }

    /// <summary>Whether an edge is one straight line, and so can lie on the fold.</summary>
    internal static bool IsStraight(PanelEdge edge) => edge.StretchesRaw is [{ SegmentsRaw: [{ Kind: PathSegmentKind.Line }] }];

    /// <summary>Shows the levels and the frame of the block further on, for a design that leaves the centres where they are.</summary>
    internal static void KeepLines(DesignDraft work)
    {
        foreach (BlockLine line in work.Source.Trued.Lines.Where(line => line.Role is ConstructionRole.Level or ConstructionRole.Frame))
        {
            work.Show(line.Name, line.Path);
        }
    }

    private static Panel Quarter(DesignDraft work, PanelName name)
    {
        Panel? panel = work.Panels.FirstOrDefault(one => one.Name == name);
        bool isQuarter = panel is not null && panel.Edges.Count == 4 && new[] { EdgeName.SideSeam, EdgeName.Hem, EdgeName.Centre }.All(edge => panel.TryFindEdge(edge, out _));
        if (isQuarter && work.Source.FoldsOf(name).Count > 0)
        {
            throw work.Refusal($"Its {name} is pleated, and what changes a pleated panel would change the cloth under it unseen. Make this design first, the pleats last.");
        }

        return isQuarter ? panel! : throw work.Refusal($"It needs a {name} with a top, a side, a hem and a centre; another design has cut that apart or drawn it anew. Make this design first.");
    }

    internal static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    internal static Angle Rad(double radians) => Angle.FromRadians(radians);

    internal static double SquareRad => Math.PI / 2;
}
