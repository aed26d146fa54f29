using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>One row of a cut list: a piece, and how often it is cut from one cloth. Immutable.</summary>
public sealed class CutListRow
{
    private readonly string _cutting;

    internal CutListRow(PatternPiece piece, CutCount cut)
    {
        Piece = piece.Name;
        Cloth = cut.Cloth;
        Count = cut.Count;
        IsOnFold = piece.FoldLine is not null;
        _cutting = piece.CuttingLine(cut);
    }

    /// <summary>The name of the piece.</summary>
    public PanelName Piece { get; }

    /// <summary>What it is cut from.</summary>
    public ClothName Cloth { get; }

    /// <summary>How many are cut; one on the fold counts once.</summary>
    public int Count { get; }

    /// <summary>Whether it is cut on the fold.</summary>
    public bool IsOnFold { get; }

    /// <summary>Such as <c>front: cut 1 of main cloth on the fold</c>.</summary>
    public override string ToString() => Piece.Text + ": " + _cutting;
}
