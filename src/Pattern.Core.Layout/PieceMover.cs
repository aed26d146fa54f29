using System;

namespace Pattern.Core.Layout;

/// <summary>Moves one copy to the place of least weighted overlap that is found for it, in any of the ways in which it may lie.</summary>
internal sealed class PieceMover
{
    // Places taken at random: on all the cloth, and about where the piece lies now; the best of them are settled.
    private const int FarPlaces = 12;
    private const int NearPlaces = 6;
    private const int Settled = 2;

    // How far a piece slides along one line, as a part of its length or width.
    private const double Reach = 0.5;

    private readonly LayTask _task;
    private readonly PlaceSearch _places;
    private readonly Overlaps _overlaps;
    private readonly LayRandom _random;
    private readonly double[] _x = new double[Settled];
    private readonly double[] _y = new double[Settled];
    private readonly double[] _overlap = new double[Settled];

    private double _bestX;
    private double _bestY;
    private int _bestShape;
    private double _best;

    internal PieceMover(LayTask task, PlaceSearch places, Overlaps overlaps, LayRandom random)
    {
        _task = task;
        _places = places;
        _overlaps = overlaps;
        _random = random;
    }

    internal void Move(Arrangement arrangement, int copy, LayLimit limit)
    {
        double before = _overlaps.Weighted(copy);
        if (before <= 0)
        {
            return;
        }

        limit.Moved();
        _best = before;
        foreach (int shape in _task.Copies[copy])
        {
            Try(arrangement, copy, shape);
            if (_best <= 0)
            {
                break;
            }
        }

        if (_best < before)
        {
            arrangement.X[copy] = _bestX;
            arrangement.Y[copy] = _bestY;
            arrangement.Shape[copy] = _bestShape;
            _overlaps.Measure(arrangement, copy);
        }
    }

    private void Try(Arrangement arrangement, int copy, int shape)
    {
        LayShape its = _task.Shapes[shape];
        if (!_places.Begin(_task, its, arrangement.LengthMm))
        {
            return;
        }

        for (int other = 0; other < arrangement.X.Length; other++)
        {
            if (other != copy)
            {
                _places.Add(_task.KeepOutOf(arrangement.Shape[other], shape), arrangement.X[other], arrangement.Y[other], _overlaps.WeightOf(copy, other));
            }
        }

        // Turned about its middle, where it is turned.
        Outline now = _task.Shapes[arrangement.Shape[copy]].Outline;
        double reach = Reach * Math.Max(its.Outline.AlongMm, its.Outline.AcrossMm);
        double middleX = Within(arrangement.X[copy] + ((now.MinX + now.MaxX - its.Outline.MinX - its.Outline.MaxX) / 2), _places.MinX, _places.MaxX);
        double middleY = Within(arrangement.Y[copy] + ((now.MinY + now.MaxY - its.Outline.MinY - its.Outline.MaxY) / 2), _places.MinY, _places.MaxY);
        Settle(middleX, middleY, _places.OverlapAt(middleX, middleY, double.MaxValue), reach, shape);

        int kept = 0;
        for (int i = 0; i < FarPlaces + NearPlaces && _best > 0; i++)
        {
            bool isFar = i < FarPlaces;
            double x = isFar ? _random.Between(_places.MinX, _places.MaxX) : Within(middleX + _random.Between(-reach, reach), _places.MinX, _places.MaxX);
            double y = isFar ? _random.Between(_places.MinY, _places.MaxY) : Within(middleY + _random.Between(-reach, reach), _places.MinY, _places.MaxY);
            kept = Keep(kept, x, y);
        }

        for (int i = 0; i < kept && _best > 0; i++)
        {
            Settle(_x[i], _y[i], _overlap[i], reach, shape);
        }
    }

    private int Keep(int kept, double x, double y)
    {
        double bound = kept < Settled ? double.MaxValue : _overlap[kept - 1];
        double overlap = _places.OverlapAt(x, y, bound);
        if (overlap >= bound)
        {
            return kept;
        }

        int at = kept < Settled ? kept++ : kept - 1;
        for (; at > 0 && _overlap[at - 1] > overlap; at--)
        {
            _overlap[at] = _overlap[at - 1];
            _x[at] = _x[at - 1];
            _y[at] = _y[at - 1];
        }

        _overlap[at] = overlap;
        _x[at] = x;
        _y[at] = y;
        return kept;
    }

    private void Settle(double x, double y, double overlap, double reach, int shape)
    {
        double settled = _places.Settle(ref x, ref y, overlap, reach);
        if (settled < _best)
        {
            _best = settled;
            _bestX = x;
            _bestY = y;
            _bestShape = shape;
        }
    }

    private static double Within(double value, double least, double most) => Math.Max(least, Math.Min(most, value));
}
