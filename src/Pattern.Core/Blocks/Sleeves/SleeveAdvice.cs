using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Blocks;

/// <summary>What a cutter would look twice at, though it was drafted as asked for and every check holds. Common practice, no source, where none is named.</summary>
internal static class SleeveAdvice
{
    // What is usual, of the whole head: 3/8 in in one trade company to 1 3/4 in (web article "Understanding the sleeve 3").
    private const double LeastEaseMm = 9.5;
    private const double MostEaseMm = 44.5;

    // Sums of parts of a tape may end a little off.
    private const double RoundingMm = 0.01;

    private static readonly Advice LittleEase = Advice.Of("So little ease draws the head tight over the shoulder.", "Take more cap ease, unless the seam is a flat one, as of a shirt.");
    private static readonly Advice MuchEase = Advice.Of("So much ease puckers in most cloth.", "Take less cap ease, or gather the head on purpose.");
    private static readonly Advice NarrowArm = Advice.Of("So little ease binds the upper arm.", "Take more upper arm ease.");
    private static readonly Advice NarrowElbow = Advice.Of("So little ease binds the bent elbow.", "Take more upper arm or wrist ease.");
    private static readonly Advice NarrowWrist = Advice.Of("The hand does not pass through the wrist.", "Leave an opening in the seam, with a placket or a zip, or take more wrist ease.");
    private static readonly Advice LowCap = Advice.Of("So low a cap makes folds under the arm that hangs.", "Deepen the armhole, or take less upper arm ease.");
    private static readonly Advice HighCap = Advice.Of("So high a cap keeps the arm from being lifted.", "Take more upper arm ease.");

    internal static void Give(CheckList list, SleeveDraft draft, double handMm)
    {
        string place = SleeveNames.Sleeve.Text;
        double easeMm = draft.FrontEaseMm + draft.BackEaseMm;
        if (draft.Options.Fit == SleeveFit.Close && easeMm < LeastEaseMm - RoundingMm)
        {
            list.Advise(LittleEase, "ease of the head", place, Mm(easeMm), FindingRelation.AtLeast, Mm(LeastEaseMm));
        }

        if (easeMm > MostEaseMm + RoundingMm)
        {
            list.Advise(MuchEase, "ease of the head", place, Mm(easeMm), FindingRelation.AtMost, Mm(MostEaseMm));
        }

        double widthMm = draft.WidthMm;
        double leastMm = draft.Arm.UpperArm.ValueMm + draft.Customs.LeastWidthEaseMm;
        if (widthMm < leastMm - RoundingMm)
        {
            list.Advise(NarrowArm, "width at the underarm", place, Mm(widthMm), FindingRelation.AtLeast, Mm(leastMm));
        }

        AdviseOnElbow(list, draft, place);
        if (draft.ReachesWrist && draft.LowerWidthMm < handMm - RoundingMm)
        {
            list.Advise(NarrowWrist, "wrist width", place, Mm(draft.LowerWidthMm), FindingRelation.AtLeast, Mm(handMm));
        }

        // A third of the armhole is the handbook's; from a quarter to two fifths sleeves are worn.
        double shareLow = 0.25 * draft.Armhole.LengthMm;
        double shareHigh = 0.36 * draft.Armhole.LengthMm;
        if (draft.Options.Fit == SleeveFit.Close && draft.CapHeightMm < shareLow)
        {
            list.Advise(LowCap, "cap height", place, Mm(draft.CapHeightMm), FindingRelation.AtLeast, Mm(shareLow));
        }

        if (draft.CapHeightMm > shareHigh)
        {
            list.Advise(HighCap, "cap height", place, Mm(draft.CapHeightMm), FindingRelation.AtMost, Mm(shareHigh));
        }
    }

    private static void AdviseOnElbow(CheckList list, SleeveDraft draft, string place)
    {
        if (draft.ElbowGirthMm is not { } girthMm || !draft.HasElbow)
        {
            return;
        }

        double leastMm = girthMm + draft.Customs.LeastElbowEaseMm;
        if (draft.ElbowWidthMm < leastMm - RoundingMm)
        {
            list.Advise(NarrowElbow, "width at the elbow", place, Mm(draft.ElbowWidthMm), FindingRelation.AtLeast, Mm(leastMm));
        }
    }

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}
