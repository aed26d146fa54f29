using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Pattern.Core.Geometry;

namespace Pattern.Core.Tests.Geometry;

public class LeastChangeTests
{
    private const double Limit = 1000;

    // The foot of the perpendicular, by school geometry.
    [Fact]
    public void Solve_OnePlane_LandsOnTheFootOfThePerpendicular()
    {
        LeastChange room = Room([1, 2], equations: 1);

        LeastChangeEnd end = room.Solve(new Equations((x, r) => r[0] = (3 * x[0]) + (4 * x[1]) - 36, (x, s) => (s[0], s[1]) = (3, 4)));

        Assert.Equal(LeastChangeEnd.Least, end);
        Assert.Equal(1 + 3, room.Found[0], 1e-9);
        Assert.Equal(2 + 4, room.Found[1], 1e-9);
    }

    // The nearest point of a circle lies on the ray through the point; from outside, from inside, and from so near the centre that the curvature matters most.
    [Theory]
    [InlineData(60, 80)]
    [InlineData(3, 4)]
    [InlineData(0.6, 0.8)]
    public void Solve_ACircle_LandsOnItsNearestPoint(double x, double y)
    {
        LeastChange room = Room([x, y], equations: 1);

        LeastChangeEnd end = room.Solve(Circle());

        Assert.Equal(LeastChangeEnd.Least, end);
        Assert.Equal(30, room.Found[0], 1e-5);
        Assert.Equal(40, room.Found[1], 1e-5);
        Assert.True(Math.Abs(room.Residuals[0]) <= LeastChange.ToleranceMm);
    }

    // Nearest point of x^2/a^2 + y^2/b^2 = 1 from its normal: P(t) + d n(t) is nearest to P(t) for small d, for any t.
    [Property(MaxTest = 200)]
    public Property Solve_AnEllipseFromAPointOnItsNormal_LandsOnTheFoot() => Prop.ForAll(
        Gen.Choose(0, 6283).Two().ToArbitrary(),
        pair =>
        {
            double t = pair.Item1 / 1000.0;
            double d = (pair.Item2 / 6283.0 * 30) - 15;
            (double fx, double fy) = (100 * Math.Cos(t), 60 * Math.Sin(t));
            (double nx, double ny) = (60 * Math.Cos(t), 100 * Math.Sin(t));
            double n = Math.Sqrt((nx * nx) + (ny * ny));
            LeastChange room = Room([fx + (d * nx / n), fy + (d * ny / n)], equations: 1);

            LeastChangeEnd end = room.Solve(new Equations(
                (x, r) => r[0] = 50 * ((x[0] * x[0] / 10000) + (x[1] * x[1] / 3600) - 1), (x, s) => (s[0], s[1]) = (x[0] / 100, x[1] / 36)));

            return end is LeastChangeEnd.Least or LeastChangeEnd.Unchanged && Math.Abs(room.Found[0] - fx) < 1e-4 && Math.Abs(room.Found[1] - fy) < 1e-4;
        });

    [Fact]
    public void Solve_AnUnknownWithALimit_StopsThereAndTheOthersGoOn()
    {
        LeastChange room = Room([0, 0, 0], equations: 1);
        room.Most[0] = 2;

        LeastChangeEnd end = room.Solve(new Equations((x, r) => r[0] = x[0] + x[1] + x[2] - 12, (x, s) => (s[0], s[1], s[2]) = (1, 1, 1)));

        Assert.Equal(LeastChangeEnd.Least, end);
        Assert.Equal([2, 5, 5], room.Found.Select(v => Math.Round(v, 9)));
        Assert.Equal([1, 0, 0], Enumerable.Range(0, 3).Select(room.LimitOf));
    }

    [Fact]
    public void Solve_NothingWithinTheLimits_IsNotMetAndSaysWhatIsAtItsLimit()
    {
        LeastChange room = Room([0, 0], equations: 1);
        (room.Most[0], room.Most[1]) = (2, 3);

        LeastChangeEnd end = room.Solve(new Equations((x, r) => r[0] = x[0] + x[1] - 12, (x, s) => (s[0], s[1]) = (1, 1)));

        Assert.Equal(LeastChangeEnd.NotMet, end);
        Assert.Equal(-7, room.Residuals[0], 1e-9);
        Assert.Equal([1, 1], Enumerable.Range(0, 2).Select(room.LimitOf));
    }

    [Fact]
    public void Solve_WhatHoldsAlready_ChangesNotABit()
    {
        double[] start = [30.000000000001, 40];
        LeastChange room = Room(start, equations: 1);

        Assert.Equal(LeastChangeEnd.Unchanged, room.Solve(Circle()));
        Assert.Equal(start, room.Found);
        Assert.Equal(0, room.Steps);
    }

