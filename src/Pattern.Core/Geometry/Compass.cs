using System;
using System.Collections.Generic;

namespace Pattern.Core.Geometry;

/// <summary>Where a segment is at a distance from a point.</summary>
internal static class Compass
{
    // Rounding drives a root this far from an end that is the place itself; a joint is found exactly where it is.
    private const double AtEnd = 1e-7;

    internal static void Find(in PathSegment segment, in Point2D centre, double radiusMm, int index, List<PathLocation> found)
    {
        if (segment.Kind == PathSegmentKind.Arc)
        {
            FindOnArc(segment, centre, radiusMm, index, found);
        }
        else
        {
            FindOnCubic(segment, centre, radiusMm, index, found);
        }
    }

    private static unsafe void FindOnCubic(in PathSegment segment, in Point2D centre, double radiusMm, int index, List<PathLocation> found)
    {
        // |B(t) - c|^2 - r^2 in Bernstein form: of degree 6 for a cubic, 2 for a line. In units of the radius, against overflow.
        int degree = segment.Kind == PathSegmentKind.Line ? 1 : 3;
        CubicBezier b = segment.CubicRaw;
        double unit = 1 / radiusMm;
        double* x = stackalloc double[4];
        double* y = stackalloc double[4];
        double* square = stackalloc double[7];
        double* other = stackalloc double[7];
        x[0] = (b.X0 - centre.XMm) * unit;
        y[0] = (b.Y0 - centre.YMm) * unit;
        x[1] = (b.X1 - centre.XMm) * unit;
        y[1] = (b.Y1 - centre.YMm) * unit;
        x[2] = (b.X2 - centre.XMm) * unit;
        y[2] = (b.Y2 - centre.YMm) * unit;
        x[3] = (b.X3 - centre.XMm) * unit;
        y[3] = (b.Y3 - centre.YMm) * unit;
        x[degree] = x[3];
        y[degree] = y[3];
        Polynomial.Multiply(x, degree, x, degree, square);
        Polynomial.Multiply(y, degree, y, degree, other);
        double largest = 1;
        for (int i = 0; i <= 2 * degree; i++)
        {
            square[i] += other[i] - 1;
            largest = Math.Max(largest, Math.Abs(square[i]));
        }

        // What rounding of the coordinates does to the squared distance.
        double magnitude = Math.Max(b.MagnitudeMm, Math.Max(Math.Abs(centre.XMm), Math.Abs(centre.YMm))) * unit;
        double zero = 32 * Raw.Epsilon * (largest + magnitude);
        BernsteinRoots roots = BernsteinRoots.Find(square, 2 * degree, zero);
        for (int i = 0; i < roots.Count; i++)
        {
            double t = roots[i];
            if (t < AtEnd && Math.Abs(square[0]) <= zero)
            {
                t = 0;
            }
            else if (1 - t < AtEnd && Math.Abs(square[2 * degree]) <= zero)
            {
                t = 1;
            }

            found.Add(new PathLocation(index, t, segment.PointAtRaw(t), radiusMm));
        }
    }

    private static void FindOnArc(in PathSegment segment, in Point2D centre, double radiusMm, int index, List<PathLocation> found)
    {
        CircularArc arc = segment.ArcRaw;
        double dx = arc.CentreXMm - centre.XMm;
        double dy = arc.CentreYMm - centre.YMm;
        double apart = Raw.Hypot(dx, dy);
        if (arc.RadiusMm == 0 || apart <= 16 * Raw.Epsilon * (arc.RadiusMm + Math.Abs(arc.CentreXMm) + Math.Abs(arc.CentreYMm)))
        {
            return;
        }

        // d^2 + r^2 + 2 d r cos(a) = R^2, with a measured from the heading that leads from the compass to the arc's centre.
        double cosine = ((radiusMm - arc.RadiusMm) * (radiusMm + arc.RadiusMm) - (apart * apart)) / (2 * apart * arc.RadiusMm);
        if (!(Math.Abs(cosine) <= 1 + 1e-14))
        {
            return;
        }

        double half = Math.Acos(Raw.Clamp(cosine, -1, 1));
        double heading = Math.Atan2(dy, dx);
        double first = Share(arc, heading + half);
        double second = Share(arc, heading - half);
        double earlier = Math.Min(first, second);
        double later = Math.Max(first, second);
        AddShare(segment, earlier, radiusMm, index, found);
        if (later - earlier > 1e-12)
        {
            AddShare(segment, later, radiusMm, index, found);
        }
    }

    private static void AddShare(in PathSegment segment, double share, double radiusMm, int index, List<PathLocation> found)
    {
        if (share <= 1)
        {
            found.Add(new PathLocation(index, share, segment.PointAtRaw(share), radiusMm));
        }
    }

    /// <summary>How far round an arc an angle lies, as a share of its sweep; more than 1 where it lies outside.</summary>
    private static double Share(in CircularArc arc, double angleRad)
    {
        const double Turn = 2 * Math.PI;
        double way = (angleRad - arc.StartRad) * (arc.SweepRad < 0 ? -1 : 1);
        way -= Turn * Math.Floor(way / Turn);
        double sweep = Math.Abs(arc.SweepRad);
        if (Turn - way < 1e-12)
        {
            way = 0;
        }

        return sweep == 0 ? 2 : way > sweep && way - sweep < 1e-12 ? 1 : way / sweep;
    }
}
