using Pattern.Core.Geometry;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>One named edge of a piece, with its allowance. Immutable.</summary>
public sealed class PieceEdge
{
    internal PieceEdge(EdgeName name, EdgeRole role, bool isOnFold, double allowanceMm, CurvePath seamLine, CurvePath cutLine, CurvePath? cornerLine)
    {
        Name = name;
        Role = role;
        IsOnFold = isOnFold;
        AllowanceMm = allowanceMm;
        SeamLine = seamLine;
        CutLine = cutLine;
        CornerLine = cornerLine;
    }

    /// <summary>The name of the edge.</summary>
    public EdgeName Name { get; }

    /// <summary>What becomes of the edge.</summary>
    public EdgeRole Role { get; }

    /// <summary>Whether the edge lies on the fold of the cloth and is not cut.</summary>
    public bool IsOnFold { get; }

    /// <summary>From the seam line to the cut line.</summary>
    public Length Allowance => Length.FromMillimeters(AllowanceMm);

    /// <summary>The seam line from the start of the edge to its end, across the caps of its darts.</summary>
    public CurvePath SeamLine { get; }

    /// <summary>The part of the piece's cut line that lies along this edge, between its corners.</summary>
    public CurvePath CutLine { get; }

    /// <summary>The part of the cut line at the corner after this edge, from the end of its own to the start of that of the next edge; null where they
    /// meet in a point.</summary>
    public CurvePath? CornerLine { get; }

    internal double AllowanceMm { get; }

    /// <summary>Name and allowance.</summary>
    public override string ToString()
        => System.FormattableString.Invariant($"{Name}, {(IsOnFold ? "on the fold" : System.FormattableString.Invariant($"allowance {AllowanceMm:0.##} mm"))}");
}
