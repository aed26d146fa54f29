namespace Pattern.Core.Geometry;

/// <summary>How arcs are handed to a sink or a buffer.</summary>
public enum ArcOutput
{
    /// <summary>As cubics that are off by no more than <see cref="GeometryTolerance.ArcAsCubics"/>. The default.</summary>
    Cubics,

    /// <summary>As the arcs that they are.</summary>
    Arcs,
}
