using System;
using BenchmarkDotNet.Attributes;
using NetTopologySuite.Operation.Buffer;
using Pattern.Core.Geometry;
using SkiaSharp;
using UnitsNet;
using Nts = NetTopologySuite.Geometries;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>The outline of 20 segments offset outwards by 15 mm with round joins, trimmed.</summary>
/// <remarks>SkiaSharp strokes the outline at twice the width, which is trimmed only after it is simplified.</remarks>
[MemoryDiagnoser]
public class PathOffsetBenchmarks
{
    private static readonly Length Width = Length.FromMillimeters(-15);

    private readonly BufferParameters _parameters = new(16) { SimplifyFactor = 1e-6 };
    private readonly BufferParameters _fineParameters = new(128) { SimplifyFactor = 1e-6 };
    private CurvePath _outline = null!;
    private Nts.Polygon _polygon = null!;
    private Nts.Polygon _finePolygon = null!;
    private SKPath _path = null!;
    private SKPaint _paint = null!;

    [GlobalSetup]
    public void Setup()
    {
        _outline = QueryInputs.ReadOutline();
        _polygon = new Nts.Polygon(new Nts.LinearRing(QueryInputs.Flatten(_outline, 16)));
        _finePolygon = new Nts.Polygon(new Nts.LinearRing(QueryInputs.Flatten(_outline, 128)));
        var builder = new SKPathBuilder();
        builder.MoveTo((float)_outline.Start.XMm, (float)_outline.Start.YMm);
        foreach (PathSegment s in _outline.Segments)
        {
            if (s.Kind == PathSegmentKind.Line)
            {
                builder.LineTo((float)s.End.XMm, (float)s.End.YMm);
            }
            else
            {
                CubicBezier c = s.CubicRaw;
                builder.CubicTo((float)c.X1, (float)c.Y1, (float)c.X2, (float)c.Y2, (float)c.X3, (float)c.Y3);
            }
        }

        builder.Close();
        _path = builder.Detach();
        _paint = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = 30, StrokeJoin = SKStrokeJoin.Round };
        PathOffset own = PatternCore();
        double low = double.PositiveInfinity;
        double high = 0;
        int segments = 0;
        foreach (CurvePath path in own.Paths)
        {
            foreach (PathSegment s in path.Segments)
            {
                segments++;
                for (int i = 0; i <= 100; i++)
                {
                    double apart = _outline.ClosestTo(s.PointAtRaw(i / 100.0)).DistanceMm;
                    low = Math.Min(low, apart);
                    high = Math.Max(high, apart);
                }
            }
        }

        Console.WriteLine($"// accuracy: Pattern.Core: {segments} segments, {low - 15:+0.0e+0;-0.0e+0} to {high - 15:+0.0e+0;-0.0e+0} mm");
        ReportStroke();
        Report("NetTopologySuite, 16 chords", NetTopologySuiteChords());
        Report("NetTopologySuite, 128 chords", NetTopologySuiteFineChords());
    }

    [Benchmark(Baseline = true, Description = "Pattern.Core, 0.001 mm")]
    public PathOffset PatternCore() => _outline.Offset(Width, OffsetJoin.Round);

    [Benchmark(Description = "Pattern.Core, 0.1 mm")]
    public PathOffset PatternCoreCoarse() => _outline.Offset(Width, OffsetJoin.Round, Length.FromMillimeters(0.1));

    [Benchmark(Description = "NetTopologySuite, 16 chords a curve")]
    public Nts.Geometry NetTopologySuiteChords() => BufferOp.Buffer(_polygon, 15, _parameters);

    [Benchmark(Description = "NetTopologySuite, 128 chords a curve")]
    public Nts.Geometry NetTopologySuiteFineChords() => BufferOp.Buffer(_finePolygon, 15, _fineParameters);

    [Benchmark(Description = "SkiaSharp, stroked and simplified")]
    public SKPath SkiaSharpStroke()
    {
        using SKPath stroke = _paint.GetFillPath(_path)!;
        return stroke.Simplify();
    }

    private void ReportStroke()
    {
        // Both sides of the stroke are 15 mm away from the outline.
        double low = double.PositiveInfinity;
        double high = 0;
        using SKPath stroke = SkiaSharpStroke();
        using var measure = new SKPathMeasure(stroke, false, 100);
        do
        {
            for (int i = 0; i <= 4000; i++)
            {
                SKPoint at = measure.GetPosition(measure.Length * i / 4000);
                double apart = _outline.ClosestTo(new Point2D(at.X, at.Y)).DistanceMm;
                low = Math.Min(low, apart);
                high = Math.Max(high, apart);
            }
        }
        while (measure.NextContour());
        Console.WriteLine($"// accuracy: SkiaSharp: {low - 15:+0.0e+0;-0.0e+0} to {high - 15:+0.0e+0;-0.0e+0} mm");
    }

    private void Report(string name, Nts.Geometry result)
    {
        double low = double.PositiveInfinity;
        double high = 0;
        Nts.Coordinate[] ring = ((Nts.Polygon)result).ExteriorRing.Coordinates;
        for (int i = 0; i + 1 < ring.Length; i++)
        {
            for (int k = 0; k < 4; k++)
            {
                var p = new Point2D(ring[i].X + ((ring[i + 1].X - ring[i].X) * k / 4), ring[i].Y + ((ring[i + 1].Y - ring[i].Y) * k / 4));
                double apart = _outline.ClosestTo(p).DistanceMm;
                low = Math.Min(low, apart);
                high = Math.Max(high, apart);
            }
        }

        Console.WriteLine($"// accuracy: {name}: {ring.Length - 1} points, {low - 15:+0.0e+0;-0.0e+0} to {high - 15:+0.0e+0;-0.0e+0} mm");
    }
}
