namespace Pattern.Core.Pieces;

/// <summary>What a notch of a piece is for.</summary>
public enum NotchKind
{
    /// <summary>Meets its twin on the piece next to this one. Common practice: one cut for a front, two for a back.</summary>
    Match,

    /// <summary>The end of a dart leg.</summary>
    DartLeg,

    /// <summary>Where an edge is folded: the end of the centre fold or of a hem.</summary>
    Fold,
}
