using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>Truing an edge.</content>
public sealed partial class Panel
{
    /// <summary>Returns a copy of this panel with an edge drawn again as one smooth line, darts closed.</summary>
    /// <remarks>Both ends and the directions there stay. Apexes and the lines of the legs stay; legs are cut back or go on to the new line, so an intake changes in
    /// proportion to its legs. When the edge is smooth already nothing changes.</remarks>
    /// <param name="edge">The edge; it may carry any number of darts, or none.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, the line would miss a dart, or the outline would cross itself.</exception>
    [Pure]
    public TruingResult TrueEdge(EdgeName edge) => TrueEdge(edge, EdgeTruing.Default);

    /// <summary>Returns a copy of this panel with an edge drawn again as one smooth line, darts closed, as asked for.</summary>
    /// <param name="edge">The edge; it may carry any number of darts, or none.</param>
    /// <param name="truing">What is asked of the line.</param>
    /// <exception cref="ConstructionException">The panel has no such edge, no line has the closed length asked for, the line would miss a dart, or
    /// the outline would cross itself.</exception>
    [Pure]
    public TruingResult TrueEdge(EdgeName edge, EdgeTruing truing) => new EdgeRedraw(this, edge, Guard.NotNull(truing, nameof(truing))).True();

    /// <summary>The angle inside the panel where an edge ends and the next begins, 0 to a full turn.</summary>
    internal double CornerRad(int edge)
    {
        PanelEdge next = _edges[edge == _edges.Length - 1 ? 0 : edge + 1];
        Direction back = _edges[edge].Stretches[_edges[edge].Stretches.Count - 1].EndDirection.Reversed;
        Direction on = next.Stretches[0].StartDirection;
        double inside = RunsCounterClockwise ? on.TurnRadTo(back) : back.TurnRadTo(on);
        return inside >= 0 ? inside : inside + (2 * Math.PI);
    }
}
