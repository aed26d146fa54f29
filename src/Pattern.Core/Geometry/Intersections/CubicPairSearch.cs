using System;

namespace Pattern.Core.Geometry;

/// <summary>All common points of two cubics.</summary>
/// <remarks>Pairs of pieces are halved and dropped where strips along their chords lie apart. Where no heading of one piece is
/// a heading of the other, the pieces meet at most once, and Newton's method finds it. What stays undecided
/// down to the tolerance is a tangency or an overlap. Nothing is dropped that could hold a common point.</remarks>
internal struct CubicPairSearch
{
    // Halvings of either piece: beyond this a parameter has no digits left.
    private const int MostDepth = 96;

    // So many undecided halvings are unlikely unless the curves touch or overlap.
    private const int OverlapDepth = 16;

    // Curves that run side by side closer than a millionth of their length take many pieces; a bound keeps that finite.
    private const int MostVisits = 200_000;

    // After Newton's method led out of a pair of pieces, halve so often before the next try.
    private const int Patience = 2;

    private const double ParameterSlack = 1e-10;

    private readonly SegmentPair _pair;
    private readonly double _toleranceMm;

    // Both relative to the start of the first, in power form: far from the origin that keeps the digits.
    private readonly PowerCubic _a;
    private readonly PowerCubic _b;
    private readonly int _mostVisits;
    private int _visits;
    private bool _overlapSought;

    private CubicPairSearch(in SegmentPair pair, in CubicBezier a, in CubicBezier b, int mostVisits)
    {
        _pair = pair;
        _toleranceMm = pair.ToleranceMm;
        _a = new PowerCubic(a);
        _b = new PowerCubic(b);
        _mostVisits = mostVisits;
        _visits = 0;
        _overlapSought = false;
    }

    internal static void Find(in SegmentPair pair, ref CurveIntersections hits, int mostVisits = MostVisits)
    {
        CubicBezier first = pair.First.CubicRaw;
        CubicBezier second = pair.Second.CubicRaw;
        pair.OfferEnds(ref hits);
        CubicBezier a = first.MovedRaw(-first.X0, -first.Y0);
        CubicBezier b = second.MovedRaw(-first.X0, -first.Y0);
        var search = new CubicPairSearch(pair, a, b, mostVisits);
        search.Visit(a, 0, 1, b, 0, 1, 0, 0, ref hits);
        pair.DropOverlapped(ref hits);
    }

    private void Visit(
        in CubicBezier a, double t0, double t1, in CubicBezier b, double u0, double u1, int depth, int wait, ref CurveIntersections hits)
    {
        SearchWork.Step();
        _visits++;
        if (PieceTests.AreApart(a, b, _toleranceMm))
        {
            return;
        }

        bool meetOnce = PieceTests.MeetAtMostOnce(a, b);
        if (meetOnce)
        {
            if (Holds(hits, t0, t1, u0, u1) || (wait <= 0 && TryCrossing(a, t0, t1, b, u0, u1, ref hits)))
            {
                return;
            }

            wait = wait <= 0 ? Patience : wait - 1;
        }
        else if (PieceTests.RunsOn(a, b, t0, t1, u0, u1, hits))
        {
            return;
        }

        if (IsOverlapped(hits, t0, t1))
        {
            return;
        }

        bool flatA = PieceTests.IsFlat(a, 0.5 * _toleranceMm);
        bool flatB = PieceTests.IsFlat(b, 0.5 * _toleranceMm);
        if ((flatA && flatB) || depth >= MostDepth || _visits > _mostVisits)
        {
            Decide(a, t0, t1, b, u0, u1, ref hits);
            return;
        }

        if (!meetOnce && depth >= OverlapDepth && SeekOverlap(t0, t1, ref hits))
        {
            return;
        }

        double sizeA = flatA ? 0 : PieceTests.Size(a);
        double sizeB = flatB ? 0 : PieceTests.Size(b);
        if (sizeA >= sizeB)
        {
            double middle = 0.5 * (t0 + t1);
            a.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
            Visit(before, t0, middle, b, u0, u1, depth + 1, wait, ref hits);
            Visit(after, middle, t1, b, u0, u1, depth + 1, wait, ref hits);
        }
        else
        {
            double middle = 0.5 * (u0 + u1);
            b.SplitRaw(0.5, out CubicBezier before, out CubicBezier after);
            Visit(a, t0, t1, before, u0, middle, depth + 1, wait, ref hits);
            Visit(a, t0, t1, after, middle, u1, depth + 1, wait, ref hits);
        }
    }

