using System;
using System.Linq;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <summary>The numbers of one body in the layout of a plan: draws and measures for <see cref="LeastChange"/>. Used again for the next body, by one thread at a time.</summary>
internal sealed partial class TruingRoom : ILeastChangeProblem
{
    private readonly TruingLayout _layout;
    private readonly LeastChange _search;

    // Where the points of each piece were, eight numbers each; where they are; and how its length changes with them.
    private readonly double[] _base;
    private readonly double[] _now;
    private readonly double[] _lengthSlopes;
    private readonly double[] _lengths;
    private readonly bool[] _needsLength;
    private readonly bool[] _moves;
    private readonly int[] _startTo;
    private readonly int[] _endFrom;

    // How far each spot has gone, and which follows are its own.
    private readonly double[] _goneX;
    private readonly double[] _goneY;
    private readonly int[] _firstFollow;
    private readonly double[] _followX;
    private readonly double[] _followY;

    private readonly double[] _wanted;
    private readonly double[] _ease;
    private readonly double[] _sense;
    private readonly double[] _notchMm;
    private readonly double[] _mobility;
    private readonly CurvePath?[] _paths;
    private readonly double[] _pathFromMm;
    private readonly Point2D[] _pathFrom;
    private readonly double[] _pathX;
    private readonly double[] _pathY;
    private readonly double[] _tangentX;
    private readonly double[] _tangentY;
    private readonly double[] _offByHand;
    private readonly bool[] _redundant;
    private readonly SweptLine[] _sweeps;
    private readonly bool[] _isSwept;
    private readonly Vector2D[] _sweptGoing;
    private readonly Point2D[] _sweptApexes;
    private readonly Vector2D[] _apexesGoing;
    private double[] _unknownsNow = [];

    internal TruingRoom(TruingLayout layout)
    {
        _layout = layout;
        int pieces = layout.Pieces.Length;
        int unknowns = layout.Unknowns.Length;
        int equations = layout.Equations.Length;
        _search = new LeastChange(unknowns, equations);
        _base = new double[8 * pieces];
        _now = new double[8 * pieces];
        _lengthSlopes = new double[8 * pieces];
        _lengths = new double[pieces];
        _needsLength = new bool[pieces];
        _moves = new bool[pieces];
        _startTo = new int[pieces];
        _endFrom = new int[pieces];
        _goneX = new double[layout.SpotCount];
        _goneY = new double[layout.SpotCount];
        _firstFollow = new int[layout.SpotCount + 1];
        _followX = new double[layout.Follows.Length];
        _followY = new double[layout.Follows.Length];
        _wanted = new double[equations];
        _ease = new double[equations];
        _sense = new double[layout.Panels.Length];
        _notchMm = new double[layout.Notches.Length];
        _mobility = new double[unknowns];
        _paths = new CurvePath?[unknowns];
        _pathFromMm = new double[unknowns];
        _pathFrom = new Point2D[unknowns];
        _pathX = new double[unknowns];
        _pathY = new double[unknowns];
        _tangentX = new double[unknowns];
        _tangentY = new double[unknowns];
        _offByHand = new double[equations];
        _redundant = new bool[equations];
        int mostDarts = layout.Sweeps.Length == 0 ? 0 : layout.Sweeps.Max(s => s.Apexes.Length);
        _sweeps = [.. layout.Sweeps.Select(s => new SweptLine(s.Apexes.Length))];
        _isSwept = new bool[layout.Sweeps.Length == 0 ? 0 : layout.SpotCount];
        _sweptGoing = new Vector2D[4 * (mostDarts + 1)];
        _sweptApexes = new Point2D[mostDarts];
        _apexesGoing = new Vector2D[mostDarts];
        for (int spot = 0; spot < _isSwept.Length; spot++)
        {
            _isSwept[spot] = layout.IsSwept(spot);
        }

        for (int f = 0, spot = 0; spot <= layout.SpotCount; spot++)
        {
            while (f < layout.Follows.Length && layout.Follows[f].Spot < spot)
            {
                f++;
            }

            _firstFollow[spot] = f;
        }

        for (int i = 0; i < pieces; i++)
        {
            for (int point = 0; point < 4; point++)
            {
                int spot = layout.Pieces[i].Spot(point);
                _moves[i] |= spot >= 0 && (_firstFollow[spot] < _firstFollow[spot + 1] || layout.IsSwept(spot));
            }
        }

        foreach (TruingEquation equation in layout.Equations)
        {
            foreach (TruingTerm term in equation.Terms.Concat(equation.EasedWhole ?? []))
            {
                _needsLength[term.Index] |= term.Kind == TermKind.Length;
            }
        }
    }

