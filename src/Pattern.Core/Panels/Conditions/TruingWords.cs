using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Measurement;

namespace Pattern.Core.Panels;

/// <summary>Words conditions and moves as something that a hand can do at the table.</summary>
internal static class TruingWords
{
    /// <summary>A move smaller than this is not worth a sentence.</summary>
    private const double LeastMm = 1e-6;

    internal static IEnumerable<TruingNote> Of(TruingOutcome outcome)
        => outcome.Conditions.Where(c => Math.Abs(c.OffByHand?.Millimeters ?? c.AngleOffByHand!.Value.Radians * 100) > LeastMm).Select(c => c.Note)
            .Concat(outcome.Moves.Where(m => m.DistanceMm > LeastMm).Select(Of));

    internal static TruingNote Of(Condition condition, string name, double offByHand)
    {
        switch (condition.Kind)
        {
            case ConditionKind.SewnLength:
                WorkedLength wanted = condition.Length!;
                return new TruingNote(
                    "Measure the {0} with its darts folded closed: {1}. It has to be {2}.",
                    string.Join(" and the ", condition.Edges),
                    WorkedLength.DrawnMm("by hand", wanted.ValueMm + offByHand),
                    wanted);
            case ConditionKind.Sewn:
                Seam seam = condition.Seam!;
                return new TruingNote(
                    "Walk the {0} along the {1} ({2}): it is {3} too " + (offByHand < 0 ? "short" : "long") + ". Make both fit.",
                    seam.First,
                    seam.Second,
                    name,
                    Figure(Math.Abs(offByHand)));
            case ConditionKind.JoinedAngle when condition.Corners.Count == 1:
                return new TruingNote(
                    "Draw the {0} again so that it makes {1} degrees with its neighbour; by hand it made {2}.",
                    condition.Corners[0],
                    Degrees(condition.AngleRad),
                    Degrees(condition.AngleRad + offByHand));
            case ConditionKind.JoinedAngle:
                return new TruingNote(
                    "Lay the {0} together along their seam and draw the line across it anew; it had a corner of {1} degrees.",
                    string.Join(" and the ", condition.Corners),
                    Degrees(Math.Abs(offByHand)));
            case ConditionKind.SmoothOverDarts:
                return new TruingNote(
                    "Fold the darts of the {0} closed and draw it across them in one sweep ({1}); it had a corner of {2} degrees.",
                    condition.Edges[0],
                    name,
                    Degrees(Math.Abs(offByHand)));
            case ConditionKind.LegsEqual:
                return new TruingNote("Make the legs of {0} equally long; they differed by {1}.", condition.Dart, Figure(Math.Abs(offByHand)));
            case ConditionKind.Intake:
                return new TruingNote("Make {0} as wide as it has to be: {1}; it was off by {2}.", condition.Dart, condition.Length!, Figure(Math.Abs(offByHand)));
            default:
                return new TruingNote("Keep the {0}.", name);
        }
    }

    private static TruingNote Of(TruingMove move)
    {
        string limit = move.IsAtLimit ? " That is as far as it may." : string.Empty;
        switch (move.What.Kind)
        {
            case MovableKind.Corner:
            case MovableKind.Dart:
                return new TruingNote(
                    "Move the {0} by {1}: {2} to the " + (move.AcrossMm < 0 ? "left" : "right") + " and {3} " + (move.UpMm < 0 ? "down" : "up") + "." + limit,
                    move.What.Name,
                    Figure(move.DistanceMm),
                    Figure(Math.Abs(move.AcrossMm)),
                    Figure(Math.Abs(move.UpMm)));
            case MovableKind.Notch:
                return new TruingNote("Slide the {0} by {1}." + limit, move.What.Name, Figure(move.DistanceMm));
            case MovableKind.Legs:
                return new TruingNote("Draw the {0} to the new line, by up to {1}." + limit, move.What.Name, Figure(move.DistanceMm));
            case MovableKind.OneSweep:
                return new TruingNote(
                    "Fold the darts of the {0} closed and draw it anew in one sweep; it leaves the old line by up to {1}." + limit, move.What.Edge, Figure(move.DistanceMm));
            default:
                return new TruingNote("Change the {0}; a handle moves by up to {1}." + limit, move.What.Name, Figure(move.DistanceMm));
        }
    }

    private static WorkedLength Figure(double mm) => WorkedLength.GivenMm(null, mm, LengthSource.Found);

    private static string Degrees(double radians) => (radians * 180 / Math.PI).ToString("0.##", CultureInfo.InvariantCulture);
}
