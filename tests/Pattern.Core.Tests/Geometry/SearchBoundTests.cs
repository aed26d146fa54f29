using System;
using System.Collections.Generic;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;
using UnitsNet;

namespace Pattern.Core.Tests.Geometry;

/// <summary>Every search of the kernel ends: NaN and infinity are refused where it begins, and there is a bound on its work that these tests reach.</summary>
/// <remarks>Work is counted in steps, never in time. The doors of the library refuse what is not finite already; these tests come in behind them.</remarks>
public unsafe class SearchBoundTests
{
    // A curve of three bends, and one that runs beside it within a millionth of a millimetre.
    private static readonly CubicBezier Curve = new(0, 0, 100, 90, -40, 80, 70, 10);
    private static readonly CubicBezier Beside = new(0, 1e-7, 100, 90, -40, 80, 70, 10.0000001);

    public static TheoryData<double> NotFinite => [double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    public static TheoryData<string, double> Doors()
    {
        var data = new TheoryData<string, double>();
        foreach (string door in Searches.Keys)
        {
            data.Add(door, double.NaN);
            data.Add(door, double.PositiveInfinity);
        }

        return data;
    }

    private static readonly Dictionary<string, Action<double>> Searches = new()
    {
        ["length"] = bad => With(bad).LengthMm(),
        ["parameter at a length"] = bad => With(bad).ParameterAtLengthMm(10),
        ["nearest point"] = bad => With(bad).ClosestToRaw(new Point2D(3, 4), out _),
        ["nearest to no point"] = bad => Curve.ClosestToRaw(new Point2D(bad, 4), out _),
        ["two cubics"] = bad => Curve.IntersectionsWith(With(bad)),
        ["cubic and line without ends"] = bad => With(bad).IntersectionsWith(Line.Vertical(new Point2D(10, 0))),
        ["cubic and no line"] = bad => Curve.IntersectionsWith(Line.Vertical(new Point2D(bad, 0))),
        ["cubic and straight line"] = bad => Curve.IntersectionsWith(new LineSegment(new Point2D(0, 5), new Point2D(bad, 5))),
        ["flattening"] = bad => With(bad).FlattenRaw(0.1, null, 0),
        ["fairest curve"] = bad => CubicBezier.Between(Point2D.Origin, Direction.Right, new Point2D(bad, 1), Direction.Up),
        ["inside"] = bad => WindingNumber.TryCount(Closed(With(bad)), new Point2D(20, 30), 1e-6, out _),
        ["root"] = bad => RootFinder.Find(new Line1(), 0, -1, 1, bad, 0),
    };

    [Theory]
    [MemberData(nameof(Doors))]
    public void Search_WithANumberThatIsNotFinite_IsRefusedWhereItBegins(string door, double bad)
    {
        long before = SearchWork.Steps;

        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => Searches[door](bad));

        Assert.StartsWith("PC0003", e.Message, StringComparison.Ordinal);
        Assert.InRange(SearchWork.Steps - before, 0, 3);
    }

    [Theory]
    [MemberData(nameof(NotFinite))]
    public void BernsteinRoots_AnyCoefficientNotFinite_IsRefusedWhereItBegins(double bad)
    {
        for (int degree = 1; degree <= BernsteinRoots.MostDegree; degree++)
        {
            for (int wrong = 0; wrong <= degree; wrong++)
            {
                long before = SearchWork.Steps;
                Assert.Throws<ArgumentOutOfRangeException>(() =>
                {
                    double* c = stackalloc double[degree + 1];
                    for (int i = 0; i <= degree; i++)
                    {
                        c[i] = i == wrong ? bad : (i % 2 == 0 ? 1 : -1);
                    }

                    BernsteinRoots.Find(c, degree, 1e-9);
                });
                Assert.Equal(before, SearchWork.Steps);
            }
        }
    }

