using System;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A place on an edge: <c>EdgeName.SideSeam.At(Tape.Inches("2 1/2"))</c>, <c>EdgeName.Hem.Middle</c>. Always along the sewn edge, darts closed.</summary>
public readonly struct EdgePlace : IEquatable<EdgePlace>
{
    private readonly double _value;
    private readonly bool _isShare;

    internal EdgePlace(EdgeName edge, double value, bool isShare)
    {
        Edge = edge;
        _value = value;
        _isShare = isShare;
    }

    /// <summary>The edge.</summary>
    public EdgeName Edge { get; }

    /// <summary>Where that is on an edge of a given sewn length.</summary>
    /// <param name="sewnLength">How long the edge is, darts closed.</param>
    public Length DistanceFromStart(Length sewnLength) => Length.FromMillimeters(ResolveMm(sewnLength.Millimeters));

    internal double ResolveMm(double sewnLengthMm) => _isShare ? _value * sewnLengthMm : _value;

    /// <inheritdoc/>
    public bool Equals(EdgePlace other) => Edge == other.Edge && _value == other._value && _isShare == other._isShare;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EdgePlace other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Edge.GetHashCode() * 397) ^ _value.GetHashCode());

    /// <summary>Whether both are the same place, said in the same way.</summary>
    public static bool operator ==(EdgePlace left, EdgePlace right) => left.Equals(right);

    /// <summary>Whether they differ in place or in the way they are said.</summary>
    public static bool operator !=(EdgePlace left, EdgePlace right) => !left.Equals(right);
}
