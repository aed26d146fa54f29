namespace Pattern.Core.Panels;

/// <summary>What becomes of an edge.</summary>
public enum EdgeRole
{
    /// <summary>Sewn to an edge of another panel, or of the same one.</summary>
    Seam,

    /// <summary>The centre line of the body: cut on the fold of the cloth, or a seam.</summary>
    Centre,

    /// <summary>Turned up.</summary>
    Hem,

    /// <summary>Joined to a band, a facing or a bodice: a waist, a neckline.</summary>
    Opening,
}
