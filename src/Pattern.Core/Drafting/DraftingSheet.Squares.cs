using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Straight ways from a landmark, each to a new one.</content>
public sealed partial class DraftingSheet
{
    /// <summary>Squares a line down from a landmark and marks its end.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="distance">How far; zero or more.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, the landmark is not of this sheet, or the distance is negative.</exception>
    public Landmark SquareDown(Landmark from, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Square(from, Direction.Down, "squaring down", "Square down from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Squares a line up from a landmark and marks its end.</summary>
    /// <inheritdoc cref="SquareDown"/>
    public Landmark SquareUp(Landmark from, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Square(from, Direction.Up, "squaring up", "Square up from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Squares a line across from a landmark and marks its end.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="toward">To the left or to the right.</param>
    /// <param name="distance">How far; zero or more.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, the landmark is not of this sheet, or the distance is negative.</exception>
    public Landmark SquareAcross(Landmark from, Across toward, WorkedLength distance, LandmarkName to, LineName? draws = null) => IsRight(toward)
        ? Square(from, Direction.Right, "squaring across", "Square across to the right from {0}: {1}. Mark {2}.", distance, to, draws)
        : Square(from, Direction.Left, "squaring across", "Square across to the left from {0}: {1}. Mark {2}.", distance, to, draws);

    /// <summary>Draws a slanted line from a landmark in any direction and marks its end.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="toward">The way: <c>Direction.FromAngle(Angle.FromDegrees(-20))</c> falls 20 degrees to the right.</param>
    /// <param name="distance">How far; zero or more.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, the landmark is not of this sheet, or the distance is negative.</exception>
    public Landmark Slant(Landmark from, Direction toward, WorkedLength distance, LandmarkName to, LineName? draws = null)
        => Lay(from, toward, distance, to, draws, "slanting a line", LandmarkKind.Point, "Slant from {0} {3}: {1}. Mark {2}.", StepWord.Of(new Heading(toward)));

    /// <summary>Draws a straight line from a landmark toward another, any length, and marks its end.</summary>
    /// <param name="from">Where it begins.</param>
    /// <param name="toward">The landmark that it points at; the line may end before it or go on beyond.</param>
    /// <param name="distance">How far; zero or more.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, a landmark is not of this sheet, both lie at one place, or the distance is negative.</exception>
    public Landmark MarkToward(Landmark from, Landmark toward, WorkedLength distance, LandmarkName to, LineName? draws = null)
    {
        const string Doing = "marking toward a landmark";
        Direction way = WayBetween(from, toward, Doing);
        return Lay(from, way, distance, to, draws, Doing, LandmarkKind.Point, "From {0} toward {3} measure {1}. Mark {2}.", toward);
    }

    /// <summary>Squares a line off another at a landmark on it, and marks its end.</summary>
    /// <param name="line">The line that it is square to.</param>
    /// <param name="at">The landmark on that line where it begins.</param>
    /// <param name="toward">The side to which it goes; of the two ways, the one that leads there.</param>
    /// <param name="distance">How far; zero or more.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the new line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, the landmark is not on the line, the two ways lead neither more nor less to that side, or the distance is negative.</exception>
    public Landmark SquareOff(DraftedLine line, Landmark at, SheetSide toward, WorkedLength distance, LandmarkName to, LineName? draws = null)
    {
        const string Doing = "squaring off a line";
        Require(line, Doing);
        Require(at, Doing);
        PathLocation place = PlaceOn(line, at, Doing);
        PathSegment segment = line.Path.SegmentsRaw[place.SegmentIndex];
        if (!segment.TryDirectionAtRaw(place.Parameter, out Direction along))
        {
            throw Refuse(DiagnosticCode.PointsCoincide, Doing, at.Name.Text, 0, null, line.From.Name, line.To.Name);
        }

        double ahead = Toward(along.TurnedLeft.TimesMm(1), toward);
        if (System.Math.Abs(ahead) < UndecidedRad)
        {
            throw Refuse(DiagnosticCode.SideUndecided, Doing, at.Name.Text, 0, null, HeadingWords.Of(toward), at.Name);
        }

        string template = "Square off the {3} at {0}, " + HeadingWords.Of(toward) + ": {1}. Mark {2}.";
        return Lay(at, ahead > 0 ? along.TurnedLeft : along.TurnedRight, distance, to, draws, Doing, LandmarkKind.Point, template, line);
    }

    /// <summary>Squares from a landmark onto a line, and marks where it meets it at a right angle.</summary>
    /// <param name="from">The landmark, off the line.</param>
    /// <param name="line">The line.</param>
    /// <param name="to">The name of the place on the line.</param>
    /// <param name="draws">The name of the new line, where it is drawn and not only laid off.</param>
    /// <exception cref="ConstructionException">A name is taken, a landmark or line is not of this sheet, or the nearest place of the line is its end and not square to it.</exception>
    public Landmark SquareOnto(Landmark from, DraftedLine line, LandmarkName to, LineName? draws = null)
    {
        const string Doing = "squaring onto a line";
        Require(from, Doing);
        Require(line, Doing);
        PathLocation place = line.Path.ClosestTo(from.Position);
        Vector2D way = place.Point - from.Position;
        bool known = line.Path.SegmentsRaw[place.SegmentIndex].TryDirectionAtRaw(place.Parameter, out Direction along);
        if (!known || !Direction.TryOfRaw(way.XMm, way.YMm, out Direction toward) || System.Math.Abs(Dot(along, toward)) > SquareRad)
        {
            throw Refuse(DiagnosticCode.LineNotMet, Doing, from.Name.Text, way.LengthMm, null, line.Name, from.Name);
        }

        RefuseMarked(to, Doing);
        RefuseDrawn(draws, Doing);
        Landmark end = Place(to, place.Point, LandmarkKind.Point, toward.AngleRad);
        if (draws is not null)
        {
            Draw(draws, PathSegment.FromLine(new LineSegment(from.Position, end.Position)), from, end);
        }

        Record("Square from {0} onto the {1}. Mark {2}.", from, line, to);
        return end;
    }

    private Landmark Square(in Landmark from, Direction direction, string doing, string template, WorkedLength distance, LandmarkName to, LineName? draws, LandmarkKind kind = LandmarkKind.Point)
        => Lay(from, direction, distance, to, draws, doing, kind, template, null);

    private Landmark Lay(
        in Landmark from, in Direction direction, WorkedLength distance, LandmarkName to, LineName? draws, string doing, LandmarkKind kind, string template, StepWord? other)
    {
        Require(from, doing);
        double distanceMm = OffMm(distance, doing, from);
        RefuseMarked(to, doing);
        RefuseDrawn(draws, doing);
        Landmark end = Place(to, from.Position + direction.TimesMm(distanceMm), kind, direction.AngleRad);
        if (draws is not null)
        {
            Draw(draws, PathSegment.FromLine(new LineSegment(from.Position, end.Position)), from, end);
        }

        if (other is { } word)
        {
            Record(template, from, distance, to, word);
        }
        else
        {
            Record(template, from, distance, to);
        }

        return end;
    }

    private Direction WayBetween(in Landmark from, in Landmark to, string doing)
    {
        Require(from, doing);
        Require(to, doing);
        Vector2D way = to.Position - from.Position;
        return Direction.TryOfRaw(way.XMm, way.YMm, out Direction direction)
            ? direction
            : throw Refuse(DiagnosticCode.PointsCoincide, doing, to.Name.Text, 0, null, from.Name, to.Name);
    }

    private static bool IsRight(Across toward) => Guard.Choice((int)toward, 2, nameof(toward)) == (int)Across.Right;

    private static double Dot(in Direction a, in Direction b) => (a.X * b.X) + (a.Y * b.Y);

    /// <summary>How far a way leads to a side of the sheet.</summary>
    private static double Toward(in Vector2D way, SheetSide side) => (SheetSide)Guard.Choice((int)side, 4, nameof(side)) switch
    {
        SheetSide.Left => -way.XMm,
        SheetSide.Right => way.XMm,
        SheetSide.Above => way.YMm,
        _ => -way.YMm,
    };
}
