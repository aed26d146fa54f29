using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>The point of a path that is nearest to a given point.</summary>
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

    /// <summary>The nearest point.</summary>
    public Point2D Point { get; }

    /// <summary>How far it is from the given point.</summary>
    public Length Distance => Length.FromMillimeters(_distanceMm);

    internal double DistanceMm => _distanceMm;
}
