using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Diagnostics.Contracts;
using System.Threading;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>Segments that join end to start: an open line or a closed outline. Never changes.</summary>
/// <remarks>Every verb returns a new path, so that a chain can stop at any dot. Each <c>...To</c> copies the segments so
/// far; a path of thousands of segments is better made at once with <see cref="FromSegments"/>.</remarks>
/// <example><code>
/// CurvePath outline = CurvePath.From(Point2D.FromMillimeters(0, 0))
///     .LineTo(Point2D.FromMillimeters(100, 0))
///     .LineTo(Point2D.FromMillimeters(100, 50))
///     .Closed();
/// </code></example>
public sealed partial class CurvePath
{
    private readonly PathSegment[] _segments;

    // Length from the start to the start of each segment, and to the end; filled when first asked for.
    private double[]? _lengthsMm;

    // The segments for readers; filled when first asked for.
    private ReadOnlyCollection<PathSegment>? _list;

    private CurvePath(PathSegment[] segments, bool isClosed)
    {
        _segments = segments;
        IsClosed = isClosed;
    }

    /// <summary>The segments in order; at least one.</summary>
    public IReadOnlyList<PathSegment> Segments => Volatile.Read(ref _list) ?? (_list = new ReadOnlyCollection<PathSegment>(_segments));

    /// <summary>Whether the end is joined to the start.</summary>
    public bool IsClosed { get; }

    /// <summary>Where the path begins.</summary>
    public Point2D Start => _segments[0].Start;

    /// <summary>Where the path ends; on a closed path, the start.</summary>
    public Point2D End => IsClosed ? Start : _segments[_segments.Length - 1].End;

    /// <summary>The heading at the start.</summary>
    /// <exception cref="ConstructionException">The path is a single point.</exception>
    public Direction StartDirection
    {
        get
        {
            foreach (PathSegment segment in _segments)
            {
                if (segment.TryDirectionAtRaw(0, out Direction direction))
                {
                    return direction;
                }
            }

            throw new ConstructionException(DiagnosticCode.DirectionUndefined, "The path");
        }
    }

    /// <summary>The heading at the end.</summary>
    /// <exception cref="ConstructionException">The path is a single point.</exception>
    public Direction EndDirection
    {
        get
        {
            for (int i = _segments.Length - 1; i >= 0; i--)
            {
                if (_segments[i].TryDirectionAtRaw(1, out Direction direction))
                {
                    return direction;
                }
            }

            throw new ConstructionException(DiagnosticCode.DirectionUndefined, "The path");
        }
    }

    /// <summary>The length along the path, each segment to within <see cref="GeometryTolerance.Default"/>.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>The area inside a closed path, counter-clockwise positive; of an open path the area closed by a straight line from its end.</summary>
    internal Area SignedArea => Area.FromSquareMillimeters(SignedAreaMm2);

    /// <summary>The smallest upright box around the path.</summary>
    public BoundingBox Bounds
    {
        get
        {
            BoundingBox box = _segments[0].Bounds;
            for (int i = 1; i < _segments.Length; i++)
            {
                box = box.Union(_segments[i].Bounds);
            }

            return box;
        }
    }

    internal PathSegment[] SegmentsRaw => _segments;

    internal double LengthMm => LengthsMm[_segments.Length];

    internal double SignedAreaMm2
    {
        get
        {
            // Measured from the start, so that a small outline far from the origin keeps its digits.
            Transform2D toStart = Transform2D.Translation(Point2D.Origin - Start);
            double sum = 0;
            foreach (PathSegment segment in _segments)
            {
                sum += segment.TransformedRaw(toStart).SignedAreaMm2;
            }

            return sum;
        }
    }

    internal double[] LengthsMm
    {
        get
        {
            double[]? known = Volatile.Read(ref _lengthsMm);
            if (known is null)
            {
                known = new double[_segments.Length + 1];
                for (int i = 0; i < _segments.Length; i++)
                {
                    known[i + 1] = known[i] + _segments[i].LengthMm();
                }

                Volatile.Write(ref _lengthsMm, known);
            }

            return known;
        }
    }

    /// <summary>Puts the pencil on the paper.</summary>
    /// <param name="start">Where the path begins.</param>
    public static PathStart From(Point2D start) => new(start);

