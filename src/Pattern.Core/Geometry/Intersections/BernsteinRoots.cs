using System;

namespace Pattern.Core.Geometry;

/// <summary>All real roots in 0 to 1 of a polynomial in Bernstein form, of degree up to six, ascending.</summary>
/// <remarks>Sign changes of the coefficients bound the number of roots; the interval is halved until each stretch has none or
/// one. Where the polynomial only comes near zero without passing through, the place counts once, as touching.</remarks>
internal unsafe struct BernsteinRoots
{
    internal const int MostDegree = 6;
    private const int Room = 8;
    private const int MostDepth = 48;

    // A polynomial of this degree changes sign six times at most, in all stretches of one depth together, so no search comes near this.
    // If one did, what is left would be taken for touching rather than halved on.
    private const int MostVisits = 8192;

    // A stretch this short that changes sign holds its crossing and nothing besides that matters.
    private const int SurveyDepth = 24;

    // The square root of rounding, about how far apart it drives a double root.
    private const double SameRoot = 1e-7;

    private fixed double _t[Room];
    private fixed double _coefficients[MostDegree + 1];
    private int _degree;
    private int _touching;
    private int _visitsLeft;
    private double _zero;

    // A run of neighbouring stretches where the polynomial is as good as zero and no root is known.
    private double _runFrom;
    private double _runTo;

    /// <summary>How many roots there are.</summary>
    internal int Count { readonly get; private set; }

    internal readonly double this[int index] => _t[index];

    internal readonly bool IsTouching(int index) => (_touching & (1 << index)) != 0;

    /// <summary>Finds the roots.</summary>
    /// <param name="coefficients">Bernstein coefficients, one more than the degree.</param>
    /// <param name="degree">Up to six.</param>
    /// <param name="zero">Values no larger than this count as touching zero; sign changes count however small they are.</param>
    /// <param name="mostVisits">So many stretches are looked at before what is left counts as touching.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is NaN or infinite: no comparison would ever end the search.</exception>
    internal static BernsteinRoots Find(double* coefficients, int degree, double zero, int mostVisits = MostVisits)
    {
        BernsteinRoots roots = default;
        roots._degree = degree;
        roots._zero = zero;
        roots._runFrom = double.NaN;
        roots._runTo = double.NaN;
        roots._visitsLeft = mostVisits;
        double sum = zero;
        for (int i = 0; i <= degree; i++)
        {
            roots._coefficients[i] = coefficients[i];
            sum += Math.Abs(coefficients[i]);
        }

        Raw.RequireFinite(sum, nameof(coefficients));
        roots.Visit(coefficients, 0, 1, 0);
        roots.EndRun();
        return roots;
    }

    private readonly double Value(double t)
    {
        double* c = stackalloc double[MostDegree + 1];
        for (int i = 0; i <= _degree; i++)
        {
            c[i] = _coefficients[i];
        }

        for (int level = _degree; level > 0; level--)
        {
            for (int i = 0; i < level; i++)
            {
                c[i] = ((1 - t) * c[i]) + (t * c[i + 1]);
            }
        }

        return c[0];
    }

    private void Visit(double* c, double from, double to, int depth)
    {
        SearchWork.Step();
        _visitsLeft--;
        int changes = 0;
        double last = 0;
        double least = double.PositiveInfinity;
        double most = 0;
        for (int i = 0; i <= _degree; i++)
        {
            double value = c[i];
            changes += value * last < 0 ? 1 : 0;
            last = value != 0 ? value : last;
            least = Math.Min(least, Math.Abs(value));
            most = Math.Max(most, Math.Abs(value));
        }

        if (changes == 0 && least > _zero)
        {
            return;
        }

        if (changes == 1 && (least > _zero || depth >= SurveyDepth))
        {
            // The first and the last coefficient that are not 0 differ in sign. Where another coefficient is as good as 0, there may be a
            // touch or a root on the border besides, so those stretches are halved first.
            Crossing(c, from, to);
            return;
        }

        if (depth == MostDepth || _visitsLeft <= 0 || (most <= _zero && changes == 0))
        {
            ExtendRun(from, to);
            return;
        }

        double* first = stackalloc double[MostDegree + 1];
        double* second = stackalloc double[MostDegree + 1];
        for (int i = 0; i <= _degree; i++)
        {
            second[i] = c[i];
        }

        first[0] = c[0];
        for (int level = _degree; level > 0; level--)
        {
            for (int i = 0; i < level; i++)
            {
                second[i] = 0.5 * (second[i] + second[i + 1]);
            }

            first[_degree - level + 1] = second[0];
        }

        double middle = 0.5 * (from + to);
        Visit(first, from, middle, depth + 1);
        if (second[0] == 0 && first[_degree - 1] * second[1] < 0)
        {
            // A root exactly where the stretch is halved: neither half sees a change of sign there.
            Add(middle, isTouching: false);
        }

        Visit(second, middle, to, depth + 1);
    }

