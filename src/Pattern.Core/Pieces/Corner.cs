namespace Pattern.Core.Pieces;

/// <summary>How the allowances of two edges meet at the corner between them.</summary>
/// <remarks>Where the corner points into the piece the allowances simply end where their cut lines cross, whatever is asked for; and a corner so sharp
/// that its point would lie more than four allowances away, which is one of less than 29 degrees, is made <see cref="Blunt"/>.</remarks>
public enum Corner
{
    /// <summary>Both cut lines run straight on until they meet. Where the edges run on nearly straight, with different allowances, the cut
    /// line steps from one to the other, square to the seam.</summary>
    Extended,

    /// <summary>The seam line of the edge that runs on is drawn on to the cut line of the edge that it runs into; from there its
    /// allowance ends square to it. Both panels of a seam then match at their cut edges when it is sewn.</summary>
    SquaredOff,

    /// <summary>The allowance of the first edge is folded back, as at a hem, a vent or a facing: beyond the fold the cut line is the mirror image of
    /// the one before it, so the allowance lies flat on what it folds onto.</summary>
    Mirrored,

    /// <summary>The point is cut off square, one allowance beyond the corner: for sharp points. Where the seam line turns by less than 45
    /// degrees, or the corner is not so far away, there is no point, and the corner is <see cref="Extended"/>.</summary>
    Blunt,
}
