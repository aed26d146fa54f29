using System;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Geometry;

/// <content>One step: which way, how far, and what is learnt from it.</content>
internal sealed partial class LeastChange
{
    private const double LeastPace = 0.05;
    private const double MostPace = 4;

    // A step may leave the equations worse where it went far: they are curved. Not by more than this part of its length.
    private const double WorseByMove = 0.25;

    /// <summary>The move that meets the equations to first order, within the limits, and ends nearest to the given part of the way back to the beginning.</summary>
    private void FindMove(double pace)
    {
        for (int j = 0; j < _unknowns; j++)
        {
            _pull[j] = pace * (Start[j] - Found[j]);
        }

        // In the last rounds nothing is let go of a limit any more, so that each puts at least one more unknown there and they end.
        int most = RoundsOfLimits + _unknowns + 1;
        for (int round = 0; round < most; round++)
        {
            int fixedCount = 0;
            for (int j = 0; j < _unknowns; j++)
            {
                if (_side[j] != 0)
                {
                    _move[j] = (_side[j] > 0 ? Most[j] : Least[j]) - Found[j];
                    fixedCount++;
                }
            }

            int free = WriteRows();
            MoveFree(free);
            if (!PutAtLimits(free) && !(fixedCount > 0 && round < RoundsOfLimits && LetGo()))
            {
                return;
            }
        }
    }

    /// <summary>Writes the rows of the equations, over the unknowns that stand at no limit, and what is wanted of these.</summary>
    private int WriteRows()
    {
        int free = 0;
        for (int j = 0; j < _unknowns; j++)
        {
            if (_side[j] == 0)
            {
                _free[free++] = j;
            }
        }

        double[] rows = _space.Rows;
        for (int i = 0; i < _rowCount; i++)
        {
            int row = _rows[i] * _unknowns;
            double scale = _scale[_rows[i]];
            double wanted = -Residuals[_rows[i]] * scale;
            if (!_isFactored && free == _unknowns)
            {
                RowSums.Scale(scale, _slopes, row, rows, i * free, free);
            }
            else if (!_isFactored)
            {
                for (int j = 0; j < free; j++)
                {
                    rows[(i * free) + j] = _slopes[row + _free[j]] * scale;
                }
            }

            if (free < _unknowns)
            {
                for (int j = 0; j < _unknowns; j++)
                {
                    wanted -= _side[j] != 0 ? _slopes[row + j] * scale * _move[j] : 0;
                }
            }

            _wanted[i] = wanted;
        }

        if (!_isFactored)
        {
            _space.Factor(_rowCount, free);
            _isFactored = true;
        }

        return free;
    }

    private void MoveFree(int free)
    {
        for (int j = 0; j < free; j++)
        {
            _turned[j] = _pull[_free[j]];
        }

        _space.Turn(_turned);
        _space.Along(_wanted, _along);
        int rank = _space.Rank;
        for (int k = 0; k < rank; k++)
        {
            // What the rows need to add up to, were it not for the equations: the push of the limits is read off it.
            double along = _along[k];
            _along[k] = _turned[k] - along;
            _turned[k] = along;
        }

        _space.Factors(_along, _factors);
        Array.Clear(_ease, 0, _unknowns);
        if (rank < free)
        {
            // The part that the equations do not see, for the pace.
            for (int k = 0; k < rank; k++)
            {
                _along[k] = _turned[k];
                _turned[k] = 0;
            }

            _space.TurnBack(_turned);
            for (int j = 0; j < free; j++)
            {
                _ease[_free[j]] = _turned[j];
            }

            Array.Clear(_turned, 0, free);
            Array.Copy(_along, _turned, rank);
        }

        _space.TurnBack(_turned);
        for (int j = 0; j < free; j++)
        {
            _move[_free[j]] = _turned[j] + _ease[_free[j]];
        }
    }

    private bool PutAtLimits(int free)
    {
        bool any = false;
        for (int k = 0; k < free; k++)
        {
            int j = _free[k];
            double to = Found[j] + _move[j];
            if (to > Most[j] || to < Least[j])
            {
                _side[j] = (sbyte)(to > Most[j] ? 1 : -1);
                any = true;
            }
        }

        _isFactored &= !any;
        return any;
    }

    private bool LetGo()
    {
        bool any = false;
        for (int j = 0; j < _unknowns; j++)
        {
            if (_side[j] == 0)
            {
                continue;
            }

            double to = Found[j] + _pull[j];
            for (int i = 0; i < _rowCount; i++)
            {
                to -= _slopes[(_rows[i] * _unknowns) + j] * _scale[_rows[i]] * _factors[i];
            }

            if (_side[j] > 0 ? to < Most[j] : to > Least[j])
            {
                _side[j] = 0;
                any = true;
            }
        }

        _isFactored &= !any;
        return any;
    }

    private bool TryMove(double off)
    {
        double length = Length(_move, _unknowns);
        double part = 1;
        for (int trial = 0; trial < MostTrials; trial++, part *= 0.5)
        {
            for (int j = 0; j < _unknowns; j++)
            {
                // A limit is reached exactly, not but for rounding.
                _trial[j] = part == 1 && _side[j] != 0 ? (_side[j] > 0 ? Most[j] : Least[j]) : Raw.Clamp(Found[j] + (part * _move[j]), Least[j], Most[j]);
            }

            if (Measures(_trial, _trialResidual) && Off(_trialResidual) <= Math.Max((1 - (0.1 * part)) * off, Math.Max(WorseByMove * part * length, ToleranceMm)))
            {
                Accept();
                return true;
            }
        }

        return false;
    }

