using System;
using System.Diagnostics.Contracts;

namespace Pattern.Core.Panels;

/// <summary>Names one edge of one panel: <c>EdgeOf.Panel(PanelName.Back, EdgeName.SideSeam)</c>. Says which edge is meant whatever is done to the panel.</summary>
public readonly struct EdgeOf : IEquatable<EdgeOf>
{
    private EdgeOf(PanelName panel, EdgeName edge)
    {
        PanelName = panel;
        EdgeName = edge;
    }

    /// <summary>The panel.</summary>
    public PanelName PanelName { get; }

    /// <summary>The edge on it.</summary>
    public EdgeName EdgeName { get; }

    /// <summary>The corner where the edge begins.</summary>
    public CornerOf AtStart => new(this, EdgeEnd.Start);

    /// <summary>The corner where the edge ends.</summary>
    public CornerOf AtEnd => new(this, EdgeEnd.End);

    /// <summary>Names an edge of a panel. Neither has to exist yet.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="edge">The edge on it.</param>
    public static EdgeOf Panel(PanelName panel, EdgeName edge) => new(panel, edge);

    /// <summary>A dart on the edge, by its number in the order of the edge, from 1.</summary>
    /// <param name="number">1 or more.</param>
    [Pure]
    public DartOf Dart(int number) => new(PanelName, EdgeName.Dart(number));

    /// <inheritdoc/>
    public bool Equals(EdgeOf other) => PanelName == other.PanelName && EdgeName == other.EdgeName;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is EdgeOf other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((PanelName.GetHashCode() * 397) ^ EdgeName.GetHashCode());

    /// <summary>Panel and edge, such as <c>back side</c>.</summary>
    public override string ToString() => PanelName.Text + " " + EdgeName.Text;

    /// <summary>Whether both name the same edge of the same panel.</summary>
    public static bool operator ==(EdgeOf left, EdgeOf right) => left.Equals(right);

    /// <summary>Whether they name different edges.</summary>
    public static bool operator !=(EdgeOf left, EdgeOf right) => !left.Equals(right);
}