    private void Crossing(double* c, double from, double to)
    {
        double low = 0;
        double high = 1;
        double sign = 0;
        for (int i = 0; i <= _degree && sign == 0; i++)
        {
            sign = c[i];
        }

        double t = 0.5;
        for (int i = 0; i <= _degree; i++)
        {
            // Begin where the control polygon crosses zero.
            if (c[i] * sign < 0)
            {
                double before = c[i - 1];
                t = (i - 1 + (before / (before - c[i]))) / _degree;
                break;
            }
        }

        double* work = stackalloc double[MostDegree + 1];
        for (int k = 0; k < 100; k++)
        {
            for (int i = 0; i <= _degree; i++)
            {
                work[i] = c[i];
            }

            for (int level = _degree; level > 1; level--)
            {
                for (int i = 0; i < level; i++)
                {
                    work[i] = ((1 - t) * work[i]) + (t * work[i + 1]);
                }
            }

            double value = ((1 - t) * work[0]) + (t * work[1]);
            double slope = _degree * (work[1] - work[0]);
            if (value == 0)
            {
                break;
            }

            if (value * sign > 0)
            {
                low = t;
            }
            else
            {
                high = t;
            }

            double next = t - (value / slope);
            if (!(next > low && next < high))
            {
                next = 0.5 * (low + high);
            }

            double step = Math.Abs(next - t);
            t = next;
            if (step <= 2 * Raw.Epsilon)
            {
                break;
            }
        }

        Add(from + (t * (to - from)), isTouching: false);
    }

    private void ExtendRun(double from, double to)
    {
        if (!(_runTo == from))
        {
            EndRun();
            _runFrom = from;
        }

        _runTo = to;
    }

    private void EndRun()
    {
        if (double.IsNaN(_runFrom))
        {
            return;
        }

        // Unless it leads up to the last crossing, the run is a touch of its own, at an end of the interval or where the value is least.
        double from = _runFrom;
        double to = _runTo;
        _runFrom = double.NaN;
        _runTo = double.NaN;
        double at = from == 0 ? 0 : to == 1 ? 1 : 0.5 * (from + to);
        if (from > 0 && to < 1)
        {
            at = Extremum(from, to);
        }

        Add(at, isTouching: true);
    }

    // Where the slope is zero, by the secant rule from the width of the run; its middle where that leads astray.
    private readonly double Extremum(double from, double to)
    {
        double middle = 0.5 * (from + to);
        double width = Math.Max(to - from, 1e-5);
        double a = Math.Max(0, middle - width);
        double b = Math.Min(1, middle + width);
        double slopeA = Slope(a);
        double slopeB = Slope(b);
        for (int i = 0; i < 30 && slopeA * slopeB < 0; i++)
        {
            double t = (i & 1) == 0 ? a + ((b - a) * slopeA / (slopeA - slopeB)) : 0.5 * (a + b);
            double slope = Slope(t);
            if (slope == 0)
            {
                return t;
            }

            if (slope * slopeA > 0)
            {
                a = t;
                slopeA = slope;
            }
            else
            {
                b = t;
                slopeB = slope;
            }

            middle = 0.5 * (a + b);
        }

        return middle;
    }

    private readonly double Slope(double t)
    {
        double* c = stackalloc double[MostDegree + 1];
        for (int i = 0; i < _degree; i++)
        {
            c[i] = _coefficients[i + 1] - _coefficients[i];
        }

        for (int level = _degree - 1; level > 0; level--)
        {
            for (int i = 0; i < level; i++)
            {
                c[i] = ((1 - t) * c[i]) + (t * c[i + 1]);
            }
        }

        return _degree * c[0];
    }

    private void Add(double t, bool isTouching)
    {
        if (!isTouching)
        {
            EndRun();
        }

        // A touch and a crossing with nothing but zeros between them are one root, the crossing.
        if (Count > 0 && (isTouching || IsTouching(Count - 1)) && StaysZero(_t[Count - 1], t))
        {
            if (!isTouching)
            {
                _t[Count - 1] = t;
                _touching &= ~(1 << (Count - 1));
            }

            return;
        }

        // Two crossings that nothing but rounding parts are a touch: a double root seldom survives as one.
        if (Count > 0 && !isTouching && !IsTouching(Count - 1) && t - _t[Count - 1] < SameRoot && StaysZero(_t[Count - 1], t))
        {
            _t[Count - 1] = 0.5 * (_t[Count - 1] + t);
            _touching |= 1 << (Count - 1);
            return;
        }

        if (Count < Room)
        {
            _t[Count] = t;
            _touching |= isTouching ? 1 << Count : 0;
            Count++;
        }
    }

    private readonly bool StaysZero(double from, double to)
    {
        for (int i = 1; i <= 3; i++)
        {
            if (Math.Abs(Value(from + (0.25 * i * (to - from)))) > 2 * _zero)
            {
                return false;
            }
        }

        return true;
    }
}
