using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Blocks;
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
            work.Replace(SkirtFlare.SwingSide(SkirtFlare.Spread(closed, spreads), sideFlare.ValueMm));
            Tell(work, quarter, spreads);
        }

        ALineDesign.TellSides(work, sideFlare);
        SkirtStock.KeepLines(work);
        new FlaredQuarters(work, stock, quarters, 1, double.PositiveInfinity).Promise(work);
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
