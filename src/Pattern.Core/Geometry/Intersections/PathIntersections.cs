using System.Collections.Generic;
using System.Collections.ObjectModel;

namespace Pattern.Core.Geometry;

/// <summary>All that two paths have in common: points, and stretches that lie on top of each other.</summary>
public sealed class PathIntersections
{
    internal PathIntersections(List<PathIntersection> points, List<PathOverlap> overlaps)
    {
        points.Sort(InOrder);
        Points = new ReadOnlyCollection<PathIntersection>(points);
        Overlaps = new ReadOnlyCollection<PathOverlap>(overlaps);
    }

    /// <summary>The points, in the order of the first path. A joint of segments counts once.</summary>
    public IReadOnlyList<PathIntersection> Points { get; }

    /// <summary>The stretches, in the order of the first path.</summary>
    public IReadOnlyList<PathOverlap> Overlaps { get; }

    /// <summary>Whether the paths have nothing in common.</summary>
    public bool IsEmpty => Points.Count == 0 && Overlaps.Count == 0;

    private static int InOrder(PathIntersection a, PathIntersection b)
    {
        int first = a.FirstPosition.CompareTo(b.FirstPosition);
        return first != 0 ? first : a.SecondPosition.CompareTo(b.SecondPosition);
    }

    /// <summary>How many points and stretches.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Points.Count} intersections, {Overlaps.Count} overlaps");
}
