using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A place on a path: found as the nearest one to a point, at a distance from a point, or at a length along the path.</summary>
/// <remarks>Belongs to the path that it came from; <see cref="CurvePath.LengthTo"/> turns it into a distance along it.</remarks>
public readonly struct PathLocation
{
    private readonly double _distanceMm;

    internal PathLocation(int segmentIndex, double parameter, in Point2D point, double distanceMm)
    {
        SegmentIndex = segmentIndex;
        Parameter = parameter;
        Point = point;
        _distanceMm = distanceMm;
    }

    /// <summary>On which segment of the path, counted from 0. Where two segments meet it is the first of them.</summary>
    public int SegmentIndex { get; }

    /// <summary>Where on that segment, 0 to 1.</summary>
    public double Parameter { get; }

    /// <summary>The point.</summary>
    public Point2D Point { get; }

    /// <summary>How far it is from the point that was asked about; zero where the place was given by its length.</summary>
    public Length Distance => Length.FromMillimeters(_distanceMm);

    internal double DistanceMm => _distanceMm;

    /// <summary>Segment, parameter and point.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Point} on segment {SegmentIndex} at {Parameter:0.######}, {_distanceMm:0.######} mm away");
}