    /// <summary>Joins segments into an open path.</summary>
    /// <param name="segments">In order; each begins where the one before ends, to within <see cref="GeometryTolerance.Join"/>.</param>
    /// <exception cref="ArgumentException">There is no segment, or two do not meet.</exception>
    public static CurvePath FromSegments(IEnumerable<PathSegment> segments)
    {
        PathSegment[] array = new List<PathSegment>(Guard.NotNull(segments, nameof(segments))).ToArray();
        if (array.Length == 0)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.PathEmpty), nameof(segments));
        }

        for (int i = 1; i < array.Length; i++)
        {
            RequireMeet(array[i - 1].End, array[i].Start, i + 1, nameof(segments));
        }

        return new CurvePath(array, isClosed: false);
    }

    /// <summary>Makes a path of one cubic.</summary>
    /// <param name="cubic">The cubic.</param>
    public static CurvePath FromCubic(CubicBezier cubic) => Trusted(PathSegment.FromCubic(cubic));

    /// <summary>Makes a path of one line.</summary>
    /// <param name="line">The line.</param>
    public static CurvePath FromLine(LineSegment line) => Trusted(PathSegment.FromLine(line));

    /// <summary>Makes a path of one arc.</summary>
    /// <param name="arc">The arc.</param>
    public static CurvePath FromArc(CircularArc arc) => Trusted(PathSegment.FromArc(arc));

    /// <summary>Goes on with a straight line.</summary>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath LineTo(Point2D end) => With(PathSegment.FromLine(new LineSegment(End, end)));

    /// <summary>Goes on with a cubic curve.</summary>
    /// <param name="startControl">The control point it leaves towards.</param>
    /// <param name="endControl">The control point it arrives from.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath CurveTo(Point2D startControl, Point2D endControl, Point2D end)
        => With(PathSegment.FromCubic(new CubicBezier(End, startControl, endControl, end)));

    /// <summary>Goes on with the fairest curve that leaves and arrives with given headings.</summary>
    /// <param name="startDirection">The heading with which it leaves; another one than <see cref="EndDirection"/> makes a corner.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <exception cref="ArgumentException">Both ends are the same point.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath CurveTo(Direction startDirection, Point2D end, Direction endDirection)
        => With(PathSegment.FromCubic(CubicBezier.Between(End, startDirection, end, endDirection)));

    /// <summary>Goes on without a corner: the fairest curve that leaves with <see cref="EndDirection"/>.</summary>
    /// <param name="end">Where it ends.</param>
    /// <param name="endDirection">The heading with which it arrives.</param>
    /// <exception cref="ArgumentException">Both ends are the same point.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath SmoothTo(Point2D end, Direction endDirection) => CurveTo(EndDirection, end, endDirection);

    /// <summary>Goes on with an arc round a centre.</summary>
    /// <param name="centre">The centre of the circle.</param>
    /// <param name="sweep">How far round; counter-clockwise is positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sweep is more than a turn.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath ArcAround(Point2D centre, Angle sweep) => With(PathSegment.FromArc(CircularArc.Around(centre, End, sweep)));

    /// <summary>Goes on with an arc through a point.</summary>
    /// <param name="through">A point that it passes.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">The points lie on one straight line, or two are the same.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath ArcThrough(Point2D through, Point2D end) => With(PathSegment.FromArc(CircularArc.Through(End, through, end)));

    /// <summary>Goes on without a corner, with an arc: there is exactly one to each point.</summary>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">The end lies straight ahead or straight behind.</exception>
    /// <exception cref="InvalidOperationException">The path is closed.</exception>
    [Pure]
    public CurvePath ArcTo(Point2D end) => With(PathSegment.FromArc(CircularArc.TangentTo(End, EndDirection, end)));

    /// <summary>Goes on with another path that begins where this one ends.</summary>
    /// <param name="next">The path to go on with.</param>
    /// <exception cref="ArgumentException">It begins elsewhere, or is closed.</exception>
    /// <exception cref="InvalidOperationException">This path is closed.</exception>
    [Pure]
    public CurvePath Then(CurvePath next)
    {
        RequireOpen();
        RequireNextOpen(next);
        RequireMeet(End, next.Start, _segments.Length + 1, nameof(next));
        var joined = new PathSegment[_segments.Length + next._segments.Length];
        _segments.CopyTo(joined, 0);
        next._segments.CopyTo(joined, _segments.Length);
        return new CurvePath(joined, isClosed: false);
    }

    /// <summary>Closes the outline, with a straight line where the end is not yet at the start.</summary>
    [Pure]
    public CurvePath Closed()
    {
        if (IsClosed)
        {
            return this;
        }

        CurvePath path = Meets(End, Start) ? this : LineTo(Start);
        return new CurvePath(path._segments, isClosed: true);
    }

    internal static CurvePath Trusted(in PathSegment segment) => new([segment], isClosed: false);

    internal static CurvePath Trusted(PathSegment[] segments, bool isClosed) => new(segments, isClosed);

    internal static bool Meets(in Point2D end, in Point2D start)
    {
        double magnitude = Math.Max(Math.Abs(end.XMm), Math.Abs(end.YMm));
        return end.DistanceMm(start) <= Math.Max(GeometryTolerance.JoinMm, 16 * Raw.Epsilon * magnitude);
    }

    private static void RequireMeet(in Point2D end, in Point2D start, int number, string parameter)
    {
        if (!Meets(end, start))
        {
            throw new ArgumentException(
                MessageRegistry.Format(DiagnosticCode.SegmentsDoNotMeet, number, start, end, end.DistanceTo(start)), parameter);
        }
    }

    private CurvePath With(in PathSegment segment)
    {
        RequireOpen();
        var segments = new PathSegment[_segments.Length + 1];
        _segments.CopyTo(segments, 0);
        segments[_segments.Length] = segment;
        return new CurvePath(segments, isClosed: false);
    }

    private void RequireOpen()
    {
        if (IsClosed)
        {
            throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.PathClosed));
        }
    }

    /// <summary>How long it is, and of how many segments.</summary>
    public override string ToString()
        => FormattableString.Invariant($"{(IsClosed ? "closed" : "open")} path of {_segments.Length} segments, {LengthMm:0.######} mm, from {Start} to {End}");
}
