using Pattern.Core.Diagnostics;

namespace Pattern.Core.Drafting;

/// <summary>What a construction line is called and what it is for, such as the hip line, a level.</summary>
public sealed class LineName
{
    private LineName(string text, ConstructionRole role)
    {
        Text = text;
        Role = role;
    }

    /// <summary>The name as it is printed.</summary>
    public string Text { get; }

    /// <summary>What lines of that name are for.</summary>
    public ConstructionRole Role { get; }

    /// <summary>Makes a name.</summary>
    /// <param name="text">What the line is called: 1 to 40 letters, digits, blanks or hyphens, beginning with a letter.</param>
    /// <param name="role">What it is for.</param>
    /// <exception cref="System.ArgumentException">The text is empty, too long or has other characters.</exception>
    public static LineName Of(string text, ConstructionRole role) => new(Guard.Label(text, nameof(text)), role);

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>The name of a guide, so that a draft can say <c>sheet.Join(top, hem, "centre line")</c>.</summary>
    /// <param name="text">What the line is called, as for <see cref="Of"/>.</param>
    /// <exception cref="System.ArgumentException">The text is empty, too long or has other characters.</exception>
    public static implicit operator LineName(string text) => Of(text, ConstructionRole.Guide);
}
