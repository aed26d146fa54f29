using System;

namespace Pattern.Core.Geometry;

/// <summary>All common points and stretches of two segments of any kind.</summary>
internal static unsafe class Intersector
{
    /// <param name="first">One segment.</param>
    /// <param name="second">The other segment.</param>
    /// <param name="toleranceMm">What comes nearer touches; null for the default.</param>
    /// <param name="hits">Receives what they have in common.</param>
    internal static void Find(in PathSegment first, in PathSegment second, double? toleranceMm, out CurveIntersections hits)
    {
        hits = default;
        BoundingBox firstBox = first.LooseBounds;
        BoundingBox secondBox = second.LooseBounds;
        double workingMm = SegmentPair.Tolerance(firstBox, secondBox, toleranceMm);
        if (!firstBox.IsNear(secondBox, workingMm))
        {
            return;
        }

        FindNear(new SegmentPair(first, second, workingMm), ref hits);
    }

    internal static void FindNear(in SegmentPair pair, ref CurveIntersections hits)
    {
        if (pair.First.Kind == PathSegmentKind.Cubic && pair.Second.Kind == PathSegmentKind.Cubic)
        {
            CubicPairSearch.Find(pair, ref hits);
            return;
        }

        // Kinds come in one order inside; a cubic before an arc before a line.
        if (pair.First.Kind < pair.Second.Kind)
        {
            var swapped = new SegmentPair(pair.Second, pair.First, pair.ToleranceMm);
            CurveIntersections mirrored = default;
            FindNear(swapped, ref mirrored);
            hits = mirrored.Swapped();
            return;
        }

        if (pair.Second.Kind == PathSegmentKind.Line)
        {
            if (pair.First.Kind == PathSegmentKind.Line)
            {
                LineLine(pair, ref hits);
            }
            else if (pair.First.Kind == PathSegmentKind.Arc)
            {
                ArcLine(pair, ref hits);
            }
            else
            {
                CubicLine(pair, ref hits);
            }
        }
        else if (pair.First.Kind == PathSegmentKind.Arc)
        {
            ArcArc(pair, ref hits);
        }
        else
        {
            CubicArc(pair, ref hits);
        }
    }

    /// <summary>The Bernstein coefficients of the offset of a cubic from a line, scaled by the distance of its two points.</summary>
    internal static void Offsets(in CubicBezier cubic, in Point2D from, in Point2D to, double* offsets)
    {
        double dx = to.XMm - from.XMm;
        double dy = to.YMm - from.YMm;
        offsets[0] = (dx * (cubic.Y0 - from.YMm)) - (dy * (cubic.X0 - from.XMm));
        offsets[1] = (dx * (cubic.Y1 - from.YMm)) - (dy * (cubic.X1 - from.XMm));
        offsets[2] = (dx * (cubic.Y2 - from.YMm)) - (dy * (cubic.X2 - from.XMm));
        offsets[3] = (dx * (cubic.Y3 - from.YMm)) - (dy * (cubic.X3 - from.XMm));
        double most = Math.Max(Math.Max(Math.Abs(offsets[0]), Math.Abs(offsets[1])), Math.Max(Math.Abs(offsets[2]), Math.Abs(offsets[3])));

        // A line almost along the curve: what sets them apart is in the digits that were lost.
        const double AlmostAlong = 1e-5;
        double reach = Math.Abs(cubic.X0 - from.XMm) + Math.Abs(cubic.Y0 - from.YMm) + PieceTests.Size(cubic);
        if (most <= AlmostAlong * reach * (Math.Abs(dx) + Math.Abs(dy)))
        {
            offsets[0] = ExactOffset.Of(from, to, cubic.Start);
            offsets[1] = ExactOffset.Of(from, to, cubic.StartControl);
            offsets[2] = ExactOffset.Of(from, to, cubic.EndControl);
            offsets[3] = ExactOffset.Of(from, to, cubic.End);
        }
    }

    /// <summary>Whether offsets of these coefficients mean that the curve runs along the line.</summary>
    internal static bool AreNothing(double* offsets, double noise)
        => Math.Abs(offsets[0]) <= noise && Math.Abs(offsets[1]) <= noise && Math.Abs(offsets[2]) <= noise && Math.Abs(offsets[3]) <= noise;

