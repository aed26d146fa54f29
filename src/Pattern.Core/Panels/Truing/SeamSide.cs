namespace Pattern.Core.Panels;

/// <summary>Which of the two edges of a seam gives way.</summary>
public enum SeamSide
{
    /// <summary>Both, each its share.</summary>
    Both,

    /// <summary>The first edge alone.</summary>
    First,

    /// <summary>The second edge alone.</summary>
    Second,
}
