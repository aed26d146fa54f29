using System;

namespace Pattern.Core.Geometry;

/// <summary>Householder QR with pivoting of a few long rows, taken as columns: what the rows span, and what none of them sees.</summary>
/// <remarks>Written for the hot path of <see cref="LeastChange"/>: a dozen rows of some fifty entries, no allocation once made.</remarks>
internal sealed class RowSpace
{
    /// <summary>A row whose part outside the rows before it is smaller than this share of a unit row depends on them.</summary>
    internal const double RankCut = 1e-8;

    // A sum of squares that other squares are taken off is right to a ten-thousandth of a millionth as long as a millionth of it is left.
    private const double Trusted = 1e-6;

    private readonly double[] _rows;
    private readonly double[] _diagonal;
    private readonly double[] _beta;

    // What is left of each row outside those taken up, squared; and how much of it there was when that was last summed up.
    private readonly double[] _left;
    private readonly double[] _summed;
    private int _rowCount;
    private int _width;

    internal RowSpace(int mostRows, int mostWidth)
    {
        _rows = new double[mostRows * mostWidth];
        _diagonal = new double[mostRows];
        _beta = new double[mostRows];
        _left = new double[mostRows];
        _summed = new double[mostRows];
        Order = new int[mostRows];
    }

    /// <summary>The rows in the order in which they were taken up; those from <see cref="Rank"/> on depend on those before.</summary>
    internal int[] Order { get; }

    /// <summary>How many rows are independent.</summary>
    internal int Rank { get; private set; }

    /// <summary>Where the rows are written, one after the other, before <see cref="Factor"/>.</summary>
    internal double[] Rows => _rows;

    /// <summary>Factors what was written into <see cref="Rows"/>; rows are expected to have a length of one, or less where part of them was left out.</summary>
    internal void Factor(int rowCount, int width)
    {
        _rowCount = rowCount;
        _width = width;
        for (int i = 0; i < rowCount; i++)
        {
            Order[i] = i;
            _left[i] = _summed[i] = RowSums.Dot(_rows, i * width, _rows, i * width, width);
        }

        int steps = Math.Min(rowCount, width);
        Rank = 0;
        for (int k = 0; k < steps; k++)
        {
            if (!TakeLongest(k))
            {
                return;
            }

            Reflect(k);
            Rank = k + 1;
        }
    }

    /// <summary>Turns a vector so that its first entries lie along the independent rows and the others along nothing that the rows see.</summary>
    internal void Turn(double[] vector)
    {
        for (int k = 0; k < Rank; k++)
        {
            Mirror(k, vector, 0);
        }
    }

    /// <summary>Turns a vector back.</summary>
    internal void TurnBack(double[] vector)
    {
        for (int k = Rank - 1; k >= 0; k--)
        {
            Mirror(k, vector, 0);
        }
    }

    /// <summary>What the first entries of a turned vector have to be, so that the independent rows, times the vector, give what is wanted (by row).</summary>
    internal void Along(double[] wanted, double[] turned)
    {
        for (int k = 0; k < Rank; k++)
        {
            int row = Order[k] * _width;
            double sum = wanted[Order[k]];
            for (int i = 0; i < k; i++)
            {
                sum -= _rows[row + i] * turned[i];
            }

            turned[k] = sum / _diagonal[k];
        }
    }

    /// <summary>The factors (by row; none for dependent rows) with which the rows add up to a vector whose first turned entries are given.</summary>
    internal void Factors(double[] turned, double[] factors)
    {
        for (int i = Rank; i < _rowCount; i++)
        {
            factors[Order[i]] = 0;
        }

        for (int k = Rank - 1; k >= 0; k--)
        {
            double sum = turned[k];
            for (int i = k + 1; i < Rank; i++)
            {
                sum -= _rows[(Order[i] * _width) + k] * factors[Order[i]];
            }

            factors[Order[k]] = sum / _diagonal[k];
        }
    }

    // Of equals the first, so that of a condition stated twice it is the second that depends on the other.
    private bool TakeLongest(int k)
    {
        int longest = k;
        double most = -1;
        for (int i = k; i < _rowCount; i++)
        {
            double squared = _left[Order[i]];
            if (squared > most * (1 + 1e-9))
            {
                most = squared;
                longest = i;
            }
        }

        int taken = Order[longest];
        for (int i = longest; i > k; i--)
        {
            Order[i] = Order[i - 1];
        }

        Order[k] = taken;
        return most > RankCut * RankCut;
    }

    private void Reflect(int k)
    {
        int row = Order[k] * _width;
        int from = row + k;
        int count = _width - k;
        double length = Math.Sqrt(RowSums.Dot(_rows, from, _rows, from, count));
        double first = _rows[from];
        double diagonal = first > 0 ? -length : length;
        _diagonal[k] = diagonal;
        _rows[from] = first - diagonal;
        _beta[k] = 1 / (diagonal * (diagonal - first));
        for (int i = k + 1; i < _rowCount; i++)
        {
            int other = Order[i];
            Mirror(k, _rows, other * _width);
            double entry = _rows[(other * _width) + k];
            _left[other] -= entry * entry;
            if (_left[other] < Trusted * _summed[other])
            {
                // Hardly anything is left: what the differences have rounded away counts.
                int rest = (other * _width) + k + 1;
                _left[other] = _summed[other] = RowSums.Dot(_rows, rest, _rows, rest, count - 1);
            }
        }
    }

    private void Mirror(int k, double[] vector, int at)
    {
        int from = (Order[k] * _width) + k;
        int count = _width - k;
        RowSums.Add(-_beta[k] * RowSums.Dot(_rows, from, vector, at + k, count), _rows, from, vector, at + k, count);
    }
}
