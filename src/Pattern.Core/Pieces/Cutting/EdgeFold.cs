using System.Linq;
using Pattern.Core.Geometry;
using Pattern.Core.Panels;

namespace Pattern.Core.Pieces;

/// <summary>The straight line along which the allowance of an edge is folded back.</summary>
internal static class EdgeFold
{
    // Cloth folds flat along a straight line only. An edge that is this close to the line through its ends is folded along that; common practice, no source: nobody
    // folds cloth more exactly.
    private const double StraightMm = 1;

    /// <summary>The fold at one end of an edge, in the direction of the edge: the line through both ends where the edge keeps to it, else the tangent.</summary>
    internal static Line At(PanelEdge edge, bool isEnd)
    {
        CurvePath stretch = edge.Stretches[isEnd ? edge.Stretches.Count - 1 : 0];
        return edge.Darts.Count == 0 && IsStraight(stretch) ? Line.Through(stretch.Start, stretch.End)
            : isEnd ? Line.From(stretch.End, stretch.EndDirection)
            : Line.From(stretch.Start, stretch.StartDirection);
    }

    internal static bool IsStraight(CurvePath edge)
    {
        if (edge.Start.DistanceMm(edge.End) <= StraightMm)
        {
            return false;
        }

        return OffStraightMm(edge) <= StraightMm;
    }

    /// <summary>How far a line stands off the straight one through its ends, at most.</summary>
    internal static double OffStraightMm(CurvePath edge)
    {
        Line line = Line.Through(edge.Start, edge.End);
        return edge.SegmentsRaw.Max(segment => PanelUnfolding.OffMm(segment, line));
    }
}
