using System;

namespace Pattern.Core.Geometry;

/// <summary>Real roots of low-degree polynomials in Bernstein form, without allocation.</summary>
internal static class Polynomial
{
    /// <summary>Roots of the quadratic with Bernstein coefficients b0, b1, b2; NaN where there is none. Any order.</summary>
    internal static void QuadraticRoots(double b0, double b1, double b2, out double t0, out double t1)
    {
        double a = (b0 - b1) + (b2 - b1);
        double halfB = b1 - b0;
        double discriminant = (halfB * halfB) - (a * b0);
        if (discriminant < 0)
        {
            t0 = double.NaN;
            t1 = double.NaN;
            return;
        }

        // The larger of the two sums has no cancellation; the other root follows from the product.
        double q = -(halfB + (halfB < 0 ? -Math.Sqrt(discriminant) : Math.Sqrt(discriminant)));
        t0 = a == 0 ? double.NaN : q / a;
        t1 = q == 0 ? double.NaN : b0 / q;
    }

    /// <summary>Roots in 0 to 1 of the cubic with these Bernstein coefficients, ascending; double roots once.</summary>
    /// <param name="b0">Value at 0.</param>
    /// <param name="b1">Second coefficient.</param>
    /// <param name="b2">Third coefficient.</param>
    /// <param name="b3">Value at 1.</param>
    /// <param name="zero">Values no larger than this count as zero at ends and extrema.</param>
    /// <param name="roots">Receives the roots.</param>
    internal static void CubicRoots(double b0, double b1, double b2, double b3, double zero, out ParameterHits roots)
    {
        roots = default;
        QuadraticRoots(b1 - b0, b2 - b1, b3 - b2, out double e0, out double e1);
        if (e1 < e0)
        {
            (e0, e1) = (e1, e0);
        }

        // Between neighbouring extrema the cubic runs one way, so that each stretch holds at most one root.
        double from = 0;
        double valueFrom = b0;
        for (int i = 0; i < 3; i++)
        {
            double to = i == 0 ? e0 : i == 1 ? e1 : 1;
            if (i < 2 && !(to > from && to < 1))
            {
                continue;
            }

            double valueTo = to == 1 ? b3 : Cubic(b0, b1, b2, b3, to);
            if (Math.Abs(valueFrom) <= zero)
            {
                roots.Add(from);
            }
            else if (Math.Abs(valueTo) > zero && (valueFrom < 0) != (valueTo < 0))
            {
                roots.Add(RootBetween(b0, b1, b2, b3, from, to, valueFrom));
            }

            from = to;
            valueFrom = valueTo;
        }

        if (Math.Abs(b3) <= zero)
        {
            roots.Add(1);
        }
    }

    internal static double Cubic(double b0, double b1, double b2, double b3, double t)
    {
        double s = 1 - t;
        return (s * s * ((s * b0) + (3 * t * b1))) + (t * t * ((3 * s * b2) + (t * b3)));
    }

    private static double RootBetween(double b0, double b1, double b2, double b3, double low, double high, double valueLow)
    {
        double t = 0.5 * (low + high);
        for (int i = 0; i < 100; i++)
        {
            double value = Cubic(b0, b1, b2, b3, t);
            if (value == 0)
            {
                return t;
            }

            if ((value < 0) == (valueLow < 0))
            {
                low = t;
            }
            else
            {
                high = t;
            }

            double s = 1 - t;
            double slope = 3 * ((s * s * (b1 - b0)) + (2 * s * t * (b2 - b1)) + (t * t * (b3 - b2)));
            double next = t - (value / slope);
            if (!(next > low && next < high))
            {
                next = 0.5 * (low + high);
            }

            if (Math.Abs(next - t) <= Raw.Epsilon * t || next == low || next == high)
            {
                return next;
            }

            t = next;
        }

        return t;
    }
}
