using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>One segment of a path: a line, an arc or a cubic.</summary>
/// <remarks>The default value is a line that stays at the origin.</remarks>
public readonly partial struct PathSegment : IEquatable<PathSegment>
{
    // A line or cubic lies here as it is; an arc as centre, radius and start, sweep. So a segment is one flat block.
    private readonly CubicBezier _data;

    private PathSegment(PathSegmentKind kind, in CubicBezier data)
    {
        Kind = kind;
        _data = data;
    }

    /// <summary>What this segment is.</summary>
    public PathSegmentKind Kind { get; }

    /// <summary>Where it begins.</summary>
    public Point2D Start => Kind == PathSegmentKind.Arc ? ArcRaw.Start : _data.Start;

    /// <summary>Where it ends.</summary>
    public Point2D End => Kind == PathSegmentKind.Arc ? ArcRaw.End : _data.End;

    /// <summary>The length along it.</summary>
    public Length Length => Length.FromMillimeters(LengthMm());

    /// <summary>The heading at its start.</summary>
    /// <exception cref="ConstructionException">The segment is a single point.</exception>
    public Direction StartDirection => DirectionAtRaw(0);

    /// <summary>The heading at its end.</summary>
    /// <exception cref="ConstructionException">The segment is a single point.</exception>
    public Direction EndDirection => DirectionAtRaw(1);

    /// <summary>The signed area between it and the two straight lines from the origin to its ends.</summary>
    internal Area SignedArea => Area.FromSquareMillimeters(SignedAreaMm2);

    /// <summary>The smallest upright box around it.</summary>
    public BoundingBox Bounds => Kind switch
    {
        PathSegmentKind.Line => LineRaw.Bounds,
        PathSegmentKind.Arc => ArcRaw.Bounds,
        _ => _data.Bounds,
    };

    internal LineSegment LineRaw => new(_data.Start, _data.End);

    internal CircularArc ArcRaw => new(_data.X0, _data.Y0, _data.X1, _data.Y1, _data.X2);

    internal CubicBezier CubicRaw => _data;

    // How far it gets from its start to either side; of an arc, its length.
    private double ReachMm => Kind == PathSegmentKind.Arc
        ? ArcRaw.LengthMm
        : Math.Max(
            Math.Max(Math.Abs(_data.X1 - _data.X0), Math.Max(Math.Abs(_data.X2 - _data.X0), Math.Abs(_data.X3 - _data.X0))),
            Math.Max(Math.Abs(_data.Y1 - _data.Y0), Math.Max(Math.Abs(_data.Y2 - _data.Y0), Math.Abs(_data.Y3 - _data.Y0))));

    internal double SignedAreaMm2 => Kind switch
    {
        PathSegmentKind.Line => 0.5 * ((_data.X0 * (_data.Y3 - _data.Y0)) - (_data.Y0 * (_data.X3 - _data.X0))),
        PathSegmentKind.Arc => ArcRaw.SignedAreaMm2,
        _ => _data.SignedAreaMm2(),
    };

    /// <summary>Makes a segment from a line.</summary>
    /// <param name="line">The line.</param>
    public static PathSegment FromLine(LineSegment line)
        => new(PathSegmentKind.Line, new CubicBezier(line.Start, line.Start, line.End, line.End));

    /// <summary>Makes a segment from an arc.</summary>
    /// <param name="arc">The arc.</param>
    public static PathSegment FromArc(CircularArc arc)
        => new(PathSegmentKind.Arc, new CubicBezier(arc.CentreXMm, arc.CentreYMm, arc.RadiusMm, arc.StartRad, arc.SweepRad, 0, 0, 0));

    /// <summary>Makes a segment from a cubic.</summary>
    /// <param name="cubic">The cubic.</param>
    public static PathSegment FromCubic(CubicBezier cubic) => new(PathSegmentKind.Cubic, cubic);

    /// <summary>The line that this segment is.</summary>
    /// <exception cref="InvalidOperationException">It is something else: look at <see cref="Kind"/> first.</exception>
    [Pure]
    public LineSegment AsLine()
    {
        Require(PathSegmentKind.Line);
        return LineRaw;
    }

    /// <summary>The arc that this segment is.</summary>
    /// <exception cref="InvalidOperationException">It is something else: look at <see cref="Kind"/> first.</exception>
    [Pure]
    public CircularArc AsArc()
    {
        Require(PathSegmentKind.Arc);
        return ArcRaw;
    }

    /// <summary>The cubic that this segment is.</summary>
    /// <exception cref="InvalidOperationException">It is something else: look at <see cref="Kind"/> first.</exception>
    [Pure]
    public CubicBezier AsCubic()
    {
        Require(PathSegmentKind.Cubic);
        return _data;
    }

    /// <summary>The same segment from end to start.</summary>
    [Pure]
    public PathSegment Reversed() => Kind == PathSegmentKind.Arc ? FromArc(ArcRaw.Reversed()) : new PathSegment(Kind, _data.Reversed());

    /// <inheritdoc/>
    public bool Equals(PathSegment other) => Kind == other.Kind && _data.Equals(other._data);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PathSegment other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((_data.GetHashCode() * 397) ^ (int)Kind);

    /// <summary>The kind and its values.</summary>
    public override string ToString() => Kind switch
    {
        PathSegmentKind.Line => $"Line {LineRaw}",
        PathSegmentKind.Arc => $"Arc {ArcRaw}",
        _ => $"Cubic {_data}",
    };

    internal double LengthMm() => Kind switch
    {
        PathSegmentKind.Line => LineRaw.LengthMm,
        PathSegmentKind.Arc => ArcRaw.LengthMm,
        _ => _data.LengthMm(),
    };

    internal double TurningRad => Kind switch
    {
        PathSegmentKind.Line => 0,
        PathSegmentKind.Arc => _data.X2,
        _ => _data.TotalTurningRad(),
    };

    /// <summary>The parameter, 0 to 1, at a length from the start. Lines and arcs run evenly.</summary>
    internal double ParameterAtLengthMm(double lengthMm)
    {
        if (Kind == PathSegmentKind.Cubic)
        {
            return _data.ParameterAtLengthMm(lengthMm);
        }

        double whole = LengthMm();
        return whole == 0 ? 0 : Raw.Clamp(lengthMm / whole, 0, 1);
    }

    /// <summary>The length from the start to a parameter.</summary>
    internal double SubSegmentLengthMm(double t) => Kind == PathSegmentKind.Cubic ? _data.LengthMm(0, t) : t * LengthMm();

    internal Point2D PointAtRaw(double t) => Kind switch
    {
        PathSegmentKind.Line => LineRaw.PointAtRaw(t),
        PathSegmentKind.Arc => ArcRaw.PointAtRaw(t),
        _ => _data.PointAtRaw(t),
    };

    /// <summary>The speed in millimetres per unit of the parameter.</summary>
    internal Vector2D DerivativeAtRaw(double t) => Kind switch
    {
        PathSegmentKind.Line => _data.End - _data.Start,
        PathSegmentKind.Arc => ArcRaw.DirectionAtRaw(t).TimesMm(ArcRaw.LengthMm),
        _ => _data.DerivativeAtRaw(t),
    };

    /// <summary>Signed curvature per millimetre.</summary>
    internal double CurvaturePerMmAtRaw(double t) => Kind switch
    {
        PathSegmentKind.Line => 0,
        PathSegmentKind.Arc => (_data.X2 < 0 ? -1 : 1) / _data.X1,
        _ => _data.CurvaturePerMm(t),
    };

    internal Direction DirectionAtRaw(double t) => TryDirectionAtRaw(t, out Direction direction)
        ? direction
        : throw new ConstructionException(DiagnosticCode.DirectionUndefined, "The segment");

    internal bool TryDirectionAtRaw(double t, out Direction direction)
    {
        switch (Kind)
        {
            case PathSegmentKind.Line:
                return Direction.TryOfRaw(_data.X3 - _data.X0, _data.Y3 - _data.Y0, out direction);
            case PathSegmentKind.Arc:
                direction = ArcRaw.DirectionAtRaw(t);
                return ArcRaw.LengthMm > 0;
            default:
                return _data.TryDirectionAt(t, out direction);
        }
    }

    /// <summary>The part between two parameters; nothing where a cut beside an end leaves a part whose ends cannot be told apart: it would have no heading.</summary>
    internal bool TryPartRaw(double from, double to, out PathSegment part)
    {
        part = this;
        if (from == 0 && to == 1)
        {
            return true;
        }

        if (!(from < to))
        {
            return false;
        }

        part = SubSegmentRaw(from, to);
        return part.ReachMm > Math.Max(GeometryTolerance.SlackMm(ReachMm), 16 * Raw.Epsilon * Math.Max(Math.Abs(Start.XMm), Math.Abs(Start.YMm)));
    }

    internal PathSegment SubSegmentRaw(double from, double to)
    {
        switch (Kind)
        {
            case PathSegmentKind.Line:
                return FromLine(new LineSegment(LineRaw.PointAtRaw(from), LineRaw.PointAtRaw(to)));
            case PathSegmentKind.Arc:
                return FromArc(ArcRaw.SubArcRaw(from, to));
            default:
                return FromCubic(_data.SubCurveRaw(from, to));
        }
    }

    /// <summary>After a move that keeps shapes, or of a segment that is no arc.</summary>
    internal PathSegment TransformedRaw(in Transform2D transform)
        => Kind == PathSegmentKind.Arc ? FromArc(ArcRaw.TransformedRaw(transform)) : new PathSegment(Kind, _data.Transformed(transform));

    private void Require(PathSegmentKind kind)
    {
        if (Kind != kind)
        {
            throw new InvalidOperationException(MessageRegistry.Format(DiagnosticCode.SegmentKindWrong, Kind, kind));
        }
    }

    /// <summary>Compares kind and values exactly.</summary>
    /// <param name="left">One segment.</param>
    /// <param name="right">Another segment.</param>
    public static bool operator ==(PathSegment left, PathSegment right) => left.Equals(right);

    /// <summary>Compares kind and values exactly.</summary>
    /// <param name="left">One segment.</param>
    /// <param name="right">Another segment.</param>
    public static bool operator !=(PathSegment left, PathSegment right) => !left.Equals(right);
}
