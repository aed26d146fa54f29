using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Styling;

/// <summary>Darts of front and back made into seams: from shoulder or armhole over the bust point, or over the shoulder blade, to the waist.</summary>
internal sealed class PrincessDesign() : BlockDesign("princess seams", "1", From)
{
    internal const string Shoulder = "shoulder";
    internal const string Armhole = "armhole";

    /// <summary>The shoulder by usage: the seam runs on from front to back.</summary>
    internal static readonly MethodSetting<string> From = MethodSetting.OfChoice("from", Shoulder, Shoulder, Armhole).Printed();

    internal static readonly EdgeName Seam = EdgeName.Of("princess seam");
    internal static readonly PanelName CentreBack = PanelName.Of("centre back");
    internal static readonly PanelName SideBack = PanelName.Of("side back");
    internal static readonly PanelName SideFront = PanelName.Of("side front");
    internal static readonly PanelName CentreFront = PanelName.Of("centre front");

    protected override void Style(DesignDraft work)
    {
        BodiceStock stock = BodiceStock.Of(work);
        EdgeName from = work.Take(From) == Shoulder ? EdgeName.Shoulder : EdgeName.Armhole;
        (Panel centreBack, Panel sideBack, double backEaseMm) = Back(work, stock, from);
        (Panel centreFront, Panel sideFront, double frontEaseMm) = Front(work, stock, from, centreBack);
        work.Replace(PanelName.Back, centreBack, sideBack);
        work.Replace(PanelName.Front, sideFront, centreFront);
        foreach (Panel part in new[] { centreBack, sideBack, sideFront, centreFront })
        {
            work.Replace(new TurnedPanel(part, part, part == centreBack || part == sideBack ? stock.DraftedBack : stock.DraftedFront));
        }

        work.Sheet.Because("Beyond the notches both edges are equally long; between them the longer one is eased over the bust, or over the blade.");
        new PrincessPromises(from, stock, work).Promise(backEaseMm, frontEaseMm);
        BodiceStock.KeepLines(work);
    }

    private static (Panel Centre, Panel Side, double EaseMm) Front(DesignDraft work, BodiceStock stock, EdgeName from, Panel centreBack)
    {
        Dart[] bust = [.. stock.AtBustPoint(stock.FullFront).Where(dart => dart.Name.Edge != EdgeName.Waist)];
        if (bust.Length != 1)
        {
            throw work.Refusal(bust.Length == 0 ? "Its front has no bust dart to make a seam of." : "Its bust dart is in several parts. Make one of them first.");
        }

        EdgePlace place = from == EdgeName.Shoulder ? from.At(centreBack.FindEdge(from).SewnLength) : from.Middle;
        Panel full = bust[0].Name.Edge == from ? stock.FullFront : BustDartDesign.Turn(work, stock.FullFront, bust[0].Name, place, Ratio.FromDecimalFractions(1), null);
        full = new FrontTurn(work, stock).TruedAtFullLength(full);
        Dart upper = stock.AtBustPoint(full).Single(dart => dart.Name.Edge == from);
        Dart waist = stock.AtBustPoint(full).FirstOrDefault(dart => dart.Name.Edge == EdgeName.Waist)
            ?? throw work.Refusal("Its front has no waist dart that points at the bust point to make a seam of.");
        work.Sheet.Note(
            "On the front, fold the {0} closed and turn it to the {1}, {2} along it from the {3}. Draw its legs, and those of the waist dart, on to the bust point.",
            bust[0].Name.ToString(), from.Text, WorkedLength.GivenMm(null, full.FindEdge(from).SewnPositionMm(upper.Number - 1)), full.WordFor(from, Toward.Start));
        return PrincessCut.Apart(work, full, upper.Name, waist.Name, CentreFront, SideFront, "bust point", notches: 1);
    }

    private static (Panel Centre, Panel Side, double EaseMm) Back(DesignDraft work, BodiceStock stock, EdgeName from)
    {
        Panel back = stock.Back;
        Dart blade = BackTurn.DartOf(work, stock);
        if (blade.Name.Edge != from)
        {
            EdgePlace place = from == EdgeName.Armhole ? back.FootOn(from, blade.Apex) : from.Middle;
            back = BackTurn.Turned(work, back, blade, place, 1);
            work.Sheet.Note("On the back, turn the shoulder dart about its point to the {0}.", from.Text);
        }

        Dart upper = back.FindEdge(from).Darts[0];
        Dart? waist = back.FindEdge(EdgeName.Waist).Darts.LastOrDefault();
        return waist is null
            ? throw work.Refusal("Its back has no waist dart to make a seam of.")
            : PrincessCut.Apart(work, back, upper.Name, waist.Name, CentreBack, SideBack, "points of both darts", notches: 2);
    }
}
