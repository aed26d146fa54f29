using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using UnitsNet;

namespace Pattern.Core.Geometry;

/// <content>What can be measured on a curve.</content>
public readonly partial struct CubicBezier
{
    /// <summary>The heading at the start: towards the first control point that differs from it.</summary>
    /// <exception cref="ConstructionException">All four points are the same.</exception>
    public Direction StartDirection => DirectionAt(0);

    /// <summary>The heading at the end: away from the last control point that differs from it.</summary>
    /// <exception cref="ConstructionException">All four points are the same.</exception>
    public Direction EndDirection => DirectionAt(1);

    /// <summary>The signed area between the curve and the two straight lines from the origin to its ends;
    /// summed around a closed outline it is the area inside, counter-clockwise positive. Exact up to rounding.</summary>
    internal Area SignedArea => Area.FromSquareMillimeters(SignedAreaMm2());

    /// <summary>The smallest upright box around the curve.</summary>
    public BoundingBox Bounds
    {
        get
        {
            Extent(X0, X1, X2, X3, out double left, out double right);
            Extent(Y0, Y1, Y2, Y3, out double bottom, out double top);
            return new BoundingBox(left, bottom, right, top);
        }
    }

    /// <summary>The largest coordinate of the control points, which bounds what rounding can do.</summary>
    internal double MagnitudeMm => Math.Max(
        Math.Max(Math.Max(Math.Abs(X0), Math.Abs(Y0)), Math.Max(Math.Abs(X1), Math.Abs(Y1))),
        Math.Max(Math.Max(Math.Abs(X2), Math.Abs(Y2)), Math.Max(Math.Abs(X3), Math.Abs(Y3))));

    /// <summary>The longest side of the control polygon, by its larger component.</summary>
    internal double HodographMm => Math.Max(
        Math.Max(Math.Max(Math.Abs(X1 - X0), Math.Abs(Y1 - Y0)), Math.Max(Math.Abs(X2 - X1), Math.Abs(Y2 - Y1))),
        Math.Max(Math.Abs(X3 - X2), Math.Abs(Y3 - Y2)));

    private Vector2D ThirdDerivativeRaw => new(6 * ((X3 - X0) - (3 * (X2 - X1))), 6 * ((Y3 - Y0) - (3 * (Y2 - Y1))));

    // A speed this low is rounding: of the polygon's sides, and of coordinates far from the origin.
    private double StandstillMm => (1e-13 * HodographMm) + (8 * Raw.Epsilon * MagnitudeMm);

    /// <summary>The heading at a parameter. Where the curve stands still (a cusp), the heading with which it goes on.</summary>
    /// <param name="t">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The parameter is outside 0 to 1.</exception>
    /// <exception cref="ConstructionException">All four points are the same.</exception>
    [Pure]
    internal Direction DirectionAt(double t)
    {
        CheckParameter(t);
        return TryDirectionAt(t, out Direction direction)
            ? direction
            : throw new ConstructionException(DiagnosticCode.DirectionUndefined, "The curve");
    }

    /// <summary>Signed curvature: left turn positive, and the inverse of the radius of the circle that fits best there.</summary>
    /// <param name="t">From 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The parameter is outside 0 to 1.</exception>
    /// <exception cref="ConstructionException">The curve has a cusp there: its curvature has no bound.</exception>
    [Pure]
    internal ReciprocalLength CurvatureAt(double t)
    {
        CheckParameter(t);
        return ToCurvature(CurvaturePerMm(t), t);
    }

    internal bool TryDirectionAt(double t, out Direction direction)
    {
        Vector2D first = DerivativeAtRaw(t);
        double standstillMm = StandstillMm;
        if (Math.Abs(first.XMm) > standstillMm || Math.Abs(first.YMm) > standstillMm)
        {
            return Direction.TryOfRaw(first.XMm, first.YMm, out direction);
        }

        // Just after a standstill the second derivative leads; at the end the way there is what counts, so it is taken backwards.
        Vector2D second = SecondDerivativeAtRaw(t);
        double sign = t == 1 ? -1 : 1;
        if (Math.Abs(second.XMm) > standstillMm || Math.Abs(second.YMm) > standstillMm)
        {
            return Direction.TryOfRaw(sign * second.XMm, sign * second.YMm, out direction);
        }

        Vector2D third = ThirdDerivativeRaw;
        return Direction.TryOfRaw(third.XMm, third.YMm, out direction);
    }

    /// <summary>Signed curvature per millimetre, left turn positive; infinite at a cusp, 0 where nothing turns.</summary>
    internal double CurvaturePerMm(double t)
    {
        Vector2D first = DerivativeAtRaw(t);
        Vector2D second = SecondDerivativeAtRaw(t);
        double speed = first.LengthMm;
        if (speed > StandstillMm)
        {
            return first.CrossMm2(second) / speed / speed / speed;
        }

        // At s from a standstill it is (s^2 / 2 B'' x B''') / |s B''|^3: without bound, unless both are in line.
        Vector2D third = ThirdDerivativeRaw;
        double cross = second.CrossMm2(third);
        double straight = 1e-13 * second.LengthMm * third.LengthMm;
        return Math.Abs(cross) <= straight ? 0 : cross > 0 ? double.PositiveInfinity : double.NegativeInfinity;
    }

    private ReciprocalLength ToCurvature(double curvaturePerMm, double t) => double.IsInfinity(curvaturePerMm)
        ? throw new ConstructionException(DiagnosticCode.CurvatureUnbounded, t, PointAtRaw(t))
        : ReciprocalLength.FromInverseMillimeters(curvaturePerMm);

    internal double SignedAreaMm2()
    {
        // Exact integral of (x dy - y dx) / 2; differences from the start keep precision far from the origin.
        double x1 = X1 - X0;
        double y1 = Y1 - Y0;
        double x2 = X2 - X0;
        double y2 = Y2 - Y0;
        double x3 = X3 - X0;
        double y3 = Y3 - Y0;
        double local = ((3 * ((x1 * y2) - (x2 * y1))) + (3 * ((x1 * y3) - (x3 * y1))) + (6 * ((x2 * y3) - (x3 * y2)))) / 20;
        return local + (0.5 * ((X0 * y3) - (Y0 * x3)));
    }

    private static void Extent(double p0, double p1, double p2, double p3, out double least, out double most)
    {
        least = Math.Min(p0, p3);
        most = Math.Max(p0, p3);
        if (Math.Min(p1, p2) >= least && Math.Max(p1, p2) <= most)
        {
            return;
        }

        Polynomial.QuadraticRoots(p1 - p0, p2 - p1, p3 - p2, out double t0, out double t1);
        for (int i = 0; i < 2; i++)
        {
            double t = i == 0 ? t0 : t1;
            if (t > 0 && t < 1)
            {
                double s = 1 - t;
                double p = (s * s * s * p0) + (3 * s * s * t * p1) + (3 * s * t * t * p2) + (t * t * t * p3);
                least = Math.Min(least, p);
                most = Math.Max(most, p);
            }
        }
    }
}
