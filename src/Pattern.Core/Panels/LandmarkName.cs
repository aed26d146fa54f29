using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>The name of a point on the draft, such as "CB waist level". Two names are equal when their text is.</summary>
public sealed class LandmarkName : IEquatable<LandmarkName>
{
    // Kept, because a sheet compares each new name with all that are on it.
    private readonly int _hash;

    private LandmarkName(string text)
    {
        Text = text;
        _hash = StringComparer.Ordinal.GetHashCode(text);
    }

    /// <summary>The name as it is printed on the draft and in its steps.</summary>
    public string Text { get; }

    /// <summary>Makes a name.</summary>
    /// <param name="text">What the point is called: 1 to 40 letters, digits, blanks or hyphens, beginning with a letter.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static LandmarkName Of(string text) => new(Guard.Label(text, nameof(text)));

    /// <inheritdoc/>
    public bool Equals(LandmarkName? other) => other is not null && _hash == other._hash && string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LandmarkName);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash;

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>The name of that text, so that a draft can say <c>sheet.SquareDown(top, length, "hem")</c>.</summary>
    /// <param name="text">What the point is called, as for <see cref="Of"/>.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static implicit operator LandmarkName(string text) => Of(text);
}
