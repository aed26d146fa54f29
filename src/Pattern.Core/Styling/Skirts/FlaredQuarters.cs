using System;
using System.Linq;
using Pattern.Core.Blocks;
using Pattern.Core.Panels;

namespace Pattern.Core.Styling;

/// <summary>What is promised of back and front that were opened at the hem.</summary>
/// <param name="work">The design.</param>
/// <param name="stock">What it started from.</param>
/// <param name="before">Back and front as they were.</param>
/// <param name="share">How much of each dart was closed.</param>
/// <param name="mostGainMm">What the hip may gain in a quarter; infinite where it may gain anything.</param>
internal sealed class FlaredQuarters(DesignDraft work, SkirtStock stock, Panel[] before, double share, double mostGainMm)
{
    private static readonly Advice WideHip = Advice.Of(
        "Closing the darts widens the hip as well, since they end above it.", "Close less of them, or close all: then they are first lengthened toward the hip.");

    private static readonly Advice UnevenFlare = Advice.Of(
        "Front and back open by so different amounts that the side seam swings to one side.", "Close a share of the darts only, or add flare at the side.");

    private readonly PanelName[] _names = [.. before.Select(quarter => quarter.Name)];
    private readonly int[] _darts = [.. before.Select(quarter => share == 1 ? 0 : SkirtStock.TopOf(quarter).Darts.Count)];
    private readonly double[] _hipsMm = [.. before.Select(SkirtFlare.HipWidthMm)];
    private readonly double _belowHipMm = SkirtFlare.BelowHipMm(before[0]);
    private readonly int _times = work.TimesOf(before[0].Name);

    internal void Promise(DesignDraft on)
    {
        on.Check(SkirtPromises.Hip, CheckHip);
        on.Check(SkirtPromises.Hem, CheckHem);
        on.Check(SkirtPromises.Darts, list => Each((name, i) => SkirtPromises.DartsCanBeSewn(list, list.FindPanel(name), _darts[i])));
        on.Check(SkirtPromises.Outline, list => Each((name, _) => SkirtPromises.SimpleOutline(list, list.FindPanel(name))));
        on.Check(SkirtPromises.Advice, Advise);
    }

    private void CheckHip(CheckList list)
    {
        double[] now = [.. _names.Select(name => SkirtFlare.HipWidthMm(list.FindPanel(name)))];
        list.LengthAtLeast("hip width all around", SkirtPromises.Block, _times * now.Sum(), stock.HipMm, CheckList.ToleranceMm);
        for (int i = 0; i < now.Length; i++)
        {
            double gain = now[i] - _hipsMm[i];
            if (double.IsPositiveInfinity(mostGainMm))
            {
                continue;
            }

            if (share == 1)
            {
                list.LengthAtMost("gain at the hip", _names[i].Text, gain, mostGainMm);
            }
            else if (gain > mostGainMm)
            {
                list.Advise(WideHip, "gain at the hip", _names[i].Text, SkirtStock.Mm(gain), FindingRelation.AtMost, SkirtStock.Mm(mostGainMm));
            }
        }
    }

    private void CheckHem(CheckList list)
    {
        Each((name, _) =>
        {
            Panel panel = list.FindPanel(name);
            SkirtPromises.HemOfQuarter(list, panel);
            list.Length("side from hip to hem", name.Text, SkirtFlare.BelowHipMm(panel), _belowHipMm);
        });
        SkirtPromises.HemJoined(list, list.FindPanel(_names[0]), list.FindPanel(_names[1]), EdgeName.SideSeam);
    }

    private void Advise(CheckList list)
    {
        double uneven = Math.Abs(FlareMm(list.FindPanel(_names[0])) - FlareMm(list.FindPanel(_names[1])));
        double most = stock.Usually(2, 5);
        if (uneven > most)
        {
            list.Advise(UnevenFlare, "flare of back and front, difference", SkirtPromises.Block, SkirtStock.Mm(uneven), FindingRelation.AtMost, SkirtStock.Mm(most));
        }
    }

    private static double FlareMm(Panel panel) => panel.FindEdge(EdgeName.Hem).SewnLengthMm() - SkirtFlare.HipWidthMm(panel);

    private void Each(Action<PanelName, int> what)
    {
        for (int i = 0; i < _names.Length; i++)
        {
            what(_names[i], i);
        }
    }
}
