using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Geometry;

/// <summary>A cubic Bezier curve from start to end.</summary>
/// <remarks>Its parameter t runs from 0 to 1 and is no measure of length. Any four points are a curve, coincident ones
/// included; what such a curve does not have (a direction, a curvature) is refused, never answered with NaN.</remarks>
public readonly partial struct CubicBezier : IEquatable<CubicBezier>
{
    internal readonly double X0;
    internal readonly double Y0;
    internal readonly double X1;
    internal readonly double Y1;
    internal readonly double X2;
    internal readonly double Y2;
    internal readonly double X3;
    internal readonly double Y3;

    internal CubicBezier(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3)
    {
        X0 = x0;
        Y0 = y0;
        X1 = x1;
        Y1 = y1;
        X2 = x2;
        Y2 = y2;
        X3 = x3;
        Y3 = y3;
    }

    internal CubicBezier(in Point2D start, in Point2D startControl, in Point2D endControl, in Point2D end)
        : this(start.XMm, start.YMm, startControl.XMm, startControl.YMm, endControl.XMm, endControl.YMm, end.XMm, end.YMm)
    {
    }

    /// <summary>Where the curve begins.</summary>
    public Point2D Start => new(X0, Y0);

    /// <summary>The control point that the curve leaves its start towards.</summary>
    public Point2D StartControl => new(X1, Y1);

    /// <summary>The control point that the curve reaches its end from.</summary>
    public Point2D EndControl => new(X2, Y2);

    /// <summary>Where the curve ends.</summary>
    public Point2D End => new(X3, Y3);

    /// <summary>Makes a curve from its four points.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="startControl">Where it leaves towards.</param>
    /// <param name="endControl">Where it arrives from.</param>
    /// <param name="end">Where it ends.</param>
    internal static CubicBezier FromPoints(Point2D start, Point2D startControl, Point2D endControl, Point2D end)
        => new(start, startControl, endControl, end);

    /// <summary>Raises a quadratic curve to a cubic one; both run exactly alike.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="control">The one control point of the quadratic curve.</param>
    /// <param name="end">Where it ends.</param>
    public static CubicBezier FromQuadratic(Point2D start, Point2D control, Point2D end) => new(
        start.XMm,
        start.YMm,
        start.XMm + (2.0 / 3 * (control.XMm - start.XMm)),
        start.YMm + (2.0 / 3 * (control.YMm - start.YMm)),
        end.XMm + (2.0 / 3 * (control.XMm - end.XMm)),
        end.YMm + (2.0 / 3 * (control.YMm - end.YMm)),
        end.XMm,
        end.YMm);

    /// <summary>The point at a parameter; 0 and 1 give exactly the ends.</summary>
    /// <param name="t">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The parameter is outside 0 to 1.</exception>
    [Pure]
    public Point2D PointAt(double t)
    {
        CheckParameter(t);
        return PointAtRaw(t);
    }

    /// <summary>Whether two curves have exactly the same four points.</summary>
    /// <param name="other">The other curve.</param>
    public bool Equals(CubicBezier other)
        => Start == other.Start && StartControl == other.StartControl && EndControl == other.EndControl && End == other.End;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CubicBezier other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((RawHash.Of(X0, Y0, X1, Y1) * 397) ^ RawHash.Of(X2, Y2, X3, Y3));

    /// <summary>The four points.</summary>
    public override string ToString() => $"{Start} {StartControl} {EndControl} {End}";

    // Bernstein form, so that t = 0 and t = 1 give exactly the ends.
    internal Point2D PointAtRaw(double t)
    {
        double s = 1 - t;
        double b0 = s * s * s;
        double b1 = 3 * s * s * t;
        double b2 = 3 * s * t * t;
        double b3 = t * t * t;
        return new Point2D(
            (b0 * X0) + (b1 * X1) + (b2 * X2) + (b3 * X3),
            (b0 * Y0) + (b1 * Y1) + (b2 * Y2) + (b3 * Y3));
    }

    internal Vector2D DerivativeAtRaw(double t)
    {
        double s = 1 - t;
        double b0 = 3 * s * s;
        double b1 = 6 * s * t;
        double b2 = 3 * t * t;
        return new Vector2D(
            (b0 * (X1 - X0)) + (b1 * (X2 - X1)) + (b2 * (X3 - X2)),
            (b0 * (Y1 - Y0)) + (b1 * (Y2 - Y1)) + (b2 * (Y3 - Y2)));
    }

    internal Vector2D SecondDerivativeAtRaw(double t)
    {
        double s = 6 * (1 - t);
        double u = 6 * t;
        return new Vector2D(
            (s * ((X2 - X1) - (X1 - X0))) + (u * ((X3 - X2) - (X2 - X1))),
            (s * ((Y2 - Y1) - (Y1 - Y0))) + (u * ((Y3 - Y2) - (Y2 - Y1))));
    }

    private static void CheckParameter(double t)
    {
        if (!(t >= 0 && t <= 1))
        {
            RefuseParameter(t, nameof(t));
        }
    }

    private static void RefuseParameter(double t, string parameter)
        => throw new ArgumentOutOfRangeException(parameter, MessageRegistry.Format(DiagnosticCode.ParameterOutOfRange, parameter, t));

    /// <summary>Compares the four points exactly.</summary>
    /// <param name="left">One curve.</param>
    /// <param name="right">Another curve.</param>
    public static bool operator ==(CubicBezier left, CubicBezier right) => left.Equals(right);

    /// <summary>Compares the four points exactly.</summary>
    /// <param name="left">One curve.</param>
    /// <param name="right">Another curve.</param>
    public static bool operator !=(CubicBezier left, CubicBezier right) => !left.Equals(right);
}
