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
    /// the one before it, so the allowance flares or tapers as what it folds onto does. Cloth folds flat along a straight line only: the fold is the line through both ends of the first
    /// edge where that keeps within 1 mm of it, and then the allowance lies flat; else it leaves the corner along the tangent of the edge.</summary>
    /// <remarks>Nothing folds flat along a curve. Turned up along a hem that bends at a radius R, with its centre on the side of the garment, an allowance h is longer
    /// at its free edge than where it lies, and is eased in. At a square corner the seam line itself still lands on itself; at the edge of a seam allowance a,
    /// the free edge lands by 2ah / (R + h) inside the cut line: 1.5 mm for a hem of 38 mm at a radius of 600 mm beside a seam allowance of 12.7 mm.</remarks>
    Mirrored,

    /// <summary>The point is cut off square, one allowance beyond the corner: for sharp points. Where the seam line turns by less than 45
    /// degrees, or the corner is not so far away, there is no point, and the corner is <see cref="Extended"/>.</summary>
    Blunt,
}
