using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>Pieces that can be laid side by side in any width, as on tables of several sizes.</summary>
internal interface IPieceLayout
{
    /// <summary>The pieces without the words that are placed among them: enough to see what paper they take.</summary>
    /// <param name="widthMm">What they lie in, without margins.</param>
    Drawing Outline(double widthMm);

    /// <summary>What the pieces lie in where nobody asks for another width, without margins.</summary>
    double WidthMm { get; }

    /// <summary>The whole drawing.</summary>
    /// <param name="widthMm">What the pieces lie in, without margins.</param>
    /// <param name="sheets">What sheets of paper show of it: a label that would lie across two of them stands wholly on one, wherever its piece has room for that. None: it
    /// lies on one sheet.</param>
    Drawing Draw(double widthMm, IReadOnlyList<BoundingBox> sheets);
}
