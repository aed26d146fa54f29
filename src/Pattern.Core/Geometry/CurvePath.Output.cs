using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Geometry;

/// <content>The walk-out: handing a path to somebody else's drawing interface, without allocation.</content>
public sealed partial class CurvePath
{
    // Both have an optional parameter, yet cannot be taken for each other: the second passes its sink by reference.
#pragma warning disable RS0026
    /// <summary>Hands the path to a sink, segment by segment.</summary>
    /// <param name="sink">Who receives it.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="arcs">Whether arcs are handed out as cubics or as arcs.</param>
    /// <exception cref="ArgumentNullException">The sink is null.</exception>
    public void WriteTo(IPathSink sink, LengthUnit unit, ArcOutput arcs = ArcOutput.Cubics)
    {
        _ = Guard.NotNull(sink, nameof(sink));
        Write(ref sink, unit, arcs);
    }

    /// <summary>Hands the path to a sink that is a struct, without boxing it.</summary>
    /// <typeparam name="TSink">The type of the sink.</typeparam>
    /// <param name="sink">Who receives it.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="arcs">Whether arcs are handed out as cubics or as arcs.</param>
    public void WriteTo<TSink>(ref TSink sink, LengthUnit unit, ArcOutput arcs = ArcOutput.Cubics)
        where TSink : struct, IPathSink
        => Write(ref sink, unit, arcs);
#pragma warning restore RS0026

    /// <summary>Hands the path to a sink as straight lines that keep within a tolerance of it.</summary>
    /// <param name="sink">Who receives it.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="tolerance">The largest distance between the path and the lines: a bound that holds, not an estimate.</param>
    /// <exception cref="ArgumentNullException">The sink is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that a curve would need
    /// more than a million chords.</exception>
    public void FlattenTo(IPathSink sink, LengthUnit unit, Length tolerance)
    {
        _ = Guard.NotNull(sink, nameof(sink));
        WriteFlattened(ref sink, unit, tolerance);
    }

    /// <summary>Hands the path to a sink that is a struct as straight lines that keep within a tolerance of it.</summary>
    /// <typeparam name="TSink">The type of the sink.</typeparam>
    /// <param name="sink">Who receives it.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="tolerance">The largest distance between the path and the lines: a bound that holds, not an estimate.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that a curve would need
    /// more than a million chords.</exception>
    public void FlattenTo<TSink>(ref TSink sink, LengthUnit unit, Length tolerance)
        where TSink : struct, IPathSink
        => WriteFlattened(ref sink, unit, tolerance);

    /// <summary>The vertices, start and end included, of a polyline that keeps within a tolerance of the path.</summary>
    /// <remarks>All vertices lie on the path, corners are kept, and the tolerance is a bound that holds, not an estimate.
    /// On a closed path the last vertex is the start again.</remarks>
    /// <param name="tolerance">The largest distance between the path and the polyline.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that a curve would need
    /// more than a million chords.</exception>
    [Pure]
    public unsafe Point2D[] Flatten(Length tolerance)
    {
        double toleranceMm = CheckedFlatness(tolerance, nameof(tolerance));
        var vertices = new Point2D[FlattenRaw(toleranceMm, null, 0)];
        fixed (Point2D* first = vertices)
        {
            FlattenRaw(toleranceMm, first, vertices.Length);
        }

        return vertices;
    }

    /// <summary>How many verbs and how many numbers <c>CopyTo</c> writes.</summary>
    /// <param name="arcs">Whether arcs are written as cubics or as arcs.</param>
    /// <param name="verbs">Receives the number of verbs.</param>
    /// <param name="numbers">Receives the number of coordinates and angles.</param>
    public void MeasureCopy(ArcOutput arcs, out int verbs, out int numbers)
    {
        var counter = default(CountingSink);
        WriteTo(ref counter, LengthUnit.Millimeter, arcs);
        verbs = counter.Verbs;
        numbers = counter.Numbers;
    }

    /// <summary>The factor from millimetres; written out for the units of drawings, because a conversion by UnitsNet allocates.</summary>
    internal static double UnitsPerMm(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimeter => 1,
        LengthUnit.Centimeter => 0.1,
        LengthUnit.Meter => 0.001,
        LengthUnit.Micrometer => 1000,
        LengthUnit.Inch => 1 / 25.4,
        LengthUnit.Foot => 1 / 304.8,
        LengthUnit.DtpPoint => 72 / 25.4,
        _ => Length.FromMillimeters(1).As(unit),
    };

