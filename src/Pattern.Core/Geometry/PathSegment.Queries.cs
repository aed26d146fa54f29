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

    /// <summary>A cubic whose control polygon holds the segment and whose legs span its headings: itself, or the tangents of a short arc.</summary>
    internal bool TryHull(out CubicBezier hull)
    {
        // Within 120 degrees the tangents meet not far off, and the arc keeps to less than 3/4 of their height as a cubic would.
        const double MostSweepRad = 2.1;
        hull = _data;
        if (Kind != PathSegmentKind.Arc)
        {
            return true;
        }

        CircularArc arc = ArcRaw;
        if (System.Math.Abs(arc.SweepRad) > MostSweepRad)
        {
            return false;
        }

        Point2D start = arc.Start;
        Point2D end = arc.End;
        double reachMm = arc.RadiusMm * System.Math.Tan(0.5 * System.Math.Abs(arc.SweepRad));
        Direction heading = arc.DirectionAtRaw(0);
        var apex = new Point2D(start.XMm + (reachMm * heading.X), start.YMm + (reachMm * heading.Y));
        hull = new CubicBezier(start, apex, apex, end);
        return true;
    }

    /// <summary>The same segment with ends moved by what rounding or a tolerance amounts to; an arc, whose ends follow from its angles, stays.</summary>
    internal PathSegment WithEndsRaw(in Point2D start, in Point2D end) => Kind switch
    {
        PathSegmentKind.Line => FromLine(new LineSegment(start, end)),
        PathSegmentKind.Cubic => FromCubic(new CubicBezier(start, _data.StartControl, _data.EndControl, end)),
        _ => this,
    };
}
