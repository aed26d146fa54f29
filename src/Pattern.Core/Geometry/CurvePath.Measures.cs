using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>What can be measured along a path, and places on it.</content>
public sealed partial class CurvePath
{
    /// <summary>By how much the heading turns from start to end, corners included, left turns positive.</summary>
    /// <remarks>Of a closed path that does not cross itself it is one whole turn, counter-clockwise positive. A corner that turns
    /// straight back, and a cusp, have no side and count as none.</remarks>
    internal Angle TotalTurning
    {
        get
        {
            double sum = 0;
            bool hasLast = false;
            Direction first = default;
            Direction last = default;
            foreach (PathSegment segment in _segments)
            {
                if (!segment.TryDirectionAtRaw(0, out Direction start) || !segment.TryDirectionAtRaw(1, out Direction end))
                {
                    continue;
                }

                sum += (hasLast ? CornerRad(last, start) : 0) + segment.TurningRad;
                first = hasLast ? first : start;
                last = end;
                hasLast = true;
            }

            return Angle.FromRadians(sum + (hasLast && IsClosed ? CornerRad(last, first) : 0));
        }
    }

    /// <summary>The place at a distance along the path from its start.</summary>
    /// <param name="distance">Along the path.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused.</exception>
    [Pure]
    internal PathLocation LocationAtLength(Length distance, BeyondEnds beyond = BeyondEnds.Refuse)
    {
        int index = Locate(CheckedDistance(distance, nameof(distance), beyond), out double t);
        return new PathLocation(index, t, _segments[index].PointAtRaw(t), 0);
    }

    /// <summary>The point at a distance along the path from its start.</summary>
    /// <param name="distance">Along the path.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused.</exception>
    [Pure]
    public Point2D PointAtLength(Length distance, BeyondEnds beyond = BeyondEnds.Refuse) => LocationAtLength(distance, beyond).Point;

    /// <summary>The heading at a place; at a corner, the heading with which the path goes on.</summary>
    /// <param name="location">A place on this path.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on this path.</exception>
    /// <exception cref="ConstructionException">The segment there is a single point.</exception>
    [Pure]
    internal Direction DirectionAt(PathLocation location) => SegmentOf(location).DirectionAtRaw(location.Parameter);

    /// <summary>The heading at a distance along the path; at a corner, the heading with which the path goes on.</summary>
    /// <param name="distance">Along the path.</param>
    /// <param name="beyond">What happens to a negative distance or one beyond the end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end, and that is refused.</exception>
    /// <exception cref="ConstructionException">The segment there is a single point.</exception>
    [Pure]
    internal Direction DirectionAtLength(Length distance, BeyondEnds beyond = BeyondEnds.Refuse) => DirectionAt(LocationAtLength(distance, beyond));

    /// <summary>The signed curvature at a place, left turn positive.</summary>
    /// <param name="location">A place on this path.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on this path.</exception>
    /// <exception cref="ConstructionException">There is a cusp: the curvature has no bound.</exception>
    [Pure]
    internal ReciprocalLength CurvatureAt(PathLocation location)
    {
        PathSegment segment = SegmentOf(location);
        return segment.Kind switch
        {
            PathSegmentKind.Line => ReciprocalLength.Zero,
            PathSegmentKind.Arc => segment.ArcRaw.Curvature,
            _ => segment.CubicRaw.CurvatureAt(location.Parameter),
        };
    }

    /// <summary>The distance along the path from its start to a place.</summary>
    /// <param name="location">A place on this path.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on this path.</exception>
    [Pure]
    public Length LengthTo(PathLocation location)
    {
        _ = SegmentOf(location);
        return Length.FromMillimeters(LengthToMm(location));
    }

    /// <summary>The points that divide the path into equal lengths, start and end included.</summary>
    /// <param name="parts">How many lengths; at least 1.</param>
    /// <returns>One point more than there are parts; on a closed path the last is the start again.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 1 or more than a million parts.</exception>
    [Pure]
    internal Point2D[] PointsAtEqualLengths(int parts)
    {
        Guard.InRange(parts, 1, 1_000_000, nameof(parts));
        var points = new Point2D[parts + 1];
        points[0] = Start;
        points[parts] = End;
        for (int i = 1; i < parts; i++)
        {
            int index = Locate(LengthMm * i / parts, out double t);
            points[i] = _segments[index].PointAtRaw(t);
        }

        return points;
    }

    /// <summary>All places of the path at a distance from a point, as a pair of compasses finds them.</summary>
    /// <param name="centre">Where the point of the compasses stands.</param>
    /// <param name="distance">How far they are opened; greater than zero.</param>
    /// <returns>In order along the path; touching counts. A stretch of an arc about the same centre is no single place and is left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not greater than zero.</exception>
    [Pure]
    public IReadOnlyList<PathLocation> FindAtDistanceFrom(Point2D centre, Length distance)
    {
        double radiusMm = GeometryTolerance.CheckedMm(distance, nameof(distance));
        var found = new List<PathLocation>();
        for (int i = 0; i < _segments.Length; i++)
        {
            Compass.Find(_segments[i], centre, radiusMm, i, found);
        }

        // A joint belongs to both of its segments, but is one place.
        for (int i = found.Count - 1; i > 0; i--)
        {
            if (found[i].SegmentIndex > found[i - 1].SegmentIndex && found[i].Parameter < 0.5 && found[i - 1].Parameter > 0.5 && Meets(found[i - 1].Point, found[i].Point))
            {
                found.RemoveAt(i - 1);
            }
        }

        if (IsClosed && found.Count > 1 && Meets(found[found.Count - 1].Point, found[0].Point) && found[0].SegmentIndex == 0 && found[0].Parameter < 0.5
            && found[found.Count - 1].SegmentIndex == _segments.Length - 1 && found[found.Count - 1].Parameter > 0.5)
        {
            found.RemoveAt(found.Count - 1);
        }

        return found;
    }

    /// <summary>Finds the segment and its parameter at a length that lies on the path.</summary>
    internal int Locate(double distanceMm, out double t)
    {
        double[] lengths = LengthsMm;
        int index = Array.BinarySearch(lengths, 0, _segments.Length, distanceMm);
        index = index >= 0 ? index : ~index - 1;
        index = Math.Max(0, index);
        double withinMm = distanceMm - lengths[index];
        double segmentMm = lengths[index + 1] - lengths[index];
        t = withinMm <= 0 ? 0 : withinMm >= segmentMm ? 1 : _segments[index].ParameterAtLengthMm(withinMm);
        return index;
    }

    private static double CornerRad(in Direction from, in Direction to)
    {
        double turn = from.TurnRadTo(to);
        return Math.Abs(turn) > Math.PI - 1e-12 ? 0 : turn;
    }

    private PathSegment SegmentOf(in PathLocation location)
        => _segments[Guard.InRange(location.SegmentIndex, 0, _segments.Length - 1, nameof(location))];

    private double CheckedDistance(Length distance, string parameter, BeyondEnds beyond = BeyondEnds.Refuse)
    {
        double slackMm = beyond == BeyondEnds.StopAtEnd ? double.MaxValue : GeometryTolerance.SlackMm(LengthMm);
        return Raw.Clamp(Guard.Millimetres(distance, -slackMm, LengthMm + slackMm, parameter), 0, LengthMm);
    }
}
