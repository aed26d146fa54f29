using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>A place on a path by segment and parameter, so that cutting there costs no search along it.</summary>
internal readonly record struct PathSpot(int Segment, double T)
{
    internal bool IsBefore(PathSpot other) => Segment < other.Segment || (Segment == other.Segment && T < other.T);

    internal PathSpot Moved(int segments) => new(Segment + segments, T);

    internal static PathSpot StartOf(CurvePath path) => new(0, 0);

    internal static PathSpot EndOf(CurvePath path) => new(path.SegmentsRaw.Length - 1, 1);

    /// <summary>The segments of a path from one place to a later one; none where there is nothing between.</summary>
    internal static List<PathSegment> Between(CurvePath path, PathSpot from, PathSpot to)
    {
        var part = new List<PathSegment>(Math.Max(0, to.Segment - from.Segment + 1));
        path.AddPart(from.Segment, from.T, to.Segment, to.T, part);
        return part;
    }
}
