using Pattern.Core.Geometry;

namespace Pattern.Core.Output;

/// <summary>One thing on a drawing: a <see cref="PathMark"/>, a <see cref="TextMark"/> or a <see cref="PointMark"/>. Immutable.</summary>
public abstract class DrawingMark
{
    private protected DrawingMark()
    {
    }

    /// <summary>The smallest upright box around the mark, without the width of its line.</summary>
    public abstract BoundingBox Bounds { get; }
}
