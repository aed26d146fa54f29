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
        string template = right
            ? "From {0} measure level to the right: {1}. Mark {2} on the {3}, straight above or below that place."
            : "From {0} measure level to the left: {1}. Mark {2} on the {3}, straight above or below that place.";
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
        words[2] = WorkedLength.DrawnMm(line.Name.Text, wholeMm, Along(line)).DividedBy(parts);
        var template = new StringBuilder("Divide the {0} into {1} equal parts: {2}. Mark ");
        for (int i = 0; i < marks.Length; i++)
        {
            RefuseMarked(marks[i], Doing);
            int twice = Array.IndexOf(marks, marks[i], i + 1);
            if (twice >= 0)
            {
                throw Refuse(DiagnosticCode.LandmarkMarkedTwice, Doing, marks[i].Text, null, null, marks[i], line.Path.PointAtMm(wholeMm * (i + 1) / parts));
            }
        }

        for (int i = 0; i < marks.Length; i++)
        {
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
        WorkedLength half = WorkedLength.DrawnMm(first.Name.Text + " to " + second.Name.Text, way.LengthMm, Along(first, second)).Half();
        bool apart = Direction.TryOfRaw(way.XMm, way.YMm, out Direction toward);
        Point2D middle = _tape is null || !apart ? first.Position.MidpointTo(second.Position) : first.Position + toward.TimesMm(ToMarkMm(half.ValueMm));
        Landmark marked = Place(to, middle, LandmarkKind.Point, apart ? toward.AngleRad : double.NaN);
        Record("Mark {2} half-way from {0} to {1}: {3}.", first, second, to, half);
        return marked;
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
