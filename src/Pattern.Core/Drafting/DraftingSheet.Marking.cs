using System;
using System.Collections.Generic;
using System.Text;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Points: from other points, and on lines that are drawn.</content>
public sealed partial class DraftingSheet
{
    // A right angle, and a side told from its opposite, to this much: far above rounding, far below what a set square can do.
    private const double SquareRad = 1e-7;
    private const double UndecidedRad = 1e-7;

    /// <summary>Marks a point to draft from.</summary>
    /// <param name="name">What the point is called.</param>
    /// <param name="position">Where it lies.</param>
    /// <param name="kind">What the point is.</param>
    /// <exception cref="ConstructionException">The name is taken.</exception>
    public Landmark Mark(LandmarkName name, Point2D position, LandmarkKind kind = LandmarkKind.Point)
    {
        RefuseMarked(name, "marking a point");
        Landmark marked = Place(name, position, kind);
        Record("Mark {0}.", name);
        return marked;
    }

    /// <summary>Marks a point by two distances from a landmark, one across and one up or down.</summary>
    /// <param name="from">The landmark that both are measured from.</param>
    /// <param name="toward">To the left or to the right.</param>
    /// <param name="across">How far across; zero or more.</param>
    /// <param name="way">Up or down.</param>
    /// <param name="upright">How far up or down; zero or more.</param>
    /// <param name="to">The name of the point.</param>
    /// <exception cref="ConstructionException">The name is taken, the landmark is not of this sheet, or a distance is negative.</exception>
    public Landmark MarkFrom(Landmark from, Across toward, WorkedLength across, Upright way, WorkedLength upright, LandmarkName to)
    {
        const string Doing = "marking from a landmark";
        Require(from, Doing);
        bool right = IsRight(toward);
        bool up = Guard.Choice((int)way, 2, nameof(way)) == (int)Upright.Up;
        double acrossMm = OffMm(across, Doing, from);
        double uprightMm = OffMm(upright, Doing, from);
        RefuseMarked(to, Doing);
        Landmark marked = Place(to, from.Position + new Vector2D(right ? acrossMm : -acrossMm, up ? uprightMm : -uprightMm));
        Record("From {0} measure " + (right ? "to the right" : "to the left") + ": {1}, and " + (up ? "up" : "down") + ": {2}. Mark {3}.", from, across, upright, to);
        return marked;
    }

    /// <summary>Measures along a line or curve from a landmark on it, and marks the place.</summary>
    /// <param name="line">The line.</param>
    /// <param name="from">A landmark on it. From an end one measures to the other end.</param>
    /// <param name="distance">Along the line; zero or more, and no more than there is of it.</param>
    /// <param name="to">The name of the place.</param>
    /// <param name="toward">Another landmark on the line, which says the way; needed unless one begins at an end.</param>
    /// <exception cref="ConstructionException">The name is taken, a landmark is not on the line, the way is open, or the line ends before the distance.</exception>
    public Landmark MarkAlong(DraftedLine line, Landmark from, WorkedLength distance, LandmarkName to, Landmark? toward = null)
    {
        const string Doing = "marking along a line";
        Require(line, Doing);
        Require(from, Doing);
        double fromMm = AlongOf(line, from, Doing);
        double wholeMm = line.LengthMm();
        double towardMm = toward is { } other ? AlongOf(line, other, Doing) : from.Index == line.From.Index ? wholeMm : from.Index == line.To.Index ? 0 : fromMm;
        if (towardMm == fromMm)
        {
            throw Refuse(DiagnosticCode.WayUndecided, Doing, from.Name.Text, null, null, from.Name, line.Name);
        }

        double distanceMm = OffMm(distance, Doing, from);
        double roomMm = towardMm > fromMm ? wholeMm - fromMm : fromMm;
        if (distanceMm > roomMm + GeometryTolerance.JoinMm)
        {
            throw Refuse(DiagnosticCode.DistanceOffLine, Doing, from.Name.Text, distanceMm, roomMm, Millimetres(distanceMm), line.Name, from.Name, Millimetres(roomMm));
        }

        RefuseMarked(to, Doing);
        double atMm = Math.Min(wholeMm, Math.Max(0, towardMm > fromMm ? fromMm + distanceMm : fromMm - distanceMm));
        Landmark marked = PlaceAlong(line, atMm, to);
        if (toward is { } named)
        {
            Record("From {0} measure along the {1} toward {4}: {2}. Mark {3}.", from, line, distance, to, named);
        }
        else
        {
            Record("From {0} measure along the {1}: {2}. Mark {3}.", from, line, distance, to);
        }

        return marked;
    }

