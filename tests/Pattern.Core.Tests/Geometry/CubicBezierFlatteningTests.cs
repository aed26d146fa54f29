using System;
using System.Linq;
using FsCheck.Xunit;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(CurveGenerators)], MaxTest = 200)]
public class CubicBezierFlatteningTests
{
    public static TheoryData<string> Ids => GeometryData.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Flatten_ReferenceCurve_KeepsWithinTheToleranceAndIsFrugal(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        foreach (double share in new[] { 1e-2, 1e-4, 1e-6 })
        {
            double toleranceMm = Math.Max(share * row.Length, 1e-9);
            Point2D[] vertices = row.Cubic.Flatten(Length.FromMillimeters(toleranceMm));

            Assert.Equal(row.Cubic.Start, vertices[0]);
            Assert.Equal(row.Cubic.End, vertices[vertices.Length - 1]);
            AssertWithin(row.Cubic, vertices, toleranceMm);
            double ideal = Ideal(row.Cubic, toleranceMm);
            Assert.True(vertices.Length <= (1.13 * ideal) + 10, $"{id}: {vertices.Length}, ideal {ideal}");
        }
    }

    [Property]
    public void Flatten_HostileCurve_KeepsWithinTheTolerance(HostileCurve hostile)
    {
        double toleranceMm = Math.Max(1e-5 * hostile.Curve.MagnitudeMm, 1e-12);

        AssertWithin(hostile.Curve, hostile.Curve.Flatten(Length.FromMillimeters(toleranceMm)), toleranceMm);
    }

    [Fact]
    public void Flatten_SmallBuffer_TellsHowMuchIsNeeded()
    {
        CubicBezier curve = new(0, 0, 300, -60, 120, -400, 180, 400);
        Point2D[] all = curve.Flatten(Length.FromMillimeters(0.01));
        var some = new Point2D[10];

        Assert.Equal(all.Length, curve.Flatten(Length.FromMillimeters(0.01), some));
        Assert.Equal(all.Take(10), some);
        Assert.Equal(all.Length, curve.Flatten(Length.FromMillimeters(0.01), Array.Empty<Point2D>()));
        var exact = new Point2D[all.Length];
        Assert.Equal(all.Length, curve.Flatten(Length.FromMillimeters(0.01), exact));
        Assert.Equal(all, exact);
    }

    [Fact]
    public void Flatten_ToleranceTooFine_Refused()
    {
        CubicBezier curve = new(0, 0, 300, -60, 120, -400, 180, 400);

        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(() => curve.Flatten(Length.FromMillimeters(1e-13)));

        Assert.StartsWith("PC3109", error.Message);
    }

    [Fact]
    public void Flatten_StraightTurnBack_ReachesTheTurningPoints()
    {
        CubicBezier back = new(0, 0, 100, 0, -100, 0, 0, 0);
        Point2D[] vertices = back.Flatten(Length.FromMillimeters(0.05));

        // Closed form: the turning points are 100 sqrt(3) / 6 to both sides.
        Assert.Equal(100 * Math.Sqrt(3) / 6, vertices.Max(v => v.XMm), 0.05);
        Assert.Equal(-100 * Math.Sqrt(3) / 6, vertices.Min(v => v.XMm), 0.05);
    }

    /// <summary>The number of even chords: the integral of sqrt(curvature / 8 tolerance), from the sagitta k s^2 / 8.</summary>
    private static double Ideal(CubicBezier curve, double toleranceMm)
    {
        const int Samples = 4000;
        double sum = 0;
        for (int i = 0; i < Samples; i++)
        {
            Vector2D first = curve.DerivativeAtRaw((i + 0.5) / Samples);
            double speed = first.LengthMm;
            sum += speed > 0 ? Math.Sqrt(Math.Abs(first.CrossMm2(curve.SecondDerivativeAtRaw((i + 0.5) / Samples))) / speed / (8 * toleranceMm)) / Samples : 0;
        }

        return sum;
    }

    private static void AssertWithin(CubicBezier curve, Point2D[] vertices, double toleranceMm)
    {
        // Every vertex lies on the curve in order; so the samples between two of them belong to that chord. The search goes on
        // from chord to chord: a sample may sit on the next chord, never on an earlier one.
        int chord = 0;
        int samples = 20 * vertices.Length;
        double slack = toleranceMm * 1e-9 + (4e-15 * curve.MagnitudeMm);
        for (int i = 0; i <= samples; i++)
        {
            Point2D p = curve.PointAtRaw((double)i / samples);
            double best = double.MaxValue;
            for (int j = chord; j < vertices.Length - 1; j++)
            {
                double distance = Distance(p, vertices[j], vertices[j + 1]);
                if (distance < best)
                {
                    best = distance;
                    chord = distance <= toleranceMm + slack ? j : chord;
                }

                if (distance <= toleranceMm + slack)
                {
                    break;
                }
            }

            Assert.True(best <= toleranceMm + slack, $"{best} from the polyline, tolerance {toleranceMm}, {curve}");
        }
    }

    private static double Distance(Point2D p, Point2D a, Point2D b)
    {
        Vector2D e = b - a;
        Vector2D q = p - a;
        double squared = e.DotMm2(e);
        double u = squared > 0 ? Math.Max(0, Math.Min(1, q.DotMm2(e) / squared)) : 0;
        return (q - (e * u)).LengthMm;
    }
}
