namespace Pattern.Core.Panels;

/// <summary>How the end of an edge may move to give the edge its length.</summary>
public enum EndMove
{
    /// <summary>Along the edge next to it, which becomes shorter, or goes straight on.</summary>
    AlongNeighbour,

    /// <summary>In the edge's own direction; the edge next to it follows with its near end.</summary>
    AlongEdge,
}
