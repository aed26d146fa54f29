using System;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>Room for an outline that is only looked over: every panel that is made is, and an array of each length serves a thread again and again.</summary>
internal static class OutlineRoom
{
    private const int MostKept = 32;

    [ThreadStatic]
    private static PathSegment[]?[]? _kept;

    /// <summary>Room for so many segments, until it is asked for again on this thread.</summary>
    internal static PathSegment[] Rent(int count)
    {
        if (count > MostKept)
        {
            return new PathSegment[count];
        }

        _kept ??= new PathSegment[]?[MostKept + 1];
        return _kept[count] ??= new PathSegment[count];
    }
}