    private static bool Holds(in CurveIntersections hits, double t0, double t1, double u0, double u1)
    {
        for (int i = 0; i < hits.Count; i++)
        {
            double t = hits.FirstRaw(i);
            double u = hits.SecondRaw(i);
            if (t >= t0 && t <= t1 && u >= u0 && u <= u1)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOverlapped(in CurveIntersections hits, double t0, double t1)
    {
        for (int i = 0; i < hits.OverlapCount; i++)
        {
            if (t0 >= hits.OverlapFromRaw(i) - ParameterSlack && t1 <= hits.OverlapToRaw(i) + ParameterSlack)
            {
                return true;
            }
        }

        return false;
    }

    // Once for the pair of curves; true where these pieces are thereby settled.
    private bool SeekOverlap(double t0, double t1, ref CurveIntersections hits)
    {
        if (_overlapSought)
        {
            return false;
        }

        _overlapSought = true;
        OverlapSearch.Find(_pair, ref hits);
        return IsOverlapped(hits, t0, t1);
    }

    // Pieces as straight as the tolerance, still together: crossing, touching, or by a hair not.
    private void Decide(
        in CubicBezier a, double t0, double t1, in CubicBezier b, double u0, double u1, ref CurveIntersections hits)
    {
        if (SeekOverlap(t0, t1, ref hits) || TryCrossing(a, t0, t1, b, u0, u1, ref hits) || TryTangency(t0, t1, u0, u1, ref hits))
        {
            return;
        }

        // Where two straight lines are nearest, one of them ends.
        double bestT = t0;
        double bestU = u0;
        double least = double.PositiveInfinity;
        OfferFoot(a.Start, b, t0, true, u0, u1, ref least, ref bestT, ref bestU);
        OfferFoot(a.End, b, t1, true, u0, u1, ref least, ref bestT, ref bestU);
        OfferFoot(b.Start, a, u0, false, t0, t1, ref least, ref bestT, ref bestU);
        OfferFoot(b.End, a, u1, false, t0, t1, ref least, ref bestT, ref bestU);
        _pair.Offer(bestT, bestU, isTouching: true, ref hits);
    }

    private static void OfferFoot(
        in Point2D point, in CubicBezier other, double own, bool ofFirst, double from, double to, ref double least, ref double bestT, ref double bestU)
    {
        double share = other.ClosestToRaw(point, out double distanceMm);
        if (distanceMm < least)
        {
            least = distanceMm;
            double at = from + (share * (to - from));
            bestT = ofFirst ? own : at;
            bestU = ofFirst ? at : own;
        }
    }

    private bool TryCrossing(in CubicBezier a, double t0, double t1, in CubicBezier b, double u0, double u1, ref CurveIntersections hits)
    {
        // First guess: where the chords cross.
        double ax = a.X3 - a.X0;
        double ay = a.Y3 - a.Y0;
        double bx = b.X3 - b.X0;
        double by = b.Y3 - b.Y0;
        double cross = (ax * by) - (ay * bx);
        double dx = b.X0 - a.X0;
        double dy = b.Y0 - a.Y0;
        double onA = ((dx * by) - (dy * bx)) / cross;
        double onB = ((dx * ay) - (dy * ax)) / cross;
        if (!(onA > -0.5 && onA < 1.5 && onB > -0.5 && onB < 1.5))
        {
            return false;
        }

        double t = t0 + (Raw.Clamp(onA, 0, 1) * (t1 - t0));
        double u = u0 + (Raw.Clamp(onB, 0, 1) * (u1 - u0));
        double marginT = t1 - t0;
        double marginU = u1 - u0;
        for (int i = 0; i < 24; i++)
        {
            _a.At(t, out double px, out double py, out double vx, out double vy);
            _b.At(u, out double qx, out double qy, out double wx, out double wy);
            double fx = px - qx;
            double fy = py - qy;
            double slope = (vx * wy) - (vy * wx);
            double dt = -((fx * wy) - (fy * wx)) / slope;
            double du = -((fx * vy) - (fy * vx)) / slope;
            t += dt;
            u += du;
            if (!(t >= t0 - marginT && t <= t1 + marginT && u >= u0 - marginU && u <= u1 + marginU))
            {
                return false;
            }

            if (Math.Abs(dt) <= 1e-12 && Math.Abs(du) <= 1e-12)
            {
                break;
            }
        }

        return t >= t0 - ParameterSlack && t <= t1 + ParameterSlack && u >= u0 - ParameterSlack && u <= u1 + ParameterSlack
            && _pair.Offer(t, u, isTouching: false, ref hits);
    }

    // Newton's method for parallel headings with the points abreast: regular where the crossing itself is a double root.
    private bool TryTangency(double t0, double t1, double u0, double u1, ref CurveIntersections hits)
    {
        double t = 0.5 * (t0 + t1);
        double u = 0.5 * (u0 + u1);
        double marginT = 2 * (t1 - t0);
        double marginU = 2 * (u1 - u0);
        for (int i = 0; i < 24; i++)
        {
            _a.At(t, out double px, out double py, out double vx, out double vy);
            _b.At(u, out double qx, out double qy, out double wx, out double wy);
            _a.SecondAt(t, out double aax, out double aay);
            _b.SecondAt(u, out double bbx, out double bby);
            double fx = px - qx;
            double fy = py - qy;
            double g1 = (vx * wy) - (vy * wx);
            double g2 = (fx * vx) + (fy * vy);
            double g1t = (aax * wy) - (aay * wx);
            double g1u = (vx * bby) - (vy * bbx);
            double g2t = (vx * vx) + (vy * vy) + (fx * aax) + (fy * aay);
            double g2u = -((wx * vx) + (wy * vy));
            double slope = (g1t * g2u) - (g1u * g2t);
            double dt = -((g1 * g2u) - (g2 * g1u)) / slope;
            double du = -((g2 * g1t) - (g1 * g2t)) / slope;
            t += dt;
            u += du;
            if (!(t >= t0 - marginT && t <= t1 + marginT && u >= u0 - marginU && u <= u1 + marginU))
            {
                return false;
            }

            if (Math.Abs(dt) <= 1e-12 && Math.Abs(du) <= 1e-12)
            {
                break;
            }
        }

        return t >= -ParameterSlack && t <= 1 + ParameterSlack && u >= -ParameterSlack && u <= 1 + ParameterSlack
            && _pair.Offer(t, u, isTouching: true, ref hits);
    }
}
