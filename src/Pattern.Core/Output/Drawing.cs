using System;
using System.Collections.Generic;
using System.Diagnostics.Contracts;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>A drawing at full size, in no file format: what all formats render. Immutable.</summary>
/// <remarks>x runs to the right and y up, one millimetre of the drawing being one millimetre of cloth. A format may move the drawing to its own
/// origin and turn the y axis over; it never scales.</remarks>
public sealed class Drawing
{
    private readonly DrawingLayer[] _layers;

    internal Drawing(string title, string description, BoundingBox bounds, DrawingLayer[] layers)
    {
        Title = title;
        Description = description;
        Bounds = bounds;
        _layers = layers;
        Layers = Array.AsReadOnly(layers);
    }

    /// <summary>What is drawn, in a few words.</summary>
    public string Title { get; }

    /// <summary>What can be seen, in sentences, for readers who cannot see it.</summary>
    public string Description { get; }

    /// <summary>The sheet, margins included.</summary>
    public BoundingBox Bounds { get; }

    /// <summary>The layers, the lowest first. Each name occurs once.</summary>
    public IReadOnlyList<DrawingLayer> Layers { get; }

    /// <summary>What the title block says, so that a layout of many sheets can say it on the first of them; null where the drawing has none.</summary>
    internal TitleBlock? Foot { get; init; }

    /// <summary>The drawing with the names beside it inside, for paper that it would else just not fit on; null where there is none.</summary>
    internal INarrowDrawing? Narrower { get; init; }

    /// <summary>The pieces of the drawing, to be laid out anew for paper of another width; null where they cannot be.</summary>
    internal IPieceLayout? Pieces { get; init; }

    /// <summary>Makes a drawing.</summary>
    /// <param name="title">What is drawn, in a few words.</param>
    /// <param name="description">What can be seen, in sentences.</param>
    /// <param name="bounds">The sheet, margins included.</param>
    /// <param name="layers">The layers, the lowest first, each name once.</param>
    /// <exception cref="ArgumentException">A text is empty, a layer is null, or two layers have the same name.</exception>
    public static Drawing Of(string title, string description, BoundingBox bounds, IEnumerable<DrawingLayer> layers)
    {
        DrawingLayer[] array = Guard.NotNull(layers, nameof(layers)).Select(layer => Guard.NotNull(layer, nameof(layers))).ToArray();
        var names = new HashSet<LayerName>();
        foreach (DrawingLayer layer in array)
        {
            if (!names.Add(layer.Name))
            {
                throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.LayerTwice, layer.Name), nameof(layers));
            }
        }

        return new Drawing(Guard.Name(title, nameof(title)), Guard.Name(description, nameof(description)), bounds, array);
    }

    /// <summary>Looks for the layer of a name.</summary>
    /// <param name="name">What its marks are.</param>
    /// <param name="layer">The layer, or null.</param>
    /// <returns>Whether the drawing has it.</returns>
    public bool TryFindLayer(LayerName name, out DrawingLayer? layer)
    {
        layer = Array.Find(_layers, candidate => candidate.Name == name);
        return layer is not null;
    }

    /// <summary>The same drawing without some of its layers: for a plotter that shall draw seam lines only.</summary>
    /// <param name="names">The layers to leave out; a name that the drawing does not have changes nothing.</param>
    [Pure]
    public Drawing Without(params LayerName[] names)
    {
        Guard.NotNull(names, nameof(names));
        return new Drawing(Title, Description, Bounds, Array.FindAll(_layers, layer => Array.IndexOf(names, layer.Name) < 0))
        {
            Foot = Array.IndexOf(names, LayerName.TitleBlock) < 0 ? Foot : null,
        };
    }

    /// <summary>Title and size.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{Title}, {Bounds.RightMm - Bounds.LeftMm:0.#} mm by {Bounds.TopMm - Bounds.BottomMm:0.#} mm");
}
