using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>Why a cut line cannot be drawn: nothing is left of an edge, or, where there is a point, the line would cross itself there.</summary>
internal sealed record CutFault(EdgeName Edge, double AllowanceMm, Point2D? CrossesAt)
{
    internal ConstructionException ToException(Panel panel, double allowedMm) => CrossesAt is { } at
        ? PieceErrors.Crosses(panel, at, Edge, AllowanceMm, allowedMm)
        : PieceErrors.Vanishes(panel.Name, Edge, AllowanceMm, allowedMm);
}
