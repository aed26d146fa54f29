using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>The name of a layer: what its marks are. Two names are equal when their text is.</summary>
public readonly struct LayerName : IEquatable<LayerName>
{
    private readonly string? _text;

    private LayerName(string text) => _text = text;

    /// <summary>What says that the drawing must not be cut. Lies under all other layers, and only on a drawing whose checks failed.</summary>
    public static LayerName Warning { get; } = new("warning");

    /// <summary>The lines drawn on the way, and the seam lines as a hand drew them before truing.</summary>
    public static LayerName Construction { get; } = new("construction");

    /// <summary>The levels across the body, with their names.</summary>
    public static LayerName Levels { get; } = new("levels");

    /// <summary>How the block could be drafted otherwise, where that was asked for.</summary>
    public static LayerName Alternatives { get; } = new("alternatives");

    /// <summary>The grainlines.</summary>
    public static LayerName Grainlines { get; } = new("grainlines");

    /// <summary>The dart legs, caps and fold lines.</summary>
    public static LayerName Darts { get; } = new("darts");

    /// <summary>The seam lines.</summary>
    public static LayerName SeamLines { get; } = new("seam lines");

    /// <summary>The lines to cut along.</summary>
    public static LayerName CutLines { get; } = new("cut lines");

    /// <summary>The edges that lie on the fold of the cloth, with their sign.</summary>
    public static LayerName Folds { get; } = new("folds");

    /// <summary>The lines inside pieces that are neither seam nor dart: levels, placements, stops.</summary>
    public static LayerName InternalLines { get; } = new("internal lines");

    /// <summary>The holes to drill short of dart apexes.</summary>
    public static LayerName DrillHoles { get; } = new("drill holes");

    /// <summary>The labels of pieces: what each is and how often it is cut.</summary>
    public static LayerName Labels { get; } = new("labels");

    /// <summary>The notches.</summary>
    public static LayerName Notches { get; } = new("notches");

    /// <summary>The points that the steps speak of, with their names.</summary>
    public static LayerName Landmarks { get; } = new("landmarks");

    /// <summary>The names of panels and edges, with the allowance of each edge of a piece.</summary>
    public static LayerName Names { get; } = new("names");

    /// <summary>The squares to measure before cutting cloth.</summary>
    public static LayerName TestSquares { get; } = new("test squares");

    /// <summary>What the drawing is, for whom, and what it was made from.</summary>
    public static LayerName TitleBlock { get; } = new("title block");

    /// <summary>What is printed on a sheet so that it can be joined to its neighbours: cut and join lines, arrows, row and column.</summary>
    public static LayerName SheetMarks { get; } = new("sheet marks");

    /// <summary>The map of the sheets, and how to join them.</summary>
    public static LayerName SheetMap { get; } = new("sheet map");

    /// <summary>Words and pictures of a lesson: a step sheet, or how measurements are taken.</summary>
    public static LayerName Lesson { get; } = new("lesson");

    /// <summary>The name in lower-case words; "layer" for a default value.</summary>
    public string Text => _text ?? "layer";

    /// <summary>Makes a name of your own.</summary>
    /// <param name="text">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static LayerName Of(string text) => new(Guard.Identifier(text, nameof(text)));

    /// <inheritdoc/>
    public bool Equals(LayerName other) => string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is LayerName other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>Whether two names have the same text.</summary>
    public static bool operator ==(LayerName left, LayerName right) => left.Equals(right);

    /// <summary>Whether two names have different texts.</summary>
    public static bool operator !=(LayerName left, LayerName right) => !left.Equals(right);
}