    /// <summary>Writes as many vertices as there is room for; returns how many there are in all.</summary>
    internal unsafe int FlattenRaw(double toleranceMm, Point2D* vertices, int room)
    {
        const int Chunk = 64;
        Point2D* rest = stackalloc Point2D[Chunk];
        int count = 0;
        if (room > 0)
        {
            vertices[0] = Start;
        }

        count++;
        for (int i = 0; i < _segments.Length; i++)
        {
            var walk = new SegmentFlattening(_segments[i], toleranceMm);
            int more;
            do
            {
                // What does not fit is counted all the same, so that the caller learns how much room is needed.
                more = count < room ? walk.Fill(vertices + count, room - count) : walk.Fill(rest, Chunk);
                count += more;
            }
            while (more > 0);
        }

        return count;
    }

    private void Write<TSink>(ref TSink sink, LengthUnit unit, ArcOutput arcs)
        where TSink : IPathSink
    {
        double k = UnitsPerMm(unit);
        Point2D start = Start;
        sink.MoveTo(k * start.XMm, k * start.YMm);
        for (int i = 0; i < _segments.Length; i++)
        {
            ref readonly PathSegment segment = ref _segments[i];
            switch (segment.Kind)
            {
                case PathSegmentKind.Line:
                    sink.LineTo(k * segment.CubicRaw.X3, k * segment.CubicRaw.Y3);
                    break;
                case PathSegmentKind.Cubic:
                    Cubic(ref sink, segment.CubicRaw, k);
                    break;
                default:
                    CircularArc arc = segment.ArcRaw;
                    if (arcs == ArcOutput.Arcs)
                    {
                        Point2D end = arc.End;
                        sink.ArcTo(k * arc.CentreXMm, k * arc.CentreYMm, k * arc.RadiusMm, arc.StartRad, arc.SweepRad, k * end.XMm, k * end.YMm);
                        break;
                    }

                    int pieces = arc.CubicCount(GeometryTolerance.ArcAsCubicsMm);
                    for (int piece = 0; piece < pieces; piece++)
                    {
                        Cubic(ref sink, arc.CubicPiece(piece, pieces), k);
                    }

                    break;
            }
        }

        if (IsClosed)
        {
            sink.Close();
        }
    }

    private unsafe void WriteFlattened<TSink>(ref TSink sink, LengthUnit unit, Length tolerance)
        where TSink : IPathSink
    {
        const int Chunk = 64;
        double toleranceMm = CheckedFlatness(tolerance, nameof(tolerance));
        double k = UnitsPerMm(unit);
        Point2D start = Start;
        sink.MoveTo(k * start.XMm, k * start.YMm);
        Point2D* vertices = stackalloc Point2D[Chunk];
        for (int i = 0; i < _segments.Length; i++)
        {
            var walk = new SegmentFlattening(_segments[i], toleranceMm);
            int count;
            while ((count = walk.Fill(vertices, Chunk)) > 0)
            {
                for (int j = 0; j < count; j++)
                {
                    sink.LineTo(k * vertices[j].XMm, k * vertices[j].YMm);
                }
            }
        }

        if (IsClosed)
        {
            sink.Close();
        }
    }

    private static void Cubic<TSink>(ref TSink sink, in CubicBezier c, double k)
        where TSink : IPathSink
        => sink.CubicTo(k * c.X1, k * c.Y1, k * c.X2, k * c.Y2, k * c.X3, k * c.Y3);

    private double CheckedFlatness(Length tolerance, string parameter)
    {
        double toleranceMm = 0;
        foreach (PathSegment segment in _segments)
        {
            toleranceMm = SegmentFlattening.CheckedMm(segment, tolerance, parameter);
        }

        return toleranceMm;
    }

    /// <summary>Counts what a copy would write.</summary>
    private struct CountingSink : IPathSink
    {
        internal int Verbs;
        internal int Numbers;

        public void MoveTo(double x, double y) => Count(2);

        public void LineTo(double x, double y) => Count(2);

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y) => Count(6);

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y) => Count(7);

        public void Close() => Count(0);

        private void Count(int numbers)
        {
            Verbs++;
            Numbers += numbers;
        }
    }
}
