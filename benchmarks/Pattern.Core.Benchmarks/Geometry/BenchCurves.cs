using System;
using System.Globalization;
using System.IO;
using System.Linq;
using Pattern.Core.Geometry;
using SkiaSharp;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The thousand cubics of Data/Geometry/bench-cubics.csv, with reference answers, in the form that each peer takes.</summary>
internal static class BenchCurves
{
    internal const int Count = 1000;

    static BenchCurves()
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Data", "Geometry", "bench-cubics.csv"));
        string[] names = lines[0].Split(',');
        double[][] rows = lines.Skip(1).Where(l => l.Length > 0).Select(l => l.Split(',').Select(f => double.Parse(f, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        int At(string name) => Array.IndexOf(names, name);
        Curves = rows.Select(r => new CubicBezier(r[0], r[1], r[2], r[3], r[4], r[5], r[6], r[7])).ToArray();
        Lengths = rows.Select(r => r[At("length")]).ToArray();
        Wanted = rows.Select(r => r[At("s")]).ToArray();
        WantedPoints = rows.Select(r => new Point2D(r[At("s_px")], r[At("s_py")])).ToArray();
        SvgTexts = Curves.Select(c => string.Format(
            CultureInfo.InvariantCulture, "M {0:r} {1:r} C {2:r} {3:r} {4:r} {5:r} {6:r} {7:r}", c.X0, c.Y0, c.X1, c.Y1, c.X2, c.Y2, c.X3, c.Y3)).ToArray();
        SkiaPaths = Curves.Select(ToSkia).ToArray();
        if (Curves.Length != Count)
        {
            throw new InvalidDataException("The bench set has changed its size.");
        }
    }

    internal static CubicBezier[] Curves { get; }

    internal static double[] Lengths { get; }

    internal static double[] Wanted { get; }

    internal static Point2D[] WantedPoints { get; }

    internal static string[] SvgTexts { get; }

    internal static SKPath[] SkiaPaths { get; }

    private static SKPath ToSkia(CubicBezier c)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo((float)c.X0, (float)c.Y0);
        builder.CubicTo((float)c.X1, (float)c.Y1, (float)c.X2, (float)c.Y2, (float)c.X3, (float)c.Y3);
        return builder.Detach();
    }
}
