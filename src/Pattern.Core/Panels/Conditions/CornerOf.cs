using System;

namespace Pattern.Core.Panels;

/// <summary>Names one corner of a panel, by the edge that begins or ends there: <c>EdgeOf.Panel(PanelName.Back, EdgeName.Waist).AtEnd</c>.</summary>
public readonly struct CornerOf : IEquatable<CornerOf>
{
    internal CornerOf(EdgeOf edge, EdgeEnd end)
    {
        Edge = edge;
        End = end;
    }

    /// <summary>The edge.</summary>
    public EdgeOf Edge { get; }

    /// <summary>Which end of it.</summary>
    public EdgeEnd End { get; }

    /// <inheritdoc/>
    public bool Equals(CornerOf other) => Edge == other.Edge && End == other.End;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CornerOf other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Edge.GetHashCode() * 397) ^ (int)End);

    /// <summary>Such as <c>end of the back waist</c>.</summary>
    public override string ToString() => (End == EdgeEnd.Start ? "start of the " : "end of the ") + Edge;

    /// <summary>Whether both name the same end of the same edge.</summary>
    public static bool operator ==(CornerOf left, CornerOf right) => left.Equals(right);

    /// <summary>Whether they name different ends.</summary>
    public static bool operator !=(CornerOf left, CornerOf right) => !left.Equals(right);
}
