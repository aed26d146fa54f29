namespace Pattern.Core.Blocks;

/// <summary>How a sleeve follows the bend of the arm.</summary>
internal enum ElbowShaping
{
    /// <summary>Not at all: both underarm seams are straight.</summary>
    Straight,

    /// <summary>Bent forward; what the back seam is longer by is eased in at the elbow.</summary>
    Eased,

    /// <summary>Bent forward; what the back seam is longer by is a dart at the elbow.</summary>
    Dart,

    /// <summary>Cut in two, an upper and an under sleeve, both bent forward; what the back seam of the upper one is longer by is eased in at the elbow.</summary>
    TwoPiece,
}
