using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>The dart over the shoulder blade turned about its point to the neckline, the armhole, or elsewhere along the shoulder.</summary>
internal sealed class ShoulderDartDesign() : BlockDesign("shoulder dart turned", "1", To, Share, Along)
{
    /// <summary>The neckline by usage: a collar hides it.</summary>
    internal static readonly MethodSetting<string> To = MethodSetting.OfChoice("turned to", "neckline", "shoulder", "neckline", "armhole").Printed();

    /// <summary>All of it by usage.</summary>
    internal static readonly MethodSetting<Ratio> Share = MethodSetting.OfShare("share of the dart", Ratio.FromPercent(100), Ratio.FromPercent(1), Ratio.FromPercent(100));

    /// <summary>The middle by usage.</summary>
    internal static readonly MethodSetting<Ratio> Along = MethodSetting.OfShare("along the edge", Ratio.FromPercent(50), Ratio.FromPercent(5), Ratio.FromPercent(95));

    internal static string Word(ShoulderDartPlace place) => To.Choices[Guard.Choice((int)place, 3, nameof(place))];

    protected override void Style(DesignDraft work)
    {
        BodiceStock stock = BodiceStock.Of(work);
        EdgeName to = BustDartDesign.EdgeOf(work.Take(To));
        double share = work.Take(Share).DecimalFractions;
        Dart dart = BackTurn.DartOf(work, stock);
        Panel back = BackTurn.Turned(work, stock.Back, dart, to.At(work.Take(Along)), share);
        Dart opened = BackTurn.OpenedOn(back, to.At(work.Take(Along)), dart.Apex);
        back = back.WithDartPressed(opened.Name, to == EdgeName.Armhole ? Toward.End : Toward.Start);
        back = DartFolds.Folding(work, back);
        work.Sheet.Note(
            "On the back, mark the place of the dart on the {0}, measured along it from the {1}: {2}. Draw a line from there to the point of the shoulder dart and cut along it.",
            to.Text, back.WordFor(to, Toward.Start), WorkedLength.GivenMm(null, stock.Back.FindEdge(to).SewnLengthMm() * work.Take(Along).DecimalFractions));
        work.Sheet.Note(
            share == 1 ? "Fold the {0} closed: the cut opens at the {1} by {2}, measured straight from leg to leg." : "Fold a part of the {0} away, until the cut opens at the {1} by {2}, measured straight from leg to leg.",
            dart.Name.ToString(), to.Text, WorkedLength.GivenMm("intake", opened.IntakeMm));
        work.Sheet.Because("It turns about the point that it is sewn to, over the shoulder blade.");
        BackTurn.Finish(work, stock, back, work.Source.Seams);
    }
}
