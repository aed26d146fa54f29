using System;
using System.Collections.Generic;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Lines and curves between landmarks, and what is made of drawn ones.</content>
public sealed partial class DraftingSheet
{
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

        Record("Go on from {0} along the {3}: {1}. Mark {2}.", from, distance, to, line);
        return end;
    }

    /// <summary>Draws a curve from one landmark to another with given directions at both ends: the fairest one.</summary>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not of this sheet, or both lie at one place.</exception>
    public DraftedLine Curve(Landmark from, Direction leaving, Landmark to, Direction arriving, LineName draws)
    {
        const string Doing = "drawing a curve";
        _ = WayBetween(from, to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        string template = IsSquare(from, leaving) && IsSquare(to, arriving)
            ? "Draw the {2} from {0} to {1}, square to the line at either end."
            : "Draw the {2} from {0} to {1}, " + EndsOf(from, leaving, to, arriving) + ".";
        DraftedLine line = Draw(draws, PathSegment.FromCubic(CubicBezier.Between(from.Position, leaving, to.Position, arriving)), from, to);
        Record(template, from, to, draws);
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
        string ends = EndsOf(from, leaving, to, arriving);
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
        Record("Draw the {2} from {0} to {1}, " + ends + ", so that it measures {3}.", from, to, draws, length);
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
        var words = new StepWord[count + 1];
        words[0] = Guard.NotNull(draws, nameof(draws));
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
            words[i + 1] = through[i];
            template.Append(i == 0 ? "{" : ", {").Append(i + 1).Append('}');
        }

        Landmark last = through[count - 1];
        template.Append(leaving is { } first ? ", leaving {1} " + EndOf(through[0], first) : string.Empty)
            .Append(arriving is { } end ? ", arriving at {" + count.ToString(System.Globalization.CultureInfo.InvariantCulture) + "} " + EndOf(last, end) : string.Empty)
            .Append('.');
        DraftedLine line = Draw(draws, CurvePath.Through(points, leaving, arriving), through[0], last);
        Record(template.ToString(), words);
        return line;
    }

    /// <summary>Draws a line again, higher up the sheet by a distance.</summary>
    /// <param name="line">The line.</param>
    /// <param name="distance">Straight up; zero or more.</param>
    /// <param name="from">The name of its new start.</param>
    /// <param name="to">The name of its new end.</param>
    /// <param name="draws">The name of the new line.</param>
    /// <exception cref="ConstructionException">A name is taken, the line is not of this sheet, or the distance is negative.</exception>
    public DraftedLine Lift(DraftedLine line, WorkedLength distance, LandmarkName from, LandmarkName to, LineName draws)
        => Shift(line, distance, Direction.Up, "lifting a line", "Lift the {0} by {1}: the {2}, from {3} to {4}.", from, to, draws);

    /// <summary>Draws a line again, lower down the sheet by a distance.</summary>
    /// <inheritdoc cref="Lift"/>
    /// <param name="line">The line.</param>
    /// <param name="distance">Straight down; zero or more.</param>
    /// <param name="from">The name of its new start.</param>
    /// <param name="to">The name of its new end.</param>
    /// <param name="draws">The name of the new line.</param>
    public DraftedLine Drop(DraftedLine line, WorkedLength distance, LandmarkName from, LandmarkName to, LineName draws)
        => Shift(line, distance, Direction.Down, "dropping a line", "Drop the {0} by {1}: the {2}, from {3} to {4}.", from, to, draws);

    /// <summary>Draws the mirror image of a line over a straight one.</summary>
    /// <param name="line">The line.</param>
    /// <param name="over">The mirror line: a straight one, which counts beyond its ends as well.</param>
    /// <param name="from">The name of the image of its start.</param>
    /// <param name="to">The name of the image of its end.</param>
    /// <param name="draws">The name of the new line.</param>
    /// <exception cref="ConstructionException">A name is taken, a line is not of this sheet, or the mirror line is not straight.</exception>
    public DraftedLine Mirror(DraftedLine line, DraftedLine over, LandmarkName from, LandmarkName to, LineName draws)
    {
        const string Doing = "mirroring a line";
        Require(line, Doing);
        return DrawAgain(line, MirrorOver(over, Doing), Doing, from, to, draws, "Mirror the {0} over the {1}: the {2}, from {3} to {4}.", over);
    }

    /// <summary>Marks the mirror image of a landmark over a straight line.</summary>
    /// <param name="landmark">The landmark.</param>
    /// <param name="over">The mirror line: a straight one, which counts beyond its ends as well.</param>
    /// <param name="to">The name of the image.</param>
    /// <exception cref="ConstructionException">The name is taken, the landmark is not of this sheet, or the mirror line is not straight.</exception>
    public Landmark Mirror(Landmark landmark, DraftedLine over, LandmarkName to)
    {
        const string Doing = "mirroring a landmark";
        Require(landmark, Doing);
        Transform2D mirror = MirrorOver(over, Doing);
        RefuseMarked(to, Doing);
        Landmark image = Place(to, mirror.Apply(landmark.Position), landmark.Kind);
        Record("Mirror {0} over the {1}. Mark {2}.", landmark, over, to);
        return image;
    }

    /// <summary>Draws a part of a line again under a name of its own.</summary>
    /// <param name="line">The line.</param>
    /// <param name="from">Where the part begins, a landmark on the line.</param>
    /// <param name="to">Where it ends, another one; before the first, the part runs backwards.</param>
    /// <param name="draws">The name of the part.</param>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not on the line, or both lie at one place.</exception>
    public DraftedLine Part(DraftedLine line, Landmark from, Landmark to, LineName draws)
    {
        const string Doing = "tracing a part of a line";
        Require(line, Doing);
        double fromMm = AlongOf(line, from, Doing);
        double toMm = AlongOf(line, to, Doing);
        if (Math.Abs(fromMm - toMm) <= GeometryTolerance.JoinMm)
        {
            throw Refuse(DiagnosticCode.PointsCoincide, Doing, to.Name.Text, 0, null, from.Name, to.Name);
        }

        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        CurvePath part = fromMm < toMm ? line.Path.SubPathMm(fromMm, toMm) : line.Path.SubPathMm(toMm, fromMm).Reversed();
        DraftedLine drawn = Draw(draws, part, from, to);
        Record("Trace the {0} from {1} to {2}: the {3}.", line, from, to, draws);
        return drawn;
    }

    private DraftedLine Shift(DraftedLine line, WorkedLength distance, Direction way, string doing, string template, LandmarkName from, LandmarkName to, LineName draws)
    {
        Require(line, doing);
        Vector2D by = way.TimesMm(OffMm(distance, doing, line.From));
        return DrawAgain(line, Transform2D.Translation(by), doing, from, to, draws, template, distance);
    }

    private DraftedLine DrawAgain(DraftedLine line, in Transform2D move, string doing, LandmarkName from, LandmarkName to, LineName draws, string template, StepWord by)
    {
        RefuseMarked(from, doing);
        RefuseMarked(to, doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), doing);
        CurvePath path = line.Path.Transformed(move);
        if (from.Equals(to))
        {
            throw Refuse(DiagnosticCode.LandmarkMarkedTwice, doing, to.Text, null, null, to, path.Start);
        }

        Landmark start = Place(from, path.Start);
        Landmark end = Place(to, path.End);
        DraftedLine drawn = Draw(draws, path, start, end);
        Record(template, line, by, draws, from, to);
        return drawn;
    }

    private Transform2D MirrorOver(DraftedLine over, string doing)
    {
        Require(over, doing);
        return over.IsOneSegment && over.OnlyRaw.Kind == PathSegmentKind.Line && over.LengthMm() > 0
            ? Transform2D.Mirror(Line.Through(over.Path.Start, over.Path.End))
            : throw Refuse(DiagnosticCode.MirrorNotStraight, doing, over.Name.Text, null, null, over.Name);
    }

    private string EndsOf(in Landmark from, in Direction leaving, in Landmark to, in Direction arriving) => IsSquare(from, leaving) && IsSquare(to, arriving)
        ? "square to the line at either end"
        : "leaving {0} " + EndOf(from, leaving) + " and arriving at {1} " + EndOf(to, arriving);

    private string EndOf(in Landmark end, in Direction direction) => IsSquare(end, direction) ? "square to the line there" : HeadingWords.Of(direction);

    /// <summary>Whether a direction is square to the way that led to a landmark, or to a line drawn to or from it.</summary>
    private bool IsSquare(in Landmark end, in Direction direction)
    {
        double reached = _reachedRad[end.Index];
        if (!double.IsNaN(reached) && Math.Abs(Dot(direction, Direction.FromRadians(reached))) <= SquareRad)
        {
            return true;
        }

        foreach (DraftedLine line in _lines)
        {
            if (line.Touches(end) && line.TryDirectionAt(end, out Direction along) && Math.Abs(Dot(direction, along)) <= SquareRad)
            {
                return true;
            }
        }

        return false;
    }
}
