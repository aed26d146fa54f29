namespace Pattern.Core.Geometry;

/// <summary>One step of a path that was copied into buffers, with the numbers that belong to it.</summary>
public enum PathVerb
{
    /// <summary>Begins the path: x, y.</summary>
    Move,

    /// <summary>A straight line: end x, y.</summary>
    Line,

    /// <summary>A cubic: both control points and the end, six numbers.</summary>
    Cubic,

    /// <summary>An arc: centre x, y, radius, start angle and sweep in radians, end x, y; seven numbers.</summary>
    Arc,

    /// <summary>Joins the end to the start: no number.</summary>
    Close,
}