    bool ILeastChangeProblem.KnowsSlopes => true;

    internal LeastChange Search => _search;

    bool ILeastChangeProblem.TryMeasure(double[] unknowns, double[] residuals)
    {
        _unknownsNow = unknowns;
        Go(unknowns);
        if (!TrySweep(unknowns))
        {
            return false;
        }

        for (int i = 0; i < _moves.Length; i++)
        {
            if (!_moves[i])
            {
                continue;
            }

            TruingPiece piece = _layout.Pieces[i];
            int at = 8 * i;
            for (int point = 0; point < 4; point++)
            {
                int spot = piece.Spot(point);
                if (spot >= 0)
                {
                    _now[at + (2 * point)] = _base[at + (2 * point)] + _goneX[spot];
                    _now[at + (2 * point) + 1] = _base[at + (2 * point) + 1] + _goneY[spot];
                }
            }

            if (_needsLength[i])
            {
                _lengths[i] = LengthOf(i);
            }
        }

        TruingEquation[] equations = _layout.Equations;
        for (int e = 0; e < equations.Length; e++)
        {
            double sum = Sum(equations[e].Terms) - _wanted[e];
            if (equations[e].Eased is { } eased)
            {
                sum -= _ease[e] * Sum(eased) / Sum(equations[e].EasedWhole!);
            }

            residuals[e] = equations[e].IsAngle ? Math.IEEERemainder(sum, 2 * Math.PI) * LeastChange.MmPerRad : sum;
        }

        return true;
    }

    bool ILeastChangeProblem.TryGuessSlopes(double[] slopes) => false;

    void ILeastChangeProblem.Slopes(double[] slopes)
    {
        int unknowns = _layout.Unknowns.Length;
        Array.Clear(slopes, 0, slopes.Length);
        LearnSweeps();
        for (int i = 0; i < _moves.Length; i++)
        {
            if (_moves[i] && _needsLength[i])
            {
                WriteLengthSlopes(i);
            }
        }

        TruingEquation[] equations = _layout.Equations;
        for (int e = 0; e < equations.Length; e++)
        {
            int row = e * unknowns;
            AddSlopes(equations[e].Terms, equations[e].IsAngle ? LeastChange.MmPerRad : 1, slopes, row);
            if (equations[e].Eased is { } eased)
            {
                double whole = Sum(equations[e].EasedWhole!);
                AddSlopes(eased, -_ease[e] / whole, slopes, row);
                AddSlopes(equations[e].EasedWhole!, _ease[e] * Sum(eased) / (whole * whole), slopes, row);
            }
        }
    }

    private void Go(double[] unknowns)
    {
        for (int j = 0; j < unknowns.Length; j++)
        {
            if (_paths[j] is { } path)
            {
                GoAlong(path, j, unknowns[j]);
            }
        }

        TruingFollow[] follows = _layout.Follows;
        for (int spot = 0; spot < _goneX.Length; spot++)
        {
            if (_isSwept.Length > 0 && _isSwept[spot])
            {
                continue;
            }

            double x = 0;
            double y = 0;
            for (int f = _firstFollow[spot]; f < _firstFollow[spot + 1]; f++)
            {
                int j = follows[f].Unknown;
                if (_paths[j] is null)
                {
                    x += _followX[f] * unknowns[j];
                    y += _followY[f] * unknowns[j];
                }
                else
                {
                    x += _pathX[j];
                    y += _pathY[j];
                    _followX[f] = _tangentX[j];
                    _followY[f] = _tangentY[j];
                }
            }

            _goneX[spot] = x;
            _goneY[spot] = y;
        }
    }

    private void GoAlong(CurvePath path, int j, double unknown)
    {
        PathSegment segment = path.SegmentsRaw[path.Locate(Raw.Clamp(_pathFromMm[j] + (_mobility[j] * unknown), 0, path.LengthMm), out double t)];
        Vector2D gone = unknown == 0 ? default : segment.PointAtRaw(t) - _pathFrom[j];
        Vector2D tangent = segment.DerivativeAtRaw(t);
        double perSpeed = tangent.LengthMm > 0 ? _mobility[j] / tangent.LengthMm : 0;
        _pathX[j] = gone.XMm;
        _pathY[j] = gone.YMm;
        _tangentX[j] = tangent.XMm * perSpeed;
        _tangentY[j] = tangent.YMm * perSpeed;
    }

