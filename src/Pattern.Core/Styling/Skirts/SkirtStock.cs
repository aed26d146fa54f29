using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>What every design of a skirt starts from: the block's targets and levels, and the usual figures of the body's tape.</summary>
internal sealed class SkirtStock
{
    private readonly SkirtDraft _hand;

    private SkirtStock(SkirtDraft hand) => _hand = hand;

    /// <summary>What the closed waist measures all around.</summary>
    internal double WaistMm => _hand.WaistTargetMm;

    /// <summary>What the hip measures all around, ease included.</summary>
    internal double HipMm => _hand.HipTargetMm;

    /// <summary>Straight down from the waist level.</summary>
    internal double LengthMm => _hand.Options.LengthMm;

    internal SkirtLevels Levels => _hand.Depths.Levels;

    internal bool IsMetric => _hand.Customs.IsMetric;

    /// <summary>Reads the block.</summary>
    /// <exception cref="Diagnostics.ConstructionException">It is no skirt.</exception>
    internal static SkirtStock Of(DesignDraft work) => work.Source.Record.Own is SkirtDraft hand
        ? new SkirtStock(hand)
        : throw work.Refusal("It is a design of a skirt. Draft a skirt block with this library, and begin with that.");

    /// <summary>The usual figure, round on the body's tape.</summary>
    internal double Usually(double inches, double centimetres) => IsMetric ? centimetres * 10 : inches * 25.4;

    /// <summary>Refuses a block whose panels are not those that a design is made of, as after another design.</summary>
    /// <exception cref="Diagnostics.ConstructionException">A panel or an edge is missing.</exception>
    internal static Panel Quarter(DesignDraft work, PanelName name)
    {
        Panel? panel = work.Panels.FirstOrDefault(one => one.Name == name);
        bool isQuarter = panel is not null
            && new[] { EdgeName.Waist, EdgeName.SideSeam, EdgeName.Hem, EdgeName.Centre }.All(edge => panel.TryFindEdge(edge, out _));
        return isQuarter ? panel! : throw work.Refusal($"It needs a {name} with waist, side, hem and centre; another design has cut that apart or drawn it anew. Make this design first.");
    }

    internal static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    internal static Angle Rad(double radians) => Angle.FromRadians(radians);

    internal static double SquareRad => Math.PI / 2;
}
