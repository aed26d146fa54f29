using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>A named point of a draft or a panel.</summary>
public readonly struct Landmark
{
    internal Landmark(LandmarkName name, Point2D position)
    {
        Name = name;
        Position = position;
    }

    /// <summary>What the point is called.</summary>
    public LandmarkName Name { get; }

    /// <summary>Where it lies: x to the right, y up.</summary>
    public Point2D Position { get; }

    /// <summary>The name and the position in millimetres.</summary>
    public override string ToString() => $"{Name} {Position}";
}
