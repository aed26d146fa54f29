using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>The name of a panel, such as front or back. Two names are equal when their text is.</summary>
public readonly struct PanelName : IEquatable<PanelName>
{
    private readonly string? _text;

    private PanelName(string text) => _text = text;

    /// <summary>The front panel.</summary>
    public static PanelName Front { get; } = new("front");

    /// <summary>The back panel.</summary>
    public static PanelName Back { get; } = new("back");

    /// <summary>The name in lower case, as it is printed and written to files; "panel" for a default value.</summary>
    public string Text => _text ?? "panel";

    /// <summary>Makes a name of your own.</summary>
    /// <param name="text">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static PanelName Of(string text) => new(Guard.Identifier(text, nameof(text)));

    /// <inheritdoc/>
    public bool Equals(PanelName other) => string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PanelName other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>Whether two names have the same text.</summary>
    public static bool operator ==(PanelName left, PanelName right) => left.Equals(right);

    /// <summary>Whether two names have different texts.</summary>
    public static bool operator !=(PanelName left, PanelName right) => !left.Equals(right);
}
