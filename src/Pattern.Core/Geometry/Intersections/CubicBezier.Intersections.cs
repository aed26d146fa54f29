using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Where it meets others.</content>
public readonly partial struct CubicBezier
{
    /// <summary>All that this curve and a cubic have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(CubicBezier other)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromCubic(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and a cubic have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(CubicBezier other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromCubic(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and a line segment have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(LineSegment other)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromLine(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and a line segment have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(LineSegment other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromLine(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and an arc have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(CircularArc other)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromArc(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and an arc have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(CircularArc other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromCubic(this), PathSegment.FromArc(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and a line without ends have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(Line other)
    {
        LineIntersector.Find(PathSegment.FromCubic(this), other, null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this curve and a line without ends have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(Line other, Length tolerance)
    {
        LineIntersector.Find(PathSegment.FromCubic(this), other, Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>Where the curve crosses itself, if it does: at most once.</summary>
    /// <param name="crossing">Both parameters, the smaller one first, and the point.</param>
    /// <returns>Whether it does. A cusp is no crossing, nor is a straight curve that turns back on itself.</returns>
    internal bool TryFindSelfIntersection(out Intersection crossing)
    {
        if (!new PowerCubic(MovedRaw(-X0, -Y0)).TrySelfCrossing(out double t, out double u))
        {
            crossing = default;
            return false;
        }

        double angle = TryDirectionAt(t, out Direction first) && TryDirectionAt(u, out Direction second) ? Math.Abs(first.TurnRadTo(second)) : 0;
        crossing = new Intersection(
            t, u, PointAtRaw(t).MidpointTo(PointAtRaw(u)), Math.Min(angle, Math.PI - angle), t == 0 || u == 1);
        return true;
    }
}
