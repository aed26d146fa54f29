using System;
using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>Searching, and what came of it.</content>
internal sealed partial class TruingRoom
{
    /// <summary>Trues what was bound.</summary>
    /// <param name="given">The panels as they came: what is returned where nothing is to be changed.</param>
    /// <param name="panels">The panels that were bound: those, or with curves for arcs.</param>
    /// <param name="movables">What may move.</param>
    /// <param name="conditions">What must hold.</param>
    internal TruingOutcome True(Panel[] given, Panel[] panels, Movable[] movables, Condition[] conditions)
    {
        ILeastChangeProblem problem = this;
        problem.TryMeasure(_search.Start, _offByHand);
        LeastChangeEnd end = _search.Solve(problem);
        int steps = _search.Steps;
        if (end == LeastChangeEnd.NotDrawn && _sweeps.Length > 0)
        {
            return new TruingOutcome(given, [.. movables.Select(TruingMove.None)], [], [], isLeast: false, steps) { Refusal = SweepMissed(panels) };
        }

        bool isMet = end is LeastChangeEnd.Least or LeastChangeEnd.Met or LeastChangeEnd.Unchanged;
        if (isMet)
        {
            _search.MarkRedundant(_redundant);
        }
        else
        {
            Array.Clear(_redundant, 0, _redundant.Length);
            Conflict.Isolate(_search, problem);
            problem.TryMeasure(_search.Found, _search.Residuals);
        }

        Panel[] trued = given;
        ConstructionException? refusal = null;
        if (isMet && !(end == LeastChangeEnd.Unchanged && SweepsAreAsDrawn))
        {
            try
            {
                trued = TruingRedraw.Panels(this, panels);
            }
            catch (ConstructionException crossed)
            {
                // What holds by its lengths and angles need not be a panel: its outline may cross itself, or a notch may lie beyond its edge.
                refusal = crossed;
            }
        }

        var results = new List<ConditionResult>(_layout.Equations.Length);
        var conflict = new List<ConditionResult>();
        for (int e = 0; e < _layout.Equations.Length; e++)
        {
            ConditionResult result = Result(e, conditions, isMet);
            bool contradicts = !isMet && _search.Asked[e];
            if (contradicts)
            {
                conflict.Add(result);
            }

            if (contradicts || _layout.Equations[e].Condition < conditions.Length)
            {
                results.Add(result);
            }
        }

        return new TruingOutcome(trued, Moves(movables, panels), [.. results], [.. conflict], end is LeastChangeEnd.Least or LeastChangeEnd.Unchanged, steps) { Refusal = refusal };
    }

    /// <summary>Whether everything holds as it was bound.</summary>
    internal bool Holds()
    {
        ILeastChangeProblem problem = this;
        return problem.TryMeasure(_search.Start, _offByHand) && Array.TrueForAll(_offByHand, off => Math.Abs(off) <= LeastChange.ToleranceMm);
    }

    internal TruingLayout Layout => _layout;

    /// <summary>How far a spot has gone.</summary>
    internal Vector2D Gone(int spot) => new(_goneX[spot], _goneY[spot]);

    internal double NotchGoneMm(int slot) => NotchGone(_layout.Notches[slot].Unknown);

    private ConditionResult Result(int e, Condition[] conditions, bool isMet)
    {
        TruingEquation equation = _layout.Equations[e];
        double unit = equation.IsAngle ? LeastChange.MmPerRad : 1;
        Condition condition = equation.Condition < conditions.Length ? conditions[equation.Condition] : Condition.Inside(equation.Name);
        double off = _search.Residuals[e];
        return new ConditionResult(
            condition,
            equation.Name,
            equation.IsAngle,
            _offByHand[e] / unit,
            off / unit,
            Math.Abs(off) <= LeastChange.ToleranceMm,
            isMet && _redundant[e],
            TruingWords.Of(condition, equation.Name, _offByHand[e] / unit));
    }

    private TruingMove[] Moves(Movable[] movables, Panel[] panels)
    {
        var moves = new TruingMove[movables.Length];
        for (int m = 0; m < movables.Length; m++)
        {
            double across = 0;
            double up = 0;
            double farthest = 0;
            bool atLimit = false;
            for (int j = 0; j < _layout.Unknowns.Length; j++)
            {
                if (_layout.Unknowns[j].Movable != m)
                {
                    continue;
                }

                atLimit |= _search.LimitOf(j) != 0;
                if (movables[m].Kind == MovableKind.Notch)
                {
                    farthest = Math.Abs(_mobility[j] * _search.Found[j]);
                }
            }

            foreach (TruingFollow follow in _layout.Follows.Where(f => f.Way != FollowWay.Swept && _layout.Unknowns[f.Unknown].Movable == m))
            {
                Vector2D own = Own(follow.Spot, m);
                if (own.LengthMm > farthest)
                {
                    (across, up, farthest) = (own.XMm, own.YMm, own.LengthMm);
                }
            }

            if (movables[m].Kind == MovableKind.OneSweep)
            {
                farthest = SweptOffHandMm(m, panels);
            }

            moves[m] = new TruingMove(movables[m], across, up, farthest, atLimit);
        }

        return moves;
    }

    // What one movable did to a spot that may follow several.
    private Vector2D Own(int spot, int movable)
    {
        Vector2D own = default;
        for (int f = _firstFollow[spot]; f < _firstFollow[spot + 1]; f++)
        {
            int j = _layout.Follows[f].Unknown;
            if (_layout.Unknowns[j].Movable == movable)
            {
                own += _paths[j] is null ? new Vector2D(_followX[f] * _search.Found[j], _followY[f] * _search.Found[j]) : new Vector2D(_pathX[j], _pathY[j]);
            }
        }

        return own;
    }
}
