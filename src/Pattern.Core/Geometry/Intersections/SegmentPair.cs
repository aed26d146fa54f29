using System;

namespace Pattern.Core.Geometry;

/// <summary>Two segments whose common points are being collected: takes each point once and knows when two are the same contact.</summary>
internal readonly struct SegmentPair
{
    internal readonly PathSegment First;
    internal readonly PathSegment Second;

    /// <summary>What comes nearer than this touches.</summary>
    internal readonly double ToleranceMm;

    // Two findings of one crossing differ by rounding; two crossings are farther apart than this.
    private const double SameParameter = 1e-9;

    // An end that lies on the other curve stands for a crossing so near to it.
    private const double SnapParameter = 1e-6;
    private const int Probes = 8;

    internal SegmentPair(in PathSegment first, in PathSegment second, double toleranceMm)
    {
        First = first;
        Second = second;
        ToleranceMm = toleranceMm;
    }

    /// <summary>The tolerance to work with: what was asked, but never less than rounding.</summary>
    /// <param name="first">One segment.</param>
    /// <param name="second">The other segment.</param>
    /// <param name="askedMm">What was asked; null for the default, which shrinks with curves far smaller than a millimetre.</param>
    internal static double Tolerance(in BoundingBox first, in BoundingBox second, double? askedMm)
    {
        BoundingBox both = first.Union(second);
        double magnitude = Math.Max(
            Math.Max(Math.Abs(both.LeftMm), Math.Abs(both.RightMm)), Math.Max(Math.Abs(both.BottomMm), Math.Abs(both.TopMm)));
        double sizeMm = Math.Max(
            Math.Max(first.RightMm - first.LeftMm, first.TopMm - first.BottomMm),
            Math.Max(second.RightMm - second.LeftMm, second.TopMm - second.BottomMm));
        double wantedMm = askedMm ?? Math.Min(GeometryTolerance.DefaultMm, 1e-9 * sizeMm);

        // Every search for common points begins here: with a NaN no two pieces would ever be apart.
        Raw.RequireFinite(magnitude + sizeMm, nameof(magnitude));
        return Math.Max(wantedMm, 16 * Raw.Epsilon * magnitude);
    }

    /// <summary>Takes a point unless it is no contact, or one that is there already.</summary>
    /// <param name="t">On the first segment; rounding past the ends is forgiven.</param>
    /// <param name="u">On the second segment.</param>
    /// <param name="isTouching">Whether neither passes through the other.</param>
    /// <param name="hits">Where to.</param>
    /// <returns>Whether the segments do meet there.</returns>
    internal bool Offer(double t, double u, bool isTouching, ref CurveIntersections hits)
    {
        t = Raw.Clamp(t, 0, 1);
        u = Raw.Clamp(u, 0, 1);
        Point2D onFirst = First.PointAtRaw(t);
        Point2D onSecond = Second.PointAtRaw(u);
        if (!(onFirst.DistanceMm(onSecond) <= ToleranceMm))
        {
            return false;
        }

        for (int i = hits.Count - 1; i >= 0; i--)
        {
            double dt = Math.Abs(t - hits.FirstRaw(i));
            double du = Math.Abs(u - hits.SecondRaw(i));
            if (dt <= SameParameter && du <= SameParameter)
            {
                return true;
            }

            // Two crossings are two, however little the curves part between them.
            bool otherTouches = hits.IsTouchingRaw(i);
            if ((!isTouching && !otherTouches) || !IsSameContact(t, u, hits.FirstRaw(i), hits.SecondRaw(i)))
            {
                continue;
            }

            if (isTouching || (dt <= SnapParameter && du <= SnapParameter))
            {
                return true;
            }

            // What was taken for a touch is the neighbourhood of this crossing at a shallow angle.
            hits.RemoveAt(i);
        }

        bool atEnd = t == 0 || t == 1 || u == 0 || u == 1;
        hits.Insert(new Intersection(t, u, onFirst.MidpointTo(onSecond), AngleRad(t, u), isTouching || atEnd));
        return true;
    }

    /// <summary>Takes the ends of each segment that lie on the other one.</summary>
    internal void OfferEnds(ref CurveIntersections hits)
    {
        Point2D a0 = First.Start;
        Point2D a1 = First.End;
        Point2D b0 = Second.Start;
        Point2D b1 = Second.End;

        // Ends on ends first: they get exactly 0 and 1.
        bool a0Met = OfferIfNear(a0, b0, 0, 0, ref hits) | OfferIfNear(a0, b1, 0, 1, ref hits);
        bool a1Met = OfferIfNear(a1, b0, 1, 0, ref hits) | OfferIfNear(a1, b1, 1, 1, ref hits);
        bool b0Met = a0.DistanceMm(b0) <= ToleranceMm || a1.DistanceMm(b0) <= ToleranceMm;
        bool b1Met = a0.DistanceMm(b1) <= ToleranceMm || a1.DistanceMm(b1) <= ToleranceMm;
        if (!a0Met && TryOn(Second, a0, out double u))
        {
            Offer(0, u, isTouching: true, ref hits);
        }

        if (!a1Met && TryOn(Second, a1, out u))
        {
            Offer(1, u, isTouching: true, ref hits);
        }

        if (!b0Met && TryOn(First, b0, out double t))
        {
            Offer(t, 0, isTouching: true, ref hits);
        }

        if (!b1Met && TryOn(First, b1, out t))
        {
            Offer(t, 1, isTouching: true, ref hits);
        }
    }

    /// <summary>Whether a point lies on a segment, and where.</summary>
    internal bool TryOn(in PathSegment segment, in Point2D point, out double t)
    {
        double boundMm = ToleranceMm * (1 + 1e-6);
        return segment.TryCloserRaw(point, ref boundMm, out t);
    }

    /// <summary>Drops points that lie on a reported stretch.</summary>
    internal void DropOverlapped(ref CurveIntersections hits)
    {
        for (int k = 0; k < hits.OverlapCount; k++)
        {
            double from = hits.OverlapFromRaw(k);
            double to = hits.OverlapToRaw(k);
            Point2D start = First.PointAtRaw(from);
            Point2D end = First.PointAtRaw(to);
            for (int i = hits.Count - 1; i >= 0; i--)
            {
                double t = hits.FirstRaw(i);
                Point2D at = First.PointAtRaw(t);
                if ((t > from - SameParameter && t < to + SameParameter)
                    || at.DistanceMm(start) <= 4 * ToleranceMm
                    || at.DistanceMm(end) <= 4 * ToleranceMm)
                {
                    hits.RemoveAt(i);
                }
            }
        }
    }

    private bool OfferIfNear(in Point2D a, in Point2D b, double t, double u, ref CurveIntersections hits)
        => a.DistanceMm(b) <= ToleranceMm && Offer(t, u, isTouching: true, ref hits);

    // Two findings belong together where the segments stay together between them, as around a tangency they do.
    private bool IsSameContact(double t, double u, double otherT, double otherU)
    {
        // A curve that starts slowly moves little while its parameter moves far.
        if (First.PointAtRaw(t).DistanceMm(First.PointAtRaw(otherT)) <= 2 * ToleranceMm
            && First.PointAtRaw(0.5 * (t + otherT)).DistanceMm(First.PointAtRaw(t)) <= 2 * ToleranceMm
            && Second.PointAtRaw(0.5 * (u + otherU)).DistanceMm(Second.PointAtRaw(u)) <= 2 * ToleranceMm)
        {
            return true;
        }

        PathSegment between = Second.SubSegmentRaw(Math.Min(u, otherU), Math.Max(u, otherU));
        for (int i = 0; i < Probes; i++)
        {
            // In an order that tells strangers apart at once: the middle first.
            double share = ((i * 5) + 4) % (Probes + 1) / (double)(Probes + 1);
            double boundMm = 2 * ToleranceMm;
            if (share != 0 && !between.TryCloserRaw(First.PointAtRaw(t + (share * (otherT - t))), ref boundMm, out _))
            {
                return false;
            }
        }

        return true;
    }

    private double AngleRad(double t, double u)
    {
        if (!First.TryDirectionAtRaw(t, out Direction first) || !Second.TryDirectionAtRaw(u, out Direction second))
        {
            return 0;
        }

        double angle = Math.Abs(first.TurnRadTo(second));
        return Math.Min(angle, Math.PI - angle);
    }
}
