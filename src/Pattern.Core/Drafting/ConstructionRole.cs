namespace Pattern.Core.Drafting;

/// <summary>What a construction line is for.</summary>
public enum ConstructionRole
{
    /// <summary>A side of the box that the draft stands in.</summary>
    Frame,

    /// <summary>A level across the body, such as the hip line.</summary>
    Level,

    /// <summary>Any other help line: a dart centre, a line squared off.</summary>
    Guide,

    /// <summary>A seam line as first drawn by hand, before truing.</summary>
    HandDrawn,
}
