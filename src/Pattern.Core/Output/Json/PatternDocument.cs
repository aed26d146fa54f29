using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>A block, whatever method drafted it, and the pieces made from it: what a pattern file holds. Immutable.</summary>
/// <remarks>Written as JSON and read again, every number of body, settings, block and pieces is the same to its last bit; with the same build of the library the text is the
/// same to its last character. The panels are those that were drafted when the document was made: reading drafts nothing anew, so that a pattern stays what it was with a
/// later version, or where its method is not known at all.</remarks>
/// <example><code>
/// PatternDocument document = PatternDocument.Of(block, SkirtPattern.From(block));
/// string json = document.ToJson();
/// PieceSet pieces = PatternDocument.FromJson(json).Pieces;
/// </code></example>
public sealed partial class PatternDocument
{
    private PatternDocument(Block block, PieceSet pieces)
    {
        Block = block;
        Pieces = pieces;
    }

    /// <summary>The block: drawn, measured and changed as any other.</summary>
    /// <remarks>One that was read from a file has its panels, its points and lines as drafted and as trued, its seams, settings and remarks. It has no steps and no
    /// alternatives, and of its checks the seams alone: advice in its report says so. <see cref="DraftBlock"/> makes it whole where its method is known.</remarks>
    public Block Block { get; }

    /// <summary>The pieces; none where only a block was put in.</summary>
    public PieceSet Pieces { get; }

    /// <summary>Puts a block into a document, without pieces.</summary>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">The outline of a panel crosses itself.</exception>
    public static PatternDocument Of(Block block) => Of(block, PieceSet.Of());

    /// <summary>Puts a block and its pieces into a document.</summary>
    /// <param name="block">The block.</param>
    /// <param name="pieces">Its pieces; their panels may have been changed after drafting.</param>
    /// <exception cref="ConstructionException">The outline of a panel crosses itself, or a piece cannot be drawn.</exception>
    public static PatternDocument Of(Block block, PieceSet pieces)
    {
        foreach (Panel panel in Guard.NotNull(block, nameof(block)).Panels)
        {
            panel.RefuseCrossedOutline("putting a block into a document");
        }

        return new PatternDocument(block, Drawable(pieces));
    }

    /// <summary>Puts other pieces into the document, such as those that it had with other allowances. The block stays.</summary>
    /// <param name="pieces">All pieces that it shall have.</param>
    /// <exception cref="ConstructionException">A piece cannot be drawn.</exception>
    [Pure]
    public PatternDocument WithPieces(PieceSet pieces) => new(Block, Drawable(pieces));

    /// <summary>Drafts the block anew from body and settings, with its steps and its whole report, and makes sure that it is the one of the document.</summary>
    /// <remarks>Seam lines are compared along their whole length, at 17 places of each segment, and darts, notches, landmarks and grain by their points. The block is of the
    /// kind that its method makes, such as <see cref="SkirtBlock"/>.</remarks>
    /// <exception cref="ConstructionException">A panel differs from that of the document by more than 0.01 mm: the document was changed, or this version of the
    /// library drafts otherwise. <see cref="Block.ToBuilder"/> drafts it whatever comes out. Or the method is not known, or the body cannot be drafted.</exception>
    [Pure]
    public Block DraftBlock()
    {
        Block block = Block.ToBuilder().Draft();
        DraftComparison.RefuseDifference(Block, block);
        return block;
    }

    private static PieceSet Drawable(PieceSet pieces)
    {
        foreach (PatternPiece piece in Guard.NotNull(pieces, nameof(pieces)).Pieces)
        {
            piece.Half.RefuseCrossedOutline("putting a piece into a document");
            _ = piece.CutLine;
        }

        return pieces;
    }

    /// <summary>The block and its pieces.</summary>
    public override string ToString()
        => Block + " " + Pieces;
}
