using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <summary>A move of the whole sheet: translate, rotate, mirror or scale, or several after one another.</summary>
/// <remarks>The default value moves nothing. A transform can always be undone: what would flatten the sheet is refused.</remarks>
public readonly struct Transform2D : IEquatable<Transform2D>
{
    // x' = _a x + _c y + Tx, y' = _b x + _d y + Ty. All four zero means the default value: the identity.
    private readonly double _a;
    private readonly double _b;
    private readonly double _c;
    private readonly double _d;

    private Transform2D(double a, double b, double c, double d, double tx, double ty)
    {
        _a = a;
        _b = b;
        _c = c;
        _d = d;
        Tx = tx;
        Ty = ty;
    }

    /// <summary>Moves nothing.</summary>
    public static Transform2D Identity => new(1, 0, 0, 1, 0, 0);

    /// <summary>Whether the shape turns over, so that left becomes right.</summary>
    public bool TurnsOver => Determinant < 0;

    internal double A => IsDefault ? 1 : _a;

    internal double B => _b;

    internal double C => _c;

    internal double D => IsDefault ? 1 : _d;

    internal double Tx { get; }

    internal double Ty { get; }

    internal double Determinant => (A * D) - (B * C);

    /// <summary>Whether circles stay circles (within rounding).</summary>
    internal bool KeepsShape
    {
        get
        {
            double sign = Determinant < 0 ? -1 : 1;
            double limit = 16 * Raw.Epsilon * (Math.Abs(A) + Math.Abs(B) + Math.Abs(C) + Math.Abs(D));
            return Math.Abs(A - (sign * D)) <= limit && Math.Abs(B + (sign * C)) <= limit;
        }
    }

    /// <summary>How many times longer lengths become; only where <see cref="KeepsShape"/>.</summary>
    internal double ScaleFactor => Raw.Hypot(A, B);

    /// <summary>No length becomes more than so many times longer.</summary>
    internal double MostStretch => Math.Sqrt((A * A) + (B * B) + (C * C) + (D * D));

    private bool IsDefault => _a == 0 && _b == 0 && _c == 0 && _d == 0;

    /// <summary>Moves everything by a vector.</summary>
    /// <param name="vector">The way.</param>
    public static Transform2D Translation(Vector2D vector) => new(1, 0, 0, 1, vector.XMm, vector.YMm);

    /// <summary>Turns everything about a point, which stays where it is.</summary>
    /// <param name="centre">The point that stays.</param>
    /// <param name="angle">Counter-clockwise is positive. Quarter turns are exact.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    public static Transform2D Rotation(Point2D centre, Angle angle) => RotationRaw(centre, Direction.FromAngle(angle));

    /// <summary>Mirrors everything over a line, which stays where it is.</summary>
    /// <param name="line">The mirror line.</param>
    public static Transform2D Mirror(Line line)
    {
        Direction u = line.Direction;
        double cos = (u.X * u.X) - (u.Y * u.Y);
        double sin = 2 * u.X * u.Y;
        double x = line.Point.XMm;
        double y = line.Point.YMm;
        return new Transform2D(cos, sin, sin, -cos, x - ((cos * x) + (sin * y)), y - ((sin * x) - (cos * y)));
    }

    /// <summary>Makes everything larger or smaller about a point, which stays where it is.</summary>
    /// <param name="centre">The point that stays.</param>
    /// <param name="factor">How many times as large; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is zero, negative or not finite.</exception>
    public static Transform2D Scaling(Point2D centre, Ratio factor) => Scaling(centre, factor, factor);

    /// <summary>Stretches or shrinks everything differently across and along, as cloth that shrinks in the wash does.</summary>
    /// <remarks>Circular arcs are no longer circular then: paths turn them into cubics.</remarks>
    /// <param name="centre">The point that stays.</param>
    /// <param name="across">Factor along X; greater than zero.</param>
    /// <param name="along">Factor along Y; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor is zero, negative or not finite.</exception>
    public static Transform2D Scaling(Point2D centre, Ratio across, Ratio along)
    {
        double sx = Factor(across, nameof(across));
        double sy = Factor(along, nameof(along));
        return new Transform2D(sx, 0, 0, sy, centre.XMm * (1 - sx), centre.YMm * (1 - sy));
    }

    /// <summary>This move and then another one, as one move.</summary>
    /// <param name="next">What happens after this.</param>
    [Pure]
    public Transform2D Then(Transform2D next) => new(
        (next.A * A) + (next.C * B),
        (next.B * A) + (next.D * B),
        (next.A * C) + (next.C * D),
        (next.B * C) + (next.D * D),
        (next.A * Tx) + (next.C * Ty) + next.Tx,
        (next.B * Tx) + (next.D * Ty) + next.Ty);

    /// <summary>The move that undoes this one.</summary>
    [Pure]
    public Transform2D Inverted()
    {
        double determinant = Determinant;
        double a = D / determinant;
        double b = -B / determinant;
        double c = -C / determinant;
        double d = A / determinant;
        return new Transform2D(a, b, c, d, -((a * Tx) + (c * Ty)), -((b * Tx) + (d * Ty)));
    }

    /// <summary>Where a point goes.</summary>
    /// <param name="point">The point.</param>
    [Pure]
    public Point2D Apply(Point2D point) => new((A * point.XMm) + (C * point.YMm) + Tx, (B * point.XMm) + (D * point.YMm) + Ty);

    /// <summary>What a vector becomes; a translation leaves it as it is.</summary>
    /// <param name="vector">The vector.</param>
    [Pure]
    public Vector2D Apply(Vector2D vector) => new((A * vector.XMm) + (C * vector.YMm), (B * vector.XMm) + (D * vector.YMm));

    /// <inheritdoc/>
    public bool Equals(Transform2D other) =>
        A == other.A && B == other.B && C == other.C && D == other.D && Tx == other.Tx && Ty == other.Ty;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Transform2D other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((RawHash.Of(A, B, C, D) * 397) ^ RawHash.Of(Tx, Ty));

    /// <summary>Rotation by a turn given as the heading that <see cref="Direction.Right"/> takes.</summary>
    /// <summary>A turn and a scaling about a point, given by cosine and sine times the scale.</summary>
    internal static Transform2D Similarity(in Point2D centre, double cosine, double sine) => new(
        cosine,
        sine,
        -sine,
        cosine,
        centre.XMm - (cosine * centre.XMm) + (sine * centre.YMm),
        centre.YMm - (sine * centre.XMm) - (cosine * centre.YMm));

    internal static Transform2D RotationRaw(in Point2D centre, in Direction turn)
    {
        double cos = turn.X;
        double sin = turn.Y;
        double x = centre.XMm;
        double y = centre.YMm;
        return new Transform2D(cos, sin, -sin, cos, x - ((cos * x) - (sin * y)), y - ((sin * x) + (cos * y)));
    }

    private static double Factor(Ratio ratio, string parameter)
    {
        double factor = ratio.DecimalFractions;
        return factor > 0 && !double.IsInfinity(factor)
            ? factor
            : throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.ScaleNotPositive, parameter, factor));
    }

    /// <summary>Compares moves exactly.</summary>
    /// <param name="left">One move.</param>
    /// <param name="right">Another move.</param>
    public static bool operator ==(Transform2D left, Transform2D right) => left.Equals(right);

    /// <summary>Compares moves exactly.</summary>
    /// <param name="left">One move.</param>
    /// <param name="right">Another move.</param>
    public static bool operator !=(Transform2D left, Transform2D right) => !left.Equals(right);

    /// <summary>Where x and y go, in millimetres.</summary>
    public override string ToString()
        => FormattableString.Invariant($"x' = {A:0.######}x + {C:0.######}y + {Tx:0.######} mm, y' = {B:0.######}x + {D:0.######}y + {Ty:0.######} mm");
}
