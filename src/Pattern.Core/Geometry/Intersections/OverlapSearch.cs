using System;

namespace Pattern.Core.Geometry;

/// <summary>Finds the stretches along which two segments run on top of each other.</summary>
/// <remarks>Two pieces of one curve can part only where one of them ends or, where a straight cubic turns back, at its tip.
/// So the ends and tips that lie on the other segment are the only places where such a stretch can begin or end.</remarks>
internal static unsafe class OverlapSearch
{
    private const int Probes = 7;
    private const int MostMarks = 24;

    // A stretch shorter than this many tolerances is a contact, not an overlap.
    private const double LeastTolerances = 64;

    internal static void Find(in SegmentPair pair, ref CurveIntersections hits)
    {
        double* firstCuts = stackalloc double[4];
        double* secondCuts = stackalloc double[4];
        int firstCount = Cuts(pair.First, pair.ToleranceMm, firstCuts);
        int secondCount = Cuts(pair.Second, pair.ToleranceMm, secondCuts);
        for (int i = 0; i + 1 < firstCount; i++)
        {
            for (int k = 0; k + 1 < secondCount; k++)
            {
                FindBetween(pair, firstCuts[i], firstCuts[i + 1], secondCuts[k], secondCuts[k + 1], ref hits);
            }
        }
    }

    /// <summary>0, 1 and between them where a straight cubic turns back.</summary>
    private static int Cuts(in PathSegment segment, double toleranceMm, double* cuts)
    {
        int count = 0;
        cuts[count++] = 0;
        if (segment.Kind == PathSegmentKind.Cubic && segment.CubicRaw.IsStraight(toleranceMm, out Direction along))
        {
            CubicBezier c = segment.CubicRaw;
            double h0 = ((c.X1 - c.X0) * along.X) + ((c.Y1 - c.Y0) * along.Y);
            double h1 = ((c.X2 - c.X1) * along.X) + ((c.Y2 - c.Y1) * along.Y);
            double h2 = ((c.X3 - c.X2) * along.X) + ((c.Y3 - c.Y2) * along.Y);
            Polynomial.QuadraticRoots(h0, h1, h2, out double t0, out double t1);
            double low = Math.Min(t0, t1);
            double high = Math.Max(t0, t1);
            if (double.IsNaN(low))
            {
                low = double.IsNaN(t0) ? t1 : t0;
            }

            if (low > 0 && low < 1)
            {
                cuts[count++] = low;
            }

            if (high > 0 && high < 1 && high > low)
            {
                cuts[count++] = high;
            }
        }

        cuts[count++] = 1;
        return count;
    }

    private static void FindBetween(in SegmentPair pair, double t0, double t1, double u0, double u1, ref CurveIntersections hits)
    {
        PathSegment first = pair.First.SubSegmentRaw(t0, t1);
        PathSegment second = pair.Second.SubSegmentRaw(u0, u1);
        double* marksT = stackalloc double[MostMarks];
        double* marksU = stackalloc double[MostMarks];
        int marks = 0;
        for (int i = 0; i < 2; i++)
        {
            for (int k = 0; k < 2; k++)
            {
                if (first.PointAtRaw(i).DistanceMm(second.PointAtRaw(k)) <= pair.ToleranceMm)
                {
                    marksT[marks] = i;
                    marksU[marks++] = k;
                }
            }

            if (pair.TryOn(second, first.PointAtRaw(i), out double u))
            {
                marksT[marks] = i;
                marksU[marks++] = u;
            }

            if (pair.TryOn(first, second.PointAtRaw(i), out double t))
            {
                marksT[marks] = t;
                marksU[marks++] = i;
            }
        }

        double bestT0 = 0;
        double bestT1 = 0;
        double bestU0 = 0;
        double bestU1 = 0;
        for (int i = 0; i < marks; i++)
        {
            for (int k = 0; k < marks; k++)
            {
                if (marksT[k] - marksT[i] > bestT1 - bestT0 && marksU[i] != marksU[k]
                    && RunTogether(pair.ToleranceMm, first, second, marksT[i], marksT[k], marksU[i], marksU[k]))
                {
                    bestT0 = marksT[i];
                    bestT1 = marksT[k];
                    bestU0 = marksU[i];
                    bestU1 = marksU[k];
                }
            }
        }

        if (bestT1 > bestT0)
        {
            hits.Insert(new Overlap(
                t0 + (bestT0 * (t1 - t0)), t0 + (bestT1 * (t1 - t0)), u0 + (bestU0 * (u1 - u0)), u0 + (bestU1 * (u1 - u0))));
        }
    }

    private static bool RunTogether(
        double toleranceMm, in PathSegment first, in PathSegment second, double t0, double t1, double u0, double u1)
    {
        PathSegment stretch = second.SubSegmentRaw(Math.Min(u0, u1), Math.Max(u0, u1));
        Point2D start = first.PointAtRaw(t0);
        double farthestMm = 0;
        for (int i = 1; i <= Probes; i++)
        {
            Point2D probe = first.PointAtRaw(t0 + ((t1 - t0) * i / (Probes + 1)));
            double boundMm = 2 * toleranceMm;
            if (!stretch.TryCloserRaw(probe, ref boundMm, out _))
            {
                return false;
            }

            farthestMm = Math.Max(farthestMm, probe.DistanceMm(start));
        }

        return farthestMm > LeastTolerances * toleranceMm;
    }
}
