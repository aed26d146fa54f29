using System;

namespace Pattern.Core.Geometry;

/// <summary>Low-degree polynomials in Bernstein form, without allocation. <see cref="BernsteinRoots"/> finds the roots of any; those of a quadratic need no search.</summary>
internal static class Polynomial
{
    private static readonly double[,] Binomials = MakeBinomials();

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

    /// <summary>Product of two polynomials in Bernstein form; the result has a degree more than both together have.</summary>
    internal static unsafe void Multiply(double* a, int degreeA, double* b, int degreeB, double* product)
    {
        int degree = degreeA + degreeB;
        for (int k = 0; k <= degree; k++)
        {
            double sum = 0;
            for (int i = Math.Max(0, k - degreeB); i <= Math.Min(degreeA, k); i++)
            {
                sum += Binomials[degreeA, i] * Binomials[degreeB, k - i] * a[i] * b[k - i];
            }

            product[k] = sum / Binomials[degree, k];
        }
    }

    private static double[,] MakeBinomials()
    {
        var binomials = new double[BernsteinRoots.MostDegree + 1, BernsteinRoots.MostDegree + 1];
        for (int n = 0; n <= BernsteinRoots.MostDegree; n++)
        {
            binomials[n, 0] = 1;
            for (int k = 1; k <= n; k++)
            {
                binomials[n, k] = binomials[n - 1, k - 1] + (k < n ? binomials[n - 1, k] : 0);
            }
        }

        return binomials;
    }
}
