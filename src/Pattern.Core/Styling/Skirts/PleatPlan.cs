namespace Pattern.Core.Styling;

/// <summary>The pleats of one quarter at its hip: where their folds lie, and how deep they go under.</summary>
/// <remarks>The last folds lie at the side, so that its seam is hidden in the middle of an underlay. Knife pleats turn away from a box over the centre, as wide as two of them: nearer to
/// each other they would hide each other there.</remarks>
/// <param name="Kind">How they are folded.</param>
/// <param name="Count">How many lines of a quarter folds meet at, the one at the side counted and one at the centre not.</param>
/// <param name="WidthMm">How wide the quarter is at the hip, folded.</param>
/// <param name="Share">How deep, of the deepest that no three layers lie over each other at.</param>
internal readonly record struct PleatPlan(PleatKind Kind, int Count, double WidthMm, double Share)
{
    /// <summary>How wide a pleat is as one sees it.</summary>
    internal double VisibleMm => WidthMm / (Kind == PleatKind.Box ? Count - 0.5 : Count);

    /// <summary>The deepest that no three layers lie over each other at.</summary>
    internal double DeepestMm => Kind == PleatKind.Knife ? VisibleMm : VisibleMm / 2;

    /// <summary>How deep a fold lies under.</summary>
    internal double DepthMm => Share * DeepestMm;

    /// <summary>What lies under at a line where folds meet.</summary>
    internal double StripMm => DepthMm * (Kind == PleatKind.Knife ? 2 : 4);

    /// <summary>How many lines lie between centre and side.</summary>
    internal int Between => Count - 1;

    /// <summary>Whether folds meet over the centre.</summary>
    internal bool HasCentre => Kind == PleatKind.Inverted;

    /// <summary>How many pleats two such quarters have.</summary>
    internal int OfTwoQuarters => Kind == PleatKind.Box ? (2 * Count) - 1 : 2 * Count;

    /// <summary>How far a line between centre and side lies from the centre; the first is number 0.</summary>
    internal double LineMm(int index) => VisibleMm * (Kind == PleatKind.Box ? index + 0.5 : index + 1);
}
