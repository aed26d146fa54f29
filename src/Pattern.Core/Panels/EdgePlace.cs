using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Panels;

/// <summary>A place on an edge: <c>EdgeName.SideSeam.At(Tape.Inches("2 1/2"))</c>, <c>EdgeName.Hem.Middle</c>, <c>EdgeName.Centre.From(EdgeName.Waist, Tape.Inches("6"))</c>.
/// Always along the sewn edge, darts closed.</summary>
public readonly struct EdgePlace : IEquatable<EdgePlace>
{
    private readonly double _value;
    private readonly bool _isShare;
    private readonly EdgeName? _from;

    internal EdgePlace(EdgeName edge, double value, bool isShare, EdgeName? from = null)
    {
        Edge = edge;
        _value = value;
        _isShare = isShare;
        _from = from;
    }

    /// <summary>The edge.</summary>
    public EdgeName Edge { get; }

    /// <summary>How far that is from the start of the edge on a panel, along the sewn edge.</summary>
    /// <param name="panel">A panel with that edge.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, or the edge that the place is measured from does not meet it at one end only.</exception>
    [Pure]
    public Length DistanceFromStart(Panel panel) => Length.FromMillimeters(ResolveMm(Guard.NotNull(panel, nameof(panel))));

    /// <summary>The edge that the place is measured from, and how far; null where it is measured from the start or by a share.</summary>
    internal (EdgeName Edge, double Mm)? MeetingMm => _from is { } from ? (from, _value) : null;

    internal double ResolveMm(Panel panel)
    {
        if (_from is not { } from)
        {
            return _isShare ? _value * panel.FindEdge(Edge).SewnLengthMm() : _value;
        }

        EdgeName start = panel.Neighbour(Edge, Toward.Start);
        EdgeName end = panel.Neighbour(Edge, Toward.End);
        return (start == from) == (end == from)
            ? throw new ConstructionException(DiagnosticCode.NoSuchNeighbour, panel.Name, Edge, start, end, from) { Step = "measuring along an edge", Landmark = Edge.Text }
            : start == from ? _value : panel.FindEdge(Edge).SewnLengthMm() - _value;
    }

    /// <summary>The place as it is said: <c>side, 50 % along</c>, <c>centre, 152.4 mm from waist</c>.</summary>
    public override string ToString() => _isShare
        ? FormattableString.Invariant($"{Edge}, {100 * _value:0.##} % along")
        : FormattableString.Invariant($"{Edge}, {_value:0.##} mm from {_from?.Text ?? "its start"}");

    /// <inheritdoc/>
    public bool Equals(EdgePlace other) => Edge == other.Edge && _value == other._value && _isShare == other._isShare && _from == other._from;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EdgePlace other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Edge.GetHashCode() * 397) ^ _value.GetHashCode());

    /// <summary>Whether both are the same place, said in the same way.</summary>
    public static bool operator ==(EdgePlace left, EdgePlace right) => left.Equals(right);

    /// <summary>Whether they differ in place or in the way they are said.</summary>
    public static bool operator !=(EdgePlace left, EdgePlace right) => !left.Equals(right);
}
