using System;

namespace Pattern.Core.Geometry;

/// <summary>A real function of one number. Implemented by structs, so that solving allocates nothing.</summary>
internal interface IScalarFunction
{
    double At(double x);
}

/// <summary>Finds the root of a function between two places where it has different signs.</summary>
internal static class RootFinder
{
    // Halving alone takes about a hundred steps to the last digit; the method takes hardly more than twice that.
    private const int MostSteps = 200;

    /// <summary>Chandrupatla's method: inverse quadratic steps where they are safe, halving where not, so that it never takes
    /// much longer than halving alone.</summary>
    /// <param name="function">What is to become zero.</param>
    /// <param name="low">One end of the bracket.</param>
    /// <param name="valueLow">The value there.</param>
    /// <param name="high">The other end.</param>
    /// <param name="valueHigh">The value there, of the other sign.</param>
    /// <param name="enough">A value no larger than this ends the search.</param>
    /// <param name="mostSteps">So often the function is asked at most; the nearest place by then is the answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end of the bracket or a value there is NaN or infinite.</exception>
    internal static double Find<TFunction>(in TFunction function, double low, double valueLow, double high, double valueHigh, double enough, int mostSteps = MostSteps)
        where TFunction : struct, IScalarFunction
    {
        Raw.RequireFinite(high - low + (valueHigh - valueLow), nameof(function));
        double a = high;
        double b = low;
        double fa = valueHigh;
        double fb = valueLow;
        double share = 0.5;
        for (int i = 0; i < mostSteps; i++)
        {
            SearchWork.Step();
            double x = a + (share * (b - a));
            double value = function.At(x);
            double c = b;
            double fc = fb;
            if ((value < 0) == (fa < 0))
            {
                c = a;
                fc = fa;
            }
            else
            {
                b = a;
                fb = fa;
            }

            a = x;
            fa = value;
            double best = Math.Abs(fa) < Math.Abs(fb) ? a : b;
            double least = 2 * Raw.Epsilon * Math.Abs(best) / Math.Abs(b - a);
            if (Math.Abs(fa) <= enough || least > 0.5 || double.IsNaN(least))
            {
                return Math.Abs(fa) <= enough ? a : best;
            }

            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            share = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
                ? (fa / (fb - fa) * (fc / (fb - fc))) + ((c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)))
                : 0.5;
            share = Raw.Clamp(share, least, 1 - least);
        }

        return a;
    }
}
