using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>The point of a line, arc or cubic that is nearest to a given point.</summary>
public readonly struct CurveLocation
{
    private readonly double _distanceMm;

    internal CurveLocation(double parameter, in Point2D point, double distanceMm)
    {
        Parameter = parameter;
        Point = point;
        _distanceMm = distanceMm;
    }

    /// <summary>Where on the curve, 0 to 1. On lines and arcs it is the share of the way; on a cubic it is t.</summary>
    public double Parameter { get; }

    /// <summary>The nearest point.</summary>
    public Point2D Point { get; }

    /// <summary>How far it is from the given point.</summary>
    public Length Distance => Length.FromMillimeters(_distanceMm);

    internal double DistanceMm => _distanceMm;

    /// <summary>Point and parameter.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Point} at {Parameter:0.######}, {_distanceMm:0.######} mm away");
}
