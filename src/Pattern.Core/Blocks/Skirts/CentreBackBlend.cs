namespace Pattern.Core.Blocks;

/// <summary>Where the shaping of the centre back waist blends into the straight centre back.</summary>
public enum CentreBackBlend
{
    /// <summary>At the upper hip line: a long, flat curve.</summary>
    UpperHip,

    /// <summary>At the yoke line: for a hollow back over a full seat.</summary>
    Yoke,
}
