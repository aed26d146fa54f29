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
        PathSegment[] all = path.SegmentsRaw;
        var part = new List<PathSegment>(to.Segment - from.Segment + 1);
        for (int i = from.Segment; i <= to.Segment; i++)
        {
            double start = i == from.Segment ? from.T : 0;
            double end = i == to.Segment ? to.T : 1;
            if (start < end)
            {
                part.Add(start == 0 && end == 1 ? all[i] : all[i].SubSegmentRaw(start, end));
            }
        }

        return part;
    }
}
