using System.Linq;
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

    /// <summary>From the underarm, the nearest first; where the sleeve is cut in two, its seams count as the first ones.</summary>
    internal double[] BackNotchesMm { get; }

    internal double[] FrontNotchesMm { get; }

    /// <summary>Measures it; with another number of notches than the armhole has, nobody can say which is the crown.</summary>
    internal static bool TryMeasure(CheckList list, bool isInTwo, int backs, int fronts, out SleeveHead head)
        => isInTwo ? TryMeasureTwo(list, backs, fronts, out head) : TryMeasureOne(list, backs, fronts, out head);

    private static bool TryMeasureOne(CheckList list, int backs, int fronts, out SleeveHead head)
    {
        Panel sleeve = list.FindPanel(SleeveNames.Sleeve);
        double[] notches = WalkSide.NotchesOf(sleeve, EdgeName.SleeveHead);
        if (notches.Length != backs + 1 + fronts)
        {
            return Nothing(out head);
        }

        double wholeMm = sleeve.FindEdge(EdgeName.SleeveHead).SewnLengthMm();
        double[] behind = [.. notches.Take(backs)];
        double[] ahead = [.. notches.Skip(backs + 1).Reverse().Select(mm => wholeMm - mm)];
        head = new SleeveHead(wholeMm - notches[backs], notches[backs], behind, ahead);
        return true;
    }

    // The under sleeve lies below the first notches, its own notch at the underarm; the top sleeve carries the others, its ends instead of the first.
    private static bool TryMeasureTwo(CheckList list, int backs, int fronts, out SleeveHead head)
    {
        Panel top = list.FindPanel(SleeveInTwo.Top);
        Panel under = list.FindPanel(SleeveInTwo.Under);
        double[] topNotches = WalkSide.NotchesOf(top, EdgeName.SleeveHead);
        double[] underNotches = WalkSide.NotchesOf(under, EdgeName.SleeveHead);
        if (topNotches.Length != backs + fronts - 1 || underNotches.Length != 1)
        {
            return Nothing(out head);
        }

        double topMm = top.FindEdge(EdgeName.SleeveHead).SewnLengthMm();
        double underFrontMm = underNotches[0];
        double underBackMm = under.FindEdge(EdgeName.SleeveHead).SewnLengthMm() - underFrontMm;
        double[] behind = new double[backs];
        double[] ahead = new double[fronts];
        behind[0] = underBackMm;
        ahead[0] = underFrontMm;
        for (int i = 1; i < backs; i++)
        {
            behind[i] = underBackMm + topNotches[i - 1];
        }

        for (int i = 1; i < fronts; i++)
        {
            ahead[i] = underFrontMm + topMm - topNotches[topNotches.Length - i];
        }

        double crownMm = topNotches[backs - 1];
        head = new SleeveHead(underFrontMm + topMm - crownMm, underBackMm + crownMm, behind, ahead);
        return true;
    }

    private static bool Nothing(out SleeveHead head)
    {
        head = new SleeveHead(double.NaN, double.NaN, [], []);
        return false;
    }
}
