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

    /// <summary>The same mark after a dart was taken in around a place: what lay beyond is nearer the start now; what lay within stands at the dart.</summary>
    internal Notch AfterTakingIn(double middleMm, double halfMm) => new(
        Edge,
        Position,
        FromStartMm <= middleMm - halfMm ? FromStartMm : FromStartMm >= middleMm + halfMm ? FromStartMm - (2 * halfMm) : middleMm - halfMm,
        Count);

    /// <summary>The same mark after the edge grew at a place: what lay beyond is further from the start now.</summary>
    internal Notch AfterLettingOut(double atMm, double longerMm) => new(Edge, Position, FromStartMm <= atMm ? FromStartMm : FromStartMm + longerMm, Count);

    /// <summary>Where on which edge.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Count} notch(es) on {Edge}, {FromStartMm:0.##} mm from its start");
}
