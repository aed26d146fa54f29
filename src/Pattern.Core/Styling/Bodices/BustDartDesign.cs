using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>A dart of the front turned about the bust point to another edge, wholly or in part.</summary>
/// <remarks>Its angle at the bust point stays; how wide it is goes with the length of its legs (common practice, no source: the pivot).</remarks>
internal sealed class BustDartDesign() : BlockDesign("dart turned", "1", From, To, Share, Along, StandsOff)
{
    internal const string BustDart = "bust dart";
    internal const string WaistDart = "waist dart";

    internal static readonly MethodSetting<string> From = MethodSetting.OfChoice("dart", BustDart, BustDart, WaistDart).Printed();

    /// <summary>The shoulder by usage: there the dart is hidden best.</summary>
    internal static readonly MethodSetting<string> To = MethodSetting.OfChoice("turned to", "shoulder", "shoulder", "neckline", "armhole", "side", "waist", "centre front").Printed();

    /// <summary>All of it by usage.</summary>
    internal static readonly MethodSetting<Ratio> Share = MethodSetting.OfShare("share of the dart", Ratio.FromPercent(100), Ratio.FromPercent(1), Ratio.FromPercent(100));

    /// <summary>Where nobody says, the usual place of the edge.</summary>
    internal static readonly MethodSetting<Ratio> Along = MethodSetting.OfShare("along the edge", null, Ratio.FromPercent(1), Ratio.FromPercent(99));

    /// <summary>Where nobody says, as the darts of the block do.</summary>
    internal static readonly MethodSetting<Length> StandsOff = MethodSetting.OfLength("stands off", null, Length.Zero, Length.FromInches(4));

    internal static string Word(BustDartPlace place) => To.Choices[Guard.Choice((int)place, 6, nameof(place))];

    internal static EdgeName EdgeOf(string word) => word switch
    {
        "shoulder" => EdgeName.Shoulder,
        "neckline" => EdgeName.Neckline,
        "armhole" => EdgeName.Armhole,
        "side" => EdgeName.SideSeam,
        "waist" => EdgeName.Waist,
        _ => EdgeName.Centre,
    };

    protected override void Style(DesignDraft work)
    {
        BodiceStock stock = BodiceStock.Of(work);
        bool fromWaist = work.Take(From) == WaistDart;
        EdgeName to = EdgeOf(work.Take(To));
        double share = work.Take(Share).DecimalFractions;
        Panel full = stock.FullFront;
        Dart[] darts = [.. stock.AtBustPoint(full).Where(dart => (dart.Name.Edge == EdgeName.Waist) == fromWaist && (dart.Name.Edge != to || work.IsGiven(Along)))];
        Refuse(work, stock, darts, fromWaist, to, share);

        double wasRad = stock.AtBustPoint(full).Where(dart => dart.Name.Edge == to).Sum(dart => dart.AngleRad);
        EdgePlace place = PlaceOn(work, stock, full, to);
        double at = place.ResolveMm(full);
        Tell(work, full, darts, to, at, share);
        for (int i = darts.Length - 1; i >= 0; i--)
        {
            full = Turn(work, full, darts[i].Name, place, Ratio.FromDecimalFractions(share), KeptEdge(full, darts[i].Name.Edge, to));
        }

        double offMm = work.IsGiven(StandsOff)
            ? work.Take(StandsOff).ValueMm
            : stock.StandsOffMm(to) ?? stock.Hand.StandsOff(to == EdgeName.Waist).ValueMm;
        double OffMm(EdgeName edge) => edge == to ? offMm : stock.StandsOffMm(edge) ?? stock.Hand.StandsOff(edge == EdgeName.Waist).ValueMm;
        Dart opened = stock.AtBustPoint(full).Where(dart => dart.Name.Edge == to).OrderBy(dart => Math.Abs(full.FindEdge(to).SewnPositionMm(dart.Number - 1) - at)).First();
        work.Sheet.Note(
            wasRad > 0 ? "The dart at the {0} is wider by that: now {1}, measured straight from leg to leg." : "It opens at the {0} by {1}, measured straight from leg to leg.",
            to.Text, WorkedLength.GivenMm("intake", opened.IntakeMm));
        work.Sheet.Note("Its legs go to the bust point for turning; for sewing it ends before that: {0}.", WorkedLength.GivenMm("stands off", offMm));
        work.Sheet.Because("Sewn up to the bust point it would poke; the cloth before it takes the rest.");
        new FrontTurn(work, stock).Finish(full, OffMm);
        if (to == EdgeName.Centre)
        {
            work.Remark("The centre front is a seam: it cannot lie on the fold.");
        }
    }

