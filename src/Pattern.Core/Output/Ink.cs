using System;

namespace Pattern.Core.Output;

/// <summary>The colour that a mark is drawn in. No ink carries a meaning of its own: weight, dash and words tell everything in black and white too.</summary>
/// <remarks>The default value is black.</remarks>
public readonly struct Ink : IEquatable<Ink>
{
    private readonly int _rgb;

    private Ink(int rgb) => _rgb = rgb;

    /// <summary>What is sewn and cut, and what must be read.</summary>
    public static Ink Strong { get; } = new(0x000000);

    /// <summary>Words that explain, and lines between strong and quiet.</summary>
    public static Ink Middle { get; } = new(0x4A5058);

    /// <summary>Lines that stay behind the block: construction.</summary>
    public static Ink Quiet { get; } = new(0x8A9199);

    /// <summary>Fills a letter so lightly that lines over it stay clear.</summary>
    public static Ink Faint { get; } = new(0xE3DAD6);

    /// <summary>The cool accent: indigo. For the grain, which lies across everything and belongs to no edge.</summary>
    public static Ink Cool { get; } = new(0x2B4C7E);

    /// <summary>The warm accent: madder, as of tailor's chalk. For what the eye must find first.</summary>
    public static Ink Accent { get; } = new(0x9C2F24);

    /// <summary>Nothing is drawn darker than the paper.</summary>
    public static Ink Paper { get; } = new(0xFFFFFF);

    /// <summary>Red, 0 to 255.</summary>
    public int Red => (_rgb >> 16) & 0xFF;

    /// <summary>Green, 0 to 255.</summary>
    public int Green => (_rgb >> 8) & 0xFF;

    /// <summary>Blue, 0 to 255.</summary>
    public int Blue => _rgb & 0xFF;

    /// <inheritdoc/>
    public bool Equals(Ink other) => _rgb == other._rgb;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Ink other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _rgb;

    /// <summary>The colour as <c>#9c2f24</c>.</summary>
    public override string ToString() => "#" + _rgb.ToString("x6", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Whether two inks are the same colour.</summary>
    public static bool operator ==(Ink left, Ink right) => left.Equals(right);

    /// <summary>Whether two inks differ.</summary>
    public static bool operator !=(Ink left, Ink right) => !left.Equals(right);
}
