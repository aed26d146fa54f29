namespace Pattern.Core.Geometry;

/// <summary>How a point lies to a closed path.</summary>
public enum Containment
{
    /// <summary>The path does not go round it.</summary>
    Outside,

    /// <summary>It lies on the path, to within the tolerance.</summary>
    Boundary,

    /// <summary>The path goes round it.</summary>
    Inside,
}
