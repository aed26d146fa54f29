using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>All pieces of one garment. Immutable: every method returns a new set.</summary>
public sealed class PieceSet
{
    private const double LeastClothMm = 50;
    private const double MostClothMm = 10_000;

    private readonly PatternPiece[] _pieces;

    private PieceSet(PatternPiece[] pieces) => _pieces = pieces;

    /// <summary>The pieces, in the order in which they were added.</summary>
    public IReadOnlyList<PatternPiece> Pieces => _pieces;

    /// <summary>What to cut, piece by piece and cloth by cloth. A piece that is not cut from anything is not on it.</summary>
    public IReadOnlyList<CutListRow> CutList => [.. _pieces.SelectMany(piece => piece.Cuts.Select(cut => new CutListRow(piece, cut)))];

    /// <summary>The proof of all pieces, one after the other, and of each facing against what it faces.</summary>
    /// <exception cref="ConstructionException">A cut line cannot be drawn.</exception>
    public CheckReport Report => new([.. _pieces.SelectMany(piece => piece.Report.Findings), .. FacingFindings()]);

    private IReadOnlyList<Finding> FacingFindings()
    {
        var list = new CheckList();
        foreach (PatternPiece piece in _pieces)
        {
            foreach (PanelEdge edge in piece.Half.Edges)
            {
                if (edge.StretchesRaw.Length == 1 && Array.Find(_pieces, other => PieceFacing.IsOf(other.Half, piece.Half.Name, edge.Name)) is { } facing)
                {
                    PieceFacing.Check(list, facing.Half, piece.Half, edge.Name);
                }
            }
        }

        return list.ToReport().Findings;
    }

    /// <summary>Makes a set.</summary>
    /// <exception cref="ArgumentException">Two pieces have the same name.</exception>
    public static PieceSet Of(params PatternPiece[] pieces)
    {
        var names = new HashSet<PanelName>();
        foreach (PatternPiece piece in Guard.NotNull(pieces, nameof(pieces)))
        {
            if (!names.Add(Guard.NotNull(piece, nameof(pieces)).Name))
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PieceNamedTwice, piece.Name), nameof(pieces));
            }
        }

        return new PieceSet([.. pieces]);
    }

    /// <summary>Returns the piece of that name.</summary>
    /// <exception cref="ConstructionException">The set has no such piece.</exception>
    [Pure]
    public PatternPiece Find(PanelName name) => Array.Find(_pieces, piece => piece.Name == name)
        ?? throw new ConstructionException(DiagnosticCode.PieceNotInSet, name, string.Join(", ", _pieces.Select(piece => piece.Name.Text))) { Landmark = name.Text };

    /// <summary>Adds a piece, or replaces the one of its name.</summary>
    [Pure]
    public PieceSet With(PatternPiece piece)
    {
        PanelName name = Guard.NotNull(piece, nameof(piece)).Name;
        int index = Array.FindIndex(_pieces, other => other.Name == name);
        PatternPiece[] pieces = index < 0 ? [.. _pieces, piece] : [.. _pieces];
        pieces[index < 0 ? _pieces.Length : index] = piece;
        return new PieceSet(pieces);
    }

    /// <summary>Leaves a piece out.</summary>
    /// <exception cref="ConstructionException">The set has no such piece.</exception>
    [Pure]
    public PieceSet Without(PanelName name)
    {
        PatternPiece piece = Find(name);
        return new PieceSet([.. _pieces.Where(other => other != piece)]);
    }

    /// <summary>Works out how much cloth is enough for the cut list: an upper bound, in simple rows.</summary>
    /// <param name="cloth">Which cloth; pieces cut from others are left out.</param>
    /// <param name="usableWidth">50 mm to 10 m. Common practice, no source: the width of the cloth less 6 to 19 mm of selvedge on either side.</param>
    /// <exception cref="ConstructionException">A piece is wider than the cloth, or cannot be drawn.</exception>
    [Pure]
    public ClothEstimate EstimateCloth(ClothName cloth, Length usableWidth)
        => ClothRows.Lay(_pieces, cloth, Guard.Millimetres(usableWidth, LeastClothMm, MostClothMm, nameof(usableWidth)));

    /// <summary>The names of the pieces.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{_pieces.Length} pieces: {string.Join(", ", _pieces.Select(piece => piece.Name.Text))}");
}