    private static void CubicLine(in SegmentPair pair, ref CurveIntersections hits)
    {
        pair.OfferEnds(ref hits);
        CubicBezier cubic = pair.First.CubicRaw;
        LineSegment line = pair.Second.LineRaw;
        double length = line.LengthMm;
        if (length == 0)
        {
            return;
        }

        double* offsets = stackalloc double[4];
        Offsets(cubic, line.Start, line.End, offsets);
        double magnitude = Math.Max(cubic.MagnitudeMm, Math.Max(Magnitude(line.Start), Magnitude(line.End)));
        if (AreNothing(offsets, 8 * Raw.Epsilon * magnitude * length))
        {
            OverlapSearch.Find(pair, ref hits);
            pair.DropOverlapped(ref hits);
            return;
        }

        BernsteinRoots roots = BernsteinRoots.Find(offsets, 3, pair.ToleranceMm * length);
        for (int i = 0; i < roots.Count; i++)
        {
            double t = roots[i];
            OfferAlong(pair, t, cubic.PointAtRaw(t), line, length, roots.IsTouching(i), ref hits);
        }
    }

    private static double Magnitude(in Point2D p) => Math.Max(Math.Abs(p.XMm), Math.Abs(p.YMm));

    // Offers a point of the first segment that lies on the line of the second, unless it is beyond its ends.
    private static void OfferAlong(
        in SegmentPair pair, double t, in Point2D point, in LineSegment line, double lengthMm, bool isTouching, ref CurveIntersections hits)
    {
        double along = (((point.XMm - line.Start.XMm) * (line.End.XMm - line.Start.XMm))
            + ((point.YMm - line.Start.YMm) * (line.End.YMm - line.Start.YMm))) / lengthMm / lengthMm;
        double slack = pair.ToleranceMm / lengthMm;
        if (along >= -slack && along <= 1 + slack)
        {
            pair.Offer(t, along, isTouching, ref hits);
        }
    }

    private static void LineLine(in SegmentPair pair, ref CurveIntersections hits)
    {
        pair.OfferEnds(ref hits);
        LineSegment a = pair.First.LineRaw;
        LineSegment b = pair.Second.LineRaw;
        double ax = a.End.XMm - a.Start.XMm;
        double ay = a.End.YMm - a.Start.YMm;
        double bx = b.End.XMm - b.Start.XMm;
        double by = b.End.YMm - b.Start.YMm;
        double lengthA = Raw.Hypot(ax, ay);
        double lengthB = Raw.Hypot(bx, by);
        if (lengthA == 0 || lengthB == 0)
        {
            return;
        }

        double dx = b.Start.XMm - a.Start.XMm;
        double dy = b.Start.YMm - a.Start.YMm;
        double cross = (ax * by) - (ay * bx);

        // Two contacts at ends, or lines that do not part by the tolerance over the shorter of them: one may lie on the other.
        if (hits.Count >= 2 || Math.Abs(cross) <= pair.ToleranceMm * Math.Max(lengthA, lengthB))
        {
            OverlapSearch.Find(pair, ref hits);
            if (hits.OverlapCount > 0)
            {
                pair.DropOverlapped(ref hits);
                return;
            }
        }

        double t = ((dx * by) - (dy * bx)) / cross;
        double u = ((dx * ay) - (dy * ax)) / cross;
        if (t >= -pair.ToleranceMm / lengthA && t <= 1 + (pair.ToleranceMm / lengthA)
            && u >= -pair.ToleranceMm / lengthB && u <= 1 + (pair.ToleranceMm / lengthB))
        {
            pair.Offer(t, u, isTouching: false, ref hits);
        }
    }

    private static void ArcLine(in SegmentPair pair, ref CurveIntersections hits)
    {
        pair.OfferEnds(ref hits);
        CircularArc arc = pair.First.ArcRaw;
        LineSegment line = pair.Second.LineRaw;
        double length = line.LengthMm;
        if (length == 0 || arc.RadiusMm == 0)
        {
            return;
        }

        double ux = (line.End.XMm - line.Start.XMm) / length;
        double uy = (line.End.YMm - line.Start.YMm) / length;
        double cx = arc.CentreXMm - line.Start.XMm;
        double cy = arc.CentreYMm - line.Start.YMm;
        double aside = (ux * cy) - (uy * cx);
        double along = (ux * cx) + (uy * cy);
        double inside = arc.RadiusMm - Math.Abs(aside);
        double noise = 8 * Raw.Epsilon * (Math.Abs(cx) + Math.Abs(cy) + arc.RadiusMm);
        if (inside < -pair.ToleranceMm)
        {
            return;
        }

        if (inside <= noise)
        {
            OfferOnArc(pair, arc, line.Start.XMm + (ux * along), line.Start.YMm + (uy * along), along / length, true, ref hits);
            return;
        }

        double half = Math.Sqrt(inside * (arc.RadiusMm + Math.Abs(aside)));
        for (int sign = -1; sign <= 1; sign += 2)
        {
            double at = along + (sign * half);
            OfferOnArc(pair, arc, line.Start.XMm + (ux * at), line.Start.YMm + (uy * at), at / length, false, ref hits);
        }
    }

