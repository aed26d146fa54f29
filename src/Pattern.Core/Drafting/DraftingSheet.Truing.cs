using System;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Truing, as steps.</content>
public sealed partial class DraftingSheet
{
    // What truing leaves where it was, as far as a pencil can tell.
    private const double UnmovedMm = 0.01;

    // What rounds to nothing on the finest mark of an inch tape.
    private const double NoHeightMm = 25.4 / 64;

    /// <summary>Records what a hand does so that a condition holds, in the words that truing has for it.</summary>
    /// <param name="note">One of <see cref="TruingOutcome.Notes"/>.</param>
    public Step Note(TruingNote note)
        => Note(Guard.NotNull(note, nameof(note)).Template, [.. note.Words.Select(word => word is WorkedLength length ? (StepWord)length : (string)word)]);

    /// <summary>Records how a hand draws a line again as it was trued: new dart tops, the darts folded on their new legs, one smooth curve over the folds, measured and traced.</summary>
    /// <remarks>Nothing is drawn: landmarks and lines stay as drafted. The steps give the figures that a hand needs to draw the trued edge, so say before them where its ends have
    /// moved to. The new line is said to be square to those lines that the old one is square to.</remarks>
    /// <param name="line">The line as drawn by hand.</param>
    /// <param name="trued">The edge that truing made of it, from the same end, with the same darts.</param>
    /// <param name="level">The landmark from whose level the dart tops are measured up or down.</param>
    /// <param name="darts">The darts as drawn by hand, in the order of the line.</param>
    /// <returns>The last of the steps.</returns>
    /// <exception cref="ConstructionException">The line or a landmark is not of this sheet, or a dart stands on another line.</exception>
    /// <exception cref="ArgumentException">The edge has not as many darts as were given.</exception>
    public Step DrawTrued(DraftedLine line, PanelEdge trued, Landmark level, params DraftedDart[] darts)
    {
        const string Doing = "drawing a trued line";
        Require(line, Doing);
        Require(level, Doing);
        Dart[] now = Guard.NotNull(trued, nameof(trued)).DartsRaw;
        _ = Guard.InRange(Guard.NotNull(darts, nameof(darts)).Length, now.Length, now.Length, nameof(darts));
        for (int i = 0; i < darts.Length; i++)
        {
            RefuseOtherLine(line, darts[i], Doing);
            SayTops(line, now[i], level, darts[i]);
        }

        WorkedLength whole = WorkedLength.DrawnMm(null, trued.SewnLengthMm());
        SayCurve(line, now, darts);
        Redraws(RedrawnCurve.Of(line.From.Name, line.To.Name, trued));
        return now.Length == 0
            ? Record("Measure the {0} again, from {1} to {2}: {3}. Where it is not, move {2} in or out by the difference; draw that end again, and the line that ends there as well, as long as before.", line, line.From, line.To, whole)
            : Record(
                "Measure the {0} again over the folds, from {1} to {2}: {3}. Where it is not, move {2} in or out by the difference; draw that end again, and the line that ends there as well, as long as before. "
                + "Then run the tracing wheel along the line, through the folds, and open the darts: that gives the top edges between their legs.",
                line,
                line.From,
                line.To,
                whole);
    }

    /// <summary>Records what a line measures without the intakes of its darts, and what it is to measure.</summary>
    internal Step SayOff(DraftedLine line, double byHandMm, WorkedLength asked, int darts) => Record(
        darts > 0
            ? "Add up the {0} from dart to dart, the darts open and their intakes left out: {1}. It is to measure {2}, from {3} to {4}. The edges beside a dart need not meet yet."
            : "Measure the {0}: {1}. It is to measure {2}, from {3} to {4}.",
        line,
        WorkedLength.DrawnMm("now", byHandMm),
        asked,
        line.From,
        line.To);

