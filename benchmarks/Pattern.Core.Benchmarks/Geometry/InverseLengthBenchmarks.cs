using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;
using Pattern.Core.Geometry;
using SkiaSharp;
using SvgPathProperties;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The point at 0.3 of the length of a thousand cubics, the length itself being given; the times are per curve.</summary>
[MemoryDiagnoser]
[WarmupCount(6)]
[IterationCount(9)]
public class InverseLengthBenchmarks
{
    [Benchmark(Baseline = true, OperationsPerInvoke = BenchCurves.Count)]
    public double Kernel_1e9()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += BenchCurves.Curves[i].ParameterAtLengthMm(BenchCurves.Wanted[i]);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double MathNet_BrentOverGauss()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += MathNet(i);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double Skia_Scale1000()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += Skia(i, 1000).X;
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = BenchCurves.Count)]
    public double SvgPathProperties_WithParsing()
    {
        double sum = 0;
        for (int i = 0; i < BenchCurves.Count; i++)
        {
            sum += new SvgPath(BenchCurves.SvgTexts[i]).GetPointAtLength(BenchCurves.Wanted[i]).X;
        }

        return sum;
    }

    internal static double MathNet(int i)
    {
        CubicBezier c = BenchCurves.Curves[i];
        double wanted = BenchCurves.Wanted[i];
        return Brent.FindRoot(t => GaussLegendreRule.Integrate(u => c.DerivativeAtRaw(u).LengthMm, 0, t, 64) - wanted, 0, 1, 1e-12);
    }

    internal static SKPoint Skia(int i, float scale)
    {
        using var measure = new SKPathMeasure(BenchCurves.SkiaPaths[i], false, scale);
        measure.GetPosition((float)BenchCurves.Wanted[i], out SKPoint point);
        return point;
    }
}