    /// <summary>Measures across from a landmark, and marks the place on a line straight above or below.</summary>
    /// <remarks>Where the line passes there more than once, the place nearest to the level of the landmark counts.</remarks>
    /// <param name="line">The line that carries the new point.</param>
    /// <param name="from">The landmark that is measured from, on the line or off it.</param>
    /// <param name="toward">To the left or to the right.</param>
    /// <param name="distance">How far across; zero or more.</param>
    /// <param name="to">The name of the place on the line.</param>
    /// <exception cref="ConstructionException">The name is taken, the distance is negative, or the line passes neither above nor below that place.</exception>
    public Landmark MarkOnto(DraftedLine line, Landmark from, Across toward, WorkedLength distance, LandmarkName to)
    {
        const string Doing = "marking onto a line";
        Require(line, Doing);
        Require(from, Doing);
        bool right = IsRight(toward);
        double acrossMm = OffMm(distance, Doing, from);
        RefuseMarked(to, Doing);
        var below = new Point2D(from.Position.XMm + (right ? acrossMm : -acrossMm), from.Position.YMm);
        if (!line.TryCross(Line.Vertical(below), below, out Point2D place, out _))
        {
            double hand = right ? 1 : -1;
            double reachMm = Math.Max(hand * (line.Path.Start.XMm - from.Position.XMm), hand * (line.Path.End.XMm - from.Position.XMm));
            throw Refuse(DiagnosticCode.LineNotMet, Doing, line.Name.Text, acrossMm, reachMm, line.Name, from.Name);
        }

        Landmark marked = Place(to, place);
        string template = right ? "From {0} measure across to the right: {1}. Mark {2} on the {3}." : "From {0} measure across to the left: {1}. Mark {2} on the {3}.";
        Record(template, from, distance, to, line);
        return marked;
    }

    /// <summary>Divides a line into equal parts, along itself, and marks the places between.</summary>
    /// <param name="line">The line.</param>
    /// <param name="marks">The names of the places, from the start of the line: one name halves it, two divide it in three.</param>
    /// <exception cref="ConstructionException">A name is taken, or the line is not of this sheet.</exception>
    public IReadOnlyList<Landmark> Divide(DraftedLine line, params LandmarkName[] marks)
    {
        const string Doing = "dividing a line";
        Require(line, Doing);
        int parts = Guard.InRange(Guard.NotNull(marks, nameof(marks)).Length, 1, 99, nameof(marks)) + 1;
        double wholeMm = line.LengthMm();
        var placed = new Landmark[marks.Length];
        var words = new StepWord[marks.Length + 3];
        words[0] = line;
        words[1] = parts;
        words[2] = WorkedLength.DrawnMm(line.Name.Text, wholeMm).DividedBy(parts);
        var template = new StringBuilder("Divide the {0} into {1} equal parts: {2}. Mark ");
        for (int i = 0; i < marks.Length; i++)
        {
            RefuseMarked(marks[i], Doing);

            // Laid off from the start each, as along one tape, so that what is rounded does not add up.
            placed[i] = PlaceAlong(line, Math.Min(wholeMm, ToMarkMm(wholeMm * (i + 1) / parts)), marks[i]);
            words[i + 3] = marks[i];
            template.Append(i == 0 ? "{" : ", {").Append(i + 3).Append('}');
        }

        Record(template.Append('.').ToString(), words);
        return placed;
    }

    /// <summary>Marks the middle between two landmarks.</summary>
    /// <exception cref="ConstructionException">The name is taken, or a landmark is not of this sheet.</exception>
    public Landmark Midpoint(Landmark first, Landmark second, LandmarkName to)
    {
        const string Doing = "halving a distance";
        Require(first, Doing);
        Require(second, Doing);
        RefuseMarked(to, Doing);
        Vector2D way = second.Position - first.Position;
        WorkedLength half = WorkedLength.DrawnMm(first.Name.Text + " to " + second.Name.Text, way.LengthMm).Half();
        bool apart = Direction.TryOfRaw(way.XMm, way.YMm, out Direction toward);
        Point2D middle = _tape is null || !apart ? first.Position.MidpointTo(second.Position) : first.Position + toward.TimesMm(ToMarkMm(half.ValueMm));
        Landmark marked = Place(to, middle, LandmarkKind.Point, apart ? toward.AngleRad : double.NaN);
        Record("Mark {2} half-way from {0} to {1}: {3}.", first, second, to, half);
        return marked;
    }

