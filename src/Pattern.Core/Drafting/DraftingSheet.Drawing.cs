using System;
using System.Collections.Generic;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Drafting;

/// <content>Lines and curves between landmarks, and what is made of drawn ones.</content>
public sealed partial class DraftingSheet
{
    private const string CarryOn = "Carry the {3} on beyond {0}, in its own direction: {1}. Mark {2}.";

    /// <summary>Draws a straight line between two landmarks.</summary>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or both lie at one place.</exception>
    public DraftedLine Join(Landmark from, Landmark to, LineName draws)
    {
        const string Doing = "joining two landmarks";
        _ = WayBetween(from, to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        DraftedLine line = Draw(draws, PathSegment.FromLine(new LineSegment(from.Position, to.Position)), from, to);
        Record("Join {0} to {1}: the {2}.", from, to, draws);
        return line;
    }

    /// <summary>Draws a hip curve: it leaves one landmark straight up or down, along the upright line that it grows out of, and ends in the other.</summary>
    /// <remarks>The curve is the parabola whose axis is square to that line. The sideways distance grows with the square of the distance along the
    /// line, so the curve has no corner where it leaves the line, bulges outward all the way, and going on along the same
    /// curve never changes it.</remarks>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or both lie at one level.</exception>
    public DraftedLine HipCurve(Landmark from, Landmark to, LineName draws)
    {
        const string Doing = "drawing a hip curve";
        Require(from, Doing);
        Require(to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        double riseMm = to.Position.YMm - from.Position.YMm;
        if (riseMm == 0)
        {
            throw Refuse(DiagnosticCode.HipCurveLevel, Doing, to.Name.Text, 0, null, from.Name, to.Name);
        }

        DraftedLine line = Draw(draws, PathSegment.FromCubic(HipCurves.Vertical(from.Position, to.Position)), from, to);
        string template = riseMm > 0
            ? "Draw the {2} from {0} to {1}: a hip curve that leaves {0} straight up."
            : "Draw the {2} from {0} to {1}: a hip curve that leaves {0} straight down.";
        Record(template, from, to, draws);
        return line;
    }

    /// <summary>Goes on from the end of a line exactly along that line, whatever drew it, and marks where that leads.</summary>
    /// <remarks>A straight line goes on straight, an arc on its circle, a curve on its own polynomial: the line and what is added are one curve.</remarks>
    /// <param name="line">The line.</param>
    /// <param name="from">The landmark in which it begins or ends, and beyond which one goes on.</param>
    /// <param name="distance">Along the curve; zero or more.</param>
    /// <param name="to">The name of the new point.</param>
    /// <param name="draws">The name of the part that is added, where it is drawn.</param>
    /// <exception cref="ConstructionException">A name is taken, the landmark is no end of the line, the distance is negative, or the curve does not go on so far.</exception>
    public Landmark GoOnAlong(DraftedLine line, Landmark from, WorkedLength distance, LandmarkName to, LineName? draws = null)
    {
        const string Doing = "going on along a line";
        Require(line, Doing);
        Require(from, Doing);
        bool atEnd = from.Index == line.To.Index;
        if (!atEnd && from.Index != line.From.Index)
        {
            double offMm = Math.Min(line.From.Position.DistanceMm(from.Position), line.To.Position.DistanceMm(from.Position));
            throw Refuse(DiagnosticCode.LandmarkNoEnd, Doing, from.Name.Text, offMm, 0, from.Name, line.Name, line.From.Name, line.To.Name);
        }

        double distanceMm = OffMm(distance, Doing, from);
        RefuseMarked(to, Doing);
        RefuseDrawn(draws, Doing);
        PathSegment last = line.IsOneSegment ? line.OnlyRaw : line.Path.SegmentsRaw[atEnd ? line.Path.SegmentsRaw.Length - 1 : 0];
        PathSegment leading = atEnd ? last : last.Reversed();
        if (!leading.TryGoOnMm(distanceMm, out PathSegment added))
        {
            throw Refuse(DiagnosticCode.CurveEnds, Doing, from.Name.Text, distanceMm, null, line.Name, from.Name, Millimetres(distanceMm));
        }

        Landmark end = Place(to, added.End, LandmarkKind.Point, added.TryDirectionAtRaw(1, out Direction way) ? way.AngleRad : double.NaN);
        if (draws is not null)
        {
            Draw(draws, added, from, end);
        }

        Record(CarryOn, from, distance, to, line);
        return end;
    }

    /// <summary>Draws a curve from one landmark to another with given directions at both ends: the fairest one, and one that turns one way only wherever its ends leave such a curve.</summary>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or both lie at one place.</exception>
    public DraftedLine Curve(Landmark from, Direction leaving, Landmark to, Direction arriving, LineName draws)
    {
        const string Doing = "drawing a curve";
        _ = WayBetween(from, to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        bool isSquare = IsSquare(from, leaving, out DraftedLine? atFrom) & IsSquare(to, arriving, out DraftedLine? atTo);
        DraftedLine line = Draw(draws, PathSegment.FromCubic(CubicBezier.InOneSweep(from.Position, leaving, to.Position, arriving)), from, to);
        if (isSquare && atFrom is not null && atTo is not null)
        {
            Record("Draw the {2} from {0} to {1}, square to the {3} and to the {4}.", from, to, draws, atFrom, atTo);
        }
        else
        {
            var words = new List<StepWord> { from, to, draws };
            Record("Draw the {2} from {0} to {1}, " + EndsOf(from, leaving, to, arriving, words) + ".", [.. words]);
        }

        return line;
    }

    /// <summary>Draws a curve of a required length from one landmark to another with given directions at both ends.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="leaving">The heading with which it leaves.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="arriving">The heading with which it arrives.</param>
    /// <param name="length">Along the curve.</param>
    /// <param name="draws">The name of the curve.</param>
    /// <exception cref="ConstructionException">The name is taken, both landmarks lie at one place, or no such curve has that length.</exception>
    public DraftedLine CurveOfLength(Landmark from, Direction leaving, Landmark to, Direction arriving, WorkedLength length, LineName draws)
    {
        const string Doing = "drawing a curve of a length";
        _ = WayBetween(from, to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        double lengthMm = OffMm(length, Doing, from);
        var words = new List<StepWord> { from, to, draws, length };
        string ends = EndsOf(from, leaving, to, arriving, words);
        CubicBezier curve;
        try
        {
            curve = CubicBezier.BetweenWithLength(from.Position, leaving, to.Position, arriving, Millimetres(lengthMm));
        }
        catch (ConstructionException refusal) when (refusal is { Measured: { } measured, Allowed: { } allowed })
        {
            throw Refuse(refusal.Code, Doing, draws.Text, measured.Millimeters, allowed.Millimeters, measured, allowed);
        }

        DraftedLine line = Draw(draws, PathSegment.FromCubic(curve), from, to);
        Record("Draw the {2} from {0} to {1}, " + ends + ", so that it measures {3}.", [.. words]);
        return line;
    }

    /// <summary>Draws one smooth curve through landmarks in order.</summary>
    /// <param name="draws">The name of the curve.</param>
    /// <param name="through">Two landmarks or more.</param>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or two that follow one another lie at one place.</exception>
    public DraftedLine CurveThrough(LineName draws, params Landmark[] through) => CurveThrough(draws, through, null, null);

    /// <summary>Draws one smooth curve through landmarks in order, with a given direction at one or both ends.</summary>
    /// <param name="draws">The name of the curve.</param>
    /// <param name="through">Two landmarks or more.</param>
    /// <param name="leaving">The heading with which it leaves; null leaves it free.</param>
    /// <param name="arriving">The heading with which it arrives; null leaves it free.</param>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or two that follow one another lie at one place.</exception>
    public DraftedLine CurveThrough(LineName draws, IReadOnlyList<Landmark> through, Direction? leaving, Direction? arriving)
    {
        const string Doing = "drawing a curve through points";
        int count = Guard.InRange(Guard.NotNull(through, nameof(through)).Count, 2, 99, nameof(through));
        var points = new Point2D[count];
        var words = new List<StepWord>(count + 3) { Guard.NotNull(draws, nameof(draws)) };
        RefuseDrawn(draws, Doing);
        var template = new StringBuilder("Draw the {0} through ");
        for (int i = 0; i < count; i++)
        {
            Require(through[i], Doing);
            if (i > 0)
            {
                _ = WayBetween(through[i - 1], through[i], Doing);
            }

            points[i] = through[i].Position;
            words.Add(through[i]);
            template.Append(i == 0 ? "{" : ", {").Append(i + 1).Append('}');
        }

        Landmark last = through[count - 1];
        template.Append(leaving is { } first ? ", leaving {1} " + EndOf(through[0], first, words) : string.Empty)
            .Append(arriving is { } end ? ", arriving at {" + count.ToString(System.Globalization.CultureInfo.InvariantCulture) + "} " + EndOf(last, end, words) : string.Empty)
            .Append('.');
        DraftedLine line = DrawPath(draws, CurvePath.Through(points, leaving, arriving), through[0], last);
        Record(template.ToString(), [.. words]);
        return line;
    }

    /// <summary>Draws an arc with the compass and marks its end.</summary>
    /// <param name="centre">Where the compass stands.</param>
    /// <param name="from">Where the arc begins.</param>
    /// <param name="sweep">How far it goes round: positive anticlockwise, negative clockwise; once round at most.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the arc.</param>
    /// <exception cref="ConstructionException">A name is taken, a landmark is not of this sheet, or both lie at one place.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The sweep is more than a whole turn.</exception>
    public DraftedLine Arc(Landmark centre, Landmark from, Angle sweep, LandmarkName to, LineName draws)
    {
        const string Doing = "drawing an arc";
        _ = WayBetween(centre, from, Doing);
        CircularArc arc = CircularArc.Around(centre.Position, from.Position, sweep);
        RefuseMarked(to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        Landmark end = Place(to, arc.End, LandmarkKind.Point, arc.EndDirection.AngleRad);
        DraftedLine line = Draw(draws, PathSegment.FromArc(arc), from, end);
        string degrees = Math.Abs(sweep.Degrees).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
        Record(
            sweep.Degrees < 0
                ? "Set the compass on {0} and draw the {3} from {1}, {4} degrees clockwise. Mark {2}."
                : "Set the compass on {0} and draw the {3} from {1}, {4} degrees anticlockwise. Mark {2}.",
            centre,
            from,
            to,
            draws,
            degrees);
        return line;
    }

    /// <summary>Draws a line of your own making, where no verb of the sheet draws it.</summary>
    /// <param name="draws">The name of the line.</param>
    /// <param name="path">Where it lies; open, from the first landmark to the last.</param>
    /// <param name="from">The landmark that it begins in.</param>
    /// <param name="to">The landmark that it ends in.</param>
    /// <exception cref="ConstructionException">The name is taken, or the path does not begin and end in the landmarks.</exception>
    public DraftedLine Draw(LineName draws, CurvePath path, Landmark from, Landmark to)
    {
        const string Doing = "drawing a line of its own";
        Require(from, Doing);
        Require(to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        RefuseEndOff(draws, Guard.NotNull(path, nameof(path)).Start, from, Doing);
        RefuseEndOff(draws, path.End, to, Doing);
        DraftedLine line = DrawPath(draws, path, from, to);
        Record("Draw the {2} from {0} to {1}.", from, to, draws);
        return line;
    }

    private void RefuseEndOff(LineName line, in Point2D end, in Landmark landmark, string doing)
    {
        double offMm = end.DistanceMm(landmark.Position);
        if (offMm > GeometryTolerance.JoinMm)
        {
            throw Refuse(DiagnosticCode.LandmarkOffLine, doing, landmark.Name.Text, offMm, GeometryTolerance.JoinMm, landmark.Name, Millimetres(offMm), line);
        }
    }

    private string EndsOf(in Landmark from, in Direction leaving, in Landmark to, in Direction arriving, List<StepWord> words)
        => "leaving {0} " + EndOf(from, leaving, words) + " and arriving at {1} " + EndOf(to, arriving, words);

    private string EndOf(in Landmark end, in Direction direction, List<StepWord> words)
    {
        bool isSquare = IsSquare(end, direction, out DraftedLine? to);
        if (isSquare && to is null)
        {
            return "square to the line there";
        }

        words.Add(isSquare ? to! : StepWord.Of(new Heading(direction)));
        string place = "{" + (words.Count - 1).ToString(System.Globalization.CultureInfo.InvariantCulture) + "}";
        return isSquare ? "square to the " + place : place;
    }

    /// <summary>Whether a direction is square to a line drawn to or from a landmark, or to the way that led there.</summary>
    private bool IsSquare(in Landmark end, in Direction direction, out DraftedLine? to)
    {
        foreach (DraftedLine line in _lines)
        {
            if (line.Touches(end) && line.TryDirectionAt(end, out Direction along) && Math.Abs(Dot(direction, along)) <= SquareRad)
            {
                to = line;
                return true;
            }
        }

        to = null;
        double reached = _reachedRad[end.Index];
        if (double.IsNaN(reached) || Math.Abs(Dot(direction, Direction.FromRadians(reached))) > SquareRad)
        {
            return false;
        }

        to = LineThrough(end, Direction.FromRadians(reached));
        return true;
    }

    /// <summary>The line that was carried on to a landmark, or a straight one that it lies in line with; null where neither was drawn.</summary>
    private DraftedLine? LineThrough(in Landmark end, in Direction way)
    {
        Step? marked = null;
        for (int i = _steps.Count - 1; i >= 0 && _steps[i].MarkedSoFar > end.Index; i--)
        {
            marked = _steps[i];
        }

        if (ReferenceEquals(marked?.Template, CarryOn))
        {
            return LineOf(marked!.Words[3].Line!);
        }

        foreach (DraftedLine line in _lines)
        {
            if (line.IsOneSegment && line.OnlyRaw.Kind == PathSegmentKind.Line && line.TryDirectionAt(line.From, out Direction along)
                && Math.Abs(Dot(way.TurnedLeft, along)) <= SquareRad && Math.Abs(along.TurnedLeft.Dot(end.Position - line.From.Position)) <= GeometryTolerance.JoinMm)
            {
                return line;
            }
        }

        return null;
    }
}
