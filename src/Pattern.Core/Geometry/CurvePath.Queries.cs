using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be asked of a path.</content>
public sealed partial class CurvePath
{
    /// <summary>The point of the path that is nearest to a given point: of all of them, not the first that is nearer than its neighbours.</summary>
    /// <remarks>Right to within rounding. Where two points are equally near, the one that comes first on the path is given.</remarks>
    /// <param name="point">Any point.</param>
    [Pure]
    public PathLocation ClosestTo(Point2D point)
    {
        double best = double.PositiveInfinity;
        int bestIndex = 0;
        double bestT = 0;
        for (int i = 0; i < _segments.Length; i++)
        {
            if (_segments[i].TryCloserRaw(point, ref best, out double t))
            {
                bestIndex = i;
                bestT = t;
            }
        }

        Point2D nearest = _segments[bestIndex].PointAtRaw(bestT);
        return new PathLocation(bestIndex, bestT, nearest, nearest.DistanceMm(point));
    }
}
