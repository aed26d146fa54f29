using System;
using Pattern.Core.Diagnostics;
using UnitsNet;
using UnitsNet.Units;

namespace Pattern.Core.Geometry;

/// <content>The walk-out into buffers that the caller owns: arrays, and spans where there are spans. What was compiled against arrays runs on both.</content>
public sealed partial class CurvePath
{
    // Both copies have an optional parameter, yet cannot be taken for each other: an array is an array before it is a span.
#pragma warning disable RS0026
#if NET
    /// <summary>Copies the path into two buffers: what to do, and the numbers for it.</summary>
    /// <param name="verbs">Receives the steps.</param>
    /// <param name="numbers">Receives the numbers of each step, see <see cref="PathVerb"/>.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="arcs">Whether arcs are written as cubics or as arcs.</param>
    /// <returns>How many verbs were written.</returns>
    /// <exception cref="ArgumentException">A buffer is too small: <see cref="MeasureCopy"/> tells how much is needed.</exception>
    public unsafe int CopyTo(Span<PathVerb> verbs, Span<double> numbers, LengthUnit unit, ArcOutput arcs = ArcOutput.Cubics)
    {
        fixed (PathVerb* firstVerb = verbs)
        fixed (double* firstNumber = numbers)
        {
            return CopyRaw(firstVerb, verbs.Length, firstNumber, numbers.Length, unit, arcs);
        }
    }

    /// <summary>Writes the vertices, start and end included, of a polyline that keeps within a tolerance of the path.</summary>
    /// <param name="tolerance">The largest distance between the path and the polyline: a bound that holds.</param>
    /// <param name="vertices">Receives the vertices, as many as there is room for.</param>
    /// <returns>How many vertices there are in all, which may be more than there was room for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that a curve would need
    /// more than a million chords.</exception>
    public unsafe int Flatten(Length tolerance, Span<Point2D> vertices)
    {
        fixed (Point2D* first = vertices)
        {
            return FlattenRaw(CheckedFlatness(tolerance, nameof(tolerance)), first, vertices.Length);
        }
    }
#endif

    /// <summary>Copies the path into two buffers: what to do, and the numbers for it.</summary>
    /// <param name="verbs">Receives the steps.</param>
    /// <param name="numbers">Receives the numbers of each step, see <see cref="PathVerb"/>.</param>
    /// <param name="unit">The unit of every coordinate.</param>
    /// <param name="arcs">Whether arcs are written as cubics or as arcs.</param>
    /// <returns>How many verbs were written.</returns>
    /// <exception cref="ArgumentException">A buffer is too small: <see cref="MeasureCopy"/> tells how much is needed.</exception>
    public unsafe int CopyTo(PathVerb[] verbs, double[] numbers, LengthUnit unit, ArcOutput arcs = ArcOutput.Cubics)
    {
        fixed (PathVerb* firstVerb = Guard.NotNull(verbs, nameof(verbs)))
        fixed (double* firstNumber = Guard.NotNull(numbers, nameof(numbers)))
        {
            return CopyRaw(firstVerb, verbs.Length, firstNumber, numbers.Length, unit, arcs);
        }
    }

    /// <summary>Writes the vertices, start and end included, of a polyline that keeps within a tolerance of the path.</summary>
    /// <param name="tolerance">The largest distance between the path and the polyline: a bound that holds.</param>
    /// <param name="vertices">Receives the vertices, as many as there is room for.</param>
    /// <returns>How many vertices there are in all, which may be more than there was room for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not greater than zero, or so fine that a curve would need
    /// more than a million chords.</exception>
    public unsafe int Flatten(Length tolerance, Point2D[] vertices)
    {
        fixed (Point2D* first = Guard.NotNull(vertices, nameof(vertices)))
        {
            return FlattenRaw(CheckedFlatness(tolerance, nameof(tolerance)), first, vertices.Length);
        }
    }
#pragma warning restore RS0026

    private unsafe int CopyRaw(PathVerb* verbs, int verbRoom, double* numbers, int numberRoom, LengthUnit unit, ArcOutput arcs)
    {
        MeasureCopy(arcs, out int verbCount, out int numberCount);
        RequireRoom(verbRoom, verbCount, nameof(verbs));
        RequireRoom(numberRoom, numberCount, nameof(numbers));
        var sink = new BufferSink(verbs, numbers);
        WriteTo(ref sink, unit, arcs);
        return verbCount;
    }

    private static void RequireRoom(int room, int needed, string parameter)
    {
        if (room < needed)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.BufferTooSmall, parameter, room, needed), parameter);
        }
    }

    /// <summary>Writes into memory that was measured to be large enough.</summary>
    private unsafe struct BufferSink(PathVerb* verbs, double* numbers) : IPathSink
    {
        private PathVerb* _verb = verbs;
        private double* _number = numbers;

        public void MoveTo(double x, double y) => Put(PathVerb.Move, x, y);

        public void LineTo(double x, double y) => Put(PathVerb.Line, x, y);

        public void CubicTo(double startControlX, double startControlY, double endControlX, double endControlY, double x, double y)
        {
            *_verb++ = PathVerb.Cubic;
            *_number++ = startControlX;
            *_number++ = startControlY;
            *_number++ = endControlX;
            *_number++ = endControlY;
            *_number++ = x;
            *_number++ = y;
        }

        public void ArcTo(double centreX, double centreY, double radius, double startAngle, double sweep, double x, double y)
        {
            *_verb++ = PathVerb.Arc;
            *_number++ = centreX;
            *_number++ = centreY;
            *_number++ = radius;
            *_number++ = startAngle;
            *_number++ = sweep;
            *_number++ = x;
            *_number++ = y;
        }

        public void Close() => *_verb++ = PathVerb.Close;

        private void Put(PathVerb verb, double x, double y)
        {
            *_verb++ = verb;
            *_number++ = x;
            *_number++ = y;
        }
    }
}
