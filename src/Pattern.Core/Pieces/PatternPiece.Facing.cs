using System;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <content>Pieces that face an edge of another.</content>
public sealed partial class PatternPiece
{
    /// <summary>Makes the piece that faces an edge: of the shape of the edge, as wide everywhere, with the allowances of this piece at the edge and at the seams beside it.</summary>
    /// <remarks>For an edge that curves more than can be turned up flat. It is called as the panel, the edge and <c>facing</c>, such as <c>front hem facing</c>; a set that holds both
    /// checks one against the other. Its inner edge has no allowance: neaten it, or add one. It is cut on the fold where this piece is and the fold lies beside the edge.</remarks>
    /// <param name="edge">An edge of the panel without darts.</param>
    /// <param name="depth">How wide the facing is, 10 to 300 mm. Common practice, no source: 2 in (5 cm) at a hem.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, or no room for the facing.</exception>
    /// <exception cref="ArgumentException">The name of the facing would be longer than 40 characters: give this piece a shorter one first.</exception>
    [Pure]
    public PatternPiece FacingOf(EdgeName edge, Length depth)
    {
        Panel strip = PieceFacing.Of(_half, edge, Guard.Millimetres(depth, 10, 300, nameof(depth)));
        PatternPiece folded = Folded();
        PatternPiece piece = From(strip);
        foreach (PanelEdge own in strip.Edges.Where(own => own.Role != EdgeRole.Opening))
        {
            piece = own.Name.Equals(_settings.Fold) ? piece.CutOnFold(own.Name) : piece.WithAllowance(own.Name, folded.FindEdge(own.Name).Allowance);
        }

        return piece.WithAllowance(strip.Edges[2].Name, Length.Zero);
    }
}
