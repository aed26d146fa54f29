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

    /// <summary>The most that <see cref="RootsInUnit"/> takes.</summary>
    internal const int MostDegree = 9;

    private static readonly double[,] Binomials = MakeBinomials();

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

    /// <summary>All roots in 0 to 1 of a polynomial in Bernstein form, ascending; a double root once.</summary>
    /// <remarks>Between neighbouring roots of the derivative a polynomial runs one way, so that it has at most one root there,
    /// which is bracketed. So the roots of all derivatives are found in turn, beginning with the straight one.</remarks>
    /// <param name="coefficients">One more than the degree.</param>
    /// <param name="degree">At most <see cref="MostDegree"/>.</param>
    /// <param name="zero">Values no larger than this count as zero at ends and extrema, so that touching counts.</param>
    /// <param name="roots">Receives at most degree + 1 roots (a touching extremum may be found beside a root).</param>
    /// <returns>How many roots.</returns>
    internal static unsafe int RootsInUnit(double* coefficients, int degree, double zero, double* roots)
    {
        double* differences = stackalloc double[MostDegree + 1];
        double* breaks = stackalloc double[MostDegree + 3];
        int count = 0;
        for (int level = 1; level <= degree; level++)
        {
            // The derivative of this degree, up to a factor, which moves no root.
            for (int i = 0; i <= degree; i++)
            {
                differences[i] = coefficients[i];
            }

            for (int pass = degree; pass > level; pass--)
            {
                for (int i = 0; i < pass; i++)
                {
                    differences[i] = differences[i + 1] - differences[i];
                }
            }

            breaks[0] = 0;
            for (int i = 0; i < count; i++)
            {
                breaks[i + 1] = roots[i];
            }

            breaks[count + 1] = 1;
            count = RootsBetween(differences, level, breaks, count + 2, level == degree ? zero : 0, roots);
        }

        return count;
    }

    internal static unsafe double Evaluate(double* b, int degree, double t)
    {
        double s = 1 - t;
        double power = 1;
        double sum = b[0];
        for (int i = 1; i <= degree; i++)
        {
            power *= t;
            sum = (sum * s) + (Binomials[degree, i] * power * b[i]);
        }

        return sum;
    }

    private static unsafe int RootsBetween(double* b, int degree, double* breaks, int breakCount, double zero, double* roots)
    {
        int count = 0;
        double from = breaks[0];
        double valueFrom = b[0];
        bool fromIsRoot = Math.Abs(valueFrom) <= zero;
        if (fromIsRoot)
        {
            roots[count++] = from;
        }

        for (int i = 1; i < breakCount; i++)
        {
            double to = breaks[i];
            if (!(to > from))
            {
                continue;
            }

            double valueTo = to == 1 ? b[degree] : Evaluate(b, degree, to);
            bool toIsRoot = Math.Abs(valueTo) <= zero;
            if (!fromIsRoot && !toIsRoot && (valueFrom < 0) != (valueTo < 0))
            {
                roots[count++] = RootFinder.Find(new Bernstein(b, degree), from, valueFrom, to, valueTo, 0);
            }
            else if (toIsRoot)
            {
                roots[count++] = to;
            }

            from = to;
            valueFrom = valueTo;
            fromIsRoot = toIsRoot;
        }

        return count;
    }

    private static double[,] MakeBinomials()
    {
        var binomials = new double[MostDegree + 1, MostDegree + 1];
        for (int n = 0; n <= MostDegree; n++)
        {
            binomials[n, 0] = 1;
            for (int k = 1; k <= n; k++)
            {
                binomials[n, k] = binomials[n - 1, k - 1] + (k < n ? binomials[n - 1, k] : 0);
            }
        }

        return binomials;
    }

    /// <summary>A polynomial as a function to solve.</summary>
    private readonly unsafe struct Bernstein(double* coefficients, int degree) : IScalarFunction
    {
        public double At(double x) => Evaluate(coefficients, degree, x);
    }
}
