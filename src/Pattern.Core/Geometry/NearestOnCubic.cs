using System;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>The global nearest point of a cubic, without allocation.</summary>
/// <remarks>With Q the given point, half the squared distance has the derivative (B - Q) . B', a quintic. In Bernstein form
/// its sign changes count its roots, and running sums of its coefficients bound the squared distance from below. So a stretch
/// is dropped when it holds no minimum, or none that can win; it is polished when it holds exactly one; else it is halved.
/// Nothing is sampled, so that no minimum can be overlooked.</remarks>
internal static unsafe class NearestOnCubic
{
    // Below this width two minima of the quintic differ in distance by less than rounding.
    private const double LeastWidth = 1.0 / (1 << 27);
    private const int MostWaiting = 32;

    // A quintic changes sign five times at most, in all stretches of one width together: two of them are halved, 27 times, at most.
    private const int MostVisits = 512;

    // Squares of squares of coordinates stay finite, and nothing vanishes, between these bounds.
    private const double MostSafe = 1e70;
    private const double LeastSafe = 1e-70;

    /// <summary>Finds the nearest point if it is nearer than a bound.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="qx">The point, X.</param>
    /// <param name="qy">The point, Y.</param>
    /// <param name="distance2Mm2">The bound on the squared distance; receives the least one where that is less.</param>
    /// <param name="t">Receives the parameter.</param>
    /// <param name="mostVisits">So many stretches are looked at; the nearest point by then is the answer.</param>
    /// <returns>Whether there is a point nearer than the bound.</returns>
    [SkipLocalsInit]
    internal static bool TryFind(in CubicBezier curve, double qx, double qy, ref double distance2Mm2, out double t, int mostVisits = MostVisits)
    {
        double x0 = curve.X0 - qx;
        double y0 = curve.Y0 - qy;
        double x1 = curve.X1 - qx;
        double y1 = curve.Y1 - qy;
        double x2 = curve.X2 - qx;
        double y2 = curve.Y2 - qy;
        double x3 = curve.X3 - qx;
        double y3 = curve.Y3 - qy;
        double best = distance2Mm2;
        double bestT = -1;
        double atStart = (x0 * x0) + (y0 * y0);
        double atEnd = (x3 * x3) + (y3 * y3);
        if (atStart < best)
        {
            best = atStart;
            bestT = 0;
        }

        if (atEnd < best)
        {
            best = atEnd;
            bestT = 1;
        }

        double hx0 = curve.X1 - curve.X0;
        double hy0 = curve.Y1 - curve.Y0;
        double hx1 = curve.X2 - curve.X1;
        double hy1 = curve.Y2 - curve.Y1;
        double hx2 = curve.X3 - curve.X2;
        double hy2 = curve.Y3 - curve.Y2;
        double f0 = (x0 * hx0) + (y0 * hy0);
        double f1 = 0.2 * ((3 * ((x1 * hx0) + (y1 * hy0))) + (2 * ((x0 * hx1) + (y0 * hy1))));
        double f2 = 0.1 * ((3 * ((x2 * hx0) + (y2 * hy0))) + (6 * ((x1 * hx1) + (y1 * hy1))) + ((x0 * hx2) + (y0 * hy2)));
        double f3 = 0.1 * ((3 * ((x1 * hx2) + (y1 * hy2))) + (6 * ((x2 * hx1) + (y2 * hy1))) + ((x3 * hx0) + (y3 * hy0)));
        double f4 = 0.2 * ((3 * ((x2 * hx2) + (y2 * hy2))) + (2 * ((x3 * hx1) + (y3 * hy1))));
        double f5 = (x3 * hx2) + (y3 * hy2);

        // What rounding may do to a bound on the squared distance.
        double slack = 1e-14 * (atStart + atEnd + Math.Abs(f0) + Math.Abs(f1) + Math.Abs(f2) + Math.Abs(f3) + Math.Abs(f4) + Math.Abs(f5));
        double* waiting = stackalloc double[MostWaiting * 9];
        int count = 0;
        double start = 0;
        double width = 1;
        double distance2 = atStart;

        // Power form for polishing: position relative to the point.
        double cx = 3 * hx0;
        double cy = 3 * hy0;
        double bx = 3 * (hx1 - hx0);
        double by = 3 * (hy1 - hy0);
        double ax = (hx2 - hx1) - (hx1 - hx0);
        double ay = (hy2 - hy1) - (hy1 - hy0);
        for (int visits = 0; visits < mostVisits; visits++)
        {
            SearchWork.Step();

            // The coefficients of the squared distance on this stretch are running sums of those of its derivative.
            double d1 = width * f0;
            double d2 = d1 + (width * f1);
            double d3 = d2 + (width * f2);
            double d4 = d3 + (width * f3);
            double d5 = d4 + (width * f4);
            double d6 = d5 + (width * f5);
            double least = Math.Min(Math.Min(Math.Min(d1, d2), Math.Min(d3, d4)), Math.Min(Math.Min(d5, d6), 0));
            if (distance2 + least <= best + slack)
            {
                int changes = CountChanges(f0, f1, f2, f3, f4, f5, out int rising, out double guess);
                if (changes == 1 || (changes > 1 && width <= LeastWidth))
                {
                    // A single fall from + to - is a maximum; the ends of the stretch are looked at elsewhere.
                    if (rising > 0)
                    {
                        double low = start;
                        double high = start + width;
                        double u = start + (width * guess);
                        for (int i = 0; i < 64; i++)
                        {
                            double px = (((((ax * u) + bx) * u) + cx) * u) + x0;
                            double py = (((((ay * u) + by) * u) + cy) * u) + y0;
                            double vx = (((3 * ax * u) + (2 * bx)) * u) + cx;
                            double vy = (((3 * ay * u) + (2 * by)) * u) + cy;
                            double wx = (6 * ax * u) + (2 * bx);
                            double wy = (6 * ay * u) + (2 * by);
                            double value = (px * vx) + (py * vy);
                            double slope = (vx * vx) + (vy * vy) + (px * wx) + (py * wy);
                            if (value < 0)
                            {
                                low = u;
                            }
                            else
                            {
                                high = u;
                            }

                            double next = u - (value / slope);
                            if (!(next >= low && next <= high))
                            {
                                next = 0.5 * (low + high);
                            }

                            double step = next - u;
                            u = next;

                            // Newton's steps square the error, so that after one this short nothing is left to gain.
                            if (Math.Abs(step) <= 1e-9)
                            {
                                break;
                            }
                        }

                        double x = (((((ax * u) + bx) * u) + cx) * u) + x0;
                        double y = (((((ay * u) + by) * u) + cy) * u) + y0;
                        double polished = (x * x) + (y * y);
                        if (polished < best)
                        {
                            best = polished;
                            bestT = u;
                        }
                    }
                }
                else if (changes > 1)
                {
                    // Halve: the first half stays in the f, the second goes to the g.
                    double a01 = 0.5 * (f0 + f1);
                    double a12 = 0.5 * (f1 + f2);
                    double a23 = 0.5 * (f2 + f3);
                    double a34 = 0.5 * (f3 + f4);
                    double g4 = 0.5 * (f4 + f5);
                    double b02 = 0.5 * (a01 + a12);
                    double b13 = 0.5 * (a12 + a23);
                    double b24 = 0.5 * (a23 + a34);
                    double g3 = 0.5 * (a34 + g4);
                    double c03 = 0.5 * (b02 + b13);
                    double c14 = 0.5 * (b13 + b24);
                    double g2 = 0.5 * (b24 + g3);
                    double e04 = 0.5 * (c03 + c14);
                    double g1 = 0.5 * (c14 + g2);
                    double middle = 0.5 * (e04 + g1);
                    width *= 0.5;
                    double atMiddle = distance2 + (width * (f0 + a01 + b02 + c03 + e04 + middle));
                    if (middle == 0 && atMiddle <= best + slack)
                    {
                        // A root exactly here belongs to neither half.
                        Offer(ax, ay, bx, by, cx, cy, x0, y0, start + width, ref best, ref bestT);
                    }

                    double* slot = waiting + (count * 9);
                    count++;
                    if (atMiddle + (width * (middle + g1 + g2)) < distance2 + (width * (f0 + a01 + b02)))
                    {
                        // The nearer half first: its minimum then rules out most of the rest.
                        slot[0] = f0;
                        slot[1] = a01;
                        slot[2] = b02;
                        slot[3] = c03;
                        slot[4] = e04;
                        slot[5] = middle;
                        slot[6] = start;
                        slot[7] = width;
                        slot[8] = distance2;
                        f0 = middle;
                        f1 = g1;
                        f2 = g2;
                        f3 = g3;
                        f4 = g4;
                        start += width;
                        distance2 = atMiddle;
                    }
                    else
                    {
                        slot[0] = middle;
                        slot[1] = g1;
                        slot[2] = g2;
                        slot[3] = g3;
                        slot[4] = g4;
                        slot[5] = f5;
                        slot[6] = start + width;
                        slot[7] = width;
                        slot[8] = atMiddle;
                        f1 = a01;
                        f2 = b02;
                        f3 = c03;
                        f4 = e04;
                        f5 = middle;
                    }

                    continue;
                }
            }

            if (count == 0)
            {
                break;
            }

            count--;
            double* next9 = waiting + (count * 9);
            f0 = next9[0];
            f1 = next9[1];
            f2 = next9[2];
            f3 = next9[3];
            f4 = next9[4];
            f5 = next9[5];
            start = next9[6];
            width = next9[7];
            distance2 = next9[8];
        }

        t = bestT;
        distance2Mm2 = best;
        return bestT >= 0;
    }

