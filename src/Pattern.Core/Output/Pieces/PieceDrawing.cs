using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>Pieces as drawings: what is laid on the cloth.</summary>
/// <remarks>The pieces stand in the order of the set, each as far up on the sheet as there is room for it. One whose grain lies across is turned by a quarter, so that all straight grain runs up the sheet, as
/// pieces are laid on cloth; one on the bias stays as it was drafted. Strong lines are cut, dashed ones sewn. Notches, drill holes, dart legs and fold lines, grainlines, the fold sign, lines inside, the label with its scale check, each edge's name with its
/// allowance, test squares and a title block with the cut list. A set whose checks failed is drawn all the same, and says loudly that it must not be cut.</remarks>
/// <example><code>
/// PieceSet skirt = SkirtPattern.From(block);
/// skirt.Draw().SaveSvg("skirt-pieces.svg");
/// skirt.Draw(new PieceDrawingOptions { Tape = TapeStep.Eighth }).SaveDxf("skirt-drawing.dxf");
/// </code></example>
public static class PieceDrawing
{
    /// <summary>Draws the pieces at full size.</summary>
    /// <param name="pieces">At least one.</param>
    /// <exception cref="ArgumentException">The set has no piece.</exception>
    /// <exception cref="ConstructionException">The cut line of a piece cannot be drawn.</exception>
    [Pure]
    public static Drawing Draw(this PieceSet pieces) => pieces.Draw(new PieceDrawingOptions());

    /// <summary>Draws the pieces at full size.</summary>
    /// <param name="pieces">At least one.</param>
    /// <param name="options">The tape that allowances are printed for, and the width of the sheet.</param>
    /// <exception cref="ArgumentException">The set has no piece.</exception>
    /// <exception cref="ConstructionException">The cut line of a piece cannot be drawn.</exception>
    [Pure]
    public static Drawing Draw(this PieceSet pieces, PieceDrawingOptions options)
    {
        if (Guard.NotNull(pieces, nameof(pieces)).Pieces.Count == 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.NoPieces), nameof(pieces));
        }

        return new PieceSheet(pieces, pieces.Report, Guard.NotNull(options, nameof(options))).Draw();
    }

    /// <summary>Draws one piece at full size.</summary>
    /// <param name="piece">The piece.</param>
    /// <exception cref="ConstructionException">The cut line of the piece cannot be drawn.</exception>
    [Pure]
    public static Drawing Draw(this PatternPiece piece) => piece.Draw(new PieceDrawingOptions());

    /// <summary>Draws one piece at full size.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="options">The tape that allowances are printed for, and the width of the sheet.</param>
    /// <exception cref="ConstructionException">The cut line of the piece cannot be drawn.</exception>
    [Pure]
    public static Drawing Draw(this PatternPiece piece, PieceDrawingOptions options) => PieceSet.Of(Guard.NotNull(piece, nameof(piece))).Draw(options);
}
