using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Integration;
using Pattern.Core.Geometry;
using SkiaSharp;
using SvgPathProperties;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>Arc length of a thousand cubics; the times are per curve.</summary>
[MemoryDiagnoser]
[WarmupCount(6)]
[IterationCount(9)]
public class ArcLengthBenchmarks
{
    [Benchmark(Baseline = true, OperationsPerInvoke = BenchCurves.Count)]
    public double Kernel_1e9() => Sum(1e-9);

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double Kernel_1e3() => Sum(1e-3);

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double MathNet_GaussKronrod_1e9()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += MathNet(i);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double MathNet_Gauss_64()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += MathNetFixed(i);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double Skia_Scale1000()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += Skia(i, 1000);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double Skia_Scale1()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += Skia(i, 1);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double SvgPathProperties_WithParsing()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += Svg(i);
        }

        return sum;
    }

    internal static double MathNet(int i)
    {
        CubicBezier c = BenchCurves.Curves[i];
        return GaussKronrodRule.Integrate(t => c.DerivativeAtRaw(t).LengthMm, 0, 1, out _, out _, 1e-12, 20, 15);
    }

    internal static double MathNetFixed(int i)
    {
        CubicBezier c = BenchCurves.Curves[i];
        return GaussLegendreRule.Integrate(t => c.DerivativeAtRaw(t).LengthMm, 0, 1, 64);
    }

    internal static double Skia(int i, float scale)
    {
        using var measure = new SKPathMeasure(BenchCurves.SkiaPaths[i], false, scale);
        return measure.Length;
    }

    internal static double Svg(int i) => new SvgPath(BenchCurves.SvgTexts[i]).Length;

    private static double Sum(double toleranceMm)
    {
        double sum = 0;
        CubicBezier[] curves = BenchCurves.Curves;
        for (int i = 0; i < curves.Length; i++)
        {
            sum += curves[i].LengthMm(toleranceMm);
        }

        return sum;
    }
}