    /// <summary>Whether products of these coordinates neither overflow nor vanish.</summary>
    internal static bool IsSafe(double magnitude) => magnitude < MostSafe && magnitude > LeastSafe;

    private static void Offer(
        double ax, double ay, double bx, double by, double cx, double cy, double x0, double y0, double u, ref double best, ref double bestT)
    {
        double x = (((((ax * u) + bx) * u) + cx) * u) + x0;
        double y = (((((ay * u) + by) * u) + cy) * u) + y0;
        double distance2 = (x * x) + (y * y);
        if (distance2 < best)
        {
            best = distance2;
            bestT = u;
        }
    }

    /// <summary>Counts the sign changes, and among them those from - to +; guesses the root where the last of these lies.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static int CountChanges(double f0, double f1, double f2, double f3, double f4, double f5, out int rising, out double guess)
    {
        int changes = 0;
        rising = 0;
        guess = 0.5;
        double last = f0;
        Step(f1, f0, 0, ref last, ref changes, ref rising, ref guess);
        Step(f2, f1, 1, ref last, ref changes, ref rising, ref guess);
        Step(f3, f2, 2, ref last, ref changes, ref rising, ref guess);
        Step(f4, f3, 3, ref last, ref changes, ref rising, ref guess);
        Step(f5, f4, 4, ref last, ref changes, ref rising, ref guess);
        return changes;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Step(double value, double before, int index, ref double last, ref int changes, ref int rising, ref double guess)
    {
        if (value * last < 0)
        {
            changes++;
            if (value > 0)
            {
                rising++;

                // Where the control polygon crosses zero.
                guess = 0.2 * (index + (before / (before - value)));
            }
        }

        last = value != 0 ? value : last;
    }
}
