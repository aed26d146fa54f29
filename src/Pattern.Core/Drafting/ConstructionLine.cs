using Pattern.Core.Geometry;

namespace Pattern.Core.Drafting;

/// <summary>A line drawn on the way to a block that is not itself sewn or cut.</summary>
public sealed class ConstructionLine
{
    internal ConstructionLine(string name, ConstructionRole role, CurvePath path)
    {
        Name = name;
        Role = role;
        Path = path;
    }

    /// <summary>What the line is called, such as "lower hip line".</summary>
    public string Name { get; }

    /// <summary>What the line is for.</summary>
    public ConstructionRole Role { get; }

    /// <summary>Where it lies.</summary>
    public CurvePath Path { get; }
}
