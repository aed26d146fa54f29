using System;
using System.Diagnostics.Contracts;
using System.Globalization;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A part of a circle, or a whole one.</summary>
/// <remarks>The default value is the origin alone: radius and sweep are zero.</remarks>
public readonly partial struct CircularArc : IEquatable<CircularArc>
{
    internal readonly double CentreXMm;
    internal readonly double CentreYMm;
    internal readonly double RadiusMm;
    internal readonly double StartRad;
    internal readonly double SweepRad;

    internal CircularArc(double centreXMm, double centreYMm, double radiusMm, double startRad, double sweepRad)
    {
        CentreXMm = centreXMm;
        CentreYMm = centreYMm;
        RadiusMm = radiusMm;
        StartRad = startRad;
        SweepRad = sweepRad;
    }

    /// <summary>The centre of the circle.</summary>
    public Point2D Centre => new(CentreXMm, CentreYMm);

    /// <summary>The radius of the circle.</summary>
    public Length Radius => Length.FromMillimeters(RadiusMm);

    /// <summary>The heading from the centre to the start, as an angle from <see cref="Direction.Right"/>.</summary>
    public Angle StartAngle => Angle.FromRadians(StartRad);

    /// <summary>How far the arc goes round; counter-clockwise is positive.</summary>
    public Angle Sweep => Angle.FromRadians(SweepRad);

    /// <summary>Where it begins.</summary>
    public Point2D Start => PointAtRaw(0);

    /// <summary>Where it ends.</summary>
    public Point2D End => PointAtRaw(1);

    /// <summary>The length along the arc.</summary>
    public Length Length => Length.FromMillimeters(LengthMm);

    /// <summary>The heading at the start.</summary>
    public Direction StartDirection => DirectionAtRaw(0);

    /// <summary>The heading at the end.</summary>
    public Direction EndDirection => DirectionAtRaw(1);

    /// <summary>The signed curvature, the inverse of the radius: positive where the arc turns left.</summary>
    /// <exception cref="ConstructionException">The radius is zero.</exception>
    internal ReciprocalLength Curvature => RadiusMm > 0
        ? ReciprocalLength.FromInverseMillimeters(SweepRad < 0 ? -1 / RadiusMm : 1 / RadiusMm)
        : throw new ConstructionException(DiagnosticCode.CurvatureUnbounded, 0, Centre);

    /// <summary>The signed area between the arc and the two straight lines from the origin to its ends.</summary>
    internal Area SignedArea => Area.FromSquareMillimeters(SignedAreaMm2);

    /// <summary>The smallest upright box around the arc.</summary>
    public BoundingBox Bounds
    {
        get
        {
            BoundingBox box = BoundingBox.Around(Start, End);
            double low = Math.Min(StartRad, StartRad + SweepRad);
            double high = Math.Max(StartRad, StartRad + SweepRad);

            // The quarter points of the circle that the arc passes; a sweep is at most one turn, so at most five. Counted by themselves, since one more than a
            // huge angle is the same angle.
            double first = Math.Ceiling(low / (Math.PI / 2));
            for (int i = 0; i <= 4 && (first + i) * (Math.PI / 2) <= high; i++)
            {
                double quarter = first + i;
                Direction d = Direction.FromAngle(Angle.FromDegrees(90 * quarter));
                box = box.Including(CentreXMm + (RadiusMm * d.X), CentreYMm + (RadiusMm * d.Y));
            }

            return box;
        }
    }

    internal double LengthMm => RadiusMm * Math.Abs(SweepRad);

    internal double SignedAreaMm2
    {
        get
        {
            Point2D start = Start;
            Point2D end = End;
            double segment = 0.5 * RadiusMm * RadiusMm * SweepRad;
            return segment + (0.5 * ((CentreXMm * (end.YMm - start.YMm)) - (CentreYMm * (end.XMm - start.XMm))));
        }
    }

    /// <summary>Makes an arc.</summary>
    /// <param name="centre">The centre of the circle.</param>
    /// <param name="radius">Its radius; not negative.</param>
    /// <param name="startAngle">From the centre to the start, from <see cref="Direction.Right"/> counter-clockwise.</param>
    /// <param name="sweep">How far round, at most one turn either way; counter-clockwise is positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative, the sweep is more than a turn, or a value is not finite.</exception>
    public static CircularArc FromCentre(Point2D centre, Length radius, Angle startAngle, Angle sweep)
    {
        double radiusMm = Guard.Millimetres(radius, 0, double.MaxValue, nameof(radius));
        double startRad = Guard.Finite(startAngle.Radians, nameof(startAngle));
        return new CircularArc(centre.XMm, centre.YMm, radiusMm, startRad, CheckedSweep(sweep));
    }

    /// <summary>The arc that begins at a point and goes round a centre.</summary>
    /// <param name="centre">The centre of the circle.</param>
    /// <param name="start">Where the arc begins.</param>
    /// <param name="sweep">How far round, at most one turn either way; counter-clockwise is positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sweep is more than a turn or not finite.</exception>
    public static CircularArc Around(Point2D centre, Point2D start, Angle sweep)
    {
        double dx = start.XMm - centre.XMm;
        double dy = start.YMm - centre.YMm;
        return new CircularArc(centre.XMm, centre.YMm, Raw.Hypot(dx, dy), Math.Atan2(dy, dx), CheckedSweep(sweep));
    }

    /// <summary>The arc from one point through another to a third.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="through">A point that it passes.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">All three points lie on one straight line, or two are the same.</exception>
    public static CircularArc Through(Point2D start, Point2D through, Point2D end)
    {
        Vector2D a = through - start;
        Vector2D b = end - start;
        double cross = a.CrossMm2(b);
        if (Math.Abs(cross) <= 1e-12 * a.LengthMm * b.LengthMm)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ArcIsStraight), nameof(through));
        }

        // The centre is as far from all three: two linear equations.
        double aa = a.DotMm2(a);
        double bb = b.DotMm2(b);
        Point2D centre = start + new Vector2D(((b.YMm * aa) - (a.YMm * bb)) / (2 * cross), ((a.XMm * bb) - (b.XMm * aa)) / (2 * cross));

        // From the first chord to the second the heading turns by half of what the arc does.
        double half = a.AngleRadTo(end - through);
        return Around(centre, start, Angle.FromRadians(2 * half));
    }

    /// <summary>The arc that leaves a point with a given heading and ends at another one: there is exactly one.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="startDirection">The heading with which it leaves.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentException">The end lies straight ahead or straight behind, or is the start.</exception>
    internal static CircularArc TangentTo(Point2D start, Direction startDirection, Point2D end)
    {
        Vector2D chord = end - start;
        double half = Math.Atan2((startDirection.X * chord.YMm) - (startDirection.Y * chord.XMm), (startDirection.X * chord.XMm) + (startDirection.Y * chord.YMm));
        double sine = Math.Sin(half);
        if (Math.Abs(sine) <= 1e-12)
        {
            throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.ArcIsStraight), nameof(end));
        }

        // The chord is 2 r sin(half sweep) long, and the centre lies square to the heading.
        double radius = chord.LengthMm / (2 * sine);
        return Around(start + startDirection.TurnedLeft.TimesMm(radius), start, Angle.FromRadians(2 * half));
    }

    /// <summary>The point at a distance along the arc from its start.</summary>
    /// <param name="distance">From zero to the length of the arc, both included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative or beyond the end.</exception>
    [Pure]
    internal Point2D PointAtLength(Length distance)
    {
        double lengthMm = LengthMm;
        double distanceMm = Guard.Millimetres(distance, 0, lengthMm, nameof(distance));
        return lengthMm == 0 ? Start : PointAtRaw(distanceMm / lengthMm);
    }

    /// <summary>The same arc from end to start.</summary>
    [Pure]
    public CircularArc Reversed() => new(CentreXMm, CentreYMm, RadiusMm, StartRad + SweepRad, -SweepRad);

    /// <inheritdoc/>
    public bool Equals(CircularArc other) => CentreXMm == other.CentreXMm && CentreYMm == other.CentreYMm
        && RadiusMm == other.RadiusMm && StartRad == other.StartRad && SweepRad == other.SweepRad;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CircularArc other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((RawHash.Of(CentreXMm, CentreYMm, RadiusMm, StartRad) * 397) ^ SweepRad.GetHashCode());

    /// <summary>Centre, radius, start angle and sweep.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} radius {1:0.######} mm from {2:0.######} by {3:0.######} degrees",
        Centre,
        RadiusMm,
        StartAngle.Degrees,
        Sweep.Degrees);

    /// <summary>The point at a share of the way round, 0 to 1.</summary>
    internal Point2D PointAtRaw(double u)
    {
        double angle = StartRad + (SweepRad * u);
        return new Point2D(CentreXMm + (RadiusMm * Math.Cos(angle)), CentreYMm + (RadiusMm * Math.Sin(angle)));
    }

    internal Direction DirectionAtRaw(double u)
    {
        double angle = StartRad + (SweepRad * u);
        return SweepRad < 0 ? Direction.Unit(Math.Sin(angle), -Math.Cos(angle)) : Direction.Unit(-Math.Sin(angle), Math.Cos(angle));
    }

    internal CircularArc SubArcRaw(double from, double to)
        => new(CentreXMm, CentreYMm, RadiusMm, StartRad + (SweepRad * from), SweepRad * (to - from));

    /// <summary>This arc after a move that keeps shapes.</summary>
    internal CircularArc TransformedRaw(in Transform2D transform)
    {
        Point2D centre = transform.Apply(Centre);
        Vector2D ray = transform.Apply(new Vector2D(Math.Cos(StartRad), Math.Sin(StartRad)));
        double sweep = transform.TurnsOver ? -SweepRad : SweepRad;
        return new CircularArc(centre.XMm, centre.YMm, RadiusMm * transform.ScaleFactor, Math.Atan2(ray.YMm, ray.XMm), sweep);
    }

    /// <summary>How many cubics stand for the arc to within a tolerance.</summary>
    internal int CubicCount(double toleranceMm)
    {
        // A cubic over the angle a with the usual handles is off by 2/27 r sin^6(a/4) / cos^2(a/4), always outwards.
        int pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(SweepRad) / (Math.PI / 2) - 1e-12));
        while (pieces < 4096)
        {
            double quarter = Math.Abs(SweepRad) / pieces / 4;
            double sin2 = Math.Sin(quarter) * Math.Sin(quarter);
            if (RadiusMm * 2 / 27 * sin2 * sin2 * sin2 / (1 - sin2) <= toleranceMm)
            {
                break;
            }

            pieces++;
        }

        return pieces;
    }

    /// <summary>One of the cubics that stand for the arc.</summary>
    internal CubicBezier CubicPiece(int index, int count)
    {
        Point2D start = PointAtRaw((double)index / count);
        Point2D end = PointAtRaw((double)(index + 1) / count);
        double handleMm = RadiusMm * 4 / 3 * Math.Tan(Math.Abs(SweepRad) / count / 4);
        return CubicBezier.FromHandles(
            start, DirectionAtRaw((double)index / count), handleMm, end, DirectionAtRaw((double)(index + 1) / count), handleMm);
    }

    private static double CheckedSweep(Angle sweep)
    {
        double sweepRad = Guard.Finite(sweep.Radians, nameof(sweep));
        return Math.Abs(sweepRad) <= (2 * Math.PI) * (1 + 1e-15)
            ? sweepRad
            : throw new ArgumentOutOfRangeException(nameof(sweep), MessageRegistry.Format(DiagnosticCode.SweepTooLarge, nameof(sweep), sweep));
    }

    /// <summary>Compares all values exactly.</summary>
    /// <param name="left">One arc.</param>
    /// <param name="right">Another arc.</param>
    public static bool operator ==(CircularArc left, CircularArc right) => left.Equals(right);

    /// <summary>Compares all values exactly.</summary>
    /// <param name="left">One arc.</param>
    /// <param name="right">Another arc.</param>
    public static bool operator !=(CircularArc left, CircularArc right) => !left.Equals(right);
}
