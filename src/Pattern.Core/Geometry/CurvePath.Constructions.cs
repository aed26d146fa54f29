using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Paths that drafters ask for.</content>
public sealed partial class CurvePath
{
    /// <summary>A smooth curve through points.</summary>
    /// <remarks>A cubic spline: heading and curvature run on without a jump at every point. Of all such curves that take the
    /// straight distances between the points as their measure of time, it is the one with the least integral of the squared
    /// second derivative. An end without a given heading begins without curvature, as a strip does that is not turned there.</remarks>
    /// <param name="points">At least two; no two that follow one another are the same.</param>
    /// <param name="startDirection">The heading with which it leaves the first point, or null to leave it free.</param>
    /// <param name="endDirection">The heading with which it arrives at the last point, or null to leave it free.</param>
    /// <returns>One cubic between each point and the next.</returns>
    /// <exception cref="ArgumentException">There are fewer than two points, or two that follow one another are the same.</exception>
    public static CurvePath Through(IEnumerable<Point2D> points, Direction? startDirection = null, Direction? endDirection = null)
    {
        Point2D[] p = new List<Point2D>(Guard.NotNull(points, nameof(points))).ToArray();
        Guard.InRange(p.Length, 2, int.MaxValue, nameof(points));
        int spans = p.Length - 1;
        var width = new double[spans];
        for (int i = 0; i < spans; i++)
        {
            width[i] = p[i].DistanceMm(p[i + 1]);
            if (!(width[i] > 0))
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PointsRepeat, i + 2, p[i]), nameof(points));
            }
        }

        Vector2D[] tangent = SplineTangents(p, width, startDirection, endDirection);
        var segments = new PathSegment[spans];
        for (int i = 0; i < spans; i++)
        {
            double third = width[i] / 3;
            segments[i] = PathSegment.FromCubic(new CubicBezier(p[i], p[i] + (tangent[i] * third), p[i + 1] - (tangent[i + 1] * third), p[i + 1]));
        }

        return new CurvePath(segments, isClosed: false);
    }

    /// <summary>This path with a corner rounded off by an arc that touches both sides.</summary>
    /// <param name="corner">The joint, counted by the segment that begins there: 1 is the joint of the first two segments, 0 the
    /// start of a closed path.</param>
    /// <param name="radius">The radius of the arc; greater than zero.</param>
    /// <remarks>Only the two segments at the corner are shortened. Lines, arcs and cubics can be filleted. A joint without a corner stays as it is.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no such joint, or the radius is not greater than zero.</exception>
    /// <exception cref="ConstructionException">An arc of that radius does not fit between the ends of both segments.</exception>
    [Pure]
    internal CurvePath Filleted(int corner, Length radius)
    {
        Guard.InRange(corner, IsClosed ? 0 : 1, _segments.Length - 1, nameof(corner));
        double radiusMm = GeometryTolerance.CheckedMm(radius, nameof(radius));
        int beforeIndex = corner == 0 ? _segments.Length - 1 : corner - 1;
        PathSegment before = _segments[beforeIndex];
        PathSegment after = _segments[corner];
        double turn = before.DirectionAtRaw(1).TurnRadTo(after.DirectionAtRaw(0));
        if (Math.Abs(turn) < 1e-9)
        {
            return this;
        }

        if (!Fillet.TryFind(before, after, radiusMm, turn, out double endBefore, out double startAfter, out CircularArc arc))
        {
            throw new ConstructionException(DiagnosticCode.FilletDoesNotFit, radius, after.Start) { Measured = radius };
        }

        var filleted = new List<PathSegment>(_segments) { [beforeIndex] = before.SubSegmentRaw(0, endBefore) };
        filleted[corner] = after.SubSegmentRaw(startAfter, 1);
        filleted.Insert(corner, PathSegment.FromArc(arc));
        return new CurvePath(filleted.ToArray(), IsClosed);
    }

    /// <summary>Tangents per unit of width at all points: a tridiagonal system, solved by elimination.</summary>
    private static Vector2D[] SplineTangents(Point2D[] p, double[] width, Direction? startDirection, Direction? endDirection)
    {
        int last = p.Length - 1;
        var tangent = new Vector2D[p.Length];
        var above = new double[p.Length];
        for (int i = 0; i <= last; i++)
        {
            // below * m[i-1] + middle * m[i] + upper * m[i+1] = right
            double below = i == 0 ? 0 : 1 / width[i - 1];
            double upper = i == last ? 0 : 1 / width[i];
            double middle = 2 * (below + upper);
            Vector2D right = (i == 0 ? default : (p[i] - p[i - 1]) * (3 * below * below))
                + (i == last ? default : (p[i + 1] - p[i]) * (3 * upper * upper));
            Direction? given = i == 0 ? startDirection : i == last ? endDirection : null;
            if (given is { } direction)
            {
                // Along a curve measured by its length the tangent has length 1; by straight distances, very nearly.
                below = 0;
                upper = 0;
                middle = 1;
                right = direction.TimesMm(1);
            }

            double pivot = middle - (i == 0 ? 0 : below * above[i - 1]);
            above[i] = upper / pivot;
            tangent[i] = (right - (i == 0 ? default : tangent[i - 1] * below)) * (1 / pivot);
        }

        for (int i = last - 1; i >= 0; i--)
        {
            tangent[i] -= tangent[i + 1] * above[i];
        }

        return tangent;
    }
}
