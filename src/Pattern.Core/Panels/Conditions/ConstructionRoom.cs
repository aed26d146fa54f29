using System;
using System.Collections.Generic;
using System.Threading;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The unknowns of one drawing of a construction. Used again for the next, by one thread at a time.</summary>
internal sealed class ConstructionRoom<TGiven, TDrawn> : ILeastChangeProblem
{
    private readonly Construction<TGiven, TDrawn> _construction;
    private readonly LeastChange _search;
    private TGiven _given = default!;
    private TDrawn? _drawn;
    private LeastChangeEnd _end;

    internal ConstructionRoom(Construction<TGiven, TDrawn> construction)
    {
        _construction = construction;
        _search = new LeastChange(construction.Unknowns.Length, construction.Measures.Length);
    }

    bool ILeastChangeProblem.KnowsSlopes => false;

    internal int Drawings => _search.Drawings;

    internal LeastChangeEnd Solve(TGiven given, int mostDrawings = LeastChange.UsualMostDrawings)
    {
        _search.MostDrawings = mostDrawings;
        _given = given;
        _drawn = default;
        ConstructionUnknown<TGiven>[] unknowns = _construction.Unknowns;
        for (int j = 0; j < unknowns.Length; j++)
        {
            _search.Start[j] = unknowns[j].Start(given);
            _search.Least[j] = unknowns[j].Least(given);
            _search.Most[j] = unknowns[j].Most(given);
        }

        _end = _search.Solve(this);
        if (_end != LeastChangeEnd.NotDrawn && !_search.FoundIsDrawn)
        {
            // The last drawing was a trial.
            TryDraw(_search.Found);
        }

        // The room is kept; what was given is not.
        _given = default!;
        return _end;
    }

    internal ConstructionOutcome<TDrawn> Outcome()
    {
        bool isMet = _end is LeastChangeEnd.Least or LeastChangeEnd.Met or LeastChangeEnd.Unchanged;
        var off = new List<string>();
        var limits = new List<string>();
        for (int i = 0; i < _construction.Measures.Length && !isMet; i++)
        {
            double by = _search.Residuals[i];
            if (!(Math.Abs(by) <= LeastChange.ToleranceMm))
            {
                ConstructionMeasure<TGiven, TDrawn> measure = _construction.Measures[i];
                off.Add(measure.Name + (measure.IsAngle
                    ? FormattableString.Invariant($" is off by {by / LeastChange.MmPerRad * 180 / Math.PI:0.######} degrees")
                    : FormattableString.Invariant($" is off by {by:0.######} mm")));
            }
        }

        for (int j = 0; j < _construction.Unknowns.Length; j++)
        {
            if (_search.LimitOf(j) != 0)
            {
                limits.Add(_construction.Unknowns[j].Name);
            }
        }

        return new ConstructionOutcome<TDrawn>(_drawn, isMet, off.ToArray(), limits.ToArray(), _search.Drawings);
    }

    bool ILeastChangeProblem.TryGuessSlopes(double[] slopes)
    {
        if (_construction.FirstSlopes is not { } first)
        {
            return false;
        }

        first(_given, slopes);
        return true;
    }

    bool ILeastChangeProblem.TryMeasure(double[] unknowns, double[] residuals)
    {
        if (!TryDraw(unknowns))
        {
            return false;
        }

        ConstructionMeasure<TGiven, TDrawn>[] measures = _construction.Measures;
        for (int i = 0; i < measures.Length; i++)
        {
            residuals[i] = measures[i].Off(_given, _drawn!);
        }

        return true;
    }

    void ILeastChangeProblem.Slopes(double[] slopes)
    {
    }

    // What throws here says that this cannot be drawn; the search goes a shorter way.
    private bool TryDraw(double[] unknowns)
    {
        try
        {
            _drawn = _construction.Drawing(_given, new ConstructionUnknowns(unknowns));
            return _drawn is not null;
        }
        catch (ConstructionException)
        {
            return false;
        }
    }
}

/// <summary>Keeps the room of a construction, so that the next drawing uses it again.</summary>
internal sealed class ConstructionRooms<TGiven, TDrawn>
{
    private ConstructionRoom<TGiven, TDrawn>? _free;

    internal ConstructionRoom<TGiven, TDrawn> Rent(Construction<TGiven, TDrawn> construction) => Interlocked.Exchange(ref _free, null) ?? new ConstructionRoom<TGiven, TDrawn>(construction);

    internal void Return(ConstructionRoom<TGiven, TDrawn> room) => Volatile.Write(ref _free, room);
}
