using System;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>The head of a sleeve measured on its panels: front and back, each from the underarm to the notch at the crown.</summary>
internal readonly struct SleeveHead
{
    private SleeveHead(double frontMm, double backMm, double[] backNotchesMm, double[] frontNotchesMm)
    {
        FrontMm = frontMm;
        BackMm = backMm;
        BackNotchesMm = backNotchesMm;
        FrontNotchesMm = frontNotchesMm;
    }

    internal double FrontMm { get; }

    internal double BackMm { get; }

    /// <summary>From the underarm, the nearest first.</summary>
    internal double[] BackNotchesMm { get; }

    internal double[] FrontNotchesMm { get; }

    /// <summary>Measures it; with another number of notches than the armhole has, nobody can say which is the crown.</summary>
    internal static bool TryMeasure(CheckList list, int backs, int fronts, out SleeveHead head)
    {
        head = new SleeveHead(double.NaN, double.NaN, [], []);
        Panel sleeve = list.FindPanel(SleeveNames.Sleeve);
        double[] notches = WalkSide.NotchesOf(sleeve, EdgeName.SleeveHead);
        if (notches.Length != backs + 1 + fronts)
        {
            return false;
        }

        double wholeMm = sleeve.FindEdge(EdgeName.SleeveHead).SewnLengthMm();
        double crownMm = notches[backs];
        var frontNotches = new double[fronts];
        for (int i = 0; i < fronts; i++)
        {
            frontNotches[i] = wholeMm - notches[notches.Length - 1 - i];
        }

        Array.Resize(ref notches, backs);
        head = new SleeveHead(wholeMm - crownMm, crownMm, notches, frontNotches);
        return true;
    }
}
