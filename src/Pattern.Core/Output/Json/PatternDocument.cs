using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using Pattern.Core.Blocks;
using Pattern.Core.Diagnostics;
using Pattern.Core.Measurement;
using Pattern.Core.Panels;
using Pattern.Core.Pieces;

namespace Pattern.Core.Output;

/// <summary>A body, how its block was drafted, the panels of the block and the pieces made from it: what a pattern file holds. Immutable.</summary>
/// <remarks>Written as JSON and read again, every number of body, options, panels and pieces is the same to its last bit; with the same build of the library the text is the
/// same to its last character. The panels are those that were drafted when the document was made: reading drafts nothing anew, so that a pattern stays what it was with a
/// later version.</remarks>
/// <example><code>
/// PatternDocument document = PatternDocument.Of(block, SkirtPattern.From(block));
/// string json = document.ToJson();
/// PieceSet pieces = PatternDocument.FromJson(json).Pieces;
/// </code></example>
public sealed partial class PatternDocument
{
    private readonly SkirtBlockBuilder _builder;
    private readonly Panel[] _panels;

    private PatternDocument(SkirtBlockBuilder builder, BodyMeasurements body, Panel[] panels, PieceSet pieces)
    {
        _builder = builder;
        Body = body;
        _panels = panels;
        Pieces = pieces;
    }

    /// <summary>The body that the block was drafted for.</summary>
    public BodyMeasurements Body { get; }

    /// <summary>The panels of the block: of a skirt, back and front.</summary>
    public IReadOnlyList<Panel> Panels => _panels;

    /// <summary>The pieces; none where only a block was put in.</summary>
    public PieceSet Pieces { get; }

    /// <summary>Puts a block into a document, without pieces.</summary>
    /// <param name="block">The block.</param>
    /// <exception cref="ConstructionException">The outline of a panel crosses itself.</exception>
    public static PatternDocument Of(SkirtBlock block) => Of(block, PieceSet.Of());

    /// <summary>Puts a block and its pieces into a document.</summary>
    /// <param name="block">The block.</param>
    /// <param name="pieces">Its pieces; their panels may have been changed after drafting.</param>
    /// <exception cref="ConstructionException">The outline of a panel crosses itself, or a piece cannot be drawn.</exception>
    public static PatternDocument Of(SkirtBlock block, PieceSet pieces)
    {
        Guard.NotNull(block, nameof(block));
        foreach (Panel panel in new[] { block.Back, block.Front })
        {
            panel.RefuseCrossedOutline("putting a block into a document");
        }

        return new PatternDocument(block.ToBuilder(), block.Body, [block.Back, block.Front], Drawable(pieces));
    }

    /// <summary>Puts other pieces into the document, such as those that it had with other allowances. The block stays.</summary>
    /// <param name="pieces">All pieces that it shall have.</param>
    /// <exception cref="ConstructionException">A piece cannot be drawn.</exception>
    [Pure]
    public PatternDocument WithPieces(PieceSet pieces) => new(_builder, Body, _panels, Drawable(pieces));

    /// <summary>Returns the panel of that name.</summary>
    /// <exception cref="ConstructionException">The block has no such panel.</exception>
    [Pure]
    public Panel FindPanel(PanelName name) => Array.Find(_panels, panel => panel.Name == name)
        ?? throw new ConstructionException(DiagnosticCode.PanelNotInDocument, name, string.Join(", ", Array.ConvertAll(_panels, panel => panel.Name.Text))) { Landmark = name.Text };

    /// <summary>Returns a builder that says everything as the block was drafted, to change something and draft again.</summary>
    [Pure]
    public SkirtBlockBuilder ToBuilder() => _builder;

    /// <summary>Drafts the block anew from body and options, with its steps and its report, and makes sure that it is the one of the document.</summary>
    /// <remarks>Seam lines are compared along their whole length, at 17 places of each segment, and darts, notches, landmarks and grain by their points.</remarks>
    /// <exception cref="ConstructionException">A panel differs from that of the document by more than 0.01 mm: the document was changed, or this version of the
    /// library drafts otherwise. <see cref="ToBuilder"/> drafts it whatever comes out. Or the body cannot be drafted.</exception>
    [Pure]
    public SkirtBlock DraftBlock()
    {
        SkirtBlock block = _builder.Draft();
        DraftComparison.RefuseDifference(FindPanel(PanelName.Back), block.Back);
        DraftComparison.RefuseDifference(FindPanel(PanelName.Front), block.Front);
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
}
