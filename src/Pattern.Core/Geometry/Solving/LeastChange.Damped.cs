using System;

namespace Pattern.Core.Geometry;

/// <content>The way round: least squares by Levenberg and Marquardt, for equations that the straight way did not meet.</content>
internal sealed partial class LeastChange
{
    private const int MostDampedSteps = 60;

    // Equations that can hold are met by leaps; three steps in which hardly anything is won end in a compromise.
    private const double Creeping = 1e-3;
    private const int MostCreeps = 3;

    /// <summary>Goes, from the beginning again, where the equations are off by least in squares; whether they hold there.</summary>
    /// <remarks>Where they contradict each other this is the compromise that a report speaks of: each is off by a share.</remarks>
    private bool MeetsDamped()
    {
        for (int j = 0; j < _unknowns; j++)
        {
            Found[j] = Raw.Clamp(Start[j], Least[j], Most[j]);
        }

        Measures(Found, Residuals);
        Learn();
        double damping = 1e-3;
        int creeps = 0;
        double[,] normal = new double[_rowCount, _rowCount];
        double[] weights = new double[_rowCount];
        for (int step = 0; step < MostDampedSteps && !IsMet(Residuals); step++)
        {
            Steps++;
            double off = Squares(Residuals);
            bool better = false;
            for (int trial = 0; trial < MostTrials && !better; trial++)
            {
                FindDamped(damping, normal, weights);
                for (int j = 0; j < _unknowns; j++)
                {
                    _trial[j] = Raw.Clamp(Found[j] + _move[j], Least[j], Most[j]);
                }

                better = Measures(_trial, _trialResidual) && Squares(_trialResidual) < off * (1 - 1e-12);
                damping = better ? Math.Max(damping * 0.2, 1e-14) : damping * 8;
            }

            if (!better)
            {
                break;
            }

            double left = Squares(_trialResidual);
            Accept();
            if (!_problem.KnowsSlopes)
            {
                Learn();
            }

            creeps = left > off * (1 - Creeping) ? creeps + 1 : 0;
            if (left > off * (1 - 1e-8) || (OnlyVerdict && creeps >= MostCreeps))
            {
                break;
            }
        }

        return IsMet(Residuals);
    }

    // (J J' + damping) weights = -residuals, and the move is J' weights, over the unknowns that no limit holds back.
    private void FindDamped(double damping, double[,] normal, double[] weights)
    {
        _isFactored = false;
        for (int j = 0; j < _unknowns; j++)
        {
            double downhill = 0;
            for (int i = 0; i < _rowCount; i++)
            {
                downhill -= _slopes[(_rows[i] * _unknowns) + j] * Residuals[_rows[i]];
            }

            _side[j] = (sbyte)(downhill > 0 && Found[j] >= Most[j] ? 1 : downhill < 0 && Found[j] <= Least[j] ? -1 : 0);
        }

        for (int i = 0; i < _rowCount; i++)
        {
            weights[i] = -Residuals[_rows[i]];
            for (int k = 0; k <= i; k++)
            {
                double sum = i == k ? damping : 0;
                for (int j = 0; j < _unknowns; j++)
                {
                    sum += _side[j] == 0 ? _slopes[(_rows[i] * _unknowns) + j] * _slopes[(_rows[k] * _unknowns) + j] : 0;
                }

                normal[i, k] = sum;
            }
        }

        SolveByCholesky(normal, weights);
        for (int j = 0; j < _unknowns; j++)
        {
            double move = 0;
            for (int i = 0; i < _rowCount; i++)
            {
                move += _side[j] == 0 ? _slopes[(_rows[i] * _unknowns) + j] * weights[i] : 0;
            }

            _move[j] = move;
        }
    }

    private static void SolveByCholesky(double[,] a, double[] b)
    {
        int n = b.Length;
        for (int i = 0; i < n; i++)
        {
            for (int k = 0; k <= i; k++)
            {
                double sum = a[i, k];
                for (int m = 0; m < k; m++)
                {
                    sum -= a[i, m] * a[k, m];
                }

                a[i, k] = i == k ? Math.Sqrt(Math.Max(sum, 1e-300)) : sum / a[k, k];
            }

            for (int m = 0; m < i; m++)
            {
                b[i] -= a[i, m] * b[m];
            }

            b[i] /= a[i, i];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int m = i + 1; m < n; m++)
            {
                b[i] -= a[m, i] * b[m];
            }

            b[i] /= a[i, i];
        }
    }

    private double Squares(double[] residuals)
    {
        double sum = 0;
        for (int i = 0; i < _rowCount; i++)
        {
            sum += residuals[_rows[i]] * residuals[_rows[i]];
        }

        return sum;
    }
}