    private double LengthOf(int piece)
    {
        int at = 8 * piece;
        return _layout.Pieces[piece].Kind == PathSegmentKind.Cubic
            ? Cubic(_now, at).LengthMm()
            : Raw.Hypot(_now[at + 6] - _now[at], _now[at + 7] - _now[at + 1]);
    }

    private static CubicBezier Cubic(double[] points, int at)
        => new(points[at], points[at + 1], points[at + 2], points[at + 3], points[at + 4], points[at + 5], points[at + 6], points[at + 7]);

    private void WriteLengthSlopes(int piece)
    {
        int at = 8 * piece;
        if (_layout.Pieces[piece].Kind == PathSegmentKind.Cubic)
        {
            Cubic(_now, at).WriteLengthSlopes(_lengthSlopes, at);
            return;
        }

        double length = _lengths[piece];
        double x = length > 0 ? (_now[at + 6] - _now[at]) / length : 0;
        double y = length > 0 ? (_now[at + 7] - _now[at + 1]) / length : 0;
        (_lengthSlopes[at], _lengthSlopes[at + 1], _lengthSlopes[at + 6], _lengthSlopes[at + 7]) = (-x, -y, x, y);
    }

    private double Sum(TruingTerm[] terms)
    {
        double sum = 0;
        foreach (TruingTerm term in terms)
        {
            double sense = term.Panel >= 0 ? _sense[term.Panel] : 1;
            sum += sense * term.Factor * (term.Kind switch
            {
                TermKind.Length => _lengths[term.Index],
                TermKind.StartAngle => AngleRad(term.Index, 0, _startTo[term.Index]),
                TermKind.EndAngle => AngleRad(term.Index, _endFrom[term.Index], 3),
                TermKind.Notch => _notchMm[term.Index] + NotchGone(_layout.Notches[term.Index].Unknown),
                _ => 1,
            });
        }

        return sum;
    }

    private double AngleRad(int piece, int from, int to)
    {
        int at = 8 * piece;
        return Math.Atan2(_now[at + (2 * to) + 1] - _now[at + (2 * from) + 1], _now[at + (2 * to)] - _now[at + (2 * from)]);
    }

    private double NotchGone(int unknown) => unknown >= 0 ? _mobility[unknown] * _unknownsNow[unknown] : 0;

    private void AddSlopes(TruingTerm[] terms, double factor, double[] slopes, int row)
    {
        foreach (TruingTerm term in terms)
        {
            double times = factor * term.Factor * (term.Panel >= 0 ? _sense[term.Panel] : 1);
            switch (term.Kind)
            {
                case TermKind.Length when _moves[term.Index]:
                    for (int point = 0; point < 4; point++)
                    {
                        int at = (8 * term.Index) + (2 * point);
                        AddSlopes(_layout.Pieces[term.Index].Spot(point), times * _lengthSlopes[at], times * _lengthSlopes[at + 1], slopes, row);
                    }

                    break;
                case TermKind.StartAngle when _moves[term.Index]:
                    AddAngleSlopes(term.Index, 0, _startTo[term.Index], times, slopes, row);
                    break;
                case TermKind.EndAngle when _moves[term.Index]:
                    AddAngleSlopes(term.Index, _endFrom[term.Index], 3, times, slopes, row);
                    break;
                case TermKind.Notch when _layout.Notches[term.Index].Unknown is >= 0 and int unknown:
                    slopes[row + unknown] += times * _mobility[unknown];
                    break;
            }
        }
    }

    private void AddAngleSlopes(int piece, int from, int to, double times, double[] slopes, int row)
    {
        int at = 8 * piece;
        double x = _now[at + (2 * to)] - _now[at + (2 * from)];
        double y = _now[at + (2 * to) + 1] - _now[at + (2 * from) + 1];
        double squared = (x * x) + (y * y);
        if (squared > 0)
        {
            TruingPiece moved = _layout.Pieces[piece];
            AddSlopes(moved.Spot(to), -times * y / squared, times * x / squared, slopes, row);
            AddSlopes(moved.Spot(from), times * y / squared, -times * x / squared, slopes, row);
        }
    }

    private void AddSlopes(int spot, double x, double y, double[] slopes, int row)
    {
        if (spot < 0)
        {
            return;
        }

        for (int f = _firstFollow[spot]; f < _firstFollow[spot + 1]; f++)
        {
            slopes[row + _layout.Follows[f].Unknown] += (x * _followX[f]) + (y * _followY[f]);
        }
    }
}