    /// <summary>Marks the place that lies at given distances from two landmarks, where two circles of a compass cross.</summary>
    /// <param name="first">The one landmark.</param>
    /// <param name="firstDistance">The distance from it, greater than zero.</param>
    /// <param name="second">The other landmark.</param>
    /// <param name="secondDistance">The distance from it, greater than zero.</param>
    /// <param name="side">Which of the two crossings is meant.</param>
    /// <param name="to">The name of the place.</param>
    /// <exception cref="ConstructionException">The name is taken, the circles do not meet, or the side does not tell their crossings apart.</exception>
    public Landmark Compass(Landmark first, WorkedLength firstDistance, Landmark second, WorkedLength secondDistance, SheetSide side, LandmarkName to)
    {
        const string Doing = "setting the compass";
        Direction along = WayBetween(first, second, Doing);
        double firstMm = OffMm(firstDistance, Doing, first);
        double secondMm = OffMm(secondDistance, Doing, second);
        double apartMm = first.Position.DistanceMm(second.Position);
        double leastMm = Math.Abs(firstMm - secondMm);
        double mostMm = firstMm + secondMm;
        if (apartMm > mostMm + GeometryTolerance.JoinMm || apartMm < leastMm - GeometryTolerance.JoinMm)
        {
            double allowed = apartMm > mostMm ? mostMm : leastMm;
            throw Refuse(DiagnosticCode.CompassDoesNotReach, Doing, to?.Text, apartMm, allowed, first.Name, second.Name, Millimetres(apartMm), Millimetres(leastMm), Millimetres(mostMm));
        }

        // Along the line between the landmarks, and square to it; (a - b)(a + b) keeps its digits where the circles nearly touch.
        double alongMm = (apartMm + ((firstMm - secondMm) * (firstMm + secondMm) / apartMm)) / 2;
        double acrossMm = Math.Sqrt(Math.Max(0, (firstMm - alongMm) * (firstMm + alongMm)));
        double ahead = Toward(along.TurnedLeft.TimesMm(1), side);
        if (acrossMm > GeometryTolerance.JoinMm && Math.Abs(ahead) < UndecidedRad)
        {
            throw Refuse(DiagnosticCode.SideUndecided, Doing, to?.Text, 0, null, HeadingWords.Of(side), first.Name);
        }

        RefuseMarked(to!, Doing);
        Landmark marked = Place(to!, first.Position + along.TimesMm(alongMm) + along.TurnedLeft.TimesMm(ahead > 0 ? acrossMm : -acrossMm));
        Record("Set the compass on {0}: {1}, and on {2}: {3}. Mark {4} where they cross, " + HeadingWords.WhichOf(side) + ".", first, firstDistance, second, secondDistance, to!);
        return marked;
    }

    /// <summary>Swings a distance from a landmark until it meets a line, and marks the place.</summary>
    /// <param name="from">The landmark.</param>
    /// <param name="distance">How far from it, straight; greater than zero.</param>
    /// <param name="onto">The line.</param>
    /// <param name="side">Which of the places is meant where there are two or more.</param>
    /// <param name="to">The name of the place.</param>
    /// <param name="draws">The name of the straight line from the landmark, where it is drawn.</param>
    /// <exception cref="ConstructionException">The name is taken, the circle does not meet the line, or the side does not tell the places apart.</exception>
    public Landmark Swing(Landmark from, WorkedLength distance, DraftedLine onto, SheetSide side, LandmarkName to, LineName? draws = null)
    {
        const string Doing = "swinging a distance";
        Require(from, Doing);
        Require(onto, Doing);
        double distanceMm = OffMm(distance, Doing, from);
        var found = new List<Point2D>();
        if (distanceMm > 0)
        {
            foreach (PathLocation place in onto.Path.FindAtDistanceFrom(from.Position, Millimetres(distanceMm)))
            {
                found.Add(place.Point);
            }
        }

        if (found.Count == 0)
        {
            double nearestMm = onto.Path.ClosestTo(from.Position).DistanceMm;
            throw Refuse(DiagnosticCode.LineNotMet, Doing, onto.Name.Text, distanceMm, nearestMm, onto.Name, from.Name);
        }

        Point2D chosen = Choose(found, side, onto, Doing);
        RefuseMarked(to, Doing);
        RefuseDrawn(draws, Doing);
        Vector2D way = chosen - from.Position;
        Landmark marked = Place(to, chosen, LandmarkKind.Point, Math.Atan2(way.YMm, way.XMm));
        if (draws is not null)
        {
            Draw(draws, PathSegment.FromLine(new LineSegment(from.Position, chosen)), from, marked);
        }

        Record(
            found.Count == 1 ? "From {0} swing {1} onto the {2}. Mark {3}." : "From {0} swing {1} onto the {2}. Of the places where it meets, mark " + HeadingWords.WhichOf(side) + " {3}.",
            from, distance, onto, to);
        return marked;
    }