    // Only what waits at each of 48 depths is still looked at once the work is spent.
    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(100)]
    public void BernsteinRoots_WorkSpent_Ends(int mostVisits)
    {
        double* c = stackalloc double[] { 1, -3, 5, -7, 5, -3, 1 };
        long before = SearchWork.Steps;
        BernsteinRoots.Find(c, 6, 1e-3, mostVisits);

        Assert.InRange(SearchWork.Steps - before, 1, mostVisits + 48);
    }

    // Degree six with roots side by side is as hard as it gets; the bound is never what ends an honest search.
    [Fact]
    public void BernsteinRoots_HostilePolynomials_StayFarFromTheBound()
    {
        var random = new Random(20260);
        long worst = 0;
        double* c = stackalloc double[7];
        for (int n = 0; n < 20_000; n++)
        {
            int degree = random.Next(1, 7);
            double scale = Math.Pow(10, random.Next(-12, 4));
            for (int i = 0; i <= degree; i++)
            {
                c[i] = random.Next(3) == 0 ? 0 : ((random.NextDouble() * 2) - 1) * (random.Next(2) == 0 ? 1 : scale);
            }

            long before = SearchWork.Steps;
            BernsteinRoots.Find(c, degree, random.Next(2) == 0 ? 0 : scale);
            worst = Math.Max(worst, SearchWork.Steps - before);
        }

        Assert.InRange(worst, Counted, 4096);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(50)]
    [InlineData(500)]
    public void CubicPairSearch_WorkSpent_EndsAndFindsOnlyWhatIsThere(int mostVisits)
    {
        var pair = new SegmentPair(PathSegment.FromCubic(Curve), PathSegment.FromCubic(Beside), 1e-9);
        CurveIntersections hits = default;
        long before = SearchWork.Steps;
        CubicPairSearch.Find(pair, ref hits, mostVisits);

        // Each of the 96 halvings that wait is decided at once: nearest points of a few ends, 512 steps each at most.
        Assert.InRange(SearchWork.Steps - before, Counted, mostVisits + (97 * 12 * 512));
        for (int i = 0; i < hits.Count; i++)
        {
            Assert.InRange(Curve.PointAtRaw(hits.FirstRaw(i)).DistanceMm(Beside.PointAtRaw(hits.SecondRaw(i))), 0, 1e-9);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void NearestOnCubic_WorkSpent_GivesTheNearestSoFar(int mostVisits)
    {
        double distance2 = double.PositiveInfinity;
        long before = SearchWork.Steps;

        Assert.True(NearestOnCubic.TryFind(Curve, 30, 60, ref distance2, out double t, mostVisits));
        Assert.InRange(SearchWork.Steps - before, 0, mostVisits);
        Assert.Equal(distance2, Math.Pow(Curve.PointAtRaw(t).DistanceMm(new Point2D(30, 60)), 2), 1e-9);
    }

    [Fact]
    public void NearestOnCubic_HostileCurves_StayFarFromTheBound()
    {
        long worst = 0;
        for (int seed = 0; seed < 20_000; seed++)
        {
            CubicBezier curve = HostileCurves.Cubic(seed, out Random random);
            Point2D point = random.Next(2) == 0 ? curve.PointAtRaw(random.NextDouble()) : new Point2D(random.NextDouble() * 100, random.NextDouble() * 100);
            long before = SearchWork.Steps;
            curve.ClosestToRaw(point, out _);
            worst = Math.Max(worst, SearchWork.Steps - before);
        }

        Assert.InRange(worst, Counted, 256);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void WindingNumber_WorkSpent_CountsChords(int mostVisits)
    {
        long before = SearchWork.Steps;

        // A hair off the curve, where it is halved deepest.
        Point2D near = Curve.PointAtRaw(0.3) + new Vector2D(1e-7, 0);
        WindingNumber.TryCount(Closed(Curve), near, 1e-12, out _, mostVisits);

        Assert.InRange(SearchWork.Steps - before, Counted, (2 * mostVisits) + 66);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void RootFinder_WorkSpent_GivesAPlaceInTheBracket(int mostSteps)
    {
        long before = SearchWork.Steps;
        double root = RootFinder.Find(new Line1(), 0, -0.3, 1, 0.7, 0, mostSteps);

        Assert.InRange(root, 0, 1);
        Assert.InRange(SearchWork.Steps - before, 0, mostSteps);
    }

    [Fact]
    public void Offset_WorkSpent_IsRefusedWithAReason()
    {
        CurvePath path = CurvePath.FromCubic(Curve);
        ConstructionException e = Assert.Throws<ConstructionException>(() => OffsetBuilder.Build(path, 5, OffsetJoin.Round, 1e-7, mostFits: 3));

        Assert.Equal(DiagnosticCode.OffsetTooFine, e.Code);
        Assert.NotNull(e.Measured);
        Assert.NotNull(e.Allowed);
    }

    // The parallel of a quarter circle at its own radius is a point: everywhere its direction is undecided.
    [Fact]
    public void Offset_ToTheCentreOfAnArc_EndsWithinItsBound()
    {
        const double Handle = 55.2284749830793;
        CurvePath quarter = CurvePath.FromCubic(new CubicBezier(100, 0, 100, Handle, Handle, 100, 0, 100));
        long before = SearchWork.Steps;
        try
        {
            quarter.Offset(Length.FromMillimeters(100), OffsetJoin.Round);
        }
        catch (ConstructionException refusal) when (refusal.Code is DiagnosticCode.OffsetVanishes or DiagnosticCode.OffsetUnjoined)
        {
            // Nothing is left of it, or it cannot be joined up: either is an answer.
        }

        Assert.InRange(SearchWork.Steps - before, Counted, 500_000);
    }

    // What is counted in a debug build; a release build counts nothing.
#if DEBUG
    private const long Counted = 1;
#else
    private const long Counted = 0;
#endif

    private static CubicBezier With(double bad) => new(0, 0, 100, 90, bad, 80, 70, 10);

    private static CurvePath Closed(CubicBezier curve)
        => CurvePath.Trusted([PathSegment.FromCubic(curve), PathSegment.FromLine(new LineSegment(curve.End, curve.Start))], isClosed: true);

    private readonly struct Line1 : IScalarFunction
    {
        public double At(double x) => (x * x * x) - 0.3;
    }
}
