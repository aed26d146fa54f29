using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>A dart of the front split into several of the same angle, side by side, that all point at the bust point.</summary>
internal sealed class DartSplitDesign() : BlockDesign("dart split", "1", From, Count, Spacing)
{
    internal static readonly MethodSetting<string> From = MethodSetting.OfChoice("dart", BustDartDesign.BustDart, BustDartDesign.BustDart, BustDartDesign.WaistDart).Printed();

    internal static readonly MethodSetting<int> Count = MethodSetting.OfCount("darts", 2, 2, 4).Printed();

    /// <summary>1 in (2.5 cm) by usage: near enough to be seen as a pair.</summary>
    internal static readonly MethodSetting<Length> Spacing = MethodSetting.OfLength("spacing", Length.FromInches(1), Length.FromInches(0.5), Length.FromInches(4)).InMetric(Length.FromCentimeters(2.5)).Printed();

    protected override void Style(DesignDraft work)
    {
        BodiceStock stock = BodiceStock.Of(work);
        bool onWaist = work.Take(From) == BustDartDesign.WaistDart;
        int count = work.Take(Count);
        WorkedLength spacing = work.Take(Spacing);
        Dart[] darts = [.. stock.AtBustPoint(stock.FullFront).Where(dart => (dart.Name.Edge == EdgeName.Waist) == onWaist)];
        if (darts.Length != 1)
        {
            throw work.Refusal(darts.Length == 0 ? "Its front has no such dart that points at the bust point." : "Several darts point at the bust point there. Make one of them first.");
        }

        Dart dart = darts[0];
        PanelEdge edge = stock.FullFront.FindEdge(dart.Name.Edge);
        double standsMm = edge.SewnPositionMm(dart.Number - 1);
        double lengthMm = edge.SewnLengthMm();

        // Away from the nearer end of the edge.
        double byMm = spacing.ValueMm * (standsMm > lengthMm / 2 ? -1 : 1);
        double lastMm = standsMm + ((count - 1) * byMm);
        if (lastMm < FrontTurn.LeastApartMm || lastMm > lengthMm - FrontTurn.LeastApartMm)
        {
            throw work.Refusal(FormattableString.Invariant($"The {edge.Name} has no room for {count} darts {spacing.ValueMm:0.#} mm apart. Space them less, or turn the dart to a longer edge first."));
        }

        Panel full = stock.FullFront.SplitDart(dart.Name, count, Length.FromMillimeters(byMm), dart.Name.Edge == EdgeName.Centre ? EdgeName.Neckline : null);
        work.Sheet.Note(
            "On the front, mark {0} places on the {1}, the first where its dart stands, each {2} further towards the {3}. Draw a line from each to the bust point.",
            count, edge.Name.Text, spacing, stock.FullFront.WordFor(edge.Name, byMm < 0 ? Toward.Start : Toward.End));
        work.Sheet.Note("Cut along the new lines up to the bust point, fold the dart away, and open all alike: each by {0}, measured straight from leg to leg.", WorkedLength.GivenMm(
            null, stock.AtBustPoint(full).First(one => one.Name.Edge == edge.Name).IntakeMm));
        work.Sheet.Because("They share the angle of the one dart: several narrow darts poke less than a wide one.");
        new FrontTurn(work, stock).Finish(full, name => stock.StandsOffMm(name) ?? stock.Hand.StandsOff(onWaist).ValueMm);
    }
}