    // Offers a point on the circle of the first segment, if its arc comes there.
    private static void OfferOnArc(
        in SegmentPair pair, in CircularArc arc, double x, double y, double u, bool isTouching, ref CurveIntersections hits)
    {
        if (arc.TryShareNear(Math.Atan2(y - arc.CentreYMm, x - arc.CentreXMm), pair.ToleranceMm, out double t))
        {
            pair.Offer(t, u, isTouching, ref hits);
        }
    }

    private static void ArcArc(in SegmentPair pair, ref CurveIntersections hits)
    {
        pair.OfferEnds(ref hits);
        CircularArc a = pair.First.ArcRaw;
        CircularArc b = pair.Second.ArcRaw;
        double dx = b.CentreXMm - a.CentreXMm;
        double dy = b.CentreYMm - a.CentreYMm;
        double between = Raw.Hypot(dx, dy);
        double difference = Math.Abs(a.RadiusMm - b.RadiusMm);
        if (between + difference <= pair.ToleranceMm)
        {
            OverlapSearch.Find(pair, ref hits);
            pair.DropOverlapped(ref hits);
            return;
        }

        double beyond = between - (a.RadiusMm + b.RadiusMm);
        double within = difference - between;
        if (beyond > pair.ToleranceMm || within > pair.ToleranceMm || between == 0)
        {
            return;
        }

        double noise = 8 * Raw.Epsilon * (a.RadiusMm + b.RadiusMm + between);
        double ux = dx / between;
        double uy = dy / between;

        // How far along the line of centres the common chord lies, written so that nearly equal radii keep their digits.
        double along = 0.5 * (between + ((a.RadiusMm - b.RadiusMm) * (a.RadiusMm + b.RadiusMm) / between));
        double half2 = (a.RadiusMm - along) * (a.RadiusMm + along);
        bool isTouching = beyond >= -noise || within >= -noise || !(half2 > 0);
        double half = isTouching ? 0 : Math.Sqrt(half2);
        for (int sign = isTouching ? 1 : -1; sign <= 1; sign += 2)
        {
            double x = a.CentreXMm + (ux * along) - (sign * half * uy);
            double y = a.CentreYMm + (uy * along) + (sign * half * ux);
            if (b.TryShareNear(Math.Atan2(y - b.CentreYMm, x - b.CentreXMm), pair.ToleranceMm, out double u))
            {
                OfferOnArc(pair, a, x, y, u, isTouching, ref hits);
            }
        }
    }

    private static void CubicArc(in SegmentPair pair, ref CurveIntersections hits)
    {
        pair.OfferEnds(ref hits);
        CubicBezier cubic = pair.First.CubicRaw.MovedRaw(-pair.Second.ArcRaw.CentreXMm, -pair.Second.ArcRaw.CentreYMm);
        CircularArc arc = pair.Second.ArcRaw;
        if (arc.RadiusMm == 0)
        {
            return;
        }

        // |B - centre|^2 - r^2 has degree six.
        double* x = stackalloc double[4] { cubic.X0, cubic.X1, cubic.X2, cubic.X3 };
        double* y = stackalloc double[4] { cubic.Y0, cubic.Y1, cubic.Y2, cubic.Y3 };
        double* choose3 = stackalloc double[4] { 1, 3, 3, 1 };
        double* choose6 = stackalloc double[7] { 1, 6, 15, 20, 15, 6, 1 };
        double* power = stackalloc double[7];
        double most = 0;
        for (int k = 0; k <= 6; k++)
        {
            double sum = 0;
            for (int i = Math.Max(0, k - 3); i <= Math.Min(3, k); i++)
            {
                sum += choose3[i] * choose3[k - i] * ((x[i] * x[k - i]) + (y[i] * y[k - i]));
            }

            power[k] = (sum / choose6[k]) - (arc.RadiusMm * arc.RadiusMm);
            most = Math.Max(most, Math.Abs(power[k]));
        }

        double zero = pair.ToleranceMm * ((2 * arc.RadiusMm) + pair.ToleranceMm);
        if (most <= zero)
        {
            OverlapSearch.Find(pair, ref hits);
            pair.DropOverlapped(ref hits);
            if (hits.OverlapCount > 0)
            {
                return;
            }
        }

        BernsteinRoots roots = BernsteinRoots.Find(power, 6, zero);
        for (int i = 0; i < roots.Count; i++)
        {
            double t = roots[i];
            Point2D at = cubic.PointAtRaw(t);
            if (arc.TryShareNear(Math.Atan2(at.YMm, at.XMm), pair.ToleranceMm, out double u))
            {
                pair.Offer(t, u, roots.IsTouching(i), ref hits);
            }
        }
    }
}
