using System;
using Pattern.Core.Diagnostics;
using Pattern.Core.Geometry;

namespace Pattern.Core.Panels;

/// <content>Edges that are drawn in one sweep: their points lie where the sweep puts them.</content>
internal sealed partial class TruingRoom
{
    // The sweep that could not be drawn last.
    private int _missing;

    /// <summary>Whether the hand drew every sweep just as it would be drawn with nothing moved.</summary>
    internal bool SweepsAreAsDrawn
    {
        get
        {
            bool all = true;
            foreach (SweptLine sweep in _sweeps)
            {
                all &= sweep.IsAsDrawn;
            }

            return all;
        }
    }

    /// <summary>The sweep that draws an edge; less than zero for none.</summary>
    internal int SweepOf(int panel, int edge) => Array.FindIndex(_layout.Sweeps, s => s.Panel == panel && s.Edge == edge);

    /// <summary>The edge as its sweep draws it now, ending just where its corner has gone.</summary>
    internal PanelEdge Swept(int sweep, PanelEdge edge)
    {
        CubicBezier[] open = _sweeps[sweep].Open;
        int last = open.Length - 1;
        var stretches = new CurvePath[open.Length];
        var darts = new DartShape[last];
        for (int i = 0; i <= last; i++)
        {
            CubicBezier c = open[i];
            stretches[i] = CurvePath.FromCubic(i < last ? c : new CubicBezier(c.Start, c.StartControl, c.EndControl, Corner(_layout.Sweeps[sweep].Pieces[last], 3)));
        }

        for (int d = 0; d < last; d++)
        {
            DartShape shape = edge.Darts[d].Shape;
            darts[d] = shape with { Apex = shape.Apex + Gone(_layout.Sweeps[sweep].Apexes[d]), StartLeg = open[d].End, EndLeg = open[d + 1].Start };
        }

        return new PanelEdge(edge.Name, edge.Role, stretches, darts);
    }

    /// <summary>Whether a sweep is what the hand drew: nothing that it follows has moved.</summary>
    internal bool IsSweepUnmoved(int sweep)
        => _sweeps[sweep].IsAsDrawn && Array.TrueForAll(_layout.Sweeps[sweep].Unknowns, u => _search.Found[u] == 0);

    private double SweptOffHandMm(int movable, Panel[] panels)
    {
        int sweep = Array.FindIndex(_layout.Sweeps, s => s.Movable == movable);
        return IsSweepUnmoved(sweep) ? 0 : _sweeps[sweep].OffHandMm(panels[_layout.Sweeps[sweep].Panel].EdgesRaw[_layout.Sweeps[sweep].Edge]);
    }

    /// <summary>What says that the hand draft leaves no sweep to begin with.</summary>
    private ConstructionException SweepMissed(Panel[] panels)
    {
        TruingSweep sweep = _layout.Sweeps[_missing];
        Panel panel = panels[sweep.Panel];
        EdgeName edge = panel.EdgesRaw[sweep.Edge].Name;
        return new ConstructionException(DiagnosticCode.DartOffTruedLine, edge, panel.Name, _sweeps[_missing].Missed(edge)) { Step = TruingPlan.Step, Landmark = edge.Text };
    }

    private void BindSweeps(Panel[] panels)
    {
        for (int i = 0; i < _sweeps.Length; i++)
        {
            _sweeps[i].Bind(panels[_layout.Sweeps[i].Panel].EdgesRaw[_layout.Sweeps[i].Edge]);
        }

        Go(_search.Start);
        if (TrySweep(_search.Start))
        {
            for (int i = 0; i < _sweeps.Length; i++)
            {
                _sweeps[i].Compare(panels[_layout.Sweeps[i].Panel].EdgesRaw[_layout.Sweeps[i].Edge]);
            }
        }
    }

    private bool TrySweep(double[] unknowns)
    {
        for (int i = 0; i < _sweeps.Length; i++)
        {
            TruingSweep sweep = _layout.Sweeps[i];
            int last = sweep.Pieces.Length - 1;
            for (int d = 0; d < last; d++)
            {
                int at = 8 * sweep.ApexPieces[d];
                _sweptApexes[d] = new Point2D(_base[at] + _goneX[sweep.Apexes[d]], _base[at + 1] + _goneY[sweep.Apexes[d]]);
            }

            if (!_sweeps[i].TryDraw(Corner(sweep.Pieces[0], 0), Corner(sweep.Pieces[last], 3), _sweptApexes, TurnRad(sweep.Leaving, unknowns), TurnRad(sweep.Arriving, unknowns)))
            {
                _missing = i;
                return false;
            }

            CubicBezier[] open = _sweeps[i].Open;
            for (int k = 0; k <= last; k++)
            {
                TruingPiece piece = _layout.Pieces[sweep.Pieces[k]];
                Put(piece.Start, open[k].X0, open[k].Y0);
                Put(piece.StartControl, open[k].X1, open[k].Y1);
                Put(piece.EndControl, open[k].X2, open[k].Y2);
                Put(piece.End, open[k].X3, open[k].Y3);
            }
        }

        return true;
    }

    private void Put(int spot, double x, double y)
    {
        if (_isSwept[spot])
        {
            (_goneX[spot], _goneY[spot]) = (x, y);
        }
    }

    private Point2D Corner(int piece, int point)
    {
        int at = (8 * piece) + (2 * point);
        int spot = _layout.Pieces[piece].Spot(point);
        return new Point2D(_base[at] + _goneX[spot], _base[at + 1] + _goneY[spot]);
    }

    private double TurnRad(int unknown, double[] unknowns) => unknown < 0 ? 0 : _mobility[unknown] * unknowns[unknown] / LeastChange.MmPerRad;

    private void LearnSweeps()
    {
        for (int i = 0; i < _sweeps.Length; i++)
        {
            TruingSweep sweep = _layout.Sweeps[i];
            _sweeps[i].LearnHandles();
            int last = sweep.Pieces.Length - 1;
            for (int k = 0; k < sweep.Unknowns.Length; k++)
            {
                int unknown = sweep.Unknowns[k];
                double turn = _mobility[unknown] / LeastChange.MmPerRad;
                for (int d = 0; d < last; d++)
                {
                    _apexesGoing[d] = Going(sweep.Apexes[d], unknown);
                }

                _sweeps[i].WriteGoing(
                    Going(_layout.Pieces[sweep.Pieces[0]].Start, unknown),
                    Going(_layout.Pieces[sweep.Pieces[last]].End, unknown),
                    _apexesGoing,
                    unknown == sweep.Leaving ? turn : 0,
                    unknown == sweep.Arriving ? turn : 0,
                    _sweptGoing);
                for (int piece = 0; piece <= last; piece++)
                {
                    for (int point = 0; point < 4; point++)
                    {
                        int spot = _layout.Pieces[sweep.Pieces[piece]].Spot(point);
                        if (_isSwept[spot])
                        {
                            // A swept spot follows the unknowns of its sweep in their order.
                            Vector2D going = _sweptGoing[(4 * piece) + point];
                            (_followX[_firstFollow[spot] + k], _followY[_firstFollow[spot] + k]) = (going.XMm, going.YMm);
                        }
                    }
                }
            }
        }
    }

    private Vector2D Going(int spot, int unknown)
    {
        double x = 0;
        double y = 0;
        for (int f = _firstFollow[spot]; f < _firstFollow[spot + 1]; f++)
        {
            if (_layout.Follows[f].Unknown == unknown)
            {
                (x, y) = (x + _followX[f], y + _followY[f]);
            }
        }

        return new Vector2D(x, y);
    }
}
