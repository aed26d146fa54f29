using System.Collections.Generic;

namespace Pattern.Core.Layout;

/// <summary>A piece turned one of the ways in which it may lie.</summary>
internal sealed class LayShape
{
    internal LayShape(int piece, bool isMirrored, double turnRad, Outline flat, Outline outline, double areaMm2, bool isOnFold)
    {
        Piece = piece;
        IsMirrored = isMirrored;
        TurnRad = turnRad;
        Flat = flat;
        Outline = outline;
        IsOnFold = isOnFold;
        Parts = ConvexParts.Of(outline);
        AreaMm2 = areaMm2;
    }

    /// <summary>The number of the piece in its list.</summary>
    internal int Piece { get; }

    /// <summary>Whether the piece was turned over about the y axis before it was turned.</summary>
    internal bool IsMirrored { get; }

    /// <summary>The turn about the origin of the piece's own coordinates, counter-clockwise.</summary>
    internal double TurnRad { get; }

    /// <summary>The cut line as straight lines.</summary>
    internal Outline Flat { get; }

    /// <summary>What keeps clear of other pieces: the cut line, or a little more.</summary>
    internal Outline Outline { get; }

    /// <summary>Whether its lowest edge lies on the fold of the cloth.</summary>
    internal bool IsOnFold { get; }

    internal IReadOnlyList<Outline> Parts { get; }

    internal double AreaMm2 { get; }

    internal double LeastXMm => -Outline.MinX;

    internal double LeastYMm => -Outline.MinY;

    internal double MostXMm(double lengthMm) => lengthMm - Outline.MaxX;

    internal double MostYMm(double widthMm) => IsOnFold ? LeastYMm : widthMm - Outline.MaxY;
}
