using System;
using System.Collections.Generic;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Curves as they come, and curves that break kernels: coincident points, cusps, straight ones that turn back.</summary>
internal static class HostileCurves
{
    public static CubicBezier Cubic(int seed, out Random random)
    {
        random = new Random(seed);
        return Cubic(random, 100);
    }

    public static CubicBezier Cubic(Random random, double size)
    {
        double N() => Math.Round(((random.NextDouble() * 2) - 1) * size, random.Next(3) == 0 ? 0 : 6);
        double x0 = N(), y0 = N(), x1 = N(), y1 = N(), x2 = N(), y2 = N(), x3 = N(), y3 = N();
        switch (random.Next(10))
        {
            case 0:
                return new CubicBezier(x0, y0, x0, y0, x2, y2, x3, y3);
            case 1:
                return new CubicBezier(x0, y0, x1, y1, x3, y3, x3, y3);
            case 2:
                return new CubicBezier(x0, y0, x1, y1, x1, y1, x0, y0);
            case 3:
                // Straight, in any order, turning back or not.
                double a = random.NextDouble() * 3, b = (random.NextDouble() * 3) - 1;
                return new CubicBezier(
                    x0, y0, x0 + (a * (x1 - x0)), y0 + (a * (y1 - y0)), x0 + (b * (x1 - x0)), y0 + (b * (y1 - y0)), x1, y1);
            case 4:
                // A cusp at 1/2: the three legs of the control polygon, weighed 1, 2, 1, add up to nothing.
                double mx = -(x1 + x2) / 2, my = -(y1 + y2) / 2;
                return new CubicBezier(x0, y0, x0 + x1, y0 + y1, x0 + x1 + mx, y0 + y1 + my, x0 + x1 + mx + x2, y0 + y1 + my + y2);
            case 5:
                return new CubicBezier(x0, y0, x0 + x1, y0 + y1, x0 - x1, y0 + y1, x0, y0 + (2 * Math.Abs(y1)));
            default:
                return new CubicBezier(x0, y0, x1, y1, x2, y2, x3, y3);
        }
    }

    public static CurvePath Path(int seed, out Random random)
    {
        random = new Random(seed);
        var segments = new List<PathSegment>();
        var at = new Point2D(0, 0);
        int count = random.Next(1, 8);
        for (int i = 0; i < count; i++)
        {
            double dx = (random.NextDouble() * 200) - 100;
            double dy = (random.NextDouble() * 200) - 100;
            switch (random.Next(3))
            {
                case 0:
                    segments.Add(PathSegment.FromLine(new LineSegment(at, new Point2D(at.XMm + dx, at.YMm + dy))));
                    break;
                case 1:
                    double radius = 10 + (random.NextDouble() * 60);
                    double start = random.NextDouble() * 6;
                    segments.Add(PathSegment.FromArc(new CircularArc(
                        at.XMm - (radius * Math.Cos(start)), at.YMm - (radius * Math.Sin(start)), radius, start, (random.NextDouble() * 12) - 6)));
                    break;
                default:
                    CubicBezier c = Cubic(random, 80);
                    segments.Add(PathSegment.FromCubic(c.Transformed(Transform2D.Translation(at - c.Start))));
                    break;
            }

            at = segments[i].End;
        }

        CurvePath path = CurvePath.FromSegments(segments);
        return random.Next(2) == 0 ? path : path.Closed();
    }
}
