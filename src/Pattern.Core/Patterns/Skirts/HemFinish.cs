namespace Pattern.Core.Patterns;

/// <summary>How the hems of a garment are finished.</summary>
public enum HemFinish
{
    /// <summary>Turned up. A hem that curves is turned up the less the more it curves.</summary>
    TurnedUp,

    /// <summary>Turned up where that lies flat within 2 mm; a hem that curves more has a facing of its own shape.</summary>
    FacedWhereCurved,
}
