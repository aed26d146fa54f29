namespace Pattern.Core.Geometry;

/// <summary>What happens to a length that is negative or longer than the curve.</summary>
public enum BeyondEnds
{
    /// <summary>It is refused with an exception. The default.</summary>
    Refuse,

    /// <summary>It stops at the end that it passes.</summary>
    StopAtEnd,
}
