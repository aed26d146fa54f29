using System.Collections.Generic;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>A mark on the edge of a piece: short cuts into the allowance, over a point of the seam line. Immutable.</summary>
public sealed class PieceNotch
{
    private readonly LineSegment[] _cuts;

    internal PieceNotch(NotchKind kind, EdgeName edge, double fromStartMm, Point2D onSeam, LineSegment[] cuts)
    {
        Kind = kind;
        Edge = edge;
        FromStartMm = fromStartMm;
        OnSeam = onSeam;
        _cuts = cuts;
    }

    /// <summary>What it is for.</summary>
    public NotchKind Kind { get; }

    /// <summary>The edge that carries it.</summary>
    public EdgeName Edge { get; }

    /// <summary>Along the sewn edge from its start, darts closed.</summary>
    public Length DistanceFromStart => Length.FromMillimeters(FromStartMm);

    /// <summary>The point of the seam line that has to meet its twin; for two or three cuts, the middle one.</summary>
    public Point2D OnSeam { get; }

    /// <summary>The cuts, each from the cut line inwards. They end within the allowance; where there is none they have no length.</summary>
    public IReadOnlyList<LineSegment> Cuts => _cuts;

    internal double FromStartMm { get; }

    /// <summary>What it is, and where on which edge.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Kind} notch on {Edge}, {FromStartMm:0.##} mm from its start");
}
