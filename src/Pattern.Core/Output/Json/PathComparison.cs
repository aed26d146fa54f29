using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>How far apart two lines lie that should be one, however each is cut into segments.</summary>
internal static class PathComparison
{
    /// <summary>As for every check of what is drawn.</summary>
    internal const double AllowedMm = 0.01;

    private const int PlacesPerSegment = 16;

    /// <summary>The largest distance, from places all along either line, to the other one; or between their ends. Where it is more than allowed, the first that is.</summary>
    internal static double ApartMm(CurvePath one, CurvePath other)
    {
        if (one.IsClosed == other.IsClosed && one.SegmentsRaw.SequenceEqual(other.SegmentsRaw))
        {
            return 0;
        }

        double ends = one.IsClosed && other.IsClosed ? 0 : Math.Max(one.Start.DistanceMm(other.Start), one.End.DistanceMm(other.End));
        double apart = ends > AllowedMm ? ends : FarthestMm(one, other);
        return apart > AllowedMm ? apart : Math.Max(apart, FarthestMm(other, one));
    }

    private static double FarthestMm(CurvePath from, CurvePath to)
    {
        double farthest = 0;
        foreach (PathSegment segment in from.SegmentsRaw)
        {
            for (int i = 0; i <= PlacesPerSegment; i++)
            {
                farthest = Math.Max(farthest, to.ClosestTo(segment.PointAtRaw((double)i / PlacesPerSegment)).DistanceMm);
                if (farthest > AllowedMm)
                {
                    return farthest;
                }
            }
        }

        return farthest;
    }
}
