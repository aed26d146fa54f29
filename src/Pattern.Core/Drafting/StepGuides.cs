using System;
using System.Collections.Generic;
using System.Globalization;
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
    internal static string? Of(Step step, TapeStep tape) => Of(step, tape, Phrasebook.English);

    internal static string? Of(Step step, TapeStep tape, Phrasebook book)
    {
        var figures = new GuideFigures(tape, book);
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
        return points is null ? null : figures.Book.Say(
            goesUp ? "Guide points, measured up from {foot} and then level: {points}." : "Guide points, measured down from {foot} and then level: {points}.",
            ("foot", figures.Book.Say(foot.Text)),
            ("points", Told(points, goesUp ? "{along} up, {off}" : "{along} down, {off}", Side.Across, figures)));
    }

    // How far it lies off the straight line that joins its ends.
    private static string? FromChord(LandmarkName from, LandmarkName to, CurvePath curve, GuideFigures figures)
    {
        if (!TryFindAcross(curve, out Direction across, out Side side) || Guides(curve, curve.Start, curve.End, across, figures) is not { } points)
        {
            return null;
        }

        string told = figures.Book.Say(
            "Guide points, measured along the straight line from {from} to {to} and then square to it: {points}.",
            ("from", figures.Book.Say(from.Text)),
            ("to", figures.Book.Say(to.Text)),
            ("points", Told(points, "{along} along, {off}", side, figures)));
        return told + SquareFor(curve.SegmentsRaw[0], curve.SegmentsRaw[curve.SegmentsRaw.Length - 1], figures);
    }

    // Of each part between darts: how long it is, and how far it lies off the straight line at its middle. Parts that are rounded one by one need not add up.
    private static string AlongParts(RedrawnCurve redrawn, PanelEdge edge, GuideFigures figures)
    {
        Phrasebook book = figures.Book;
        CurvePath[] parts = edge.StretchesRaw;
        var told = new List<string>(parts.Length);
        for (int i = 0; i < parts.Length; i++)
        {
            (string Name, string Value) from = ("from", i == 0 ? book.Say(redrawn.From.Text) : book.Say("dart {number}", ("number", Number(edge.DartsRaw[i - 1].Number))));
            (string Name, string Value) to = ("to", i == parts.Length - 1 ? book.Say(redrawn.To.Text) : book.Say("dart {number}", ("number", Number(edge.DartsRaw[i].Number))));
            (string Name, string Value) length = ("length", figures.Of(parts[i].LengthMm));
            told.Add(!TryFindAcross(parts[i], out Direction across, out Side side) || !TryFindOff(parts[i], parts[i].Start.MidpointTo(parts[i].End), across, out double offMm)
                ? book.Say("{from} to {to}, {length} along it", from, to, length)
                : figures.IsNothing(offMm)
                ? book.Say("{from} to {to}, {length} along it, at its middle nothing off the straight line", from, to, length)
                : book.Say("{from} to {to}, {length} along it, at its middle {off} the straight line", from, to, length, ("off", figures.Off(offMm, side))));
        }

        CurvePath last = parts[parts.Length - 1];
        return book.Say("To check it by eye, with the darts open: {parts}. Each part is rounded by itself; what has to be right is the whole.", ("parts", OneAfterTheOther(told, book)))
            + SquareFor(parts[0].SegmentsRaw[0], last.SegmentsRaw[last.SegmentsRaw.Length - 1], figures);
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
            string across = way.XMm > 0 ? "{across} to the right of {from}" : "{across} to the left of {from}";
            string upright = way.YMm > 0 ? "{upright} above" : "{upright} below";
            return figures.Book.Say(
                figures.IsNothing(way.XMm) ? "Then {to} lies " + upright + " {from}, on one upright line with it."
                    : figures.IsNothing(way.YMm) ? "Then {to} lies " + across + ", on a level with it."
                    : "Then {to} lies " + across + " and " + upright + " it.",
                ("to", figures.Book.Say(to.Name.Text)),
                ("from", figures.Book.Say(from!.Text)),
                ("across", figures.Of(Math.Abs(way.XMm))),
                ("upright", figures.Of(Math.Abs(way.YMm))));
        }

        return null;
    }

    private static string SquareFor(in PathSegment first, in PathSegment last, GuideFigures figures)
    {
        foreach (double lengthMm in figures.StraightEndsMm)
        {
            if (IsStraightFor(first, lengthMm) && IsStraightFor(last.Reversed(), lengthMm))
            {
                return " " + figures.Book.Say("It leaves both ends square, and over the first {length} hardly bends.", ("length", figures.Of(lengthMm)));
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

    private static string Told(List<(double AlongMm, double OffMm)> points, string point, Side side, GuideFigures figures)
        => OneAfterTheOther(points.ConvertAll(one => figures.Book.Say(point, ("along", figures.Of(one.AlongMm)), ("off", figures.Off(one.OffMm, side)))), figures.Book);

    private static string OneAfterTheOther(List<string> things, Phrasebook book)
    {
        string told = things[0];
        for (int i = 1; i < things.Count; i++)
        {
            told = book.Say("{first}; {next}", ("first", told), ("next", things[i]));
        }

        return told;
    }

    // Above or below a chord that lies, to the right or left of one that stands.
    private static bool TryFindAcross(CurvePath curve, out Direction across, out Side side)
    {
        Vector2D chord = curve.End - curve.Start;
        across = default;
        bool lies = Math.Abs(chord.XMm) >= Math.Abs(chord.YMm);
        side = lies ? Side.Upright : Side.Across;
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

    private enum Side
    {
        Across,
        Upright,
    }

    /// <summary>Measures of a guide point: read to 1/32 in or to half a millimetre.</summary>
    private sealed class GuideFigures(TapeStep tape, Phrasebook book)
    {
        private readonly TapeStep _fine = tape.IsMetric
            ? tape.Parts >= TapeStep.HalfMillimeter.Parts ? tape : TapeStep.HalfMillimeter
            : tape.Parts >= TapeStep.ThirtySecond.Parts ? tape : TapeStep.ThirtySecond;

        /// <summary>What a ruler finds without counting.</summary>
        internal double PlaceMm { get; } = tape.IsMetric ? 5 : 25.4 / 4;

        internal double[] StraightEndsMm { get; } = tape.IsMetric ? [10, 5] : [25.4 / 2, 25.4 / 4];

        internal string Of(double lengthMm) => WorkedLength.DrawnMm(null, lengthMm).Describe(Tape.IsOnMark(lengthMm, tape) ? tape : _fine);

        internal bool IsNothing(double offMm) => Tape.MarksOf(offMm, _fine, TapeRounding.Nearest) == 0;

        internal Phrasebook Book { get; } = book;

        internal string Off(double offMm, Side side) => IsNothing(offMm)
            ? Book.Say("nothing")
            : Book.Say(
                side == Side.Across ? offMm > 0 ? "{distance} to the right" : "{distance} to the left" : offMm > 0 ? "{distance} above" : "{distance} below",
                ("distance", Of(Math.Abs(offMm))));
    }
}
