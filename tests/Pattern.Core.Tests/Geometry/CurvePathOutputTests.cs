using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Pattern.Core.Geometry;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Tests.Geometry;

public class CurvePathOutputTests
{
    private static readonly CurvePath Outline = CurvePath.From(P(25.4, 0)).LineTo(P(50.8, 0))
        .CurveTo(P(60, 10), P(70, 30), P(76.2, 50.8)).ArcAround(P(50.8, 50.8), Angle.FromDegrees(180)).Closed();

    [Fact]
    public void WriteTo_Inches_HandsOutEverySegmentInThatUnit()
    {
        var sink = new TextSink();
        Outline.WriteTo(sink, LengthUnit.Inch, ArcOutput.Arcs);

        Assert.Equal("M 1 0|L 2 0|C 2.3622 0.3937 2.7559 1.1811 3 2|A 2 2 1 0 3.1416 1 2|L 1 0|Z", string.Join("|", sink.Lines));
    }

    [Fact]
    public void WriteTo_ArcsAsCubics_StayOnTheCircle()
    {
        var sink = new TextSink();
        Outline.WriteTo(sink, LengthUnit.Millimeter);
        CurvePath back = sink.ToPath();

        Assert.DoesNotContain(sink.Lines, l => l.StartsWith("A", StringComparison.Ordinal));
        foreach (Point2D p in back.Flatten(Length.FromMillimeters(0.001)).Where(p => p.YMm > 51))
        {
            Assert.Equal(25.4, p.DistanceMm(P(50.8, 50.8)), GeometryTolerance.ArcAsCubics.Millimeters);
        }

        Assert.Equal(Outline.SignedArea.SquareMillimeters, back.SignedArea.SquareMillimeters, 1e-3);
    }

    [Fact]
    public void FlattenTo_ClosedPath_EndsAtTheStartAndKeepsCorners()
    {
        var sink = new TextSink();
        Outline.FlattenTo(sink, LengthUnit.Millimeter, Length.FromMillimeters(0.05));
        Point2D[] vertices = Outline.Flatten(Length.FromMillimeters(0.05));

        Assert.Equal("M 25.4 0", sink.Lines[0]);
        Assert.Equal("Z", sink.Lines[sink.Lines.Count - 1]);
        Assert.Equal(vertices.Length, sink.Lines.Count - 1);
        Assert.Contains(P(50.8, 0), vertices);
        Assert.Contains(P(76.2, 50.8), vertices);

        // The sagitta of every chord of the arc stays within the tolerance.
        List<Point2D> onArc = vertices.Where(v => v.YMm > 50.9).ToList();
        Assert.All(onArc.Zip(onArc.Skip(1), (a, b) => a.MidpointTo(b)), m => Assert.InRange(m.DistanceMm(P(50.8, 50.8)), 25.35, 25.4));
    }

    [Fact]
    public void CopyTo_Arrays_HoldsWhatASinkReceives()
    {
        Outline.MeasureCopy(ArcOutput.Arcs, out int verbCount, out int numberCount);
        var verbs = new PathVerb[verbCount];
        var numbers = new double[numberCount];

        Assert.Equal(verbCount, Outline.CopyTo(verbs, numbers, LengthUnit.Inch, ArcOutput.Arcs));
        Assert.Equal([PathVerb.Move, PathVerb.Line, PathVerb.Cubic, PathVerb.Arc, PathVerb.Line, PathVerb.Close], verbs);
        Assert.Equal(2 + 2 + 6 + 7 + 2, numberCount);
        Assert.Equal(3, numbers[8], 1e-12);
        Assert.Equal(Math.PI, numbers[14], 1e-12);
    }

