namespace Pattern.Core.Panels;

/// <summary>Which way a trued edge leaves or arrives at its end.</summary>
public enum EndDirection
{
    /// <summary>As before.</summary>
    Kept,

    /// <summary>Square to the edge next to it, turned the shorter way.</summary>
    Square,
}
