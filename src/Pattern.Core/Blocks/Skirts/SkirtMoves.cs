using System;
using Pattern.Core.Drafting;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Blocks;

/// <summary>How truing moves a point, as a hand does it: out or in, up or down. What is less than a pencil and a tape can show is not said.</summary>
internal static class SkirtMoves
{
    private const string NotTheDifference = " Take this figure, not the difference just measured, even where that was nothing: the curve that is drawn next changes the length as well.";

    // Half a millimetre: what rounds to the finest mark of either tape.
    private const double LeastMm = 0.5;

    /// <summary>Records the move as a step, where there is one.</summary>
    internal static void Say(DraftingSheet sheet, SkirtQuarter quarter, in Landmark landmark, in Point2D to)
    {
        double outMm = quarter.Hand * (to.XMm - landmark.Position.XMm);
        double upMm = to.YMm - landmark.Position.YMm;
        bool isAcross = Math.Abs(outMm) >= LeastMm;
        bool isUpright = Math.Abs(upMm) >= LeastMm;
        if (isAcross && isUpright)
        {
            string template = (outMm > 0, upMm > 0) switch
            {
                (true, true) => "Move {0} out, level and away from the centre, by {1}, and then straight up by {2}." + NotTheDifference,
                (true, false) => "Move {0} out, level and away from the centre, by {1}, and then straight down by {2}." + NotTheDifference,
                (false, true) => "Move {0} in, level and toward the centre, by {1}, and then straight up by {2}." + NotTheDifference,
                _ => "Move {0} in, level and toward the centre, by {1}, and then straight down by {2}." + NotTheDifference,
            };
            sheet.Note(template, landmark, Plain(outMm), Plain(upMm));
        }
        else if (isAcross)
        {
            sheet.Note(outMm > 0 ? "Move {0} out, level and away from the centre, by {1}." + NotTheDifference : "Move {0} in, level and toward the centre, by {1}." + NotTheDifference, landmark, Plain(outMm));
        }
        else if (isUpright)
        {
            sheet.Note(upMm > 0 ? "Move {0} straight up by {1}." + NotTheDifference : "Move {0} straight down by {1}." + NotTheDifference, landmark, Plain(upMm));
        }
    }

    private static WorkedLength Plain(double byMm) => WorkedLength.DrawnMm(null, Math.Abs(byMm));
}
