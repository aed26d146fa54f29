namespace Pattern.Core.Styling;

/// <summary>What gives room to walk in a narrow hem.</summary>
public enum WalkingRoom
{
    /// <summary>Both halves of the back extended beyond the seam, one lying under the other.</summary>
    Vent,

    /// <summary>The seam left open, faced.</summary>
    Slit,

    /// <summary>An inverted pleat below the seam.</summary>
    KickPleat,

    /// <summary>Nothing.</summary>
    None,
}
