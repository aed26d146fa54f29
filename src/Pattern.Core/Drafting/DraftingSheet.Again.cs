using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Lines drawn again: higher, lower, mirrored, or in part.</content>
public sealed partial class DraftingSheet
{
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

    /// <summary>Draws the line that lies beside another everywhere at one distance, as one marks a hem with a gauge.</summary>
    /// <remarks>Straight lines and arcs stay what they are; beside a curve the line is right to 0.001 mm.</remarks>
    /// <param name="line">The line.</param>
    /// <param name="distance">Square to the line, everywhere; greater than zero.</param>
    /// <param name="toward">The side on which the new line lies, in the middle of the line.</param>
    /// <param name="from">The name of its start.</param>
    /// <param name="to">The name of its end.</param>
    /// <param name="draws">The name of the new line.</param>
    /// <exception cref="ConstructionException">A name is taken, the line is not of this sheet, the side is undecided, the distance is negative, or the line turns too tightly for it.</exception>
    public DraftedLine Parallel(DraftedLine line, WorkedLength distance, SheetSide toward, LandmarkName from, LandmarkName to, LineName draws)
    {
        const string Doing = "drawing a line beside another";
        Require(line, Doing);
        double distanceMm = OffMm(distance, Doing, line.From);
        RefuseMarked(from, Doing);
        RefuseMarked(to, Doing);
        RefuseDrawn(Guard.NotNull(draws, nameof(draws)), Doing);
        int middle = line.Path.Locate(line.LengthMm() / 2, out double t);
        double ahead = line.Path.SegmentsRaw[middle].TryDirectionAtRaw(t, out Direction along) ? Toward(along.TurnedLeft.TimesMm(1), toward) : 0;
        if (Math.Abs(ahead) < UndecidedRad)
        {
            throw Refuse(DiagnosticCode.SideUndecided, Doing, line.Name.Text, 0, null, HeadingWords.Of(toward), line.Name);
        }

        System.Collections.Generic.IReadOnlyList<CurvePath> beside = line.Path.Offset(Millimetres(ahead > 0 ? distanceMm : -distanceMm), OffsetJoin.Round).Paths;
        if (beside.Count != 1 || from.Equals(to))
        {
            throw Refuse(DiagnosticCode.OffsetVanishes, Doing, line.Name.Text, distanceMm, null, Millimetres(distanceMm));
        }

        Landmark start = Place(from, beside[0].Start);
        Landmark end = Place(to, beside[0].End);
        DraftedLine drawn = DrawPath(draws, beside[0], start, end);
        Record("Draw the {2} everywhere {1} from the {0}, " + HeadingWords.Of(toward) + ", from {3} to {4}.", line, distance, draws, from, to);
        return drawn;
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
        DraftedLine drawn = DrawPath(draws, part, from, to);
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
        DraftedLine drawn = DrawPath(draws, path, start, end);
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
}
