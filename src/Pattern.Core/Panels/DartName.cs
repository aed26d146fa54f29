using System;
using System.Globalization;

namespace Pattern.Core.Panels;

/// <summary>Names a dart by the edge that it stands on and its number there: <c>EdgeName.Waist.Dart(1)</c>.</summary>
public readonly struct DartName : IEquatable<DartName>
{
    private readonly int _before;

    internal DartName(EdgeName edge, int number)
    {
        Edge = edge;
        _before = number - 1;
    }

    /// <summary>The edge that the dart stands on.</summary>
    public EdgeName Edge { get; }

    /// <summary>Its number on the edge, in the order of the edge, starting at 1.</summary>
    public int Number => _before + 1;

    /// <inheritdoc/>
    public bool Equals(DartName other) => Edge == other.Edge && _before == other._before;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is DartName other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Edge.GetHashCode() * 397) ^ _before);

    /// <summary>Such as "waist dart 1".</summary>
    public override string ToString() => Edge.Text + " dart " + Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether both name the same dart.</summary>
    public static bool operator ==(DartName left, DartName right) => left.Equals(right);

    /// <summary>Whether they name different darts.</summary>
    public static bool operator !=(DartName left, DartName right) => !left.Equals(right);
}