    [Fact]
    public void CopyTo_TooSmall_Refused()
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => Outline.CopyTo(new PathVerb[3], new double[100], LengthUnit.Inch));

        Assert.StartsWith("PC3110", error.Message);
        Assert.Throws<ArgumentException>(() => Outline.CopyTo(new PathVerb[100], new double[3], LengthUnit.Inch));
    }

    [Fact]
    public void UnitsPerMm_EveryUnit_AgreesWithUnitsNet()
    {
        foreach (LengthUnit unit in Enum.GetValues(typeof(LengthUnit)))
        {
            double expected = Length.FromMillimeters(1).As(unit);
            Assert.Equal(expected, CurvePath.UnitsPerMm(unit), 1e-14 * expected);
        }
    }

    [Fact]
    public void WriteTo_NullSink_Refused() => Assert.Throws<ArgumentNullException>(() => Outline.WriteTo(null!, LengthUnit.Millimeter));

    [Fact]
    public void CurveCode_EveryMeasureAndWalkOut_AllocatesNothing()
    {
        CubicBezier curve = new(0, 0, 300, -60, 120, -400, 180, 400);
        var buffer = new Point2D[2000];
        var verbs = new PathVerb[100];
        var numbers = new double[500];
        Length length = Outline.Length;
        double Work()
        {
            var sum = default(SumSink);
            Outline.WriteTo(ref sum, LengthUnit.Inch);
            Outline.FlattenTo(ref sum, LengthUnit.Inch, Length.FromMillimeters(0.05));
            double t = curve.ParameterAtLengthMm(100);
            CurveIntersections hits = curve.IntersectionsWith(Line.Horizontal(P(0, 10)));
            return sum.Total + curve.Flatten(Length.FromMillimeters(0.01), buffer) + Outline.CopyTo(verbs, numbers, LengthUnit.Centimeter) + t
                + curve.LengthMm() + curve.SignedAreaMm2() + curve.MaxCurvaturePerMm(out _) + curve.TotalTurningRad() + curve.Bounds.TopMm + hits.Count
                + Outline.PointAtLength(length / 2).XMm + Outline.SignedAreaMm2 + Outline.Bounds.TopMm
                + CubicBezier.BetweenWithLength(P(0, 0), Direction.Right, P(100, 5), Direction.Right, Length.FromMillimeters(101)).X1;
        }

        double expected = Work();
        Work();
        long before = GC.GetAllocatedBytesForCurrentThread();
        double actual = Work();
        long after = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(expected, actual);
        Assert.Equal(0, after - before);
    }

    private static Point2D P(double x, double y) => Point2D.FromMillimeters(x, y);

    private struct SumSink : IPathSink
    {
        internal double Total;

        public void MoveTo(double x, double y) => Total += x + y;

        public void LineTo(double x, double y) => Total += x + y;

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y) => Total += x + y;

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => Total += x + y;

        public void Close() => Total += 1;
    }

    private sealed class TextSink : IPathSink
    {
        private readonly List<double[]> _numbers = [];

        internal List<string> Lines { get; } = [];

        public void MoveTo(double x, double y) => Add("M", x, y);

        public void LineTo(double x, double y) => Add("L", x, y);

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
            => Add("C", startControlX, startControlY, endControlX, endControlY, x, y);

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y)
            => Add("A", centreX, centreY, radius, startAngle, sweep, x, y);

        public void Close() => Add("Z");

        internal CurvePath ToPath()
        {
            double[] start = _numbers[0];
            CurvePath? path = null;
            foreach (double[] n in _numbers.Skip(1).Where(n => n.Length > 0))
            {
                Point2D end = P(n[n.Length - 2], n[n.Length - 1]);
                path = n.Length == 2
                    ? path?.LineTo(end) ?? CurvePath.From(P(start[0], start[1])).LineTo(end)
                    : path!.CurveTo(P(n[0], n[1]), P(n[2], n[3]), end);
            }

            return path!.Closed();
        }

        private void Add(string verb, params double[] numbers)
        {
            _numbers.Add(numbers);
            IEnumerable<string> words = numbers.Select(n => Math.Round(n, 4).ToString("0.####", CultureInfo.InvariantCulture));
            Lines.Add(string.Join(" ", new[] { verb }.Concat(words.Select(w => w == "-0" ? "0" : w))));
        }
    }
}
