using BenchmarkDotNet.Attributes;
using Pattern.Core.Geometry;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Benchmarks.Geometry;

/// <summary>What a draft does with curves, one at a time.</summary>
/// <remarks>The inputs are no constants to the compiler, so that it computes nothing beforehand.</remarks>
[MemoryDiagnoser]
[WarmupCount(6)]
[IterationCount(9)]
public class ConstructionBenchmarks
{
    private readonly Point2D _start = Point2D.FromMillimeters(0, 6);
    private readonly Point2D _end = Point2D.FromMillimeters(205, 12);
    private readonly Direction _endDirection = Direction.FromAngle(Angle.FromDegrees(12));
    private readonly Length _required = Length.FromMillimeters(206);
    private CubicBezier _waist;
    private readonly Line _dart = Line.Vertical(Point2D.FromMillimeters(100, 0));
    private static readonly Point2D[] Points =
        [Point2D.FromMillimeters(0, 6), Point2D.FromMillimeters(60, 0), Point2D.FromMillimeters(120, 4), Point2D.FromMillimeters(205, 12)];

    private static readonly CurvePath Outline = CurvePath.Through(Points).LineTo(Point2D.FromMillimeters(205, -600))
        .LineTo(Point2D.FromMillimeters(0, -600)).Closed();

    [GlobalSetup]
    public void Draw() => _waist = Between();

    [Benchmark]
    public CubicBezier Between() => CubicBezier.Between(_start, Direction.Right, _end, _endDirection);

    [Benchmark]
    public CubicBezier BetweenWithLength() => CubicBezier.BetweenWithLength(_start, Direction.Right, _end, _endDirection, _required);

    [Benchmark]
    public int IntersectLine() => _waist.IntersectLine(_dart, out _);

    [Benchmark]
    public double MaxCurvature() => _waist.MaxCurvaturePerMm(out _);

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
