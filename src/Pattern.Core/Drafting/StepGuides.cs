using System;
using System.Text;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;

namespace Pattern.Core.Drafting;

/// <summary>Where a hand-drawn curve runs between its ends, so that somebody without the drawing draws the same one.</summary>
/// <remarks>Measured when a step is printed, not when it is drafted.</remarks>
internal static class StepGuides
{
    private const string Quarter = "a quarter of the way";
    private const string Half = "halfway";
    private const string ThreeQuarters = "three quarters of the way";

    /// <summary>A sentence for a step that drew one curve by hand; null for any other.</summary>
    internal static string? Of(Step step, TapeStep tape)
    {
        DraftedLine? only = null;
        foreach (DraftedLine line in step.Drew)
        {
            if (only is not null)
            {
                return null;
            }

            only = line;
        }

        if (only is null || !only.IsOneSegment || only.OnlyRaw.Kind != PathSegmentKind.Cubic || !step.Template.StartsWith("Draw the ", StringComparison.Ordinal))
        {
            return null;
        }

        TapeStep fine = tape.IsMetric || tape.Parts >= TapeStep.Sixteenth.Parts ? tape : TapeStep.Sixteenth;
        CubicBezier curve = only.CubicRaw;
        return step.Template.IndexOf("hip curve", StringComparison.Ordinal) >= 0
            ? FromUpright(only, curve.Start, curve.End, fine)
            : FromChord(only, curve.Start, curve.End, fine);
    }

    // How far it has come in from the vertical through its foot.
    private static string? FromUpright(DraftedLine line, in Point2D foot, in Point2D end, TapeStep tape)
    {
        var text = new StringBuilder("Measured level from the vertical through ").Append(line.From.Name.Text).Append(", it lies: ");
        string way = end.YMm > foot.YMm ? " up" : " down";
        return Add(text, line, foot, new Point2D(foot.XMm, end.YMm), Direction.Right, tape, way, end.XMm > foot.XMm ? " to the right" : " to the left", " the other way")
            ? text.Append('.').ToString()
            : null;
    }

    // How far it lies off the straight line that joins its ends.
    private static string? FromChord(DraftedLine line, in Point2D from, in Point2D to, TapeStep tape)
    {
        Vector2D chord = to - from;
        if (chord.LengthMm <= GeometryTolerance.JoinMm || Math.Abs(chord.XMm) < Math.Abs(chord.YMm))
        {
            return null;
        }

        var text = new StringBuilder("Measured square to the straight line from ").Append(line.From.Name.Text).Append(" to ").Append(line.To.Name.Text).Append(", it lies: ");
        Direction along = Direction.Unit(chord.XMm / chord.LengthMm, chord.YMm / chord.LengthMm);
        Direction up = chord.XMm > 0 ? along.TurnedLeft : along.TurnedRight;
        return Add(text, line, from, to, up, tape, string.Empty, " above", " below") ? text.Append('.').ToString() : null;
    }

    private static bool Add(
        StringBuilder text, DraftedLine line, in Point2D from, in Point2D to, Direction across, TapeStep tape, string way, string ahead, string behind)
    {
        bool isFirst = true;
        bool isStraight = true;
        foreach ((double part, string where) in new[] { (0.25, Quarter), (0.5, Half), (0.75, ThreeQuarters) })
        {
            Point2D place = from + ((to - from) * part);
            if (!line.TryCross(Line.From(place, across), place, out Point2D met, out _))
            {
                return false;
            }

            double offMm = across.TimesMm(1).DotMm2(met - place);
            bool isAhead = way.Length == 0 ? offMm > 0 : (offMm > 0) == (ahead == " to the right");
            string figure = TapeText.Number(Math.Abs(offMm), tape, TapeStyle.Plain);
            bool isNothing = Tape.MarksOf(offMm, tape, TapeRounding.Nearest) == 0;
            isStraight &= isNothing;
            text.Append(isFirst ? string.Empty : ", ").Append(where).Append(isFirst ? way : string.Empty).Append(' ')
                .Append(Tape.IsOnMark(offMm, tape) || isNothing ? string.Empty : "~").Append(figure).Append(TapeText.UnitSuffix(tape, TapeStyle.Plain))
                .Append(isNothing ? string.Empty : isAhead ? ahead : behind);
            isFirst = false;
        }

        return !isStraight;
    }
}
