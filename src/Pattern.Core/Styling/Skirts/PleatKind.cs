namespace Pattern.Core.Styling;

/// <summary>How pleats are folded.</summary>
internal enum PleatKind
{
    /// <summary>All turned the same way.</summary>
    Knife,

    /// <summary>Two folds turned away from each other; a box lies over the centre.</summary>
    Box,

    /// <summary>Two folds turned toward each other; they meet over the centre.</summary>
    Inverted,
}
