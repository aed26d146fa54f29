namespace Pattern.Core.Panels;

/// <summary>How the two edges of a seam run when they are sewn together.</summary>
public enum SeamRun
{
    /// <summary>Found out from how the panels lie: sewn edge to edge and opened flat, they lie on opposite sides of the seam.</summary>
    /// <remarks>Right whenever both panels are drawn with the same side of the cloth up. Say the run yourself for a panel that is drawn turned over.</remarks>
    Found,

    /// <summary>The start of one meets the start of the other.</summary>
    SameWay,

    /// <summary>The start of one meets the end of the other.</summary>
    Opposite,
}
