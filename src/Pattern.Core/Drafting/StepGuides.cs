using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <summary>Where a hand-drawn curve runs between its ends, so that somebody without the drawing draws the same one.</summary>
/// <remarks>Measured when a step is printed, not when it is drafted.</remarks>
internal static class StepGuides
{
    // What a pencil line hides.
    private const double PencilMm = 25.4 / 32;

    // Near an end only where a curve turns there more than its next two points tell.
    private static readonly double[] Places = [0.125, 0.25, 0.5, 0.75, 0.875];

    /// <summary>A sentence for a step that drew one curve by hand, or went on along one; null for any other.</summary>
    internal static string? Of(Step step, TapeStep tape)
    {
        var figures = new GuideFigures(tape);
        if (step.Redrew is { } redrawn)
        {
            return redrawn.HipCurve is { } curve ? FromUpright(redrawn.From, curve, figures)
                : redrawn.Edge!.Darts.Count == 0 ? FromChord(redrawn.From, redrawn.To, redrawn.Edge.StretchesRaw[0], figures)
                : AlongParts(redrawn, redrawn.Edge, figures);
        }

        if (step.Template.StartsWith("Carry the ", StringComparison.Ordinal))
        {
            return OfGoingOn(step, figures);
        }

        return step.Template.StartsWith("Draw the ", StringComparison.Ordinal) && OnlyCurveOf(step) is { } line
            ? step.Template.IndexOf("hip curve", StringComparison.Ordinal) >= 0
                ? FromUpright(line.From.Name, line.Path, figures)
                : FromChord(line.From.Name, line.To.Name, line.Path, figures)
            : null;
    }

    private static DraftedLine? OnlyCurveOf(Step step)
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

