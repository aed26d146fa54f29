namespace Pattern.Core.Geometry;

/// <summary>How a search for the least change ended.</summary>
internal enum LeastChangeEnd
{
    /// <summary>Everything held already; nothing was changed, not by a bit.</summary>
    Unchanged,

    /// <summary>Everything holds, and no smaller change near by does it.</summary>
    Least,

    /// <summary>Everything holds; a smaller change may do it too.</summary>
    Met,

    /// <summary>Not everything can hold within the limits, as far as the search has seen.</summary>
    NotMet,

    /// <summary>Nothing can be drawn from where the search was to begin.</summary>
    NotDrawn,
}
