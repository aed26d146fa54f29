using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Styling;

/// <summary>Cut edges shaped by folding: each layer that lies under is cut as what it lies under, mirrored over the fold between them.</summary>
/// <remarks>Seen from the centre out: the centre is the upright through the origin, and a quarter lies to the right of it. Beyond the centre goes on the mirror image of the quarter.</remarks>
internal sealed class PleatLayers
{
    private static readonly Transform2D OverCentre = Transform2D.Mirror(Line.Vertical(Point2D.Origin));

    // What lies so little beyond a seam is trimmed in it; common practice, no source.
    private const double MostBeyondMm = 2;

    private readonly CurvePath _whole;
    private readonly double _halfMm;

    /// <param name="closed">The edge from the centre out, with all that is lapped or darted closed.</param>
    internal PleatLayers(CurvePath closed)
    {
        _halfMm = closed.LengthMm;
        _whole = closed.Transformed(OverCentre).Reversed().Then(closed);
    }

    /// <summary>The edge before a place, from there back toward the centre.</summary>
    /// <param name="atMm">How far out along the edge.</param>
    /// <param name="reachMm">How much of it is wanted at most.</param>
    internal CurvePath Before(double atMm, double reachMm) => _whole.SubPathMm(Math.Max(0, _halfMm + atMm - reachMm), _halfMm + atMm).Reversed();

    /// <summary>The edge beyond a place, from there out.</summary>
    internal CurvePath Beyond(double atMm, double reachMm) => _whole.SubPathMm(_halfMm + atMm, Math.Min(2 * _halfMm, _halfMm + atMm + reachMm));

    /// <summary>The first layer under a fold: what lies over it, mirrored over the visible fold, as far as the inner fold; null where it leans so much that it would run on beyond the side seam.</summary>
    internal static CurvePath? Under(CurvePath over, Line visible, Line inner)
    {
        CurvePath image = over.Transformed(Transform2D.Mirror(visible));
        IReadOnlyList<PathIntersection> hits = image.IntersectionsWith(inner).Points;
        if (hits.Count == 0)
        {
            // The edge ends at the side before its image comes to the inner fold: it goes on straight, so far that it is still caught in the seam there.
            image = image.ExtendedAtEnd(SkirtStock.Mm(MostBeyondMm));
            hits = image.IntersectionsWith(inner).Points;
        }

        return hits.Count == 0 ? null : image.SubPathMm(0, image.LengthToMm(image.ClosestTo(hits[0].Point)));
    }

    /// <summary>Both layers under a fold, where the second comes back to where the first began: from the visible fold to the middle of the underlay; null as above.</summary>
    internal static CurvePath? Twice(CurvePath over, Line visible, Line inner)
        => Under(over, visible, inner) is { } layer ? layer.Then(layer.Reversed().Transformed(Transform2D.Mirror(inner))) : null;

    /// <summary>The inner fold that lays the upright middle of an underlay onto the visible fold: it halves the angle between them.</summary>
    /// <param name="on">A point of the visible fold.</param>
    /// <param name="up">Its direction, upward.</param>
    /// <param name="middleXMm">Where the middle of the underlay stands.</param>
    internal static Line Halving(in Point2D on, Direction up, double middleXMm)
    {
        Direction along = up.TurnedRad(up.TurnRadTo(Direction.Up) / 2);
        double opposite = on.YMm - ((middleXMm - on.XMm) * along.X / along.Y);
        return Line.From(new Point2D((on.XMm + middleXMm) / 2, (on.YMm + opposite) / 2), along);
    }

    /// <summary>How high an inner fold stands over a place across: there it begins to run upright. An upright one does so anywhere, at the height that is given.</summary>
    internal static double HeightAt(Line inner, double xMm, double uprightMm)
        => Math.Abs(inner.Direction.X) < GeometryTolerance.JoinMm ? uprightMm : inner.Point.YMm + ((xMm - inner.Point.XMm) * inner.Direction.Y / inner.Direction.X);
}