    private static void Refuse(DesignDraft work, BodiceStock stock, Dart[] darts, bool fromWaist, EdgeName to, double share)
    {
        if (fromWaist && to == EdgeName.Waist && !work.IsGiven(Along))
        {
            throw work.Refusal("The waist dart stands on the waist already. Say where along the waist it is to stand.");
        }

        if (darts.Length == 0)
        {
            throw work.Refusal(
                stock.AtBustPoint(stock.FullFront).Any(dart => dart.Name.Edge == to) ? "The dart stands there already. Say where along the edge it is to stand."
                : fromWaist ? "Its front has no waist dart that points at the bust point."
                : "Its front has no bust dart: it is hardly longer than the back. Measure the length from side neck to waist over the bust.");
        }

        if (share < 1 && darts.Length > 1)
        {
            throw work.Refusal("Several darts point at the bust point there. Turn all of them, or make one of them first.");
        }
    }

    internal static Panel Turn(DesignDraft work, Panel full, DartName dart, EdgePlace to, Ratio share, EdgeName? keep)
    {
        try
        {
            return full.TransferPartOfDart(dart, to, share, keep);
        }
        catch (ConstructionException refusal) when (refusal.Code is DiagnosticCode.CutCrossesDart or DiagnosticCode.CutLeavesPanel or DiagnosticCode.OutlineWouldCross or DiagnosticCode.TransferOntoItself)
        {
            throw work.Refusal("The dart cannot be turned to that place: the way from the bust point there leaves the panel or crosses another dart. Choose another place along the edge. " + refusal.Message);
        }
    }

    private static EdgePlace PlaceOn(DesignDraft work, BodiceStock stock, Panel full, EdgeName to)
    {
        if (work.IsGiven(Along))
        {
            return to.At(work.Take(Along));
        }

        // Onto a dart that points at the bust point already, or that did before it was turned away.
        foreach (Panel panel in new[] { full, stock.DraftedFront })
        {
            Dart? there = stock.AtBustPoint(panel).FirstOrDefault(dart => dart.Name.Edge == to)
                ?? panel.FindEdge(to).Darts.FirstOrDefault(dart => panel == stock.DraftedFront && to == EdgeName.SideSeam && dart.Number == 1);
            if (there is not null)
            {
                return to.At(Length.FromMillimeters(panel.FindEdge(to).SewnPositionMm(there.Number - 1)));
            }
        }

        return to == EdgeName.SideSeam ? to.At(Ratio.FromDecimalFractions(1.0 / 3))
            : to == EdgeName.Waist || to == EdgeName.Centre ? full.FootOn(to, stock.BustPoint)
            : to.Middle;
    }

    // Where the centre front is cut it is no guide: then the neckline stays, and all that hangs on it.
    private static EdgeName? KeptEdge(Panel full, EdgeName from, EdgeName to)
        => from == EdgeName.Centre || to == EdgeName.Centre ? (from == EdgeName.Neckline || to == EdgeName.Neckline || full.FindEdge(EdgeName.Neckline).Darts.Count > 0 ? EdgeName.Shoulder : EdgeName.Neckline) : null;

    private static void Tell(DesignDraft work, Panel full, Dart[] darts, EdgeName to, double atMm, double share)
    {
        work.Sheet.Note(
            "On the front, mark the place of the dart on the {0}, measured along it from the {1}: {2}. Draw a line from there to the bust point, and the legs of the {3} on to it.",
            to.Text, full.WordFor(to, Toward.Start), WorkedLength.GivenMm(null, atMm), string.Join(" and the ", darts.Select(dart => dart.Name.ToString())));
        work.Sheet.Because("Every dart of the front turns about the bust point, whatever point it is sewn to.");
        if (share == 1)
        {
            work.Sheet.Note("Cut along that line up to the bust point, and fold the {0} closed.", string.Join(" and the ", darts.Select(dart => dart.Name.ToString())));
        }
        else
        {
            string part = (share * 100).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " %";
            work.Sheet.Note("Cut along that line up to the bust point, and fold {0} of the {1} away.", part, darts[0].Name.ToString());
        }
    }
}
