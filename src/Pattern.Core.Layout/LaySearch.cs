using System;
using System.Linq;

namespace Pattern.Core.Layout;

/// <summary>Looks for an arrangement on less and less cloth.</summary>
/// <remarks>From an arrangement without overlap the cloth is cut shorter, and what overlaps then is moved until nothing does: guided local search, where the overlaps that stay weigh more and
/// more. Each piece that overlaps is moved to the place of least weighted overlap that is found for it, and between those moves all are pushed apart together.</remarks>
internal sealed class LaySearch
{
    // How much of the length is cut off at a time, as parts of it: at first, at most, at least.
    private const double FirstCut = 0.01;
    private const double MostCut = 0.03;
    private const double LeastCut = 0.0003;
    private const double FinerAfterFailure = 0.6;
    private const double CoarserAfterSuccess = 1.3;

    // A success within so many rounds came easily.
    private const int EasyRounds = 30;

    // So many rounds without a gain, and one shortening is given up; so many shortenings given up in succession end the search.
    private const int Patience = 60;
    private const double WorthIt = 0.98;
    private const int MostFailures = 60;

    // Pushing apart is tried where the deepest overlap is less than this part of a mean piece.
    private const double ShallowPart = 0.3;

    private readonly LayTask _task;
    private readonly PlaceSearch _places = new();
    private readonly PieceMover _mover;
    private readonly Overlaps _overlaps;
    private readonly LayRandom _random;
    private readonly LayLimit _limit;
    private readonly double _boundMm;
    private readonly Arrangement _now;
    private readonly Arrangement _lowest;
    private readonly Arrangement _before;
    private readonly int[] _order;

    internal LaySearch(LayTask task, int seed, double boundMm, LayLimit limit)
    {
        int n = task.Copies.Length;
        _task = task;
        _random = new LayRandom(seed);
        _boundMm = boundMm;
        _limit = limit;
        _overlaps = new Overlaps(task);
        _mover = new PieceMover(task, _places, _overlaps, _random);
        _now = new Arrangement(n);
        _lowest = new Arrangement(n);
        _before = new Arrangement(n);
        _order = new int[n];
    }

    /// <summary>Returns the shortest arrangement that was found.</summary>
    internal Arrangement Run()
    {
        _limit.ThrowIfCancelled();
        Arrangement best = LayStart.Lay(_task, _places);
        _limit.ThrowIfCancelled();
        _limit.Found(best.LengthMm);
        double cut = FirstCut;
        int failures = 0;
        while (failures < MostFailures && best.LengthMm > _boundMm && !_limit.IsReached)
        {
            _now.CopyFrom(best);
            Shorten(Math.Max(_boundMm, best.LengthMm * (1 - cut)));
            if (failures > 0 && failures % 2 == 0)
            {
                SwapTwoLarge();
            }

            _overlaps.Begin(_now);
            if (TrySeparate(out int rounds))
            {
                _now.LengthMm = _now.ExtentMm(_task);
                best.CopyFrom(_now);
                Squeeze(best);
                _limit.Found(best.LengthMm);
                cut = rounds < EasyRounds ? Math.Min(MostCut, cut * CoarserAfterSuccess) : cut;
                failures = 0;
            }
            else
            {
                cut = Math.Max(LeastCut, cut * FinerAfterFailure);
                failures++;
            }
        }

        return best;
    }

    // All that lies beyond a line taken at random moves back by as much as is cut off.
    private void Shorten(double lengthMm)
    {
        double less = _now.LengthMm - lengthMm;
        double line = _random.Between(0, _now.LengthMm);
        _now.LengthMm = lengthMm;
        for (int i = 0; i < _order.Length; i++)
        {
            Outline outline = _task.Shapes[_now.Shape[i]].Outline;
            bool isBeyond = _now.X[i] + ((outline.MinX + outline.MaxX) / 2) > line;
            _now.Put(_task, i, isBeyond ? _now.X[i] - less : _now.X[i], _now.Y[i]);
        }
    }

    private void SwapTwoLarge()
    {
        const double LargePart = 0.75;
        const int MostTries = 20;
        int[] byArea = [.. Enumerable.Range(0, _order.Length).OrderByDescending(i => _task.Shapes[_now.Shape[i]].AreaMm2)];
        int large = 0;
        for (double area = 0; large < byArea.Length && area < LargePart * _task.AreaMm2; large++)
        {
            area += _task.Shapes[_now.Shape[byArea[large]]].AreaMm2;
        }

        for (int tries = 0; tries < MostTries; tries++)
        {
            int one = byArea[_random.Below(large)];
            int other = byArea[_random.Below(large)];
            if (_task.Copies[one][0] != _task.Copies[other][0])
            {
                Outline first = _task.Shapes[_now.Shape[one]].Outline;
                Outline second = _task.Shapes[_now.Shape[other]].Outline;
                double x = _now.X[one] + first.MinX;
                double y = _now.Y[one] + first.MinY;
                _now.Put(_task, one, _now.X[other] + second.MinX - first.MinX, _now.Y[other] + second.MinY - first.MinY);
                _now.Put(_task, other, x - second.MinX, y - second.MinY);
                return;
            }
        }
    }

    // What lies well may lie shorter still when all are pushed together a little.
    private void Squeeze(Arrangement best)
    {
        const double First = 0.002;
        const double Least = 0.00005;
        const double Grow = 1.5;
        for (double part = First; part > Least && !_limit.IsReached;)
        {
            _now.CopyFrom(best);
            _now.LengthMm = best.LengthMm * (1 - part);
            if (_now.LengthMm >= _boundMm && PushApart.TryResolve(_task, _now, _limit))
            {
                _now.LengthMm = _now.ExtentMm(_task);
                best.CopyFrom(_now);
                part *= Grow;
            }
            else
            {
                part /= 2;
            }
        }
    }

    private bool TrySeparate(out int rounds)
    {
        _lowest.CopyFrom(_now);
        double lowest = _overlaps.Total(out _);
        int idle = 0;
        for (rounds = 0; lowest > 0 && idle < Patience && !_limit.IsReached; rounds++)
        {
            MoveAllThatOverlap();
            double total = _overlaps.Total(out double most);
            if (total > 0 && most < ShallowPart * _task.CellYMm)
            {
                total = PushAllApart(total, ref most);
            }

            idle = total < lowest * WorthIt ? 0 : idle + 1;
            if (total < lowest)
            {
                lowest = total;
                _lowest.CopyFrom(_now);
            }

            if (total > 0)
            {
                _overlaps.Reweigh(most);
            }
        }

        _now.CopyFrom(_lowest);
        return lowest == 0;
    }

    private void MoveAllThatOverlap()
    {
        int count = 0;
        for (int i = 0; i < _order.Length; i++)
        {
            if (!_overlaps.IsFree(i))
            {
                _order[count++] = i;
            }
        }

        for (int i = count - 1; i > 0; i--)
        {
            int j = _random.Below(i + 1);
            (_order[i], _order[j]) = (_order[j], _order[i]);
        }

        for (int i = 0; i < count && !_limit.IsReached; i++)
        {
            _mover.Move(_now, _order[i], _limit);
        }
    }

    // Kept where it is a gain.
    private double PushAllApart(double total, ref double most)
    {
        _before.CopyFrom(_now);
        _ = PushApart.TryResolve(_task, _now, _limit);
        _overlaps.MeasureAll(_now);
        double pushed = _overlaps.Total(out double deepest);
        if (pushed < total)
        {
            most = deepest;
            return pushed;
        }

        _now.CopyFrom(_before);
        _overlaps.MeasureAll(_now);
        return total;
    }
}
