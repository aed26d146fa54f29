using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

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

    /// <summary>Whether the closed path goes round a point; what is nearer to it than <see cref="GeometryTolerance.Default"/> lies on it.</summary>
    /// <remarks>Inside is what the path goes round in either sense, however often: where a path goes round twice, or there and back,
    /// ask <see cref="WindingNumberAround"/>. Exact on arcs and cubics.</remarks>
    /// <param name="point">Any point.</param>
    /// <exception cref="InvalidOperationException">The path is open.</exception>
    [Pure]
    public Containment ContainmentOf(Point2D point) => ContainmentRaw(point, GeometryTolerance.DefaultMm);

    /// <summary>Whether the closed path goes round a point, with a tolerance.</summary>
    /// <param name="point">Any point.</param>
    /// <param name="tolerance">What is nearer to the path than this lies on it; at least what rounding does to the coordinates.</param>
    /// <exception cref="InvalidOperationException">The path is open.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    [Pure]
    public Containment ContainmentOf(Point2D point, Length tolerance)
        => ContainmentRaw(point, Guard.Millimetres(tolerance, 0, double.MaxValue, nameof(tolerance)));

    /// <summary>How often the closed path goes round a point, counter-clockwise positive; 0 outside. On the path itself it is 0 too.</summary>
    /// <param name="point">Any point.</param>
    /// <exception cref="InvalidOperationException">The path is open.</exception>
    [Pure]
    internal int WindingNumberAround(Point2D point)
    {
        RequireClosed();
        WindingNumber.TryCount(this, point, PointToleranceMm(point, GeometryTolerance.DefaultMm), out int number);
        return number;
    }

    private static double PointToleranceMm(in Point2D point, double askedMm)
        => Math.Max(askedMm, 8 * Raw.Epsilon * Math.Max(Math.Abs(point.XMm), Math.Abs(point.YMm)));

    private Containment ContainmentRaw(in Point2D point, double toleranceMm)
    {
        RequireClosed();
        return !WindingNumber.TryCount(this, point, PointToleranceMm(point, toleranceMm), out int number) ? Containment.Boundary
            : number != 0 ? Containment.Inside : Containment.Outside;
    }

    private void RequireClosed()
    {
        if (!IsClosed)
        {
            throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.PathOpen));
        }
    }
}
