using System;
using System.Runtime.CompilerServices;

namespace Pattern.Core.Geometry;

/// <summary>What control points tell about two pieces of curve without solving anything. An answer of true is proof; false means "perhaps".</summary>
internal static class PieceTests
{
    /// <summary>The two have no point within the tolerance of each other.</summary>
    internal static bool AreApart(in CubicBezier a, in CubicBezier b, double toleranceMm)
    {
        if (Math.Max(Math.Max(a.X0, a.X1), Math.Max(a.X2, a.X3)) + toleranceMm < Math.Min(Math.Min(b.X0, b.X1), Math.Min(b.X2, b.X3))
            || Math.Max(Math.Max(b.X0, b.X1), Math.Max(b.X2, b.X3)) + toleranceMm < Math.Min(Math.Min(a.X0, a.X1), Math.Min(a.X2, a.X3))
            || Math.Max(Math.Max(a.Y0, a.Y1), Math.Max(a.Y2, a.Y3)) + toleranceMm < Math.Min(Math.Min(b.Y0, b.Y1), Math.Min(b.Y2, b.Y3))
            || Math.Max(Math.Max(b.Y0, b.Y1), Math.Max(b.Y2, b.Y3)) + toleranceMm < Math.Min(Math.Min(a.Y0, a.Y1), Math.Min(a.Y2, a.Y3)))
        {
            return true;
        }

        return IsOutsideStrip(a, b, toleranceMm) || IsOutsideStrip(b, a, toleranceMm);
    }

    /// <summary>No heading of one is a heading of the other or its opposite. Two common points would make parallel chords, so there is at most one.</summary>
    internal static bool MeetAtMostOnce(in CubicBezier a, in CubicBezier b)
    {
        double sign = 0;
        return TurnsOneWay(a.X1 - a.X0, a.Y1 - a.Y0, b, ref sign)
            && TurnsOneWay(a.X2 - a.X1, a.Y2 - a.Y1, b, ref sign)
            && TurnsOneWay(a.X3 - a.X2, a.Y3 - a.Y2, b, ref sign)
            && sign != 0;
    }

    /// <summary>The pieces meet end to end, and from there all of both leads away: there is no other common point.</summary>
    internal static bool RunsOn(in CubicBezier a, in CubicBezier b, double t0, double t1, double u0, double u1, in CurveIntersections hits)
    {
        for (int i = 0; i < hits.Count; i++)
        {
            double t = hits.FirstRaw(i);
            double u = hits.SecondRaw(i);
            bool atStart = t == 0 && t0 == 0;
            bool atEnd = t == 1 && t1 == 1;
            bool otherAtStart = u == 0 && u0 == 0;
            bool otherAtEnd = u == 1 && u1 == 1;
            if ((atStart || atEnd) && (otherAtStart || otherAtEnd))
            {
                return LeadApart(a, atStart ? 1 : -1, b, otherAtStart ? 1 : -1);
            }
        }

        return false;
    }

    /// <summary>Some direction has all of the one ahead of the joint and all of the other behind it.</summary>
    /// <param name="a">One piece.</param>
    /// <param name="signA">1 where it leaves the joint, -1 where it arrives there.</param>
    /// <param name="b">The other piece.</param>
    /// <param name="signB">1 where it leaves the joint, -1 where it arrives there.</param>
    internal static bool LeadApart(in CubicBezier a, int signA, in CubicBezier b, int signB)
    {
        // From the far end of the one to the far end of the other.
        double dx = signA > 0 ? a.X3 - a.X0 : a.X0 - a.X3;
        double dy = signA > 0 ? a.Y3 - a.Y0 : a.Y0 - a.Y3;
        double ex = signB > 0 ? b.X3 - b.X0 : b.X0 - b.X3;
        double ey = signB > 0 ? b.Y3 - b.Y0 : b.Y0 - b.Y3;
        double x = dx - ex;
        double y = dy - ey;
        return AllAhead(a, signA * x, signA * y) && AllAhead(b, -signB * x, -signB * y);
    }

    /// <summary>All of the curve heads less than a right angle away from a direction.</summary>
    internal static bool AllAhead(in CubicBezier a, double x, double y)
        => IsAhead(a.X1 - a.X0, a.Y1 - a.Y0, x, y) && IsAhead(a.X2 - a.X1, a.Y2 - a.Y1, x, y) && IsAhead(a.X3 - a.X2, a.Y3 - a.Y2, x, y)
            && ((a.X3 - a.X0) * x) + ((a.Y3 - a.Y0) * y) > 0;

