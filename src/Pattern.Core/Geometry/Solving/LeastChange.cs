using System;

namespace Pattern.Core.Geometry;

/// <summary>Finds the least change of a few unknowns, within limits, that meets a few equations.</summary>
/// <remarks>
/// <para>Each step looks, among all moves that the equations ask for to first order and the limits allow, for the one that ends nearest to where
/// everything began. Limits take part through the set of unknowns that stand at one: what would go beyond is put there, what would come back is let go. That is the projection
/// onto a polyhedron, found by a semi-smooth Newton method on as many multipliers as there are equations.</para>
/// <para>The equations converge quadratically. The change itself becomes least at a pace of its own: the equations are curved, so a full move
/// towards the beginning is too much or too little; the pace of Barzilai and Borwein, from the last two moves, is about right.</para>
/// <para>One object is room for problems of one size and may be used again and again; a search allocates nothing. Not for several threads at once.</para>
/// </remarks>
internal sealed partial class LeastChange
{
    /// <summary>The one tolerance: what is off by no more holds. Cut-offs of different sizes lose conflicts that lie between them.</summary>
    internal const double ToleranceMm = 1e-9;

    /// <summary>What a turn of one radian counts: an arm of 100 mm is what panels turn about.</summary>
    internal const double MmPerRad = 100;

    /// <summary>A change is least where going on would gain less than this.</summary>
    internal const double LeastMm = 1e-6;

    /// <summary>A search takes no more steps than this.</summary>
    internal const int MostSteps = 120;

    /// <summary>A step tries no more drawings than this, each half as far.</summary>
    internal const int MostTrials = 10;

    /// <summary>What is drawn from a few unknowns is drawn no more often than this; what is met is met in ten or twenty.</summary>
    internal const int UsualMostDrawings = 200;

    // The last steps only meet the equations, so that a search that is still on its way to the least change ends in one that holds.
    private const int Settling = 15;

    // Without a better residual for so many steps the equations contradict each other, here at least.
    private const int Patience = 12;
    private const int RoundsOfLimits = 12;
    private const double DifferenceMm = 1e-4;

    private readonly int _unknowns;
    private readonly int _equations;
    private readonly RowSpace _space;
    private readonly double[] _slopes;
    private readonly double[] _scale;
    private readonly double[] _pull;
    private readonly double[] _move;
    private readonly double[] _ease;
    private readonly double[] _lastEase;
    private readonly double[] _lastMove;
    private readonly double[] _turned;
    private readonly double[] _wanted;
    private readonly double[] _along;
    private readonly double[] _factors;
    private readonly double[] _trial;
    private readonly double[] _trialResidual;
    private readonly int[] _rows;
    private readonly int[] _free;
    private readonly sbyte[] _side;

    private ILeastChangeProblem _problem = null!;
    private int _rowCount;
    private double _pace;
    private bool _fresh;
    private bool _hasLast;

    // Whether the rows are factored as they stand: with these slopes, and over the unknowns that now stand at no limit.
    private bool _isFactored;
    private bool _begins;

    internal LeastChange(int unknowns, int equations)
    {
        _unknowns = unknowns;
        _equations = equations;
        _space = new RowSpace(equations, unknowns);
        Start = new double[unknowns];
        Least = new double[unknowns];
        Most = new double[unknowns];
        Found = new double[unknowns];
        Residuals = new double[equations];
        Asked = new bool[equations];
        for (int i = 0; i < equations; i++)
        {
            Asked[i] = true;
        }

        _slopes = new double[equations * unknowns];
        _scale = new double[equations];
        _pull = new double[unknowns];
        _move = new double[unknowns];
        _ease = new double[unknowns];
        _lastEase = new double[unknowns];
        _lastMove = new double[unknowns];
        _turned = new double[unknowns];
        _wanted = new double[equations];
        _along = new double[Math.Max(unknowns, equations)];
        _factors = new double[equations];
        _trial = new double[unknowns];
        _trialResidual = new double[equations];
        _rows = new int[equations];
        _free = new int[unknowns];
        _side = new sbyte[unknowns];
    }

    /// <summary>Where the unknowns stand before; set by the caller.</summary>
    internal double[] Start { get; }

    /// <summary>The lower limits; set by the caller.</summary>
    internal double[] Least { get; }

    /// <summary>The upper limits; set by the caller.</summary>
    internal double[] Most { get; }

    /// <summary>Which equations have to hold; all unless the caller says otherwise.</summary>
    internal bool[] Asked { get; }

