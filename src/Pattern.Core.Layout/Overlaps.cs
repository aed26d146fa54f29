using System;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>How much each pair of copies overlaps, and how much that weighs in the search.</summary>
internal sealed class Overlaps
{
    // What is in the way again and again weighs more and more, and less again when it no longer is: guided local search.
    private const double LeastGrowth = 1.1;
    private const double MostGrowth = 1.6;
    private const double Decay = 0.92;

    private readonly LayTask _task;
    private readonly double[][] _depthMm;
    private readonly double[][] _weight;
    private readonly double[] _size;

    internal Overlaps(LayTask task)
    {
        _task = task;
        int n = task.Copies.Length;
        _depthMm = new double[n][];
        _weight = new double[n][];

        // A depth in two large pieces is more in the way than the same in two small ones: the fourth root of the product of the areas, in parts of its mean.
        double mean = task.Copies.Average(copy => Math.Sqrt(task.Shapes[copy[0]].AreaMm2));
        _size = [.. task.Copies.Select(copy => Math.Sqrt(Math.Sqrt(task.Shapes[copy[0]].AreaMm2) / mean))];
        for (int i = 0; i < n; i++)
        {
            _depthMm[i] = new double[n];
            _weight[i] = new double[n];
        }
    }

    internal double WeightOf(int one, int other) => _weight[one][other];

    /// <summary>Measures all pairs, and sets each weight to what the sizes of the two give it.</summary>
    internal void Begin(Arrangement arrangement)
    {
        for (int i = 0; i < _size.Length; i++)
        {
            for (int j = 0; j < _size.Length; j++)
            {
                _weight[i][j] = _size[i] * _size[j];
            }
        }

        MeasureAll(arrangement);
    }

    internal void MeasureAll(Arrangement arrangement)
    {
        for (int i = 0; i < _depthMm.Length; i++)
        {
            Measure(arrangement, i, i + 1);
        }
    }

    /// <summary>Measures the pairs of one copy after it was moved.</summary>
    internal void Measure(Arrangement arrangement, int copy) => Measure(arrangement, copy, 0);

    internal bool IsFree(int copy) => Array.TrueForAll(_depthMm[copy], depth => depth == 0);

    internal double Weighted(int copy)
    {
        double sum = 0;
        double[] depths = _depthMm[copy];
        double[] weights = _weight[copy];
        for (int j = 0; j < depths.Length; j++)
        {
            sum += weights[j] * depths[j];
        }

        return sum;
    }

    internal double Total(out double most)
    {
        double sum = 0;
        most = 0;
        for (int i = 0; i < _depthMm.Length; i++)
        {
            for (int j = i + 1; j < _depthMm.Length; j++)
            {
                sum += _depthMm[i][j];
                most = Math.Max(most, _depthMm[i][j]);
            }
        }

        return sum;
    }

    internal void Reweigh(double most)
    {
        for (int i = 0; i < _depthMm.Length; i++)
        {
            for (int j = i + 1; j < _depthMm.Length; j++)
            {
                double depth = _depthMm[i][j];
                double weight = depth > 0
                    ? _weight[i][j] * (LeastGrowth + ((MostGrowth - LeastGrowth) * depth / most))
                    : Math.Max(_size[i] * _size[j], _weight[i][j] * Decay);
                _weight[i][j] = weight;
                _weight[j][i] = weight;
            }
        }
    }

    private void Measure(Arrangement arrangement, int copy, int from)
    {
        for (int j = from; j < _depthMm.Length; j++)
        {
            if (j != copy)
            {
                double depth = _task.KeepOutOf(arrangement.Shape[j], arrangement.Shape[copy]).DepthMm(arrangement.X[copy] - arrangement.X[j], arrangement.Y[copy] - arrangement.Y[j]);
                _depthMm[copy][j] = depth;
                _depthMm[j][copy] = depth;
            }
        }
    }
}
