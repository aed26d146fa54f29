namespace Pattern.Core.Geometry;

/// <summary>What a segment of a path is.</summary>
public enum PathSegmentKind
{
    /// <summary>A straight line.</summary>
    Line,

    /// <summary>A part of a circle.</summary>
    Arc,

    /// <summary>A cubic Bezier curve.</summary>
    Cubic,
}
