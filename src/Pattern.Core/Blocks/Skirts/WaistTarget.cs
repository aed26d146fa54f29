using Pattern.Core.Geometry;

namespace Pattern.Core.Blocks;

/// <summary>What the waistline of a quarter is trued to.</summary>
/// <param name="Panel">For messages.</param>
/// <param name="Start">Where the edge begins, on the centre line.</param>
/// <param name="Leaving">The direction of the edge there: square to the centre line, out to the side.</param>
/// <param name="SideFoot">Where the straight side seam below ends and its hip curve up to the edge begins.</param>
/// <param name="FirstGuess">Where the edge ended on the hand draft, on the side seam.</param>
/// <param name="ClosedLengthMm">How long the edge has to be with its darts closed.</param>
/// <param name="SideLengthMm">How long the hip curve of the side seam has to be.</param>
internal readonly record struct WaistTarget(
    string Panel, Point2D Start, Direction Leaving, Point2D SideFoot, Point2D FirstGuess, double ClosedLengthMm, double SideLengthMm)
{
    /// <summary>Whether the first guess is near the end itself, where the edge has no darts.</summary>
    internal bool IsNear { get; init; }

    /// <summary>Whether the side seam runs straight from its foot up to the edge, as a fold does, instead of in a hip curve.</summary>
    internal bool IsStraightSide { get; init; }

    /// <summary>The side seam up to an end.</summary>
    internal CubicBezier SideTo(in Point2D end) => IsStraightSide
        ? new CubicBezier(SideFoot, SideFoot + ((end - SideFoot) * (1.0 / 3)), SideFoot + ((end - SideFoot) * (2.0 / 3)), end)
        : Panels.HipCurves.Vertical(SideFoot, end);
}
