using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Where it meets others.</content>
public readonly partial struct LineSegment
{
    /// <summary>All that this line and a cubic have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(CubicBezier other)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromCubic(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and a cubic have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(CubicBezier other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromCubic(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and a line segment have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(LineSegment other)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromLine(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and a line segment have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(LineSegment other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromLine(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and an arc have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(CircularArc other)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromArc(other), null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and an arc have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(CircularArc other, Length tolerance)
    {
        Intersector.Find(PathSegment.FromLine(this), PathSegment.FromArc(other), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and a line without ends have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <remarks>Ends count, tangencies are single points, and stretches that coincide are overlaps. Of curves much smaller than
    /// a millimetre a billionth of their size touches instead.</remarks>
    /// <param name="other">The other one.</param>
    [Pure]
    public CurveIntersections IntersectionsWith(Line other)
    {
        LineIntersector.Find(PathSegment.FromLine(this), other, null, out CurveIntersections hits);
        return hits;
    }

    /// <summary>All that this line and a line without ends have in common, with a tolerance.</summary>
    /// <param name="other">The other one.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public CurveIntersections IntersectionsWith(Line other, Length tolerance)
    {
        LineIntersector.Find(PathSegment.FromLine(this), other, Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)), out CurveIntersections hits);
        return hits;
    }
}
