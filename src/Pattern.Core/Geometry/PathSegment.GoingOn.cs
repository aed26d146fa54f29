using System;

namespace Pattern.Core.Geometry;

/// <content>Going on beyond the end.</content>
public readonly partial struct PathSegment
{
    // Each doubles the part of the curve's own parameter that is looked at; a curve that has not come so far by then stands still.
    private const int MostDoublings = 40;

    /// <summary>The part that follows when one goes on beyond the end, exactly along the same line, circle or polynomial.</summary>
    /// <returns>Whether there is one: an arc goes on for one whole turn in all, and what has no length goes nowhere.</returns>
    internal bool TryGoOnMm(double distanceMm, out PathSegment added)
    {
        added = FromLine(new LineSegment(End, End));
        switch (Kind)
        {
            case PathSegmentKind.Line:
                if (!TryDirectionAtRaw(1, out Direction way))
                {
                    return distanceMm == 0;
                }

                added = FromLine(new LineSegment(End, End + way.TimesMm(distanceMm)));
                return true;
            case PathSegmentKind.Arc:
                CircularArc arc = ArcRaw;
                double more = distanceMm / arc.RadiusMm * (arc.SweepRad < 0 ? -1 : 1);
                if (!(Math.Abs(arc.SweepRad + more) <= 2 * Math.PI))
                {
                    return false;
                }

                added = FromArc(new CircularArc(arc.CentreXMm, arc.CentreYMm, arc.RadiusMm, arc.StartRad + arc.SweepRad, more));
                return true;
            default:
                return distanceMm == 0 || TryGoOnCubicMm(_data, distanceMm, out added);
        }
    }

    private static bool TryGoOnCubicMm(in CubicBezier cubic, double distanceMm, out PathSegment added)
    {
        added = default;
        double wantedMm = cubic.LengthMm() + distanceMm;

        // At even speed the distance takes this much of the parameter; from there on twice as much until it is enough.
        double more = Math.Min(1, distanceMm / cubic.DerivativeAtRaw(1).LengthMm);
        for (int i = 0; i < MostDoublings; i++, more *= 2)
        {
            cubic.SplitRaw(1 + more, out CubicBezier longer, out _);
            double reachedMm = longer.LengthMm();
            if (!(reachedMm <= double.MaxValue))
            {
                return false;
            }

            if (reachedMm >= wantedMm)
            {
                double end = (1 + more) * longer.ParameterAtLengthMm(wantedMm);
                cubic.SplitRaw(end, out CubicBezier whole, out _);
                whole.SplitRaw(1 / end, out _, out CubicBezier after);
                added = FromCubic(new CubicBezier(cubic.End, after.StartControl, after.EndControl, after.End));
                return true;
            }
        }

        return false;
    }
}
