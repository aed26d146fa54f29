using System;

namespace Pattern.Core.Geometry;

/// <summary>How often a closed path goes round a point, on the true curves.</summary>
/// <remarks>A piece of curve whose surroundings do not hold the point goes round it as its chord does. So a piece is only halved while
/// the point is within the strip along its chord: a few times near the path, never elsewhere. Crossings of a level line to
/// the right of the point are counted, with one rule for ties, so that pieces that meet agree.</remarks>
internal static class WindingNumber
{
    private const int MostDepth = 64;

    // A few pieces of each depth lie around the point, so no count comes near this. If one did, the chords would have to do.
    private const int MostVisits = 4096;

    /// <returns>Whether the point is off the path.</returns>
    internal static bool TryCount(CurvePath path, in Point2D point, double toleranceMm, out int number, int mostVisits = MostVisits)
    {
        number = 0;
        PathSegment[] segments = path.SegmentsRaw;
        double px = point.XMm;
        double py = point.YMm;
        Point2D first = segments[0].Start;
        Point2D start = first;
        for (int i = 0; i < segments.Length; i++)
        {
            // Each segment ends exactly where the next begins: a gap would let the level line slip through.
            Point2D end = i + 1 < segments.Length ? segments[i + 1].Start : first;
            bool isOff;
            switch (segments[i].Kind)
            {
                case PathSegmentKind.Line:
                    isOff = TryAddLine(start.XMm - px, start.YMm - py, end.XMm - px, end.YMm - py, toleranceMm, ref number);
                    break;
                case PathSegmentKind.Arc:
                    isOff = TryAddArc(segments[i].ArcRaw, start, end, point, toleranceMm, ref number);
                    break;
                default:
                    CubicBezier c = segments[i].CubicRaw;
                    int visitsLeft = mostVisits;
                    isOff = TryAddCubic(
                        new CubicBezier(
                            start.XMm - px, start.YMm - py, c.X1 - px, c.Y1 - py, c.X2 - px, c.Y2 - py, end.XMm - px, end.YMm - py),
                        toleranceMm,
                        0,
                        ref visitsLeft,
                        ref number);
                    break;
            }

            if (!isOff)
            {
                number = 0;
                return false;
            }

            start = end;
        }

        return true;
    }

    // On which side of the chord the origin lies; on the chord itself as if it were a hair higher, and that a hair to the right.
    private static bool IsLeft(double x0, double y0, double x3, double y3)
    {
        double side = ((x0 - x3) * y0) - ((y0 - y3) * x0);
        return side != 0 ? side > 0 : x3 != x0 ? x3 > x0 : y3 < y0;
    }

    private static int Crossing(double x0, double y0, double x3, double y3)
    {
        if ((y0 <= 0) == (y3 <= 0))
        {
            return 0;
        }

        bool up = y0 <= 0;
        return IsLeft(x0, y0, x3, y3) == up ? (up ? 1 : -1) : 0;
    }

    private static bool TryAddLine(double x0, double y0, double x3, double y3, double toleranceMm, ref int number)
    {
        double dx = x3 - x0;
        double dy = y3 - y0;
        double side = (dx * y0) - (dy * x0);
        double length = Math.Abs(dx) + Math.Abs(dy);
        if (Math.Abs(side) <= toleranceMm * length
            && new LineSegment(new Point2D(x0, y0), new Point2D(x3, y3)).ClosestTo(Point2D.Origin).DistanceMm <= toleranceMm)
        {
            return false;
        }

        number += Crossing(x0, y0, x3, y3);
        return true;
    }

    private static bool TryAddCubic(in CubicBezier c, double toleranceMm, int depth, ref int visitsLeft, ref int number)
    {
        SearchWork.Step();
        double bottom = Math.Min(Math.Min(c.Y0, c.Y1), Math.Min(c.Y2, c.Y3));
        double top = Math.Max(Math.Max(c.Y0, c.Y1), Math.Max(c.Y2, c.Y3));
        double right = Math.Max(Math.Max(c.X0, c.X1), Math.Max(c.X2, c.X3));
        if (bottom > toleranceMm || top < -toleranceMm || right < -toleranceMm)
        {
            return true;
        }

        double left = Math.Min(Math.Min(c.X0, c.X1), Math.Min(c.X2, c.X3));
        double cx = c.X3 - c.X0;
        double cy = c.Y3 - c.Y0;
        double off1 = (cx * (c.Y1 - c.Y0)) - (cy * (c.X1 - c.X0));
        double off2 = (cx * (c.Y2 - c.Y0)) - (cy * (c.X2 - c.X0));
        double own = (cy * c.X0) - (cx * c.Y0);
        double share = off1 * off2 > 0 ? 0.75 : 4.0 / 9;
        double slack = toleranceMm * (Math.Abs(cx) + Math.Abs(cy));
        if (left > toleranceMm
            || own > (share * Math.Max(0, Math.Max(off1, off2))) + slack
            || own < (share * Math.Min(0, Math.Min(off1, off2))) - slack)
        {
            number += Crossing(c.X0, c.Y0, c.X3, c.Y3);
            return true;
        }

        if (depth == 0)
        {
            // With a NaN no piece would ever be flat, or away from the point.
            Raw.RequireFinite(c.MagnitudeMm, nameof(c));
        }

        if (depth >= MostDepth || visitsLeft-- <= 0 || PieceTests.IsFlat(c, 0.1 * toleranceMm))
        {
            return TryAddLine(c.X0, c.Y0, c.X3, c.Y3, toleranceMm, ref number);
        }

        c.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
        return TryAddCubic(before, toleranceMm, depth + 1, ref visitsLeft, ref number)
            && TryAddCubic(after, toleranceMm, depth + 1, ref visitsLeft, ref number);
    }

    private static bool TryAddArc(
        in CircularArc arc, in Point2D start, in Point2D end, in Point2D point, double toleranceMm, ref int number)
    {
        double dx = point.XMm - arc.CentreXMm;
        double dy = point.YMm - arc.CentreYMm;
        double distance = Raw.Hypot(dx, dy);
        if (Math.Abs(distance - arc.RadiusMm) <= toleranceMm && arc.PointAtRaw(arc.ClosestToRaw(point)).DistanceMm(point) <= toleranceMm)
        {
            return false;
        }

        // Pieces of at most a third of a turn: the centre lies clearly on the inner side of each chord.
        int pieces = 1 + (int)(Math.Abs(arc.SweepRad) / 2.1);
        double x0 = start.XMm - point.XMm;
        double y0 = start.YMm - point.YMm;
        bool within = distance < arc.RadiusMm;
        for (int i = 1; i <= pieces; i++)
        {
            Point2D next = i == pieces ? end : arc.PointAtRaw((double)i / pieces);
            double x3 = next.XMm - point.XMm;
            double y3 = next.YMm - point.YMm;
            number += Crossing(x0, y0, x3, y3);

            // Between chord and arc: the way along the arc and back along the chord goes round the point.
            bool isLeft = IsLeft(x0, y0, x3, y3);
            if (within && arc.SweepRad > 0 && !isLeft)
            {
                number++;
            }
            else if (within && arc.SweepRad < 0 && isLeft)
            {
                number--;
            }

            x0 = x3;
            y0 = y3;
        }

        return true;
    }
}