    [Fact]
    public void Solve_TheSameEquationTwice_IsMetAndTheSecondIsRedundant()
    {
        LeastChange room = Room([0, 0, 0], equations: 3);
        var twice = new Equations(
            (x, r) => (r[0], r[1], r[2]) = (x[0] + x[1] - 10, x[2] - 4, (2 * x[0]) + (2 * x[1]) - 20),
            (x, s) => (s[0], s[1], s[5], s[6], s[7]) = (1, 1, 1, 2, 2));
        bool[] redundant = new bool[3];

        Assert.Equal(LeastChangeEnd.Least, room.Solve(twice));
        room.MarkRedundant(redundant);

        Assert.Equal([false, false, true], redundant);
    }

    // One tolerance throughout: however small a conflict is, as long as it is larger than what counts as holding, it is found.
    [Theory]
    [InlineData(1e-8)]
    [InlineData(1e-7)]
    [InlineData(1e-6)]
    [InlineData(1)]
    public void Solve_EquationsThatContradictByALittle_AreNotMet(double by)
    {
        LeastChange room = Room([0, 0], equations: 2);

        LeastChangeEnd end = room.Solve(new Equations(
            (x, r) => (r[0], r[1]) = (x[0] + x[1] - 10, x[0] + x[1] - 10 - by), (x, s) => (s[0], s[1], s[2], s[3]) = (1, 1, 1, 1)));

        Assert.Equal(LeastChangeEnd.NotMet, end);
        Assert.Equal(by / 2, Math.Abs(room.Residuals[0]), by * 1e-3);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Solve_WithoutSlopes_FindsTheSameByDifferencesAndSecants(bool knowsSlopes)
    {
        // Two circles: where they cross is school geometry.
        LeastChange room = Room([50, 20], equations: 2);
        var circles = new Equations(
            (x, r) => (r[0], r[1]) = (Math.Sqrt((x[0] * x[0]) + (x[1] * x[1])) - 50, Math.Sqrt(((x[0] - 60) * (x[0] - 60)) + (x[1] * x[1])) - 50),
            (x, s) => (s[0], s[1], s[2], s[3]) = (x[0] / R(x[0], x[1]), x[1] / R(x[0], x[1]), (x[0] - 60) / R(x[0] - 60, x[1]), x[1] / R(x[0] - 60, x[1])))
        {
            KnowsSlopes = knowsSlopes,
        };

        LeastChangeEnd end = room.Solve(circles);

        Assert.Equal(LeastChangeEnd.Least, end);
        Assert.Equal(30, room.Found[0], 1e-8);
        Assert.Equal(40, room.Found[1], 1e-8);
        Assert.InRange(room.Drawings, 3, 25);
        static double R(double x, double y) => Math.Sqrt((x * x) + (y * y));
    }

    // Hostile: equations that jump, that cannot be drawn in most places, or that nothing meets. The work is bounded by what the class states.
    [Property(MaxTest = 300)]
    public Property Solve_AnyEquations_EndsWithinTheBoundedWork() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue - 1).ToArbitrary(),
        seed =>
        {
            var random = new Random(seed);
            int unknowns = random.Next(1, 9);
            int equations = random.Next(1, 6);
            double[] a = [.. Enumerable.Range(0, unknowns * equations).Select(_ => random.NextDouble() - 0.5)];
            double jump = random.NextDouble() * 10;
            bool knows = random.Next(2) == 0;
            var hostile = new Equations(
                (x, r) =>
                {
                    for (int i = 0; i < equations; i++)
                    {
                        double sum = Math.Floor(x[0]) * jump;
                        for (int j = 0; j < unknowns; j++)
                        {
                            sum += a[(i * unknowns) + j] * Math.Sin(x[j] * 3) * 20;
                        }

                        r[i] = x[unknowns - 1] > 5 ? double.NaN : sum - 7;
                    }
                },
                (x, s) => Array.Copy(a, s, a.Length))
            {
                KnowsSlopes = knows,
            };
            LeastChange room = Room([.. Enumerable.Range(0, unknowns).Select(_ => (random.NextDouble() * 10) - 5)], equations);

            LeastChangeEnd end = room.Solve(hostile);

            int steps = 2 * (LeastChange.MostSteps + 1) + 160;
            return room.Steps <= steps && room.Drawings <= (steps + 4) * (LeastChange.MostTrials + unknowns + 1)
                && (end is not (LeastChangeEnd.Least or LeastChangeEnd.Met or LeastChangeEnd.Unchanged) || room.Residuals.All(r => Math.Abs(r) <= LeastChange.ToleranceMm));
        });

    // Planted: equations that hold together, and one that contradicts two to four of them, however the equations are shuffled. The sum of the first few is asked
    // to be something else than the sum of what they ask for, so exactly these contradict each other: leave out any one and the rest hold.
    [Property(MaxTest = 200)]
    public Property Isolate_APlantedConflict_IsNamedExactly() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue - 1).ToArbitrary(),
        seed =>
        {
            var random = new Random(seed);
            int unknowns = random.Next(8, 30);
            int honest = random.Next(4, 8);
            int members = random.Next(1, 5);
            double off = Math.Pow(10, random.Next(-8, 2));
            double[][] rows = new double[honest + 1][];
            double[] wanted = new double[honest + 1];
            for (int i = 0; i < honest; i++)
            {
                rows[i] = [.. Enumerable.Range(0, unknowns).Select(_ => random.NextDouble() - 0.5)];
                wanted[i] = (random.NextDouble() - 0.5) * 20;
            }

            int[] chosen = [.. Enumerable.Range(0, honest).OrderBy(_ => random.Next()).Take(members)];
            rows[honest] = [.. Enumerable.Range(0, unknowns).Select(j => chosen.Sum(i => rows[i][j]))];
            wanted[honest] = chosen.Sum(i => wanted[i]) + off;
            int[] order = [.. Enumerable.Range(0, honest + 1).OrderBy(_ => random.Next())];
            var clash = new Equations(
                (x, r) =>
                {
                    for (int i = 0; i <= honest; i++)
                    {
                        r[i] = rows[order[i]].Zip(x, (a, b) => a * b).Sum() - wanted[order[i]];
                    }
                },
                (x, s) =>
                {
                    for (int i = 0; i <= honest; i++)
                    {
                        rows[order[i]].CopyTo(s, i * unknowns);
                    }
                });
            LeastChange room = Room(new double[unknowns], honest + 1);

            LeastChangeEnd end = room.Solve(clash);
            Conflict.Isolate(room, clash);

            int[] named = [.. Enumerable.Range(0, honest + 1).Where(i => room.Asked[i]).Select(i => order[i]).OrderBy(i => i)];
            return (end == LeastChangeEnd.NotMet && named.SequenceEqual(chosen.Append(honest).OrderBy(i => i)))
                .Label($"{end}: {string.Join(" ", named)} instead of {string.Join(" ", chosen.Append(honest).OrderBy(i => i))}, off by {off}");
        });

    // The optimality conditions of the problem, measured without the solver: at the least change the way back to the beginning is a sum of slopes, but for what limits hold.
    [Property(MaxTest = 200)]
    public Property Solve_RandomPlanesWithLimits_MeetsTheConditionsOfOptimality() => Prop.ForAll(
        Gen.Choose(0, int.MaxValue - 1).ToArbitrary(),
        seed =>
        {
            var random = new Random(seed);
            int n = random.Next(3, 12);
            double[] a = [.. Enumerable.Range(0, n).Select(_ => 0.2 + random.NextDouble())];
            double wanted = random.NextDouble() * 5 * n;
            LeastChange room = Room(new double[n], 1);
            for (int j = 0; j < n; j++)
            {
                room.Most[j] = random.NextDouble() * 8;
            }

            LeastChangeEnd end = room.Solve(new Equations((x, r) => r[0] = a.Zip(x, (p, q) => p * q).Sum() - wanted, (x, s) => a.CopyTo(s, 0)));
            double most = a.Zip(room.Most, (p, q) => p * q).Sum();
            if (most < wanted - 1e-6)
            {
                return end == LeastChangeEnd.NotMet;
            }

            // x_j = min(limit, k a_j) for one k: a water level.
            double k = Enumerable.Range(0, n).Where(j => room.LimitOf(j) == 0).Select(j => room.Found[j] / a[j]).DefaultIfEmpty(double.NaN).First();
            return end is LeastChangeEnd.Least or LeastChangeEnd.Unchanged
                && (double.IsNaN(k) || Enumerable.Range(0, n).All(j => Math.Abs(room.Found[j] - Math.Min(room.Most[j], k * a[j])) < 1e-5));
        });

    private static Equations Circle() => new(
        (x, r) => r[0] = Math.Sqrt((x[0] * x[0]) + (x[1] * x[1])) - 50,
        (x, s) => (s[0], s[1]) = (x[0] / Math.Sqrt((x[0] * x[0]) + (x[1] * x[1])), x[1] / Math.Sqrt((x[0] * x[0]) + (x[1] * x[1]))));

    private static LeastChange Room(double[] start, int equations)
    {
        var room = new LeastChange(start.Length, equations);
        for (int i = 0; i < start.Length; i++)
        {
            (room.Start[i], room.Least[i], room.Most[i]) = (start[i], -Limit, Limit);
        }

        return room;
    }

    private sealed class Equations(Action<double[], double[]> measure, Action<double[], double[]> slopes) : ILeastChangeProblem
    {
        private double[] _last = [];

        public bool KnowsSlopes { get; init; } = true;

        public bool TryMeasure(double[] unknowns, double[] residuals)
        {
            _last = [.. unknowns];
            measure(unknowns, residuals);
            return true;
        }

        public bool TryGuessSlopes(double[] into) => false;

        public void Slopes(double[] into) => slopes(_last, into);
    }
}
