using System;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>A curve as drafters draw them: the ends apart, the handles between a tenth and a half of the chord, no hairpin.</summary>
public sealed record GentleCurve(CubicBezier Curve);

/// <summary>Any curve at all: coincident points, cusps, straight ones that turn back, tiny, huge and far away.</summary>
public sealed record HostileCurve(CubicBezier Curve);

/// <summary>Makes curves for properties.</summary>
public static class CurveGenerators
{
    public static Arbitrary<GentleCurve> Gentle() => Arb.From(
        from chord in Gen.Choose(20, 900)
        from heading in Gen.Choose(0, 359)
        from a in Gen.Choose(-60, 60)
        from b in Gen.Choose(-60, 60)
        from h0 in Gen.Choose(10, 50)
        from h1 in Gen.Choose(10, 50)
        select new GentleCurve(MakeGentle(chord, heading, a, b, h0 / 100.0, h1 / 100.0)));

    public static Arbitrary<HostileCurve> Hostile() => Arb.From(
        from kind in Gen.Choose(0, 8)
        from power in Gen.Choose(-6, 9)
        from seed in Gen.Choose(0, int.MaxValue - 1)
        select new HostileCurve(MakeHostile(kind, power, new Random(seed))));

    private static CubicBezier MakeGentle(double chord, double heading, double a, double b, double h0, double h1)
    {
        Direction D(double degrees) => Direction.FromAngle(UnitsNet.Angle.FromDegrees(heading + degrees));
        Point2D start = Point2D.FromMillimeters(13, -7);
        Point2D end = start + D(0).TimesMm(chord);
        return CubicBezier.FromPoints(start, start + D(a).TimesMm(h0 * chord), end - D(b).TimesMm(h1 * chord), end);
    }

    private static CubicBezier MakeHostile(int kind, int power, Random random)
    {
        double scale = Math.Pow(10, power);
        double N() => (random.NextDouble() - 0.5) * scale;
        Point2D P() => new(N(), N());
        Point2D p0 = P();
        Point2D p1 = P();
        Point2D p2 = P();
        Point2D p3 = P();
        switch (kind)
        {
            case 0:
                break;
            case 1:
                p1 = p0;
                break;
            case 2:
                p2 = p3;
                p1 = random.Next(2) == 0 ? p3 : p1;
                break;
            case 3:
                p3 = p0;
                p2 = random.Next(2) == 0 ? p0 : p2;
                break;
            case 4:
                // All on one line, in any order.
                p1 = p0 + ((p3 - p0) * ((random.NextDouble() * 4) - 2));
                p2 = p0 + ((p3 - p0) * ((random.NextDouble() * 4) - 2));
                break;
            case 5:
                // A cusp at t = 1/2: B' = 0 there when P3 - P2 = -(P1 - P0) - 2 (P2 - P1).
                p3 = p2 - (p1 - p0) - ((p2 - p1) * 2);
                break;
            case 6:
                p1 = p0;
                p2 = p0;
                p3 = random.Next(2) == 0 ? p0 : p3;
                break;
            case 7:
                // Nearly straight, and nearly a point.
                p1 = new Point2D(p0.XMm + (1e-9 * N()), p0.YMm);
                p2 = new Point2D(p0.XMm + (1e-12 * N()), p0.YMm + (1e-12 * N()));
                break;
            default:
                // A thousand times its size away from the origin.
                var away = new Vector2D(1e3 * scale, -1e3 * scale);
                return new CubicBezier(p0 + away, p1 + away, p2 + away, p3 + away);
        }

        return new CubicBezier(p0, p1, p2, p3);
    }
}
