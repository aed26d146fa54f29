using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A point that two curves have in common.</summary>
public readonly struct Intersection
{
    private readonly double _angleRad;

    internal Intersection(double first, double second, in Point2D point, double angleRad, bool isTouching)
    {
        FirstParameter = first;
        SecondParameter = second;
        Point = point;
        _angleRad = angleRad;
        IsTouching = isTouching;
    }

    /// <summary>Where on the first curve, 0 to 1. On a <see cref="Line"/>, which has no ends: millimetres from its point along its heading.</summary>
    public double FirstParameter { get; }

    /// <summary>Where on the second curve, 0 to 1. On a <see cref="Line"/>, which has no ends: millimetres from its point along its heading.</summary>
    public double SecondParameter { get; }

    /// <summary>The point.</summary>
    public Point2D Point { get; }

    /// <summary>The angle between the curves there, 0 to 90 degrees, whichever way they run.</summary>
    public Angle Angle => Angle.FromRadians(_angleRad);

    /// <summary>Whether the curves meet there without one passing through the other: they are tangent, or one ends there.</summary>
    internal bool IsTouching { get; }

    internal double AngleRad => _angleRad;

    internal Intersection Swapped() => new(SecondParameter, FirstParameter, Point, _angleRad, IsTouching);

    /// <summary>Where it is on both curves.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Point} at {FirstParameter:0.######} and {SecondParameter:0.######}");
}
