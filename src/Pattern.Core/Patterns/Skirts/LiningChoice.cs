namespace Pattern.Core.Patterns;

/// <summary>Whether a skirt pattern has pieces for a lining.</summary>
public enum LiningChoice
{
    /// <summary>None.</summary>
    None,

    /// <summary>The same panels without hem allowance: turned up by the usual hem they end shorter than the skirt.</summary>
    Loose,
}
