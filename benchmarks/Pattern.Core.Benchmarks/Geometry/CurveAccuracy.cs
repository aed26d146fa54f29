using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Geometry;
using SkiaSharp;
using SvgPathProperties;
using UnitsNet;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The worst error of every case over the bench set, to stand beside its time: <c>dotnet run -c Release -- accuracy</c>.</summary>
internal static class CurveAccuracy
{
    internal static void Print()
    {
        double[] lengths = BenchCurves.Lengths;
        Line("length, kernel 1e-9", BenchCurves.Worst(i => Math.Abs(BenchCurves.Curves[i].LengthMm() - lengths[i])));
        Line("length, kernel 1e-3", BenchCurves.Worst(i => Math.Abs(BenchCurves.Curves[i].LengthMm(1e-3) - lengths[i])));
        Line("length, MathNet Gauss-Kronrod 1e-12", BenchCurves.Worst(i => Math.Abs(ArcLengthBenchmarks.MathNet(i) - lengths[i])));
        Line("length, MathNet Gauss 64", BenchCurves.Worst(i => Math.Abs(ArcLengthBenchmarks.MathNetFixed(i) - lengths[i])));
        Line("length, Skia scale 1000", BenchCurves.Worst(i => Math.Abs(ArcLengthBenchmarks.Skia(i, 1000) - lengths[i])));
        Line("length, Skia scale 1", BenchCurves.Worst(i => Math.Abs(ArcLengthBenchmarks.Skia(i, 1) - lengths[i])));
        Line("length, SvgPathProperties", BenchCurves.Worst(i => Math.Abs(ArcLengthBenchmarks.Svg(i) - lengths[i])));

        Line("inverse, kernel 1e-9", BenchCurves.Worst(i => Off(i, BenchCurves.Curves[i].PointAtRaw(BenchCurves.Curves[i].ParameterAtLengthMm(BenchCurves.Wanted[i])))));
        Line("inverse, MathNet Brent over Gauss 64", BenchCurves.Worst(i => Off(i, BenchCurves.Curves[i].PointAtRaw(InverseLengthBenchmarks.MathNet(i)))));
        Line("inverse, Skia scale 1000", BenchCurves.Worst(i =>
        {
            SKPoint p = InverseLengthBenchmarks.Skia(i, 1000);
            return Off(i, new Point2D(p.X, p.Y));
        }));
        Line("inverse, SvgPathProperties", BenchCurves.Worst(i =>
        {
            SvgPathProperties.Base.Point p = new SvgPath(BenchCurves.SvgTexts[i]).GetPointAtLength(BenchCurves.Wanted[i]);
            return Off(i, new Point2D(p.X, p.Y));
        }));

        Flattening("kernel", c => c.Flatten(Length.FromMillimeters(0.05)));
        var buffer = new Point2D[10_000];
        Flattening("halving", c =>
        {
            buffer[0] = c.Start;
            int count = FlatteningBenchmarks.Halve(c, 0.05, buffer, 1, 0);
            return buffer.Take(count).ToArray();
        });
    }

    private static void Flattening(string name, Func<CubicBezier, IReadOnlyList<Point2D>> flatten)
    {
        (double points, double deviation) = FlatteningBenchmarks.Accuracy(flatten);
        Console.WriteLine(string.Format(CultureInfo.InvariantCulture, "flatten 0.05, {0}: {1:0.0} points a curve, real deviation {2:0.00000} mm", name, points, deviation));
    }

    private static double Off(int i, Point2D point) => point.DistanceMm(BenchCurves.WantedPoints[i]);

    private static void Line(string name, double errorMm)
        => Console.WriteLine(string.Format(CultureInfo.InvariantCulture, "{0}: {1:0.0e+0} mm", name, errorMm));
}
