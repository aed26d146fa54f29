using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Pieces;

/// <summary>The name of a cloth that pieces are cut from, such as main cloth or lining. Two names are equal when their text is.</summary>
public readonly struct ClothName : IEquatable<ClothName>
{
    private readonly string? _text;

    private ClothName(string text) => _text = text;

    /// <summary>What the garment is made of.</summary>
    public static ClothName Main { get; } = new("main cloth");

    /// <summary>The lining.</summary>
    public static ClothName Lining { get; } = new("lining");

    /// <summary>What stiffens a waistband or a facing.</summary>
    public static ClothName Interfacing { get; } = new("interfacing");

    /// <summary>The name in lower case, as it is printed and written to files; "main cloth" for a default value.</summary>
    public string Text => _text ?? "main cloth";

    /// <summary>Makes a name of your own.</summary>
    /// <param name="text">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static ClothName Of(string text) => new(Guard.Identifier(text, nameof(text)));

    /// <inheritdoc/>
    public bool Equals(ClothName other) => string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ClothName other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>Whether two names have the same text.</summary>
    public static bool operator ==(ClothName left, ClothName right) => left.Equals(right);

    /// <summary>Whether two names have different texts.</summary>
    public static bool operator !=(ClothName left, ClothName right) => !left.Equals(right);
}