    private void Accept()
    {
        double squared = 0;
        for (int j = 0; j < _unknowns; j++)
        {
            _move[j] = _trial[j] - Found[j];
            _lastMove[j] = _move[j];
            squared += _move[j] * _move[j];
        }

        if (!_problem.KnowsSlopes && squared > 0)
        {
            // Broyden: the slopes along the move are what the move has shown, all others stay.
            for (int i = 0; i < _equations; i++)
            {
                double expected = 0;
                int row = i * _unknowns;
                for (int j = 0; j < _unknowns; j++)
                {
                    expected += _slopes[row + j] * _move[j];
                }

                double correction = (_trialResidual[i] - Residuals[i] - expected) / squared;
                for (int j = 0; j < _unknowns; j++)
                {
                    _slopes[row + j] += correction * _move[j];
                }
            }

            _fresh = false;
        }

        // Accepted is what was drawn last.
        Array.Copy(_trial, Found, _unknowns);
        Array.Copy(_trialResidual, Residuals, _equations);
        FoundIsDrawn = true;
        if (_problem.KnowsSlopes)
        {
            _problem.Slopes(_slopes);
        }

        Scale();
    }

    /// <summary>Chooses how far to go back to the beginning from how the pull has changed over the last move, and goes by it.</summary>
    private void SetPace()
    {
        double last = _pace;
        if (_hasLast)
        {
            double square = 0;
            double cross = 0;
            for (int j = 0; j < _unknowns; j++)
            {
                double change = _lastEase[j] - (_ease[j] / last);
                square += change * change;
                cross += _lastMove[j] * change;
            }

            _pace = cross > 0 && square > 0 ? Raw.Clamp(cross / square, LeastPace, MostPace) : 1;
        }

        bool anyFixed = false;
        for (int j = 0; j < _unknowns; j++)
        {
            _lastEase[j] = _ease[j] / last;
            anyFixed |= _side[j] != 0;
        }

        _hasLast = true;
        if (_pace == last)
        {
            return;
        }

        if (!anyFixed)
        {
            bool inside = true;
            for (int j = 0; j < _unknowns; j++)
            {
                _move[j] += (_pace - last) * _lastEase[j];
                inside &= Found[j] + _move[j] <= Most[j] && Found[j] + _move[j] >= Least[j];
            }

            if (inside)
            {
                return;
            }
        }

        FindMove(_pace);
    }

    private void Begin()
    {
        if (_begins && !_problem.KnowsSlopes && _problem.TryGuessSlopes(_slopes))
        {
            _fresh = false;
            Scale();
        }
        else
        {
            Learn();
        }

        _begins = false;
    }

    /// <summary>Slopes afresh, where the unknowns stand.</summary>
    private void Learn()
    {
        if (_problem.KnowsSlopes)
        {
            if (!FoundIsDrawn)
            {
                // The last drawing was a trial that was not taken.
                Measures(Found, Residuals);
            }

            _problem.Slopes(_slopes);
        }
        else
        {
            Array.Copy(Found, _trial, _unknowns);
            for (int j = 0; j < _unknowns; j++)
            {
                double step = Found[j] + DifferenceMm <= Most[j] ? DifferenceMm : -DifferenceMm;
                _trial[j] = Found[j] + step;
                bool drawn = Measures(_trial, _trialResidual);
                for (int i = 0; i < _equations; i++)
                {
                    _slopes[(i * _unknowns) + j] = drawn ? (_trialResidual[i] - Residuals[i]) / step : 0;
                }

                _trial[j] = Found[j];
            }

            _fresh = true;
        }

        Scale();
    }

    // An equation that no unknown moves has no row: it holds or does not.
    private void Scale()
    {
        _isFactored = false;
        for (int i = 0; i < _equations; i++)
        {
            double squared = RowSums.Dot(_slopes, i * _unknowns, _slopes, i * _unknowns, _unknowns);
            _scale[i] = squared > RowSpace.RankCut * RowSpace.RankCut ? 1 / Math.Sqrt(squared) : 0;
        }
    }

    private bool Measures(double[] unknowns, double[] residuals)
    {
        if (Drawings >= MostDrawings)
        {
            return false;
        }

        Drawings++;
        FoundIsDrawn = ReferenceEquals(unknowns, Found);
        if (!_problem.TryMeasure(unknowns, residuals))
        {
            return false;
        }

        double sum = 0;
        for (int i = 0; i < _equations; i++)
        {
            sum += residuals[i];
        }

        return Guard.IsFinite(sum);
    }

    private bool IsMet(double[] residuals)
    {
        for (int i = 0; i < _rowCount; i++)
        {
            if (!(Math.Abs(residuals[_rows[i]]) <= ToleranceMm))
            {
                return false;
            }
        }

        return true;
    }

    private double Off(double[] residuals)
    {
        double sum = 0;
        for (int i = 0; i < _rowCount; i++)
        {
            double scale = _scale[_rows[i]];
            double off = residuals[_rows[i]] * (scale > 0 ? scale : 1);
            sum += off * off;
        }

        return Math.Sqrt(sum);
    }

    private static double Length(double[] vector, int count)
    {
        double sum = 0;
        for (int j = 0; j < count; j++)
        {
            sum += vector[j] * vector[j];
        }

        return Math.Sqrt(sum);
    }

    private static double Largest(double[] vector, int count)
    {
        double largest = 0;
        for (int j = 0; j < count; j++)
        {
            largest = Math.Max(largest, Math.Abs(vector[j]));
        }

        return largest;
    }
}
