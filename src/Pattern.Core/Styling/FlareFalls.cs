namespace Pattern.Core.Styling;

/// <summary>Where more of the flare falls.</summary>
public enum FlareFalls
{
    /// <summary>Everywhere as much.</summary>
    Evenly,

    /// <summary>More the nearer to the side.</summary>
    TowardSide,

    /// <summary>More the nearer to the centre.</summary>
    TowardCentre,
}
