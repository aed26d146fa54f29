namespace Pattern.Core.Panels;

/// <summary>One of the two ends of an edge, in its order.</summary>
public enum EdgeEnd
{
    /// <summary>Where the edge begins.</summary>
    Start,

    /// <summary>Where the edge ends.</summary>
    End,
}
