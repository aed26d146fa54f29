using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Layout;

/// <summary>One copy of a piece where it lies on the cloth. Immutable.</summary>
/// <remarks>x runs along the cloth from its beginning, y across it: from the fold, or from the inner side of one selvedge.</remarks>
public sealed class LaidPiece
{
    internal LaidPiece(LayPiece piece, int copy, bool isMirrored, bool isOnFold, double turnRad, Transform2D place)
    {
        Piece = piece;
        Copy = copy;
        IsMirrored = isMirrored;
        IsOnFold = isOnFold;
        Turn = Angle.FromRadians(turnRad);
        Place = place;
        CutLine = piece.CutLine.Transformed(place);
    }

    /// <summary>What is laid.</summary>
    public LayPiece Piece { get; }

    /// <summary>The how many-th of its kind it is, from 1; mirror images are counted apart.</summary>
    public int Copy { get; }

    /// <summary>Whether it is the mirror image of the piece as drawn.</summary>
    public bool IsMirrored { get; }

    /// <summary>Whether its edge lies on the fold of the cloth.</summary>
    public bool IsOnFold { get; }

    /// <summary>The name of the piece, with "mirrored" where it is the mirror image.</summary>
    public string Name => IsMirrored ? Piece.Name + " mirrored" : Piece.Name;

    /// <summary>The turn about the origin of the piece's own coordinates, counter-clockwise: from 0 to less than 360 degrees. A mirror image is turned over before, x to the other side.</summary>
    public Angle Turn { get; }

    /// <summary>How far it is moved along the cloth after the turn.</summary>
    public Length X => Place.Apply(Point2D.Origin).X;

    /// <summary>How far it is moved across the cloth after the turn.</summary>
    public Length Y => Place.Apply(Point2D.Origin).Y;

    /// <summary>From the piece's own coordinates to the cloth.</summary>
    public Transform2D Place { get; }

    /// <summary>The line to cut along, where it lies.</summary>
    public CurvePath CutLine { get; }

    /// <summary>The name, and where its origin lies.</summary>
    public override string ToString()
        => Name + " at " + Place.Apply(Point2D.Origin);
}
