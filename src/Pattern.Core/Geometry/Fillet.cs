using System;

namespace Pattern.Core.Geometry;

/// <summary>Finds the arc of a radius that touches two segments next to their common corner.</summary>
internal static class Fillet
{
    internal static bool TryFind(
        in PathSegment before, in PathSegment after, double radiusMm, double turnRad, out double endBefore, out double startAfter, out CircularArc arc)
    {
        // The centre lies a radius beside both, on the inside of the corner. Between straight lines the arc begins r tan(turn / 2)
        // before the corner; between curves that is where the search begins.
        double side = turnRad < 0 ? -radiusMm : radiusMm;
        double backMm = radiusMm * Math.Tan(Math.Min(Math.Abs(turnRad), 3.1) / 2);
        double beforeMm = before.LengthMm();
        double afterMm = after.LengthMm();
        endBefore = before.ParameterAtLengthMm(Math.Max(0.05 * beforeMm, beforeMm - backMm));
        startAfter = after.ParameterAtLengthMm(Math.Min(0.95 * afterMm, backMm));
        arc = default;
        for (int i = 0; i < 60; i++)
        {
            Place(before, endBefore, side, out Vector2D centre1, out Vector2D move1);
            Place(after, startAfter, side, out Vector2D centre2, out Vector2D move2);
            Vector2D gap = centre2 - centre1;
            if (gap.LengthMm <= 1e-11 * (radiusMm + Math.Abs(centre1.XMm) + Math.Abs(centre1.YMm)))
            {
                return IsInside(endBefore, startAfter) && MakeArc(before, after, endBefore, startAfter, centre1, radiusMm, side, out arc);
            }

            // Newton: move1 step1 - move2 step2 = gap; crossed with either move, one unknown is left.
            double determinant = move1.CrossMm2(move2);
            double step1 = gap.CrossMm2(move2) / determinant;
            double step2 = gap.CrossMm2(move1) / determinant;
            if (!(Math.Abs(step1) < 1e6) || !(Math.Abs(step2) < 1e6))
            {
                return false;
            }

            double longest = Math.Max(Math.Abs(step1), Math.Abs(step2));
            double damping = longest > 0.25 ? 0.25 / longest : 1;
            endBefore = Raw.Clamp(endBefore + (damping * step1), -0.5, 1.5);
            startAfter = Raw.Clamp(startAfter + (damping * step2), -0.5, 1.5);
        }

        return false;
    }

    private static bool IsInside(double endBefore, double startAfter) => endBefore > 1e-12 && endBefore <= 1 && startAfter >= 0 && startAfter < 1 - 1e-12;

    private static bool MakeArc(
        in PathSegment before,
        in PathSegment after,
        double endBefore,
        double startAfter,
        in Vector2D centre,
        double radiusMm,
        double side,
        out CircularArc arc)
    {
        Direction leaving = before.DirectionAtRaw(endBefore);
        Direction arriving = after.DirectionAtRaw(startAfter);
        double sweep = leaving.TurnRadTo(arriving);
        Point2D start = before.PointAtRaw(endBefore);
        arc = new CircularArc(centre.XMm, centre.YMm, radiusMm, Math.Atan2(start.YMm - centre.YMm, start.XMm - centre.XMm), sweep);

        // An arc that turns the other way touches, but from the wrong side.
        return sweep * side > 0;
    }

    /// <summary>The point a radius beside a segment, and how it moves with the parameter.</summary>
    private static void Place(in PathSegment segment, double t, double side, out Vector2D centre, out Vector2D move)
    {
        Vector2D speed = segment.DerivativeAtRaw(t);
        Point2D point = segment.PointAtRaw(t);
        double length = speed.LengthMm;
        centre = new Vector2D(point.XMm - (side * speed.YMm / length), point.YMm + (side * speed.XMm / length));
        move = speed * (1 - (side * segment.CurvaturePerMmAtRaw(t)));
    }
}
