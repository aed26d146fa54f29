using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>Where a path meets others and itself.</content>
public sealed partial class CurvePath
{
    /// <summary>All that this path and another one have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <param name="other">The other path.</param>
    [Pure]
    public PathIntersections IntersectionsWith(CurvePath other) => PathCrossings.Between(this, Guard.NotNull(other, nameof(other)), null);

    /// <summary>All that this path and another one have in common, with a tolerance.</summary>
    /// <param name="other">The other path.</param>
    /// <param name="tolerance">What comes nearer than this touches; at least what rounding does to the coordinates.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public PathIntersections IntersectionsWith(CurvePath other, Length tolerance) => PathCrossings.Between(
        this, Guard.NotNull(other, nameof(other)), Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)));

    /// <summary>All that this path and a line without ends have in common; what comes nearer than <see cref="GeometryTolerance.Default"/> touches.</summary>
    /// <param name="line">The line.</param>
    [Pure]
    public PathIntersections IntersectionsWith(Line line) => PathCrossings.With(this, line, null);

    /// <summary>Where the path meets itself, its joints aside; of a closed path the joint of end and start is one of these.</summary>
    /// <remarks>Both parameters of a point are of this path; the first is the earlier one. What comes nearer than
    /// <see cref="GeometryTolerance.Default"/> touches. Around a joint a loop smaller than <see cref="GeometryTolerance.Join"/> is not looked for.</remarks>
    [Pure]
    public PathIntersections SelfIntersections()
    {
        var points = new List<PathIntersection>();
        var overlaps = new List<PathOverlap>();
        PathCrossings.IsClear(this, null, points, overlaps);
        return new PathIntersections(points, overlaps);
    }

    /// <summary>The first of these points, in the order of the path; where a path of many segments crosses itself everywhere, all of them would take minutes.</summary>
    internal IReadOnlyList<PathIntersection> FirstSelfIntersections(int most)
    {
        var points = new List<PathIntersection>();
        PathCrossings.IsClear(this, null, points, new List<PathOverlap>(), most);
        return points;
    }

    /// <summary>Whether the path neither crosses nor touches itself, its joints aside.</summary>
    /// <remarks>Stops at the first contact. Nothing is allocated for paths of up to 64 segments.</remarks>
    [Pure]
    public bool IsSimple() => PathCrossings.IsClear(this, null, null, null);
}
