using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Pieces;

/// <summary>One line of text on a piece, where it stands.</summary>
public sealed class LabelLine
{
    internal LabelLine(string text, Point2D start, double sizeMm)
    {
        Text = text;
        Start = start;
        SizeMm = sizeMm;
    }

    /// <summary>What it says.</summary>
    public string Text { get; }

    /// <summary>Where its base line begins. It runs as <see cref="LabelBlock.Reading"/> says.</summary>
    public Point2D Start { get; }

    /// <summary>The size of the type; a capital is about 0.7 of it tall.</summary>
    public Length TypeSize => Length.FromMillimeters(SizeMm);

    internal double SizeMm { get; }

    /// <summary>The text.</summary>
    public override string ToString()
        => Text;
}
