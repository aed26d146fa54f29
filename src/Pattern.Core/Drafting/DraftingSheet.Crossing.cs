using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;

namespace Pattern.Core.Drafting;

/// <content>Points where a compass or two lines cross.</content>
public sealed partial class DraftingSheet
{
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
}
