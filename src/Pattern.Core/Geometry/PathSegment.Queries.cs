using System.Diagnostics.Contracts;

namespace Pattern.Core.Geometry;

/// <content>What can be asked of a segment.</content>
public readonly partial struct PathSegment
{
    /// <summary>A box around the segment that is quick to get: of a cubic the box of its control points.</summary>
    internal BoundingBox LooseBounds => Kind switch
    {
        PathSegmentKind.Line => LineRaw.Bounds,
        PathSegmentKind.Arc => ArcRaw.Bounds,
        _ => _data.ControlBounds,
    };

    /// <summary>The point of the segment that is nearest to a given point.</summary>
    /// <param name="point">Any point.</param>
    [Pure]
    public CurveLocation ClosestTo(Point2D point) => Kind switch
    {
        PathSegmentKind.Line => LineRaw.ClosestTo(point),
        PathSegmentKind.Arc => ArcRaw.ClosestTo(point),
        _ => _data.ClosestTo(point),
    };

    /// <summary>Finds the nearest point if its distance is less than a bound, which it then becomes.</summary>
    internal bool TryCloserRaw(in Point2D point, ref double distanceMm, out double t)
    {
        if (!(LooseBounds.DistanceMm(point) < distanceMm))
        {
            t = 0;
            return false;
        }

        double candidateMm;
        switch (Kind)
        {
            case PathSegmentKind.Line:
                t = LineRaw.ClosestToRaw(point);
                candidateMm = LineRaw.PointAtRaw(t).DistanceMm(point);
                break;
            case PathSegmentKind.Arc:
                t = ArcRaw.ClosestToRaw(point);
                candidateMm = ArcRaw.PointAtRaw(t).DistanceMm(point);
                break;
            default:
                return _data.TryCloserRaw(point, ref distanceMm, out t);
        }

        if (!(candidateMm < distanceMm))
        {
            return false;
        }

        distanceMm = candidateMm;
        return true;
    }
}