    /// <summary>What was found.</summary>
    internal double[] Found { get; }

    /// <summary>By how much each equation is off there, asked for or not.</summary>
    internal double[] Residuals { get; }

    /// <summary>Whether it is only asked if the equations can hold, and not what comes nearest: what creeps is given up sooner.</summary>
    internal bool OnlyVerdict { get; set; }

    /// <summary>A search draws no more often than this: then nothing can be drawn any more.</summary>
    internal int MostDrawings { get; set; } = int.MaxValue;

    /// <summary>How many steps the last search took.</summary>
    internal int Steps { get; private set; }

    /// <summary>How often the last search drew and measured.</summary>
    internal int Drawings { get; private set; }

    /// <summary>Whether what was drawn last is what was found, and not a trial.</summary>
    internal bool FoundIsDrawn { get; private set; }

    /// <summary>Searches.</summary>
    internal LeastChangeEnd Solve(ILeastChangeProblem problem)
    {
        _problem = problem;
        Steps = 0;
        Drawings = 0;
        _rowCount = 0;
        for (int i = 0; i < _equations; i++)
        {
            if (Asked[i])
            {
                _rows[_rowCount++] = i;
            }
        }

        bool inside = true;
        for (int j = 0; j < _unknowns; j++)
        {
            Found[j] = Raw.Clamp(Start[j], Least[j], Most[j]);
            inside &= Found[j] == Start[j];
        }

        if (!Measures(Found, Residuals))
        {
            return LeastChangeEnd.NotDrawn;
        }

        if (inside && IsMet(Residuals))
        {
            return LeastChangeEnd.Unchanged;
        }

        _begins = true;
        LeastChangeEnd end = Search(MostSteps);
        if (end == LeastChangeEnd.NotMet && MeetsDamped())
        {
            if (OnlyVerdict)
            {
                return LeastChangeEnd.Met;
            }

            end = Search(Steps + MostSteps);
            end = end == LeastChangeEnd.NotMet && MeetsDamped() ? LeastChangeEnd.Met : end;
        }

        return end;
    }

    /// <summary>Whether an unknown ended at a limit: -1 at the lower, 1 at the upper, 0 at neither.</summary>
    internal int LimitOf(int unknown)
        => Found[unknown] >= Most[unknown] - ToleranceMm ? 1 : Found[unknown] <= Least[unknown] + ToleranceMm ? -1 : 0;

    /// <summary>Marks the equations that say nothing that those before them do not say, at what was found.</summary>
    internal void MarkRedundant(bool[] redundant)
    {
        Array.Clear(redundant, 0, redundant.Length);
        Learn();
        Array.Clear(_side, 0, _unknowns);
        _isFactored = false;
        WriteRows();
        for (int i = _space.Rank; i < _rowCount; i++)
        {
            redundant[_rows[_space.Order[i]]] = true;
        }
    }

    private LeastChangeEnd Search(int most)
    {
        _pace = 1;
        _hasLast = false;
        Array.Clear(_side, 0, _unknowns);
        _isFactored = false;
        Begin();
        double best = double.PositiveInfinity;
        int bestAt = Steps;
        while (Steps < most)
        {
            bool settling = Steps >= most - Settling;
            FindMove(settling ? 0 : _pace);
            if (!settling && _space.Rank < _unknowns)
            {
                SetPace();
            }

            bool met = IsMet(Residuals);
            double length = Largest(_move, _unknowns);
            if (met && (settling || length <= LeastMm * _pace))
            {
                if (settling || _fresh || _problem.KnowsSlopes || _space.Rank == _unknowns)
                {
                    return settling ? LeastChangeEnd.Met : LeastChangeEnd.Least;
                }

                Steps++;
                Learn();
                continue;
            }

            double off = Off(Residuals);
            if (off < 0.9 * best)
            {
                best = off;
                bestAt = Steps;
            }

            if (!met && (Steps - bestAt > Patience || length < 1e-3 * ToleranceMm))
            {
                if (_fresh || _problem.KnowsSlopes)
                {
                    return LeastChangeEnd.NotMet;
                }

                bestAt = Steps++;
                Learn();
                continue;
            }

            Steps++;
            if (!TryMove(off))
            {
                if (!_fresh && !_problem.KnowsSlopes)
                {
                    Learn();
                    continue;
                }

                return met ? LeastChangeEnd.Met : LeastChangeEnd.NotMet;
            }
        }

        return IsMet(Residuals) ? LeastChangeEnd.Met : LeastChangeEnd.NotMet;
    }
}
