using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The flared skirt: all darts closed into flare, more by slashing and spreading from the waist, the side seams swung out, the hem level.</summary>
internal sealed class FlaredDesign() : BlockDesign("flared", "1", Places, Spread, Weight, SideFlare)
{
    internal const string Even = "even";
    internal const string TowardSide = "toward the side";
    internal const string TowardCentre = "toward the centre";

    /// <summary>Three by usage: so many folds fall in a quarter of a skirt that swings.</summary>
    internal static readonly MethodSetting<int> Places = MethodSetting.OfCount("slashes in a quarter", 3, 0, 12);

    /// <summary>All around, with the darts, about twice the hip.</summary>
    internal static readonly MethodSetting<Length> Spread = MethodSetting.OfLength("spread of a slash", Length.FromInches(2), Length.Zero, Length.FromInches(12)).InMetric(Length.FromCentimeters(5));

    /// <summary>Evenly by usage: then the folds fall all around.</summary>
    internal static readonly MethodSetting<string> Weight = MethodSetting.OfChoice("spread falls", Even, Even, TowardSide, TowardCentre);

    /// <summary>Where nobody says, half of what one slash opens by, front and back each: together they open the side by as much as a slash.</summary>
    internal static readonly MethodSetting<Length> SideFlare = MethodSetting.OfLength("side flare", null, Length.Zero, Length.FromInches(8));

    protected override void Style(DesignDraft work)
    {
        SkirtStock stock = SkirtStock.Of(work);
        Panel[] quarters = SkirtStock.StraightQuarters(work);
        int places = work.Take(Places);
        WorkedLength spread = work.Take(Spread);
        double[] weights = Weights(places, work.Take(Weight));
        double[] spreads = [.. weights.Select(weight => weight * spread.ValueMm)];
        WorkedLength sideFlare = work.IsGiven(SideFlare) ? work.Take(SideFlare) : spread.Half().Named("side flare");
        foreach (Panel quarter in quarters)
        {
            var opened = new List<(DartName Dart, double OpeningMm)>();
            Panel closed = SkirtFlare.CloseDarts(quarter, 1, opened);
            ALineDesign.Tell(work, quarter, 1, opened);
            Panel spreadOut = SkirtFlare.Spread(closed, spreads);
            RefuseCircle(work, spreadOut);
            Panel flared = SkirtFlare.SwingSide(spreadOut, sideFlare.ValueMm);
            RefuseBentTop(work, flared);
            work.Replace(flared);
            Tell(work, quarter, spreads);
        }

        ALineDesign.TellSides(work, sideFlare);
        SkirtStock.KeepLines(work);
        new FlaredQuarters(work, stock, quarters, 1, double.PositiveInfinity).Promise(work);
    }

    // A quarter of a full circle turns by 90 degrees.
    private static void RefuseCircle(DesignDraft work, Panel quarter)
    {
        const double MostDegrees = 75;
        double degrees = quarter.FindEdge(EdgeName.Hem).StretchesRaw[0].SegmentsRaw.Sum(segment => Math.Abs(segment.TurningRad)) * 180 / Math.PI;
        if (degrees > MostDegrees)
        {
            throw work.Refusal(FormattableString.Invariant($"A quarter of it would fan out by {degrees:0} degrees; up to {MostDegrees:0} a block can be slashed. Spread less, or take a circle."));
        }
    }

    // Trued in one sweep the top bends evenly, unless it has to turn too far on its length.
    private static void RefuseBentTop(DesignDraft work, Panel quarter)
    {
        const int Parts = 32;
        const double MostDegrees = 12;
        PathSegment top = SkirtStock.TopOf(quarter).StretchesRaw[0].SegmentsRaw[0];
        double sharpest = Enumerable.Range(0, Parts).Max(i => Math.Abs(top.DirectionAtRaw((double)i / Parts).TurnRadTo(top.DirectionAtRaw((i + 1.0) / Parts)))) * 180 / Math.PI;
        if (sharpest > MostDegrees)
        {
            throw work.Refusal(FormattableString.Invariant($"So much flare on so short a waistline would bend it by {sharpest:0} degrees in one place; an even one turns no more than {MostDegrees:0} there. Spread less, or take a circle."));
        }
    }

    // The mean is one, so that the whole is as much as with an even spread.
    private static double[] Weights(int places, string falls) => [.. Enumerable.Range(1, places).Select(place => falls switch
    {
        TowardSide => 2.0 * place / (places + 1),
        TowardCentre => 2.0 * (places + 1 - place) / (places + 1),
        _ => 1,
    })];

    private static void Tell(DesignDraft work, Panel quarter, double[] spreads)
    {
        if (spreads.Length == 0)
        {
            return;
        }

        work.Sheet.Note("Divide the closed {0} waistline into {1} equal parts. From the middle of each slash the {0} down to the hem, square to the hem, up to but not through the waistline.", quarter.Name.Text, spreads.Length);
        for (int i = 0; i < spreads.Length; i++)
        {
            work.Sheet.Note("Spread slash {0} of the {1}, counted from the centre, at the hem by {2}; put paper beneath it and draw the hem across as an arc about the top of the slash.", i + 1, quarter.Name.Text, WorkedLength.GivenMm(null, spreads[i]));
        }
    }
}
