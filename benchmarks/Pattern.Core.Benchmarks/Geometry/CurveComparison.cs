using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using System.Threading;
using Pattern.Core.Geometry;
using SkiaSharp;
using SvgPathProperties;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Time and accuracy of every case side by side: <c>dotnet run -c Release -- compare</c>.</summary>
/// <remarks>On a machine that others use too, cases that run one after the other meet different loads, and their ratios mean
/// nothing. Here all cases take turns, a thousand curves each, and the best of many turns counts. BenchmarkDotNet has the
/// same cases, with the memory they allocate.</remarks>
internal static class CurveComparison
{
    private const int Turns = 200;

    internal static void Print()
    {
        var lengths = new ArcLengthBenchmarks();
        var inverses = new InverseLengthBenchmarks();
        var flattenings = new FlatteningBenchmarks();
        Func<int, double> Length(Func<int, double> measure) => i => Math.Abs(measure(i) - BenchCurves.Lengths[i]);
        Func<int, double> Place(Func<int, Point2D> find) => i => find(i).DistanceMm(BenchCurves.WantedPoints[i]);
        Case[] cases =
        [
            new("length", "this kernel, 1e-9", lengths.Kernel_1e9, Worst(Length(i => BenchCurves.Curves[i].LengthMm()))),
            new("length", "this kernel, 1e-3", lengths.Kernel_1e3, Worst(Length(i => BenchCurves.Curves[i].LengthMm(1e-3)))),
            new("length", "MathNet Gauss, 64 points", lengths.MathNet_Gauss_64, Worst(Length(ArcLengthBenchmarks.MathNetFixed))),
            new("length", "MathNet Gauss-Kronrod, adaptive", lengths.MathNet_GaussKronrod_1e9, Worst(Length(ArcLengthBenchmarks.MathNet))),
            new("length", "SkiaSharp, scale 1", lengths.Skia_Scale1, Worst(Length(i => ArcLengthBenchmarks.Skia(i, 1)))),
            new("length", "SkiaSharp, scale 1000", lengths.Skia_Scale1000, Worst(Length(i => ArcLengthBenchmarks.Skia(i, 1000)))),
            new("length", "SvgPathProperties, with parsing", lengths.SvgPathProperties_WithParsing, Worst(Length(ArcLengthBenchmarks.Svg))),
            new("inverse", "this kernel, 1e-9", inverses.Kernel_1e9, Worst(Place(i => BenchCurves.Curves[i].PointAtRaw(BenchCurves.Curves[i].ParameterAtLengthMm(BenchCurves.Wanted[i]))))),
            new("inverse", "MathNet Brent over Gauss, 64 points", inverses.MathNet_BrentOverGauss, Worst(Place(i => BenchCurves.Curves[i].PointAtRaw(InverseLengthBenchmarks.MathNet(i))))),
            new("inverse", "SkiaSharp, scale 1000", inverses.Skia_Scale1000, Worst(Place(SkiaPlace))),
            new("inverse", "SvgPathProperties, with parsing", inverses.SvgPathProperties_WithParsing, Worst(Place(SvgPlace))),
            new("flatten 0.05", "this kernel", () => flattenings.Kernel(), Flattening(c => c.Flatten(UnitsNet.Length.FromMillimeters(0.05)))),
            new("flatten 0.05", "halving until flat", () => flattenings.Halving(), Flattening(Halved)),
        ];

        var best = new double[cases.Length];
        Array.Fill(best, double.MaxValue);
        for (int turn = 0; turn < Turns; turn++)
        {
            for (int i = 0; i < cases.Length; i++)
            {
                long start = Stopwatch.GetTimestamp();
                cases[i].Run();
                best[i] = Math.Min(best[i], Stopwatch.GetElapsedTime(start).TotalNanoseconds / BenchCurves.Count);
            }

            // Leaves the compiler time to finish.
            Thread.Sleep(turn < 20 ? 50 : 0);
        }

        double kernel = 1;
        for (int i = 0; i < cases.Length; i++)
        {
            kernel = i == 0 || cases[i].Group != cases[i - 1].Group ? best[i] : kernel;
            Console.WriteLine(string.Format(
                CultureInfo.InvariantCulture, "| {0} | {1} | {2:0.00} | {3:0} ns | {4} |", cases[i].Group, cases[i].Name, best[i] / kernel, best[i], cases[i].Accuracy));
        }
    }

    /// <summary>What flattening is off by, without a clock.</summary>
    internal static void PrintFlattening()
    {
        Console.WriteLine("this kernel: " + Flattening(c => c.Flatten(UnitsNet.Length.FromMillimeters(0.05))));
        Console.WriteLine("halving until flat: " + Flattening(Halved));
    }

    private static string Worst(Func<int, double> error)
        => string.Format(CultureInfo.InvariantCulture, "{0:0.0e+0} mm", Enumerable.Range(0, BenchCurves.Count).Max(error));

    private static string Flattening(Func<CubicBezier, IReadOnlyList<Point2D>> flatten)
    {
        (double points, double toAnyChord, double inOrder, int missed) = FlatteningBenchmarks.Accuracy(flatten);
        return string.Format(
            CultureInfo.InvariantCulture,
            "{0:0.0} points a curve, off by {1:0.00000} mm, in order {2:0.00000} mm, more than 0.0501 mm on {3} curves",
            points,
            toAnyChord,
            inOrder,
            missed);
    }

    private static Point2D SkiaPlace(int i)
    {
        SKPoint p = InverseLengthBenchmarks.Skia(i, 1000);
        return new Point2D(p.X, p.Y);
    }

    private static Point2D SvgPlace(int i)
    {
        SvgPathProperties.Base.Point p = new SvgPath(BenchCurves.SvgTexts[i]).GetPointAtLength(BenchCurves.Wanted[i]);
        return new Point2D(p.X, p.Y);
    }

    private static Point2D[] Halved(CubicBezier curve)
    {
        var buffer = new Point2D[10_000];
        buffer[0] = curve.Start;
        return buffer.Take(FlatteningBenchmarks.Halve(curve, 0.05, buffer, 1, 0)).ToArray();
    }

    private sealed record Case(string Group, string Name, Func<double> Run, string Accuracy);
}
