namespace Pattern.Core.Panels;

/// <summary>How an edge is drawn again.</summary>
public enum TruedLine
{
    /// <summary>One curve from end to end, the fairest between its end directions. For a waist, a hem, a shoulder.</summary>
    OneSweep,

    /// <summary>The line as it is, its corners smoothed: only the curves next to a corner bend, and darts keep their legs. For an armhole or a
    /// neckline, whose shape is to stay.</summary>
    Blended,
}
