using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>A named point of a draft or a panel.</summary>
public readonly struct Landmark
{
    private readonly short _index;

    internal Landmark(LandmarkName name, Point2D position, LandmarkKind kind = LandmarkKind.Point, int index = 0)
    {
        Name = name;
        Position = position;
        Kind = kind;
        _index = (short)index;
    }

    /// <summary>What the point is called.</summary>
    public LandmarkName Name { get; }

    /// <summary>Where it lies: x to the right, y up.</summary>
    public Point2D Position { get; }

    /// <summary>What the point is.</summary>
    public LandmarkKind Kind { get; }

    /// <summary>Its place among the landmarks of the sheet that it was marked on, from 0.</summary>
    internal int Index => _index;

    /// <summary>The name and the position in millimetres.</summary>
    public override string ToString() => $"{Name} {Position}";

    /// <summary>The same landmark at another place.</summary>
    internal Landmark At(in Point2D position) => new(Name, position, Kind, _index);

    /// <summary>The same landmark, known to be of a kind.</summary>
    internal Landmark As(LandmarkKind kind) => new(Name, Position, kind, _index);
}
