using Pattern.Core.Geometry;

namespace Pattern.Core.Drafting;

/// <summary>A named point on the draft.</summary>
public readonly struct Landmark
{
    internal Landmark(LandmarkName name, Point2D position)
    {
        Name = name;
        Position = position;
    }

    /// <summary>What the point is called.</summary>
    public LandmarkName Name { get; }

    /// <summary>Where it lies on the sheet: x to the right, y up, from the first landmark of the draft.</summary>
    public Point2D Position { get; }

    /// <summary>The name and the position in millimetres.</summary>
    public override string ToString() => $"{Name} {Position}";
}