        return only is { IsOneSegment: true, OnlyRaw.Kind: PathSegmentKind.Cubic } ? only : null;
    }

    // How far it has come in from the vertical through its foot.
    private static string? FromUpright(LandmarkName foot, CurvePath curve, GuideFigures figures)
    {
        Point2D from = curve.Start;
        bool goesUp = curve.End.YMm > from.YMm;
        List<(double AlongMm, double OffMm)>? points = Guides(curve, from, new Point2D(from.XMm, curve.End.YMm), Direction.Right, figures);
        return points is null ? null : Told(
            "Guide points, measured " + (goesUp ? "up" : "down") + " from " + foot.Text + " and then level: ", points, goesUp ? " up" : " down", " to the right", " to the left", figures) + ".";
    }

    // How far it lies off the straight line that joins its ends.
    private static string? FromChord(LandmarkName from, LandmarkName to, CurvePath curve, GuideFigures figures)
    {
        if (!TryFindAcross(curve, out Direction across, out string ahead, out string behind) || Guides(curve, curve.Start, curve.End, across, figures) is not { } points)
        {
            return null;
        }

        string told = Told(
            "Guide points, measured along the straight line from " + from.Text + " to " + to.Text + " and then square to it: ", points, " along", ahead, behind, figures) + ".";
        return told + SquareFor(curve.SegmentsRaw[0], curve.SegmentsRaw[curve.SegmentsRaw.Length - 1], figures);
    }

    // Of each part between darts: how long it is, and how far it lies off the straight line at its middle. Parts that are rounded one by one need not add up.
    private static string AlongParts(RedrawnCurve redrawn, PanelEdge edge, GuideFigures figures)
    {
        var text = new StringBuilder("To check it, with the darts open: ");
        CurvePath[] parts = edge.StretchesRaw;
        for (int i = 0; i < parts.Length; i++)
        {
            text.Append(i == 0 ? redrawn.From.Text : "dart " + Number(edge.DartsRaw[i - 1].Number)).Append(" to ")
                .Append(i == parts.Length - 1 ? redrawn.To.Text : "dart " + Number(edge.DartsRaw[i].Number))
                .Append(", ").Append(figures.Of(parts[i].LengthMm)).Append(" along it");
            if (TryFindAcross(parts[i], out Direction across, out string ahead, out string behind) && TryFindOff(parts[i], parts[i].Start.MidpointTo(parts[i].End), across, out double offMm))
            {
                text.Append(", at its middle ").Append(figures.Off(offMm, ahead, behind)).Append(figures.IsNothing(offMm) ? " off the straight line" : " the straight line");
            }

            text.Append(i == parts.Length - 1 ? ". Only the whole has to be right." : "; ");
        }

        CurvePath last = parts[parts.Length - 1];
        return text.Append(SquareFor(parts[0].SegmentsRaw[0], last.SegmentsRaw[last.SegmentsRaw.Length - 1], figures)).ToString();
    }

    // Where going on along a curve leads: nobody goes on along a parabola by eye.
    private static string? OfGoingOn(Step step, GuideFigures figures)
    {
        LandmarkName? from = null;
        foreach (StepWord word in step.Words)
        {
            from ??= word.Landmark;
            if (word.Line is { } name && step.FindLine(name) is { IsOneSegment: true, OnlyRaw.Kind: PathSegmentKind.Line })
            {
                return null;
            }
        }

        foreach (Landmark to in step.Marked)
        {
            Vector2D way = to.Position - step.Find(from!).Position;
            return "Then " + to.Name.Text + " lies " + figures.Off(way.XMm, " to the right of", " to the left of") + " " + from!.Text + " and "
                + figures.Off(way.YMm, " above", " below") + " it.";
        }

        return null;
    }

    private static string SquareFor(in PathSegment first, in PathSegment last, GuideFigures figures)
    {
        foreach (double lengthMm in figures.StraightEndsMm)
        {
            if (IsStraightFor(first, lengthMm) && IsStraightFor(last.Reversed(), lengthMm))
            {
                return " Keep it square for the first " + figures.Of(lengthMm) + " at either end.";
            }
        }

        return string.Empty;
    }

    private static bool IsStraightFor(in PathSegment segment, double lengthMm)
    {
        if (!segment.TryDirectionAtRaw(0, out Direction along) || segment.LengthMm() < 2 * lengthMm)
        {
            return false;
        }

        Point2D place = CurvePath.Trusted(segment).PointAtMm(lengthMm);
        return Math.Abs(along.TurnedLeft.Dot(place - segment.Start)) <= PencilMm;
    }

    // At round measures of the tape, as near to a quarter, a half and three quarters of the way as they lie.
    private static List<(double AlongMm, double OffMm)>? Guides(CurvePath curve, in Point2D from, in Point2D to, Direction across, GuideFigures figures)
    {
        double lengthMm = from.DistanceMm(to);
        if (!Direction.TryOfRaw(to.XMm - from.XMm, to.YMm - from.YMm, out Direction along))
        {
            return null;
        }

        var points = new List<(double AlongMm, double OffMm)>(Places.Length);
        bool isStraight = true;
        foreach (double part in Places)
        {
            double alongMm = Math.Round(lengthMm * part / figures.PlaceMm) * figures.PlaceMm;
            if (alongMm <= 0 || alongMm >= lengthMm || (points.Count > 0 && points[points.Count - 1].AlongMm == alongMm))
            {
                continue;
            }

            if (!TryFindOff(curve, from + along.TimesMm(alongMm), across, out double offMm))
            {
                return null;
            }

            if ((part is < 0.25 or > 0.75) && IsTold(curve, from, to, along, across, part))
            {
                continue;
            }

            isStraight &= figures.IsNothing(offMm);
            points.Add((alongMm, offMm));
        }

        return isStraight ? null : points;
    }

    // A parabola through the end and the two points next to it, at half of the way to the first of them.
    private static bool IsTold(CurvePath curve, in Point2D from, in Point2D to, in Direction along, in Direction across, double part)
    {
        double lengthMm = from.DistanceMm(to);
        Point2D end = part < 0.5 ? from : to;
        double stepMm = (part < 0.5 ? 1 : -1) * lengthMm / 4;
        Point2D beside = part < 0.5 ? curve.Start : curve.End;
        double endMm = across.Dot(beside - end);
        return TryFindOff(curve, end + along.TimesMm(stepMm / 2), across, out double offMm)
            && TryFindOff(curve, end + along.TimesMm(stepMm), across, out double nextMm)
            && TryFindOff(curve, end + along.TimesMm(2 * stepMm), across, out double middleMm)
            && Math.Abs((0.375 * endMm) + (0.75 * nextMm) - (0.125 * middleMm) - offMm) <= PencilMm / 2;
    }

    private static string Told(string before, List<(double AlongMm, double OffMm)> points, string way, string ahead, string behind, GuideFigures figures)
    {
        var text = new StringBuilder(before);
        for (int i = 0; i < points.Count; i++)
        {
            text.Append(i == 0 ? string.Empty : "; ").Append(figures.Of(points[i].AlongMm)).Append(way).Append(", ").Append(figures.Off(points[i].OffMm, ahead, behind));
        }

        return text.ToString();
    }

    // Above or below a chord that lies, to the right or left of one that stands.
    private static bool TryFindAcross(CurvePath curve, out Direction across, out string ahead, out string behind)
    {
        Vector2D chord = curve.End - curve.Start;
        across = default;
        bool lies = Math.Abs(chord.XMm) >= Math.Abs(chord.YMm);
        (ahead, behind) = lies ? (" above", " below") : (" to the right", " to the left");
        if (chord.LengthMm <= GeometryTolerance.JoinMm || !Direction.TryOfRaw(chord.XMm, chord.YMm, out Direction along))
        {
            return false;
        }

        across = (lies ? chord.XMm > 0 : chord.YMm < 0) ? along.TurnedLeft : along.TurnedRight;
        return true;
    }

    private static bool TryFindOff(CurvePath curve, in Point2D place, in Direction across, out double offMm)
    {
        offMm = double.PositiveInfinity;
        foreach (PathIntersection hit in curve.IntersectionsWith(Line.From(place, across)).Points)
        {
            double mm = across.Dot(hit.Point - place);
            offMm = Math.Abs(mm) < Math.Abs(offMm) ? mm : offMm;
        }

        return !double.IsInfinity(offMm);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Measures of a guide point: read to 1/32 in or to half a millimetre.</summary>
    private sealed class GuideFigures(TapeStep tape)
    {
        private readonly TapeStep _fine = tape.IsMetric
            ? tape.Parts >= TapeStep.HalfMillimeter.Parts ? tape : TapeStep.HalfMillimeter
            : tape.Parts >= TapeStep.ThirtySecond.Parts ? tape : TapeStep.ThirtySecond;

        /// <summary>What a ruler finds without counting.</summary>
        internal double PlaceMm { get; } = tape.IsMetric ? 5 : 25.4 / 4;

        internal double[] StraightEndsMm { get; } = tape.IsMetric ? [10, 5] : [25.4 / 2, 25.4 / 4];

        internal string Of(double lengthMm) => WorkedLength.DrawnMm(null, lengthMm).Describe(Tape.IsOnMark(lengthMm, tape) ? tape : _fine);

        internal bool IsNothing(double offMm) => Tape.MarksOf(offMm, _fine, TapeRounding.Nearest) == 0;

        internal string Off(double offMm, string ahead, string behind) => IsNothing(offMm) ? "nothing" : Of(Math.Abs(offMm)) + (offMm > 0 ? ahead : behind);
    }
}
