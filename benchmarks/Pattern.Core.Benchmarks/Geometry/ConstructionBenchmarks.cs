using BenchmarkDotNet.Attributes;
using Pattern.Core.Geometry;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>What a draft does with curves, one at a time.</summary>
[MemoryDiagnoser]
[WarmupCount(6)]
[IterationCount(9)]
public class ConstructionBenchmarks
{
    private static readonly Point2D Start = Point2D.FromMillimeters(0, 6);
    private static readonly Point2D End = Point2D.FromMillimeters(205, 12);
    private static readonly Direction EndDirection = Direction.FromAngle(Angle.FromDegrees(12));
    private static readonly Length Required = Length.FromMillimeters(206);
    private static readonly CubicBezier Waist = CubicBezier.Between(Start, Direction.Right, End, EndDirection);
    private static readonly Line Dart = Line.Vertical(Point2D.FromMillimeters(100, 0));
    private static readonly Point2D[] Points = [Start, Point2D.FromMillimeters(60, 0), Point2D.FromMillimeters(120, 4), End];

    private static readonly CurvePath Outline = CurvePath.Through(Points).LineTo(Point2D.FromMillimeters(205, -600))
        .LineTo(Point2D.FromMillimeters(0, -600)).Closed();

    [Benchmark]
    public CubicBezier Between() => CubicBezier.Between(Start, Direction.Right, End, EndDirection);

    [Benchmark]
    public CubicBezier BetweenWithLength() => CubicBezier.BetweenWithLength(Start, Direction.Right, End, EndDirection, Required);

    [Benchmark]
    public int IntersectLine() => Waist.IntersectLine(Dart, out _);

    [Benchmark]
    public double MaxCurvature() => Waist.MaxCurvaturePerMm(out _);

    [Benchmark]
    public CurvePath Through() => CurvePath.Through(Points);

    [Benchmark]
    public double WalkOut()
    {
        var sink = default(SumSink);
        Outline.WriteTo(ref sink, LengthUnit.Inch);
        return sink.Sum;
    }

    private struct SumSink : IPathSink
    {
        internal double Sum;

        public void MoveTo(double x, double y) => Sum += x + y;

        public void LineTo(double x, double y) => Sum += x + y;

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y) => Sum += x + y;

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => Sum += x + y;

        public void Close() => Sum += 1;
    }
}