    /// <summary>Marks where two lines cross.</summary>
    /// <param name="first">One line.</param>
    /// <param name="second">The other line.</param>
    /// <param name="to">The name of the place.</param>
    /// <param name="side">Which crossing is meant; needed where they cross more than once.</param>
    /// <exception cref="ConstructionException">The name is taken, the lines do not cross, or cross more than once and no side tells which.</exception>
    public Landmark Intersect(DraftedLine first, DraftedLine second, LandmarkName to, SheetSide? side = null)
    {
        const string Doing = "crossing two lines";
        Require(first, Doing);
        Require(second, Doing);
        IReadOnlyList<PathIntersection> hits = first.Path.IntersectionsWith(second.Path).Points;
        if (hits.Count == 0)
        {
            double apartMm = ApartMm(first, second);
            throw Refuse(DiagnosticCode.LinesDoNotCross, Doing, to?.Text, apartMm, 0, first.Name, second.Name, Millimetres(apartMm));
        }

        var found = new List<Point2D>();
        foreach (PathIntersection hit in hits)
        {
            found.Add(hit.Point);
        }

        if (found.Count > 1 && side is null)
        {
            throw Refuse(DiagnosticCode.CrossingUndecided, Doing, to?.Text, null, null, first.Name, second.Name, found.Count);
        }

        Point2D chosen = side is { } which ? Choose(found, which, second, Doing) : found[0];
        RefuseMarked(to!, Doing);
        Landmark marked = Place(to!, chosen);
        Record(
            found.Count == 1 ? "Mark {2} where the {0} crosses the {1}." : "Of the places where the {0} crosses the {1}, mark " + HeadingWords.WhichOf(side!.Value) + " {2}.",
            first, second, to!);
        return marked;
    }

    private static UnitsNet.Length Millimetres(double value) => UnitsNet.Length.FromMillimeters(value);

    // From the ends of one to the other: how far one would have to go on.
    private static double ApartMm(DraftedLine first, DraftedLine second) => Math.Min(
        Math.Min(second.Path.ClosestTo(first.Path.Start).DistanceMm, second.Path.ClosestTo(first.Path.End).DistanceMm),
        Math.Min(first.Path.ClosestTo(second.Path.Start).DistanceMm, first.Path.ClosestTo(second.Path.End).DistanceMm));

    private Point2D Choose(List<Point2D> found, SheetSide side, DraftedLine line, string doing)
    {
        Point2D best = found[0];
        double next = double.NegativeInfinity;
        for (int i = 1; i < found.Count; i++)
        {
            double ahead = Toward(found[i] - Point2D.Origin, side);
            double bestAhead = Toward(best - Point2D.Origin, side);
            next = Math.Max(next, Math.Min(ahead, bestAhead));
            best = ahead > bestAhead ? found[i] : best;
        }

        double leadMm = Toward(best - Point2D.Origin, side) - next;
        return leadMm > GeometryTolerance.JoinMm
            ? best
            : throw Refuse(DiagnosticCode.SideUndecided, doing, line.Name.Text, leadMm, GeometryTolerance.JoinMm, HeadingWords.Of(side), line.Name);
    }

    private Landmark PlaceAlong(DraftedLine line, double alongMm, LandmarkName to)
    {
        int index = line.Path.Locate(alongMm, out double t);
        PathSegment segment = line.Path.SegmentsRaw[index];
        return Place(to, segment.PointAtRaw(t), LandmarkKind.Point, segment.TryDirectionAtRaw(t, out Direction along) ? along.AngleRad : double.NaN);
    }

    private PathLocation PlaceOn(DraftedLine line, in Landmark landmark, string doing)
    {
        PathLocation place = line.Path.ClosestTo(landmark.Position);
        return place.DistanceMm <= GeometryTolerance.JoinMm
            ? place
            : throw Refuse(
                DiagnosticCode.LandmarkOffLine, doing, landmark.Name.Text, place.DistanceMm, GeometryTolerance.JoinMm, landmark.Name, Millimetres(place.DistanceMm), line.Name);
    }

    private double AlongOf(DraftedLine line, in Landmark landmark, string doing)
    {
        Require(landmark, doing);
        return landmark.Index == line.From.Index ? 0
            : landmark.Index == line.To.Index ? line.LengthMm()
            : line.Path.LengthToMm(PlaceOn(line, landmark, doing));
    }
}
