using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Both sets of reference vectors: see Data/Geometry/README.md. Errors are relative to the size of the curve.</summary>
public class CubicBezierVectorTests
{
    public static TheoryData<string> Ids => GeometryData.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void LengthMm_ReferenceCurve_Matches(string id)
    {
        CurveRow row = GeometryData.Curve(id);

        AssertClose(row.Length, row.Cubic.LengthMm(), 2e-12, row.Length);
        AssertClose(row.PartLength, row.Cubic.LengthMm(0, 0.37), 2e-12, row.Length);
        AssertClose(row.Length - row.PartLength, row.Cubic.LengthMm(0.37, 1), 2e-12, row.Length);
        AssertClose(-row.PartLength, row.Cubic.LengthMm(0.37, 0), 2e-12, row.Length);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void LengthMm_LadderOfTolerances_HoldsEach(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        foreach (double toleranceMm in new[] { 1.0, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9 })
        {
            Assert.True(Math.Abs(row.Cubic.LengthMm(toleranceMm) - row.Length) <= toleranceMm + (1e-13 * row.Length), $"{id} at {toleranceMm}");
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void ParameterAtLengthMm_Half_IsTheHalf(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        double t = row.Cubic.ParameterAtLengthMm(0.5 * row.Length);

        AssertClose(0.5 * row.Length, row.Cubic.LengthMm(0, t), 2e-12, row.Length);
        if (row.Length > 0)
        {
            // The point, and not t: where the speed vanishes, t says little.
            Point2D expected = row.Cubic.PointAtRaw(row.HalfParameter);
            Assert.True(expected.DistanceMm(row.Cubic.PointAtRaw(t)) <= (4e-12 * row.Length) + (4e-16 * row.Cubic.MagnitudeMm));
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void SignedAreaMm2_ReferenceCurve_Matches(string id)
    {
        CurveRow row = GeometryData.Curve(id);

        AssertClose(row.Area, row.Cubic.SignedAreaMm2(), 1e-14, row.Cubic.MagnitudeMm * (row.Length + row.Cubic.MagnitudeMm));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Bounds_ReferenceCurve_AreTight(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        BoundingBox box = row.Cubic.Bounds;

        AssertClose(row.Box[0], box.LeftMm, 1e-15, row.Cubic.MagnitudeMm);
        AssertClose(row.Box[1], box.BottomMm, 1e-15, row.Cubic.MagnitudeMm);
        AssertClose(row.Box[2], box.RightMm, 1e-15, row.Cubic.MagnitudeMm);
        AssertClose(row.Box[3], box.TopMm, 1e-15, row.Cubic.MagnitudeMm);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void MaxCurvaturePerMm_ReferenceCurve_Matches(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        double most = row.Cubic.MaxCurvaturePerMm(out double t);

        Assert.InRange(t, 0, 1);
        Assert.False(double.IsNaN(most));
        if (double.IsNaN(row.MaxCurvature) || double.IsInfinity(row.MaxCurvature))
        {
            // Blank and inf: unbounded or undefined, that is a standstill, or a straight line that turns back.
            Assert.True(double.IsInfinity(most) || most == 0, $"{most}");
        }
        else if (row.MaxCurvature * row.Length < 1e4)
        {
            // Beyond that the bend is next to a cusp, and its curvature is rounding.
            AssertClose(row.MaxCurvature, most, 1e-9, row.MaxCurvature + (1e-3 / Math.Max(row.Length, 1e-300)));
        }
    }

    public static TheoryData<string> IdsOfSet2 => new(GeometryData.Curves.Where(c => c.At037.Length > 0).Select(c => c.Id));

    [Theory]
    [MemberData(nameof(IdsOfSet2))]
    public void PointTangentCurvature_At037_Match(string id)
    {
        CurveRow row = GeometryData.Curve(id);
        Point2D point = row.Cubic.PointAt(0.37);

        AssertClose(row.At037[0], point.XMm, 1e-15, row.Cubic.MagnitudeMm);
        AssertClose(row.At037[1], point.YMm, 1e-15, row.Cubic.MagnitudeMm);
        if (double.IsNaN(row.At037[2]) || row.Cubic.DerivativeAtRaw(0.37).LengthMm <= 1e-3 * row.Length)
        {
            return;
        }

        // Far from the origin the control points' differences carry the rounding of the coordinates.
        double rounding = 1e-13 + (1e-14 * row.Cubic.MagnitudeMm / row.Cubic.DerivativeAtRaw(0.37).LengthMm);
        Direction direction = row.Cubic.DirectionAt(0.37);
        AssertClose(row.At037[2], direction.X, rounding, 1);
        AssertClose(row.At037[3], direction.Y, rounding, 1);
        AssertClose(row.At037[4], row.Cubic.CurvaturePerMm(0.37), rounding * 1e3, Math.Abs(row.At037[4]) + (1 / row.Length));
    }

    private static void AssertClose(double expected, double actual, double relative, double scale)
        => Assert.True(Math.Abs(expected - actual) <= (relative * scale) + 1e-300, $"expected {expected:r}, was {actual:r}, off by {Math.Abs(expected - actual) / scale:g3} of {scale:g3}");
}
