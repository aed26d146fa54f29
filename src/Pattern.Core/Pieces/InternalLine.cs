using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>A line inside a piece that is neither seam nor dart: a level, a pocket, the stop of a zip. Immutable.</summary>
public sealed class InternalLine
{
    internal InternalLine(string name, InternalLineKind kind, CurvePath path)
    {
        Name = name;
        Kind = kind;
        Path = path;
    }

    /// <summary>What is printed along it.</summary>
    public string Name { get; }

    /// <summary>What it is for.</summary>
    public InternalLineKind Kind { get; }

    /// <summary>Where it runs.</summary>
    public CurvePath Path { get; }

    internal InternalLine Transformed(in Transform2D transform) => new(Name, Kind, Path.Transformed(transform));

    /// <summary>Name and kind.</summary>
    public override string ToString()
        => Name + " (" + Kind + ")";
}
