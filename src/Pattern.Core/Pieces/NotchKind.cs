namespace Pattern.Core.Pieces;

/// <summary>What a notch of a piece is for.</summary>
public enum NotchKind
{
    /// <summary>Meets its twin on the piece next to this one. Common practice: one cut for a front, two for a back.</summary>
    Match,

    /// <summary>The end of a dart leg.</summary>
    DartLeg,

    /// <summary>The end of the fold of the cloth.</summary>
    Fold,

    /// <summary>Where a hem is turned up, on the edge beside it: at the line of its fold, drawn on to the cut line. Common practice: a single cut.</summary>
    Hem,
}
