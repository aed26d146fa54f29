using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A point that two paths, or two parts of one path, have in common.</summary>
public readonly struct PathIntersection
{
    private readonly Intersection _hit;

    internal PathIntersection(int firstSegment, int secondSegment, in Intersection hit)
    {
        FirstSegment = firstSegment;
        SecondSegment = secondSegment;
        _hit = hit;
    }

    /// <summary>On which segment of the first path, counted from 0. A joint belongs to the segment that begins there.</summary>
    public int FirstSegment { get; }

    /// <summary>Where on that segment, 0 to 1.</summary>
    public double FirstParameter => _hit.FirstParameter;

    /// <summary>On which segment of the second path, counted from 0.</summary>
    public int SecondSegment { get; }

    /// <summary>Where on that segment, 0 to 1. On a <see cref="Line"/>, which has no ends: millimetres from its point along its heading.</summary>
    public double SecondParameter => _hit.SecondParameter;

    /// <summary>The point.</summary>
    public Point2D Point => _hit.Point;

    /// <summary>The angle between the segments there, 0 to 90 degrees, whichever way they run.</summary>
    public Angle Angle => _hit.Angle;

    /// <summary>Whether the segments are tangent there, or one of them ends there.</summary>
    internal bool IsTouching => _hit.IsTouching;

    internal double FirstPosition => FirstSegment + FirstParameter;

    internal double SecondPosition => SecondSegment + SecondParameter;

    /// <summary>Where it is, on which segments.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Point} on segment {FirstSegment} at {FirstParameter:0.######} and segment {SecondSegment} at {SecondParameter:0.######}");
}
