using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The points of a dart, before it is on an edge.</summary>
/// <param name="Apex">The point of the wedge.</param>
/// <param name="StartLeg">The end of the leg that the edge reaches first.</param>
/// <param name="EndLeg">The end of the other leg.</param>
/// <param name="PressedToward">The way the intake is pressed.</param>
/// <param name="TuckMm">How far the legs are stitched; zero for all the way.</param>
internal readonly record struct DartShape(Point2D Apex, Point2D StartLeg, Point2D EndLeg, Toward PressedToward, double TuckMm = 0)
{
    internal bool IsClosed => StartLeg.DistanceMm(EndLeg) <= ClosedMm;

    // Far below what cloth can show and far above what turning about an apex loses.
    private const double ClosedMm = 1e-7;

    internal DartShape Transformed(in Transform2D transform)
        => this with { Apex = transform.Apply(Apex), StartLeg = transform.Apply(StartLeg), EndLeg = transform.Apply(EndLeg) };
}
