using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Pieces;

/// <summary>The label of a piece where it stands: inside the seam line, and on no line, dart, notch or grainline. Immutable.</summary>
public sealed class LabelBlock
{
    private readonly LabelLine[] _lines;

    internal LabelBlock(LabelLine[] lines, Direction reading, LineSegment scaleCheck, in BoundingBox bounds)
    {
        _lines = lines;
        Reading = reading;
        ScaleCheck = scaleCheck;
        Bounds = bounds;
    }

    /// <summary>The lines from the first to the last; the first names the piece and is larger.</summary>
    public IReadOnlyList<LabelLine> Lines => _lines;

    /// <summary>The way that the lines run: to the right, or up where the piece is narrow.</summary>
    public Direction Reading { get; }

    /// <summary>A line of exactly 50 mm below the last line of text, which says so: measure it before cutting.</summary>
    public LineSegment ScaleCheck { get; }

    /// <summary>The room that it takes: never too little, whichever usual sans serif type it is set in.</summary>
    public BoundingBox Bounds { get; }

    /// <summary>Its lines, one after another.</summary>
    public override string ToString()
        => string.Join(" / ", _lines.Select(line => line.Text));
}