    // The usual dart keeps its upright middle line: its tops are level with each other and its apex is plumb below.
    private void SayTops(DraftedLine line, Dart now, in Landmark level, DraftedDart byHand)
    {
        Point2D from = level.Position;
        double upMm = now.StartLeg.YMm - from.YMm;
        Vector2D down = now.Apex - now.MiddleOfIntake;
        bool keepsMiddle = Math.Abs(now.StartLeg.YMm - now.EndLeg.YMm) <= UnmovedMm
            && Math.Abs(now.MiddleOfIntake.XMm - byHand.Middle.Position.XMm) <= UnmovedMm
            && Math.Abs(byHand.Apex.Position.XMm - byHand.Middle.Position.XMm) <= UnmovedMm && down.YMm < 0;
        if (!keepsMiddle)
        {
            Record(
                "Mark the new tops of {0} from {1}: the one nearer to {2} " + WayTo(now.StartLeg - from, "{3}", "{4}") + ", the other " + WayTo(now.EndLeg - from, "{5}", "{6}")
                    + "; and {7} anew " + WayTo(now.Apex - from, "{8}", "{9}") + ". Draw the legs to it; the old legs no longer count.",
                byHand,
                level,
                line.From,
                Sideways(now.StartLeg),
                Upright(now.StartLeg),
                Sideways(now.EndLeg),
                Upright(now.EndLeg),
                byHand.Apex,
                Sideways(now.Apex),
                Upright(now.Apex));
            return;
        }

        if (Math.Abs(upMm) < NoHeightMm)
        {
            Record(
                "Mark the new tops of {0}: both on a level with {1}, {2} apart, with the upright line through {5} midway between them. From the middle between them square down {3} to the new {4}. Draw the legs to it; the old legs no longer count.",
                byHand,
                level,
                WorkedLength.DrawnMm(null, now.IntakeMm),
                WorkedLength.DrawnMm(null, now.LengthMm),
                byHand.Apex,
                byHand.Middle);
            return;
        }

        Record(
            upMm > 0
                ? "Mark the new tops of {0}: both {1} above {2}, {3} apart, with the upright line through {6} midway between them. From the middle between them square down {4} to the new {5}. Draw the legs to it; the old legs no longer count."
                : "Mark the new tops of {0}: both {1} below {2}, {3} apart, with the upright line through {6} midway between them. From the middle between them square down {4} to the new {5}. Draw the legs to it; the old legs no longer count.",
            byHand,
            WorkedLength.DrawnMm(null, Math.Abs(upMm)),
            level,
            WorkedLength.DrawnMm(null, now.IntakeMm),
            WorkedLength.DrawnMm(null, now.LengthMm),
            byHand.Apex,
            byHand.Middle);

        StepWord Sideways(in Point2D to) => WorkedLength.DrawnMm(null, Math.Abs(to.XMm - from.XMm));
        StepWord Upright(in Point2D to) => WorkedLength.DrawnMm(null, Math.Abs(to.YMm - from.YMm));
    }

    private void SayCurve(DraftedLine line, Dart[] now, DraftedDart[] darts)
    {
        for (int i = 0; i < now.Length; i++)
        {
            Record("Fold {0} on its new legs, toward {1}, and pin it. A dart folded to its apex makes the paper a cone: crease the leg nearer to {1}, lay it on the other leg, and let the apex lie on a corner of the table, so that the top is flat and the rest hangs.", darts[i], now[i].PressedToward is Panels.Toward.Start ? line.From : line.To);
        }

        DraftedLine? atFrom = null;
        DraftedLine? atTo = null;
        bool isSquare = line.TryDirectionAt(line.From, out Direction leaving) && line.TryDirectionAt(line.To, out Direction arriving)
            && IsSquare(line.From, leaving, out atFrom) && IsSquare(line.To, arriving, out atTo) && atFrom is not null && atTo is not null;
        if (isSquare)
        {
            Record(
                now.Length == 0
                    ? "Draw the {0} again, one smooth curve from {1} to {2}, square to the {3} and to the {4}."
                    : "Draw the {0} again over the folds, one smooth curve from {1} through the folded dart tops to {2}, square to the {3} and to the {4}.",
                line,
                line.From,
                line.To,
                atFrom!,
                atTo!);
            return;
        }

        Record(
            now.Length == 0
                ? "Draw the {0} again, one smooth curve from {1} to {2}."
                : "Draw the {0} again over the folds, one smooth curve from {1} through the folded dart tops to {2}.",
            line,
            line.From,
            line.To);
    }

    private static string WayTo(in Vector2D way, string across, string up)
        => across + (way.XMm < 0 ? " to the left and " : " to the right and ") + up + (way.YMm < 0 ? " down" : " up");
}
