using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>The name of an edge of a panel, such as waist or side. Two names are equal when their text is.</summary>
public readonly struct EdgeName : IEquatable<EdgeName>
{
    private readonly string? _text;

    private EdgeName(string text) => _text = text;

    /// <summary>The waist edge.</summary>
    public static EdgeName Waist { get; } = new("waist");

    /// <summary>The side seam.</summary>
    public static EdgeName SideSeam { get; } = new("side");

    /// <summary>The hem edge.</summary>
    public static EdgeName Hem { get; } = new("hem");

    /// <summary>The centre front or centre back line.</summary>
    public static EdgeName Centre { get; } = new("centre");

    /// <summary>The shoulder seam.</summary>
    public static EdgeName Shoulder { get; } = new("shoulder");

    /// <summary>The neckline.</summary>
    public static EdgeName Neckline { get; } = new("neckline");

    /// <summary>The armhole.</summary>
    public static EdgeName Armhole { get; } = new("armhole");

    /// <summary>The head of a sleeve, which is sewn into the armhole: also called the cap or crown.</summary>
    public static EdgeName SleeveHead { get; } = new("sleeve head");

    /// <summary>The underarm seam, where a panel has one.</summary>
    public static EdgeName Underarm { get; } = new("underarm");

    /// <summary>The front half of an underarm seam, where one panel has both.</summary>
    public static EdgeName FrontUnderarm { get; } = new("front underarm");

    /// <summary>The back half of an underarm seam, where one panel has both.</summary>
    public static EdgeName BackUnderarm { get; } = new("back underarm");

    /// <summary>The lower edge of a sleeve that ends at the wrist.</summary>
    public static EdgeName Wrist { get; } = new("wrist");

    /// <summary>The edge that a cuff is sewn to.</summary>
    public static EdgeName Cuff { get; } = new("cuff");

    /// <summary>The inside leg seam, from the crotch down.</summary>
    public static EdgeName Inseam { get; } = new("inseam");

    /// <summary>The outside leg seam, from the waist down.</summary>
    public static EdgeName Outseam { get; } = new("outseam");

    /// <summary>The crotch seam, from the waist to the inside leg: also called the seat seam or rise.</summary>
    public static EdgeName Crotch { get; } = new("crotch");

    /// <summary>The name in lower case, as it is printed and written to files; "edge" for a default value.</summary>
    public string Text => _text ?? "edge";

    /// <summary>Makes a name of your own.</summary>
    /// <param name="text">Lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <exception cref="ArgumentException">The text is empty, too long or has other characters.</exception>
    public static EdgeName Of(string text) => new(Guard.Identifier(text, nameof(text)));

    /// <summary>Half way along the sewn edge.</summary>
    public EdgePlace Middle => new(this, 0.5, isShare: true);

    /// <summary>A place on the edge.</summary>
    /// <param name="distanceFromStart">Along the sewn edge from its start, darts closed.</param>
    [Pure]
    public EdgePlace At(Length distanceFromStart) => new(this, Guard.Millimetres(distanceFromStart, nameof(distanceFromStart)), isShare: false);

    /// <summary>A place on the edge.</summary>
    /// <param name="share">The part of the sewn edge that lies before it, 0 to 100 %.</param>
    [Pure]
    public EdgePlace At(Ratio share) => new(this, Guard.Share(share, nameof(share)), isShare: true);

    /// <summary>A place on the edge, measured from the end where it meets another edge: six inches down the centre from the waist, whichever way the edge runs.</summary>
    /// <param name="meeting">The edge that it meets at one of its ends.</param>
    /// <param name="distance">Along the sewn edge from there, darts closed.</param>
    [Pure]
    public EdgePlace From(EdgeName meeting, Length distance) => new(this, Guard.Millimetres(distance, nameof(distance)), isShare: false, meeting);

    /// <summary>A dart on the edge, by its number in the order of the edge, from 1.</summary>
    /// <param name="number">1 or more.</param>
    [Pure]
    public DartName Dart(int number) => new(this, Guard.InRange(number, 1, 99, nameof(number)));

    /// <inheritdoc/>
    public bool Equals(EdgeName other) => string.Equals(Text, other.Text, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EdgeName other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);

    /// <summary>Returns <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    /// <summary>Whether two names have the same text.</summary>
    public static bool operator ==(EdgeName left, EdgeName right) => left.Equals(right);

    /// <summary>Whether two names have different texts.</summary>
    public static bool operator !=(EdgeName left, EdgeName right) => !left.Equals(right);
}
