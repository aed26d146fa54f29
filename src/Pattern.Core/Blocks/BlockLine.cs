using Pattern.Core.Drafting;
using Pattern.Core.Geometry;

namespace Pattern.Core.Blocks;

/// <summary>A line of a block that is not itself sewn or cut: what it is called, what it is for, where it lies.</summary>
public sealed class BlockLine
{
    internal BlockLine(LineName name, CurvePath path)
    {
        Name = name;
        Path = path;
    }

    /// <summary>What the line is called, such as "lower hip line".</summary>
    public LineName Name { get; }

    /// <summary>What the line is for.</summary>
    public ConstructionRole Role => Name.Role;

    /// <summary>Where it lies.</summary>
    public CurvePath Path { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name.Text;
}
