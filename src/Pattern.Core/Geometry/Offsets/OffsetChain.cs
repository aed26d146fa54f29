using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <summary>What remains of an offset after it is trimmed, with round joins.</summary>
internal sealed class OffsetChain
{
    internal OffsetChain(List<PathSegment> segments, List<int> joins, bool isRing)
    {
        Segments = segments;
        Joins = joins;
        IsRing = isRing;
    }

    internal List<PathSegment> Segments { get; }

    /// <summary>Which segments are round joins of which nothing was cut off, ascending.</summary>
    internal List<int> Joins { get; }

    /// <summary>Whether the end meets the start.</summary>
    internal bool IsRing { get; }

    internal CurvePath ToPath() => CurvePath.Trusted(Segments.ToArray(), IsRing);
}
