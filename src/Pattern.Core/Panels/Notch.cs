using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A mark on an edge that has to meet its twin.</summary>
public readonly struct Notch
{
    internal Notch(EdgeName edge, Point2D position, double fromStartMm, int count)
    {
        Edge = edge;
        Position = position;
        FromStartMm = fromStartMm;
        Count = count;
    }

    /// <summary>The edge that carries the mark.</summary>
    public EdgeName Edge { get; }

    /// <summary>Where on the seam line the mark stands.</summary>
    public Point2D Position { get; }

    /// <summary>How many cuts make the mark. Common practice: one for a front, two for a back.</summary>
    public int Count { get; }

    /// <summary>Along the sewn edge from its start, darts closed.</summary>
    public Length DistanceFromStart => Length.FromMillimeters(FromStartMm);

    internal double FromStartMm { get; }

    /// <summary>The same mark on an edge that has been moved or redrawn: as far along the sewn edge as before.</summary>
    internal Notch On(PanelEdge edge) => new(edge.Name, edge.PointAtSewnMm(FromStartMm), FromStartMm, Count);
}
