namespace Pattern.Core.Pieces;

/// <summary>What a line inside a piece is for.</summary>
public enum InternalLineKind
{
    /// <summary>A level of the body or the block, such as the hip line.</summary>
    Level,

    /// <summary>Where something is sewn on or cut open, such as a pocket.</summary>
    Placement,

    /// <summary>Where a seam or an opening ends, such as the stop of a zip.</summary>
    Stop,

    /// <summary>Where cloth is folded or pleated.</summary>
    Fold,

    /// <summary>Where cloth is stitched, such as topstitching.</summary>
    Stitching,
}
