using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The points of a dart, before it is on an edge.</summary>
internal readonly record struct DartShape(Point2D Apex, Point2D CentreLeg, Point2D SideLeg, Toward PressedToward)
{
    internal DartShape Transformed(in Transform2D transform)
    {
        Point2D centre = transform.Apply(CentreLeg);
        Point2D side = transform.Apply(SideLeg);
        return new DartShape(transform.Apply(Apex), centre, side, PressedToward);
    }
}
