using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Pieces;
using UnitsNet;

namespace Pattern.Core.Output;

/// <summary>One line of text on a drawing.</summary>
public sealed class TextMark : DrawingMark
{
    internal TextMark(string text, Point2D anchor, double sizeMm, double angleRad, TextAlignment alignment, TextWeight weight, Ink ink)
    {
        Text = text;
        Anchor = anchor;
        SizeMm = sizeMm;
        AngleRad = angleRad;
        Alignment = alignment;
        Weight = weight;
        Ink = ink;
    }

    /// <summary>The words.</summary>
    public string Text { get; }

    /// <summary>A point on the base line of the letters.</summary>
    public Point2D Anchor { get; }

    /// <summary>The size of the type (its em), as in "text of 5 mm"; capitals are about 0.7 of it high.</summary>
    public Length Size => Length.FromMillimeters(SizeMm);

    /// <summary>The turn of the base line about the anchor, counter-clockwise from level.</summary>
    public Angle Angle => Angle.FromRadians(AngleRad);

    /// <summary>Which point of the line the anchor is.</summary>
    public TextAlignment Alignment { get; }

    /// <summary>How heavy the letters are.</summary>
    public TextWeight Weight { get; }

    /// <summary>The colour.</summary>
    public Ink Ink { get; }

    /// <summary>How much room the line takes from its first letter to its last, in the widest of the usual sans serif types.</summary>
    public Length Width => Length.FromMillimeters(Box.WidthMm);

    /// <inheritdoc/>
    public override BoundingBox Bounds => Box.Bounds;

    internal double SizeMm { get; }

    internal double AngleRad { get; }

    /// <summary>The room that the letters take, whatever usual type they are set in.</summary>
    internal TurnedBox Box
    {
        get
        {
            double width = WidthOfMm(Text, SizeMm, Weight);
            double before = Alignment switch { TextAlignment.Start => 0, TextAlignment.Middle => 0.5, _ => 1 } * width;
            double below = TypeWidths.Descent * SizeMm;
            return TurnedBox.Around(Anchor, AngleRad, before, below, width, (TypeWidths.Ascent * SizeMm) + below);
        }
    }

    /// <summary>Makes a line of text.</summary>
    /// <param name="text">The words.</param>
    /// <param name="anchor">A point on the base line.</param>
    /// <param name="size">The size of the type: 0.5 mm to 1 m.</param>
    /// <param name="angle">The turn of the base line about the anchor, counter-clockwise.</param>
    /// <param name="alignment">Which point of the line the anchor is.</param>
    /// <param name="weight">How heavy the letters are.</param>
    /// <param name="ink">The colour.</param>
    /// <exception cref="ArgumentException">The text is empty, or the size is outside its range.</exception>
    public static TextMark Of(string text, Point2D anchor, Length size, Angle angle, TextAlignment alignment, TextWeight weight, Ink ink) => new(
        Guard.Name(text, nameof(text)),
        anchor,
        Guard.Millimetres(size, 0.5, 1000, nameof(size)),
        Guard.Finite(angle.Radians, nameof(angle)),
        (TextAlignment)Guard.Choice((int)alignment, 3, nameof(alignment)),
        (TextWeight)Guard.Choice((int)weight, 2, nameof(weight)),
        ink);

    /// <summary>The width of a line of text.</summary>
    internal static double WidthOfMm(string text, double sizeMm, TextWeight weight)
        => weight == TextWeight.Bold ? TypeWidths.BoldMm(text, sizeMm) : TypeWidths.RegularMm(text, sizeMm);

    /// <summary>The text and where it stands.</summary>
    public override string ToString()
        => "\"" + Text + "\" at " + Anchor;
}
