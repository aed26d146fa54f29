using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>Why a cut line cannot be drawn: nothing is left of an edge, or, where there is a point, the line would cross itself there, or come too near to the edge.</summary>
internal sealed record CutFault(EdgeName Edge, double AllowanceMm, Point2D? At, double? NearestMm = null)
{
    internal ConstructionException ToException(Panel panel, double allowedMm) => At is not { } at
        ? PieceErrors.Vanishes(panel.Name, Edge, AllowanceMm, allowedMm)
        : NearestMm is { } nearestMm
            ? PieceErrors.TooNear(panel.Name, at, Edge, nearestMm, AllowanceMm, allowedMm)
            : PieceErrors.Crosses(panel, at, Edge, AllowanceMm, allowedMm);
}