    /// <summary>The longer side of the box around the control points.</summary>
    internal static double Size(in CubicBezier a)
        => Math.Max(
            Math.Max(Math.Max(a.X0, a.X1), Math.Max(a.X2, a.X3)) - Math.Min(Math.Min(a.X0, a.X1), Math.Min(a.X2, a.X3)),
            Math.Max(Math.Max(a.Y0, a.Y1), Math.Max(a.Y2, a.Y3)) - Math.Min(Math.Min(a.Y0, a.Y1), Math.Min(a.Y2, a.Y3)));

    /// <summary>The piece is its chord, to within a tolerance, and runs along it one way.</summary>
    internal static bool IsFlat(in CubicBezier a, double toleranceMm)
    {
        double cx = a.X3 - a.X0;
        double cy = a.Y3 - a.Y0;
        double length = Math.Abs(cx) + Math.Abs(cy);
        double off1 = Math.Abs((cx * (a.Y1 - a.Y0)) - (cy * (a.X1 - a.X0)));
        double off2 = Math.Abs((cx * (a.Y2 - a.Y0)) - (cy * (a.X2 - a.X0)));

        // The sum of both components is at most 1.42 times the length of the chord: the stricter reading.
        return (off1 <= 0.7 * toleranceMm * length && off2 <= 0.7 * toleranceMm * length && AllAhead(a, cx, cy)) || Size(a) <= toleranceMm;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool TurnsOneWay(double x, double y, in CubicBezier b, ref double sign)
    {
        double c0 = (x * (b.Y1 - b.Y0)) - (y * (b.X1 - b.X0));
        double c1 = (x * (b.Y2 - b.Y1)) - (y * (b.X2 - b.X1));
        double c2 = (x * (b.Y3 - b.Y2)) - (y * (b.X3 - b.X2));
        if (sign == 0)
        {
            sign = c0 != 0 ? c0 : c1 != 0 ? c1 : c2;
        }

        // A leg of no length turns nowhere and forbids nothing; parallel legs do.
        return sign > 0
            ? (c0 > 0 || (c0 == 0 && IsNothing(x, y, b.X1 - b.X0, b.Y1 - b.Y0)))
                && (c1 > 0 || (c1 == 0 && IsNothing(x, y, b.X2 - b.X1, b.Y2 - b.Y1)))
                && (c2 > 0 || (c2 == 0 && IsNothing(x, y, b.X3 - b.X2, b.Y3 - b.Y2)))
            : (c0 < 0 || (c0 == 0 && IsNothing(x, y, b.X1 - b.X0, b.Y1 - b.Y0)))
                && (c1 < 0 || (c1 == 0 && IsNothing(x, y, b.X2 - b.X1, b.Y2 - b.Y1)))
                && (c2 < 0 || (c2 == 0 && IsNothing(x, y, b.X3 - b.X2, b.Y3 - b.Y2)));
    }

    private static bool IsAhead(double legX, double legY, double x, double y)
    {
        double along = (legX * x) + (legY * y);
        return along > 0 || (along == 0 && legX == 0 && legY == 0);
    }

    private static bool IsNothing(double ax, double ay, double bx, double by) => (ax == 0 && ay == 0) || (bx == 0 && by == 0);

    // All of b lies on one side of a strip along the chord of a that a cannot leave.
    private static bool IsOutsideStrip(in CubicBezier a, in CubicBezier b, double toleranceMm)
    {
        double cx = a.X3 - a.X0;
        double cy = a.Y3 - a.Y0;
        double off1 = (cx * (a.Y1 - a.Y0)) - (cy * (a.X1 - a.X0));
        double off2 = (cx * (a.Y2 - a.Y0)) - (cy * (a.X2 - a.X0));

        // A cubic leaves its chord by at most 3/4 of what its control points do, 4/9 where these lie on opposite sides.
        double share = off1 * off2 > 0 ? 0.75 : 4.0 / 9;
        double slack = toleranceMm * (Math.Abs(cx) + Math.Abs(cy));
        double most = (share * Math.Max(0, Math.Max(off1, off2))) + slack;
        double least = (share * Math.Min(0, Math.Min(off1, off2))) - slack;
        double b0 = (cx * (b.Y0 - a.Y0)) - (cy * (b.X0 - a.X0));
        double b1 = (cx * (b.Y1 - a.Y0)) - (cy * (b.X1 - a.X0));
        double b2 = (cx * (b.Y2 - a.Y0)) - (cy * (b.X2 - a.X0));
        double b3 = (cx * (b.Y3 - a.Y0)) - (cy * (b.X3 - a.X0));
        return (b0 > most && b1 > most && b2 > most && b3 > most) || (b0 < least && b1 < least && b2 < least && b3 < least);
    }
}
