using System;
using System.Diagnostics;
using System.Globalization;
using System.Threading;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Times of the queries side by side: <c>dotnet run -c Release -- compare-queries</c>. All cases take turns, so that they meet the same load, and the best counts.</summary>
internal static class QueryComparison
{
    private const int Turns = 120;

    internal static void Print()
    {
        var closest = new ClosestPointBenchmarks();
        var crossings = new IntersectionBenchmarks();
        var outline = new OutlineQueryBenchmarks();
        var containment = new ContainmentBenchmarks();
        var offset = new PathOffsetBenchmarks();
        closest.Setup();
        crossings.Setup();
        outline.Setup();
        containment.Setup();
        offset.Setup();
        Case[] cases =
        [
            new("nearest point", "this kernel", 1000, () => closest.PatternCore()),
            new("nearest point", "MathNet, roots of the quintic", 1000, () => closest.MathNetRoots()),
            new("nearest point", "NetTopologySuite, 200 chords", 1000, () => closest.NetTopologySuiteChords()),
            new("cubic with cubic", "this kernel", 999, () => crossings.PatternCore()),
            new("cubic with cubic", "NetTopologySuite, 100 chords", 999, () => crossings.NetTopologySuiteChords()),
            new("is it simple", "this kernel", 100, Times(100, () => outline.PatternCore())),
            new("is it simple", "NetTopologySuite, 25 chords a curve", 100, Times(100, () => outline.NetTopologySuiteChords())),
            new("is it inside", "this kernel", 400, () => containment.PatternCore()),
            new("is it inside", "NetTopologySuite, 25 chords a curve", 400, () => containment.NetTopologySuiteSimple()),
            new("is it inside", "NetTopologySuite, the same, indexed beforehand", 400, () => containment.NetTopologySuiteIndexed()),
            new("offset", "this kernel, 0.001 mm", 10, Times(10, () => offset.PatternCore())),
            new("offset", "this kernel, 0.1 mm", 10, Times(10, () => offset.PatternCoreCoarse())),
            new("offset", "NetTopologySuite, 16 chords a curve", 10, Times(10, () => offset.NetTopologySuiteChords())),
            new("offset", "NetTopologySuite, 128 chords a curve", 10, Times(10, () => offset.NetTopologySuiteFineChords())),
            new("offset", "SkiaSharp, stroked and simplified", 10, Times(10, () => offset.SkiaSharpStroke().Dispose())),
        ];

        var best = new double[cases.Length];
        Array.Fill(best, double.MaxValue);
        for (int turn = 0; turn < Turns; turn++)
        {
            for (int i = 0; i < cases.Length; i++)
            {
                long start = Stopwatch.GetTimestamp();
                cases[i].Run();
                best[i] = Math.Min(best[i], Stopwatch.GetElapsedTime(start).TotalNanoseconds / cases[i].Count);
            }

            // Leaves the compiler time to finish.
            Thread.Sleep(turn < 20 ? 50 : 0);
        }

        double kernel = 1;
        for (int i = 0; i < cases.Length; i++)
        {
            kernel = i == 0 || cases[i].Group != cases[i - 1].Group ? best[i] : kernel;
            Console.WriteLine(string.Format(
                CultureInfo.InvariantCulture, "| {0} | {1} | {2:0.00} | {3:0} ns |", cases[i].Group, cases[i].Name, best[i] / kernel, best[i]));
        }
    }

    private static Action Times(int count, Action run) => () =>
    {
        for (int i = 0; i < count; i++)
        {
            run();
        }
    };

    private sealed record Case(string Group, string Name, int Count, Action Run);
}
